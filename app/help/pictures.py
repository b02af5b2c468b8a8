"""Small drawings for words that a sentence alone does not make plain. Millimetres of no particular head."""

from __future__ import annotations

import math
from functools import cache

from geometry.drawing import Area, Disc, Drawing, Label, Stroke
from geometry.drawing.shapes import chain, rectangle, straight

LETTER = 2.2


def picture(name: str) -> Drawing:
    """The drawing of that name; empty for ""; KeyError for a name that there is none of."""
    return _PICTURES[name]() if name else ()


def _label(text: str, x: float, y: float, anchor: str = "middle") -> Label:
    return Label(text, (x, y), LETTER, "dimension", anchor=anchor)


def _arrows(a: float, b: float, y: float, text: str) -> Drawing:
    ticks = tuple(Stroke(straight((x, y - 1.5), (x, y + 1.5)), "dimension") for x in (a, b))
    return (*ticks, Stroke(straight((a, y), (b, y)), "dimension"), _label(text, (a + b) / 2, y - 2.6))


@cache
def _break_angle() -> Drawing:
    angle = math.radians(14)
    far = (48 * math.cos(angle), -48 * math.sin(angle))
    neck = chain(((-30, 0), (0, 0), (*far,), (far[0] - 3, far[1] - 10), (-2, -10), (-30, -10)), closed=True)
    post = (far[0] - 12, far[1] + 6.5)
    return (Area(neck, "wood"), Area(rectangle(-4, 0, 0, 4), "seat"), Disc(post, 3, "post"),
            Stroke(chain(((-30, 4), (0, 4), (post[0], post[1] + 3))), "string"),
            Stroke(straight((0, 4), (34, 4)), "axis"), _label("break angle", 25, 0.2), _label("nut", -2, 9),
            _label("post", post[0] + 8, post[1]))


@cache
def _counterbore() -> Drawing:
    return (Area(rectangle(-25, -15, 25, 0), "wood"), Area(rectangle(-7, -5, 7, 0), "counterbore"),
            Area(rectangle(-4, -15, 4, 0), "post bore"), Stroke(straight((0, 4), (0, -19)), "axis"),
            _label("counterbore", 17, -3), _label("bore", 12, -11))


@cache
def _entry_mark() -> Drawing:
    normal = (math.cos(math.radians(16)), math.sin(math.radians(16)))
    seat = (0.0, 0.0)
    reach = 22.0
    mark = (reach, reach * normal[1] / normal[0])
    wood = chain(((-25, -20), (-4, -20), (seat[0], seat[1]), (-7, 24), (-25, 24)), closed=True)
    return (Area(rectangle(-25, -20, reach, 24), "waste"), Area(wood, "wood"),
            Stroke(straight((reach, -20), (reach, 24)), "outline"),
            Stroke(straight((-18 * normal[0], -18 * normal[1]), (mark[0] + 6, mark[1] + 6 * normal[1] / normal[0])),
                   "axis"),
            Stroke(straight(seat, (reach, 0.0)), "fold"), Disc(mark, 1.4, "side bore"), Disc((reach, 0.0), 0.8, "cross"),
            _label("mark here", reach + 3, mark[1] + 4, "left"), _label("not here", reach + 3, -1, "left"),
            _label("seat", -8, -4), _label("tilt", 12, 1.4))


@cache
def _offset() -> Drawing:
    return (Area(rectangle(-30, -18, -4, -6), "wood"), Area(rectangle(-30, -6, -7, 0), "template board"),
            Area(rectangle(-4, -18, 8, -5), "cutter"), Area(rectangle(-7, -5, 11, 1), "follower"),
            Area(rectangle(-2, 1, 6, 9), "shank"),
            Stroke(straight((-7, -22), (-7, 4)), "dimension"), Stroke(straight((-4, -22), (-4, -18)), "dimension"),
            _label("offset", -5.5, -24.5), _label("template", -19, -3), _label("follower", 13, -2, "left"),
            _label("cutter", 10, -12, "left"))


@cache
def _opened_out() -> Drawing:
    return (Area(rectangle(-36, 0, -22, 50), "blank"), Area(rectangle(-22, 0, 22, 50), "waste"),
            Area(rectangle(22, 0, 36, 50), "blank"),
            Area(chain(((-9, 0), (9, 0), (17, 16), (15, 42), (0, 47), (-15, 42), (-17, 16)), closed=True), "wood"),
            Stroke(straight((-22, 0), (-22, 50)), "fold"), Stroke(straight((22, 0), (22, 50)), "fold"),
            _label("edge", -29, 24), _label("face", 0, 24), _label("edge", 29, 24))


@cache
def _rail_and_web() -> Drawing:
    return (Area(rectangle(-34, -12, 34, 0), "wood"), Area(rectangle(-22, -12, -10, 0), "slot"),
            Area(rectangle(10, -12, 22, 0), "slot"), *_arrows(-34, -22, 7, "rail"), *_arrows(-22, -10, 7, "slot"),
            *_arrows(-10, 10, 7, "web"), *_arrows(10, 22, 7, "slot"), *_arrows(22, 34, 7, "rail"))


@cache
def _ramp() -> Drawing:
    wood = chain(((-30, 0), (-8, 0), (6, -8), (6, -14), (-30, -14)), closed=True)
    return (Area(wood, "wood"), Area(rectangle(6, -14, 40, 0), "slot"), Area(rectangle(40, -14, 48, 0), "wood"),
            Stroke(straight((-18, 4), (26, -7)), "string"), Disc((29, -8), 3, "post"), _label("ramp", -2, -9),
            _label("slot", 18, -12))


@cache
def _seat() -> Drawing:
    radius = 40.0
    edge = tuple((radius * math.sin(a), radius * math.cos(a) - radius)
                 for a in (math.radians(d) for d in range(-35, 36, 5)))
    wood = chain((*edge, (edge[-1][0], -18), (edge[0][0], -18)), closed=True)
    return (Area(wood, "wood"), Area(rectangle(-17, 0, 17, 2), "seat"),
            Stroke(straight((-17, 0), (-17, radius * math.cos(math.asin(17 / radius)) - radius)), "dimension"),
            _label("stands off", -30, 1), _label("plate", 0, 5.5))


@cache
def _side_angle() -> Drawing:
    return (Stroke(straight((-18, 0), (18, 0)), "nut line"), Stroke(straight((6, -14), (6, 0)), "string"),
            Stroke(straight((6, 0), (14, 38)), "string"), Stroke(straight((6, 0), (6, 34)), "axis"),
            Disc((17, 38), 3, "post"), _label("side angle", 2, 24, "right"), _label("nut", -12, 3))


@cache
def _stop_depth() -> Drawing:
    drill = chain(((0, -3), (30, -3), (33.5, 0), (30, 3), (0, 3)), closed=True)
    return (Area(rectangle(0, -12, 48, 12), "wood"), Area(drill, "side bore"), *_arrows(0, 30, 18, "to full diameter"),
            *_arrows(0, 33.5, -17, "to the point"), Stroke(straight((-6, 0), (40, 0)), "axis"))


_PICTURES = {"break angle": _break_angle, "counterbore": _counterbore, "entry mark": _entry_mark, "offset": _offset,
             "opened-out": _opened_out, "rail and web": _rail_and_web, "ramp": _ramp, "seat": _seat,
             "side angle": _side_angle, "stop depth": _stop_depth}
