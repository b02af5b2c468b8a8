"""The maker's rack on disk."""

import json
import os

import pytest
from msgspec.structs import replace

from app.formats.errors import FormatError
from app.formats.rack import (
    decode_rack,
    encode_rack,
    keep_before,
    kept_rack,
    load_rack,
    rack_path,
    save_rack,
    set_aside,
    starting_rack,
)
from geometry.layout import Rack, Router
from geometry.layout.generic import RACK
from geometry.layout.generic_inch import RACK_INCH


def test_it_begins_with_an_invented_rack_and_writes_nothing():
    assert not rack_path().exists()
    assert load_rack(rack_path()) == RACK and load_rack(rack_path(), "inch") == RACK_INCH
    assert not rack_path().exists()


def test_it_is_kept_in_the_settings_folder():
    mine = replace(RACK, router=Router(base=120.0))
    try:
        save_rack(mine, rack_path())
        assert rack_path().name == "rack.json" and load_rack(rack_path()) == mine
        assert [file.name for file in rack_path().parent.iterdir()] == ["rack.json"]
    finally:
        rack_path().unlink()


@pytest.mark.parametrize("rack", [RACK, RACK_INCH, Rack()])
def test_saving_and_reading_gives_the_same_rack_and_the_same_bytes(rack, tmp_path):
    save_rack(rack, tmp_path / "new folder" / "rack.json")
    assert load_rack(tmp_path / "new folder" / "rack.json") == rack
    assert encode_rack(decode_rack(encode_rack(rack))) == encode_rack(rack)


def test_inches_are_kept_exactly():
    sizes = {b.id: b.cutter for b in starting_rack("inch").bits}
    assert sizes["1/4 in straight"] == 6.35 and sizes["1/2 in shank bearing"] == 12.7


def spoiled(**change):
    data = json.loads(encode_rack(RACK))
    data.update(change)
    return json.dumps(data).encode()


def rack_with(**change):
    data = json.loads(encode_rack(RACK))
    data["rack"].update(change)
    return json.dumps(data).encode()


BIT = {"id": "a", "cutter": 6, "cutting_length": 20, "shank": 6, "stick_out": 30}


@pytest.mark.parametrize(("data", "words"), [
    (b"", "holds no rack"),
    (b"  \n", "holds no rack"),
    (b"{", "cannot be used"),
    (b"[1]", "cannot be used"),
    (b"\xff\xfe\x00", "cannot be used"),
    (b"[" * 100_000, "cannot be used"),
    (b"{}", 'no "pegwright_rack" version'),
    (spoiled(pegwright_rack=2), "version 2; this program reads version 1"),
    (spoiled(colour="red"), "colour"),
    (rack_with(bits=[BIT | {"cutter": 0}]), "$.rack.bits[0].cutter"),
    (rack_with(bits=[BIT | {"cutter": "6"}]), "$.rack.bits[0].cutter"),
    (rack_with(bits=[BIT | {"wings": 2}]), "$.rack.bits[0]"),
    (rack_with(bits=[BIT, BIT]), "The name a is used more than once among the bits"),
    (b" " * 3_000_000 + b"{}", "far larger"),
])
def test_a_spoiled_file_is_one_sentence(data, words, tmp_path):
    with pytest.raises(FormatError) as caught:
        decode_rack(data, "rack.json")
    text = str(caught.value)
    assert words in text and text.startswith("rack.json") and text.endswith(".") and "\n" not in text


def test_a_spoiled_rack_is_never_replaced_silently(tmp_path):
    file = tmp_path / "rack.json"
    file.write_bytes(b"{")
    with pytest.raises(FormatError, match="cannot be used"):
        load_rack(file)
    assert file.read_bytes() == b"{"


def test_places_that_cannot_be_used(tmp_path):
    with pytest.raises(FormatError, match="cannot be read"):
        load_rack(tmp_path)
    (tmp_path / "file").write_text("")
    with pytest.raises(FormatError, match="cannot be made"):
        save_rack(RACK, tmp_path / "file" / "rack.json")
    twice = replace(RACK, bits=(RACK.bits[0], RACK.bits[0]))
    with pytest.raises(FormatError, match="more than once"):
        save_rack(twice, tmp_path / "rack.json")
    assert not (tmp_path / "rack.json").exists()


def test_an_unusable_file_is_set_aside_under_a_free_name(tmp_path):
    path = tmp_path / "rack.json"
    for number in (1, 2):
        path.write_bytes(b"broken %d" % number)
        aside = set_aside(path)
        assert aside.name == f"rack-unreadable-{number}.json" and aside.read_bytes() == b"broken %d" % number
        assert not path.exists()
    with pytest.raises(FormatError, match="cannot be renamed"):
        set_aside(path)


def test_the_rack_before_is_copied(tmp_path):
    path = tmp_path / "rack.json"
    assert keep_before(path) is None
    save_rack(RACK, path)
    assert keep_before(path).read_bytes() == path.read_bytes()


@pytest.mark.skipif(os.name == "nt", reason="pipes and devices with a name are for POSIX")
@pytest.mark.parametrize("place", [os.mkfifo, lambda path: path.symlink_to("/dev/zero")], ids=["pipe", "endless"])
def test_what_never_ends_is_not_read(place, tmp_path):
    path = tmp_path / "rack.json"
    place(path)
    for read in (load_rack, kept_rack, keep_before):
        with pytest.raises(FormatError, match="a device or a pipe and no file"):
            read(path)


def test_the_rack_before_is_copied_whole_or_not_at_all(tmp_path):
    path = tmp_path / "rack.json"
    path.write_bytes(b" " * 3_000_000)
    with pytest.raises(FormatError, match="far larger"):
        keep_before(path)
    assert [file.name for file in tmp_path.iterdir()] == ["rack.json"]


def test_a_link_that_leads_nowhere_is_no_free_name(tmp_path):
    path, link = tmp_path / "rack.json", tmp_path / "rack-unreadable-1.json"
    path.write_bytes(b"broken")
    link.symlink_to(tmp_path / "gone")
    assert set_aside(path).name == "rack-unreadable-2.json" and link.is_symlink()
