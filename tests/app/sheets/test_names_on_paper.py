"""Names with letters beyond the English ones reach every export whole, and the file gives them back."""

import csv
import json
import re
import unicodedata
import xml.etree.ElementTree as ElementTree

import ezdxf
import pytest

from app.formats.errors import FormatError
from app.formats.headstock import decode, encode, schema_text
from app.formats.letters import printable
from app.sheets.write import write_sheets
from geometry.edits.fields import rename, set_field
from geometry.layout.parts import LETTERS
from tests.app.formats.out.pdf_reading import open_pdf
from tests.app.sheets.specimens import demo

NAMES = {"pins": "Öse größer 1", "slots": "Schlitz für Ça", "tuners": "Flügel Łódź 1"}
ON_PAPER = {name: printable(name) for name in NAMES.values()}


@pytest.fixture(scope="module")
def named():
    layout = demo()
    for group, name in NAMES.items():
        layout = rename(layout, group, getattr(layout, group)[0].id, name)
    return layout


def test_the_file_gives_them_back(named):
    data = encode(named)
    assert decode(data) == named
    assert all(name.encode() in data for name in NAMES.values()), "written as letters, not as escapes"


def test_every_export_holds_them(named, tmp_path):
    files = {path.name.removeprefix("head-"): path for path in write_sheets(named, tmp_path, stem="head", snags=())}
    pin, slot, tuner = NAMES.values()
    drawn = {entity.dxf.text for entity in ezdxf.readfile(files["template.dxf"]).query("TEXT")}
    svg = {node.text for node in ElementTree.parse(files["template.svg"]).iter() if node.tag.endswith("text")}
    for texts in (drawn, svg):
        assert any(text.startswith(f"{pin}: ") for text in texts)
        assert f"{tuner}.1" in texts
    tables = {name: path.read_text(encoding="utf-8-sig") for name, path in files.items() if name.endswith(".csv")}
    cells = {cell for text in tables.values() for row in csv.reader(text.splitlines()) for cell in row}
    assert {pin, tuner} <= cells and any(slot in cell for cell in cells)
    printed = " ".join(page.get_textpage().get_text_bounded() for page in open_pdf(files["sheets.pdf"].read_bytes()))
    assert all(ON_PAPER[name] in " ".join(printed.split()) for name in NAMES.values())


def test_every_letter_of_a_name_can_be_printed_and_is_one_character():
    letters = [chr(code) for code in range(0x3000) if re.fullmatch(f"[{LETTERS}]", chr(code))]
    assert {"ä", "Ü", "ß", "é", "ñ", "å", "ø", "ł", "č", "ş", "ő"} <= set(letters)
    for letter in letters:
        assert letter.isalpha() and len(printable(letter)) == 1 and printable(letter) != "?", letter
        assert unicodedata.normalize("NFC", letter) == letter


def test_an_accent_typed_by_itself_joins_its_letter():
    layout = demo()
    typed = unicodedata.normalize("NFD", "Flügel")
    assert typed != "Flügel"
    made = set_field(layout, ("pins", layout.pins[0].id, "id"), typed)
    assert made.pins[0].id == "Flügel"


@pytest.mark.parametrize("name", ["a\u202eb", "a\u200bb", "a\u0301b", "крыло", "翼", "a/b", "a×b", "\u0308a", "ﬁ", "a\u2028", "ſ"])
def test_a_file_with_another_sign_in_a_name_is_refused_in_words(named, name):
    data = encode(named).replace(NAMES["pins"].encode(), name.encode())
    with pytest.raises(FormatError, match=r"Expected a name: a letter or a digit.* \(at \$\.pins") as caught:
        decode(data)
    assert "regex" not in str(caught.value)


def test_the_schema_names_the_letters():
    names = json.loads(schema_text())["$defs"]["Pin"]["properties"]["id"]
    assert names["pattern"] == f"^[{LETTERS}0-9][{LETTERS}0-9 _.-]*$(?!\\n)"
