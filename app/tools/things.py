"""What can be measured between, as exact curves in plan and as drilled cylinders."""

from __future__ import annotations

from functools import cached_property

import numpy as np
from msgspec import Struct

from app.tools.hit import Target, drillings
from geometry import vectors as v
from geometry.curves import Path, circle
from geometry.drawing.glue_lines import joint_line
from geometry.drawing.shapes import straight
from geometry.drawing.tuner_plan import folded, strip
from geometry.edits.moving import plan_point
from geometry.layout import Headstock, Side, loop_path, slot_path
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids import Drilling
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.solids.walls import Wall
from geometry.vectors import Vec2


class Thing(Struct, frozen=True, dict=True):
    """Something to measure from: a point, or curves with what lies inside them (mm)."""

    name: str
    point: Vec2 | None = None
    paths: tuple[Path, ...] = ()
    bores: tuple[Drilling, ...] = ()
    """drilled cylinders, for a true distance in space"""
    middle: Vec2 | None = None
    """of what is drilled: the middle of its bore, where it is marked or stands in plan"""
    of: str = ""
    """whose middle it is"""
    opening: bool = False
    """whether things inside its curve keep a distance from it (the outline) rather than meet it (a slot, a bore)"""

    @cached_property
    def walls(self) -> tuple[Wall, ...]:
        """Its curves, prepared for questions of distance."""
        return tuple(Wall(path) for path in self.paths)


class Between(Struct, frozen=True):
    """The shortest distance between two things, mm: in plan from `a` to `b`, and in space between bores."""

    distance: float
    a: Vec2
    b: Vec2
    in_space: float | None = None


def thing(layout: Headstock, target: Target, on_strip: bool = False) -> Thing:
    """What a target stands for. On a folded edge a side tuner is its marks there, in plan its bores."""
    if target.kind in ("node", "nut end", "outer string", "handle"):
        return Thing(target.name, target.at)
    if target.id == OUTLINE:
        return Thing(say("the outline"), paths=(loop_path(layout.outline),), opening=True)
    if target.kind in ("slot", "slot end", "edge"):
        slot = next(slot for slot in layout.slots if slot.id == target.id)
        return Thing(target.id, paths=(slot_path(slot),))
    if target.kind == "blank edge":
        return Thing(target.name, paths=(_blank_edge(layout, target),))
    if target.kind == "ear":
        ear = next(ear for ear in layout.ears if ear.id == target.id)
        x = target.at[0]
        return Thing(say("glue line of {ear}", ear=ear.id), paths=(straight((x, ear.start), (x, ear.end)),))
    own = tuple(d for d in drillings(layout) if d.of == target.id)
    if on_strip:
        sides: list[tuple[Side, Drilling]] = [("treble" if d.surface.startswith("treble") else "bass", d)
                                              for d in own if d.mark is not None]
        marks = [(d, folded(layout.blank, side, d.mark[1], d.mark[2])) for side, d in sides]
        return Thing(say("marks of {tuner}", tuner=target.id), paths=tuple(circle(at, d.radius) for d, at in marks),
                     middle=next((at for d, at in marks if d.role == "post"), None), of=target.id)
    return Thing(target.id, paths=tuple(circle(d.start[:2], d.radius) if d.upright else strip(d) for d in own),
                 bores=own, middle=plan_point(layout, target.id), of=target.id)


def between(one: Thing, two: Thing) -> Between:
    """The shortest distance of two things on their exact curves, 0 where they meet or one lies in the other."""
    best: Between | None = None
    for a in one.walls or (one.point,):
        for b in two.walls or (two.point,):
            found = _pair(a, b, one.opening or two.opening)
            if best is None or found.distance < best.distance:
                best = found
    if one.bores and two.bores:
        pairs = [(a, b) for a in one.bores for b in two.bores]
        apart = gaps(Cylinders.of([a for a, _ in pairs]), Cylinders.of([b for _, b in pairs])).distance
        best = Between(best.distance, best.a, best.b, float(np.min(apart)))
    return best


def _pair(a: Wall | Vec2, b: Wall | Vec2, opening: bool) -> Between:
    if isinstance(a, Wall) and isinstance(b, Wall):
        distance, p, q = a.to(b)
        for outer, inner, at in ((a, b, q), (b, a, p)):
            if not opening and distance > 0 and outer.path.closed and outer.inside(inner.path.start) > 0:
                return Between(0.0, at, at)
        return Between(distance, p, q)
    if isinstance(a, Wall):
        foot = a.foot(b)
        return Between(foot.distance, foot.point, b)
    if isinstance(b, Wall):
        foot = b.foot(a)
        return Between(foot.distance, a, foot.point)
    return Between(v.distance(a, b), a, b)


def _blank_edge(layout: Headstock, target: Target) -> Path:
    b = layout.blank
    if target.part == "scarf":
        return joint_line(b, layout.nut, False, -b.bass, b.treble)[0].path
    x, y = target.at
    if target.part in ("tip", "behind"):
        return straight((-b.bass, y), (b.treble, y))
    return straight((x, -b.behind), (x, b.tip))
