"""Running order: operations, what must come before what, the best order, the wood after each step, and pins."""

from geometry.sequence.before import Before, Grade
from geometry.sequence.changes import count_changes, runs
from geometry.sequence.counts import Counts, counts
from geometry.sequence.derive import operations
from geometry.sequence.estimate import Taken, estimate
from geometry.sequence.judge import BY_NOW, Problem, judge, legal_span, moved
from geometry.sequence.operation import KINDS, Cut, Kind, Operation, Setup, Table, WasteHoles
from geometry.sequence.order import Order, best_order
from geometry.sequence.own_order import arranged, in_own_order, numbered
from geometry.sequence.pin_plan import PinPlan, plan_pins
from geometry.sequence.pins import NoPins, propose_pins
from geometry.sequence.plans import Routing, Trip
from geometry.sequence.precedence import precedence
from geometry.sequence.rates import Changes, Hours, Rates, hours, minutes
from geometry.sequence.state import SlotState, WoodState, wood_after
from geometry.sequence.wishes import Wishes

__all__ = ["BY_NOW", "KINDS", "Before", "Changes", "Counts", "Cut", "Grade", "Hours", "Kind", "NoPins", "Operation", "Order",
           "PinPlan", "Problem", "Rates", "Routing", "Setup", "SlotState", "Table", "Taken", "Trip", "WasteHoles", "Wishes",
           "WoodState", "arranged", "best_order", "count_changes", "counts", "estimate", "hours", "in_own_order", "judge",
           "legal_span", "minutes", "moved", "numbered", "operations", "plan_pins", "precedence", "propose_pins", "runs", "wood_after"]
