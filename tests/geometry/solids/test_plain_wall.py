"""Ways back inside outlines of thousands of corners: sought along a plainer line, never too short."""

import math

import numpy as np
import pytest
import shapely

from geometry.layout import Slot, StraightSlot, loop_path, slot_path
from geometry.solids import ways_out
from geometry.solids.slot_ways import into_outline
from geometry.solids.sums import united, way_out
from geometry.solids.walls import Wall
from geometry.solids.ways_out import MOST_SEGMENTS, level_from_outside, plain_wall, strip
from tests.geometry.checks.heads import loop
from tests.outside.overlap_cases import drilling
from tests.property.layouts import DEMO

RADIUS = 50.0


def round_head(corners):
    """A regular polygon about (0, 0); of so many corners a circle but for less than a ten thousandth of a mm."""
    return [(RADIUS * math.cos(2 * math.pi * i / corners), RADIUS * math.sin(2 * math.pi * i / corners)) for i in range(corners)]


def saw(corners, tooth):
    """The same with every other corner farther out."""
    return [(x * (1 + tooth * (i % 2) / RADIUS), y * (1 + tooth * (i % 2) / RADIUS)) for i, (x, y) in enumerate(round_head(corners))]


def wall(corners):
    return Wall(loop_path(loop(*corners)))


def test_an_ordinary_outline_is_followed_as_it_is():
    head = Wall(loop_path(DEMO.outline))
    plain, by = plain_wall(head)
    assert (plain.path, plain.sagitta, by) == (head.path, ways_out.SAGITTA, 0.0)


@pytest.mark.parametrize("corners", [round_head(20_000), saw(4_000, 1.5), saw(1_200, 0.03), saw(1_200, 0.0) + [(200.0, -1.0), (200.0, -2.0)]])
def test_the_plainer_line_has_few_corners_and_strays_no_more_than_it_says(corners):
    head = wall(corners)
    plain, by = plain_wall(head)
    assert len(plain.points) <= MOST_SEGMENTS + 2
    assert shapely.hausdorff_distance(head.line, plain.line) <= by + 1e-9
    far = shapely.distance(plain.line, shapely.points(head.points)).max()
    assert by <= 4.0 and far <= by + 1e-9


def test_few_corners_far_apart_are_all_kept_among_thousands_close_together():
    head = wall(saw(3_000, 0.0) + [(200.0, -1.0), (200.0, -60.0), (120.0, -60.0)])
    _, by = plain_wall(head)
    assert by < 0.01


def test_a_slot_comes_back_into_a_round_head_of_twenty_thousand_corners():
    # Radially from (30, 0) to (60, 0), 8 wide: its end lies at 64, and 50 is where it may lie.
    slot = Slot(id="s", shape=StraightSlot(nut_end=(30.0, 0.0), tip_end=(60.0, 0.0), width=8.0))
    depth, way = into_outline(slot, Wall(slot_path(slot)), wall(round_head(20_000)))
    assert 14.0 - 1e-4 <= depth <= 14.02
    assert way == pytest.approx((-1.0, 0.0), abs=1e-2)


@pytest.mark.parametrize(("tooth", "spare"), [(0.0, 0.01), (0.03, 0.2), (1.5, 7.0)])
def test_a_bore_is_led_back_inside_a_saw_of_five_thousand_teeth(tooth, spare):
    """From the left it runs out at the right by 15 mm: least is what brings its far corners back to the inner tips."""
    head = wall(saw(10_000, tooth))
    bore = drilling((0.0, 0.0, 8.0), (1.0, 0.0, 0.0), 65.0, 4.0)
    found = level_from_outside(bore, head.points[np.abs(head.points[:, 1]) < 40])
    least = 65.0 - math.sqrt(RADIUS ** 2 - 4.0 ** 2)
    assert least - 1e-3 <= found.depth <= least + spare
    there = shapely.transform(shapely.Polygon(strip(bore)), lambda xy: xy + found.depth * np.array(found.plan))
    assert shapely.difference(there, head.area).area == pytest.approx(0.0, abs=1e-3)


@pytest.mark.parametrize("tooth", [0.03, 1.0])
def test_a_bore_beside_more_than_a_thousand_chords_is_led_back_without_uniting_them_all(tooth, monkeypatch):
    """Hundreds of long bands lie over each other: out of the few that lie across the way it is as long as out of all."""
    chain = np.array(saw(1_300, tooth))
    bore = drilling((0.0, 0.0, 8.0), (1.0, 0.0, 0.0), 65.0, 4.0)
    together, real = [], shapely.union_all
    monkeypatch.setattr(shapely, "union_all", lambda areas, **words: together.append(len(areas)) or real(areas, **words))
    found, few = level_from_outside(bore, chain), sum(together)
    together.clear()
    monkeypatch.setattr(ways_out, "way_out_among", lambda parts: way_out(united(parts)))
    every = level_from_outside(bore, chain)
    assert few < 100 < max(together)
    assert found.depth == pytest.approx(every.depth, abs=1e-6)
    assert found.plan == pytest.approx(every.plan, abs=1e-6)
