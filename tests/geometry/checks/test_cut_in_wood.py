"""What is sawn and routed in the real piece is a fact: slots, ramps and the outline are held against it, to the hundredth of a mm."""

import math
import re

import pytest
from msgspec.structs import replace

from app.formats import headstock
from geometry import vectors as v
from geometry.book import done_steps, made_by, not_so_deep, open_again, otherwise, start, task_of, tick_off
from geometry.checks import LiveCheck, check
from geometry.checks.in_wood import by_the_wood, called_now, strays
from geometry.checks.in_wood_words import made_words
from geometry.checks.said import read
from geometry.edits import add_node, mirror_layout, move_features, move_node, remove_features, rename, set_field
from geometry.errors import GeometryError
from geometry.layout import Book, Clock, Done, DrawnSlot, Loop, Made, Node, Ramp, Shaped, Task, Time, validate, worked
from geometry.routing.corners import goes_as_far
from geometry.sequence import Routing, Trip, operations
from geometry.solids.cut_shape import _ramps
from geometry.solids.ramps import ramp_cut
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo

SLOT, WIDTH = "bass slot", ("slots", "bass slot", "shape", "width")


def cut(layout, *features, kinds=None, piece="real"):
    """The layout with all that is sawn and routed of these features done as it is drawn; of some kinds alone where they are named."""
    book = replace(layout.book, piece=piece)
    for number, op in enumerate(operations(layout), 1):
        if set(features) & set(op.features) and not op.drillings and (kinds is None or op.kind in kinds):
            book = tick_off(book, task_of(op), number, made_by(layout, op))
    return replace(layout, book=book)


def told(layout):
    return [snag for snag in check(layout).snags if snag.kind.startswith("cut-")]


def wide(layout, by):
    return set_field(layout, WIDTH, layout.slots[0].shape.width + by)


def test_nothing_is_told_while_the_drawing_is_what_was_cut():
    job = cut(demo(), SLOT, "treble slot", "outline")
    assert len(job.book.done) == 8 and all(one.cut for one in job.book.done)
    assert [snag.said for snag in check(job).snags] == [snag.said for snag in check(demo()).snags] and done_steps(job).keys() == {one.task.operation for one in job.book.done}


def test_a_slot_that_is_moved_after_the_router_is_told_of_with_where_and_how_far():
    job = move_features(cut(demo(), SLOT), [SLOT], (0.0, 3.0))
    snag, = told(job)
    assert (snag.kind, snag.grade, snag.between) == ("cut-otherwise", "spoils the work", (SLOT,))
    assert snag.where == pytest.approx((-14.9, 24.0, 0.0), abs=0.05), "the nut end, which is open where the drawing has wood now"
    assert snag.text == "Bass slot is cut up to 3.0 mm beyond the line that is drawn now, most at x -14.90 mm, y 24.00 mm (job book)."
    assert 'up to 0.118" beyond' in snag.text_in("in") and " mm" not in snag.text_in("in")
    assert strays(job, SLOT) and not strays(job, "treble slot")


def test_what_the_router_can_take_still_is_tight_and_what_it_took_is_not_to_be_had_back():
    job = cut(demo(), SLOT)
    on, = told(wide(job, 1.0))
    assert on.grade == "tight" and "Bass slot is cut up to 0.50 mm short of the line" in on.text
    back, = told(wide(job, -1.0))
    assert back.grade == "spoils the work" and "up to 0.50 mm beyond" in back.text
    assert told(wide(job, 0.019)) == [] != told(wide(job, 0.03))


def test_what_only_clears_the_waste_leaves_the_line_some_room():
    """Waste holes stay 1 mm inside it, the saw 2 mm."""
    for kind, room in (("waste holes", 1.0), ("saw", 2.0)):
        job = cut(demo(), SLOT, kinds=(kind,))
        assert len(job.book.done) == 1 and told(move_features(job, [SLOT], (0.0, room))) == []
        snag, = told(move_features(job, [SLOT], (0.0, room + 0.5)))
        assert "cut up to 0.50 mm beyond" in snag.text


def test_of_the_outline_the_wood_outside_is_gone():
    whole = demo()
    corner = next(i for i, node in enumerate(whole.outline.nodes) if node.at[1] == max(node.at[1] for node in whole.outline.nodes))
    x, y = whole.outline.nodes[corner].at
    job = cut(whole, "outline")
    out, = told(move_node(job, "outline", corner, (x, y + 1.5)))
    assert (out.grade, out.between) == ("spoils the work", ("outline",)) and "The outline is cut up to 1.5 mm inside the line" in out.text
    assert out.where[1] == pytest.approx(y + 1.5, abs=0.05)
    into, = told(move_node(job, "outline", corner, (x, y - 1.5)))
    assert into.grade == "tight" and "The outline is cut up to 1.5 mm outside the line" in into.text
    sawn = cut(whole, "outline", kinds=("cut outline",))
    assert told(move_node(sawn, "outline", corner, (x, y + 1.9))) == [] != told(move_node(sawn, "outline", corner, (x, y + 2.1)))


def test_a_node_more_on_the_same_line_is_the_same_outline():
    job = cut(demo(), "outline")
    more = add_node(job, "outline", 4, 0.5)
    assert len(more.outline.nodes) == len(job.outline.nodes) + 1 and told(more) == []


def test_the_floor_of_a_blind_slot():
    depth = ("slots", SLOT, "depth")
    job = cut(set_field(demo(), depth, 9.0), SLOT)
    assert {(one.cut.ends, one.cut.floor) for one in job.book.done if one.task.rate != "waste_hole"} == {(9.0, True)} and told(job) == []
    less, = told(set_field(job, depth, 7.0))
    assert less.grade == "spoils the work" and less.text == "Bass slot is cut 9.00 mm deep (job book); the drawing now says 7.00 mm deep."
    more, = told(set_field(job, depth, 10.0))
    assert more.grade == "tight" and more.text.endswith("the drawing now says 10.00 mm deep.")
    through, = told(set_field(job, depth, None))
    assert through.grade == "tight" and through.text.endswith("the drawing now says through.")
    assert told(set_field(cut(demo(), SLOT), depth, 9.0))[0].text == "Bass slot is cut through (job book); the drawing now says 9.00 mm deep."


def test_a_first_pass_is_no_floor():
    job = cut(set_field(demo(), ("slots", SLOT, "depth"), 9.0), SLOT, kinds=("rout",))
    half = replace(job.book.done[0], cut=replace(job.book.done[0].cut, ends=4.0, floor=False))
    job = replace(job, book=replace(job.book, done=(half,)))
    assert told(set_field(job, ("slots", SLOT, "depth"), 12.0)) == []


def test_a_ramp_is_told_of_by_itself():
    job = cut(replace(demo(), slots=tuple(replace(slot, ramp=Ramp(length=12.0, depth=4.0)) for slot in demo().slots)), SLOT, kinds=("ramp",))
    assert len(job.book.done) == 1 and told(wide(set_field(job, ("slots", SLOT, "ramp", "width"), 13.0), 0.0)) == []
    deeper, = told(set_field(job, ("slots", SLOT, "ramp", "depth"), 5.0))
    assert deeper.grade == "tight" and deeper.text == (
        "The ramp of bass slot is cut from y 12.00 mm, 12.00 mm long, 13.00 mm wide and 4.00 mm deep (job book); "
        "the drawing now says from y 12.00 mm, 12.00 mm long, 13.00 mm wide and 5.00 mm deep.")
    for changed in (set_field(job, ("slots", SLOT, "ramp", "length"), 11.0), move_features(job, [SLOT], (0.0, 1.0)), set_field(job, ("slots", SLOT, "ramp"), None)):
        assert told(changed)[0].grade == "spoils the work"


def test_a_slot_that_is_taken_out_is_still_in_the_wood():
    gone = remove_features(cut(demo(), SLOT), (SLOT,))
    snag, = told(gone)
    assert snag.kind == "cut-and-gone" and snag.text == (
        "Bass slot is cut at x -21.40 mm to -8.40 mm, y 24.00 mm to 168.00 mm (job book), and the drawing has it no more.")
    live = LiveCheck()
    assert live.check(gone).snags is live.check(replace(gone, name="another")).snags
    anew = rename(replace(gone, slots=(*gone.slots, replace(demo().slots[0], id="new"))), "slots", "new", "newer")
    assert told(anew) == [] and {"rout newer 1", "saw newer"} <= done_steps(anew).keys(), "what is drawn anew in its very place is cut"


def test_the_practice_piece_binds_nothing_and_a_renamed_slot_is_the_same():
    assert told(move_features(cut(demo(), SLOT, piece="practice"), [SLOT], (0.0, 3.0))) == []
    assert told(rename(cut(demo(), SLOT), "slots", SLOT, "long one")) == []


def test_slots_that_change_places_with_the_mirror_image_are_done_where_they_are_cut():
    job = cut(demo(), SLOT, "outline")
    there = mirror_layout(job)
    assert told(there) == [] and done_steps(there).keys() == done_steps(job).keys()
    back = called_now(there, "real")
    assert {one.task.operation for one in back.done} == {one.task.operation for one in job.book.done}
    assert done_steps(replace(there, book=open_again(back, "saw bass slot"))).keys() == done_steps(job).keys() - {"saw bass slot"}
    uneven = mirror_layout(cut(move_features(demo(), [SLOT], (0.0, 2.0)), SLOT))
    snag, = told(uneven)
    assert snag.between == ("treble slot",) and "cut up to" in snag.text


def test_a_step_that_takes_the_name_of_another_leaves_the_tick_of_that_one_alone():
    """Half of a head is cut, then it is mirrored, and the other half is cut: each tick is under the name of its own side."""
    there = mirror_layout(cut(demo(), SLOT))
    op = next(op for op in operations(there) if op.id == "saw treble slot")
    book = tick_off(called_now(there, "real"), task_of(op), 9, made_by(there, op))
    now = replace(there, book=book)
    assert done_steps(now).keys() == {"waste holes bass slot", "saw bass slot", "rout bass slot 1", "saw treble slot"} and told(now) == []


def test_after_a_mirror_image_advice_and_times_go_by_what_is_in_the_wood():
    job = cut(demo(), SLOT)
    timed = replace(job, book=replace(job.book, times=tuple(Time(piece="real", task=one.task, minutes=4.0, cut=one.cut) for one in job.book.done)))
    begun = replace(timed, book=start(replace(timed.book, done=()), "real", timed.book.times[0].task, 0.0, Made(cut=timed.book.times[0].cut)))
    for one in (job, timed, begun):
        there = replace(mirror_layout(one), margins=replace(job.margins, rail=30.0))
        assert worked(by_the_wood(there).book).cut == {SLOT}
        assert {snag.between for snag in check(there).snags if "cut in the real piece" in snag.advice} == {(SLOT, "outline")}
    book = called_now(mirror_layout(begun), "real")
    assert book.times == begun.book.times and book.clock == begun.book.clock
    there = mirror_layout(begun)
    assert called_now(there, "practice") is there.book, "nothing is made of the other piece"


def test_names_change_places_with_what_has_them():
    """Both slots are cut and one of them goes, then its name goes to the other: no two ticks become one."""
    both = cut(demo(), SLOT, "treble slot")
    there = mirror_layout(remove_features(both, (SLOT,)))
    book = called_now(there, "real")
    assert len({one.task.operation for one in book.done}) == len(book.done) == 6
    assert {one.task.title for one in book.done} == {one.task.title for one in both.book.done}


def test_a_slot_drawn_anew_whose_name_began_as_its_operation_does():
    job = rename(cut(demo(), SLOT), "slots", SLOT, "h")
    anew = replace(job, slots=(*(slot for slot in job.slots if slot.id != "h"), replace(demo().slots[0], id="new")))
    assert done_steps(anew).keys() == {"waste holes new", "saw new", "rout new 1"}


@pytest.mark.parametrize("where", ["done", "times", "clock"])
def test_a_file_whose_book_has_a_shape_that_is_none_is_refused_with_its_place(where):
    point = Shaped(shape=DrawnSlot(loop=Loop(nodes=(Node(at=(0.0, 0.0)),) * 3)))
    task = Task(operation="rout bass slot 1", features=(SLOT,))
    book = {"done": Book(done=(Done(piece="real", task=task, cut=point),)), "times": Book(times=(Time(piece="real", task=task, minutes=1.0, cut=point),)),
            "clock": Book(clock=Clock(piece="real", task=task, since=0.0, cut=point))}[where]
    with pytest.raises(GeometryError) as refused:
        validate(replace(demo(), book=book))
    assert re.fullmatch(rf"\$\.book\.{where}(\[0\])?\.cut", refused.value.place)


def test_what_is_cut_otherwise_is_told_by_its_step():
    job = move_features(cut(demo(), SLOT), [SLOT], (0.0, 1.5))
    assert otherwise(job).keys() == {"waste holes bass slot", "rout bass slot 1"}, "the saw has left 2 mm"
    assert done_steps(job).keys() == {"saw bass slot"}


def test_what_was_cut_is_in_the_file():
    job = cut(replace(demo(), slots=tuple(replace(slot, ramp=Ramp(length=12.0, depth=4.0)) for slot in demo().slots)), SLOT, "outline")
    assert headstock.decode(headstock.encode(job)) == job


def test_a_ramp_that_is_turned_about_its_lower_end_is_another() -> None:
    """By 0.0015 rad: 0.018 mm at the far end of 12 mm, where a hundredth counts as the same."""
    was = ramp_cut(replace(demo().slots[0], ramp=Ramp(length=12.0, depth=4.0)))
    low = v.along(was.start, was.axis, was.length)
    for turn, found in ((0.0005, 0), (0.0015, -1)):
        axis = v.turned(was.axis, turn)
        assert _ramps(was, replace(was, axis=axis, start=v.along(low, axis, -was.length))) == found


BACK_FIRST = Routing(tuple(reversed(TURNED.trips)))
FEWER = Routing((Trip("face", "12 shank bearing", None, 0.0, 8.0), Trip("back", "12 shank bearing", None, 0.0, 8.0)))
"""of 16 mm: TURNED goes 10 mm deep from the face"""


@pytest.mark.parametrize("of", [SLOT, "outline"])
@pytest.mark.parametrize(("was", "passes", "now", "left"), [
    (TURNED, 1, THROUGH, {1: "is cut 10.00 mm deep (job book); with the bits chosen now it is to be cut through."}),
    (TURNED, 2, THROUGH, {}),
    (BACK_FIRST, 1, THROUGH, {1: "is cut from 9.00 mm below the face to the back (job book); with the bits chosen now it is to be cut through."}),
    (TURNED, 1, TURNED, {}), (TURNED, 2, FEWER, {}), (TURNED, 1, FEWER, {}),
    (FEWER, 1, TURNED, {1: "is cut 8.00 mm deep (job book); with the bits chosen now it is to be cut 10.00 mm deep."}),
    (FEWER, 2, TURNED, {})])
def test_a_pass_is_done_as_deep_as_it_was_routed_whatever_bits_are_planned_later(of, was, passes, now, left):
    """Of a slot and of the outline some passes are routed, then the rack is another: the wood of the deeper pass is still there."""
    job, kind = demo(), "rout outline" if of == "outline" else "rout"
    book = replace(job.book, piece="real")
    for op in [op for op in operations(job, {of: was}) if op.kind == kind and op.features == (of,)][:passes]:
        book = tick_off(book, task_of(op), 1, made_by(job, op))
    job = replace(job, book=book)
    ops = [op for op in operations(job, {of: now}) if op.kind == kind and op.features == (of,)]
    ids = {int(op.id.rsplit(" ", 1)[1]): op.id for op in ops}
    said = {number: read(text, "mm") for number, id in ids.items() if (text := not_so_deep(job, ops).get(id))}
    assert {number: text[text.index("is cut"):] for number, text in said.items()} == left
    ticked = {one.task.operation for one in book.done}
    assert done_steps(job, ops).keys() == ticked - {ids[number] for number in left}


def routed(of, trips, passes):
    """(the demo with some passes of these trips ticked off of the real piece, its passes of others)."""
    job, kind = demo(), "rout outline" if of == "outline" else "rout"
    book = replace(job.book, piece="real")
    for number, op in enumerate([op for op in operations(job, {of: trips}) if op.kind == kind and op.features == (of,)], 1):
        if number in passes:
            book = tick_off(book, task_of(op), number, made_by(job, op))
    job = replace(job, book=book)
    return job, lambda now: [op for op in operations(job, {of: now}) if op.kind == kind and op.features == (of,)]


def test_waste_is_cleared_where_the_router_has_been():
    """Of a slot routed through at one go nobody drills or saws the waste, nor that outside an outline that is routed."""
    for of, clearing in ((SLOT, {"waste holes bass slot", "saw bass slot"}), ("outline", {"cut outline"})):
        job, _ = routed(of, THROUGH, {1})
        assert done_steps(job, operations(job)).keys() == {f"rout {of} 1", *clearing}
        job, _ = routed(of, TURNED, {1})
        assert not clearing & done_steps(job, operations(job)).keys(), "wood is left at the back"
    job = cut(demo(), SLOT, kinds=("waste holes", "saw"))
    assert done_steps(job, operations(job)).keys() == {"waste holes bass slot", "saw bass slot"}, "which leave wood to the router"


def test_neither_a_ramp_nor_what_was_sawn_elsewhere_is_done_by_the_router():
    """The wood of a ramp lies before the slot, and a saw that went 3 mm astray went astray."""
    ramped = cut(set_field(demo(), ("slots", SLOT, "ramp"), Ramp(length=12.0, depth=4.0)), SLOT, kinds=("rout",))
    assert "ramp" in {op.kind for op in operations(ramped)}
    assert done_steps(ramped, operations(ramped)).keys() == {"waste holes bass slot", "saw bass slot", "rout bass slot 1"}
    sawn = move_features(cut(demo(), SLOT, kinds=("saw",)), [SLOT], (0.0, 3.0))
    job = cut(sawn, SLOT, kinds=("rout",))
    assert otherwise(job).keys() == {"saw bass slot"} and done_steps(job, operations(job)).keys() == {"waste holes bass slot", "rout bass slot 1"}


@pytest.mark.parametrize("of", [SLOT, "outline"])
def test_what_one_pass_took_is_done_of_all_that_are_planned_there_later(of):
    """Routed through at one go; then the rack is another, and two passes are planned, or no bit does it at all."""
    job, planned = routed(of, THROUGH, {1})
    for now in (TURNED, BACK_FIRST, FEWER):
        assert done_steps(job, planned(now)).keys() == {f"rout {of} 1", f"rout {of} 2"} and not not_so_deep(job, planned(now))
    none, = planned(Routing((), blocked="No bit reaches."))
    assert f"rout {of} {'' if of == 'outline' else 0}".strip() == none.id in done_steps(job, [none])
    job, planned = routed(of, Routing((), blocked="No bit reaches."), {1})
    assert {f"rout {of} 1", f"rout {of} 2"} <= done_steps(job, planned(TURNED)).keys(), "worked to its line by hand"
    job, planned = routed(of, FEWER, {2})
    assert done_steps(job, planned(TURNED)).keys() == {f"rout {of} 2"}, "from the back 6 of 16 mm, of which 8 are gone"


CORNERS = Trip("face", "6 shank bearing", None, 0.0, 16.0, corners=True)


def test_a_pass_through_the_corners_is_none_along_the_whole_wall_nor_the_other_way_round():
    widest = Routing((*THROUGH.trips, CORNERS))
    job, planned = routed(SLOT, TURNED, {1, 2})
    text = not_so_deep(job, planned(widest))["rout bass slot 2"]
    assert done_steps(job, planned(widest)).keys() == {"rout bass slot 1"}
    assert read(text, "mm").endswith("is cut from 9.00 mm below the face to the back (job book); with the bits chosen now it is to be cut through, in the corners alone.")
    job, planned = routed(SLOT, widest, {1, 2})
    assert done_steps(job, planned(widest)).keys() == {"rout bass slot 1", "rout bass slot 2"}
    job, planned = routed(SLOT, widest, {2})
    assert not done_steps(job, planned(TURNED)), "the corners alone leave the wall"


def square(cutters, passes):
    """The demo with a slot of square corners, routed by cutters of that width (mm; with a minus by one that only follows into the corners),
    some of these passes ticked off; and its passes with other ones, the same."""
    corners = ((-21.0, 30.0), (-8.0, 30.0), (-8.0, 150.0), (-21.0, 150.0))
    shape = DrawnSlot(loop=Loop(nodes=tuple(Node(at=at) for at in corners)))
    job = demo()
    job = replace(job, slots=tuple(replace(slot, shape=shape) if slot.id == SLOT else slot for slot in job.slots))

    def planned(layout, cutters):
        trips = tuple(Trip("face", f"{abs(wide):g} straight", None, 0.0, 16.0, corners=wide < 0, cutter=abs(wide)) for wide in cutters)
        return [op for op in operations(layout, {SLOT: Routing(trips)}) if op.kind == "rout" and op.features == (SLOT,)]
    book = replace(job.book, piece="real")
    for number, op in enumerate(planned(job, cutters), 1):
        if number in passes:
            book = tick_off(book, task_of(op), number, made_by(job, op))
    job = replace(job, book=book)
    return job, lambda *cutters: planned(job, cutters)


@pytest.mark.parametrize(("was", "passes", "now", "open"), [
    ((12.0,), {1}, (6.0,), {1}), ((6.0,), {1}, (12.0,), set()), ((12.0, -6.0), {1, 2}, (6.0,), set()), ((12.0, -6.0), {1}, (6.0,), {1}),
    ((12.0, -6.0), {1, 2}, (12.0, -3.0), {2}), ((6.0,), {1}, (12.0, -6.0), set()), ((12.0, -6.0), {2}, (6.0,), {1}),
    ((12.0,), {1}, (12.0, -6.0), {2}), ((12.0, -6.0), {2}, (12.0, -6.0), {1}), ((6.2,), {1}, (6.0,), set())])
def test_a_slimmer_cutter_has_wood_to_take_in_the_corners_that_a_wider_one_left(was, passes, now, open):
    job, planned = square(was, passes)
    ops = planned(*now)
    assert {number for number, op in enumerate(ops, 1) if op.id not in done_steps(job, ops)} == open
    assert headstock.decode(headstock.encode(job)) == job


def test_a_notch_in_the_outline_is_left_to_a_slimmer_cutter_and_its_round_corners_are_not():
    """Of a head with square shoulders every cutter goes all round; into the notch of its tip, 10 mm wide and as deep, none does alike."""
    square = ((-30.0, 0.0), (30.0, 0.0), (30.0, 150.0), (-30.0, 150.0))
    notched = (*square[:3], (5.0, 150.0), (0.0, 140.0), (-5.0, 150.0), square[3])
    for corners, wide, slim, alike in ((square, 12.0, 6.0, True), (notched, 12.0, 6.0, False), (notched, 6.0, 12.0, True), (notched, 6.2, 6.0, True)):
        head = replace(demo(), outline=Loop(nodes=tuple(Node(at=at) for at in corners)))
        assert goes_as_far(head, "outline", wide, slim) == alike


def test_what_a_slimmer_cutter_has_left_to_take_is_told_with_both_cutters():
    job, planned = square((12.0,), {1})
    assert [goes_as_far(job, slot.id, 12.0, 6.0) for slot in job.slots] == [slot.id != SLOT for slot in job.slots]
    (text,) = not_so_deep(job, planned(6.0)).values()
    assert read(text, "mm").endswith("is cut through, by a cutter of 12.00 mm (job book); with the bits chosen now it is to be cut through, "
                                     "by a cutter of 6.00 mm.")
    (op,) = planned(6.0)
    again = replace(job, book=tick_off(job.book, task_of(op), 9, made_by(job, op)))
    assert done_steps(again, [op]).keys() == {op.id} and not not_so_deep(again, [op])
    rounded = replace(job, slots=demo().slots, book=replace(job.book, done=tuple(
        replace(one, cut=replace(one.cut, shape=demo().slots[0].shape, ends=9.0)) for one in job.book.done)))
    (text,) = not_so_deep(rounded, [op]).values()
    assert "cutter" not in text, "of round ends, where only the depth is another"
    older = replace(job, book=replace(job.book, done=tuple(replace(one, cut=replace(one.cut, cutter=None)) for one in job.book.done)))
    assert done_steps(older, [op]).keys() == {op.id}, "of which it is not known how wide the cutter was"
    assert read(made_words(again.book.done[0]), "mm").endswith("through, by a cutter of 6.00 mm")
    cut, = [one.cut for one in square((12.0, -6.0), {2})[0].book.done]
    assert read(made_words(replace(again.book.done[0], cut=cut)), "mm").endswith("through, in the corners alone, by a cutter of 6.00 mm")


def as_cut(*shapes, **changes):
    """The demo's first slot, cut by one pass after another as these shapes say; the slot is changed since."""
    job = demo()
    book = replace(job.book, piece="real", done=tuple(
        Done(piece="real", task=Task(operation=f"rout {SLOT} {i}", features=(SLOT,)), cut=shape) for i, shape in enumerate(shapes, 1)))
    return replace(job, book=book, slots=(replace(job.slots[0], **changes), *job.slots[1:]))


@pytest.mark.parametrize(("by", "said", "grade"), [
    ((1.0, 3.0, 2.0), "up to 1.5 mm beyond", "spoils the work"), ((-3.0, 0.5, -1.0), "up to 0.25 mm beyond", "spoils the work"),
    ((-1.0, -3.0, -2.0), "up to 1.5 mm short", "tight")])
def test_of_several_passes_the_one_that_is_farthest_off_is_told_with_its_place(by, said, grade):
    """Each as much wider or slimmer than the slot is drawn as is given; half of it is at each wall. Wood that is gone comes first."""
    drawn = demo().slots[0].shape
    snag, = told(as_cut(*(Shaped(shape=replace(drawn, width=drawn.width + one)) for one in by)))
    assert said in snag.text and snag.grade == grade
    x, y, _ = snag.where
    (x0, nut), (_, tip) = drawn.nut_end, drawn.tip_end
    far = math.hypot(x - x0, max(0.0, nut - y, y - tip)) - drawn.width / 2
    assert far == pytest.approx(max(0.0, *by) / 2, abs=0.01), "on the wall of that pass; of what is left on the wall that is drawn"


def test_what_is_cut_to_the_line_tells_of_the_floor_before_what_cleared_the_waste():
    shape = demo().slots[0].shape
    snag, = told(as_cut(Shaped(shape=shape, ends=9.0, light=1.0), Shaped(shape=shape, ends=9.5), depth=8.0))
    assert snag.text == "Bass slot is cut 9.50 mm deep (job book); the drawing now says 8.00 mm deep."
