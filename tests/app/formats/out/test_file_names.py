"""File names made of what makers call their layouts: every system takes them, and none leads out of the folder."""

import csv
import io
import json
import os
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats import csv_out
from app.formats.csv_out import csv_text
from app.formats.file_names import MOST_BYTES, fitting, stem_of
from app.sheets import write_sheets
from app.window.demo import demo

RESERVED = {"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(10))}
"""Documentation of Windows, "Naming Files, Paths, and Namespaces"."""


@pytest.mark.parametrize(("name", "stem"), [
    ("Twelve strings", "twelve-strings"), ("Голова 12", "голова-12"), ("頭", "頭"), ("🎸", "headstock"), ("", "headstock"),
    ("a/b\\c:d", "a-b-c-d"), ("../../etc/passwd", "etc-passwd"), ("CON", "con-"), ("nul", "nul-"), ("com1", "com1-"),
    ("ＬＰＴ１", "ｌｐｔ１-"), ("com\u00b9", "com\u00b9-"), ("console", "console"), ("a.", "a"), (" . ", "headstock"),
    ("--help", "help"), ("a\0b\nc", "a-b-c"), ("\u202egpj.exe", "gpj-exe"), ("x\ud800", "x")])
def test_names_that_makers_give(name, stem):
    assert stem_of(name, "headstock") == stem


@given(st.text(st.characters(), max_size=300))
def test_any_name_makes_one_that_every_system_takes(name):
    for made in (stem_of(name, "headstock"), fitting(name)):
        assert made and len(made.encode()) <= MOST_BYTES + 1
        assert not set(made) & set('/\\:*?"<>|\0') and made.isprintable() and made.strip(" .") == made
        assert made.split(".")[0].strip().lower() not in RESERVED
        assert os.path.basename(made) == made and made not in (".", "..")
        assert fitting(made) == made


@pytest.mark.parametrize("stem", ["../outside\0", "/" + "頭" * 200])
def test_sheets_stay_in_their_folder_whatever_the_file_was_called(tmp_path, stem):
    folder = tmp_path / "in 頭 🎸 here"
    written = write_sheets(demo(), folder, stem=stem)
    assert len(written) == len(set(written)) >= 8
    assert {path.parent for path in written} == {folder}
    assert sorted(os.listdir(folder)) == sorted(path.name for path in written)
    assert os.listdir(tmp_path) == [folder.name]


@pytest.mark.parametrize("name", ["=1+1", "\0\ud800x\n  0\nLINE\n  8\nevil\n</title><script/>%%c\\P{\\H3;x}"])
def test_words_in_sheets_are_words_and_nothing_else(tmp_path, name):
    import csv
    import xml.etree.ElementTree as tree

    import ezdxf
    layout = replace(demo(), name=name, about=name)
    for path in write_sheets(layout, tmp_path, stem="head"):
        if path.suffix == ".svg":
            assert not [e for e in tree.parse(path).iter() if "script" in e.tag]
        elif path.suffix == ".dxf":
            assert "evil" not in {entity.dxf.layer for entity in ezdxf.readfile(path).modelspace()}
        elif path.suffix == ".csv":
            rows = csv.reader(path.read_text(encoding="utf-8-sig").splitlines())
            assert not [cell for row in rows for cell in row if starts_a_formula(cell)]


def starts_a_formula(cell: str) -> bool:
    try:
        float(cell)
    except ValueError:
        return cell.lstrip(" \t\r\n\ufeff\u200b\xa0").startswith(tuple("=+-@\uff1d\uff0b\uff0d\uff20\u2212"))
    return False


@pytest.mark.parametrize("word", ["=A1", "+A1", "-A1", "@A1", "\t=A1", "\r=A1", "\n=A1", " =A1", "\xa0=A1", "\uff1dA1", "\uff0bA1",
                                  "\uff0dA1", "\uff20A1", "\ufeff=A1", "\u200b=A1", "\u2212A1", "\x00=A1", "\x0b=A1"])
def test_no_cell_of_words_starts_a_formula(word):
    cell = csv_text(("a",), [(word,)]).splitlines()[1] if "\r" not in word and "\n" not in word else csv_text(("a",), [(word,)])[3:]
    assert cell.lstrip('"').startswith("'")


@pytest.mark.parametrize("sign", [",", ";"])
@pytest.mark.parametrize("other", [",", ";", "\t", "\n", "\r"])
@pytest.mark.parametrize("space", ["", " ", "\u200b"])
def test_no_formula_starts_where_a_spreadsheet_of_another_country_begins_a_cell(sign, other, space, monkeypatch):
    """It parts at a semicolon what is written with commas, or the other way round, and knows no quotes within its cells."""
    monkeypatch.setattr(csv_out, "decimal_sign", lambda: "." if sign == "," else ",")
    words = f"a note{other}{space}=HYPERLINK(1){other}{other}@SUM(1){other}+1"
    text = csv_text(("a", "b"), [("time", words)])
    naive = [cell for line in re.split(r"[\r\n]+", text) for cell in line.split(other)] if other != sign else []
    assert not [cell for cell in naive if starts_a_formula(cell.lstrip('"'))]
    (_, (first, second)) = csv.reader(io.StringIO(text, newline=""), delimiter=sign)
    assert first == "time" and second.replace("'", "") == words and not starts_a_formula(second)
    assert text.endswith('"\r\n'), "in quotes, so that a reader that parts at every sign leaves it whole"


def test_numbers_stay_numbers():
    assert csv_text(("a", "b", "c"), [(-1.5, -3, 0.25)]) == "a,b,c\r\n-1.5,-3,0.25\r\n"
    assert json.loads(csv_text(("a",), [(-1e-9,)]).splitlines()[1]) == 0
