"""Edits of the rack: entries in their order, names once, choices that follow."""

import pytest

from geometry.edits.rack import add_entry, copy_entry, remove_entry, set_in_rack, sort_shelf
from geometry.errors import GeometryError
from geometry.layout.generic import RACK


def ids(rack, shelf="bits"):
    return [entry.id for entry in getattr(rack, shelf)]


@pytest.mark.parametrize("shelf", ["bits", "bushes", "drills"])
def test_what_is_added_is_last_and_named_afresh(shelf):
    once = add_entry(RACK, shelf)
    twice = add_entry(once, shelf)
    assert ids(twice, shelf)[:-2] == ids(RACK, shelf) and len(set(ids(twice, shelf))) == len(ids(twice, shelf))
    assert remove_entry(once, shelf, ids(once, shelf)[-1]) == RACK


def test_a_copy_stands_behind_its_original():
    made = copy_entry(RACK, "bits", "8 straight")
    assert ids(made)[1:3] == ["8 straight", "8 straight 2"]
    assert made.bits[2].cutter == made.bits[1].cutter


def test_sorted_by_size_and_drills_by_kind():
    backwards = set_in_rack(set_in_rack(RACK, ("bits", "6 straight", "cutter"), 20.0), ("bits", "10 straight", "cutter"), 4.0)
    made = sort_shelf(backwards, "bits")
    assert ids(made)[0] == "10 straight" and ids(made)[-1] == "6 straight" and sort_shelf(made, "bits") == made
    drills = sort_shelf(RACK, "drills").drills
    assert [d.kind for d in drills] == sorted(d.kind for d in RACK.drills)


@pytest.mark.parametrize(("path", "value", "words"), [
    (("bits", "6 straight", "cutter"), 0.0, "cutter"), (("bits", "6 straight", "id"), "8 straight", "is taken"),
    (("bits", "6 straight", "id"), "", "name needs a word"), (("drills", "brad 6", "point_angle"), 200.0, "point angle"),
    (("press", "tilt"), 100.0, "tilt"), (("router", "speeds"), (0.0,), "speeds"), (("bits", "nothing", "cutter"), 3.0, "no")])
def test_bad_values_are_refused_in_a_sentence(path, value, words):
    with pytest.raises(GeometryError, match=words):
        set_in_rack(RACK, path, value)


def test_nothing_of_that_name():
    with pytest.raises(GeometryError, match="The rack holds nothing named ghost"):
        remove_entry(RACK, "bits", "ghost")
