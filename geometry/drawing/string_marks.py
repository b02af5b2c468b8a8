"""Strings on the face: how far each bends aside and down, and where a proposal would lead it."""

from __future__ import annotations

import math
from collections.abc import Sequence

from geometry.drawing.marks import Cross, Drawing, Label, Mark, Stroke
from geometry.drawing.shapes import straight
from geometry.layout import Headstock
from geometry.strings import Run
from geometry.strings.runs import break_angle
from geometry.units import format_angle

LETTER = 2.0
"""Capital height of the angles behind the nut, mm."""
APART = 5.6
"""Least distance of two lines of them, mm: they fan out where the strings stand closer."""
CLEAR = APART / 2
"""Least distance of the middle of a line from the centreline, which would cross its words, mm."""
BEHIND, LEAD = 4.0, 0.6
"""Where the words begin behind the nut line, and where the line to them begins, mm."""


def angle_marks(layout: Headstock, found: Sequence[Run]) -> Drawing:
    """Behind the nut, for each string: its name, its side angle at the nut and its break angle over it."""
    ordered = sorted(found, key=lambda run: run.nut)
    marks: list[Mark] = []
    behind = min([0.0, *(run.nut[1] for run in ordered)]) - BEHIND
    for run, x in zip(ordered, _fanned([run.nut[0] for run in ordered]), strict=True):
        down = break_angle(run, layout.nut)
        text = f"{run.string}: {format_angle(abs(run.side_angle))} {format_angle(down)}"
        marks.append(Stroke(straight((run.nut[0], run.nut[1] - LEAD), (x, behind + LEAD)), "dimension", run.tuner))
        marks.append(Label(text, (x, behind), LETTER, "dimension", run.tuner, -math.pi / 2, "left"))
    return tuple(marks)


def ghost_strings(found: Sequence[Run]) -> Drawing:
    """The runs of a proposal, with a cross where each meets its post."""
    marks: list[Mark] = []
    for run in found:
        marks += [Stroke(straight(run.nut, run.post), "template", run.tuner), Cross(run.post, 2.5, "template", run.tuner)]
    return tuple(marks)


def _fanned(places: list[float]) -> list[float]:
    """The places moved apart as little as keeps neighbours APART, their middle kept but for what keeps all CLEAR (mm, in order)."""
    if not places:
        return []
    made = [places[0]]
    for x in places[1:]:
        made.append(max(x, made[-1] + APART))
    lag = (sum(made) - sum(places)) / len(places)
    crossed = next((x - lag for x in made if abs(x - lag) < CLEAR), None)
    aside = 0.0 if crossed is None else math.copysign(CLEAR, crossed) - crossed
    return [x - lag + aside for x in made]
