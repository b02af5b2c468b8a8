"""Ears that end too soon: beside an ear the wood ends at its glue line, and the square edge lies there."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import shapely

from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.snags import BLANK, SPOILS, Snag, grade, short
from geometry.checks.words import both, clearance, into, tenths
from geometry.layout.blank import Blank, Ear
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.ears import bare
from geometry.solids.side import tilt_of
from geometry.solids.walls import Wall
from geometry.terms import term
from geometry.tolerance import FLAT

_Stretch = tuple[float, float, Ear, Ear]
"""(from, to) along y that ears cover without a gap, mm, and the ears that begin and end it"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Where the head reaches past an ear, side bores whose mark lies beside one, and pins that stand there."""
    layout = scene.layout
    yield from scene.memo.snags(_pin, scene.items, layout.ears, layout.blank, layout.margins)
    yield from scene.memo.of(_outline, scene.outline, layout.ears, layout.blank)
    yield from scene.memo.snags(_mark, scene.sides, layout.ears, layout.blank, layout.margins)


def _covered(ears: Sequence[Ear], side: str) -> list[_Stretch]:
    """The stretches of a square edge that ears make."""
    found: list[_Stretch] = []
    for ear in sorted((ear for ear in ears if ear.side == side), key=lambda ear: min(ear.start, ear.end)):
        low, high = sorted((ear.start, ear.end))
        if found and low <= found[-1][1]:
            if high > found[-1][1]:
                found[-1] = (found[-1][0], high, found[-1][2], ear)
        else:
            found.append((low, high, ear, ear))
    return found


def _outline(outline: Wall, ears: tuple[Ear, ...], blank: Blank) -> tuple[Snag, ...]:
    """Each piece of the head, from the nut line on, that lies outside the glue lines where no ear is; of several ears the outermost line counts."""
    if outline.crossing is not None:
        return ()
    found = []
    for side in ("bass", "treble"):
        stretches = _covered(ears, side)
        if not stretches:
            continue
        for piece in shapely.get_parts(outline.area & bare(blank, ears, side)):
            x0, y0, x1, y1 = piece.bounds
            if piece.area > 0.0 and min(x1 - x0, y1 - y0) > 2 * FLAT:
                found.append(_past(stretches, y0, y1, ((x0 + x1) / 2, (y0 + y1) / 2)))
    return tuple(found)


def _past(stretches: list[_Stretch], y0: float, y1: float, at: tuple[float, float]) -> Snag:
    """The snag of what lies from y0 to y1 beside ears; the nearest of them would have to be longer."""
    lacks, ear, end = min(((y1 - high, last, "tip") if high <= y0 + 2 * FLAT else (low - y0, begun, "nut") for low, high, begun, last in stretches),
                          key=lambda found: found[0])
    return Snag("ear-too-short", SPOILS, (ear.id, OUTLINE), (*at, 0.0), -lacks, 0.0,
                say("The head reaches {measured} mm past the {end} end of {ear}, where there is no wood beside the glue line.",
                    measured=into(-lacks), end=term(end), ear=ear.id),
                say("Make {ear} longer by {by} mm at the {end} end.", ear=ear.id, by=tenths(lacks), end=term(end)))


def _mark(item: Item, ears: tuple[Ear, ...], blank: Blank, margins: Margins) -> tuple[Snag, ...]:
    """A side bore's mark has to lie on an ear, with wood to either side of the drill; what the ends of the blank leave is told elsewhere."""
    bore = item.post
    if bore is None or bore.mark is None:
        return ()
    rim = max(drilling.radius for drilling in item.drillings if drilling.hole == bore.hole) / math.cos(tilt_of(item.frame))
    y, found = bore.mark[1], []
    for low, high, begun, last in _covered(ears, item.frame.side):
        ends = [(y - low, begun, "nut")] if low > -blank.behind else []
        ends += [(high - y, last, "tip")] if high < blank.tip else []
        if not ends:
            return ()
        found.append(min(ends, key=lambda end: end[0]))
    if not found:
        return ()
    reach, ear, end = max(found, key=lambda end: end[0])
    measured, needed = reach - rim, margins.blank_edge
    if not short(measured, needed):
        return ()
    text = clearance(measured, needed, "The bore for {item} runs {measured} mm past the {end} end of {ear}: the square edge is not there.",
                     "The bore for {item} leaves {a} mm of {ear} to its {end} end; {b} mm wanted.", item=item.id, end=term(end), ear=ear.id)
    return (Snag("ear-too-short", grade(measured), (item.id, ear.id), bore.mark, measured, needed, text,
                 say("Make {ear} longer by {by} mm at the {end} end.", ear=ear.id, by=tenths(needed - measured), end=term(end))),)


def _pin(item: Item, ears: tuple[Ear, ...], blank: Blank, margins: Margins) -> tuple[Snag, ...]:
    """A locating pin needs wood all round it."""
    if item.what != "pin":
        return ()
    hole = item.drillings[0]
    x, y = hole.start[:2]
    side = "treble" if x > 0 else "bass"
    air = bare(blank, ears, side)
    measured, needed = float(shapely.distance(shapely.Point(x, y), air)) - hole.radius, margins.pin_any
    if air.is_empty or not short(measured, needed):
        return ()
    a, b = both(measured, needed)
    text = (say("The hole of locating pin {item} stands where no ear is, and no wood.", item=item.id) if measured < 0 else
            say("The hole of locating pin {item} leaves {a} mm of wood to where no ear is; {b} mm wanted.", item=item.id, a=a, b=b))
    return (Snag("pin-to-blank", grade(measured), (item.id, BLANK), (x, y, 0.0), measured, needed, text,
                 say("Set the pin elsewhere, or make the ear longer.")),)
