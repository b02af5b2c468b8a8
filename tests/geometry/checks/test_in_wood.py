"""What is drilled in the real piece is a fact: the drawing is held against it, in words and wherever it is moved."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from app.panels.describe import describe
from geometry.accuracy.knobs import knobs
from geometry.book import done_steps, made_by, otherwise, set_minutes, start, stop, task_of, tick_off
from geometry.checks import LiveCheck, check
from geometry.checks.in_wood import by_the_wood, renamed, strays
from geometry.cures.tracks import tracks
from geometry.edits import add_hole, free_from_row, mirror_layout, move_features, remove_features, rename, set_field
from geometry.layout import Book, Bored, Done, Reading, Task
from geometry.layout import drilled as drilled_ids
from geometry.measured import planned_value
from geometry.sequence import operations
from geometry.solids.in_wood import bored, on_axis, same_hole
from tests.geometry.sequence.specimens import SAMPLES, demo


def drilled(layout, *features, piece="real"):
    """The layout with every hole of these features drilled as it is drawn."""
    book = replace(layout.book, piece=piece)
    for number, op in enumerate(operations(layout), 1):
        if set(features) & set(op.features) and op.drillings:
            book = tick_off(book, task_of(op), number, made_by(layout, op))
    return replace(layout, book=book)


def told(layout):
    return [snag for snag in check(layout).snags if snag.kind.startswith("drilled")]


def test_nothing_is_told_while_the_drawing_is_what_was_drilled():
    job = drilled(demo(), "bass side 2", "treble face 2", "nut pin")
    assert len(job.book.done) > 5 and all(one.hole for one in job.book.done)
    assert [snag.said for snag in check(job).snags] == [snag.said for snag in check(demo()).snags]


def test_a_feature_that_is_moved_after_the_drill_is_told_of_with_both_places():
    job = drilled(demo(), "treble face 2")
    snag, = told(move_features(job, ["treble face 2"], (0.5, 1.0)))
    drillings = next(hole for hole in check(job).holes if hole.of == "treble face 2").drillings
    x, y, _ = drillings[0].start
    assert snag.between == ("treble face 2",) and snag.where == pytest.approx((x, y, 0.0))
    assert f"is drilled from the face at x {x:.2f} mm, y {y:.2f} mm (job book); the drawing now says from the face at x " in snag.text
    assert snag.text.endswith("So it is with 3 more holes there."), "one card for a tuner, however many holes it has"
    assert 'x 1.3' in snag.text_in("in") and " mm" not in snag.text_in("in")


def test_a_hole_that_is_timed_and_not_ticked_off_is_in_the_wood_where_it_was_drawn_as_the_timer_was_started():
    layout = demo()
    op = next(op for op in operations(layout) if op.kind == "bore" and op.features == ("treble face 2",))
    running = start(replace(layout.book, piece="real"), "real", task_of(op), 0.0, made_by(layout, op))
    moved = replace(move_features(layout, ["treble face 2"], (0.5, 1.0)), book=stop(running, 120.0))
    snag, = told(moved)
    assert snag.between == ("treble face 2",) and moved.book.times[0].hole == made_by(layout, op).hole
    again = start(moved.book, "real", task_of(op), 0.0, made_by(moved, op))
    assert stop(again, 60.0).times[0].hole == moved.book.times[0].hole, "the first sitting drilled it"
    assert done_steps(moved) == {} and otherwise(moved).keys() == {op.id}
    ticked = tick_off(moved.book, task_of(op), 1, made_by(moved, next(one for one in operations(moved) if one.id == op.id)))
    assert told(replace(moved, book=ticked)) == [], "drilled anew"
    assert told(replace(moved, book=set_minutes(moved.book, "real", task_of(op), 0.0))) == []


def test_what_comes_back_to_its_hole_is_no_snag_any_more():
    job = drilled(demo(), "treble face 2")
    there = move_features(job, ["treble face 2"], (0.5, 1.0))
    assert told(there) and not told(replace(job, book=there.book))


def test_holes_of_the_practice_piece_are_no_facts_of_the_real_one():
    assert told(move_features(drilled(demo(), "treble face 2", piece="practice"), ["treble face 2"], (0.5, 1.0))) == []


def test_what_is_taken_out_is_still_in_the_wood():
    snag, = told(remove_features(drilled(demo(), "treble face 2"), ("treble face 2",)))
    assert snag.kind == "drilled-and-gone" and snag.text.startswith("The drawing has no hole any more for “Counterbore treble face 2”, which is drilled from the face at x ")
    assert snag.text.endswith(" mm (job book). So it is with 3 more holes there.")


def test_while_no_snag_changes_what_is_told_of_gone_holes_is_the_same_object():
    live, gone = LiveCheck(), remove_features(drilled(demo(), "treble face 2"), ("treble face 2",))
    assert live.check(gone).snags is live.check(replace(gone, name="another")).snags


def test_a_hole_of_an_operation_that_drills_none_is_passed_over():
    """As a file may have it that another hand has written."""
    job = remove_features(drilled(demo(), "nut pin", "tip pin"), ("nut pin", "tip pin"))
    one, other = job.book.done
    for task in (replace(one.task, features=()), replace(one.task, operation="saw")):
        assert len(told(replace(job, book=replace(job.book, done=(replace(one, task=task), other))))) == 1


def test_no_move_is_sought_that_would_put_a_drilled_hole_elsewhere():
    job = drilled(demo(), "treble face 2", "bass side 2", "nut pin")
    for layout in (move_features(job, ["treble face 2", "bass side 2", "nut pin"], (0.5, 1.0)), remove_features(job, ("treble face 2", "nut pin"))):
        assert len(told(layout)) > 1 and all(tracks(layout, snag) == [] for snag in told(layout))


def test_a_renamed_feature_is_the_same_hole():
    assert told(rename(drilled(demo(), "treble face 2"), "tuners", "treble face 2", "third")) == []


def test_the_mirror_image_of_a_head_that_is_not_symmetric_is_another_piece():
    job = drilled(move_features(demo(), ["bass side 2"], (0.0, 3.0)), "bass side 2")
    snag, = told(mirror_layout(job))
    assert snag.between == ("treble side 2",)
    assert "drilled from the bass edge" in snag.text and "now says from the treble edge" in snag.text
    assert told(mirror_layout(mirror_layout(job))) == []


def test_the_mirror_image_of_a_symmetric_head_is_drilled_in_the_same_wood():
    job = drilled(demo(), "bass side 2", "treble face 1")
    there = mirror_layout(job)
    assert told(there) == []
    assert done_steps(there).keys() == done_steps(job).keys(), "the same sides of the wood are done"
    assert {id: one.number for id, one in done_steps(there).items()} == {id: one.number for id, one in done_steps(job).items()}
    assert "treble side 2" in told(remove_features(there, ("bass side 2",)))[0].text


def test_a_tick_that_knows_no_hole_counts_as_it_stands():
    job = drilled(demo(), "bass side 2")
    old = replace(job.book, done=tuple(replace(one, hole=None) for one in job.book.done))
    assert told(move_features(replace(job, book=old), ["bass side 2"], (0.0, 1.0))) == []


def test_a_blank_that_is_planed_narrower_moves_no_bore():
    job = drilled(demo(), "bass side 2", "treble side 2")
    blank = job.blank
    assert told(replace(job, blank=replace(blank, treble=blank.treble - 0.5, bass=blank.bass - 0.5))) == []


def test_the_depth_of_a_hole_from_the_back_is_told_by_where_it_ends_when_the_back_is_planed():
    job = drilled(demo(), "treble face 2")
    thin = replace(job, blank=replace(job.blank, thickness=job.blank.thickness - 1.0))
    snag, = told(thin)
    assert snag.grade == "tight" and "is drilled to 7.00 mm below the face (job book); the drawing now says to 6.00 mm below the face." in snag.text


def test_only_what_differs_is_told_and_the_tilt_as_it_is_set():
    job = drilled(demo(), "bass side 2")
    snag, = told(move_features(job, ["bass side 2"], (0.0, 4.0)))
    assert snag.text == ("Side bore of bass side 2 is drilled from the bass edge at y 113.80 mm, 1.0° tip raised (job book); "
                         "the drawing now says from the bass edge at y 117.83 mm, 1.3° tip raised. So it is with 2 more holes there.")
    snag, = told(replace(job, blank=replace(job.blank, thickness=15.0)))
    assert snag.text == ("Side bore of bass side 2 is drilled 8.00 mm below the face (job book); the drawing now says 7.50 mm below the face. "
                         "So it is with 2 more holes there.")


def test_a_feature_strays_as_long_as_one_of_its_holes_does():
    job = move_features(drilled(demo(), "treble face 2"), ["treble face 2"], (0.5, 1.0))
    assert strays(job, "treble face 2") and not strays(job, "treble face 1")


def test_holes_that_have_no_depth_or_turn_about_are_told_apart():
    flat = Bored(at=(0.0, 0.0, 5.0), end=(0.0, 0.0, 5.0), diameter=3.0)
    assert same_hole(flat, flat) and not on_axis(flat, replace(flat, at=(0.0, 0.1, 5.0)))
    down = Bored(at=(0.0, 0.0, 0.0), end=(0.0, 0.0, 16.0), diameter=3.0, through=True)
    up = replace(down, at=down.end, end=down.at)
    assert same_hole(down, up), "through from either side"
    assert not on_axis(replace(down, through=False), replace(up, through=False)) and not same_hole(down, replace(up, through=False))
    assert same_hole(down, replace(down, end=(0.0, 0.0, 15.0))), "through thinner wood it is through"


def test_a_hole_that_comes_through_is_the_same_from_the_back():
    job = add_hole(demo(), (0.0, 20.0), 5.0)
    id = job.holes[-1].id
    job = drilled(job, id)
    assert told(set_field(job, ("holes", id, "surface"), "back")) == []
    wider = set_field(set_field(job, ("holes", id, "surface"), "back"), ("holes", id, "diameter"), 6.0)
    assert "is drilled 5.00 mm wide (job book); the drawing now says 6.00 mm wide." in told(wider)[0].text


def test_a_hole_that_no_file_can_hold_is_not_written_down():
    drilling = next(hole for hole in check(demo()).holes if hole.of == "nut pin").drillings[0]
    assert bored(drilling) is not None and bored(replace(drilling, start=(6000.0, 0.0, 0.0), mark=None)) is None


def test_after_mirroring_what_stays_is_what_is_drilled_and_not_what_its_name_says():
    there = mirror_layout(drilled(demo(), "bass side 2"))
    assert drilled_ids(there) == {"treble side 2"} and drilled_ids(by_the_wood(there)) == {"bass side 2"}
    moving = {id for knob in knobs(there) for id in knob.features}
    assert "bass side 2" not in moving and "treble side 2" in moving
    assert describe(there, "bass side 2", "mm").facts[0].value == "drilled: a move here moves the plan alone"
    assert all(fact.label != "In the real piece" for fact in describe(there, "treble side 2", "mm").facts)


@pytest.mark.parametrize("piece", ["real", "practice"])
def test_after_mirroring_a_reading_is_of_the_hole_that_was_measured(piece):
    job = drilled(demo(), "bass side 1", "bass side 2", piece=piece)
    read = (Reading(piece=piece, drilling="bass side 2.1.1", what="y", value=60.0),
            Reading(piece=piece, drilling="bass side 1.1.1", what="distance", how="over the wood", other="bass side 2.1.1", value=30.0))
    job = replace(job, book=replace(job.book, readings=read))
    there = mirror_layout(job)
    assert there.book.readings[1].other == "treble side 2.1.1"
    named = by_the_wood(there, piece).book
    assert named.readings == read
    assert [planned_value(there, one) for one in named.readings] == pytest.approx([planned_value(job, one) for one in read])
    assert by_the_wood(replace(there, book=named), piece).book.readings == read, "what is written into the book so is told no other way"
    other = "practice" if piece == "real" else "real"
    assert by_the_wood(there, other).book is there.book


def test_what_is_gone_takes_a_name_of_its_own_sort_that_is_free():
    def task(operation):
        return Task(operation=operation, features=(operation.split()[1].split(".")[0],))

    def done(operation):
        return Done(piece="real", task=task(operation))
    bores, routs = ("bore a.1", "bore b.1", "bore c.1"), ("rout s 1", "rout t 1")
    book = Book(done=tuple(map(done, (*bores, *routs))), readings=tuple(Reading(piece="real", drilling=one.split()[1], what="y", value=1.0) for one in bores))
    again = tuple((task(new), done(old)) for old, new in (("bore b.1", "bore c.1"), ("rout s 1", "rout t 1"), ("bore a.1", "bore b.1")))
    made = renamed(book, again, "real")
    assert [one.task.operation for one in made.done] == ["bore b.1", "bore c.1", "bore a.1", "rout t 1", "rout s 1"]
    assert [one.drilling for one in made.readings] == ["b.1", "c.1", "a.1"]


def test_a_hole_that_is_drawn_where_another_was_drilled_is_that_one_and_its_own_is_gone():
    two = add_hole(add_hole(demo(), (0.0, 20.0), 5.0), (0.0, 40.0), 5.0)
    one, other = (hole.id for hole in two.holes[-2:])
    there = move_features(remove_features(drilled(two, one, other), (other,)), [one], (0.0, 20.0))
    snag, = told(there)
    assert snag.kind == "drilled-and-gone" and "from the face at x 0.00 mm, y 20.00 mm" in snag.text and "So it is" not in snag.text
    assert done_steps(there).keys() == {f"bore {one}.1"} and otherwise(there) == {}
    named = {tick.task.operation: tick.hole.at[1] for tick in by_the_wood(there).book.done}
    assert named == {f"bore {one}.1": 40.0, f"bore {other}.1": 20.0}, "no two ticks under one name"


@pytest.mark.parametrize("wide", ["counterbore", "bore"])
def test_of_the_holes_of_a_tuner_the_one_that_no_drill_makes_good_is_told(wide):
    """One is drilled too wide, another too narrow, whichever comes first."""
    job = drilled(demo(), "treble face 2")
    off = {"counterbore": -0.5, "bore": -0.5} | {wide: 0.5}
    done = tuple(replace(one, hole=replace(one.hole, diameter=one.hole.diameter + off.get(one.task.operation.split(" ")[0], 0.0))) for one in job.book.done)
    snag, = told(replace(job, book=replace(job.book, done=done)))
    kind = "Counterbore" if wide == "counterbore" else "Post bore"
    assert snag.grade == "spoils the work" and snag.text.startswith(f"{kind} of treble face 2 is drilled") and "1 more hole" in snag.text


def test_a_bore_that_was_drilled_as_a_pins_hole_is_told_of_when_its_tuner_goes_elsewhere():
    """The pin stays in its hole. What the drill can still make good is planned as a step of its own, and what is drilled anew settles it."""
    layout = read(SAMPLES / "three-a-side.headstock.json")
    job = free_from_row(drilled(layout, "nut pin"), "bass 1")
    assert job.book.done[0].task.features == ("nut pin", "bass 1") and not told(job)
    away = move_features(job, ["bass 1"], (0.0, 30.0))
    snag, = told(away)
    assert snag.between == ("bass 1",) and snag.grade == "spoils the work" and snag.text.startswith(
        "Post bore of bass 1 is drilled from the face at x -22.32 mm, y 43.54 mm (job book); the drawing now says from the face at x -22.32 mm, y 73.54 mm.")
    assert done_steps(away).keys() == {"pin hole nut pin.1"} and strays(away, "bass 1") and not strays(away, "nut pin")
    op = next(op for op in operations(away) if op.kind == "bore" and op.features == ("bass 1",))
    assert not told(replace(away, book=tick_off(away.book, task_of(op), 9, made_by(away, op)))), "plugged and drilled anew"
    path = ("patterns", job.tuner("bass 1").pattern, "bores", 0, "diameter")
    assert not told(set_field(job, path, 11.0)), "it is opened up where it is"
    assert [snag.between for snag in told(set_field(job, path, 9.0))] == [("bass 1",)]


def test_what_is_astray_is_told_beside_what_goes_by_another_name_and_beside_a_bore_that_a_pin_left():
    """Two tuners changed places, which is two names; a third and the one that had a pin in its bore were moved."""
    layout = free_from_row(read(SAMPLES / "three-a-side.headstock.json"), "bass 1")
    job = drilled(layout, "nut pin", "treble 1", "treble 2", "bass 3")
    one, two = (free_from_row(job, id).tuner(id).place for id in ("treble 1", "treble 2"))
    places = {"treble 1": two, "treble 2": one}
    changed = replace(job, tuners=tuple(replace(tuner, place=places.get(tuner.id, tuner.place)) for tuner in job.tuners))
    assert not told(changed)
    away = move_features(free_from_row(changed, "bass 3"), ["bass 3"], (0.0, 2.0))
    assert [snag.between for snag in told(away)] == [("bass 3",)]
    both = move_features(away, ["bass 1"], (0.0, 30.0))
    assert sorted(snag.between for snag in told(both)) == [("bass 1",), ("bass 3",)]
