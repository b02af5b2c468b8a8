"""Layouts that the tests of edits work on: a plain head with round numbers, a curved one, and the demo."""

from functools import cache
from pathlib import Path

import msgspec

from app.formats.headstock import decode, encode, read
from geometry.layout import (
    Blank,
    DrawnSlot,
    EdgePlace,
    EdgeRun,
    FreePlace,
    Headstock,
    Loop,
    Node,
    Pin,
    Row,
    RowPlace,
    SingleHole,
    Slot,
    StraightRun,
    StraightSlot,
    String,
    Tuner,
    validate,
)
from geometry.layout.generic import PATTERNS, RACK

FACE, SIDE = "face 8.8 bushing two screws", "side 6.4 post two screws"
LOPSIDED = "face 10 bushing one screw"

BOX = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 180.0), (-40.0, 180.0))))
"""80 x 180, counter-clockwise from the bass end of the nut line."""

CURVED = Loop(nodes=(
    Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), handles=((22.0, 15.0), (35.0, 20.0))),
    Node(at=(40.0, 40.0), smooth=True, handles=((42.5, 50.0), (44.0, 120.0))),
    Node(at=(40.0, 150.0), bulge=0.3), Node(at=(20.0, 180.0)), Node(at=(-20.0, 180.0), bulge=0.3),
    Node(at=(-40.0, 150.0), handles=((-44.0, 120.0), (-42.5, 50.0))),
    Node(at=(-40.0, 40.0), smooth=True, handles=((-35.0, 20.0), (-22.0, 15.0)))))
"""A symmetric outline with lines, arcs and curves; its smooth nodes are smooth: slopes 5:20 and 2.5:10."""

HEART = Loop(nodes=(Node(at=(0.0, 60.0), handles=((10.0, 60.0), (14.0, 80.0))), Node(at=(10.0, 110.0), bulge=0.5),
                    Node(at=(-8.0, 105.0))))
"""The wall of a drawn slot."""


def plain(**changes: object) -> Headstock:
    """A rectangular head with one of everything: free and side tuners, a straight row, an edge row, a drawn slot."""
    head = Headstock(
        name="Plain head, invented", blank=Blank(bass=45.0, treble=50.0, tip=190.0, behind=10.0, thickness=16.0),
        outline=BOX, patterns=PATTERNS, rack=RACK,
        strings=tuple(String(id=str(k), diameter=0.5, course=k) for k in range(1, 7)),
        slots=(Slot(id="treble slot", shape=StraightSlot(nut_end=(17.0, 40.0), tip_end=(17.0, 150.0), width=13.0)),
               Slot(id="heart", shape=DrawnSlot(loop=HEART), depth=5.0)),
        rows=(Row(id="line", run=StraightRun(start=(-28.0, 40.0), heading=90.0), spacing=25.0),
              Row(id="flank", run=EdgeRun(side="bass", first=30.0), spacing=30.0)),
        tuners=(Tuner(id="treble face 1", pattern=FACE, place=FreePlace(at=(30.0, 60.0)), string="6"),
                Tuner(id="treble side 1", pattern=SIDE, place=EdgePlace(side="treble", along=100.0), string="5"),
                *(Tuner(id=f"line {k}", pattern=LOPSIDED, place=RowPlace(row="line", index=k)) for k in range(3)),
                *(Tuner(id=f"flank {k}", pattern=SIDE, place=RowPlace(row="flank", index=k)) for k in range(3))),
        pins=(Pin(id="pin", at=(0.0, 25.0), diameter=6.0),),
        holes=(SingleHole(id="peep", at=(5.0, 160.0), diameter=5.0, depth=7.0, surface="back"),))
    return validate(msgspec.structs.replace(head, **changes))


def curved(**changes: object) -> Headstock:
    """The plain head with the curved symmetric outline."""
    return plain(outline=CURVED, **changes)


@cache
def twelve() -> Headstock:
    """The curved outline with a row of three tuners of each mount along each edge, two slots and two pins."""
    sides = ("bass", "treble")
    rows = tuple(Row(id=f"{side} {mount}", run=EdgeRun(side=side, first=first, inset=inset), spacing=35.0)
                 for side in sides for mount, first, inset in (("face", 45.0, 11.5), ("side", 62.5, 0.0)))
    strings = {"bass": ("1", "2", "3", "4", "5", "6"), "treble": ("12", "11", "10", "9", "8", "7")}
    tuners = tuple(
        Tuner(id=f"{side} {mount} {k + 1}", pattern=FACE if mount == "face" else SIDE,
              place=RowPlace(row=f"{side} {mount}", index=k), string=strings[side][2 * k + (mount == "side")],
              winds="treble" if side == "bass" else "bass")
        for side in sides for k in range(3) for mount in ("face", "side"))
    slots = tuple(Slot(id=f"{side} slot", shape=StraightSlot(nut_end=(x, 35.0), tip_end=(x, 155.0), width=13.0))
                  for side, x in (("bass", -17.0), ("treble", 17.0)))
    pins = (Pin(id="nut pin", at=(0.0, 26.0)), Pin(id="tip pin", at=(0.0, 168.0)))
    return curved(rows=rows, tuners=tuners, slots=slots, pins=pins, holes=(),
                  strings=tuple(String(id=str(k), diameter=0.5, course=(k + 1) // 2) for k in range(1, 13)))


@cache
def demo() -> Headstock:
    """The invented twelve-string layout of the samples."""
    return read(Path(__file__).parents[3] / "samples" / "twelve-string-mixed.headstock.json")


def sound(layout: Headstock) -> Headstock:
    """The layout, after it has been validated and has come back the same from its file."""
    assert decode(encode(validate(layout))) == layout
    return layout
