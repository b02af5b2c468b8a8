"""Router and template: followers, offsets, fit, depth, passes and plans."""

from geometry.at_need import fetched
from geometry.routing.follower import Follower, follower, template_opening, template_outline  # here: one has the name of its file

_HOMES: dict[str, tuple[str, ...]] = {
    "passes": ("Pass",),
    "plan": ("RoutPlan", "SlotPlan", "Verdict"),
    "search": ("plan_outline", "plan_slot"),
    "together": ("RoutingPlan", "plan_routing"),
    "waste": ("Waste", "drill_waste"),
}
"""File to the names that others may use."""

__all__ = sorted(("Follower", "follower", "template_opening", "template_outline",
                  *(name for names in _HOMES.values() for name in names)))
__getattr__ = fetched(__name__, _HOMES)
