"""An operation at the bench, and the set-up that it needs."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal, get_args

from msgspec import Struct

from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.side import block_height, board_for
from geometry.terms import term
from geometry.tilt_words import raised_end
from geometry.units import LengthUnit, format_angle, format_close, format_length
from geometry.vectors import Vec2

Kind = Literal[
    "glue scarf", "plug", "glue ear", "glue face veneer", "glue back veneer", "template", "mark", "pin hole", "counterbore", "bore",
    "side counterbore", "side bore", "pilot", "waste holes", "saw", "rout", "ramp", "cut outline", "rout outline", "flat", "edge pilot", "clean up",
    "finish", "final diameter",
]
"""What is done. Locating pin holes are "pin hole"; screws and moulded pins of a tuner are "pilot" or "edge pilot"."""

KINDS: tuple[Kind, ...] = get_args(Kind)
"""Kinds in the order of habit: it settles what legality and set-ups leave open (common practice, no source)."""

BASE = 100.0
"""Length of the base over which a tilt is set by blocks, mm."""


class Table(Struct, frozen=True):
    """The drill press table: its tilt (rad) and how far the axis stands from the fence (mm).

    A positive tilt raises the tip end. `fence` is None for work that lies flat. `base` is the length in mm
    of the board that is raised by blocks.
    """

    tilt: float = 0.0
    fence: float | None = None
    base: float = BASE

    def words(self, unit: LengthUnit = "mm") -> str:
        """What to set: "table level", or the tilt with its block and the end that is raised."""
        if self.fence is None:
            return say("table level")
        fence = say("axis {fence} from the fence", fence=_mm(self.fence, unit))
        end = raised_end(self.tilt)
        if end is None:
            return say("table level, {fence}", fence=fence)
        board = board_for(self.base, unit)
        return say("table tilted {tilt} ({blocks} of blocks over {base}), {end} end raised, {fence}",
                   tilt=format_angle(abs(self.tilt)), blocks=_blocks(block_height(self.tilt, board), unit),
                   base=_blocks(board, unit), end=term(end), fence=fence)


LEVEL = Table()


class Setup(Struct, frozen=True):
    """What must be in place before the cut: two operations with equal set-ups follow each other without a change.

    None means that the operation does not care: a bench job leaves the piece as it lies.
    """

    machine: str
    bit: str | None = None
    table: Table | None = None
    side: str | None = None
    """which side is up: face, back, bass edge or treble edge"""

    def words(self, unit: LengthUnit = "mm") -> str:
        """The set-up on one line: "drill press, brad 6.5, table level, face up"."""
        side = None if self.side is None else say("{side} up", side=term(self.side))
        table = None if self.table is None else self.table.words(unit)
        return ", ".join(part for part in (term(self.machine), self.bit, table, side) if part)


BENCH = Setup("bench")


class WasteHoles(Struct, frozen=True):
    """A row of holes that clears a slot before the router (mm)."""

    centres: tuple[Vec2, ...]
    diameter: float
    depth: float
    """how far the drill goes: the full diameter in a blind slot; the point, too, in a through one"""


class Cut(Struct, frozen=True):
    """What a cutter takes off in a slot or along the outline: from `start` to `end` below the face, mm."""

    start: float
    end: float
    corners: bool = False
    """only what a wider cutter has left in the corners"""
    cutter: float | None = None
    """how wide the cutter that takes it off is, mm; None for a saw and for work by hand"""


class Operation(Struct, frozen=True):
    """One line of the running order."""

    id: str
    kind: Kind
    title: str
    words: str
    """one sentence for the bench"""
    setup: Setup
    features: tuple[str, ...] = ()
    """ids of the layout's features concerned; "outline" for the outline"""
    drillings: tuple[Drilling, ...] = ()
    stop: float | None = None
    """depth to set, from the surface where the drill goes in to the full diameter's end, mm; of a through hole the
    wood's far side, and the drill's point goes on beyond it; a pin hole goes in at the top of the template"""
    waste_holes: WasteHoles | None = None
    cut: Cut | None = None
    template: bool = False
    """whether the router works along the template, which must then be in its place"""
    amount: float = 1.0
    """how much of it there is: holes, or mm of cut counted once a pass"""
    cautions: tuple[str, ...] = ()
    blocked: str = ""
    """why it cannot be done at all with this shop or this layout, to be read beside its title; empty when it can"""

    @property
    def called(self) -> str:
        """What it is called within a sentence: its title as it stands in the list, in quotation marks."""
        return say("“{title}”", title=self.title)

    @property
    def cannot(self) -> str:
        """Which step it is and why it cannot be done; empty when it can."""
        return self.blocked and f"{self.title}: {self.blocked}"


def trips(ops: Iterable[Operation]) -> list[Operation]:
    """Those that are one trip of a drill each: a pin hole that is a bore as well is drilled once, and a later reaming is none."""
    return [op for op in ops if op.drillings and op.kind != "final diameter"]


def _mm(length: float, unit: LengthUnit) -> str:
    return format_close(length, unit, mark=True)


def _blocks(length: float, unit: LengthUnit) -> str:
    """Never a fraction of an inch, as on the cards: blocks are set with shims."""
    return format_length(length, mark=True, decimals=1) if unit == "mm" else format_length(length, "in", mark=True)
