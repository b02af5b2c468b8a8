"""Ghosts of tuners: the very lines of the changed layout, and an arrow as long as the move."""

import math

import pytest
from msgspec.structs import replace

from geometry.curves import Line
from geometry.drawing import Disc, Label, Stroke, opened_out_groups
from geometry.drawing.ghost import ghost
from geometry.solids.frames import frames
from tests.geometry.accuracy.specimens import demo


def moved(by: float):
    layout = demo()
    tuners = tuple(replace(t, place=replace(t.place, along=t.place.along + by)) if t.id == "treble side 2" else t
                   for t in layout.tuners)
    return layout, replace(layout, tuners=tuners)


def words(mm: float) -> str:
    return f"{mm:.2f}"


def test_the_ghost_has_the_circles_of_the_changed_layout_and_an_arrow() -> None:
    before, after = moved(4.0)
    marks = ghost(before, after, ["treble side 2"], words)
    assert {m.style for m in marks} == {"proposed"} and {m.owner for m in marks} == {"treble side 2"}
    circles = {(m.centre, m.radius) for m in opened_out_groups(after)["treble side 2"] if isinstance(m, Disc)}
    assert {(m.centre, m.radius) for m in marks if isinstance(m, Disc)} == circles != set()
    a, b = (frames(layout)["treble side 2"].origin[:2] for layout in (before, after))
    arrow, = [m for m in marks if isinstance(m, Stroke) and m.path.start == pytest.approx(a)]
    assert arrow.path.end == pytest.approx(b) and isinstance(next(iter(arrow.path)), Line)
    label, = [m for m in marks if isinstance(m, Label)]
    assert label.text == words(math.dist(a, b)) and label.anchor == "left"


def test_a_hair_has_no_arrow_and_an_unknown_tuner_is_refused() -> None:
    before, after = moved(0.1)
    marks = ghost(before, after, ["treble side 2"], words)
    a = frames(before)["treble side 2"].origin[:2]
    assert not [m for m in marks if isinstance(m, Stroke) and m.path.start == pytest.approx(a)]
    assert ghost(before, after, [], words) == ()
    with pytest.raises(KeyError):
        ghost(before, after, ["nobody"], words)
