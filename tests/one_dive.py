"""One string over the end of a slot, as the strings' rooms tell it."""

from geometry.layout import Slot
from geometry.layout.slots import slot_path
from geometry.solids.walls import Wall
from geometry.strings.dive import Dive, dives_into
from geometry.strings.runs import Run


def dive(run: Run, slot: Slot) -> Dive | None:
    """The dive of a string into a slot, None where it does not dive."""
    return dives_into([run], slot, Wall(slot_path(slot)))[0]
