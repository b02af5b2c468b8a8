"""The nut and the strings, as the layout keeps them."""

import math
from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.parts import Id, Part, Point, Size

MOST_SLANT = 30
"""degrees by which a nut line may be turned"""


class Nut(Part, kw_only=True):
    """The nut (mm, degrees).

    `spread` is from the centre of the first string to the centre of the last.
    `spacing` sets strings (or courses) at equal centres or with equal gaps
    between them. `pair` is the centre distance within a course of two.
    `slant` turns the nut line about the middle of the nut, for fanned frets: positive
    brings its bass end nearer the tip. Width, spread and pair stay square to the centreline.
    """

    width: Size = 44.0
    spread: Size = 36.0
    spacing: Literal["centres", "gaps"] = "centres"
    pair: Size = 2.2
    height: Size = 6.0
    pitch: Annotated[float, Meta(ge=0, le=40)] = 13.0
    scale_length: Size = 648.0
    slant: Annotated[float, Meta(ge=-MOST_SLANT, le=MOST_SLANT)] = 0.0

    def at(self, x: float) -> Point:
        """The point of the nut line at x mm."""
        return (x, -x * math.tan(math.radians(self.slant))) if self.slant else (x, 0.0)

    @property
    def ahead(self) -> Point:
        """The unit direction square to the nut line, towards the tip."""
        turn = math.radians(self.slant)
        return (math.sin(turn), math.cos(turn)) if self.slant else (0.0, 1.0)

    def before(self, p: Point) -> float:
        """How far a point lies before the nut line, square to it, mm; negative behind it."""
        x, y = self.ahead
        return x * p[0] + y * p[1] if self.slant else p[1]


class String(Part, kw_only=True):
    """One string; a layout holds them from the bass side on, whatever they are named. `course` strings with one number share a course.

    `note` is what it is tuned to ("E2", "F#3"; anything else counts as a remark). `core` is the
    diameter of the steel core of a wound string (mm), None for a plain one. Without a
    `scale_length` of its own (mm) it takes the nut's.
    """

    id: Id
    diameter: Annotated[float, Meta(gt=0, le=10)]
    course: Annotated[int, Meta(ge=1, le=60)]
    note: str = ""
    core: Annotated[float, Meta(gt=0, le=10)] | None = None
    scale_length: Size | None = None
