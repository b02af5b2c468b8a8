"""Generic hardware and a starting rack in the sizes sold in inches, all editable; kept in mm.

The patterns are those of `generic`, each bore with the bit of the usual fractional set that its part goes into: a
pressed bushing for 8.8 goes into 11/32, a barrel of 10 into 25/64. Common practice, no source: the maker measures
his own parts.
"""

from __future__ import annotations

from fractions import Fraction

from msgspec.structs import replace

from geometry.layout.generic import PATTERNS
from geometry.layout.hardware import Pattern
from geometry.layout.shop import Drill, DrillPress, GuideBush, Rack, Router, RouterBit
from geometry.saying import say
from geometry.units import MM_PER_INCH

_DIAMETERS = {1.5: "1/16", 1.6: "1/16", 1.8: "5/64", 2.0: "5/64", 6.4: "1/4", 6.5: "1/4", 7.5: "19/64", 8.0: "5/16", 8.2: "21/64", 8.8: "11/32",
              10.0: "25/64", 14.0: "9/16"}
"""The bit in inches in the place of one in mm."""
_DEPTHS = {4.0: "5/32", 8.0: "5/16", 9.0: "11/32", 10.0: "3/8", 30.0: "1 3/16", 31.0: "1 7/32", 33.0: "1 5/16"}
_NAMES = {
    "face 8.8 bushing two screws": ("face 11/32 bushing two screws", None),
    "face 10 bushing one screw": ("face 25/64 bushing one screw", None),
    "face 10 stepped two pins": (
        "face 25/64 stepped two pins",
        say("Stepped bore, 25/64 inch from the back and 21/64 at the face; two moulded pins keep the body from turning.")),
    "face 6.4 plain one screw": ("face 1/4 plain one screw", None),
    "side 6.4 post two screws": ("side 1/4 post two screws", None),
    "side 10 roller two screws": (
        "side 25/64 roller two screws",
        say("Roller of 25/64 inch through the side as on a slotted head, plate with a screw to either side.")),
    "side 8 post four screws": (
        "side 5/16 post four screws",
        say("Steel post of 5/16 inch through the side, square plate with four small screws, for thick heads.")),
    "face 14 bushing four screws": ("face 9/16 bushing four screws", None),
    "face 6.4 friction peg": ("face 1/4 friction peg", None),
    "face 10 geared peg": (
        "face 25/64 geared peg",
        say("Straight peg with its gear inside, in a bore of 25/64 inch from the back; a threaded collar on the face clamps it, and no "
            "screw is drilled for. The button lies behind the post.")),
    "face 7.5 tapered peg": ("face 19/64 tapered peg", None),
}
"""Name of each pattern, and its words where those in mm name a size."""


def inch(size: str) -> float:
    """Inches as "11/32" or "1 3/16" in mm."""
    return round(float(sum(Fraction(part) for part in size.split())) * MM_PER_INCH, 6)


def _pattern(pattern: Pattern) -> Pattern:
    name, about = _NAMES[pattern.id]
    bores = tuple(replace(bore, diameter=inch(_DIAMETERS[bore.diameter]),
                          depth=None if bore.depth is None else inch(_DEPTHS[bore.depth]),
                          reamed=None if bore.reamed is None else inch(_DIAMETERS[bore.reamed]),
                          drill="brad" if bore.role == "clearance" else bore.drill) for bore in pattern.bores)
    return replace(pattern, id=name, about=about or pattern.about, bores=bores)


PATTERNS_INCH: tuple[Pattern, ...] = tuple(_pattern(pattern) for pattern in PATTERNS)
"""The generic patterns, in the same order, for fractional bits."""


def _bit(cutter: str, cutting: str, shank: str, stick_out: str, bearing: str = "none") -> RouterBit:
    kind = "straight" if bearing == "none" else f"{bearing} bearing"
    size = None if bearing == "none" else inch(cutter)
    return RouterBit(id=f"{cutter} in {kind}", cutter=inch(cutter), cutting_length=inch(cutting), shank=inch(shank),
                     stick_out=inch(stick_out), bearing=bearing, bearing_diameter=size,
                     bearing_height=None if size is None else inch("3/16"))


def _drill(kind: str, diameter: str, length: str) -> Drill:
    mm = inch(diameter)
    spur = {"twist": None, "brad": round(0.3 * mm, 2), "forstner": 2.0}[kind]
    return Drill(id=f"{kind} {diameter} in", kind=kind, diameter=mm, length=inch(length),
                 point_angle=118.0 if kind == "twist" else None, spur=spur)


RACK_INCH = Rack(
    bits=(
        _bit("1/4", "3/4", "1/4", "1 3/8"),
        _bit("1/4", "1/2", "1/4", "1 1/8", "shank"),
        _bit("5/16", "1", "1/4", "1 1/2"),
        _bit("3/8", "1/2", "1/4", "1 1/4", "shank"),
        _bit("3/8", "1", "1/4", "1 5/8"),
        _bit("1/2", "3/4", "1/4", "1 1/2", "shank"),
        _bit("1/2", "1", "1/4", "1 3/4", "tip"),
    ),
    bushes=tuple(GuideBush(id=f"bush {outer} in", outer=inch(outer), inner=inch(inner), length=inch("7/32"))
                 for outer, inner in (("7/16", "11/32"), ("1/2", "13/32"), ("5/8", "17/32"))),
    drills=(*(_drill("twist", d, "2") for d in ("1/16", "5/64")),
            *(_drill("brad", d, "4") for d in ("1/4", "5/16", "21/64", "11/32", "3/8", "25/64", "13/32", "7/16")),
            *(_drill("forstner", d, "3 1/2") for d in ("11/32", "3/8", "1/2", "9/16", "5/8"))),
    router=Router(base=inch("6"), plunge=inch("2 1/4"), collets=(inch("1/4"), inch("1/2"))),
    press=DrillPress(base=inch("4")),
)
"""A small rack in inches to begin with."""
