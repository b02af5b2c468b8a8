"""What the running order needs to know of a router plan, and a plain plan for when there is none.

Any object with these fields serves as a plan. The plain plan looks at cutting
length and width alone; it does not judge contact, shank or reach.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, Protocol

import shapely

from geometry import vectors as v
from geometry.curves.polygons import polygon
from geometry.layout import Headstock, RouterBit, Slot, StraightSlot, slot_path
from geometry.vectors import Vec2

OUTLINE = "outline"
"""Under this name a mapping of plans keeps the plan of the outline."""
OVERLAP = 1.0
"""How far the cut from the back runs past the cut from the face, mm (common practice, no source)."""
WALL_LEFT = 1.0
"""Wood left for the router beside the waste holes, mm (common practice, no source)."""
BETWEEN = 1.0
"""Wood between two waste holes, mm (common practice, no source)."""

Surface = Literal["face", "back"]


class RoutPass(Protocol):
    """One pass of the router."""

    @property
    def side(self) -> str:
        """face or back: the side that is up."""

    @property
    def bit(self) -> str:
        """Id of the router bit."""

    @property
    def bush(self) -> str | None:
        """Id of the guide bush, if any."""

    @property
    def start(self) -> float:
        """Depth below the side that is up where the pass begins, mm."""

    @property
    def end(self) -> float:
        """Depth below the side that is up where the pass ends, mm."""


class WasteRow(Protocol):
    """Holes drilled before the router."""

    @property
    def drill(self) -> str:
        """Id of the drill."""

    @property
    def diameter(self) -> float:
        """mm"""

    @property
    def centres(self) -> Sequence[Vec2]:
        """Centres on the face, mm."""

    @property
    def depth(self) -> float:
        """From the face to the full diameter's end, mm."""


class RoutPlan(Protocol):
    """How a slot or the outline is cut."""

    @property
    def passes(self) -> Sequence[RoutPass]:
        """In their order."""

    @property
    def waste(self) -> WasteRow | None:
        """Holes drilled first, None when the router starts in full wood."""

    @property
    def blocked(self) -> str:
        """Why no bit can do it, in one sentence; empty when the passes do it."""


@dataclass(frozen=True, slots=True)
class PlainPass:
    """See RoutPass."""

    side: Surface
    bit: str
    bush: str | None
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class PlainWaste:
    """See WasteRow."""

    drill: str
    diameter: float
    centres: tuple[Vec2, ...]
    depth: float


@dataclass(frozen=True, slots=True)
class PlainPlan:
    """See RoutPlan."""

    passes: tuple[PlainPass, ...] = ()
    waste: PlainWaste | None = None
    blocked: str = ""


def plain_slot_plan(layout: Headstock, slot: Slot) -> PlainPlan:
    """The chosen bit, else the widest bit of the rack that enters: from the face, then from the back if it must."""
    depth = layout.blank.thickness if slot.depth is None else min(slot.depth, layout.blank.thickness)
    width = slot.shape.width if isinstance(slot.shape, StraightSlot) else (
        2 * shapely.maximum_inscribed_circle(polygon(slot_path(slot))).length)
    found = _bits(layout, width)
    if not found:
        return PlainPlan(waste=_waste(layout, slot, depth), blocked=(
            f"No router bit in the rack enters the slot {slot.id}: add a slimmer bit."))
    passes = next((made for bit in found if (made := _passes(layout, bit, depth, slot.depth is None))), ())
    blocked = "" if passes else (
        f"No router bit in the rack that enters the slot {slot.id} reaches {depth:g} mm deep: add one that cuts deeper.")
    return PlainPlan(passes, _waste(layout, slot, depth), blocked)


def plain_outline_plan(layout: Headstock) -> PlainPlan:
    """The chosen bit, else the longest with a bearing on its shank: from the face, then from the back if it must."""
    found = _bits(layout, None)
    depth = layout.blank.thickness
    passes = next((made for bit in found if (made := _passes(layout, bit, depth, True))), ())
    blocked = "" if passes else (
        f"No router bit in the rack cuts the outline {depth:g} mm deep: add a longer one, or finish the outline by hand.")
    return PlainPlan(passes, None, blocked)


def _bits(layout: Headstock, width: float | None) -> list[RouterBit]:
    """The chosen bit first, bits that follow a template below the work last.

    Between them the ones with a bearing first for the outline, the widest first for a slot of that width.
    """
    def worth(bit: RouterBit) -> tuple:
        guided = -bit.cutter if width is not None else bit.bearing != "shank"
        return bit.id != layout.template.bit, bit.bearing == "tip", guided, -bit.cutting_length, bit.id

    return sorted((bit for bit in layout.rack.bits if width is None or bit.cutter <= width), key=worth)


def _passes(layout: Headstock, bit: RouterBit, depth: float, through: bool) -> tuple[PlainPass, ...]:
    """One pass from the face, one from each side, or nothing when the bit is too short for both."""
    bush = layout.template.bush if bit.id == layout.template.bit else None
    if bit.cutting_length >= depth:
        return (PlainPass("face", bit.id, bush, 0.0, depth),)
    if not through or 2 * bit.cutting_length < depth + OVERLAP:
        return ()
    from_face = bit.cutting_length
    return (PlainPass("face", bit.id, bush, 0.0, from_face),
            PlainPass("back", bit.id, bush, 0.0, depth - from_face + OVERLAP))


def _waste(layout: Headstock, slot: Slot, depth: float) -> PlainWaste | None:
    """Even holes along a straight slot with the widest drill that leaves a wall; None for a drawn slot."""
    shape = slot.shape
    if not isinstance(shape, StraightSlot):
        return None
    fitting = [d for d in layout.rack.drills if d.kind != "twist" and d.diameter <= shape.width - 2 * WALL_LEFT]
    if not fitting:
        return None
    drill = max(fitting, key=lambda d: (d.diameter, d.kind == "forstner", d.id))
    length = v.distance(shape.nut_end, shape.tip_end)
    gaps = int(length / (drill.diameter + BETWEEN) + 1e-9)
    along = v.unit(v.sub(shape.tip_end, shape.nut_end))
    centres = tuple(v.along(shape.nut_end, along, length * i / gaps) for i in range(gaps + 1)) if gaps else (
        v.middle(shape.nut_end, shape.tip_end),)
    return PlainWaste(drill.id, drill.diameter, centres, depth)
