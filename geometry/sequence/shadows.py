"""What an operation touches, seen from the face, while the blank still has square edges."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from geometry.by_size import of_loop, remembered_by_size
from geometry.curves.polygons import grown, line, polygon
from geometry.layout import Headstock, Pin, pin_pairs
from geometry.layout.outline import Loop, loop_path
from geometry.sequence.operation import Operation
from geometry.solids.drilling import Drilling
from geometry.solids.slot_area import slot_area
from geometry.solids.walls import oblong


def shadow(layout: Headstock, op: Operation) -> BaseGeometry | None:
    """Area in plan (mm) that the operation cuts; None for work that cuts nothing.

    The outline's operations give the line of the outline itself.
    """
    if op.kind in ("cut outline", "rout outline"):
        return line(loop_path(layout.outline))
    if op.kind in ("waste holes", "saw", "rout"):
        slot = next((s for s in layout.slots if s.id == op.features[0]), None)
        return None if slot is None else slot_area(slot)
    if op.drillings and op.kind != "final diameter":
        return shapely.union_all([drilled(d) for d in op.drillings])
    return None


def drilled(d: Drilling) -> BaseGeometry:
    """A drilling in plan, from its mark on the square edge (the seat when it has none) to its flat end."""
    if d.upright:
        return grown(shapely.Point(d.start[:2]), d.radius)
    start = d.mark or d.start
    return polygon(oblong(start[:2], d.direction[:2], d.stop, d.radius))


@remembered_by_size(16, of_loop)
def outline_line(outline: Loop) -> BaseGeometry:
    """The outline as a chain of chords."""
    return line(loop_path(outline))


@remembered_by_size(16, of_loop)
def outline_area(outline: Loop) -> BaseGeometry:
    """The inside of the outline. GeometryError when it has none."""
    return polygon(loop_path(outline))


def pin_circle(pin: Pin) -> BaseGeometry:
    """A pin in plan."""
    return grown(shapely.Point(pin.at), pin.diameter / 2)


def outline_pins(layout: Headstock) -> list[str]:
    """Ids of the pins that stand whole inside the outline: a template of the head's shape can use no others."""
    return [pin.id for pin in pin_pairs.outline_pins(layout)]


def slot_pins(layout: Headstock) -> list[str]:
    """Ids of the pins that the template for the slots can use."""
    return [pin.id for pin in pin_pairs.template_pins(layout)]
