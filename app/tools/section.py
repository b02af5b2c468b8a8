"""A section line laid across the head: drawn, then dragged by its ends or as a whole."""

from __future__ import annotations

from typing import Literal

from app.tools import guides, words
from app.tools.options import Options
from app.tools.pointer import Gesture, Pointer, Shown
from app.tools.snap import tidy
from geometry import vectors as v
from geometry.curves import Line
from geometry.drawing import Drawing, Stroke
from geometry.drawing.shapes import straight
from geometry.layout import Headstock
from geometry.saying import say
from geometry.vectors import Vec2

REACH = 9.0
"""How far from the line or its ends, in pixels, they can be taken hold of."""

Hold = Literal["new", "a", "b", "whole"]


def section(layout: Headstock, options: Options) -> Gesture:
    """Press and drag to lay a line; then drag an end, drag the line, or press elsewhere for a new one. Esc ends it.

    Shift keeps the line straight across or along. Nothing is changed.
    """
    a: Vec2 | None = None
    b: Vec2 | None = None
    held: Hold | None = None
    grabbed: Vec2 = (0.0, 0.0)
    pointer = yield Shown(layout, readout=say("press and drag to lay a section line"), takes=None, follows=True)
    while True:
        if pointer.kind in ("press", "double"):
            held = _under(a, b, pointer)
            grabbed = pointer.at
            if held == "new":
                a = b = tidy(pointer.at)
        elif pointer.kind == "move" and held is not None and a is not None and b is not None:
            if held == "whole":
                by = v.sub(pointer.at, grabbed)
                a, b, grabbed = v.add(a, by), v.add(b, by), pointer.at
            elif held == "a":
                a = _kept(b, pointer)
            else:
                b = _kept(a, pointer)
        elif pointer.kind == "release":
            held = None
        laid = a is not None and b is not None and v.distance(a, b) > 1e-6
        readout = (say("section of {length}", length=words.length(v.distance(a, b), options.unit)) if laid else
                   say("drag to the other end"))
        pointer = yield Shown(layout, _marks(a, b, pointer.mm_per_pixel) if laid else (), readout,
                              line=(a, b) if laid else None, takes=None, follows=a is None)


def _under(a: Vec2 | None, b: Vec2 | None, pointer: Pointer) -> Hold:
    if a is None or b is None or v.distance(a, b) < 1e-6:
        return "new"
    reach = REACH * pointer.mm_per_pixel
    if v.distance(a, pointer.at) <= reach:
        return "a"
    if v.distance(b, pointer.at) <= reach:
        return "b"
    near = Line(a, b).point(Line(a, b).nearest(pointer.at))
    return "whole" if v.distance(near, pointer.at) <= reach else "new"


def _kept(other: Vec2, pointer: Pointer) -> Vec2:
    if not pointer.shift:
        return tidy(pointer.at)
    across = abs(pointer.at[0] - other[0]) >= abs(pointer.at[1] - other[1])
    return tidy((pointer.at[0], other[1]) if across else (other[0], pointer.at[1]))


def _marks(a: Vec2, b: Vec2, mm_per_pixel: float) -> Drawing:
    """The line with a ring at each end and a tick at each towards where the section looks."""
    along = v.unit(v.sub(b, a))
    aside = v.scale(v.left(along), 12.0 * mm_per_pixel)
    ticks = tuple(Stroke(straight(p, v.add(p, aside)), "section line") for p in (a, b))
    rings = tuple(mark for p in (a, b) for mark in guides.ring(p, 4.0 * mm_per_pixel))
    return (Stroke(straight(a, b), "section line"), *ticks, *rings)
