"""What an advice says of things that are drilled, cut or glued on in the real piece already: in one place, for every kind of snag."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from geometry.checks.memo import Memo
from geometry.checks.snags import NOTE, Snag
from geometry.checks.words import first, listed
from geometry.layout.book import Book
from geometry.layout.drilled import Worked, worked
from geometry.saying import count, say
from geometry.terms import term

OTHER_ADVICE = ("drilled-", "cut-", "marked-", "glued-", "string-to-", "no-drill", "no-bit", "bit-too-short", "template-lost", "skate", "table-tilt", "drill-size", "drill-short", "quill")
"""How kinds begin whose advice moves no wood, or is about what is made itself."""


def with_what_is_made(snags: list[Snag], book: Book, memo: Memo) -> Iterator[Snag]:
    """The snags; the advice of each that is about something made already says that this stays. A note carries no move."""
    made = memo.of(worked, book)
    every = made.drilled | made.cut | made.glued
    for snag in snags:
        stays = snag.grade == NOTE or every.isdisjoint(snag.between) or snag.kind.startswith(OTHER_ADVICE)
        yield snag if stays else memo.of(_told, snag, made)


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
