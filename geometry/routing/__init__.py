"""Router and template: followers, offsets, fit, depth, passes and plans."""

from geometry.routing.follower import Follower, follower, template_opening, template_outline
from geometry.routing.passes import Pass
from geometry.routing.plan import RoutPlan, SlotPlan, Verdict
from geometry.routing.search import plan_outline, plan_slot
from geometry.routing.together import RoutingPlan, plan_routing
from geometry.routing.waste import Waste, drill_waste

__all__ = ["Follower", "Pass", "RoutPlan", "RoutingPlan", "SlotPlan", "Verdict", "Waste", "drill_waste", "follower",
           "plan_outline", "plan_routing", "plan_slot", "template_opening", "template_outline"]
