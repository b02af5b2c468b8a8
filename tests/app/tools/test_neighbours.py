"""Distances beside what is dragged: told anew at every step, but what stays is gathered once."""

import math
import random
from functools import cached_property
from pathlib import Path as FilePath

import pytest
from msgspec.structs import replace

from app.formats import headstock
from app.tools import Options, neighbours
from app.tools.grips import PointGrip
from app.tools.neighbours import FAR, PointNeighbours, SlotNeighbours, of_point
from app.tools.words import clearance, length
from app.window.demo import demo
from geometry.curves import Path
from geometry.drawing import Label
from geometry.edits import free_from_row, move_features, move_tuner, plan_point
from geometry.errors import GeometryError
from geometry.layout import Loop, Node, loop_path, slot_path
from geometry.solids.walls import Wall
from tests.geometry.checks.many import many

TUNER = "treble face 2"
SAMPLES = sorted(FilePath("samples").glob("*.headstock.json"))


def moved_anyhow(layout, id, chance):
    x, y = plan_point(layout, id)
    to = (x + chance.uniform(-30, 30), y + chance.uniform(-50, 50))
    if any(tuner.id == id for tuner in layout.tuners):
        return move_tuner(layout, id, to)
    return move_features(layout, (id,), (to[0] - x, to[1] - y))


def points_of(layout):
    face = {pattern.id for pattern in layout.patterns if pattern.mount == "face"}
    return [tuner.id for tuner in layout.tuners if tuner.pattern in face] + [one.id for one in (*layout.pins, *layout.holes)]


def told_by_points_on_the_walls(layout, id):
    """The words of all distances, from walls as close rows of points and posts as they are."""
    at = plan_point(layout, id)
    words = []
    if any(tuner.id == id for tuner in layout.tuners):
        posts = [p for other in points_of(layout) if other != id and any(t.id == other for t in layout.tuners)
                 and ((p := plan_point(layout, other))[0] >= 0) == (at[0] >= 0)]
        for way in (-1, 1):
            ahead = [math.dist(at, p) for p in posts if (p[1] - at[1]) * way > 0]
            words += [length(min(ahead), "mm")] if ahead else []
    radius = neighbours._radius(layout, id)
    walls = [[min(math.dist(at, segment.point(k / 999)) for segment in path for k in range(1000)) for path in paths]
             for paths in ([loop_path(layout.outline)], [slot_path(slot) for slot in layout.slots])]
    for distances in walls:
        wood = min(distances, default=math.inf) - radius
        words += [clearance(wood, "mm")] if 0 < wood <= FAR else []
    return words


@pytest.mark.parametrize("id", [TUNER, "treble face 1", "treble face 3"])
def test_distances_are_those_to_points_along_the_walls(id):
    chance, layout = random.Random(3), free_from_row(demo(), id)
    for _ in range(6):
        moved = moved_anyhow(layout, id, chance)
        told = [mark.text for mark in of_point(moved, id, "mm", 0.3) if isinstance(mark, Label)]
        for one, two in zip(told, told_by_points_on_the_walls(moved, id), strict=True):
            assert abs(float(one.split()[0]) - float(two.split()[0])) < 0.11, "a tenth, where one is rounded otherwise"


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name)
def test_gathered_once_they_are_those_of_each_layout(path):
    """Rows go along with their tuner, so their places have to be asked of each layout; all others may be kept."""
    chance, layout = random.Random(4), headstock.read(path)
    for id in points_of(layout):
        grip = PointGrip(layout, Options(), id)
        for _ in range(4):
            moved = moved_anyhow(layout, id, chance)
            assert grip._neighbours.marks(moved, "mm", 0.3) == of_point(moved, id, "mm", 0.3)


def test_a_step_asks_for_no_post_that_stays_and_measures_to_no_wall_that_is_far(monkeypatch):
    layout = free_from_row(demo(), TUNER)
    gathered = PointNeighbours(layout, TUNER, {TUNER})
    asked, measured = [], []
    where, nearest = neighbours.plan_point, Path.nearest_point
    monkeypatch.setattr(neighbours, "plan_point", lambda layout, id: asked.append(id) or where(layout, id))
    monkeypatch.setattr(Path, "nearest_point", lambda path, p: measured.append(path) or nearest(path, p))
    x, y = where(layout, TUNER)
    for k in range(10):
        gathered.marks(move_tuner(layout, TUNER, (x - 5 + k / 3, y - 3 + k / 2)), "mm", 0.3)
    assert asked == [TUNER] * 10
    assert len(measured) == 20, "the outline and the slot of its own side: the other is farther than that, as its box tells"


def told_of_slot(layout, id):
    """The words of a slot's distances, each wall measured to."""
    own = Wall(slot_path(next(slot for slot in layout.slots if slot.id == id)))
    webs = [own.to(Wall(slot_path(slot)))[0] for slot in layout.slots if slot.id != id]
    found = [own.to(Wall(loop_path(layout.outline)))[0], *sorted(webs)[:1]]
    return [clearance(distance, "mm") for distance in found if 0 < distance <= FAR]


def test_a_slot_is_told_its_rail_and_the_web_to_the_nearest_slot_and_measured_to_no_other_wall(monkeypatch):
    chance, head = random.Random(5), many(3)
    id = head.slots[2].id
    gathered, measured, made = SlotNeighbours(id), [], []
    reach, flat = Wall.to, Wall._flat.func
    for k in range(24):
        by = (chance.uniform(-25, 25), chance.uniform(-60, 60)) if k % 2 else (0.1 * k, 0.2 * k)
        moved = move_features(head, (id,), by)
        assert [mark.text for mark in gathered.marks(moved, "mm", 0.3) if isinstance(mark, Label)] == told_of_slot(moved, id)
    monkeypatch.setattr(Wall, "to", lambda wall, other: measured.append(other) or reach(wall, other))
    counted = cached_property(lambda wall: made.append(wall) or flat(wall))
    counted.__set_name__(Wall, "_flat")
    monkeypatch.setattr(Wall, "_flat", counted)
    for k in range(10):
        gathered.marks(move_features(head, (id,), (0.1 * k, 0.2)), "mm", 0.3)
    assert len(measured) <= 20, "the outline, and of five other slots the one beside it"
    assert len(made) == 10, "but for the wall of what moves none is made again"


def test_to_take_hold_asks_no_place_of_a_tuner_that_has_none():
    """A row along an edge that an outline without height does not have: to be told of it is for whoever asks for its place."""
    flat = replace(demo(), outline=Loop(nodes=(Node(at=(0.0, 0.0)), Node(at=(9.0, 0.0)), Node(at=(4.0, 0.0)))))
    pin = flat.pins[0].id
    assert PointNeighbours(flat, pin).marks(flat, "mm", 0.3) == of_point(flat, pin, "mm", 0.3)
    gathered = PointNeighbours(flat, "treble face 1")
    with pytest.raises(GeometryError):
        gathered.marks(flat, "mm", 0.3)
