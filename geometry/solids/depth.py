"""How deep a slot or hole is cut, as drawings tell it."""

from __future__ import annotations

from msgspec import Struct


class Depth(Struct, frozen=True):
    """How deep: None goes through, else mm below the surface that it is cut from."""

    deep: float | None
    back: bool = False
    """whether it is cut from the back"""
    reamed: tuple[float, float] | None = None
    """how wide (mm) it is reamed at that surface, and over how many mm that narrows by one"""
    seen: bool = False
    """whether nothing is cut: the centreline of a drawing of the head as it is seen from behind"""
