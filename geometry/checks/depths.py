"""The thickness of the wood: blind drillings in it, post bores that have to come through it, and hardware that has to clamp it; and strings beyond the end of a post."""

from __future__ import annotations

from geometry.checks.around import Around
from geometry.checks.drills import Drills
from geometry.checks.items import Item, plan
from geometry.checks.said import length
from geometry.checks.snags import BACK, FACE, SPOILS, TIGHT, Snag, short
from geometry.checks.words import both, first, into, is_small, mm, name, tenths
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.terms import term
from geometry.tolerance import TOUCH

LEAST_OUT = 1.0
"""mm from the face to the middle of a string where it comes off its post (common practice, no source)."""
NOTHING = 0.1
"""mm: what a reamer leaves less wide than that is as good as a point."""


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Snags of every blind drilling of a feature that is square to the face, and of a tuner through the face with the wood."""
    drills, thickness, margins = around.drills, around.blank.thickness, around.margins
    if item.mount == "face":
        return (*_tuner(item, drills, thickness, margins), *_clamps(item, thickness), *_comes_out(item, thickness), *_on_post(item), *_reamed(item))
    if item.mount == "side":
        return (*_on_post(item), *_reamed(item))
    if item.asked is not None:
        return tuple(_blind(item.drillings[0], item.asked, drills, thickness, margins))
    return ()


def _tuner(item: Item, drills: Drills, thickness: float, margins: Margins) -> tuple[Snag, ...]:
    found = []
    opened = {hole for hole, drilling in zip(item.hole_of, item.drillings, strict=True) if drilling.through}
    for hole, drilling in zip(item.hole_of, item.drillings, strict=True):
        if drilling.role != "post":
            # What goes through may have been asked to go deeper than the wood.
            depth = _asked(item, drilling) if drilling.through else drilling.depth
            if depth is not None:
                found += _blind(drilling, depth, drills, thickness, margins, hole in opened)
    for hole in item.holes:
        if any(d.role == "post" for d in hole.drillings):
            found += _through(item, hole.drillings, thickness)
    return tuple(found)


def _asked(item: Item, drilling: Drilling) -> float | None:
    """How deep a drilling through the wood is asked to go, mm; None for through."""
    return next((bore.depth for bore in item.pattern.bores if (bore.role, bore.diameter, bore.surface) == (
        drilling.role, drilling.diameter, drilling.surface) and item.frame.at(*bore.at)[:2] == plan(drilling.start)), None)


def _blind(drilling: Drilling, depth: float, drills: Drills, thickness: float, margins: Margins, opened: bool = False) -> list[Snag]:
    """Wood left under a blind drilling.

    A screw, a moulded pin or a lone hole counts to its drill's point, a counterbore to its floor; but its point must not come
    out where nothing else opens the wood on its axis (`opened`).
    """
    small = is_small(drilling)
    needed = margins.screw_any if small else margins.side_cover
    point = 0.0
    if small or drilling.role == "hole" and not drilling.there:
        point = drills.point(drilling)
    measured = thickness - depth - point
    ahead = 0.0 if opened or point or drilling.there else drills.point(drilling)
    if ahead and not short(measured, needed) and short(measured - ahead, 0.0):
        point, measured, needed = ahead, measured - ahead, 0.0
    if not short(measured, needed):
        return []
    side = BACK if drilling.surface == "face" else FACE
    level = thickness if side == BACK else 0.0
    a, b = both(measured, needed)
    to_point = say(", to the drill's point") if point else ""
    text = (say("{name} comes out of the {side} by {measured} mm{to_point}.",
                name=first(name(drilling)), side=term(side), measured=into(-max(0.0, -measured)), to_point=to_point)
            if measured <= TOUCH else
            say("{name} leaves {a} mm of wood to the {side}{to_point}; {b} mm wanted.",
                name=first(name(drilling)), a=a, side=term(side), to_point=to_point, b=b))
    return [Snag("too-deep", SPOILS if measured <= TOUCH else TIGHT, (drilling.of, side),
                 (*plan(drilling.start), level), measured, needed, text,
                 say("Drill it {needed} mm less deep.", needed=tenths(needed - measured)) if needed - measured < depth else
                 say("The wood is too thin: it takes {least} mm for this bore.", least=tenths(thickness + needed - measured)))]


def _through(item: Item, stack: tuple[Drilling, ...], thickness: float) -> list[Snag]:
    """Whether the drillings on the post's axis open the wood from face to back."""
    if any([drilling.through for drilling in stack]):
        return []
    spans = sorted((min(d.start[2], d.end[2]), max(d.start[2], d.end[2])) for d in stack)
    level = 0.0
    for low, high in spans:
        if low > level + TOUCH:
            break
        level = max(level, high)
    if level >= thickness - TOUCH:
        return []
    above = min((low for low, _ in spans if low > level + TOUCH), default=thickness)
    return [Snag("post-not-through", SPOILS, (item.id,), (*plan(stack[0].start), level), level, thickness,
                 say("The post bore of {item} leaves {above} mm of wood in the post's way.",
                     item=item.id, above=mm(above - level)),
                 say("Drill it through."))]


def _clamps(item: Item, wood: float) -> tuple[Snag, ...]:
    least, most = item.pattern.least_wood, item.pattern.most_wood
    where = (*plan(item.frame.origin), wood)
    if least is not None and short(wood, least):
        a, b = both(wood, least)
        return (Snag("wood-for-tuner", TIGHT, (item.id,), where, wood, least,
                     say("The head is {a} mm thick; the hardware of {item} clamps no less than {b} mm.", a=a, b=b, item=item.id),
                     say("Choose other hardware, glue on a veneer, or put washers under it.")),)
    if most is not None and short(most, wood):
        b, a = both(most, wood)
        return (Snag("wood-for-tuner", TIGHT, (item.id,), where, wood, most,
                     say("The head is {a} mm thick; the hardware of {item} clamps no more than {b} mm.", a=a, b=b, item=item.id),
                     say("Choose other hardware, plane the head thinner, or let its plate into the back by {needed} mm.",
                         needed=tenths(wood - most))),)
    return ()


def _reamed(item: Item) -> list[Snag]:
    """A bore that a reamer does not open all along: the peg would bear at its wide end alone."""
    return [_too_narrow(item, d) for d in item.drillings if d.reamed and short(d.narrow, d.diameter)]


def _too_narrow(item: Item, d: Drilling) -> Snag:
    narrow, drilled = both(d.narrow, d.diameter)
    words = {"taper": d.taper, "operation": term(d.operation), "item": item.id}
    text, cure = ((say("Reamed 1:{taper:g} the {operation} of {item} would be {narrow} mm wide at its far end, where the drill leaves {drilled} mm: "
                       "the peg would not bear there.", narrow=narrow, drilled=drilled, **words),
                   say("Drill it {narrow} mm or narrower, or ream it wider.", narrow=length(d.narrow, 1, down=True)))
                  if d.narrow >= NOTHING else
                  (say("Reamed 1:{taper:g} the {operation} of {item} would run out to nothing towards its far end: the peg would not bear there.",
                       **words),
                   say("Ream it wider, or with a taper that narrows less.")))
    return Snag("ream-short", TIGHT, (item.id,), d.end, d.narrow, d.diameter, text, cure)


def _comes_out(item: Item, wood: float) -> tuple[Snag, ...]:
    out = item.pattern.post.comes_off(wood)
    if not short(out, LEAST_OUT):
        return ()
    a, b = both(max(out, 0.0), LEAST_OUT)
    text = (say("The string of {item} would come off its post {below} mm below the face.", item=item.id, below=mm(-out)) if out < 0 else
            say("The string of {item} comes off its post {a} mm above the face; {b} mm wanted.", item=item.id, a=a, b=b))
    return (Snag("post-too-low", TIGHT, (item.id, FACE), (*plan(item.frame.origin), 0.0), out, LEAST_OUT, text,
                 say("Choose hardware with a longer post, or plane the head {needed} mm thinner.", needed=tenths(LEAST_OUT - out))),)


def _on_post(item: Item) -> tuple[Snag, ...]:
    """Whether the string hole, and where the string comes off, lie on the post."""
    post = item.pattern.post
    level = max(post.string_hole, post.winding or 0.0) if item.mount == "face" else post.string_hole
    if level <= post.length + TOUCH:
        return ()
    b, a = both(post.length, level)
    x, y, z = item.frame.origin
    return (Snag("string-past-post", TIGHT, (item.id,), (x, y, z), level, post.length,
                 say("The string of {item} leaves its post {a} mm along it, beyond its end at {b} mm.", item=item.id, a=a, b=b),
                 say("Measure the hardware again: neither string hole nor lowest turn lies beyond the end of the post.")),)
