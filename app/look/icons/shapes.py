"""Every sign by the key of its tool or action."""

from __future__ import annotations

from collections.abc import Callable

from app.look.icons import drawing_signs, paper_signs, wood_signs
from app.look.icons.sketch import Sketch

SHAPES: dict[str, Callable[[Sketch], None]] = {
    "hold": wood_signs.clamp, "draw outline": drawing_signs.head_with_nodes, "picture": drawing_signs.picture_moved,
    "measure": drawing_signs.dividers, "slot": wood_signs.slot, "draw slot": wood_signs.drawn_slot,
    "pin": wood_signs.pin, "section": drawing_signs.section, "tuner": wood_signs.tuner, "hole": wood_signs.bore,
    "wind": wood_signs.winding,
    "import": drawing_signs.drawing_in, "fillet": drawing_signs.rounded_corner, "symmetric": drawing_signs.two_halves,
    "propose pins": wood_signs.two_pins, "row on a line": drawing_signs.row_on_a_line,
    "row along the edge": drawing_signs.row_along_the_edge,
    "print": paper_signs.printed, "correct": paper_signs.two_bars, "write sheets": paper_signs.written,
    "undo": paper_signs.undo, "redo": paper_signs.redo, "changes": paper_signs.changes, "more menus": paper_signs.more,
    "new": paper_signs.new, "open": paper_signs.drawer, "save": paper_signs.into_drawer,
    "new window": paper_signs.two_windows, "note": paper_signs.pinned_note, "keys": paper_signs.book,
    "rack": wood_signs.rack, "solid": drawing_signs.solid, "fit": drawing_signs.whole,
    "trace": drawing_signs.picture_traced, "numbers": drawing_signs.strings,
}
