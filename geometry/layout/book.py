"""The job book: what a maker writes down of one layout while building it, kept in the layout's file.

It is a record and not a drawing: steps of the layout's history never take it
back (see app.document). What an entry is about is remembered by name and
title, so that it still reads when the layout has changed since.
"""

from decimal import Decimal
from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.parts import Amount, Coord, Id, Part, Point, Size, Text
from geometry.layout.slots import DrawnSlot, Ramp, StraightSlot

Piece = Literal["practice", "real"]
"""The practice piece on scrap, and the real one."""
PIECES: tuple[Piece, ...] = ("practice", "real")

Name = Annotated[str, Meta(min_length=1, max_length=200)]
LONGEST = 100_000.0
"""Minutes that one operation may take."""
Minutes = Annotated[float, Meta(ge=0, le=LONGEST)]
Seconds = Annotated[float, Meta(ge=0, le=1e11)]
"""A moment: seconds since the beginning of 1970, world time."""


class Task(Part, kw_only=True):
    """What is remembered of an operation, so that its times outlive the running order.

    `planned` is in minutes at the default rates; `rate` names the field of
    geometry.sequence.Rates behind it ("changes" for setting up).
    """

    operation: Name
    title: Text = ""
    rate: Name = "changes"
    features: tuple[Id, ...] = ()
    planned: Minutes = 0.0


class Bored(Part, kw_only=True):
    """A hole as it is in the wood, mm in the frame of the head: a later change of the layout does not move it."""

    at: tuple[Coord, Coord, Coord]
    """where the drill went in: of a bore from the side its mark on the square edge"""
    end: tuple[Coord, Coord, Coord]
    """the end of the full diameter on the axis; the far surface of a through hole"""
    diameter: Size
    through: bool = False


class Shaped(Part, kw_only=True):
    """A slot, or the outline (as a drawn shape), as it was drawn when something of it was sawn or cut, mm in the frame of the head:
    a later change of the layout does not move it."""

    shape: StraightSlot | DrawnSlot
    begins: Amount = 0.0
    """how far below the face the cut begins"""
    ends: Size | None = None
    """how far below the face it ends; None where it is open at the back"""
    floor: bool = False
    """whether that is the floor of a blind slot as it was drawn"""
    light: Amount = 0.0
    """how much wood was left to the line, by what only clears the waste"""
    corners: bool = False
    """whether it is only what a wider cutter had left in the corners"""
    cutter: Size | None = None
    """how wide the cutter was; None for what is sawn, drilled or worked by hand, and where it is not known"""
    ramp: Ramp | None = None
    """the ramp at the nut end of the shape, where it is that which was cut"""


class Spot(Part, kw_only=True):
    """A spot on the blank as it was set down there: a cross or a corner on the papers or the template, an end of a glue line. A later
    change of the layout does not move it."""

    surface: Literal["face", "back", "bass edge", "treble edge"]
    at: Point
    """mm: x and y in the frame of the head; on an edge y and how far below the face"""


class Made(Part, kw_only=True):
    """What an operation leaves in the wood, as it was planned when it was done: `hole` what was drilled, or `cut` what was cut; None
    for an operation that does not, and where it is not known. `spots` are what was pasted on, made of the template or glued on. So in the
    records below."""

    hole: Bored | None = None
    cut: Shaped | None = None
    spots: tuple[Spot, ...] = ()


NOTHING = Made()


class Time(Part, kw_only=True):
    """Minutes spent on one operation of one piece, all sittings together, and what it made as it was planned at the first of them."""

    piece: Piece
    task: Task
    minutes: Minutes
    hole: Bored | None = None
    cut: Shaped | None = None


class Done(Part, kw_only=True):
    """An operation that is done on one piece, the number that its step had when it was ticked off, and what it made."""

    piece: Piece
    task: Task
    number: Annotated[int, Meta(ge=1, le=100_000)] = 1
    hole: Bored | None = None
    cut: Shaped | None = None
    spots: tuple[Spot, ...] = ()


class Clock(Part, kw_only=True):
    """A timer that runs since a moment, and what is being made."""

    piece: Piece
    task: Task
    since: Seconds
    hole: Bored | None = None
    cut: Shaped | None = None


class Price(Part, kw_only=True):
    """What a part cost: `count` times `each`, in the book's currency. Decimal, so that sums are exact to the last digit."""

    piece: Piece
    part: Annotated[str, Meta(min_length=1, max_length=200)]
    count: Annotated[int, Meta(ge=0, le=100_000)] = 1
    each: Decimal = Decimal(0)


class Remark(Part, kw_only=True):
    """A note: "do this differently". Pinned to a feature or to an operation by name, or to neither.

    `done` says that it has been seen to.
    """

    piece: Piece
    text: Annotated[str, Meta(min_length=1, max_length=4000)]
    on: Id | None = None
    task: Task | None = None
    done: bool = False


What = Literal["x", "y", "below face", "diameter", "depth", "tilt", "distance"]
How = Literal["", "centreline", "bass edge", "treble edge", "square edge", "over the wood", "over the walls", "over pins"]


class Reading(Part, kw_only=True):
    """One reading taken on a finished hole, in mm (tilt: degrees); see geometry.measured for what each kind means.

    `planned` is what the plan said when the reading was entered, in the same
    terms: a later change of the layout does not change what was aimed at.
    """

    piece: Piece
    drilling: Name
    what: What
    value: Coord
    how: How = ""
    other: Name | None = None
    planned: Coord | None = None


class Book(Part, kw_only=True):
    """All that has been written down. `piece` is the one on the bench now; the currency is a label and nothing more."""

    piece: Piece = "practice"
    currency: Annotated[str, Meta(max_length=12)] = ""
    clock: Clock | None = None
    done: tuple[Done, ...] = ()
    times: tuple[Time, ...] = ()
    prices: tuple[Price, ...] = ()
    remarks: tuple[Remark, ...] = ()
    readings: tuple[Reading, ...] = ()
