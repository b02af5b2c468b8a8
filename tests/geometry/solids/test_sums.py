"""Sums of plane shapes where a rim runs along a side of the other shape, but for rounding."""

import numpy as np
import shapely
from hypothesis import example, given
from hypothesis import strategies as st

from geometry.beginning import Numbers, mended
from geometry.solids.sums import _swept, area_sum, united, way_out

JITTER = st.lists(st.floats(-1e-13, 1e-13), min_size=12, max_size=12)


@given(JITTER, st.floats(0, 3.1), st.floats(0.5, 30.0))
def test_a_line_swept_along_itself_covers_both(jitter: list[float], turn: float, length: float) -> None:
    """Six chords straight on, each a rounding off the line; what covers them has no area, and joins never fail."""
    way = np.array([np.cos(turn), np.sin(turn)])
    chain = np.outer(np.linspace(0, 40, 6), way) + np.reshape(jitter, (6, 2))
    beside = np.array([[0.0, 10.0], [7.0, 3.0]])
    both = np.concatenate([chain, chain[-1:] + beside])
    made = united(_swept(both, np.array([-length / 2 * way, length / 2 * way])))
    alone = united(_swept(both[-3:], np.array([-length / 2 * way, length / 2 * way])))
    assert abs(shapely.area(made) - shapely.area(alone)) < 1e-6


STEPS = st.lists(st.tuples(st.integers(1, 15), st.integers(5, 40)), min_size=3, max_size=8)
BLOCK = np.array([(0, 0), (5, 0), (5, 5), (0, 5)], dtype=float)


def stairs(steps: list[tuple[int, int]]) -> np.ndarray:
    """The rim of a wall that stands on a straight line, of pieces so wide and so high."""
    right = np.cumsum([wide for wide, _ in steps])
    top = [at for k, (wide, high) in enumerate(steps) for at in ((right[k] - wide, high), (right[k], high))]
    return np.array([(0, 0), *top, (right[-1], 0), (0, 0)], dtype=float)


@example([(7, 6), (5, 5), (15, 5), (6, 29), (13, 20)], 6.0, 38, 29)  # united without a grid, a corner of 25 mm2 was lost
@given(STEPS, st.floats(0, 6.2), st.integers(-4, 90), st.integers(-4, 40))
def test_the_way_out_is_as_long_whichever_way_the_shapes_are_turned(steps, turn, x, y) -> None:
    """On whole mm nothing is rounded; turned, rounding leaves holes and cracks where the parts of the sum meet."""
    c, s = np.cos(turn), np.sin(turn)
    spin = np.array([[c, -s], [s, c]])
    rim, at = stairs(steps), np.array([x + 0.25, y + 0.25])
    plain, turned = (way_out(area_sum(shapely.Polygon((rim - at) @ m), (rim - at) @ m, BLOCK @ m)) for m in (np.eye(2), spin))
    assert abs(plain[0] - turned[0]) < 1e-6


def test_numbers_whose_ramp_swept_along_the_edge_stay_sound() -> None:
    """Found by chance: the straight flank of the head and the side of the ramp were parallel but for rounding."""
    numbers = Numbers(6, 3, "side", "side", 52.21340188529294, 285.53935700131734, 69.70951670367269, 43.33708204459642,
                      37.163562086048955, courses=True)
    assert mended(numbers)[0].thickness == 26.0
