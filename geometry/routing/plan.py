"""Plans as data: how a slot or the outline is routed, pass by pass, and what each bit of the rack is good for."""

from __future__ import annotations

from functools import cached_property

from msgspec import Struct

from geometry.lengths import area, at_least, exact, mm, place
from geometry.routing.depth import LIGHT, Job
from geometry.routing.mouths import Mouth, sunk, sunk_words
from geometry.routing.passes import Pass
from geometry.routing.reached import Reached
from geometry.routing.refusal import Refusal
from geometry.routing.speeds import FEED, NOT_ROUND_THE_END, STOP_AT_NUT, speed_words
from geometry.routing.waste import Waste
from geometry.routing.words import in_turn, passes
from geometry.saying import count, say
from geometry.tolerance import TOUCH

MOST_PATCHES = 6
"""Corners named one by one in the words of a plan."""
SANDED = 0.05
"""Depth in mm, and area in mm2, of wood that would be told as 0.0: it goes when the wall is sanded."""
SHAVING = 0.3
"""Length in mm of an edge at the nut line that is told when the template does not guide to it."""


class RoutPlan(Struct, frozen=True, dict=True):
    """One way to rout a slot or the outline."""

    job: Job
    passes: tuple[Pass, ...]
    """in the order of the work; all passes with the face up come before those with the back up"""
    reached: Reached
    """by the widest cutter that cuts the whole wall, then in the corners; what it leaves is pared by hand"""
    waste: Waste | None
    """holes that are drilled first; None for the outline, which is band-sawn, and where no drill fits"""
    pins: int = 2
    """locating pins that its template can use"""
    corner_wood: float = 0.0
    """greatest depth in mm that the wide cutter leaves in corners, where a slimmer one follows it there"""
    mouths: tuple[Mouth, ...] = ()
    """of side bores in the wall"""

    @cached_property
    def of(self) -> str:
        """Id of the slot, or "outline"."""
        return self.job.of

    @cached_property
    def flips(self) -> int:
        """How often the wood is turned over."""
        return sum(a.side != b.side for a, b in zip(self.passes, self.passes[1:], strict=False))

    @cached_property
    def bits(self) -> tuple[str, ...]:
        """Ids of the bits in the order of their use, each once."""
        return tuple(dict.fromkeys(one.bit for one in self.passes))

    @cached_property
    def tools(self) -> tuple[tuple[str, str | None], ...]:
        """(bit, bush) by id in the order of their use, each once."""
        return tuple(dict.fromkeys((one.bit, one.bush) for one in self.passes))

    @cached_property
    def offset(self) -> float:
        """Of the template, mm: openings are the slot grown by it, outside templates the outline shrunk by it.

        Taken from the passes that rub on a template; later passes on the cut wall ask nothing of it.
        """
        return self.passes[0].follower.offset

    @cached_property
    def left(self) -> tuple:
        """Patches of wood left to pare by hand, deepest first; what sanding takes is none."""
        return tuple(patch for patch in self.reached.left if patch.depth >= SANDED)

    @property
    def template_words(self) -> str:
        """How large the template is."""
        thick, offset = mm(self.job.template), exact(abs(self.offset))
        board = (say("Template {thick} thick below the wood", thick=thick)
                 if self.passes[0].rubs_on == "template below" else say("Template {thick} thick", thick=thick))
        if self.of == "outline":
            if abs(self.offset) < 0.0005:
                return say("{board}: outside template the same size as the finished outline.", board=board)
            return _outside_words(board, offset, self.offset > 0, self.job.nut_end)
        if abs(self.offset) < 0.0005:
            return say("{board}: opening the same size as the finished slot.", board=board)
        return (say("{board}: opening {by} larger all round than the finished slot.", board=board, by=offset)
                if self.offset > 0 else
                say("{board}: opening {by} smaller all round than the finished slot.", board=board, by=offset))

    @property
    def steps(self) -> tuple[str, ...]:
        """The whole work in sentences, in order."""
        found = [self.template_words]
        if self.of == "outline":
            found.append(say("Saw the waste off to within {light} outside the line.", light=mm(LIGHT)))
        elif self.waste is not None:
            found.append(self.waste.words)
        side = "face"
        for one in self.passes:
            if one.side != side:
                side = one.side
                found.append(say("Turn the wood over, back up.") if one.rubs_on == "wall already cut" else
                             say("Turn wood and template over on the same two pins, back up."))
            found.append(one.said(self.job.through, self.job.template))
        found += self.paring
        return tuple(found)

    @property
    def paring(self) -> tuple[str, ...]:
        """What is left to do by hand, one sentence a corner."""
        words = [say("Pare by hand at {at}: {depth} deep.", at=place(p.at), depth=mm(p.depth)) if p.size < SANDED else
                 say("Pare by hand at {at}: {depth} deep, {size} of wood.", at=place(p.at), depth=mm(p.depth), size=area(p.size))
                 for p in self.left[:MOST_PATCHES]]
        if (left := -self.offset * self.job.lean) >= SHAVING:
            words.insert(0, say("The last {left} at the nut line are not guided by the template, and a shaving stays: file it off.",
                                left=at_least(left)))
        more = len(self.left) - MOST_PATCHES
        if more > 0:
            words.append(count(more, "And {n} smaller corner more to pare.", "And {n} smaller corners more to pare."))
        return tuple(words)

    @property
    def cautions(self) -> tuple[str, ...]:
        """What to mind: feed, speeds, rounded corners, pins."""
        found = [FEED["outside" if self.of == "outline" else "inside"]]
        if self.at_nut:
            found.append(self.at_nut)
        bits = {one.bit: one.follower.bit for one in self.passes}
        found += [speed_words(bit, self.job.router) for bit in bits.values()]
        if self.reached.lost:
            worst = self.reached.lost[0]
            found.append(say("The template rounds the corner of wood at {at} by {depth}, because its follower is "
                             "wider than the cutter: keep clear of it and finish it by hand.",
                             at=place(worst.at), depth=mm(worst.depth)))
        if self.job.width is not None and max(bit.cutter for bit in bits.values()) > self.job.width - 1.0:
            found.append(say("The cutter nearly fills the slot and cuts both walls at once: hold the router firmly "
                             "and go slowly."))
        if any(one.side == "back" and one.rubs_on == "template" for one in self.passes) and self.pins < 2:
            found.append(say("Turning the template over needs two locating pins through template and blank: place "
                             "them first."))
        if self.job.through and self.flips == 0 and self.of != "outline":
            found.append(say("Lay a spoil board below: the last pass comes through."))
        found += dict.fromkeys(filter(None, map(self.mind, self.passes)))
        if any(one.rubs_on == "wall already cut" and one.follower.kind == "bare shank" for one in self.passes):
            found.append(say("A bare shank on the wall burns it when it stands still: keep it moving."))
        return tuple(found)

    @property
    def at_nut(self) -> str:
        """What to mind at the nut end of the template of the outline; "" where the router may go round it."""
        if self.job.neck:
            return STOP_AT_NUT
        return NOT_ROUND_THE_END if self.job.nut_end and self.offset < -TOUCH else ""

    def mind(self, one: Pass) -> str:
        """What to mind in one of the passes where side bores open into the wall that it rubs on; "" where there is nothing."""
        found = sunk(one, self.job, self.mouths)
        return "" if found is None else sunk_words(found, one, self.job)


def _outside_words(board: str, by: str, smaller: bool, ends: bool) -> str:
    if smaller:
        return (say("{board}: outside template {by} smaller than the finished outline down to the nut line.", board=board, by=by)
                if ends else say("{board}: outside template {by} smaller all round than the finished outline.", board=board, by=by))
    return (say("{board}: outside template {by} larger than the finished outline, cut off at the nut line.", board=board, by=by)
            if ends else say("{board}: outside template {by} larger all round than the finished outline.", board=board, by=by))


class Verdict(Struct, frozen=True):
    """What one bit of the rack can do for one slot or the outline, alone."""

    bit: str
    plan: RoutPlan | None
    """its best plan, None when it cannot do the work alone"""
    reason: str
    """why not, one sentence; "" with a plan"""


class SlotPlan(Struct, frozen=True):
    """The answer for a slot or the outline."""

    job: Job
    plans: tuple[RoutPlan, ...]
    """best first: fewest flips, then fewest bits, then fewest passes"""
    verdicts: tuple[Verdict, ...]
    """one for each bit of the rack, in its order"""
    would: tuple[str, ...]
    """when no plan is found: what bit would do it, or which width of slot"""
    waste: Waste | Refusal | None
    """holes that take the waste out, or why none; None for the outline"""
    chosen: bool = False
    """whether the first plan is the maker's own choice"""
    lost_choice: str = ""
    """why the maker's choice cannot be kept, one sentence; "" when there is none or it is kept"""
    broken: str = ""
    """why its shape cannot be planned at all, one sentence; "" when it can"""

    @property
    def of(self) -> str:
        """Id of the slot, or "outline"."""
        return self.job.of

    @property
    def best(self) -> RoutPlan | None:
        """The first plan, or None when the rack cannot do it."""
        return self.plans[0] if self.plans else None

    @property
    def words(self) -> str:
        """One sentence: the best plan in short, or what is missing."""
        best = self.best
        if self.broken:
            return self.broken
        if best is None:
            no = (say("No bit of the rack can rout the outline.") if self.of == "outline" else
                  say("No bit of the rack can rout {slot}.", slot=self.of))
            return " ".join((no, *self.would))
        flips = "" if best.flips == 0 else say(", turned over once") if best.flips == 1 else (
            count(best.flips, ", {n} flip", ", {n} flips"))
        of = say("The outline") if self.of == "outline" else self.of
        return f"{of}: {in_turn(best.bits)}, {passes(len(best.passes))}{flips}."
