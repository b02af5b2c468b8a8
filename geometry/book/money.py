"""Money of the job book: exact sums of decimals, the currency a label only."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Context, Decimal

from geometry.layout import Book, Piece, Price
from geometry.saying import number

EXACT = Context(prec=60)
"""Wide enough for any sum of prices that the book admits (at most 1e9 each, 6 decimals): no digit is rounded away."""


def cost(price: Price) -> Decimal:
    """`count` times `each`."""
    return EXACT.multiply(Decimal(price.count), price.each)


def total_cost(prices: Iterable[Price]) -> Decimal:
    """The sum, exact and so the same in any order; 0 for none."""
    total = Decimal(0)
    for price in prices:
        total = EXACT.add(total, cost(price))
    return total


def spent_on(book: Book, piece: Piece) -> Decimal:
    """What one piece cost."""
    return total_cost(price for price in book.prices if price.piece == piece)


def money_words(value: Decimal, currency: str = "") -> str:
    """An amount for the eye: at least two decimals, more when it has them, then the label."""
    exponent = value.as_tuple().exponent
    if isinstance(exponent, int) and exponent > -2:
        value = value.quantize(Decimal("0.01"), context=EXACT)
    text = number(value, "f")
    return f"{text} {currency}".rstrip()
