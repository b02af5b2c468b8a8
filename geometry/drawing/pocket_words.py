"""Names of pockets that are there, beside them on template and wrap paper."""

from __future__ import annotations

from geometry.drawing.margin_labels import LINE, Named
from geometry.drawing.marks import Label
from geometry.layout import Headstock, Slot, slot_path
from geometry.lengths import told_down
from geometry.saying import say

BESIDE = 1.5
"""mm from a pocket's wall to its words."""


def pocket_words(slot: Slot, thickness: float) -> tuple[str, str]:
    """Its name, and its depth in the unit of `speaking`: "10 deep, is there"; never told as deeper than it is."""
    return slot.id, (say("through, is there") if slot.through(thickness) else
                     say("{depth} deep, is there", depth=told_down(slot.floor(thickness), 2)))


def named_pockets(layout: Headstock) -> list[Named]:
    """For words in the margin: each pocket by the place of its wall that lies farthest to the treble side, in the head if any of it does."""
    found = []
    for slot in layout.slots:
        if slot.there:
            points = slot_path(slot).flatten(0.05)
            x, y = max([p for p in points if p[1] > 0] or points, key=lambda p: (round(p[0], 3), p[1]))
            found.append(Named((float(x), float(y)), 0.0, pocket_words(slot, layout.blank.thickness), slot.id))
    return found


def pocket_labels(layout: Headstock, letter: float) -> list[Label]:
    """Words of capital height `letter` (mm) beside each pocket: behind the nut line where it runs over that and the paper has room, else
    beside the middle of what lies before it."""
    found = []
    for slot in layout.slots:
        if slot.there:
            _, y0, x1, y1 = slot_path(slot).box
            low = max(y0, -layout.blank.behind)
            behind = -LINE * letter
            level = min(low / 2, behind) if y1 > 0 > low and layout.blank.behind > -2 * behind else (max(y0, 0.0 if y1 > 0 else y0) + y1) / 2
            found += [Label(words, (x1 + BESIDE, level + up * LINE * letter), letter, "dimension", slot.id)
                      for words, up in zip(pocket_words(slot, layout.blank.thickness), (0.1, -0.9), strict=True)]
    return found
