"""The rack's drills, looked up by what a drilling asks for."""

from __future__ import annotations

from geometry.layout.shop import Drill
from geometry.solids.drilling import Drilling, point_length


class Drills:
    """Finds drills in a rack and remembers what it found."""

    def __init__(self, drills: tuple[Drill, ...]) -> None:
        self._drills = drills
        self._found: dict[tuple[float, str], Drill | None] = {}

    def find(self, drilling: Drilling) -> Drill | None:
        """The drill of that diameter (to 0.05 mm), of the wanted kind if there is one."""
        key = (drilling.diameter, drilling.drill)
        if key not in self._found:
            fitting = [d for d in self._drills if abs(d.diameter - drilling.diameter) <= 0.05]
            self._found[key] = min(fitting, default=None, key=lambda d: (
                d.kind != drilling.drill, abs(d.diameter - drilling.diameter)))
        return self._found[key]

    def point(self, drilling: Drilling) -> float:
        """How far the drill's point runs ahead of the full diameter, mm; 0.3 of the diameter when the rack has none."""
        drill = self.find(drilling)
        return 0.3 * drilling.diameter if drill is None else point_length(drill)
