"""Which single move cures a snag: sought among what can move, and tried by checking the layout again.

A cure that is told was carried out as an edit: the snag was gone, nothing new
spoilt the work, and no other snag got worse. Where no such move was found the
sentence says so and names what stands in the way.
"""

from geometry.cures.carry_out import apply_cure, carried_out, touched
from geometry.cures.settle import curable, settle, with_cures
from geometry.cures.words import told

__all__ = ["apply_cure", "carried_out", "curable", "settle", "told", "touched", "with_cures"]
