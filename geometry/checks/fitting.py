"""Hardware through the face against the thickness of the head: whether it clamps, and whether its string comes out of the wood."""

from __future__ import annotations

from geometry.checks.around import Around
from geometry.checks.items import Item, plan
from geometry.checks.snags import FACE, TIGHT, Snag, short
from geometry.checks.words import both, mm, tenths
from geometry.saying import say

LEAST_OUT = 1.0
"""mm from the face to the middle of a string where it comes off its post (common practice, no source)."""


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Snags of one tuner through the face with the thickness of the wood."""
    if item.mount != "face":
        return ()
    return (*_clamps(item, around.blank.thickness), *_comes_out(item, around.blank.thickness))


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


def _comes_out(item: Item, wood: float) -> tuple[Snag, ...]:
    out = item.pattern.post.comes_off(wood)
    if not short(out, LEAST_OUT):
        return ()
    a, b = both(max(out, 0.0), LEAST_OUT)
    text = (say("The string of {item} would come off its post {below} mm below the face.", item=item.id, below=mm(-out)) if out < 0 else
            say("The string of {item} comes off its post {a} mm above the face; {b} mm wanted.", item=item.id, a=a, b=b))
    return (Snag("post-too-low", TIGHT, (item.id, FACE), (*plan(item.frame.origin), 0.0), out, LEAST_OUT, text,
                 say("Choose hardware with a longer post, or plane the head {needed} mm thinner.", needed=tenths(LEAST_OUT - out))),)
