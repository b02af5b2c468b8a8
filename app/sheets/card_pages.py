"""Drilling cards below each other, each as wide as the page: one cut parts two of them."""

from __future__ import annotations

from functools import partial

from app.sheets.card_face import Maker, section
from app.sheets.cards import Card
from app.sheets.lay import Block, space
from app.sheets.work import Work
from geometry.cancellation import Ask, go_on
from geometry.layout import Headstock
from geometry.saying import say

GAP = 2.0
"""Between cards, mm."""


def card_blocks(layout: Headstock, work: Work, made: list[Card], width: float, ask: Ask = go_on) -> list[Block]:
    """A block for each card, to flow down pages of that width (mm). `ask` is asked before each."""
    blocks: list[Block] = []
    for number, card in enumerate(made, 1):
        ask(partial(_at_cards, number, len(made)))
        placed, height = Maker(layout, work, card, width, section(layout, work, card)).made()
        blocks += [Block(placed, height), space(GAP)]
    return blocks


def _at_cards(number: int, cards: int) -> str:
    return say("Cards: {number} of {cards}", number=number, cards=cards)
