"""Running order: operations, what must come before what, the best order, the wood after each step, and pins."""

from geometry.sequence.before import Before, Grade
from geometry.sequence.changes import count_changes, runs
from geometry.sequence.counts import Counts, counts
from geometry.sequence.derive import operations
from geometry.sequence.judge import Problem, judge, legal_span, moved
from geometry.sequence.operation import KINDS, Cut, Kind, Operation, Setup, Table, WasteHoles
from geometry.sequence.order import Order, best_order
from geometry.sequence.pins import NoPins, propose_pins
from geometry.sequence.plans import Routing, Trip
from geometry.sequence.precedence import precedence
from geometry.sequence.rates import Changes, Hours, Rates, hours
from geometry.sequence.state import SlotState, WoodState, wood_after
from geometry.sequence.wishes import Wishes

__all__ = ["KINDS", "Before", "Changes", "Counts", "Cut", "Grade", "Hours", "Kind", "NoPins", "Operation", "Order",
           "Problem", "Rates", "Routing", "Setup", "SlotState", "Table", "Trip", "WasteHoles", "Wishes", "WoodState",
           "best_order", "count_changes", "counts", "hours", "judge", "legal_span", "moved", "operations", "precedence",
           "propose_pins", "runs", "wood_after"]
