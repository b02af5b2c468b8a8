"""Any field by its path, and new names."""

from typing import get_args, get_type_hints

import msgspec
import pytest

from geometry.edits import get_field, rename, set_field
from geometry.errors import GeometryError
from geometry.layout import Book, Headstock, Note, Picture, Rates, StraightSlot, Template
from geometry.terms import FIELDS, TERMS
from tests.geometry.edits.heads import FACE, demo, plain, sound


def test_fields_by_id_and_by_index():
    assert set_field(plain(), ("slots", "treble slot", "shape", "width"), 11).slots[0].shape.width == 11.0
    assert set_field(plain(), ("slots", 0, "shape", "width"), 11.0) == set_field(
        plain(), ("slots", "treble slot", "shape", "width"), 11.0)
    made = sound(set_field(plain(), ("slots", 1, "shape"), StraightSlot(nut_end=(0.0, 50.0), tip_end=(0.0, 60.0),
                                                                       width=9.0)))
    assert made.slots[1].shape.width == 9.0
    assert set_field(plain(), ("outline", "nodes", 1, "at"), (41, 1)).outline.nodes[1].at == (41.0, 1.0)
    assert set_field(plain(), ("patterns", FACE, "bores", 0, "depth"), None).pattern(FACE).bores[0].depth is None
    assert set_field(plain(), ("rack", "bits", 0, "cutter"), 6.2).rack.bits[0].cutter == 6.2
    assert set_field(plain(), ("name",), "Another").name == "Another"
    assert get_field(demo(), ("margins", "bore_bore")) == 3.0
    untouched = set_field(plain(), ("blank", "thickness"), 15)
    assert untouched.blank.thickness == 15.0 and type(untouched.blank.thickness) is float


def test_what_is_not_touched_stays_the_same_object():
    head = plain()
    made = set_field(head, ("slots", 0, "shape", "width"), 11.0)
    assert made.slots[1] is head.slots[1] and made.outline is head.outline


@pytest.mark.parametrize(("path", "value", "sentence"), [
    (("slots", "treble slot", "shape", "width"), -1, "Treble slot: width must be above 0."),
    (("blank", "thickness"), "thick", "Blank: thickness must be a number."),
    (("blank", "thickness"), 1e9, "Blank: thickness must be at most 5000 mm."),
    (("nut", "pitch"), 90, "Nut: pitch must be at most 40°."),
    (("margins", "rail"), float("nan"), "Margins: rail must be at least 0."),
    (("margins", "bore_bore"), -1, "Margins: bore to bore must be at least 0."),
    (("accuracy", "wander_per_50"), -1, "Accuracy: drill wander in 50 mm must be at least 0."),
    (("pins", 0, "at"), (6000.0, 0.0), "Pin 1: place must be at most 5000 mm."),
    (("patterns", 0, "bores", 1, "diameter"), -1, "Pattern 1 bore 2: diameter must be above 0."),
    (("patterns", 0, "bores"), (), "Pattern 1: bores: Expected a list of at least 1 entry."),
    (("pegwright",), 2, "Pegwright"),
    (("tuners", 0, "winds"), "up", "Tuner 1: winds"),
    (("slots", "nobody", "depth"), 3, "The layout has no slots nobody depth."),
    (("slots", 9, "depth"), 3, "The layout has no slots 10 depth."),
    (("nothing",), 3, "The layout has no field nothing."),
    (("blank", "thickness", "x"), 3, "The layout has no field blank thickness x."),
    ((), 3, "A field needs a path"),
    (("tuners", 0, "pattern"), "none", "names the pattern none"),
])
def test_bad_values_are_refused_in_a_sentence(path, value, sentence):
    with pytest.raises(GeometryError) as caught:
        set_field(plain(), path, value)
    assert sentence in str(caught.value)
    assert str(caught.value).endswith((".", ")"))


def test_every_field_that_takes_a_number_has_a_word_of_its_own_for_sentences():
    """Which the catalogues have: a German sentence says none of the names that fields have in files."""
    seen, without = set(), set()

    def walk(kind: object, name: str) -> None:
        if kind in (float, int) and name not in FIELDS and name.replace("_", " ") not in TERMS:
            without.add(name)
        elif isinstance(kind, type) and issubclass(kind, msgspec.Struct) and kind not in seen | {Book, Picture, Rates}:
            seen.add(kind)
            for of, inner in get_type_hints(kind).items():
                walk(inner, of)
        for inner in get_args(kind):
            walk(inner, name)

    walk(Headstock, "")
    assert without == {"index"} and len(seen) > 25, "the place of a tuner in its row is never typed"


def test_new_names_are_followed_everywhere():
    head = plain(notes=(Note(on="pin", text="here"),), template=Template(bit="8 straight", bush="bush 17"))
    assert sound(rename(head, "pins", "pin", "north pin")).notes[0].on == "north pin"
    assert sound(rename(head, "rows", "line", "left row")).tuner("line 1").place.row == "left row"
    assert sound(rename(head, "patterns", FACE, "mine")).tuner("treble face 1").pattern == "mine"
    assert sound(rename(head, "strings", "6", "high")).tuner("treble face 1").string == "high"
    assert sound(rename(head, "bits", "8 straight", "eight")).template.bit == "eight"
    assert sound(rename(head, "bushes", "bush 17", "wide")).template.bush == "wide"
    assert sound(rename(head, "drills", "brad 6", "six")).rack.drills[4].id == "six"
    assert rename(head, "pins", "pin", "pin") is head
    assert sound(set_field(head, ("tuners", 0, "id"), "front")).tuner("front").string == "6"
    assert sound(set_field(head, ("rack", "bits", 1, "id"), "eight")).template.bit == "eight"


def test_bad_names_are_refused():
    for group, old, new, sentence in (
            ("pins", "pin", "peep", "more than once"), ("pins", "pin", "outline", "kept for the outline"),
            ("pins", "pin", "a/b", "^Name begins with a letter or a digit and holds only letters, digits"), ("pins", "pin", "", "^Name needs a word"),
            ("pins", "pin", "x" * 61, "^Name has at most 60 letters"), ("pins", "none", "x", "nothing named none"),
            ("wishes", "pin", "x", "nothing to rename")):
        with pytest.raises(GeometryError, match=sentence):
            rename(plain(), group, old, new)
