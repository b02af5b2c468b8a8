"""What is set down on the blank before it is cut: crosses and corners of the papers and the template, ends of glue lines, middles of plugs."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import product

from geometry import vectors as v
from geometry.curves import Segment
from geometry.curves.undivided import undivided
from geometry.layout.blank import Blank, Ear
from geometry.layout.book import Spot
from geometry.layout.headstock import Headstock
from geometry.layout.outline import Loop
from geometry.layout.slots import DrawnSlot, SingleHole, Slot, shape_path
from geometry.solids.drilling import Drilling, Hole, to_drill
from geometry.solids.in_wood import DECIMALS, FARTHEST
from geometry.tolerance import PRICKED
from geometry.vectors import Vec2

SET_DOWN = ("mark", "template", "plug", "glue ear")
"""Kinds of operations of which the spots are kept."""

Places = dict[tuple[str, int, int], list[Vec2]]
"""Spots by surface and by squares of PRICKED mm: an outline may have some thousand, and is asked for at each step of a drag"""
_ABOUT = sorted(product((0, -1, 1), repeat=2), key=lambda off: off != (0, 0))
"""From a square to itself, where an unmoved spot is found, and to those about it"""


def set_down(layout: Headstock, kind: str, features: Sequence[str] = (), offset: float = 0.0) -> tuple[Spot, ...]:
    """What one of these operations leaves on the wood, or on the board of the template, whose lines lie `offset` mm from what is cut along them."""
    if kind == "glue ear":
        return tuple([spot for ear in layout.ears if ear.id in features for spot in glue_line(layout.blank, ear)])
    if kind == "plug":
        return tuple([spot for _, spot in plugs(layout.holes)])
    shapes: list[Slot | Loop] = [*layout.to_rout] if kind == "mark" else [*layout.to_rout, layout.outline]
    crosses = [spot for hole in to_drill(layout) if kind == "mark" or locates(hole) for spot in crosses_of(hole.drillings)]
    return tuple(dict.fromkeys([*crosses, *(spot for shape in shapes for spot in corners(shape, offset))]))


def locates(hole: Hole) -> bool:
    """Whether it is a locating pin's, which the template has too: through that it is drilled."""
    return hole.drillings[0].role == "locating"


def crosses_of(drillings: Iterable[Drilling]) -> list[Spot]:
    """Where holes are pricked through the papers; of the small ones of a plate on an edge not, which are drilled through the plate."""
    found = []
    for d in drillings:
        if d.upright:
            found.append(_spot(d.surface, d.start[:2]))
        elif d.mark is not None and d.role not in ("screw", "pin"):
            found.append(_spot(d.surface, d.mark[1:]))
    return [spot for spot in found if spot is not None]


def corners(shape: Slot | Loop, offset: float = 0.0) -> list[Spot]:
    """Begin and middle of each piece of a wall or of the outline, `offset` mm beside it, and of those that a node only parts also undivided:
    one that is bent, moved or widened has others."""
    pieces = _pieces(shape)
    return [*_of_pieces(pieces, offset), *_of_pieces(undivided(pieces), offset)]


def off_corner(shape: Slot | Loop, had: Places, offset: float = 0.0) -> Spot | None:
    """The first of its corners, `offset` mm beside it, that was not set down; a node that only parts a piece is none."""
    pieces = _pieces(shape)
    if all_there(_of_pieces(pieces, offset), had):
        return None
    return next((spot for spot in _of_pieces(undivided(pieces), offset) if not _is_there(spot, had)), None)


def _pieces(shape: Slot | Loop) -> Sequence[Segment]:
    return shape_path(shape.shape if isinstance(shape, Slot) else DrawnSlot(loop=shape)).segments


def _of_pieces(pieces: Iterable[Segment], offset: float) -> Iterator[Spot]:
    found = (_spot("face", v.along(piece.point(t), v.left(piece.tangent(t)), offset)) for piece in pieces for t in (0.0, 0.5))
    return (spot for spot in found if spot is not None)


def glue_line(blank: Blank, ear: Ear) -> tuple[Spot, ...]:
    """Both ends of the glue line of an ear."""
    x = blank.glue_x(ear)
    return tuple([spot for y in (ear.start, ear.end) if (spot := _spot("face", (x, y))) is not None])


def plugs(holes: Iterable[SingleHole]) -> list[tuple[str, Spot]]:
    """Ids and middles of the old holes that are plugged: of those that go through on the face, wherever they were drilled from."""
    return [(hole.id, spot) for hole in holes if hole.plugged
            and (spot := _spot("face" if hole.depth is None else hole.surface, hole.at)) is not None]


def by_place(spots: Iterable[Spot]) -> Places:
    """The spots by the squares in which they lie, where `all_there` looks for them."""
    found: Places = {}
    for spot in spots:
        found.setdefault(_square(spot), []).append(spot.at)
    return found


def all_there(wanted: Iterable[Spot], had: Places) -> bool:
    """Whether each spot is among those that were set down, to within PRICKED."""
    return all(_is_there(spot, had) for spot in wanted)


def _is_there(spot: Spot, had: Places) -> bool:
    surface, i, k = _square(spot)
    return any(math.dist(at, spot.at) <= PRICKED for di, dk in _ABOUT for at in had.get((surface, i + di, k + dk), ()))


def _square(spot: Spot) -> tuple[str, int, int]:
    return spot.surface, math.floor(spot.at[0] / PRICKED), math.floor(spot.at[1] / PRICKED)


def _spot(surface: str, at: Vec2) -> Spot | None:
    """None for one so far out that no file can hold it."""
    if max(map(abs, at)) > FARTHEST:
        return None
    return Spot(surface=surface, at=(round(float(at[0]), DECIMALS) + 0.0, round(float(at[1]), DECIMALS) + 0.0))
