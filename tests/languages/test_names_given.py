"""What the program calls features by itself is in the language in use, and stays a name like any other."""

import pytest

from app.languages import catalogue
from app.languages.catalogue import speak
from geometry.beginning import begin
from geometry.beginning.numbers import Numbers
from geometry.checks import check
from geometry.edits.adding import add_hole, add_pin, add_tuner
from geometry.edits.copying import mirror_layout
from geometry.edits.slots import swapped_sides
from geometry.layout.validate import feature_ids
from geometry.terms import NAMES, given


@pytest.fixture
def german():
    speak("de")
    yield
    speak("en")


def test_in_english_names_are_their_keys():
    assert all(given(name) == name for name in NAMES) and given("bass face 12") == "bass face 12"


def test_names_of_the_makers_own_stay(german):
    assert [given(name) for name in ("peep", "jig 2", "4", "slot left")] == ["peep", "jig 2", "4", "slot left"]
    assert given("bass face 12") == "Bassseite vorn 12"


@pytest.mark.parametrize("language", catalogue.NAMES)
def test_no_two_become_one_and_each_has_its_twin_on_the_other_side(language):
    speak(language)
    try:
        assert len({given(name) for name in NAMES}) == len(NAMES)
        for name in NAMES:
            assert swapped_sides(given(name)) == given(swapped_sides(name)), name
            assert swapped_sides(swapped_sides(given(name))) == given(name)
    finally:
        speak("en")


def test_a_head_begun_in_german_has_german_names_and_mirrors_as_any_other(german):
    layout = begin(Numbers(bass=6, treble=6, bass_mount="mixed", treble_mount="mixed", courses=True, length=260.0, width=130.0))
    ids = feature_ids(layout)
    assert {"Bassseite vorn 1", "Diskantseite seitlich 1", "Bassschlitz", "Sattelstift"} <= set(ids)
    assert not any(word in id for id in ids for word in ("bass ", "treble ", "pin", "slot"))
    assert set(feature_ids(mirror_layout(layout))) == set(ids) and mirror_layout(mirror_layout(layout)) == layout
    assert [snag.kind for snag in check(layout).snags if snag.grade == "spoils the work"] == []


def test_what_is_added_is_named_so_too(german):
    layout = begin(Numbers())
    layout = add_hole(add_pin(add_tuner(layout, layout.patterns[0].id, (0.0, 20.0)), (0.0, 60.0)), (0.0, 70.0), 3.0)
    assert layout.pins[-1].id == "Stift 1" and layout.holes[-1].id == "Bohrung 1" and layout.tuners[-1].id.endswith(" vorn 1")
