"""Sentences are looked up, filled in, and English where nothing is known."""

from collections.abc import Iterator

import pytest

from geometry import saying
from geometry.checks.said import length, read
from geometry.saying import count, say
from geometry.terms import term


@pytest.fixture
def german() -> Iterator[None]:
    known = {("{slot} is {wide} mm wide.", ""): "{wide} mm breit ist {slot}.", ("Turn", "noun"): "Drehung",
             ("Turn", ""): "Drehen", ("{n} hole", ""): "{n} Bohrung", ("{n} holes", ""): "{n} Bohrungen",
             ("{n:,} in {whole:,}", ""): "{n:,} von {whole:,}", ("treble", "term"): "Diskant"}
    saying.use(lambda text, about: known.get((text, about), ""), "de")
    yield
    saying.use(None)


def test_without_a_catalogue_a_sentence_is_what_is_written() -> None:
    assert say("{slot} is {wide} mm wide.", slot="upper slot", wide=12.5) == "upper slot is 12.5 mm wide."
    assert say("A {brace} stays.") == "A {brace} stays."
    assert [count(n, "{n} hole", "{n} holes") for n in (0, 1, 2)] == ["0 holes", "1 hole", "2 holes"]
    assert term("treble") == "treble"


def test_a_translation_may_turn_the_order_round(german: None) -> None:
    assert say("{slot} is {wide} mm wide.", slot="S", wide=12) == "12 mm breit ist S."
    assert [count(n, "{n} hole", "{n} holes") for n in (1, 3)] == ["1 Bohrung", "3 Bohrungen"]


def test_thousands_are_set_apart_by_what_is_no_decimal_sign_there(german: None) -> None:
    assert say("{n:,} in {whole:,}", n=999, whole=12000) == "999 von 12\N{NO-BREAK SPACE}000"


def test_what_it_is_about_tells_two_meanings_apart(german: None) -> None:
    assert (say("Turn"), say("Turn", about="noun")) == ("Drehen", "Drehung")


def test_what_is_not_known_stays_english_and_names_stay_what_they_are(german: None) -> None:
    assert say("Nobody {did} this.", did="translated") == "Nobody translated this."
    assert (term("treble"), term("treble 3"), term("{odd")) == ("Diskant", "treble 3", "{odd")


def test_a_field_may_hold_braces_and_marked_lengths(german: None) -> None:
    assert read(say("{slot} is {wide} mm wide.", slot="{wide}", wide=length(25.4)), "in") == '1" breit ist {wide}.'


def test_a_field_that_is_not_given_is_a_fault() -> None:
    with pytest.raises(KeyError):
        say("{slot} is {wide} mm wide.", slot="S")
