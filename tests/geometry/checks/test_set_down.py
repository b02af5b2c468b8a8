"""Papers that are pasted on, a template that is made and ears that are glued on know where the drawing had things then."""

import pytest
from msgspec.structs import replace

from app.formats import headstock
from app.panels.describe import describe
from geometry.book import done_steps, made_by, open_again, otherwise, task_of, tick_off
from geometry.checks import LiveCheck, check
from geometry.checks.in_wood import called_now
from geometry.cures.tracks import tracks
from geometry.edits import (
    add_node,
    mirror_layout,
    move_features,
    move_node,
    remove_features,
    remove_node,
    rename,
    set_edge,
    to_drawn,
)
from geometry.layout import Ear, SingleHole
from geometry.sequence import operations
from tests.geometry.sequence.specimens import demo

KINDS = ("glue ear", "template", "mark")
EARS = tuple(Ear(id=f"{side} ear", side=side, width=12.0, start=10.0, end=180.0) for side in ("bass", "treble"))


def begun(*more, layout=None, piece="real"):
    """The demo with two ears; ears, template and papers are ticked off, and some more operations."""
    layout = replace(demo(), ears=EARS) if layout is None else layout
    book = replace(layout.book, piece=piece)
    for number, op in enumerate(operations(layout), 1):
        if op.kind in KINDS or op.id in more:
            book = tick_off(book, task_of(op), number, made_by(layout, op))
    return replace(layout, book=book)


def node_at(layout, ref, index):
    return (layout.outline if ref == "outline" else next(slot for slot in layout.slots if slot.id == ref).shape.loop).nodes[index].at


def told(layout):
    return [snag for snag in check(layout).snags if snag.kind in ("marked-otherwise", "glued-otherwise")]


def test_nothing_is_told_while_the_drawing_is_as_it_was_and_the_file_keeps_it():
    job = begun()
    assert all(one.spots for one in job.book.done) and len(job.book.done) == 4
    assert told(job) == [] and otherwise(job) == {} and done_steps(job).keys() == {"glue ear bass ear", "glue ear treble ear", "template", "mark"}
    assert headstock.decode(headstock.encode(job)) == job


def test_a_hole_that_is_moved_after_the_papers_are_pasted_has_no_cross():
    job = move_features(begun(), ["bass side 1"], (0.0, 1.0))
    snag, = told(job)
    assert (snag.kind, snag.grade, snag.between) == ("marked-otherwise", "tight", ("bass side 1",))
    assert snag.where == pytest.approx((-50.0, 70.456, 8.0), abs=0.01), "its mark on the square edge"
    assert snag.text == "The papers that are pasted on (job book) do not have bass side 1 where it is drawn now."
    assert tracks(job, snag) == [], "no move is sought that would put the drawing back by chance"
    assert otherwise(job).keys() == {"mark"} and "mark" not in done_steps(job), "that step is open again"
    op = next(op for op in operations(job) if op.id == "mark")
    again = replace(job, book=tick_off(job.book, task_of(op), 9, made_by(job, op)))
    assert told(again) == [] and done_steps(again)["mark"].number == done_steps(begun())["mark"].number


def test_what_is_drilled_or_cut_needs_no_cross_and_no_template():
    bore = "side bore bass side 1.1.1"
    assert told(move_features(begun(bore), ["bass side 1"], (0.0, 1.0))) == [], "that it is drilled otherwise is told of the hole"
    slot = move_features(begun(), ["bass slot"], (0.0, 1.0))
    assert [snag.text for snag in told(slot)] == [
        "The papers that are pasted on (job book) do not have bass slot where it is drawn now.",
        "The template that is made (job book) does not have bass slot as it is planned now."]
    assert [one.text.split(" that")[0] for one in told(move_features(begun("saw bass slot"), ["bass slot"], (0.0, 1.0)))] == ["The template"], "it is routed along that still"
    assert told(move_features(begun("rout bass slot 1"), ["bass slot"], (0.0, 1.0))) == []


def test_a_template_for_another_follower_is_another_template():
    """A shank bearing as wide as the cutter, then a bush 3 mm wider than it: all openings are 1.5 mm larger all round."""
    job = begun()
    bush = next(bush for bush in job.rack.bushes if bush.outer == 13.0)
    other = replace(job, template=replace(job.template, bit="10 straight", bush=bush.id))
    snag, = told(other)
    assert snag.text == "The template that is made (job book) does not have bass slot, treble slot and the outline as they are planned now."
    assert otherwise(other).keys() == {"template"} and tracks(other, snag) == []
    alike = replace(job, template=replace(job.template, bit=None, bush=None))
    assert told(alike) == [], "its lines are those of a bearing as wide as the cutter"
    none = replace(job, template=replace(job.template, bit="10 straight", bush=next(bush.id for bush in job.rack.bushes if bush.inner < 10.0)))
    assert told(none) == [], "that there are no lines at all is told elsewhere"


@pytest.mark.parametrize("kind", ("straight", "arc", "curve"))
def test_a_node_that_bends_nothing_makes_no_other_template(kind):
    """On an edge of each kind, one node and one more, on the outline and on a slot; it is added before the template is made, or after, and
    taken away again."""
    plain = set_edge(set_edge(to_drawn(demo(), "bass slot"), "bass slot", 0, kind), "outline", 2, kind)
    for ref, edge in (("outline", 2), ("bass slot", 0)):
        more = add_node(plain, ref, edge, 0.3)
        twice = add_node(more, ref, edge + 1, 0.6)
        books = [begun(layout=layout).book for layout in (plain, more, twice)]
        for layout in (plain, more, twice, remove_node(twice, ref, edge + 1), remove_node(twice, ref, edge + 2)):
            assert [told(replace(headstock.decode(headstock.encode(layout)), book=book)) for book in books] == [[], [], []]
        bent = move_node(more, ref, edge + 1, tuple(c + 0.5 for c in node_at(more, ref, edge + 1)))
        assert all(any(ref in snag.between for snag in told(replace(bent, book=book))) for book in books), "that it bends is told"


def test_a_hole_that_is_new_has_no_cross_and_one_that_is_gone_needs_none():
    less = remove_features(demo(), ("bass side 2",))
    snag, = told(replace(demo(), book=begun(layout=less).book))
    assert snag.between == ("bass side 2",)
    assert told(remove_features(begun(), ("bass side 2",))) == []


def test_the_pieces_are_told_apart_and_a_renaming_moves_no_cross():
    practice = move_features(begun(piece="practice"), ["bass side 1"], (0.0, 1.0))
    assert told(practice) == [] and otherwise(practice).keys() == {"mark"}
    assert told(rename(begun(), "tuners", "bass side 1", "low E")) == []


def test_an_ear_stays_where_it_is_glued():
    job = begun()
    wide = replace(job, ears=(replace(EARS[0], width=12.5), EARS[1]))
    snag, = told(wide)
    assert (snag.kind, snag.between, snag.where) == ("glued-otherwise", ("bass ear",), (-38.0, 10.0, 0.0)) and tracks(wide, snag) == []
    assert snag.text == ("Bass ear is glued on with its glue line at x -38.00 mm, from y 10.00 mm to 180.00 mm (job book); "
                         "the drawing now says at x -37.50 mm, from y 10.00 mm to 180.00 mm.")
    assert describe(wide, "bass ear", "mm").facts[0].value == "glued on otherwise than it is drawn"
    assert describe(job, "bass ear", "mm").facts[0].value != "glued on otherwise than it is drawn"
    gone, = told(remove_features(job, ("bass ear",)))
    assert gone.between == ("face",) and gone.text.endswith("(job book), and the drawing has it no more.")
    moved, = [one for one in told(replace(job, blank=replace(job.blank, bass=job.blank.bass + 1.0))) if one.kind == "glued-otherwise"]
    assert moved.between == ("bass ear",), "the glue line lies in the wood, whatever the edge"
    assert told(replace(job, book=open_again(job.book, "glue ear bass ear"), ears=(replace(EARS[0], width=12.5), EARS[1]))) == []


def test_an_old_hole_that_is_to_be_plugged_later_opens_the_step_again():
    """The plugs that are in know of no other hole."""
    old, other = (SingleHole(id=id, at=(0.0, y), diameter=8.0, there=True, plugged=True) for id, y in (("old", 40.0), ("other", 90.0)))
    layout = replace(demo(), holes=(old,))
    job = begun("plug", layout=layout)
    assert told(job) == [] and "plug" in done_steps(job) and told(rename(job, "holes", "old", "tuner before")) == []
    more = replace(job, holes=(old, other))
    snag, = told(more)
    assert (snag.kind, snag.between, snag.where, tracks(more, snag)) == ("glued-otherwise", ("other",), (0.0, 90.0, 0.0), [])
    assert snag.text == "When the old holes were plugged (job book), other was not plugged where it is drawn now."
    assert "plug" not in done_steps(more) and otherwise(more).keys() == {"plug"}
    op, = [op for op in operations(more) if op.kind == "plug"]
    again = replace(more, book=tick_off(more.book, task_of(op), 9, made_by(more, op)))
    assert told(again) == [] and "plug" in done_steps(again) and headstock.decode(headstock.encode(again)) == again
    assert told(replace(job, holes=())) == []
    assert told(replace(job, holes=(replace(old, surface="back"),))) == [], "a plug that goes through is one from either side"
    moved = replace(job, holes=(replace(old, at=(5.0, 40.0)),))
    assert [one.between for one in told(moved)] == [("old",)]


def test_an_ear_that_is_called_as_one_that_is_gone_leaves_that_one_in_the_wood():
    """Of two ears on one side the second is drawn alone, under the name of the first."""
    ears = tuple(Ear(id=id, side="treble", width=12.0, start=start, end=end) for id, start, end in (("low", 10.0, 100.0), ("high", 100.0, 180.0)))
    job = begun(layout=replace(demo(), ears=ears))
    left = replace(job, ears=(replace(ears[1], id="low"),))
    snag, = told(left)
    assert snag.between == ("face",) and snag.text == (
        "Low is glued on with its glue line at x 38.00 mm, from y 10.00 mm to 100.00 mm (job book), and the drawing has it no more.")
    assert otherwise(left) == {} and done_steps(left).keys() == {"glue ear low", "template", "mark"}, "the one that is drawn is glued on"
    assert otherwise(replace(job, ears=ears[:1])) == {}, "as of a hole that is gone: its step is none of the drawing"


def test_a_pin_is_drilled_through_the_template():
    job, pin = begun(), "nut pin"
    moved = move_features(job, [pin], (0.0, 2.0))
    assert {snag.text.split(" that")[0]: snag.between for snag in told(moved)} == {"The papers": (pin,), "The template": (pin,)}
    assert told(move_features(begun(f"pin hole {pin}.1"), [pin], (0.0, 2.0))) == [], "that it is drilled otherwise is told of the hole"


def test_the_wood_does_not_turn_over_with_a_mirror_image():
    job = begun(layout=replace(demo(), ears=(EARS[0], replace(EARS[1], end=170.0))))
    both = {snag.text.split(" is glued")[0]: snag.text for snag in told(mirror_layout(job))}
    assert both.keys() == {"Bass ear", "Treble ear"} and "line at x 38.00 mm, from y 10.00 mm to 170.00 mm (job book)" in both["Bass ear"]
    same = mirror_layout(replace(begun(), book=open_again(begun().book, "glue ear treble ear")))
    assert [one.task.operation for one in same.book.done if one.task.features] == ["glue ear treble ear"]
    assert told(same) == [] and done_steps(same).keys() == {"glue ear bass ear", "template", "mark"}, "the one on the bass side is glued still"
    assert [one.task.operation for one in called_now(same, "real").done if one.task.features] == ["glue ear bass ear"]


def test_a_drag_finds_what_a_check_anew_finds():
    live, job = LiveCheck(), begun()
    for by in (0.0, 0.05, 0.5, 2.0, 0.0):
        layout = move_features(job, ["bass face 1"], (by, 0.0)) if by else job
        assert live.check(layout).snags == check(layout).snags
        assert bool(told(layout)) == (by > 0.1), "nobody pricks more truly than a tenth"
