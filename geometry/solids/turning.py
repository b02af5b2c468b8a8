"""Where on an exact curve its direction passes a given slope, found from two chords next to each other between which it does."""

from __future__ import annotations

from geometry import vectors as v
from geometry.solids.walls import Wall
from geometry.vectors import Vec2

_ROUNDS = 40


def where_it_turns(wall: Wall, corners: tuple[Vec2, Vec2, Vec2], across: Vec2, least: float) -> Vec2:
    """The place of a wall, about the middle one of three corners of its chords, from which on its direction is no longer `least` along `across`.

    The unit direction counts as it is travelled through the corners, from the first to the last: along the first chord it has
    that much, along the last it has not. At a sharp corner it is the corner itself.
    """
    before, corner, after = corners
    for a, b in ((before, corner), (corner, after)):
        place = _on_piece(wall, a, b, across, least)
        if place is not None:
            return place
    return corner


def _on_piece(wall: Wall, a: Vec2, b: Vec2, across: Vec2, least: float) -> Vec2 | None:
    """The place between the middle of a chord from a to b, or its start, and its end; None where all of that has `least`, `a` where none has."""
    middle = wall.foot(v.middle(a, b))
    piece, forwards = wall.path.segments[middle.segment], v.dot(middle.tangent, v.sub(b, a)) >= 0

    def at(p: Vec2, otherwise: float) -> float:
        foot = wall.foot(p)
        return foot.t if foot.segment == middle.segment else otherwise

    low, high = at(a, 0.0 if forwards else 1.0), at(b, 1.0 if forwards else 0.0)

    def lacks(t: float) -> bool:
        along = v.dot(piece.tangent(t), across)
        return (along if forwards else -along) <= least

    if lacks(low):
        return a
    if not lacks(high):
        return None
    for _ in range(_ROUNDS):
        t = (low + high) / 2
        low, high = (low, t) if lacks(t) else (t, high)
    return piece.point(low)
