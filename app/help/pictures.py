"""Small drawings for words that a sentence alone does not make plain. Millimetres of no particular head."""

from __future__ import annotations

import math
from functools import cache

from geometry.drawing import Area, Disc, Drawing, Label, Stroke
from geometry.drawing.shapes import chain, rectangle, straight
from geometry.saying import say

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
            Stroke(straight((0, 4), (34, 4)), "axis"), _label(say("break angle"), 25, 0.2), _label(say("nut"), -2, 9),
            _label(say("post"), post[0] + 8, post[1]))


@cache
def _counterbore() -> Drawing:
    return (Area(rectangle(-25, -15, 25, 0), "wood"), Area(rectangle(-7, -5, 7, 0), "counterbore"),
            Area(rectangle(-4, -15, 4, 0), "post bore"), Stroke(straight((0, 4), (0, -19)), "axis"),
            _label(say("counterbore"), 17, -3), _label(say("bore"), 12, -11))


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
            _label(say("mark here"), reach + 3, mark[1] + 4, "left"), _label(say("not here"), reach + 3, -1, "left"),
            _label(say("seat"), -8, -4), _label(say("tilt"), 12, 1.4))


@cache
def _offset() -> Drawing:
    return (Area(rectangle(-30, -18, -4, -6), "wood"), Area(rectangle(-30, -6, -7, 0), "template board"),
            Area(rectangle(-4, -18, 8, -5), "cutter"), Area(rectangle(-7, -5, 11, 1), "follower"),
            Area(rectangle(-2, 1, 6, 9), "shank"),
            Stroke(straight((-7, -22), (-7, 4)), "dimension"), Stroke(straight((-4, -22), (-4, -18)), "dimension"),
            _label(say("offset"), -5.5, -24.5), _label(say("template"), -19, -3), _label(say("follower"), 13, -2, "left"),
            _label(say("cutter"), 10, -12, "left"))


@cache
def _opened_out() -> Drawing:
    return (Area(rectangle(-36, 0, -22, 50), "blank"), Area(rectangle(-22, 0, 22, 50), "waste"),
            Area(rectangle(22, 0, 36, 50), "blank"),
            Area(chain(((-9, 0), (9, 0), (17, 16), (15, 42), (0, 47), (-15, 42), (-17, 16)), closed=True), "wood"),
            Stroke(straight((-22, 0), (-22, 50)), "fold"), Stroke(straight((22, 0), (22, 50)), "fold"),
            _label(say("edge"), -29, 24), _label(say("face"), 0, 24), _label(say("edge"), 29, 24))


@cache
def _rail_and_web() -> Drawing:
    return (Area(rectangle(-34, -12, 34, 0), "wood"), Area(rectangle(-22, -12, -10, 0), "slot"),
            Area(rectangle(10, -12, 22, 0), "slot"), *_arrows(-34, -22, 7, say("rail")), *_arrows(-22, -10, 7, say("slot")),
            *_arrows(-10, 10, 7, say("web")), *_arrows(10, 22, 7, say("slot")), *_arrows(22, 34, 7, say("rail")))


@cache
def _pocket() -> Drawing:
    """A truss rod's pocket along the centreline: the neck on the left, the head on the right, the nut between."""
    return (Area(rectangle(-40, -16, 40, 0), "wood"), Area(rectangle(-14, -9, 16, 0), "pocket that is there"),
            Area(rectangle(-4, 0, 0, 6), "seat"), Stroke(straight((0, -18), (0, 8)), "nut line"),
            *_down(20, 0, -9, say("depth")), _label(say("nut"), 2, 4, "left"), _label(say("pocket"), 8, -5.2),
            _label(say("neck"), -28, -14), _label(say("head"), 28, -14))


@cache
def _ramp() -> Drawing:
    wood = chain(((-30, 0), (-8, 0), (6, -8), (6, -14), (-30, -14)), closed=True)
    return (Area(wood, "wood"), Area(rectangle(6, -14, 40, 0), "slot"), Area(rectangle(40, -14, 48, 0), "wood"),
            Stroke(straight((-18, 4), (26, -7)), "string"), Disc((29, -8), 3, "post"), _label(say("ramp"), -2, -9),
            _label(say("slot"), 18, -12))


@cache
def _seat() -> Drawing:
    radius = 40.0
    edge = tuple((radius * math.sin(a), radius * math.cos(a) - radius)
                 for a in (math.radians(d) for d in range(-35, 36, 5)))
    wood = chain((*edge, (edge[-1][0], -18), (edge[0][0], -18)), closed=True)
    return (Area(wood, "wood"), Area(rectangle(-17, 0, 17, 2), "seat"),
            Stroke(straight((-17, 0), (-17, radius * math.cos(math.asin(17 / radius)) - radius)), "dimension"),
            _label(say("stands off"), -30, 1), _label(say("plate"), 0, 5.5))


@cache
def _side_angle() -> Drawing:
    return (Stroke(straight((-18, 0), (18, 0)), "nut line"), Stroke(straight((6, -14), (6, 0)), "string"),
            Stroke(straight((6, 0), (14, 38)), "string"), Stroke(straight((6, 0), (6, 34)), "axis"),
            Disc((17, 38), 3, "post"), _label(say("side angle"), 2, 24, "right"), _label(say("nut"), -12, 3))


@cache
def _stop_depth() -> Drawing:
    drill = chain(((0, -3), (30, -3), (33.5, 0), (30, 3), (0, 3)), closed=True)
    return (Area(rectangle(0, -12, 48, 12), "wood"), Area(drill, "side bore"), *_arrows(0, 30, 18, say("to full diameter")),
            *_arrows(0, 33.5, -17, say("to the point")), Stroke(straight((-6, 0), (40, 0)), "axis"))


@cache
def _cover() -> Drawing:
    return (Area(rectangle(-30, -16, 20, 0), "wood"), Area(rectangle(-30, -11, 12, -5), "side bore"),
            Stroke(straight((-36, -8), (16, -8)), "axis"), *_down(-22, 0, -5, "wood above"),
            *_down(-22, -11, -16, "wood below"), *_down(27, 0, -8, "axis"), Stroke(straight((20, 0), (30, 0)), "fold"),
            _label("face", -5, 3), _label("back", -5, -20))


@cache
def _buttons() -> Drawing:
    return (Area(rectangle(-20, -26, 0, 26), "wood"), Disc((-9, 12), 3, "post bore"), Disc((-9, -12), 3, "post bore"),
            Area(rectangle(8, 6, 22, 18), "button"), Area(rectangle(8, -18, 22, -6), "button"),
            Stroke(straight((-9, 12), (8, 12)), "post"), Stroke(straight((-9, -12), (8, -12)), "post"),
            *_down(28, 6, -6, "room for fingers"), _label("edge", -2, 29))


@cache
def _on_the_plate() -> Drawing:
    return (Area(rectangle(-16, -10, 12, 10), "seat"), Disc((0, 0), 4, "post bore"), Area(rectangle(20, -6, 32, 6), "button"),
            Stroke(straight((0, 0), (20, 0)), "axis"), Disc((-9, 7), 1.4, "screw pilot"), *_arrows(-9, 0, 15, ""),
            *_down(-22, 7, 0, ""), _label("out", -4.5, 18), _label("aside", -24, 3, "right"), _label("button", 26, 9))


@cache
def _on_the_edge() -> Drawing:
    return (Area(rectangle(-40, -8, 40, 8), "blank"), Area(rectangle(-17, -7, 17, 7), "seat"), Disc((0, 0), 3.2, "side bore"),
            Disc((12, -4), 1.4, "screw pilot"), *_arrows(0, 12, 13, "along"), *_down(44, 0, -4, "down"),
            _label("to the nut", -38, -14, "left"), _label("to the tip", 38, -14, "right"), _label("face", 0, 21),
            _label("back", 0, -12))


@cache
def _two_bores() -> Drawing:
    a, b = (-16, 6), (12, -5)
    return (Area(rectangle(-36, -20, 36, 20), "wood"), Disc(a, 7, "post bore"), Disc(b, 5, "hole"),
            Stroke(straight((-9.5, 3.4), (7.4, -3.2)), "dimension"), _label("wood between", -4, 4, "left"))


@cache
def _to_the_outline() -> Drawing:
    edge = chain(((-36, -20), (20, -20), (24, -6), (22, 10), (12, 20), (-36, 20)), closed=True)
    return (Area(edge, "wood"), Disc((4, 0), 6, "post bore"), Stroke(straight((10, 0), (23.2, 0)), "dimension"),
            _label("wood to the outline", 20, 11, "right"))


@cache
def _inner_wall() -> Drawing:
    return (Area(rectangle(-40, -10, -12, 10), "wood"), Area(rectangle(14, -10, 40, 10), "wood"),
            Area(rectangle(-40, -3.2, -12, 3.2), "side bore"), Area(rectangle(-40, -2, 10, 2), "post"),
            *_arrows(10, 14, 15, "room"), _label("rail", -26, -14), _label("slot", 1, -14), _label("inner wall", 27, -14),
            _label("post", -2, 4.5))


@cache
def _skate() -> Drawing:
    drill = chain(((-14, 34), (-6, 36), (3.2, 5), (0.4, 0.4), (-4.6, 2.6)), closed=True)
    return (Area(rectangle(-30, -14, 30, 0), "wood"), Area(drill, "side bore"), Stroke(straight((-12, 40), (4, -14)), "axis"),
            Stroke(straight((0, 0), (14, 0)), "section line"), _label("slides off", 15, 4), _label("drill", -18, 22, "right"))


@cache
def _two_pins() -> Drawing:
    head = chain(((-12, -30), (12, -30), (18, -16), (18, 22), (-18, 22), (-18, -16)), closed=True)
    return (Area(rectangle(-26, -34, 26, 30), "template board"), Area(head, "wood"),
            Disc((0, -24), 2.6, "locating pin hole"), Disc((0, 16), 2.6, "locating pin hole"),
            Stroke(straight((0, -40), (0, 36)), "centreline"), _label("pins on the centreline", 0, 38))


@cache
def _glue_line() -> Drawing:
    return (Area(rectangle(-30, -20, 14, 20), "wood"), Area(rectangle(14, -20, 30, 20), "blank"),
            Stroke(straight((14, -20), (14, 20)), "glue line"), Disc((12, 2), 4, "hole"), _label("glue line", 16, 23, "left"),
            _label("ear", 22, -25), _label("hole", 2, 2, "right"))


_LEANS = math.radians(14)
"""Pitch of the head in the picture of a scarf joint."""


@cache
def _scarf_joint() -> Drawing:
    def on_head(y: float, z: float) -> tuple[float, float]:
        return (y * math.cos(_LEANS) - z * math.sin(_LEANS), -y * math.sin(_LEANS) - z * math.cos(_LEANS))
    thick, face = 12.0, 12.0 / math.sin(_LEANS)
    under, back = on_head(face, 0.0), on_head(face - thick / math.tan(_LEANS), thick)
    head = chain((under, on_head(face + 18, 0.0), on_head(face + 18, thick), back), closed=True)
    neck = chain(((-22, 0), (0, 0), under, (-22, under[1])), closed=True)
    return (Area(neck, "wood"), Area(head, "blank"), Stroke(straight(under, back), "glue line"), _label(say("neck"), -12, -6),
            _label(say("on the face"), under[0] - 2, under[1] + 7, "left"), _label(say("on the back"), back[0], back[1] - 6), _label(say("head"), 52, -27))


def _down(x: float, high: float, low: float, text: str) -> Drawing:
    ticks = tuple(Stroke(straight((x - 1.5, y), (x + 1.5, y)), "dimension") for y in (high, low))
    return (*ticks, Stroke(straight((x, low), (x, high)), "dimension"), _label(text, x + 3, (low + high) / 2, "left"))


_PICTURES = {"two bores": _two_bores, "to the outline": _to_the_outline, "inner wall": _inner_wall, "skate": _skate,
             "two pins": _two_pins, "glue line": _glue_line, "scarf joint": _scarf_joint, "cover": _cover, "buttons": _buttons,
             "on the plate": _on_the_plate, "on the edge": _on_the_edge, "break angle": _break_angle, "counterbore": _counterbore, "entry mark": _entry_mark, "offset": _offset,
             "opened-out": _opened_out, "rail and web": _rail_and_web, "ramp": _ramp, "pocket": _pocket, "seat": _seat,
             "side angle": _side_angle, "stop depth": _stop_depth}
