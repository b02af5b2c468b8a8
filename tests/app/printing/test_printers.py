"""The file of the maker's printers: kept, changed, forgotten, and never replaced when it cannot be read."""

import json
import sys

import pytest

from app.formats.errors import FormatError
from app.formats.saving import before
from app.printing.correction import Correction
from app.printing.printers import correction_for, decode, keep_correction, printers_path

ONE, TWO = Correction(1.004, 0.991), Correction(0.998, 1.01)


@pytest.fixture
def file(tmp_path):
    return tmp_path / "settings" / "printers.json"


def test_nothing_is_known_at_first(file):
    assert correction_for("shop", "A4", file) is None


def test_a_correction_is_kept_for_its_printer_and_its_paper(file):
    keep_correction("shop", "A4", ONE, file)
    keep_correction("shop", "A3", TWO, file)
    assert correction_for("shop", "A4", file) == ONE and correction_for("shop", "A3", file) == TWO
    assert correction_for("shop", "Letter", file) is None and correction_for("other", "A4", file) is None


def test_a_later_one_takes_its_place(file):
    keep_correction("shop", "A4", ONE, file)
    keep_correction("shop", "A4", TWO, file)
    assert correction_for("shop", "A4", file) == TWO
    assert correction_for("shop", "A4", before(file)) == ONE, "what a file that is damaged later can be mended with"
    assert len(json.loads(file.read_text())["printers"]) == 1


def test_it_can_be_forgotten(file):
    keep_correction("shop", "A4", ONE, file)
    keep_correction("shop", "A4", None, file)
    assert correction_for("shop", "A4", file) is None


def test_the_place_is_the_platforms(file):
    assert printers_path().name == "printers.json" and "pegwright" in str(printers_path().parent).lower()


@pytest.mark.parametrize(("text", "says"), [
    ("", "is empty"),
    ("{", "cannot be used"),
    ("[]", "cannot be used"),
    ("{}", "is not a list of printers"),
    ('{"pegwright_printers": 9}', "of version 9; this program reads version 1"),
    ('{"pegwright_printers": 1, "extra": 1}', "Unknown field"),
    ('{"pegwright_printers": 1, "printers": [{"printer": "p", "paper": "A4", "across": 1.2, "along": 1.0}]}', r"\$.printers\[0\].across"),
    ('{"pegwright_printers": 1, "printers": [{"printer": "p", "paper": "A9", "across": 1.0, "along": 1.0}]}', r"\$.printers\[0\].paper"),
    (json.dumps({"pegwright_printers": 1, "printers": [{"printer": "p", "paper": "A4", "across": across, "along": 1.0} for across in (1.0, 1.01)]}),
     "It has two corrections of p for A4: keep the one that is right"),
    ('{"pegwright_printers": 1, "printers": [{"printer": "", "paper": "A4", "across": 1.0, "along": 1.0}]}', r"\$.printers\[0\].printer"),
])
def test_a_file_that_cannot_be_used_is_said_in_a_sentence(text, says, file):
    file.parent.mkdir()
    file.write_text(text)
    for act in (lambda: correction_for("p", "A4", file), lambda: keep_correction("p", "A4", ONE, file)):
        with pytest.raises(FormatError, match=says):
            act()
    assert file.read_text() == text


def test_a_file_of_any_size_is_not_swallowed(file):
    with pytest.raises(FormatError, match="far larger"):
        decode(b"x" * 1_000_001)


def test_a_name_that_a_file_cannot_hold_is_refused_before_anything_is_written(file):
    with pytest.raises(FormatError, match="printer"):
        keep_correction("p" * 500, "A4", ONE, file)
    assert not file.exists()


@pytest.mark.skipif(sys.platform == "win32", reason="folders in the way are told apart from files there")
def test_a_file_in_the_place_of_the_folder_holds_no_corrections(tmp_path):
    (tmp_path / "folder").write_text("a file")
    assert correction_for("Mine", "A4", tmp_path / "folder" / "printers.json") is None


def test_a_folder_that_cannot_be_made_is_said(tmp_path):
    (tmp_path / "taken").write_text("x")
    with pytest.raises(FormatError, match="cannot be"):
        keep_correction("p", "A4", ONE, tmp_path / "taken" / "printers.json")
