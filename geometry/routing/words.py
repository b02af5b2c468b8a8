"""Small words that the sentences of this room share."""

from __future__ import annotations

from geometry.routing.follower import Follower
from geometry.units import format_length
from geometry.vectors import Vec2


def mm(length: float) -> str:
    """A length with its unit: to 0.1 mm, or to 0.01 mm where it was given so (6.35)."""
    return format_length(length, decimals=2 if abs(length - round(length, 3)) < 1e-9 else 1, mark=True)


def bare(length: float) -> str:
    """A length without its unit, to 0.01 mm."""
    return format_length(length)


def place(at: Vec2) -> str:
    """A point for the maker: across from the centreline, along from the nut line."""
    return f"{format_length(at[0], decimals=1)} across, {format_length(at[1], decimals=1)} along"


def named(follower: Follower) -> str:
    """A bit with what guides it, by their names in the rack."""
    return follower.bit.id if follower.bush is None else f"{follower.bit.id} with {follower.bush.id}"


def times(count: int, thing: str, plural: str | None = None) -> str:
    """`1 pass`, `2 passes`."""
    return f"{count} {thing if count == 1 else plural or thing + 's'}"
