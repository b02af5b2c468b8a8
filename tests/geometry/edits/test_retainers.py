"""Retainers as they are proposed and put on holes."""

import math

import pytest
from msgspec.structs import replace

from geometry.beginning import Numbers, mended
from geometry.checks import check
from geometry.edits import add_hole, set_field
from geometry.edits.holes import set_retainer
from geometry.edits.retainers import GOOD, WANTED, add_retainer
from geometry.errors import GeometryError
from geometry.layout import Retainer
from geometry.strings.runs import break_angle, runs


def flat(**numbers):
    """A six in line whose face lies level, 11 mm below the strings at the nut."""
    layout = mended(Numbers(bass=6, treble=0, pitch=25.0, length=220.0, thickness=14.0, **numbers))[1]
    return replace(layout, nut=replace(layout.nut, pitch=0.0, height=11.0))


def bends(layout):
    return {run.string: math.degrees(break_angle(run, layout.nut)) for run in runs(layout)}


def test_one_after_the_other_they_press_every_string_down():
    layout = flat()
    assert min(bends(layout).values()) < 2.0 and any(snag.kind == "break-angle" for snag in check(layout).snags)
    first = add_retainer(layout)
    now = bends(first)
    flattest = min(bends(layout), key=bends(layout).get)
    assert now[flattest] >= WANTED - 1e-6 and sum(now[id] != bends(layout)[id] for id in now) == 2
    for _ in range(4):
        if min(bends(first).values()) >= GOOD:
            break
        first = add_retainer(first)
    assert min(bends(first).values()) >= GOOD
    assert not {snag.kind for snag in check(first).snags} & {"break-angle", "retainer-idle"}
    assert not any(hole.id in snag.between for snag in check(first).snags for hole in first.holes)
    with pytest.raises(GeometryError, match="none wants a retainer"):
        add_retainer(first)


def test_its_screw_stands_midway_between_two_strings():
    made = add_retainer(flat())
    hole, = made.holes
    xs = sorted(run.nut[0] + (run.post[0] - run.nut[0]) * hole.at[1] / run.post[1] for run in runs(made))
    near = sorted(abs(x - hole.at[0]) for x in xs)
    assert near[0] == pytest.approx(near[1], abs=0.02) and near[0] > 2.0
    assert hole.retainer.width == pytest.approx(2 * near[0] + 6.0, abs=0.1)


def test_where_no_screw_finds_wood_it_says_so():
    thin = flat()
    thin = replace(thin, margins=replace(thin.margins, screw_outline=500.0))
    with pytest.raises(GeometryError, match="No place"):
        add_retainer(thin)


def test_a_hole_takes_a_retainer_and_gives_it_back():
    layout = set_field(add_hole(flat(), (0.0, 30.0), 2.0), ("holes", "hole 1", "depth"), 9.0)
    there = set_retainer(layout, ["hole 1"], True)
    assert there.holes[0].retainer == Retainer(height=5.5)
    assert set_retainer(there, ["hole 1"], True) == there
    assert set_retainer(there, ["hole 1"], False) == layout
    with pytest.raises(GeometryError, match="no single hole"):
        set_retainer(layout, ["bass 1"], True)
    back = set_field(layout, ("holes", "hole 1", "surface"), "back")
    with pytest.raises(GeometryError, match="drilled from the back"):
        set_retainer(back, ["hole 1"], True)
    assert set_retainer(set_field(back, ("holes", "hole 1", "depth"), None), ["hole 1"], True).holes[0].retainer is not None


@pytest.mark.parametrize("height", [1.0, 2.0, 4.0])
def test_over_a_low_nut_none_is_set_where_one_is_already(height):
    """1 mm above the face is the least: 15 mm from the nut, the nearest, that is 3.8 degrees below 2 mm and 11.3 below 4 mm."""
    layout, places = replace(flat(), nut=replace(flat().nut, height=height), pins=()), []
    layout = replace(layout, strings=tuple(replace(one, diameter=0.8) for one in layout.strings))
    with pytest.raises(GeometryError, match="none wants a retainer" if height == 4.0 else "as low as one holds it"):
        for _ in range(9):
            before, layout = bends(layout), add_retainer(layout)
            flattest = min(before, key=before.get)
            assert bends(layout)[flattest] > before[flattest]
            places.append(layout.holes[-1].at)
    assert places and len(places) == len(set(places))
    if height == 4.0:
        assert min(bends(layout).values()) >= GOOD
    else:
        assert min(bends(layout).values()) == pytest.approx(math.degrees(math.atan2(height - 1, 15)), abs=0.1)


def test_between_strings_of_a_pair_there_is_no_room_for_a_screw():
    """Courses 2.2 mm apart: midway the screw of 2 mm would stand in both strings, so it goes between the courses."""
    layout = mended(Numbers(bass=6, treble=6, pitch=25.0, length=220.0, thickness=14.0))[1]
    layout = replace(layout, nut=replace(layout.nut, pitch=0.0, height=11.0, pair=2.2),
                     strings=tuple(replace(one, course=i // 2 + 1) for i, one in enumerate(layout.strings)))
    for _ in range(4):
        before = min(bends(layout).values())
        layout = add_retainer(layout)
        hole = layout.holes[-1]
        for run in runs(layout):
            x = run.nut[0] + (run.post[0] - run.nut[0]) * (hole.at[1] - run.nut[1]) / (run.post[1] - run.nut[1])
            assert run.post[1] < hole.at[1] or abs(x - hole.at[0]) > 1.0 + run.diameter / 2
        assert min(bends(layout).values()) >= before
    assert not [snag for snag in check(layout).snags if snag.kind == "string-to-screw"]


def test_a_thick_string_is_held_no_lower_than_its_air():
    """A string of 2.4 mm with 0.5 mm of air below it runs 1.7 above the face."""
    layout = replace(flat(), nut=replace(flat().nut, height=2.0))
    layout = replace(layout, strings=tuple(replace(one, diameter=2.4) for one in layout.strings))
    assert add_retainer(layout).holes[0].retainer.height == 1.7


def test_a_string_alone_gets_its_screw_beside_it():
    layout = flat()
    layout = replace(layout, strings=layout.strings[:1], tuners=(layout.tuners[0], *(replace(one, string=None) for one in layout.tuners[1:])))
    made = add_retainer(layout)
    run, = runs(made)
    hole, = made.holes
    assert run.under and not [snag for snag in check(made).snags if hole.id in snag.between]
