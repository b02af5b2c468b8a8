"""Everything that is told of one feature by itself, from the wood and the shop, or from these and the slots.

Each family tells one kind of thing. All are asked, and remembered, together: of a
feature that moves most have nothing to say, and asking for each apart takes longer
than the families do.
"""

from __future__ import annotations

from collections.abc import Iterable

from geometry.checks import buttons, depths, flats, pins, rack, seats, side_marks, side_reach, side_walls
from geometry.checks.around import Around
from geometry.checks.items import Item
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import Snag

FAMILIES = (depths, side_walls, side_marks, seats, pins, rack, buttons)
"""Modules with `alone(item, around)`, the snags of a feature."""
WITH_SLOTS = (side_reach, flats)
"""Modules with `alone(item, openings, around)`, the snags of a feature and the slots."""

MOST_QUIET = 64
"""Patterns that are remembered as in order; trying changes of hardware makes a new one each time."""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every feature by itself."""
    layout, memo = scene.layout, scene.memo
    around = memo.of(Around, layout.blank, layout.margins, scene.drills, layout.rack.press, layout.template)
    return (*memo.snags(_own, scene.items, around), *memo.snags(_with_slots, scene.items, scene.openings, around))


def _own(item: Item, around: Around) -> tuple[Snag, ...]:
    # What a tuner through the face has against wood and shop hangs on its hardware, not on its place: where one is in order, all are.
    if item.mount == "face" and around.quiet.get(id(item.pattern)) is item.pattern:
        return ()
    found = tuple([snag for family in FAMILIES for snag in family.alone(item, around)])
    if item.mount == "face" and not found:
        if len(around.quiet) >= MOST_QUIET:
            around.quiet.clear()
        around.quiet[id(item.pattern)] = item.pattern
    return found


def _with_slots(item: Item, openings: tuple[Opening, ...], around: Around) -> tuple[Snag, ...]:
    return tuple([snag for family in WITH_SLOTS for snag in family.alone(item, openings, around)])
