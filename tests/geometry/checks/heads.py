"""A plain head that every check leaves alone, and the parts to spoil it with. All numbers are invented."""

import math

from geometry.layout import (
    Blank,
    Bore,
    Button,
    DrawnSlot,
    Drill,
    EdgePlace,
    Footprint,
    FreePlace,
    Headstock,
    Loop,
    Margins,
    Node,
    Pattern,
    Pin,
    Post,
    Rack,
    RouterBit,
    SingleHole,
    Slot,
    StraightSlot,
    Template,
    Tuner,
)

THICK = 16.0
BIT = RouterBit(id="bit 10", cutter=10.0, cutting_length=20.0, shank=8.0, stick_out=40.0, bearing="shank",
                bearing_diameter=10.0)
DRILLS = tuple(Drill(id=f"brad {d:g}", kind="brad", diameter=d, length=150.0, spur=0.3 * d)
               for d in (1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0))
PINS = (Pin(id="nut pin", at=(0.0, 8.0), diameter=2.0), Pin(id="tip pin", at=(0.0, 172.0), diameter=2.0))


def loop(*corners):
    """A loop of straight edges through corners; (x, y, bulge) makes the edge that leaves a corner an arc."""
    return Loop(nodes=tuple(Node(at=c[:2], bulge=c[2] if len(c) > 2 else 0.0) for c in corners))


OBLONG = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 180.0), (-40.0, 180.0))
"""80 wide, 180 long: the treble edge is x = 40, and a place along it is its y."""


def head(**parts):
    """A layout on the oblong outline with a wide blank, deep quill and two pins."""
    from geometry.layout import DrillPress

    base = dict(name="test head", blank=Blank(bass=50.0, treble=50.0, tip=190.0, behind=20.0, thickness=THICK),
                outline=OBLONG, pins=PINS, rack=Rack(bits=(BIT,), drills=DRILLS, press=DrillPress(quill=200.0)),
                template=Template(bit="bit 10", thickness=6.0))
    return Headstock(**(base | parts))


def slot(id="slot", x=14.0, width=12.0, nut=60.0, tip=150.0, depth=None):
    """A straight slot along y about x."""
    return Slot(id=id, shape=StraightSlot(nut_end=(x, nut), tip_end=(x, tip), width=width), depth=depth)


def drawn(id, *corners, depth=None):
    """A drawn slot through corners."""
    return Slot(id=id, shape=DrawnSlot(loop=loop(*corners)), depth=depth)


def pattern(id, mount, *bores, seat=(2.0, 2.0, 4.0), post=(6.0, 25.0, 26.0), button=None):
    """A hardware pattern; seat is (before, behind, across), post (diameter, length, string hole)."""
    button = button or Button(reach=60.0 if mount == "face" else 30.0, length=2.0, width=1.0, thickness=1.0, stand=20.0)
    return Pattern(id=id, mount=mount, bores=bores,
                   seat=Footprint(before=seat[0], behind=seat[1], across=seat[2]),
                   post=Post(diameter=post[0], length=post[1], string_hole=post[2]), button=button)


def bore(role="post", diameter=6.0, surface="face", at=(0.0, 0.0), depth=None, drill="brad", **more):
    """One drilling of a pattern."""
    return Bore(role=role, diameter=diameter, surface=surface, at=at, depth=depth, drill=drill, **more)


FACE = pattern("face", "face", bore())
SIDE = pattern("side", "side", bore(surface="seat", depth=30.0))


def face(id, x, y, of=FACE, turn=0.0, **rest):
    """A face tuner whose button points to +x unless turned."""
    return Tuner(id=id, pattern=of.id, place=FreePlace(at=(x, y), turn=turn), **rest)


def side(id, along, of=SIDE, edge="treble", depth=None, **rest):
    """A side tuner."""
    return Tuner(id=id, pattern=of.id, place=EdgePlace(side=edge, along=along, depth=depth), **rest)


def leaning(degrees):
    """An outline whose treble edge leans inwards by this angle; both its ends are level."""
    return loop((-40.0, 0.0), (40.0, 0.0), (40.0 - 180.0 * math.tan(math.radians(degrees)), 180.0), (-40.0, 180.0))


def bulging(radius):
    """An outline whose treble edge is an arc of this radius about y = 90, bellying out."""
    return loop((-40.0, 0.0), (40.0, 0.0, math.tan(math.asin(90.0 / radius) / 2)), (40.0, 180.0), (-40.0, 180.0))


__all__ = ["BIT", "DRILLS", "FACE", "Margins", "OBLONG", "PINS", "SIDE", "SingleHole", "THICK", "bore", "bulging",
           "drawn", "face", "head", "leaning", "loop", "pattern", "side", "slot"]


ROOMY = Margins(post_wall=30.0, string_hole=30.0)
"""Margins under which every clearance of a post in its slot is told"""


def post_head(along: float = 90.0, post: tuple[float, float, float] = (6.0, 30.0, 26.0), slots: tuple[Slot, ...] = (slot(),),
              margins: Margins = ROOMY) -> Headstock:
    """One side tuner on the straight edge x = 40, its bore 24 mm deep; the slot's walls lie at x = 20 and x = 8."""
    of = pattern("of", "side", bore(diameter=post[0], surface="seat", depth=24.0), post=post)
    return head(tuners=(side("a", along, of),), patterns=(of,), slots=slots, margins=margins)
