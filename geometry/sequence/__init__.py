"""Running order: operations, what must come before what, the best order, the wood after each step, and pins."""

from geometry.sequence.before import Before, Grade
from geometry.sequence.changes import count_changes, runs
from geometry.sequence.derive import operations
from geometry.sequence.operation import KINDS, Cut, Kind, Operation, Setup, Table, WasteHoles
from geometry.sequence.order import Order, best_order
from geometry.sequence.precedence import precedence
from geometry.sequence.rates import Changes, Hours, Rates, hours
from geometry.sequence.wishes import Wishes

__all__ = ["KINDS", "Before", "Changes", "Cut", "Grade", "Hours", "Kind", "Operation", "Order", "Rates", "Setup",
           "Table", "WasteHoles", "Wishes", "best_order", "count_changes", "hours", "operations", "precedence", "runs"]
