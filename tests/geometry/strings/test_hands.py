"""Whether the thick strings run along the treble edge. Gauges in mm from memory of common sets."""

import pytest

from app.formats import headstock
from app.window.demo import samples
from geometry.edits import mirror_layout
from geometry.layout import String
from geometry.strings.hands import thick_on_treble

SIX = (1.17, 0.91, 0.66, 0.43, 0.33, 0.25)
OCTAVES = (0.69, 1.17, 0.46, 0.91, 0.3, 0.66, 0.2, 0.43, 0.33, 0.33, 0.25, 0.25)
"""Twelve strings whose thin octave lies outside the thick one of its course."""
DRONE = (0.25, 0.61, 0.41, 0.3, 0.25)
"""Five strings, the drone on the bass side."""
REENTRANT = (0.6, 0.8, 0.75, 0.55)


def strings(diameters):
    return [String(id=str(i), diameter=d, course=i) for i, d in enumerate(diameters, 1)]


@pytest.mark.parametrize("diameters", [SIX, OCTAVES, DRONE, REENTRANT])
def test_a_set_is_left_handed_only_the_other_way_round(diameters):
    assert not thick_on_treble(strings(diameters))
    assert thick_on_treble(strings(diameters[::-1]))


@pytest.mark.parametrize("diameters", [(), (1.0,), (0.5, 0.5), (0.3, 0.6, 0.3)])
def test_where_neither_side_has_more_nothing_is_claimed(diameters):
    assert not thick_on_treble(strings(diameters)) and not thick_on_treble(strings(diameters[::-1]))


@pytest.mark.parametrize("file", sorted(samples().glob("*.json")), ids=lambda file: file.name)
def test_samples_are_for_the_right_hand_until_they_are_mirrored(file):
    layout = headstock.read(file)
    assert not thick_on_treble(layout.strings) and thick_on_treble(mirror_layout(layout).strings)
