"""What would do, when nothing in the rack does: one property of a bit, a template, or a width of slot.

Every proposal is tried by the same rules before it is made.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from functools import partial

from msgspec import Struct
from msgspec.structs import replace as changed

from geometry.layout import GuideBush, Headstock, RouterBit
from geometry.lengths import at_least, at_most, down, mm, up
from geometry.routing.alone import Alone, Judge, alone, bushes_for
from geometry.routing.depth import OVERLAP, Job, bearing_height, step_of
from geometry.routing.reached import Reached
from geometry.saying import count, say

CUTTERS = (25.0, 20.0, 19.0, 16.0, 14.0, 12.7, 12.0, 10.0, 9.525, 9.5, 8.0, 6.35, 6.0, 5.0, 4.0, 3.0, 2.0, 1.5)
"""Common cutter diameters, mm (common practice, no source)."""
LONGEST_CUT = 100.0
"""Cutting length beyond which no bit is proposed, mm (common practice, no source)."""


class _Change(Struct, frozen=True):
    """One property changed: how much in proportion, and the sentence."""

    cost: float
    told: Callable[[str], str]
    """what would do it, from the words on how it is then done"""
    words: str = ""


def would(job: Job, layout: Headstock, judge: Judge) -> tuple[str, ...]:
    """Up to three sentences: the bit nearest to one of the rack that would do, a template, a slot width.

    With an empty rack, or when no single change is enough, the bit to buy.
    """
    tools = [(bit, bush) for bit in layout.rack.bits for bush in bushes_for(bit, layout.rack)]
    found = [_least(tools, job, judge, _bit_changes), _least(tools, job, judge, _template_changes),
             _least(tools, job, lambda cutter, offset: Reached(True, (), ()), _width_changes)]
    words = [change.words for change in found if change is not None]
    if found[0] is None:
        new = _new_bit(job, judge)
        if new is not None:
            words.insert(0, new)
    return tuple(words) or (say("No router bit does this in one set-up: change the depth, the width or the template."),)


def kind(bit: RouterBit) -> str:
    """A bit in words, by its dimensions: `12 mm shank-bearing bit`."""
    cutter = mm(bit.cutter)
    if bit.bearing == "none":
        return say("{cutter} straight bit", cutter=cutter)
    return (say("{cutter} shank-bearing bit", cutter=cutter) if bit.bearing == "shank" else
            say("{cutter} tip-bearing bit", cutter=cutter))


def _least(tools, job: Job, judge: Judge, ways) -> _Change | None:
    best: _Change | None = None
    for bit, bush in tools:
        for change, new_bit, new_job in ways(bit, bush, job):
            if best is not None and change.cost >= best.cost - 1e-9:
                continue
            done = alone(new_bit, bush, new_job, judge)
            if isinstance(done, Alone):
                best = changed(change, words=change.told(_in(done)))
    return best


def _in(done: Alone) -> str:
    n = len(done.passes)
    if done.flips:
        return count(n, "in {n} pass, turned over once", "in {n} passes, turned over once")
    return count(n, "in {n} pass", "in {n} passes")


def _one(thing: str) -> str:
    """`A 12 mm bit`, `An 8 mm bit`."""
    if thing.startswith(("8", "11 ", "11.", "11/", "18 ", "18.")):
        return say("An {bit}", bit=thing)
    return say("A {bit}", bit=thing)


def _in_bush(bit: str, bush: GuideBush | None) -> str:
    return bit if bush is None else say("{bit} in {bush}", bit=bit, bush=bush.id)


def _bit_changes(bit: RouterBit, bush: GuideBush | None, job: Job) -> Iterator[tuple[_Change, RouterBit, Job]]:
    """The bit with one other number."""
    half = up((job.thickness + OVERLAP) / 2)
    depths = {job.depth, half} if job.through else {job.depth}
    guided = down(step_of(changed(bit, cutting_length=1000.0), job) + job.template - job.contact)
    for length in sorted({up(d) for d in depths} | ({guided} if 0 < guided < bit.cutting_length else set())):
        yield _changed(bit, bush, job, "cutting_length", length,
                       say("{bit} with a cutting length of {length}", bit=_one(kind(bit)), length=mm(length)))
    under = bearing_height(bit) if bit.bearing == "tip" else job.template
    for depth in sorted(depths):
        out = up(depth + under)
        yield _changed(bit, bush, job, "stick_out", out,
                       say("{bit} standing {out} below the router's base", bit=_one(kind(bit)), out=mm(out)))
    if bit.shank > bit.cutter and bit.bearing != "shank" and bush is not None:
        yield _changed(bit, bush, job, "shank", bit.cutter,
                       say("{bit} with a shank of {shank}", bit=_one(kind(bit)), shank=at_most(bit.cutter)))
    if bit.bearing != "none" and bearing_height(bit) < job.contact:
        yield _changed(bit, bush, job, "bearing_height", job.contact,
                       say("{bit} with a bearing {high} high", bit=_one(kind(bit)), high=at_least(job.contact)))
    room = job.width if job.width is None or bit.bearing != "tip" or not job.entry else min(job.width, job.entry)
    if room is not None and bit.cutter > room and down(room) > 0:
        slim = next((c for c in CUTTERS if c <= room + 1e-6), down(room))
        size = {} if bit.bearing_diameter is None else {"bearing_diameter": bit.bearing_diameter - bit.cutter + slim}
        if all(value > 0 for value in size.values()):
            thin = changed(bit, cutter=slim, shank=min(bit.shank, slim) if bit.bearing == "shank" else bit.shank, **size)
            yield (_Change((bit.cutter - slim) / bit.cutter,
                           partial(_would, say("{one} like {bit}", one=_one(kind(thin)), bit=_in_bush(bit.id, bush)))),
                   thin, job)


def _changed(bit: RouterBit, bush: GuideBush | None, job: Job, field: str, value: float,
             has: str) -> tuple[_Change, RouterBit, Job]:
    now = bearing_height(bit) if field == "bearing_height" else getattr(bit, field)
    return (_Change(abs(value - now) / now, partial(_would, _in_bush(has, bush))), changed(bit, **{field: value}), job)


def _would(bit: str, done: str) -> str:
    return say("{bit} would, {done}.", bit=bit, done=done)


def _thickness_would(thick: str, bit: str, done: str) -> str:
    return say("A template {thick} thick would let {bit} do it, {done}.", thick=thick, bit=bit, done=done)


def _width_would(wide: str, bit: str, done: str) -> str:
    return say("A slot {wide} wide would let {bit} in, {done}.", wide=wide, bit=bit, done=done)


def _template_changes(bit: RouterBit, bush: GuideBush | None, job: Job) -> Iterator[tuple[_Change, RouterBit, Job]]:
    """Another thickness of template for a bit as it is."""
    step = min(step_of(bit, job), job.depth)
    wanted = {up(bit.cutting_length - step + job.contact), up(job.contact)}
    if bush is not None:
        wanted.add(up(bush.length))
    room = min(bit.stick_out, job.router.plunge)
    wanted |= {down(room - job.depth), down(room - (job.thickness + OVERLAP) / 2)}
    for thick in sorted(t for t in wanted if t > 0 and t != job.template):
        yield (_Change(abs(thick - job.template) / job.template,
                       partial(_thickness_would, mm(thick), _in_bush(bit.id, bush))),
               bit, changed(job, template=thick))


def _width_changes(bit: RouterBit, bush: GuideBush | None, job: Job) -> Iterator[tuple[_Change, RouterBit, Job]]:
    """A slot just wide enough for a bit as it is."""
    if job.width and bit.cutter > job.width:
        yield (_Change(bit.cutter / job.width - 1, partial(_width_would, at_least(bit.cutter), _in_bush(bit.id, bush))),
               bit, changed(job, width=bit.cutter, widest=max(bit.cutter, job.widest)))


def _new_bit(job: Job, judge: Judge) -> str | None:
    """A bearing on the shank, as wide as the cutter, of a common size: the widest and longest that the rules allow."""
    room = math.inf if job.width is None else job.width
    sizes = [c for c in CUTTERS if c <= room - 1.0] + [c for c in CUTTERS if room - 1.0 < c <= room + 1e-6]
    if job.width is None:
        sizes = [12.0, *sizes]
    deepest = min(job.depth, LONGEST_CUT)
    lengths = [up(deepest), *(x / 2 for x in range(int(2 * deepest), 3, -1))]
    for cutter in sizes:
        for shank in job.router.collets or (min(8.0, cutter), min(6.0, cutter)):
            for length in lengths:
                bit = RouterBit(id="new", cutter=cutter, cutting_length=length, shank=shank,
                                stick_out=up(job.template + job.depth), bearing="shank", bearing_diameter=cutter)
                done = alone(bit, None, job, judge)
                if isinstance(done, Alone):
                    return say("{bit} with a cutting length of {length}, standing {stick_out} below the router's "
                               "base, would, {done}.",
                               bit=_one(kind(bit)), length=mm(length), stick_out=mm(bit.stick_out), done=_in(done))
    return None
