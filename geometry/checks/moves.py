"""What one cure changes, as data: a shift, a slide, a longer or shorter slot, a string led otherwise, what is drawn as it is cut, a
ramp, or one new number.

Which move cures a snag is sought and tried in geometry.cures; here is only what a snag can carry.
"""

from __future__ import annotations

from msgspec import Struct

from geometry.layout.slots import DrawnSlot, Ramp, StraightSlot
from geometry.vectors import Vec2, norm


class Shift(Struct, frozen=True):
    """A tuner through the face, a hole, a pin or a slot moved in plan (mm). A member of a row leaves it."""

    of: str
    by: Vec2


class Slide(Struct, frozen=True):
    """A side tuner slid along its edge, mm towards the tip (negative: to the nut). A member of a row leaves it."""

    of: str
    by: float


class Stretch(Struct, frozen=True):
    """One end of a straight slot moved along the slot: `by` mm longer (negative: shorter)."""

    of: str
    end: str
    """nut or tip"""
    by: float


class Swap(Struct, frozen=True):
    """Two tuners that serve each other's strings."""

    of: str
    other: str


class Wind(Struct, frozen=True):
    """The string of a tuner led past the other side of its post: over a post through the side, or under it."""

    of: str


class AsCut(Struct, frozen=True):
    """A slot, or the outline (a drawn shape), drawn as it is cut."""

    of: str
    shape: StraightSlot | DrawnSlot
    depth: float | None
    """mm; None for one that runs through, and of the outline"""
    ramp: Ramp | None


class Ramped(Struct, frozen=True):
    """A slot given a ramp, or another one than it has."""

    of: str
    ramp: Ramp


class Change(Struct, frozen=True):
    """One number of the layout given another value (mm): the path to its field, as edits name fields."""

    path: tuple[str | int, ...]
    before: float
    after: float


Move = Shift | Slide | Stretch | Swap | Wind | AsCut | Ramped | Change


def how_far(move: Move) -> float:
    """By how many mm a move alters the layout; 0 for a string that is led otherwise, a ramp, and what is drawn as it is cut."""
    if isinstance(move, Shift):
        return norm(move.by)
    if isinstance(move, Change):
        return abs(move.after - move.before)
    return abs(move.by) if isinstance(move, Slide | Stretch) else 0.0
