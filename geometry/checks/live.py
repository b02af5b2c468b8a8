"""The one entry point: check a layout whole, or again and again while it is edited."""

from __future__ import annotations

from geometry.checks import (
    alone,
    flats,
    glue,
    in_nut,
    nut_line,
    pins,
    plan_walls,
    rack,
    ramp_edges,
    ramp_walls,
    retainers,
    router,
    seats,
    shape,
    side_marks,
    side_outline,
    side_walls,
    slots,
    solid_pairs,
    string_angles,
    string_face,
    string_slots,
)
from geometry.checks.items import Item
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.checks.snags import SPOILS, CheckResult, Snag, count, in_order, summed
from geometry.errors import GeometryError
from geometry.layout.headstock import Headstock
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids.drilling import Hole

FAMILIES = (shape, slots, plan_walls, solid_pairs, ramp_walls, ramp_edges, alone, flats, side_walls, side_outline, side_marks, seats,
            pins, glue, router, rack, string_angles, string_face, retainers, in_nut, nut_line, string_slots)
"""Every family of checks: a module with snags(scene) -> Iterable[Snag]."""


def check(layout: Headstock) -> CheckResult:
    """All snags of a layout, worst first, with its holes and counts.

    Never raises for a layout that geometry.layout.validate accepts.
    """
    return LiveCheck().check(layout)


class LiveCheck:
    """Checks one layout after another, measuring again only what changed since the last.

    The result is that of check() to the last bit: what is remembered are results
    of pure functions, by the identity of the parts of the layout that they read.
    """

    def __init__(self) -> None:
        self._memo = Memo()

    def check(self, layout: Headstock) -> CheckResult:
        """As check(layout)."""
        self._memo.new_round()
        try:
            scene = scene_of(layout, self._memo)
        except GeometryError as error:
            lost = Snag("no-place", SPOILS, (OUTLINE,), (0.0, 0.0, 0.0), None, None,
                        say("The outline cannot be used: {error}", error=error), say("Draw the outline again."))
            return CheckResult((lost,), (), count(()))
        found: list[Snag] = []
        for family in FAMILIES:
            found.extend(family.snags(scene))
        if layout.book.done or layout.book.times:
            from geometry.checks import in_wood  # here: a start goes without it
            from geometry.checks.already import with_what_is_made
            made = in_wood.of_scene(scene)
            found.extend(in_wood.snags(scene, made))
            found = list(with_what_is_made(found, self._memo.of(in_wood.renamed, layout.book, made.again, "real"), made, self._memo))
        # While no snag changes their order is kept, and is the same object.
        return CheckResult(self._memo.of(_ordered, *found), self._memo.snags(_holes, scene.items),
                           summed([item.counts for item in scene.items]))


def _ordered(*found: Snag) -> tuple[Snag, ...]:
    return in_order(found)


def _holes(item: Item) -> tuple[Hole, ...]:
    return item.holes
