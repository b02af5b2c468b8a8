"""Pins that stand in bores to come go where those go."""

import pytest
from msgspec.structs import replace

from app.document import Document
from app.panels.hole_rows import becomes_of
from geometry.checks import check
from geometry.checks.moves import Shift
from geometry.cures import carried_out
from geometry.edits import mirror_layout, move_features, plan_point, set_field, set_pattern
from geometry.layout import Pin, Task, Time
from geometry.solids.pins_along import in_bores, pins_along
from tests.geometry.edits.heads import FACE, LOPSIDED, plain


def pinned(wide=None):
    """A plain head with one pin in the bore of a tuner by itself, as wide as that if no other is asked for, and one in a row's last."""
    head = plain(pins=())
    pins = tuple(Pin(id=f"pin {k}", at=plan_point(head, of), diameter=3.0) for k, of in enumerate(("treble face 1", "line 2")))
    head = replace(head, pins=pins)
    bores = in_bores(head)
    return replace(head, pins=tuple(replace(pin, diameter=wide or bores[pin.id].diameter) for pin in pins))


def places(layout):
    return [pin.at for pin in layout.pins]


def test_a_pin_goes_with_the_bore_in_which_it_stands():
    head = pinned()
    assert {id: bore.hole for id, bore in in_bores(head).items()} == {"pin 0": "treble face 1.1", "pin 1": "line 2.1"}
    moved = move_features(head, ["treble face 1"], (1.5, -4.0))
    spaced = set_field(moved, ("rows", "line", "spacing"), 27.0)
    after = pins_along(head, spaced)
    assert places(after) == [pytest.approx((31.5, 56.0)), pytest.approx((-28.0, 94.0))]
    assert in_bores(after).keys() == {"pin 0", "pin 1"}
    assert not [snag for snag in check(after).snags if snag.kind.startswith("bore-to") and "pin 0" in snag.between]


def test_a_pin_moved_by_itself_or_in_no_bore_stays():
    head = pinned()
    out = move_features(head, ["pin 0"], (3.0, 0.0))
    assert pins_along(head, out) is out
    later = move_features(out, ["treble face 1"], (1.0, 0.0))
    assert pins_along(out, later) is later
    both = move_features(head, ["treble face 1", "pin 0"], (1.0, 2.0))
    assert pins_along(head, both) is both
    mirrored = mirror_layout(head)
    assert pins_along(head, mirrored) is mirrored


def test_what_is_drilled_stays_where_it_is():
    head = pinned()
    task = Task(operation="pin hole pin 0.1", title="pin hole", features=("pin 0",))
    head = replace(head, book=replace(head.book, times=(Time(piece="real", minutes=1.0, task=task),)))
    moved = move_features(head, ["treble face 1"], (1.0, 0.0))
    assert pins_along(head, moved) is moved
    assert "goes where that goes" in becomes_of(head, "pin 1") and "a later hole" in becomes_of(head, "pin 0")


def test_a_pin_as_wide_as_its_bore_stays_so():
    for wide, then in ((None, "its bore"), (4.0, 4.0)):
        head = pinned(wide)
        after = pins_along(head, set_pattern(head, "treble face 1", LOPSIDED))
        bore = in_bores(after)["pin 0"]
        assert after.pins[0].diameter == (bore.diameter if then == "its bore" else then)


def test_a_pin_goes_with_the_post_bore_of_hardware_that_lists_its_screws_first():
    head = pinned()
    lopsided = head.pattern(LOPSIDED)
    post, screw = lopsided.bores
    turned = replace(lopsided, id="screws first", bores=(replace(screw, depth=None), post))
    head = replace(head, patterns=(*head.patterns, turned))
    after = pins_along(head, set_pattern(head, "treble face 1", "screws first"))
    assert (in_bores(after)["pin 0"].role, after.pins[0].diameter) == ("post", post.diameter)


def test_a_pin_is_no_wider_than_a_bore_that_became_narrower():
    head = pinned()
    head = set_pattern(head, "treble face 1", LOPSIDED)
    head = replace(head, pins=(replace(head.pins[0], diameter=8.0), head.pins[1]))
    after = pins_along(head, set_pattern(head, "treble face 1", FACE))
    assert (head.pins[0].diameter, after.pins[0].diameter, in_bores(after)["pin 0"].diameter) == (8.0, 6.5, 6.5)


def test_a_bore_that_is_gone_leaves_its_pin():
    head = pinned()
    gone = replace(head, tuners=tuple(tuner for tuner in head.tuners if tuner.id != "treble face 1"))
    assert pins_along(head, gone) is gone


def test_a_pin_goes_along_while_the_tuner_is_dragged_and_in_a_cure():
    head = pinned()
    document = Document(head)
    moved = move_features(head, ["treble face 1"], (2.0, 0.0))
    document.preview(moved)
    assert document.shown.pins[0].at == pytest.approx((32.0, 60.0))
    document.preview(None)
    assert document.shown is head
    document.apply("Move", moved)
    assert document.layout.pins[0].at == pytest.approx((32.0, 60.0))
    document.undo()
    assert document.layout is head
    document.apply("Open the version before", moved, whole=True)
    assert document.layout is moved
    assert carried_out(head, Shift("treble face 1", (2.0, 0.0))).pins[0].at == pytest.approx((32.0, 60.0))


def test_an_outline_without_edges_keeps_nobody_from_the_next_edit():
    head = pinned()
    flat = replace(head, outline=replace(head.outline, nodes=tuple(replace(node, at=(node.at[0], 50.0)) for node in head.outline.nodes)))
    document = Document(head)
    document.apply("Flatten", flat)
    assert document.layout is flat
    assert "nobody knows" in becomes_of(flat, "pin 0")
    document.preview(head)
    document.apply("Put back", head)
    assert document.layout is head
