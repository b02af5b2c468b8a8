"""What the program calls features by itself is in the language in use, and stays a name like any other."""

import pytest

from app.formats.rack import starting_rack
from app.languages import catalogue
from app.languages.catalogue import speak
from geometry.beginning import begin
from geometry.beginning.given_names import tools_in_language
from geometry.beginning.in_unit import hardware_in_unit
from geometry.beginning.numbers import Numbers
from geometry.checks import check
from geometry.edits.adding import add_hole, add_pin, add_tuner
from geometry.edits.copying import mirror_layout
from geometry.edits.slots import swapped_sides
from geometry.layout.generic import PATTERNS, RACK
from geometry.layout.generic_inch import PATTERNS_INCH, RACK_INCH
from geometry.layout.validate import feature_ids, validate, validate_rack
from geometry.terms import NAMES, given, given_tool


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
    assert {"Bassseite vorn 1", "Diskantseite quer 1", "Bassschlitz", "Sattelstift"} <= set(ids)
    assert not any(word in id for id in ids for word in ("bass ", "treble ", "pin", "slot"))
    assert set(feature_ids(mirror_layout(layout))) == set(ids) and mirror_layout(mirror_layout(layout)) == layout
    assert [snag.kind for snag in check(layout).snags if snag.grade == "spoils the work"] == []


def test_what_is_added_is_named_so_too(german):
    layout = begin(Numbers())
    layout = add_hole(add_pin(add_tuner(layout, layout.patterns[0].id, (0.0, 20.0)), (0.0, 60.0)), (0.0, 70.0), 3.0)
    assert layout.pins[-1].id == "Stift 1" and layout.holes[-1].id == "Bohrung 1" and layout.tuners[-1].id.endswith(" vorn 1")


def _tools(rack):
    return [one.id for one in (*rack.bits, *rack.bushes, *rack.drills)]


@pytest.mark.parametrize("rack, patterns", [(RACK, PATTERNS), (RACK_INCH, PATTERNS_INCH)], ids=["mm", "inch"])
def test_generic_hardware_and_every_tool_of_a_starting_rack_has_a_name_of_its_own_in_german(rack, patterns, german):
    for names in (_tools(rack), [one.id for one in patterns]):
        said = [given_tool(name) for name in names]
        assert len(set(said)) == len(names)
        assert all(one != name for one, name in zip(said, names, strict=True) if not name.startswith("forstner"))
        assert max(map(len, said)) <= 49, "a mirror image of it still has a name within 60"
    assert [given_tool(name) for name in ("my 8.8", "fine bit", "8.8")] == ["my 8.8", "fine bit", "8.8"]
    assert given_tool(f"{PATTERNS[1].id} mirrored") == "vorn 10 Buchse eine Schraube gespiegelt"
    validate_rack(starting_rack("mm" if rack is RACK else "inch"))


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_a_head_begun_in_german_has_german_hardware_that_its_tuners_and_its_template_find(unit, german):
    plain = begin(Numbers(bass=3, treble=3, bass_mount="side", treble_mount="face"))
    layout = hardware_in_unit(plain, unit)
    validate(layout)
    assert layout.template.bit in {bit.id for bit in layout.rack.bits} and layout.template.bit.endswith("Ring am Schaft")
    assert layout.rack == starting_rack("mm" if unit == "mm" else "inch")
    assert {layout.pattern(tuner.pattern).mount for tuner in layout.tuners} == {"face", "side"}
    assert hardware_in_unit(layout, unit) == layout
    assert [snag.kind for snag in check(layout).snags] == [snag.kind for snag in check(plain).snags] or unit == "in"
    speak("en")
    assert tools_in_language(plain) is plain, "in English there is nothing to say anew"
