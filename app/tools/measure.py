"""Measuring: how far two things are apart."""

from __future__ import annotations

from app.tools import guides, words
from app.tools.hit import Target, hit, strip_at
from app.tools.options import Options
from app.tools.pointer import Gesture, Pointer, Shown
from app.tools.snap import tidy
from app.tools.things import Between, Thing, between, thing
from geometry import vectors as v
from geometry.drawing.shapes import straight
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.strings import runs

UNDER_STRINGS = ("slot", "slot end", "ear", "blank edge")
"""Large things over which a string can be taken for measuring."""
STRING_REACH = 3.5
"""Pixels within which a string is met."""


def measure(layout: Headstock, options: Options) -> Gesture:
    """Press on one thing, then on another: how far they are apart stays on show until the next press or Esc.

    Between two bores that is from middle to middle, and the shortest distance is told beside it; else it is the
    shortest distance. Bare wood counts as the point pressed. Distances in plan are exact; between
    bores the true distance in space is told as well. Both are told to a hundredth of a mm, rounded down. Nothing is changed.
    """
    first: Thing | None = None
    marks, readout = (), say("press on the first thing")
    pointer = yield Shown(layout, readout=readout, takes=None, follows=True)
    while True:
        if pointer.kind in ("press", "double"):
            here = _thing_at(layout, pointer)
            if first is None:
                first, marks, readout = here, (), say("from {thing}", thing=here.name)
            else:
                marks, readout = _told(first, here, options, pointer)
                first = None
        elif pointer.kind == "move" and first is not None:
            marks, readout = _told(first, _thing_at(layout, pointer), options, pointer)
        pointer = yield Shown(layout, marks, readout, takes=None, follows=first is None and not marks)


def _thing_at(layout: Headstock, pointer: Pointer) -> Thing:
    target: Target | None = hit(layout, pointer.at, pointer.mm_per_pixel, shape=True)
    if target is None or target.kind != "node":
        target = hit(layout, pointer.at, pointer.mm_per_pixel)
    if target is None or target.kind in UNDER_STRINGS:
        string = _string_at(layout, pointer)
        if string is not None:
            return string
    if target is None:
        return Thing(say("this point"), tidy(pointer.at))
    try:
        return thing(layout, target, strip_at(layout, pointer.at) is not None)
    except GeometryError:
        return Thing(say("this point"), tidy(pointer.at))


def _string_at(layout: Headstock, pointer: Pointer) -> Thing | None:
    """The middle line of the string under the pointer, from the nut to its post in plan."""
    try:
        lines = [(run.string, straight(run.nut, run.post)) for run in runs(layout)]
    except GeometryError:
        return None
    near = min(((line.nearest(pointer.at).distance, name, line) for name, line in lines), default=None,
               key=lambda one: one[0])
    if near is None or near[0] > STRING_REACH * pointer.mm_per_pixel:
        return None
    return Thing(say("the middle of string {name}", name=near[1]), paths=(near[2],))


def _told(one: Thing, two: Thing, options: Options, pointer: Pointer) -> tuple[tuple, str]:
    found: Between = between(one, two)
    a, b, text = found.a, found.b, words.clearance(found.distance, options.unit, 2)
    if one.middle is None or two.middle is None or one.of == two.of:
        readout = say("{far} from {one} to {two}", far=text, one=one.name, two=two.name)
    else:
        a, b, near = one.middle, two.middle, text
        text = words.clearance(v.distance(a, b), options.unit, 2)
        readout = say("{far} between the middles of {one} and {two}; at the closest {near}", far=text, one=one.of,
                      two=two.of, near=near)
    if found.in_space is not None and abs(found.in_space - found.distance) > 0.005:
        space = say("they meet in the wood") if found.in_space <= 0 else \
            say("{far} apart in the wood", far=words.clearance(found.in_space, options.unit, 2))
        readout = say("{readout} seen from the face, {space}", readout=readout, space=space)
    return guides.dimension(a, b, text, pointer.mm_per_pixel, "measured"), readout
