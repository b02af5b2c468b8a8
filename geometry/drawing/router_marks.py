"""What a plan leaves on the face: wood to pare, corners lost, holes that take the waste out."""

from __future__ import annotations

from geometry.drawing.marks import Cross, Disc, Drawing, Mark
from geometry.drawing.shapes import polygon_area
from geometry.routing.plan import SlotPlan
from geometry.routing.waste import Waste

ARM = 2.0
"""Half arms of the pricking marks, mm."""


def plan_marks(plan: SlotPlan) -> Drawing:
    """Marks on the face for the best plan of a slot or the outline; the holes alone where no plan is found."""
    marks: list[Mark] = []
    if plan.best is not None:
        for patch in (*plan.best.reached.left, *plan.best.reached.lost):
            marks.append(polygon_area(patch.area, "left standing", plan.of))
    if isinstance(plan.waste, Waste):
        marks += waste_marks(plan.waste)
    return tuple(marks)


def waste_marks(waste: Waste) -> Drawing:
    """A circle and a pricking mark for each hole, in order."""
    return tuple(mark for centre in waste.centres for mark in (
        Disc(centre, waste.drill.diameter / 2, "hole", waste.slot), Cross(centre, ARM, "cross", waste.slot)))
