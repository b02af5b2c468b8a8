"""Drilling cards as data: one for each tuner, one for equal single holes, one for the locating pins."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from app.sheets.lengths import length
from app.sheets.router_pages import alike, routed
from app.sheets.work import Work
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence import Operation
from geometry.solids import Drilling, Hole
from geometry.solids.drilling import to_drill
from geometry.terms import term

MOST = 24
"""Most holes on a card: with what is to be heeded it is no higher than the lowest page."""


class Card(Struct, frozen=True):
    """One card: what it is of and the drillings on it with their operations, in the order of the work."""

    number: int
    kind: str
    """side, face, hole or pin"""
    title: str
    ids: tuple[str, ...]
    """features that the card is of; the section runs through the first"""
    drillings: tuple[Drilling, ...]
    ops: tuple[Operation, ...]


def cards(layout: Headstock, work: Work) -> list[Card]:
    """All cards, numbered in the order in which the running order comes to them.

    A drilling that no step makes is on its card all the same.
    """
    made = [_card(group, work) for group in _groups(layout)]
    made.sort(key=lambda card: min((work.number[op.id] for op in card.ops if op.id in work.number), default=10 ** 6))
    return [Card(i, card.kind, card.title, card.ids, card.drillings, card.ops) for i, card in enumerate(made, 1)]


def card_of(cards: Sequence[Card], work: Work) -> dict[str, int]:
    """Number of the card of each operation by its id: drilling cards, then router cards. A pin hole that is a bore too is
    on the first of its cards."""
    found: dict[str, int] = {op.id: number for number, plans in enumerate(alike(work.plans), len(cards) + 1)
                             for plan in plans for op in routed(work, plan.of)}
    for card in cards:
        for op in card.ops:
            found.setdefault(op.id, card.number)
    return found


def _groups(layout: Headstock) -> list[list[Hole]]:
    """Holes that share a card: those of a tuner, equal single holes and pins as far as a card of a page has room for them."""
    groups: dict[tuple, list[Hole]] = {}
    for hole in to_drill(layout):
        d = hole.drillings[0]
        if d.role == "locating":
            key: tuple = ("pin",)
        elif d.role == "hole":
            key = ("hole", d.diameter, d.depth, d.surface)
        else:
            key = ("tuner", hole.of)
        groups.setdefault(key, []).append(hole)
    return [group[i:i + MOST] for group in groups.values() for i in range(0, len(group), MOST)]


def _card(group: list[Hole], work: Work) -> Card:
    first = group[0].drillings[0]
    drillings = [d for hole in group for d in hole.drillings]
    ids = {d.id for d in drillings}
    own = [op for op in work.ops if op.kind != "final diameter" and any(d.id in ids for d in op.drillings)]
    own.sort(key=lambda op: work.number.get(op.id, 10 ** 6))
    step = {d.id: i for i, op in reversed(list(enumerate(own))) for d in op.drillings}
    drillings.sort(key=lambda d: step.get(d.id, 10 ** 6))
    of = tuple(dict.fromkeys(hole.of for hole in group))
    if first.role == "locating":
        return Card(0, "pin", say("Locating pin holes") if len(of) > 1 else say("Locating pin hole {of}", of=of[0]), of,
                    tuple(drillings), tuple(own))
    if first.role == "hole":
        title = _hole_title(of[0]) if len(of) == 1 else say("{n} holes, {diameter} wide", n=len(of), diameter=length(first.diameter))
        return Card(0, "hole", title, of, tuple(drillings), tuple(own))
    kind = "face" if any(d.upright for d in drillings) else "side"
    return Card(0, kind, of[0], of, tuple(drillings), tuple(own))


def _hole_title(name: str) -> str:
    """The name of a single hole, with what it is unless the name says so already."""
    return name[:1].upper() + name[1:] if term("hole") in name.split() else say("Hole {of}", of=name)
