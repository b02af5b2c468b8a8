"""Chances and causes as a maker reads them."""

import pytest

from geometry.accuracy.simulation import simulate
from geometry.accuracy.sources import RAMP, SOURCES, TITLES, UNITS, Share
from geometry.accuracy.words import (
    cause_words,
    chance_words,
    place_words,
    rise_words,
    share_words,
    short_chance_words,
    success_words,
)
from tests.geometry.accuracy.specimens import PERFECT, head, holes, only


@pytest.mark.parametrize(("chance", "trials", "words"), [
    (0.0, 10_000, "under 1 in 3,300 (none seen in 10,000)"), (0.0, 5_000, "under 1 in 1,600 (none seen in 5,000)"),
    (0.0, 2, "under 1 in 1 (none seen in 2)"),
    (0.0001, 10_000, "about 1 in 10,000"), (0.0111, 10_000, "about 1 in 90"), (0.022, 10_000, "2 in 100"),
    (0.3, 10_000, "30 in 100"), (0.98, 10_000, "98 in 100"), (0.9996, 10_000, "over 98 in 100"),
    (1.0, 10_000, "nearly always (all of 10,000 tried)")])
def test_chances_of_harm(chance: float, trials: int, words: str) -> None:
    assert chance_words(chance, trials) == words


@pytest.mark.parametrize(("chance", "trials", "words"), [
    (0.0, 10_000, "under 1 in 3,300 (none of 10,000 tried)"), (0.0003, 10_000, "about 1 in 3,300"),
    (0.105, 10_000, "10 in 100"), (0.979, 10_000, "97 in 100"), (0.9899, 10_000, "98 in 100"),
    (0.9902, 10_000, "99 in 100"), (0.9978, 10_000, "997 in 1,000"), (0.9996, 10_000, "9,996 in 10,000"),
    (1.0, 10_000, "over 999 in 1,000 (all of 10,000 tried)"), (1.0, 3, "over 0 in 1 (all of 3 tried)")])
def test_chances_of_coming_out_are_never_overstated_nor_certain(chance: float, trials: int, words: str) -> None:
    assert success_words(chance, trials) == words


def test_short_words_and_a_rise() -> None:
    assert short_chance_words(0.0, 10_000) == "under 1 in 3,300" and short_chance_words(0.0111, 10_000) == "1 in 90"
    assert rise_words(0.916, 0.9899, 10_000) == "from 91 to 98 in 100"
    assert rise_words(0.916, 0.9979, 10_000) == "from 91 in 100 to 997 in 1,000"
    assert rise_words(0.5, 1.0, 10_000) == "from 50 in 100 to over 999 in 1,000"


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
    assert share_words(Share("mark", RAMP + "slot", 0.5)) == "the mark of the ramp of slot"
    assert share_words(Share("stop", RAMP + "slot", 0.5)) == "how deep the ramp of slot is filed"
    assert [place_words(one) for one in (RAMP + "slot", "face 1", "back paper")] == ["ramp of slot", "face 1", "back paper"]
    assert share_words(Share("tilt", "treble side 1", 0.5)) == "the tilt of treble side 1"
