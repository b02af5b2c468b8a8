"""No field of a layout is left out of the tests that try to break it."""

import json
import random
import typing

import msgspec
import pytest

from app.formats import headstock
from app.formats.errors import FormatError
from geometry import edits
from geometry.errors import GeometryError
from geometry.layout import Headstock
from tests.endurance.edits import kinds_of_fields
from tests.endurance.whole import ODD, records, reworked, whole


def kinds(kind: object, found: set[type]) -> set[type]:
    """Every kind of record that a kind of value may hold."""
    if isinstance(kind, type) and issubclass(kind, msgspec.Struct):
        if kind not in found:
            found.add(kind)
            for field in msgspec.structs.fields(kind):
                kinds(field.type, found)
    for inner in typing.get_args(kind):
        kinds(inner, found)
    return found


def test_the_whole_layout_has_every_kind_of_record_and_every_field_with_a_value_of_its_own():
    """A field that is new fails here until `whole.py` gives it one."""
    here = list(records(whole()))
    wanted = kinds(Headstock, set())
    assert len(wanted) > 30 and {type(one) for one in here} == wanted
    usual = [(kind.__name__, field.name) for kind in wanted for field in msgspec.structs.fields(kind)
             if not field.required and field.name != "pegwright"
             and all(getattr(one, field.name) == default(field) for one in here if type(one) is kind)]
    assert usual == []


def default(field):
    return field.default if field.default is not msgspec.NODEFAULT else field.default_factory()


def test_every_kind_of_field_can_be_set_to_another_value_or_is_refused_in_a_sentence():
    """Each is set as a maker types into its row; what comes of it is saved, opened and checked."""
    layout, refused, done = whole(), 0, set()
    for kind, ways in kinds_of_fields(layout).items():
        way, old = ways[0]
        for value in (*others(old), None, "", "bass", [], 1e300, -3.0, 5.5):
            try:
                made = edits.set_field(layout, way, value)
            except GeometryError as error:
                refused += 1
                assert str(error).strip() and "\n" not in str(error), (kind, value)
                continue
            if made != layout and kind not in done:
                done.add(kind)
                assert headstock.decode(headstock.encode(made)) == made, (kind, value)
    assert refused > 300
    assert set(kinds_of_fields(layout)) - done == NOT_ALONE


NOT_ALONE = {("Tuner", "flat"), ("SingleHole", "retainer"), ("SingleHole", "plugged"), ("Slot", "ramp"), ("Slot", "there"), ("Tuner", "pattern"), ("RowPlace", "row"), ("Done", "hole"), ("Done", "cut"), ("Done", "spots"), ("Pattern", "mount"), ("Bore", "role"),
             ("Bore", "surface"), ("Bore", "at")}
"""What goes with something else, a record or a name, so that it is not set by itself: other edits do that."""


def others(old):
    """Values near one."""
    if isinstance(old, bool):
        return (not old,)
    if isinstance(old, int | float):
        return (old + 1, old * 1.01, old / 2)
    if isinstance(old, tuple) and old and isinstance(old[0], float):
        return (tuple(1.01 * one for one in old), old[:-1])
    return ("another", "treble", "tip", "straight", "brad", "twist", "face", "plate", "flat", "outline", "centres", "practice", "none", "depth", "shank") if isinstance(old, str) else ()


@pytest.mark.parametrize("seed", range(4))
def test_a_reworked_layout_is_json_and_ends_in_a_layout_or_a_sentence(seed):
    chance, ends = random.Random(seed), set()
    for _ in range(60):
        data = reworked(headstock.encode(whole()), chance)
        json.loads(data)
        try:
            made = headstock.decode(data)
        except FormatError as error:
            assert "\n" not in str(error)
            ends.add("refused")
            continue
        assert headstock.decode(headstock.encode(made)) == made
        ends.add("read")
    assert ends == {"read", "refused"}


def test_a_file_is_reworked_alike_whatever_was_before_it():
    """What is put in is a copy: else a later file finds it changed, or in itself, where it is no JSON any more."""
    before, chance = repr(ODD), random.Random(1)
    for _ in range(10_000):
        json.loads(reworked(b'{"one": [[]], "two": {"three": [[]]}}', chance))
    assert repr(ODD) == before
