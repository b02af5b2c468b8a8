"""How deep each slot, pocket and bore of a drawing goes and how it is reamed, for drawings that leave the program."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from geometry.drawing.marks import Disc, Mark
from geometry.drawing.slot_marks import SLOT_STYLES
from geometry.layout import Headstock
from geometry.solids import holes
from geometry.solids.depth import Depth

FINE = 6
"""Decimals of mm to which a circle is known again."""


def depths_of(layout: Headstock, behind: bool = False) -> Callable[[Mark], Depth | None]:
    """What tells the depth of a mark of the layout's drawings: of the line of a slot or pocket, and of the circle of a bore
    square to the face; None of any other. `behind` for the drawing of the head as seen from the back, of which the centreline tells that."""
    thick, side = layout.blank.thickness, -1.0 if behind else 1.0
    slots = {slot.id: Depth(None if slot.through(thick) else slot.floor(thick)) for slot in layout.slots}
    bores: Mapping[tuple, Depth] = {
        _key(d.of, d.operation, side * d.start[0], d.start[1], d.radius): Depth(None if d.through else d.depth, d.surface == "back", (d.reamed, d.taper) if d.reamed else None)
        for hole in holes(layout) for d in hole.drillings if d.upright}

    def told(mark: Mark) -> Depth | None:
        if behind and mark.style == "centreline":
            return Depth(None, seen=True)
        if isinstance(mark, Disc):
            return bores.get(_key(mark.owner, mark.style, *mark.centre, mark.radius))
        return slots.get(mark.owner) if mark.style in SLOT_STYLES else None
    return told


def _key(owner: str, style: str, x: float, y: float, radius: float) -> tuple:
    return owner, style, round(x, FINE) + 0.0, round(y, FINE) + 0.0, round(radius, FINE)
