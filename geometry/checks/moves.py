"""What one cure changes, as data: a shift, a slide, a longer or shorter slot, or one new number.

Which move cures a snag is sought and tried in geometry.cures; here is only what a snag can carry.
"""

from __future__ import annotations

from dataclasses import dataclass

from geometry.vectors import Vec2


@dataclass(frozen=True, slots=True)
class Shift:
    """A tuner through the face, a hole, a pin or a slot moved in plan (mm). A member of a row leaves it."""

    of: str
    by: Vec2


@dataclass(frozen=True, slots=True)
class Slide:
    """A side tuner slid along its edge, mm towards the tip (negative: to the nut). A member of a row leaves it."""

    of: str
    by: float


@dataclass(frozen=True, slots=True)
class Stretch:
    """One end of a straight slot moved along the slot: `by` mm longer (negative: shorter)."""

    of: str
    end: str
    """nut or tip"""
    by: float


@dataclass(frozen=True, slots=True)
class Change:
    """One number of the layout given another value (mm): the path to its field, as edits name fields."""

    path: tuple[str | int, ...]
    before: float
    after: float


Move = Shift | Slide | Stretch | Change
