"""Layout files as bad disks, text tools, merges and spite leave them: one sentence each, with its place."""

import json
import os
import re
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats import headstock
from app.formats.errors import FormatError
from app.languages.catalogue import speak
from app.window.demo import demo
from geometry import saying
from geometry.wanted import wanted
from tests.spent import within

SAMPLE = Path(__file__).parents[3] / "samples" / "twelve-string-mixed.headstock.json"
TEXT = SAMPLE.read_text(encoding="utf-8")
PLAIN = json.loads(TEXT)
POSIX = pytest.mark.skipif(sys.platform == "win32", reason="kinds of files that POSIX systems have")


def refusal(data: bytes) -> str:
    """The one sentence with which the bytes are refused."""
    with pytest.raises(FormatError) as caught:
        headstock.decode(data, "head.json")
    text = str(caught.value)
    assert text.startswith("head.json ") and text.endswith(".") and text.isprintable() and len(text) < 600, text
    assert not re.search(r"Traceback|Error|object at 0x|msgspec|Expected `|Invalid |Object |malformed", text), text
    return text


def with_top(**change) -> bytes:
    return json.dumps(PLAIN | change).encode()


def with_thickness(number: str) -> bytes:
    return TEXT.replace('"thickness": 16', f'"thickness": {number}').encode()


LINE = TEXT[:TEXT.index('"thickness": 16')].count("\n") + 1
BROKEN = {
    "nothing": (b"", "is empty"),
    "blanks": (b" \n\t", "is empty"),
    "NUL bytes": (bytes(5000), "not text in UTF-8"),
    "other bytes": (bytes(range(256)) * 9, "not text in UTF-8"),
    "UTF-16": (TEXT.encode("utf-16"), "saved as UTF-16"),
    "UTF-16 without its mark": (TEXT.encode("utf-16-le"), "not text in UTF-8"),
    "UTF-32": (TEXT.encode("utf-32"), "saved as UTF-32"),
    "Latin-1": (TEXT.replace('"name": "', '"name": "gr\u00fcn ').encode("latin-1"), "text in UTF-8"),
    "a NUL behind it": (TEXT.encode() + b"\0", rf"line {TEXT.count(chr(10)) + 1}, column"),
    "a layout behind it": (TEXT.encode() * 2, rf"line {TEXT.count(chr(10)) + 1}, column"),
    "a comma too many": (TEXT.replace("\n}", ",\n}").encode(), "a comma too many"),
    "NaN": (with_thickness("NaN"), f"line {LINE}, column"),
    "Infinity": (with_thickness("-Infinity"), f"line {LINE}, column"),
    "1e400": (with_thickness("1e400"), r"\$\.blank\.thickness"),
    "1e300": (with_thickness("1e300"), r"\$\.blank\.thickness"),
    "minus zero": (with_thickness("-0.0"), r"\$\.blank\.thickness"),
    "a number of 5000 digits": (with_thickness("9" * 5000), r"\$\.blank\.thickness"),
    "a number in quotes": (with_thickness('"16"'), r"\$\.blank\.thickness"),
    "hexadecimal": (with_thickness("0x10"), f"line {LINE}, column"),
    "half a character": (with_top(name="a\ud800b"), "line 1, column"),
    "lists in lists": (b"[" * 1_000_000, "a record in braces"),
    "records in records": (b'{"a":' * 200_000, "nested too deeply"),
    "lists in a field": (b'{"pegwright":1,"name":' + b"[" * 200_000, "breaks off|nested too deeply"),
    "no record": (b"[1, 2]", "a record in braces"),
    "a word": (b'"layout"', "a record in braces"),
    "null": (b"null", "a record in braces"),
    "no version": (b"{}", "no \"pegwright\" version"),
    "another program's": (b'{"version": "1.2.0", "shapes": []}', "no \"pegwright\" version"),
    "a version in words": (with_top(pegwright="1"), r"\$\.pegwright"),
    "a version and a half": (with_top(pegwright=1.5), r"\$\.pegwright"),
    "version 0": (with_top(pegwright=0), "is damaged: there has never been"),
    "a version below zero": (with_top(pegwright=-3), "is damaged: there has never been"),
    "a version of 400 digits": (with_top(pegwright=10**399), "is damaged: there has never been"),
    "an unknown field": (with_top(colour="red"), "Unknown field `colour`"),
    "an unknown field of a tuner": (with_top(tuners=[PLAIN["tuners"][0] | {"brand": 1}]), r"`brand` \(at \$\.tuners\[0\]\)"),
    "a field of 100,000 letters": (with_top(**{"k" * 100_000: 1}), "Unknown field `kkk"),
    "a field with a line break": (with_top(**{"a\n\x1b[31mb": 1}), "Unknown field `a "),
    "a field missing": (json.dumps({k: v for k, v in PLAIN.items() if k != "outline"}).encode(), "`outline`"),
    "a field twice": (TEXT.replace('"thickness": 16', '"thickness": 12, "thickness": 16').encode(), r"twice, at \$\.blank\.thickness"),
    "a field twice in a list": (re.sub(r'("id": "treble side 1")', r'\1, \1', TEXT, count=1).encode(), r"twice, at \$\.tuners\[\d+\]\.id"),
    "two versions": (b'{"pegwright": 1, "pegwright": 2}', "version 2"),
    "a name of 100,000 letters": (with_top(name="x" * 100_000), r"\$\.name"),
    "an id with a line break": (with_top(tuners=[PLAIN["tuners"][0] | {"id": "a\nb"}]), r"\$\.tuners\[0\]\.id"),
    "a picture that is a number": (with_top(picture={"jpeg": 1}), r"a picture \(JPEG\) in base64 \(at \$\.picture\.jpeg\)"),
    "a picture that is no base64": (with_top(picture={"jpeg": "%%"}), r"a picture \(JPEG\) in base64 \(at \$\.picture\.jpeg\)"),
    "a picture that is too large": (with_top(picture={"jpeg": "A" * 4_000_004}), r"a picture of at most 3 MB \(at \$\.picture\.jpeg\)"),
    "the same id twice": (with_top(pins=[PLAIN["pins"][0]] * 2), "more than once"),
    "a pattern that is not there": (with_top(tuners=[PLAIN["tuners"][0] | {"pattern": "none"}]), r"\$\.tuners\[0\]"),
    "an outline of one node": (with_top(outline={"nodes": PLAIN["outline"]["nodes"][:1]}), r"\$\.outline"),
    "hardware without a bore": (with_top(patterns=[PLAIN["patterns"][0] | {"bores": []}]), r"a list of at least 1 entry \(at \$\.patterns\[0\]\.bores"),
    "200 MB of blanks": (b" " * 200_000_000 + b"{}", "200 MB"),
}


@pytest.mark.parametrize("name", BROKEN)
def test_each_is_one_sentence_with_its_place(name):
    data, words = BROKEN[name]
    with within(2):
        found = refusal(data)
    assert re.search(words, found), found


def test_each_is_told_in_the_language_in_use():
    speak("de")
    try:
        for name, (data, _words) in BROKEN.items():
            found = refusal(data)
            assert not re.search(r"\b(Expected|Unknown|Field|must|line|column|missing|sound|It|at)\b", found), (name, found)
    finally:
        saying.use(None)


def test_a_limit_is_written_as_the_language_does():
    limit = "Expected `float` <= 1.0526325789473683"
    assert wanted(limit) == "Expected a number of at most 1.05263"
    speak("de")
    try:
        assert wanted(limit) == "Erwartet wird eine Zahl von höchstens 1,05263"
        assert wanted("Expected `float` > 0.0").endswith(" 0") and wanted("Expected `int` <= 100000").endswith(" 100000")
    finally:
        saying.use(None)


def test_a_newer_layout_is_refused_with_the_way_on_and_stays_as_it_is(tmp_path):
    path = tmp_path / "head.headstock.json"
    data = with_top(pegwright=headstock.FORMAT + 1, brand_new=[1])
    path.write_bytes(data)
    with pytest.raises(FormatError, match=f"version {headstock.FORMAT + 1}; .*version {headstock.FORMAT}. Update Pegwright"):
        headstock.read(path)
    assert path.read_bytes() == data and os.listdir(tmp_path) == [path.name]


def test_the_mark_of_some_editors_before_the_text_is_no_matter():
    assert headstock.decode(b"\xef\xbb\xbf" + TEXT.encode()) == headstock.decode(TEXT.encode())


def test_line_ends_of_another_system_are_no_matter():
    assert headstock.decode(TEXT.replace("\n", "\r\n").encode()) == headstock.decode(TEXT.encode())


def test_nothing_is_saved_that_could_not_be_opened_again(tmp_path, monkeypatch):
    file = tmp_path / "head.headstock.json"
    headstock.write(demo(), file)
    before = file.read_bytes()
    monkeypatch.setattr(headstock, "LARGEST_BYTES", len(before))
    headstock.write(demo(), file)
    with pytest.raises(FormatError, match="can be opened again"):
        headstock.write(replace(demo(), about=demo().about + "more"), file)
    assert file.read_bytes() == before


@pytest.mark.parametrize("start", range(7))
def test_cut_off_at_any_byte(start):
    data = TEXT.encode()
    for end in range(1 + start, len(data.rstrip()), 7 * 23):
        refusal(data[:end])


def places(value: object, path: tuple = ()):
    """Every place in a file, as keys and indexes."""
    if path:
        yield path
    items = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, item in items:
        yield from places(item, (*path, key))


PLACES = [place for place in places(PLAIN) if place[0] not in ("about", "notes")]


@pytest.mark.parametrize("wrong", [True, {"a": 1}, [[]], 10**30, -1e308], ids=repr)
def test_a_wrong_type_at_any_depth_is_named_with_its_place(wrong):
    """Every tenth place of the file for each wrong value; a place that takes it stays a layout that can be saved."""
    for place in PLACES[PLACES.index(("blank",))::9]:
        *way, last = place
        spoiled = json.loads(TEXT)
        inner = spoiled
        for key in way:
            inner = inner[key]
        if inner[last] == wrong:
            continue
        inner[last] = wrong
        data = json.dumps(spoiled).encode()
        try:
            layout = headstock.decode(data)
        except FormatError:
            named = "$" + "".join(f"[{key}]" if isinstance(key, int) else f".{key}" for key in place)
            said = re.findall(r"\$[\w.\[\]]*", refusal(data))
            assert said and (named.startswith(said[0].rstrip(".")) or said[0].startswith(named)), (named, refusal(data))
        else:
            assert headstock.decode(headstock.encode(layout)) == layout


@POSIX
@pytest.mark.parametrize(("make", "words"), [
    (lambda path: path.mkdir(), "folder"), (os.mkfifo, "pipe"), (lambda path: path.symlink_to("/dev/zero"), "device"),
    (lambda path: path.symlink_to(path), "."), (lambda path: None, "it is not there"),
    (lambda path: path.symlink_to("nowhere"), "it is not there")],
    ids=["a folder", "a pipe", "a device", "a link to itself", "nothing", "a link to nothing"])
def test_what_is_no_file_is_said_at_once(tmp_path, make, words):
    path = tmp_path / "head.headstock.json"
    make(path)
    with pytest.raises(FormatError, match=f"cannot be read: .*{words}"):
        headstock.read(path)


@POSIX
def test_a_file_without_the_right_to_read_it_is_said(tmp_path, monkeypatch):
    path = tmp_path / "head.headstock.json"
    path.write_bytes(TEXT.encode())
    path.chmod(0)
    if os.access(path, os.R_OK):  # whoever may do everything is refused by the system's own words instead
        def refuses(*_):
            raise PermissionError(13, "Permission denied")
        monkeypatch.setattr(os, "open", refuses)
    with pytest.raises(FormatError, match="cannot be read: you have no right to read it"):
        headstock.read(path)
