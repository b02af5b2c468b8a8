"""A straight slot is known as one however another program drew it, with the numbers that were drawn."""

import math

import pytest

from geometry.curves import Arc, Cubic, Line, Path, circle, shift, turn
from geometry.edits.imported_openings import slot_shape
from geometry.layout import DrawnSlot, StraightSlot

QUARTER = 0.5522847498
"""Handles of the usual cubic for a quarter circle, in radii: (4/3) tan(pi/8)."""
H, L = 7.0, 40.0
"""Half the width and half the distance of the ends of the slot that is drawn, mm; it stands upright about the origin."""


def end(kind: str, up: int) -> list:
    """The round end at the tip (1) or the nut (-1), counter-clockwise."""
    y = up * L
    a, tip, b = (up * H, y), (0.0, y + up * H), (-up * H, y)
    if kind == "half":
        return [Arc.about((0.0, y), H, 0.0 if up > 0 else math.pi, math.pi)]
    if kind == "quarters":
        start = 0.0 if up > 0 else math.pi
        return [Arc.about((0.0, y), H, start + i * math.pi / 2, math.pi / 2) for i in (0, 1)]
    k = QUARTER * H * up
    return [Cubic(a, (a[0], a[1] + k), (tip[0] + k, tip[1]), tip), Cubic(tip, (tip[0] - k, tip[1]), (b[0], b[1] + k), b)]


def wall(start, stop, pieces: int) -> list:
    at = [tuple(start[c] + (stop[c] - start[c]) * i / pieces for c in (0, 1)) for i in range(pieces + 1)]
    return [Line(p, q) for p, q in zip(at, at[1:], strict=False)]


def drawn(kind: str, pieces: int = 1, bow: float = 0.0) -> Path:
    right = wall((H, -L), (H, 0.0), 1) + wall((H, 0.0), (H, L), 1) if not bow else \
        wall((H, -L), (H + bow, 0.0), 1) + wall((H + bow, 0.0), (H, L), 1)
    right = right if pieces > 1 or bow else wall((H, -L), (H, L), 1)
    return Path((*right, *end(kind, 1), *wall((-H, L), (-H, -L), pieces), *end(kind, -1)), closed=True)


@pytest.mark.parametrize("degrees", [0.0, 90.0, 3.0, -88.5])
@pytest.mark.parametrize("pieces", [1, 3])
@pytest.mark.parametrize("kind", ["half", "quarters", "cubics"])
def test_a_straight_slot_is_known_however_it_was_drawn(kind, pieces, degrees):
    where = shift(12.0, 80.0).after(turn(math.radians(degrees)))
    found = slot_shape(drawn(kind, pieces).mapped(where))
    assert isinstance(found, StraightSlot) and found.width == pytest.approx(14.0, abs=1e-9)
    wanted = sorted((where((0.0, -L)), where((0.0, L))), key=lambda at: (at[1], at[0]))
    assert [*found.nut_end, *found.tip_end] == pytest.approx([*wanted[0], *wanted[1]], abs=2e-9)


def test_a_step_that_no_eye_sees_does_not_matter():
    """A wall drawn 0.008 mm aside, as ends that do not meet leave it."""
    assert isinstance(slot_shape(drawn("half", bow=0.008)), StraightSlot)


@pytest.mark.parametrize("path", [
    drawn("half", bow=0.05),
    circle((0.0, 0.0), 15.0),
    Path((*wall((7, -40), (7, 40), 1), *wall((7, 40), (-7, 40), 1), *wall((-7, 40), (-7, -40), 1), *wall((-7, -40), (7, -40), 1)), True),
    Path((*wall((7, -40), (7, 40), 1), *end("half", 1), *wall((-7, 40), (-7, -40), 1), *wall((-7, -40), (7, -40), 1)), True),
    Path((Line((8, -40), (7, 40)), *end("half", 1), Line((-7, 40), (-8, -40)), Line((-8, -40), (8, -40))), True),
    Path((Line((0, 0), (1e-12, 0)), Line((1e-12, 0), (0, 0))), True),
], ids=["bowed", "round", "square", "one end square", "tapered", "a point"])
def test_what_is_no_straight_slot_stays_as_drawn(path):
    found = slot_shape(path)
    assert isinstance(found, DrawnSlot) and len(found.loop.nodes) == len(path.segments)
