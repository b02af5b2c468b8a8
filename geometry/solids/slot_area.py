"""The inside of a slot seen from the face."""

from __future__ import annotations

from shapely.geometry import Polygon

from geometry.by_size import of_slot, remembered_by_size
from geometry.curves.polygons import polygon
from geometry.errors import GeometryError
from geometry.layout.slots import Slot, slot_path


@remembered_by_size(128, of_slot)
def slot_area(slot: Slot) -> Polygon | None:
    """The inside of a slot; None while it has none: the checks say why."""
    try:
        return polygon(slot_path(slot))
    except GeometryError:
        return None
