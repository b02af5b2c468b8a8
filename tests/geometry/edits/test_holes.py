"""Holes of a drawing made into tuners."""

import pytest

from geometry.edits.adding import add_hole
from geometry.edits.holes import fitting_hardware, tuners_for_holes
from geometry.errors import GeometryError
from geometry.layout import FreePlace, Headstock
from tests.geometry.edits.heads import FACE, SIDE, plain


def drilled() -> Headstock:
    """Three holes more, two of them nearer to the bass edge."""
    head = plain()
    for at in ((-20.0, 120.0), (-20.0, 60.0), (20.0, 90.0)):
        head = add_hole(head, at, 8.8)
    return head


def test_holes_give_way_to_tuners_from_the_nut_on() -> None:
    head = drilled()
    made = tuners_for_holes(head, [hole.id for hole in head.holes[-3:]], FACE)
    new = made.tuners[len(head.tuners):]
    assert made.holes == head.holes[:-3] and [t.place for t in new] == [FreePlace(at=at) for at in ((-20.0, 60.0), (20.0, 90.0), (-20.0, 120.0))]
    assert [t.id.rsplit(" ", 1)[0] for t in new] == ["bass face", "treble face", "bass face"]
    assert [t.winds for t in new] == ["treble", "bass", "treble"], "away from the edge that the button points at"
    assert {t.pattern for t in new} == {FACE}


def test_the_hardware_that_comes_nearest_comes_first() -> None:
    # 8.8 and 10 are the widest bores on the axis, by what the patterns say of themselves.
    found = fitting_hardware(drilled(), 8.8)
    assert found[0].startswith("face 8.8") and not any(id.startswith("side") for id in found)
    assert fitting_hardware(drilled(), 10.4)[0].startswith("face 10")


def test_refusals_are_sentences() -> None:
    head = drilled()
    with pytest.raises(GeometryError, match="through the side"):
        tuners_for_holes(head, [head.holes[0].id], SIDE)
    with pytest.raises(GeometryError, match="no single hole"):
        tuners_for_holes(head, [head.pins[0].id] if head.pins else [head.tuners[0].id], FACE)
