"""What a snag says of things that are drilled, cut or glued on in the real piece already: in one place, for every kind of snag."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from geometry.checks.in_wood import InWood
from geometry.checks.memo import Memo
from geometry.checks.router import OTHER_BIT
from geometry.checks.snags import NOTE, Snag
from geometry.checks.words import first, listed
from geometry.layout.book import Book, Shaped
from geometry.layout.drilled import Worked, cut_of, worked
from geometry.saying import count, say
from geometry.solids.cut_shape import reach
from geometry.terms import term
from geometry.tolerance import SAME_HOLE

OTHER_ADVICE = ("drilled-", "cut-", "marked-", "glued-", "string-to-", "no-drill", "no-bit", "bit-too-short", "template-lost", "skate", "table-tilt", "drill-size", "drill-short", "quill")
"""How kinds begin whose advice moves no wood, or is about what is made itself."""


def with_what_is_made(snags: list[Snag], book: Book, made_so: InWood, memo: Memo) -> Iterator[Snag]:
    """The snags; the advice of each that is about something made already says that this stays. A note carries no move. What the bit does
    to a slot that is routed as it is drawn is a note for the next piece: nothing of this one waits for it."""
    made = memo.of(worked, book)
    every = made.drilled | made.cut | made.glued
    for snag in snags:
        if snag.kind in OTHER_BIT and snag.grade != NOTE and snag.between[0] in routed(made_so):
            snag = memo.of(_for_the_next, snag)
        stays = snag.grade == NOTE or every.isdisjoint(snag.between) or snag.kind.startswith(OTHER_ADVICE)
        yield snag if stays else memo.of(_told, snag, made)


def routed(found: InWood) -> frozenset[str]:
    """Slots that are cut as they are drawn, along their line from the face to their floor or through."""
    now, own = {id(one): task for task, one in found.again}, set(map(id, found.held.values()))
    cuts: dict[str, list[Shaped]] = {}
    for one in found.ticks:
        if id(one) in own and one.cut and not (one.cut.light or one.cut.corners or one.cut.ramp):
            cuts.setdefault(cut_of(now.get(id(one), one.task)), []).append(one.cut)
    return frozenset(of for of, made in cuts.items() if of not in found.strayed
                     and any((one.ends is None or one.floor) and one.begins <= reach(0.0, made) + SAME_HOLE for one in made))


def _for_the_next(snag: Snag) -> Snag:
    return replace(snag, grade=NOTE, said=f"{snag.said} {say('In the real piece it is routed already (job book): this is for the next one.')}")


def _told(snag: Snag, made: Worked) -> Snag:
    def names(ids: frozenset[str]) -> list[str]:
        return [term(id) for id in dict.fromkeys(snag.between) if id in ids]

    said = [snag.advice]
    if drilled := names(made.drilled):
        said.append(first(count(len(drilled), "{names} is drilled in the real piece already (job book) and stays where it is.",
                                "{names} are drilled in the real piece already (job book) and stay where they are.", names=listed(drilled))))
    if cut := names(made.cut):
        said.append(first(count(len(cut), "{names} is cut in the real piece already (job book): more can be taken off, and no wood comes back.",
                                "{names} are cut in the real piece already (job book): more can be taken off, and no wood comes back.", names=listed(cut))))
    if glued := names(made.glued):
        said.append(first(say("{names} is glued on in the real piece already (job book) and stays as it is.", names=listed(glued))))
    return replace(snag, advice=" ".join(said))
