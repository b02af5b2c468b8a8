"""String retainers, proposed where strings bend too little over the nut."""

from __future__ import annotations

import math
from operator import itemgetter

from geometry.checks.snags import NOTE
from geometry.edits.parts import appended
from geometry.errors import GeometryError
from geometry.layout import Headstock, Retainer, SingleHole
from geometry.layout.names import feature_names
from geometry.lengths import mm
from geometry.saying import say
from geometry.strings.retainers import passes
from geometry.strings.runs import Run, break_angle, fall_for, runs
from geometry.terms import given

GOOD, WANTED = 7.0, 10.0
"""degrees down over the nut: from the first on a string needs no retainer; what a proposed one gives (common practice, no source)"""
PILOT, DEEP, FLOOR = 2.0, 10.0, 4.0
"""The pilot hole of its screw, and the wood that is left below its full diameter, mm"""
BESIDE, LEAST_HEIGHT = 3.0, 1.0
"""How far a retainer reaches beyond its strings, and the least that strings run above the face, mm (common practice, no source)"""
LEVELS = (30.0, 25.0, 35.0, 20.0, 40.0, 45.0, 15.0, 50.0)
"""Where a retainer is tried, mm from where the nut line crosses the centreline"""
_MORE = math.radians(0.05)
"""rad: a string that bends by no more than that farther bends as before"""


def add_retainer(layout: Headstock) -> Headstock:
    """One more retainer, its screw midway between the string that bends least over the nut and its flatter neighbour, or beside its
    other one or itself where the screw finds no room there.

    It is as low as gives both WANTED degrees and leaves them air above the face; at the first of LEVELS at which it gives the
    flattest GOOD degrees, or the most that any does, and its screw finds wood. GeometryError when every string bends by GOOD degrees
    already, none would bend the flattest more, or no level has wood.
    """
    flat = sorted(runs(layout), key=lambda run: break_angle(run, layout.nut))
    if not flat or break_angle(flat[0], layout.nut) >= math.radians(GOOD) - 1e-9:
        raise GeometryError(say("Every string bends by {good:g} degrees or more over the nut: none wants a retainer.", good=GOOD))
    order = [string.id for string in layout.strings]
    near = [run for run in flat[1:] if abs(order.index(run.string) - order.index(flat[0].string)) == 1]
    groups = [[flat[0], one] for one in near] + [[flat[0]]]
    now = break_angle(flat[0], layout.nut)

    def bends(made: Headstock) -> float:
        return next((break_angle(run, layout.nut) for run in runs(made) if run.tuner == flat[0].tuner), -math.inf)
    tried = [made for group in groups for level in LEVELS if (made := _at(layout, group, level)) is not None]
    better = [(-min(down, math.radians(GOOD)), made) for made in tried if (down := bends(made)) > now + _MORE]
    from geometry.checks import LiveCheck
    checked = LiveCheck()
    for _, made in sorted(better, key=itemgetter(0)):
        new = made.holes[-1].id
        if all(new not in snag.between or snag.grade == NOTE for snag in checked.check(made).snags):
            return made
    if tried and not better:
        raise GeometryError(say("No retainer bends string {string} more over the nut: {height} above the face is as low as one holds it. Lean "
                                "the head back farther, or let the face lie deeper below the nut.",
                                string=flat[0].string, height=mm(_least(layout, flat[:1]))))
    raise GeometryError(say("No place on the way of string {string} has wood for a retainer's screw: set a hole where you want one, and "
                            "say there that it carries a retainer.", string=flat[0].string))


def _at(layout: Headstock, over: list[Run], level: float) -> Headstock | None:
    """The layout with a retainer over some strings at a level; None where one of them has reached its post."""
    at = [passes(run.nut, run.post, level) for run in over]
    if not all(at):
        return None
    xs = [x for x, _ in at]
    if len(xs) == 1:  # beside it, towards the middle of the head
        xs.append(xs[0] + math.copysign(2 * BESIDE, -xs[0]))
    lowest = min(min(run.nut_height - math.tan(fall_for(math.radians(WANTED), run, layout.nut)) * far, run.level(far) - 0.5)
                 for run, (_, far) in zip(over, at, strict=True))
    height = max(_least(layout, over), math.floor(lowest * 10) / 10)
    hole = SingleHole(id=feature_names(layout).numbered(given("retainer")), at=(round((min(xs) + max(xs)) / 2, 2), level), diameter=PILOT,
                      depth=min(DEEP, max(1.0, layout.blank.thickness - FLOOR)),
                      retainer=Retainer(height=height, width=round(max(xs) - min(xs) + 2 * BESIDE, 1)))
    return appended(layout, "holes", hole)


def _least(layout: Headstock, over: list[Run]) -> float:
    """How low a retainer holds strings at most, mm above the face in tenths: LEAST_HEIGHT, or so that the thickest has its air."""
    return max(LEAST_HEIGHT, math.ceil((max(run.diameter for run in over) / 2 + layout.margins.string_air) * 10 - 1e-6) / 10)
