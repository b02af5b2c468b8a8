"""The rack's drills, looked up by what a drilling asks for."""

from __future__ import annotations

from geometry.layout.shop import Drill
from geometry.solids.drilling import Drilling, drill_among, point_ahead


class Drills:
    """Finds drills in a rack and remembers what it found."""

    def __init__(self, drills: tuple[Drill, ...]) -> None:
        self._drills = drills
        self._found: dict[tuple[float, str], tuple[Drill | None, float]] = {}

    def find(self, drilling: Drilling) -> Drill | None:
        """The drill for a drilling, as geometry.solids.drilling.drill_among."""
        return self.both(drilling)[0]

    def point(self, drilling: Drilling) -> float:
        """How far the drill's point runs ahead of the full diameter, mm, as geometry.solids.drilling.point_ahead."""
        return self.both(drilling)[1]

    def both(self, drilling: Drilling) -> tuple[Drill | None, float]:
        """(the drill, how far its point runs ahead)."""
        key = (drilling.diameter, drilling.drill)
        known = self._found.get(key)
        if known is None:
            drill = drill_among(self._drills, drilling)
            known = self._found[key] = drill, point_ahead(drill, drilling)
        return known
