"""Strings that dive into a slot: over its nut end or its ramp, along its walls, above its floor.

None of these spoils the work: wood in a string's way can still be pared when the head is done.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from geometry.checks.items import Item
from geometry.checks.memo import Memo, together
from geometry.checks.scene import Opening, Scene, nut_line
from geometry.checks.snags import TIGHT, Snag, short
from geometry.checks.words import clearance, listed, tenths
from geometry.errors import GeometryError
from geometry.layout.shop import Margins
from geometry.layout.slots import Ramp
from geometry.layout.strings import Nut
from geometry.saying import say
from geometry.strings.dive import Clearance, Dive, dives_into, surely
from geometry.strings.ramps import ramp_for
from geometry.strings.runs import Run

CLEAR = 0.01
"""mm over its margin from which a string's air need not be told any closer."""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every string with the slot that its post lies across."""
    over = scene.memo.snags_together(_over, scene.runs, scene.to_rout)
    # Most that is moved ends over no slot: then nothing of this changes.
    return scene.memo.whole(_all, over, scene.to_rout, scene.memo.of(nut_line, scene.layout.nut.slant), scene.layout.margins,
                            scene.layout.blank.thickness)


def _all(memo: Memo, over: tuple[tuple[Run, Item, int], ...], openings: tuple[Opening, ...], nut: Nut, margins: Margins,
         thickness: float) -> tuple[Snag, ...]:
    """Snags of strings that end over the box of a slot, which is given by its number; what is known of each is kept in `memo`."""
    dives: list[list[Dive]] = [[] for _ in openings]
    own: dict[int, Item] = {}
    for (_, item, k), made in zip(over, memo.many(_dives, [(run, openings[k]) for run, _, k in over]), strict=True):
        if made is not None:
            dives[k].append(made)
            own[id(made)] = item
    # The air takes long to tell: it is kept string by string, and told for all that are new at once.
    airs = iter(memo.many(_airs, [(one, margins) for group in dives for one in group]))
    found: list[Snag] = []
    for opening, group in zip(openings, dives, strict=True):
        if not group:
            continue
        told = [next(airs) for _ in group]
        if any(short(above.air, margins.string_air) for above, _ in told):
            found += memo.of(_end, opening, memo.of(together, *group), memo.of(together, *told), nut, margins, thickness)
        for one, air in zip(group, told, strict=True):
            if short(air[1].air, margins.string_air):
                found += memo.of(_beside, opening, one, air[1], margins)
            found += _floor(margins, opening, one, own[id(one)])
    return tuple(found)


def _airs(rows: Sequence[tuple[Dive, Margins]]) -> list[tuple[Clearance, Clearance]]:
    """(air over the end, air beside) of each string; exact only under what is enough."""
    enough = [margins.string_air + CLEAR for _, margins in rows]
    return [(Clearance(wanted, one.edge) if over else one.end(wanted), Clearance(wanted, one.edge) if by else one.beside(wanted))
            for (one, _), wanted, (over, by) in zip(rows, enough, surely([one for one, _ in rows], enough), strict=True)]


def _over(found: Sequence[tuple[Run, Item]], openings: tuple[Opening, ...]) -> list[list[tuple[Run, Item, int]]]:
    """Over the boxes of which slots, by their numbers, each string ends."""
    boxes = [(k, opening.wall.path.box) for k, opening in enumerate(openings)]
    return [[(run, item, k) for k, (x0, y0, x1, y1) in boxes
             if x0 <= run.post[0] <= x1 and y0 <= run.post[1] <= y1 and not openings[k].crosses] for run, item in found]


def _dives(rows: Sequence[tuple[Run, Opening]]) -> list[Dive | None]:
    """The dive of each string into its slot, told slot by slot."""
    made: list[Dive | None] = [None] * len(rows)
    for opening in {id(opening): opening for _, opening in rows}.values():
        own = [i for i, (_, other) in enumerate(rows) if other is opening]
        for i, one in zip(own, dives_into([rows[i][0] for i in own], opening.slot, opening.wall), strict=True):
            made[i] = one
    return made


def ramp_words(ramp: Ramp) -> str:
    """`8.5 mm long and 2.1 mm deep (13.9 degrees)`."""
    angle = math.degrees(math.atan2(ramp.depth, ramp.length))
    return say("{length} mm long and {depth} mm deep ({angle:.1f} degrees)",
               length=tenths(ramp.length), depth=tenths(ramp.depth), angle=angle)


def _end(opening: Opening, dives: tuple[Dive, ...], airs: tuple[tuple[Clearance, Clearance], ...], nut: Nut,
         margins: Margins, thickness: float) -> tuple[Snag, ...]:
    """One snag for a slot: the worst string over its nut end, and which others."""
    needed = margins.string_air
    low = [(above, one) for one, (above, _) in zip(dives, airs, strict=True) if short(above.air, needed)]
    if not low:
        return ()
    above, worst = min(low, key=lambda pair: pair[0].air)
    measured = above.air
    ramped = opening.slot.ramp is not None
    what = (say("the ramp of {opening}", opening=opening.id) if ramped else
            say("the nut end of {opening}", opening=opening.id))
    text = clearance(measured, needed, "String {string} runs {measured} mm through {what}",
                     "String {string} passes {a} mm over {what}; {b} mm wanted", string=worst.run.string, what=what)
    others = [one.run.string for _, one in low if one is not worst]
    if others:
        text += (say("; string {other} comes too near as well", other=others[0]) if len(others) == 1 else
                 say("; strings {others} come too near as well", others=listed(others)))
    try:
        ramp = ramp_for(opening.slot, dives, nut, thickness, margins)
        cure = "" if ramp is None else (say("Make {what} {ramp_words}.",
                                            what=what, ramp_words=ramp_words(ramp)) if ramped else
                                        say("Give {opening} a ramp {ramp_words}.",
                                            opening=opening.id, ramp_words=ramp_words(ramp)))
    except GeometryError as error:
        cure = str(error)
    return (Snag("string-to-ramp" if ramped else "string-to-nut-end", TIGHT, (opening.id, worst.run.tuner),
                 above.where, measured, needed, f"{text}.",
                 cure or say("Start {opening} nearer to the nut by {needed} mm.",
                             opening=opening.id, needed=tenths(needed - measured))),)


def _beside(opening: Opening, one: Dive, by: Clearance, margins: Margins) -> tuple[Snag, ...]:
    measured, needed = by.air, margins.string_air
    if not short(measured, needed):
        return ()
    run = one.run
    text = clearance(measured, needed, "String {string} on its way to {tuner} cuts {measured} mm into the wall of {opening}.",
                     "String {string} on its way to {tuner} passes {a} mm from the wall of {opening}; {b} mm wanted.",
                     string=run.string, tuner=run.tuner, opening=opening.id)
    return (Snag("string-to-wall", TIGHT, (run.tuner, opening.id), by.where, measured, needed, text,
                 say("Move that wall of {opening} away, or give string {string} a post more in line with its place at the nut.",
                     opening=opening.id, string=run.string)),)


def _floor(margins: Margins, opening: Opening, one: Dive, item: Item) -> Iterable[Snag]:
    """The windings below the post over the floor of a blind slot."""
    if opening.slot.depth is None:
        return
    lowest = item.frame.origin[2] + item.pattern.post.diameter / 2 + one.run.diameter
    measured, needed = opening.depth - lowest, margins.string_air
    if not short(measured, needed):
        return
    text = clearance(measured, needed, "String {string} winds {measured} mm into the floor of {opening}.",
                     "String {string} winds {a} mm above the floor of {opening}; {b} mm wanted.", string=one.run.string, opening=opening.id)
    yield Snag("string-to-floor", TIGHT, (item.id, opening.id), (*one.run.post, opening.depth), measured,
               needed, text, say("Rout {slot} deeper by {by} mm.",
                                 slot=opening.id, by=tenths(needed - measured)))
