"""Pictures of chance, measured mark by mark."""

import pytest

from geometry.accuracy.simulation import simulate
from geometry.drawing import STYLES, Area, Label, Stroke
from geometry.drawing.chances import spread_picture
from tests.geometry.accuracy.specimens import PERFECT, crowded, head, holes, only


def two_holes(apart: float, accuracy=None):
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.0 + apart, 60.0, 5.0)), accuracy=accuracy or only(mark=0.3))
    return simulate(layout, 4000)


def test_the_bars_of_a_spread_hold_all_trials_and_stay_in_their_box() -> None:
    clearance, = two_holes(0.3).clearances
    marks = spread_picture(clearance, 60.0, 24.0)
    bars = [m for m in marks if isinstance(m, Area)]
    assert {m.style for m in bars} == {"spoiled", "margin short"} <= set(STYLES)
    boxes = [m.outer.box for m in bars]
    assert min(b[0] for b in boxes) >= 2 and max(b[2] for b in boxes) <= 58 and max(b[3] for b in boxes) <= 24
    # Areas are in proportion to the trials: the spoiled part of the ink is the chance.
    red = sum(m.outer.area for m in bars if m.style == "spoiled")
    assert red / sum(m.outer.area for m in bars) == pytest.approx(clearance.spoiled, abs=0.03)
    assert all(m.owner == "hole 1" for m in marks)


def test_zero_and_margin_stand_where_the_bars_change() -> None:
    clearance = next(c for c in simulate(crowded(), 4000).clearances if 0.5 < c.short < 0.99)
    marks = spread_picture(clearance)
    zero = next(m for m in marks if isinstance(m, Stroke) and m.style == "nut line")
    margin = next(m for m in marks if isinstance(m, Stroke) and m.style == "dimension")
    bars = [m for m in marks if isinstance(m, Area)]
    x = margin.path.start[0]
    assert x > zero.path.start[0] == 2.0
    assert all(m.outer.box[2] <= x + 1e-9 for m in bars if m.style == "margin short")
    assert all(m.outer.box[0] >= x - 1e-9 for m in bars if m.style == "margin kept")
    assert [m.text for m in marks if isinstance(m, Label)] == ["0", f"{clearance.needed:g}"]


def test_a_spread_without_width_is_one_bar() -> None:
    clearance, = two_holes(1.0, PERFECT).clearances
    bars = [m for m in spread_picture(clearance) if isinstance(m, Area)]
    assert len(bars) == 1
