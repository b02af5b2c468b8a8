"""What the real piece has and what the drawing says, in sentences that keep their lengths (see said.py)."""

from __future__ import annotations

import math

from geometry.checks.said import length, read
from geometry.checks.words import first, mm
from geometry.layout.book import Bored, Done, Shaped
from geometry.layout.outline import Loop
from geometry.layout.slots import Slot, shape_path
from geometry.saying import say
from geometry.solids.cut_shape import Astray
from geometry.solids.in_wood import on_axis
from geometry.solids.ramps import RampCut, ramp_cut
from geometry.tilt_words import tilt_words
from geometry.tolerance import SAME_HOLE


def told(what: str, was: Bored, now: Bored) -> str:
    """What is drilled and what the drawing says now of `what` they differ in, in a sentence."""
    both = _aspects(was, now), _aspects(now, was)
    differ = [pair for pair in zip(*both, strict=True) if read(pair[0]) != read(pair[1])] or list(zip(*both, strict=True))
    return say("{what} is drilled {was} (job book); the drawing now says {now}.", what=first(what),
               was=", ".join(one for one, _ in differ), now=", ".join(other for _, other in differ))


def _aspects(hole: Bored, other: Bored) -> list[str]:
    """In words, where a hole is, how wide and how deep, as far as that may tell it from another one."""
    wide = say("{diameter} mm wide", diameter=length(hole.diameter, 2))
    if on_axis(hole, other):
        return [wide, _how_deep(hole, math.dist(hole.at, other.at) <= SAME_HOLE)]
    return [*_place(hole), wide] if _upright(hole) == _upright(other) else [", ".join(_place(hole)), wide]


def _how_deep(hole: Bored, as_depth: bool) -> str:
    """How deep it is, or where it ends: what tells two holes apart that begin at different surfaces."""
    if hole.through:
        return say("through")
    if as_depth:
        return say("{depth} mm deep", depth=length(_depth(hole), 2, down=True))
    return (say("to {z} mm below the face", z=length(hole.end[2], 2)) if _upright(hole) else
            say("to x {x} mm", x=length(hole.end[0], 2)))


def hole_place(hole: Bored) -> str:
    """Where the drill went in."""
    return ", ".join(_place(hole))


def _place(hole: Bored) -> list[str]:
    """Where the drill goes in; of a bore from the side also how far below the face and with which tilt of the table."""
    x, y, z = hole.at
    if _upright(hole):
        return [say("from the face at x {x} mm, y {y} mm", x=length(x, 2), y=length(y, 2)) if hole.end[2] > z else
                say("from the back at x {x} mm, y {y} mm", x=length(x, 2), y=length(y, 2))]
    return [say("from the treble edge at y {y} mm", y=length(y, 2)) if x > hole.end[0] else say("from the bass edge at y {y} mm", y=length(y, 2)),
            say("{z} mm below the face", z=length(z, 2)), tilt_words(math.atan2(y - hole.end[1], math.hypot(hole.end[0] - x, hole.end[2] - z)))]


def _upright(hole: Bored) -> bool:
    """Whether it is square to the face, more or less; what has no depth is."""
    return 2 * abs(hole.end[2] - hole.at[2]) >= _depth(hole)


def _depth(hole: Bored) -> float:
    """From where the drill goes in to the end of its full diameter, mm."""
    return math.dist(hole.at, hole.end)


def made_words(one: Done) -> str:
    """Where what is ticked off lies in the wood, how wide and how deep; empty where that is not known. Lengths are kept (see said.py)."""
    if one.hole is not None:
        return ", ".join([*_place(one.hole), say("{diameter} mm wide", diameter=length(one.hole.diameter, 2)), _how_deep(one.hole, True)])
    if one.cut is None:
        return ""
    if one.cut.ramp is not None:
        return _ramp(ramp_cut(Slot(id="cut", shape=one.cut.shape, ramp=one.cut.ramp)))
    x0, y0, x1, y1 = shape_path(one.cut.shape).box
    return ", ".join([say("x {x0} mm to {x1} mm, y {y0} mm to {y1} mm", x0=length(x0, 2), x1=length(x1, 2), y0=length(y0, 2), y1=length(y1, 2)),
                      _passed(one.cut, one.cut.cutter)])


def told_cut(id: str, was: Shaped, now: Slot | Loop, found: Astray, thickness: float) -> str:
    """How a slot, its ramp, or the outline is cut otherwise than it is drawn, in a sentence or two."""
    if found.ramp:
        drawn = ramp_cut(now) if isinstance(now, Slot) else None
        return say("The ramp of {slot} is cut {was} (job book); the drawing now says {now}.", slot=id,
                   was=_ramp(ramp_cut(Slot(id="cut", shape=was.shape, ramp=was.ramp))), now=say("no ramp") if drawn is None else _ramp(drawn))
    said = []
    if found.gone[0] or found.left[0]:
        far, (x, y) = found.gone if found.gone[0] else found.left
        fields = {"far": mm(far), "x": length(x, 2), "y": length(y, 2)}
        if not isinstance(now, Slot):
            said.append(say("The outline is cut up to {far} mm inside the line that is drawn now, most at x {x} mm, y {y} mm (job book).", **fields)
                        if found.gone[0] else
                        say("The outline is cut up to {far} mm outside the line that is drawn now, most at x {x} mm, y {y} mm (job book).", **fields))
        else:
            said.append(say("{slot} is cut up to {far} mm beyond the line that is drawn now, most at x {x} mm, y {y} mm (job book).", slot=first(id), **fields)
                        if found.gone[0] else
                        say("{slot} is cut up to {far} mm short of the line that is drawn now, most at x {x} mm, y {y} mm (job book).", slot=first(id), **fields))
    if found.floor:
        floor = now.depth if isinstance(now, Slot) and not now.through(thickness) else None
        said.append(say("{slot} is cut {was} (job book); the drawing now says {now}.", slot=first(id), was=_floor(was.ends), now=_floor(floor)))
    return " ".join(said)


def told_pass(step: str, was: Shaped, now: Shaped, farther: bool) -> str:
    """How deep a pass was cut, and from where to where it is planned now, in a sentence; with the cutters where the new one goes `farther`
    into corners."""
    one, other = (was.cutter, now.cutter) if farther else (None, None)
    return say("{step} is cut {was} (job book); with the bits chosen now it is to be cut {now}.", step=step, was=_passed(was, one), now=_passed(now, other))


def _passed(cut: Shaped, cutter: float | None) -> str:
    how = say("{how}, in the corners alone", how=_reaches(cut)) if cut.corners else _reaches(cut)
    return say("{how}, by a cutter of {cutter} mm", how=how, cutter=length(cutter, 2)) if cutter else how


def _reaches(cut: Shaped) -> str:
    if not cut.begins:
        return _floor(cut.ends)
    if cut.ends is None:
        return say("from {begins} mm below the face to the back", begins=length(cut.begins, 2))
    return say("from {begins} mm to {ends} mm below the face", begins=length(cut.begins, 2), ends=length(cut.ends, 2))


def _floor(ends: float | None) -> str:
    return say("through") if ends is None else say("{depth} mm deep", depth=length(ends, 2, down=True))


def _ramp(cut: RampCut) -> str:
    return say("from y {y} mm, {long} mm long, {wide} mm wide and {deep} mm deep",
               y=length(cut.start[1], 2), long=length(cut.length, 2), wide=length(2 * cut.half, 2), deep=length(cut.depth, 2))
