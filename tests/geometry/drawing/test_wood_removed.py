"""What a step takes off: its area and its volume of section agree with the wood before and after."""

import math

import pytest
import shapely
from shapely.geometry import Polygon

from geometry.curves.polygons import polygon
from geometry.drawing.marks import Area, Cross, Disc, Label
from geometry.drawing.section_cut import SectionLine
from geometry.drawing.wood_back import wood_back_drawing
from geometry.drawing.wood_removed import removed, removed_from_behind, removed_in_section, section_mark
from geometry.drawing.wood_section import section_for, wood_section
from geometry.drawing.wood_state import face_area
from geometry.layout import slot_path
from geometry.sequence import Operation, WoodState, best_order, operations, precedence, wood_after
from tests.geometry.accuracy.specimens import sample
from tests.geometry.sequence.specimens import TURNED, demo, stocked, with_waste

HEAD = stocked()
OPS = operations(HEAD, {"slot": with_waste(TURNED)})
BY_ID = {op.id: op for op in OPS}
STEPS = best_order(OPS, precedence(HEAD, OPS)).steps


def step(id: str) -> tuple[Operation, WoodState, WoodState]:
    at = STEPS.index(id)
    return BY_ID[id], wood_after(HEAD, STEPS, at, OPS), wood_after(HEAD, STEPS, at + 1, OPS)


def plan(id: str) -> float:
    """Area in mm2 of what a step takes, in plan."""
    return sum(_area(mark) for mark in removed(HEAD, *step(id)) if isinstance(mark, Area))


def _area(mark: Area) -> float:
    return abs(mark.outer.area) - sum(abs(o.area) for o in mark.openings)


def test_work_at_the_bench_takes_nothing_off() -> None:
    for id in ("template", "mark", "clean up"):
        assert removed(HEAD, *step(id)) == removed_in_section(HEAD, *step(id), section_for(HEAD)) == ()


def test_waste_holes_saw_and_router_take_the_slot_between_them() -> None:
    op, before, after = step("waste holes slot")
    row = op.waste_holes
    holes = [Polygon([(c[0] + dx, c[1] + dy) for dx, dy in ((-1, -1), (1, -1), (1, 1), (-1, 1))]) for c in row.centres]
    assert len(holes) > 1 and before.slots != after.slots
    slot = polygon(slot_path(HEAD.slots[0])).area
    # Through waste holes, then what the saw takes besides, then the rest: together the slot.
    if "saw slot" in STEPS:
        through = plan("waste holes slot") + plan("saw slot") + plan("rout slot 1")
        assert through == pytest.approx(slot, rel=2e-3)
    # The second trip goes deeper into wood under the whole slot that the first one left.
    assert 0.0 < plan("rout slot 2") <= slot * 1.001


def test_the_saw_takes_the_waste_and_both_square_edges() -> None:
    op, before, after = step("cut outline")
    taken = [m for m in removed(HEAD, op, before, after) if isinstance(m, Area)]
    edges = [m for m in taken if m.owner == "blank"]
    assert len(edges) == 2
    blank = HEAD.blank
    assert sum(map(_area, edges)) == pytest.approx(2 * blank.thickness * (blank.tip + blank.behind))
    waste = face_area(HEAD, before).area - face_area(HEAD, after).area
    assert sum(_area(m) for m in taken if m.owner != "blank") == pytest.approx(waste, rel=1e-6)


def test_a_side_bore_is_shown_with_its_mouth_on_the_folded_edge() -> None:
    id = next(id for id in STEPS if id.startswith("side bore"))
    op, before, after = step(id)
    marks = removed(HEAD, op, before, after)
    (d,) = op.drillings
    (mouth,) = [m for m in marks if isinstance(m, Disc)]
    assert mouth.radius == d.radius and abs(mouth.centre[0]) > HEAD.blank.treble
    assert all(mark.style == "removed" for mark in marks)


def test_the_section_loses_what_the_bore_takes() -> None:
    id = next(id for id in STEPS if BY_ID[id].kind == "bore")
    op, before, after = step(id)
    (cut,) = removed_in_section(HEAD, op, before, after, section_for(HEAD, op))
    d = op.drillings[0]
    assert abs(cut.outer.area) == pytest.approx(d.diameter * abs(d.end[2] - d.start[2]))


def test_the_section_of_a_router_trip_is_its_width_times_its_depth() -> None:
    op, before, after = step("rout slot 1")
    areas = removed_in_section(HEAD, op, before, after, section_for(HEAD, op))
    assert areas and all(area.owner == "slot" for area in areas)
    x0, y0, x1, y1 = areas[0].outer.box
    assert y1 <= 1e-9 and y0 >= -op.cut.end - 1e-9


def test_the_section_line_runs_over_the_wood() -> None:
    (mark,) = section_mark(HEAD, section_for(HEAD))
    assert mark.path.start[0] < -HEAD.blank.bass and mark.path.end[0] > HEAD.blank.treble


def test_from_behind_everything_is_mirrored() -> None:
    layout = demo()
    ops = operations(layout)
    steps = best_order(ops, precedence(layout, ops)).steps
    by_id = {op.id: op for op in ops}
    id = next(id for id in steps if by_id[id].kind == "pilot")
    at = steps.index(id)
    before, after = wood_after(layout, steps, at, ops), wood_after(layout, steps, at + 1, ops)
    d = by_id[id].drillings[0]
    (mark,) = removed_from_behind(layout, by_id[id], before, after)
    assert mark.centre == pytest.approx((-d.start[0], d.start[1]))
    shown = wood_back_drawing(layout, after)
    assert Disc((-d.start[0], d.start[1]), d.radius, d.operation, d.of) in shown
    assert sum(isinstance(m, Cross) for m in wood_back_drawing(layout, before)) == 1 + sum(
        isinstance(m, Cross) for m in shown)
    bores = [m for m in shown if isinstance(m, Disc) and m.style == "counterbore"]
    assert bores and all(m.hidden for m in bores)  # from the face and blind: not seen from behind
    assert any(isinstance(m, Label) and "back" in m.text for m in shown)


def test_the_finished_back_has_open_slots_and_no_paper() -> None:
    done = wood_after(HEAD, STEPS, len(STEPS), OPS)
    shown = wood_back_drawing(HEAD, done)
    wood = [m for m in shown if isinstance(m, Area) and m.style == "wood"]
    assert sum(map(_area, wood)) == pytest.approx(
        polygon(slot_path(HEAD.slots[0])).area * -1 + face_area(HEAD, done).area, rel=1e-3)
    assert not any(isinstance(m, Cross) for m in shown)


def _standing(marks: tuple) -> shapely.Geometry:
    """The wood of a section: what is shown of it without all that is cut out of it."""
    areas = [(mark.style in ("wood", "waste") and mark.owner in ("blank", "outline"), polygon(mark.outer)) for mark in marks if isinstance(mark, Area)]
    return shapely.union_all([shape for wood, shape in areas if wood]) - shapely.union_all([shape for wood, shape in areas if not wood])


@pytest.mark.parametrize("name", ["mixed-one-slide-too-far", "slotted-three-a-side"])
def test_each_step_leaves_in_a_section_what_it_does_not_take(name: str) -> None:
    """Where each step cuts, and along a line askew over the side bores: before less what is taken is what is there after."""
    head = sample(name)
    ops = operations(head)
    steps, by_id, cut = best_order(ops, precedence(head, ops)).steps, {op.id: op for op in ops}, 0.0
    askew = SectionLine((-10.0, 40.0), (math.cos(1.9), math.sin(1.9)))
    for at, id in enumerate(steps):
        before, after = wood_after(head, steps, at, ops), wood_after(head, steps, at + 1, ops)
        for line in (section_for(head, by_id[id]), askew):
            taken = shapely.union_all([polygon(mark.outer) for mark in removed_in_section(head, by_id[id], before, after, line)])
            was, left = _standing(wood_section(head, before, line)), _standing(wood_section(head, after, line))
            assert shapely.symmetric_difference(was - taken, left).area < 0.2, (id, line)
            cut += taken.area
    assert cut > 1000.0
