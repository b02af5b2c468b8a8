"""What the ends of the nut, the outer strings at it, the edges of the blank, the line of its scarf joint and the glue line of an ear do
when they are dragged."""

from __future__ import annotations

import math

from app.tools import typed, words
from app.tools.hit import Target
from app.tools.options import Options
from app.tools.pointer import Pointer, Shown
from app.tools.snap import grid_words
from geometry.edits.fields import get_field, set_field
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.terms import term
from geometry.vectors import Vec2

LEAST = 0.5
"""A size pulled to nothing stops at this many mm."""


class SizeGrip:
    """One number of the layout that follows the pointer along one axis: value = start + factor * way."""

    def __init__(self, layout: Headstock, options: Options, target: Target) -> None:
        self._layout, self._options = layout, options
        self.origin = target.at
        self._held = (target.id,)
        self._path, self._axis, self._factor, self._least = _reading(layout, target)
        self._most = layout.blank.tip if target.part == "scarf" else math.inf  # past the tip there is no line to be taken again
        self._start = float(get_field(layout, self._path))
        self._word = {"nut end": say("width"), "ear": say("width"), "outer string": say("first to last")}.get(
            target.kind, say("scarf joint") if target.part == "scarf" else term(str(target.part)))
        self.name = {"nut end": say("Change the width of the nut"), "outer string": say("Spread the strings")}.get(
            target.kind, say("Change the {target}", target=target.name))

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        value = self._start + self._factor * (to[self._axis] - self.origin[self._axis])
        step = self._options.grid if self._options.snapping and not pointer.alt else None
        value = min(max(self._least, round(round(value / step) * step, 6) if step else round(value, 2)), self._most)
        snapped = grid_words(self._options) if step else ""
        return Shown(set_field(self._layout, self._path, value), (),
                     f"{self._word} {words.length(value, self._options.unit)}", snapped, self._held)

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        value = typed.number(text, self._options.unit)
        if value is None:
            raise GeometryError(say("Type a length here."))
        return set_field(self._layout, self._path, value)


def _reading(layout: Headstock, target: Target) -> tuple[tuple[str, ...], int, float, float]:
    """(path of the field, axis, factor, least value) that a target stands for."""
    if target.kind == "nut end":
        return ("nut", "width"), 0, 2.0 if target.part == "treble" else -2.0, LEAST
    if target.kind == "outer string":
        return ("nut", "spread"), 0, 2.0 if target.part == "treble" else -2.0, LEAST
    if target.kind == "ear":
        side = next(ear.side for ear in layout.ears if ear.id == target.id)
        return ("ears", target.id, "width"), 0, -1.0 if side == "treble" else 1.0, LEAST
    if target.part in ("tip", "behind"):
        return ("blank", target.part), 1, 1.0 if target.part == "tip" else -1.0, LEAST if target.part == "tip" else 0.0
    if target.part == "scarf":
        return ("blank", "scarf"), 1, 1.0, LEAST
    return ("blank", target.part), 0, 1.0 if target.at[0] > 0 else -1.0, LEAST
