"""A mark is caught by a corner and by nothing that only looks like one from afar."""

import numpy as np
import pytest

from geometry.tracing.catching import caught

LEFT, TOP, STEP = 60, 20, 5
"""A ruler of 210 points down from (LEFT, TOP), a line of 2 points every STEP from 30 below its top on."""


def ruler(blur: float) -> np.ndarray:
    """A light ruler on dark wood, its lines dark, as a camera sees it that is so many points out of focus."""
    grey = np.full((260, 170), 70.0)
    grey[TOP:TOP + 210, LEFT:140] = 190.0
    for y in range(TOP + 30, TOP + 171, STEP):
        grey[y:y + 2, LEFT:LEFT + (20 if (y - TOP - 30) % 50 == 0 else 10)] = 30.0
    kernel = np.exp(-np.arange(-9, 10) ** 2 / (2 * blur**2))
    for axis in (0, 1):
        grey = np.apply_along_axis(lambda row: np.convolve(np.pad(row, 9, "edge"), kernel / kernel.sum(), "valid"), axis, grey)
    return grey + np.random.default_rng(3).normal(0.0, 3.0, grey.shape)


@pytest.mark.parametrize("blur", [0.7, 1.2])
@pytest.mark.parametrize("stray", [(0.0, 0.0), (1.0, -1.5), (-2.0, 1.0)])
@pytest.mark.parametrize("line", [0, 100, 140])
def test_the_lines_of_a_ruler_catch_nothing_beside_where_they_begin(blur, stray, line):
    """The first and the last line were caught half a step to the inside: over 150 mm that made the head 0.8 % too large."""
    at = (LEFT + stray[0], TOP + 31.0 + line + stray[1])
    found = caught(ruler(blur), at, 2.0)
    assert found is None or abs(found[1] - (TOP + 31.0 + line)) < 1.0


@pytest.mark.parametrize("blur", [0.7, 1.5, 2.5])
def test_its_corners_are_still_caught(blur):
    """In a soft picture too: half a point."""
    for corner in ((LEFT, TOP), (140, TOP), (140, TOP + 210)):
        found = caught(ruler(blur), (corner[0] + 2.0, corner[1] - 1.5), 3.0)
        assert found is not None and np.hypot(found[0] - corner[0], found[1] - corner[1]) < 0.7
