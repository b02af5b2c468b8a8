"""Where tuners would come to lie, drawn over the layout as it is: their lines, and how far each moves."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from geometry import vectors as v
from geometry.drawing.marks import Area, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.opened_out import opened_out_groups
from geometry.drawing.shapes import straight
from geometry.layout import Headstock
from geometry.solids.frames import frames
from geometry.vectors import Vec2

STYLE = "proposed"
LETTER = 2.4
"""Capital height of the lengths, mm."""
_LEFT_OUT = ("string", "axis", "cross")
"""What of a tuner is not drawn again, so that the rest is seen"""
_SHORT = 0.3
"""mm: a move under this is drawn without an arrow"""
_HEAD = 1.6
"""Length of an arrow's head, mm, at most half of the arrow"""


def ghost(before: Headstock, after: Headstock, ids: Sequence[str], length: Callable[[float], str]) -> Drawing:
    """The tuners `ids` of `after` as lines alone, with an arrow from where each is in `before` and its length in words.

    In the opened-out view, mm. KeyError for an id that one of the layouts does not place.
    """
    old, new, groups = frames(before), frames(after), opened_out_groups(after)
    marks: list[Mark] = []
    for id in ids:
        marks += [line for mark in groups[id] if mark.style not in _LEFT_OUT for line in _lines(mark)]
        a, b = (tuple(map(float, placed[id].origin[:2])) for placed in (old, new))
        marks += _arrow(a, b, length(v.distance(a, b)), id)
    return tuple(marks)


def _lines(mark: Mark) -> list[Mark]:
    if isinstance(mark, Disc):
        return [Disc(mark.centre, mark.radius, STYLE, mark.owner, hidden=mark.hidden)]
    if isinstance(mark, Area):
        return [Stroke(path, STYLE, mark.owner) for path in (mark.outer, *mark.openings)]
    return [Stroke(mark.path, STYLE, mark.owner)] if isinstance(mark, Stroke) else []


def _arrow(a: Vec2, b: Vec2, words: str, owner: str) -> list[Mark]:
    far = v.distance(a, b)
    found: list[Mark] = []
    if far >= _SHORT:
        back = v.unit(v.sub(a, b))
        head = min(_HEAD, far / 2)
        found.append(Stroke(straight(a, b), STYLE, owner))
        for turn in (math.radians(28), -math.radians(28)):
            c, s = math.cos(turn), math.sin(turn)
            wing = (back[0] * c - back[1] * s, back[0] * s + back[1] * c)
            found.append(Stroke(straight(b, v.along(b, wing, head)), STYLE, owner))
    sign = 1.0 if b[0] >= 0 else -1.0
    found.append(Label(words, (b[0] + sign * 6.0, b[1]), LETTER, STYLE, owner, anchor="left" if sign > 0 else "right"))
    return found
