"""Chances and causes as a maker reads them."""

import pytest

from geometry.accuracy.simulation import simulate
from geometry.accuracy.sources import SOURCES, TITLES, UNITS, Share
from geometry.accuracy.words import cause_words, chance_words, share_words
from tests.geometry.accuracy.specimens import PERFECT, head, holes, only


@pytest.mark.parametrize(("chance", "trials", "words"), [
    (0.0, 10_000, "fewer than 1 in 3300"), (0.0, 2, "fewer than 1 in 1"), (0.0001, 10_000, "about 1 in 10000"),
    (0.0111, 10_000, "about 1 in 90"), (0.022, 10_000, "about 1 in 45"), (0.199, 10_000, "about 1 in 5"),
    (0.3, 10_000, "about 30 in 100"), (0.9996, 10_000, "about 99 in 100"), (1.0, 10_000, "always")])
def test_chances(chance: float, trials: int, words: str) -> None:
    assert chance_words(chance, trials) == words


def test_the_cause_names_what_and_where() -> None:
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0)), accuracy=only(mark=0.3))
    clearance, = simulate(layout, 2000).clearances
    words = cause_words(clearance)
    assert words.startswith("Mostly the mark of hole ") and ", then the mark of hole " in words and " %)." in words


def test_nothing_strays_in_a_perfect_shop() -> None:
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0)), accuracy=PERFECT)
    clearance, = simulate(layout, 10).clearances
    assert cause_words(clearance) == "Nothing strays here."


def test_every_source_has_words() -> None:
    assert set(TITLES) == set(UNITS) == set(SOURCES)
    assert share_words(Share("template", "outline", 0.5)) == "how the outline is followed"
    assert share_words(Share("template", "bass slot", 0.5)) == "how bass slot is followed"
    assert share_words(Share("template", "template", 0.5)) == "the place of the template"
    assert share_words(Share("paper", "back paper", 0.5)) == "the stretch of the back paper"
    assert share_words(Share("tilt", "treble side 1", 0.5)) == "the tilt of treble side 1"
