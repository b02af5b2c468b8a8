"""The quick look at the outline about side bores never passes over what the careful one finds."""

import math

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check, side_outline
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.edits import mirror_layout, slide_tuner
from geometry.layout import Margins
from geometry.solids.walls import Wall, oblong
from tests.geometry.checks.heads import SIDE, bore, head, leaning, loop, pattern, side
from tests.property.layouts import DEMO, displaced


def _both_ways(layout):
    scene = scene_of(layout, Memo())
    sides = [item for item in scene.items if item.mount == "side"]
    ring = side_outline._ring(scene.outline)
    sure = side_outline._nothing_but_mouths(sides, scene.outline, ring, layout.margins)
    return sure, [side_outline._outline(item, scene.outline, ring, layout.margins) for item in sides]


def test_the_demo_is_told_quickly_throughout():
    sure, found = _both_ways(DEMO)
    assert sure == [True] * 6 and found == [()] * 6


@settings(max_examples=30)
@given(st.data(), st.floats(0, 40), st.floats(0, 30))
def test_what_is_passed_over_has_nothing(data, bore, screw):
    layout = replace(data.draw(displaced(DEMO)), margins=Margins(bore_outline=bore, screw_outline=screw))
    sure, found = _both_ways(layout)
    assert all(not near for quick, near in zip(sure, found, strict=True) if quick)


def test_bores_that_come_near_the_outline_elsewhere_are_measured_either_way():
    """Under wide margins two of the demo's bores, and the screws of one of them."""
    layout = replace(slide_tuner(DEMO, "treble side 3", 160.0), margins=Margins(bore_outline=30.0, screw_outline=20.0))
    sure, found = _both_ways(layout)
    assert [bool(near) for near in found].count(True) == 2
    assert [quick for quick, near in zip(sure, found, strict=True) if near] == [False, False]
    assert sum(snag.kind == "side-bore-to-outline" for snag in check(layout).snags) == 2


def _told(layout):
    return sorted((snag.kind, snag.grade, round(snag.measured, 6)) for snag in check(layout).snags if snag.kind.endswith("to-outline"))


def test_a_bore_at_a_sharp_corner_is_told_on_either_side():
    """The edge leans inwards by 20 degrees, so a bore square to it beside the nut line runs out through that."""
    layout = head(outline=leaning(20.0), tuners=(side("a", 0.1),), patterns=(SIDE,))
    ((kind, grade, measured),) = _told(layout)
    assert kind == "side-bore-to-outline" and grade == "spoils the work" and measured < -10
    assert _told(mirror_layout(layout)) == _told(layout)


def test_a_screw_in_the_air_past_a_small_round_corner_is_told():
    """The tip is level at y = 180, its corners are round by 3; the screw lies at y = 183 and is 1.6 thick."""
    quarter = math.tan(math.pi / 8)
    outline = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 177.0, quarter), (37.0, 180.0), (-37.0, 180.0, quarter), (-40.0, 177.0))
    over = pattern("over", "side", bore(surface="seat", depth=30.0), bore("screw", 1.6, "seat", (7.0, 0.0), 9.0))
    layout = head(outline=outline, tuners=(side("a", 176.0, over),), patterns=(over,))
    (screw,) = [told for told in _told(layout) if told[0] == "screw-to-outline"]
    assert screw[1] == "spoils the work" and screw[2] <= -3.8
    assert _told(mirror_layout(layout)) == _told(layout)


@pytest.mark.parametrize("radius", [1.0, 2.0, 3.0, 5.0])
@pytest.mark.parametrize("gap", [1.0, 2.5, 3.3])
def test_a_round_corner_counts_from_where_it_has_turned_by_60_degrees(radius, gap):
    """Its middle lies at y = 180 - radius: there it stands at radius * sin(60 degrees) more, wherever its chords begin."""
    turned = 180.0 - radius + radius * math.sin(math.radians(60))
    along = min(turned - 3.0 - gap, 180.0 - radius)
    quarter = math.tan(math.pi / 8)
    outline = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 180.0 - radius, quarter), (40.0 - radius, 180.0), (-40.0, 180.0))
    layout = head(outline=outline, tuners=(side("a", along),), patterns=(SIDE,))
    ((kind, _, measured),) = _told(layout)
    assert kind == "side-bore-to-outline" and 0 <= turned - along - 3.0 - measured <= 0.005
    assert _told(mirror_layout(layout)) == _told(layout)


def test_a_sharp_corner_counts_from_itself():
    """The edge turns by 70 degrees at y = 120."""
    turn = math.radians(70)
    over = (40.0 - 60.0 * math.sin(turn), 120.0 + 60.0 * math.cos(turn))
    layout = head(outline=loop((-40.0, 0.0), (40.0, 0.0), (40.0, 120.0), over, (-40.0, over[1])), tuners=(side("a", 114.5),), patterns=(SIDE,))
    ((_, _, measured),) = _told(layout)
    assert 0 <= 2.5 - measured <= 0.005


def test_corners_upon_each_other_end_nothing():
    """The polygon library crashes the program where a prepared line is asked for the nearest point of one without length."""
    shape = Wall(oblong((0.0, 0.0), (0.0, 1.0), 5.0, 2.0))
    rest = shapely.LineString([(3.0, 2.0), (3.0, 2.0), (6.0, 2.0), (6.0, 2.0)])
    assert side_outline._nearest_places(shape, rest, 1.5) == [(3.0, 2.0)]


@pytest.mark.parametrize("more", [0.2, 0.5, 1.5, -0.2])
def test_the_curve_itself_tells_whether_it_has_turned_by_60_degrees(more):
    """From y = 100 on the edge turns inwards by so much more than 60 degrees, with a radius of 20, and then runs along the head again.
    Its chords turn by 0.8 degrees less than it does."""
    turn = math.radians(60 + more)
    end = (40.0 - 20.0 * (1 - math.cos(turn)), 100.0 + 20.0 * math.sin(turn))
    outline = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 100.0, math.tan(turn / 4)), end, (end[0], 180.0), (-40.0, 180.0))
    layout = head(outline=outline, tuners=(side("a", 100.0),), patterns=(SIDE,), margins=Margins(bore_outline=20.0))
    found = [measured for _, _, measured in _told(layout)]
    assert found == pytest.approx([20.0 * math.sin(math.radians(60)) - 3.0] if more > 0 else [], abs=0.005)
    assert _told(mirror_layout(layout)) == _told(layout)
