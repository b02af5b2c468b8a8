"""The quick look at the outline about side bores never passes over what the careful one finds."""

from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check, side_outline
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.edits import slide_tuner
from geometry.layout import Margins
from tests.property.layouts import DEMO, displaced


def _both_ways(layout):
    scene = scene_of(layout, Memo())
    sides = [item for item in scene.items if item.mount == "side"]
    ring = side_outline._ring(scene.outline)
    sure = side_outline._nothing_but_mouths(sides, scene.outline, ring, layout.margins)
    return sure, [side_outline._near(item, scene.outline, ring, layout.margins) for item in sides]


def test_the_demo_is_told_quickly_throughout():
    sure, found = _both_ways(DEMO)
    assert sure == [True] * 6 and found == [[]] * 6


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
