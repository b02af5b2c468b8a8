"""The rack's drills, looked up by what a drilling asks for."""

from __future__ import annotations

from geometry.layout.shop import Drill
from geometry.solids.drilling import Drilling, drill_among, point_ahead


class Drills:
    """Finds drills in a rack and remembers what it found."""

    def __init__(self, drills: tuple[Drill, ...]) -> None:
        self._drills = drills
        self._found: dict[tuple[float, str], Drill | None] = {}

    def find(self, drilling: Drilling) -> Drill | None:
        """The drill for a drilling, as geometry.solids.drilling.drill_among."""
        key = (drilling.diameter, drilling.drill)
        if key not in self._found:
            self._found[key] = drill_among(self._drills, drilling)
        return self._found[key]

    def point(self, drilling: Drilling) -> float:
        """How far the drill's point runs ahead of the full diameter, mm, as geometry.solids.drilling.point_ahead."""
        return point_ahead(self.find(drilling), drilling)
