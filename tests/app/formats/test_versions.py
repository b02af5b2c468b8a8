"""Files as earlier programs wrote them open forever. They are never written anew: a file that no longer opens needs a migration."""

import json
import re
from pathlib import Path

import pytest
from msgspec.structs import fields

from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.rack import decode_rack, encode_rack, starting_rack
from app.formats.saving import before
from geometry.checks import check

VERSIONS = sorted((Path(__file__).parent / "versions").glob("*.headstock.json"))


def test_there_is_a_file_of_every_version():
    assert [path.name for path in VERSIONS] == [f"version-{number}.headstock.json"
                                               for number in range(1, headstock.FORMAT + 1)]


@pytest.mark.parametrize("path", VERSIONS, ids=lambda path: path.name)
def test_it_opens_and_means_what_it_meant(path):
    layout = headstock.read(path)
    result = check(layout)
    assert (result.counts.holes, result.counts.drilling, result.counts.pins) == (36, 42, 2)
    assert headstock.decode(headstock.encode(layout)) == layout
    assert [string.id for string in layout.strings] == [str(n) for n in range(1, 13)] and layout.blank.thickness == 16.0


SAMPLE = Path(__file__).parents[3] / "samples" / "twelve-string-mixed.headstock.json"
PLAIN = json.loads(SAMPLE.read_bytes())
NEWER = "If a newer Pegwright wrote it, update Pegwright to open it; the file is left as it is."


def ways(kind: type, record: dict, way: tuple = ()):
    """The way to every field of a record that has a default: each may have been added since a file was written."""
    for one in fields(kind):
        if not one.required and one.encode_name in record:
            yield *way, one.encode_name


def without(record: object, way: tuple) -> object:
    """A copy of plain JSON without what is at the end of the way."""
    copy = json.loads(json.dumps(record))
    part = copy
    for key in way[:-1]:
        part = part[key]
    del part[way[-1]]
    return copy


def every_way(kind: type, value: object, way: tuple = ()):
    """`ways` of a record, of the records in it, and of the first of each list of records."""
    yield from ways(kind, json.loads(headstock.encode(value)), way)
    for one in fields(kind):
        inner = getattr(value, one.name)
        if hasattr(inner, "__struct_fields__"):
            yield from every_way(type(inner), inner, (*way, one.encode_name))
        elif isinstance(inner, tuple) and inner and hasattr(inner[0], "__struct_fields__"):
            yield from every_way(type(inner[0]), inner[0], (*way, one.encode_name, 0))


WAYS = [way for way in every_way(type(headstock.read(SAMPLE)), headstock.read(SAMPLE)) if way != ("pegwright",)]

REFERRED_TO = {("strings",), ("patterns",), ("rows",), ("rack",), ("rack", "bits"), ("rack", "bushes")}
"""Lists of what other fields name: no file ever had the names without them."""


def test_a_file_from_before_any_field_that_was_added_opens_with_its_default():
    assert {("book",), ("picture",), ("rack", "drills"), ("slots", 0, "ramp"), ("tuners", 0, "flat")} <= set(WAYS) and len(WAYS) > 100
    layout = headstock.read(SAMPLE)
    for way in WAYS:
        data = json.dumps(without(PLAIN, way)).encode()
        try:
            opened = headstock.decode(data)
        except FormatError as error:
            assert way in REFERRED_TO and re.search("which the layout does not have|which is not in the rack", str(error)), way
            continue
        assert headstock.decode(headstock.encode(opened)) == opened, way
        if json.loads(headstock.encode(opened)) == PLAIN:
            assert opened == layout, way


@pytest.mark.parametrize("change", [{"colour": "red"}, {"nut": PLAIN["nut"] | {"angle": 3}}, {"nut": PLAIN["nut"] | {"spacing": "by eye"}}],
                         ids=["a field", "a field in a record", "a word"])
def test_what_only_a_newer_program_knows_is_refused_with_what_to_do(change):
    with pytest.raises(FormatError) as caught:
        headstock.decode(json.dumps(PLAIN | change).encode(), "head.json")
    assert str(caught.value).endswith(NEWER)
    rack = json.loads(encode_rack(starting_rack()))
    with pytest.raises(FormatError, match="If a newer Pegwright wrote it"):
        decode_rack(json.dumps(rack | {"colour": "red"}).encode())


def test_what_is_wrong_for_any_program_speaks_of_no_newer_one():
    with pytest.raises(FormatError) as caught:
        headstock.decode(json.dumps(PLAIN | {"name": 5}).encode(), "head.json")
    assert "newer" not in str(caught.value)


@pytest.mark.parametrize("change", [{"pegwright": headstock.FORMAT + 1}, {"colour": "red"}], ids=["a newer version", "a field"])
def test_a_newer_file_that_is_saved_over_is_kept_as_the_version_before(tmp_path, change):
    path = tmp_path / "head.headstock.json"
    newer = json.dumps(PLAIN | change).encode()
    path.write_bytes(newer)
    with pytest.raises(FormatError, match="the file is left as it is"):
        headstock.read(path)
    assert path.read_bytes() == newer
    assert headstock.write(headstock.read(SAMPLE), path)
    assert before(path).read_bytes() == newer
