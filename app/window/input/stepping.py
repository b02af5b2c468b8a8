"""Which thing, node or snag comes next for a hand without a mouse."""

from __future__ import annotations

from typing import TYPE_CHECKING

from geometry import edits  # for what is loaded when it is first used
from geometry.edits.parts import shaped_loop
from geometry.errors import GeometryError
from geometry.layout import Headstock, loop_path
from geometry.layout.names import OUTLINE
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from PySide6.QtCore import QModelIndex
    from PySide6.QtWidgets import QListView

FIRST: dict[str, tuple[str, ...]] = {
    "blank": ("blank", "ears"), "outline": (OUTLINE,), "slots": ("slots", "pins"), "tuners": ("tuners", "holes"),
    "strings": ("nut", "tuners")}
"""What a stage is about comes first in the round; everything else follows."""
GROUPS = (OUTLINE, "slots", "tuners", "holes", "pins", "nut", "blank", "ears")


def things(layout: Headstock, stage: str) -> list[str]:
    """Everything on the drawing that can be held, what the stage is about first."""
    first = FIRST.get(stage, ())
    found: list[str] = []
    for group in (*first, *(group for group in GROUPS if group not in first)):
        found += [group] if group in (OUTLINE, "nut", "blank") else [one.id for one in getattr(layout, group)]
    return found


def next_thing(layout: Headstock, stage: str, held: tuple[str, ...], by: int) -> str | None:
    """The thing after the last one held (before it with -1), round again at the ends; None on an empty drawing."""
    known = things(layout, stage)
    if not known:
        return None
    if not held or held[-1] not in known:
        return known[0 if by > 0 else -1]
    return known[(known.index(held[-1]) + by) % len(known)]


def next_node(layout: Headstock, stage: str, held: tuple[str, ...], node: int | None, by: int) -> tuple[str, int] | None:
    """(loop, number) of the next node of the loop that is held, on the Outline stage of the outline; else None."""
    ref = held[0] if len(held) == 1 else (OUTLINE if stage == "outline" and not held else "")
    loop = shaped_loop(layout, ref)
    if loop is None:
        return None
    return ref, (0 if by > 0 else len(loop.nodes) - 1) if node is None else (node + by) % len(loop.nodes)


def next_snag(view: QListView, by: int) -> QModelIndex | None:
    """The card after the current one of the list of snags, round again at the ends; None when there is none."""
    rows = view.model().rowCount()
    if not rows:
        return None
    now = view.currentIndex().row()
    return view.model().index((now + by) % rows if now >= 0 else (0 if by > 0 else rows - 1), 0)


def place_of(layout: Headstock, id: str) -> Vec2 | None:
    """A point in mm at which a thing is seen; None for what lies nowhere in particular."""
    if id == OUTLINE:
        x0, y0, x1, y1 = loop_path(layout.outline).box
        return ((x0 + x1) / 2, (y0 + y1) / 2)
    if id == "nut":
        return (0.0, 0.0)
    try:
        return edits.plan_point(layout, id)
    except (GeometryError, KeyError):
        return None
