"""Sums of money are exact, in any order."""

from decimal import Decimal
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from geometry.book import money_words, spent_on, total_cost
from geometry.layout import Book, Price

prices = st.builds(Price, piece=st.sampled_from(["practice", "real"]), part=st.just("part"), count=st.integers(0, 100_000),
                   each=st.decimals(min_value=-10**9, max_value=10**9, places=6))


def test_ten_dimes_are_one():
    assert total_cost([Price(piece="real", part="screw", count=10, each=Decimal("0.1"))] * 3) == Decimal("3.0")
    assert sum([0.1] * 3) != 0.3  # what a binary sum would do


@given(st.lists(prices, max_size=30), st.randoms())
def test_the_total_is_exact_in_any_order(some, chance):
    total = total_cost(some)
    assert Fraction(total) == sum((Fraction(p.count) * Fraction(p.each) for p in some), Fraction(0))
    mixed = some[:]
    chance.shuffle(mixed)
    assert total_cost(mixed) == total
    book = Book(prices=tuple(some))
    assert spent_on(book, "practice") + spent_on(book, "real") == total


def test_money_has_two_decimals_or_more():
    assert money_words(Decimal("12"), "EUR") == "12.00 EUR"
    assert money_words(Decimal("0.125")) == "0.125"
    assert money_words(Decimal("1E+3")) == "1000.00"
    assert money_words(Decimal(0)) == "0.00"
