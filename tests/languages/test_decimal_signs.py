"""In German numbers have a comma before their decimals, wherever they are read; and every language reads both signs."""

import ast
import csv
import io
import re
from datetime import datetime
from decimal import Decimal
from pathlib import Path

import pytest

from app.formats.csv_out import csv_text
from app.languages.catalogue import speak
from geometry import saying
from geometry.book.edits import read_amount, read_minutes
from geometry.book.money import money_words
from geometry.checks.said import length, read
from geometry.lengths import area, at_least, exact, mm, speaking
from geometry.saying import number, number_list, say
from geometry.units import format_angle, format_close, format_down, format_length, format_size, parse_angle, parse_length
from tests.languages.collect import ROOT, sources
from tests.languages.decimal_signs import pointed
from tests.languages.test_said import run


@pytest.fixture
def german():
    speak("de")
    yield
    saying.use(None)


def test_a_german_window_and_german_sheets_have_no_decimal_point(tmp_path: Path) -> None:
    *found, commas = run("-m tests.languages.decimal_signs", XDG_CONFIG_HOME=str(tmp_path)).splitlines()
    assert found == [] and int(commas) > 500, "so many texts with a comma were looked at"


@pytest.mark.parametrize(("text", "found"), [
    ("12.5 mm", ["12.5"]), ("0,5 und .75", [".75"]), ("1.2.3", []), ("peg 1.2 bohren, 3.5 tief", ["3.5"]), ("Ende bei 4.", [])])
def test_the_walk_finds_a_point(text, found):
    assert pointed(text, ["peg 1"]) == found


def test_what_is_told_has_the_sign_of_the_language(german):
    assert [format_length(12.5, mark=True), format_close(12.5, "in"), format_down(12.59), format_size(88.5, 190.25, decimals=2)] == [
        "12,5 mm", "0,492", "12,5", "88,5 x 190,25 mm"]
    assert [format_length(41.275, "in64", mark=True), format_angle(0.1), format_length(-0.001)] == ['1 5/8"', "5,7°", "0"]
    assert [mm(6.35), exact(1.2345), at_least(1.001), area(2.5)] == ["6,35 mm", "1,234 mm", "1,01 mm", "2,5 mm²"]
    with speaking("in"):
        assert area(645.16) == "1,0000 Quadratzoll"
    assert read(f"{length(2.449, 2, down=True)} mm") == "2,44 mm" and read(f"{length(2.4)} mm", "in") == '0,094"'
    assert [number(1234.5, ",.1f"), number_list(["6", "12,7"]), money_words(Decimal("12.5"), "EUR")] == [
        "1\N{NO-BREAK SPACE}234,5", "6; 12,7", "12,50 EUR"]
    assert say("{a:.1f} of {b}, {n:,} times", a=1.25, b=0.5, n=12000) == "1,2 of 0,5, 12\N{NO-BREAK SPACE}000 times"


def test_english_is_as_it_was():
    assert [format_length(12.5, mark=True), number(1234.5, ",.1f"), number_list(["6", "12.7"])] == ["12.5 mm", "1,234.5", "6, 12.7"]
    assert say("{a:.1f} of {b}, {n:,} times", a=1.25, b=0.5, n=12000) == "1.2 of 0.5, 12,000 times"


@pytest.mark.parametrize("language", ["en", "de"])
def test_every_field_reads_both_signs_in_every_language(language):
    speak(language)
    try:
        assert [parse_length(text) for text in ("12.5", "12,5", " 12,5mm", ",5", '1/2"', "1 1/2 Zoll", '1,5" + 2,5 mm')] == pytest.approx(
            [12.5, 12.5, 12.5, 0.5, 12.7, 38.1, 40.6])
        assert parse_length("1,234", "in") == pytest.approx(1.234 * 25.4) and parse_length("1.234") == 1.234
        assert parse_angle("3,5°") == parse_angle("3.5 Grad")
        # What was told is read as what it was.
        for value in (0.25, 12.5, 123.45):
            assert parse_length(format_length(value, mark=True)) == value
        assert parse_length(format_length(31.75, "in", mark=True)) == pytest.approx(31.75)
    finally:
        saying.use(None)


@pytest.mark.parametrize("text", ["1,234.5", "1.234,5", "1,234,567", "1.234.567"])
def test_a_length_with_thousands_set_apart_is_refused(text):
    with pytest.raises(ValueError, match="is not a length"):
        parse_length(text)


def test_minutes_and_money_that_may_be_read_two_ways_are_refused():
    for reader, text in ((read_minutes, "1,234"), (read_minutes, "1.200 min"), (read_amount, "1,234"), (read_amount, "12.500")):
        with pytest.raises(ValueError, match="two ways"):
            reader(text)
    assert [read_minutes("12,5"), read_minutes("1,125 h"), read_minutes("0,125")] == [12.5, 67.5, 0.125]


def numbers_of(text: str) -> list[list[str]]:
    """The cells of a table, parted as its first line is."""
    return list(csv.reader(io.StringIO(text, newline=""), delimiter=";" if ";" in text.partition("\n")[0] else ","))


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_table_is_read_back_in_either_language(language):
    speak(language)
    try:
        text = csv_text(("a", "b", "c"), [(1234.5, Decimal("0.10"), "one, two; three"), (-0.25, 3, None)])
    finally:
        saying.use(None)
    head, first, second = numbers_of(text)
    assert head == ["a", "b", "c"] and first[2] == "one, two; three"
    assert [float(cell.replace(",", ".")) for cell in (*first[:2], *second[:2])] == [1234.5, 0.1, -0.25, 3.0]
    assert text.startswith("a;b;c\r\n1234,5;0,10;" if language == "de" else "a,b,c\r\n1234.5,0.10,")


MACHINES = {
    "app/formats/layer_names.py": "names of layers in a DXF",
    "app/formats/csv_out.py": "translated at once, with the separator", "app/formats/svg_out.py": "SVG",
    "app/formats/pdf_out.py": "PDF", "app/formats/pdf_words.py": "PDF", "app/formats/drawing_in/worker.py": "a pipe",
    "geometry/layout/generic.py": "names of drills, which are kept in files",
    "app/window/dialogs/libraries.py": "read by whoever mends the program",
}
DECIMALS = re.compile(r"[1-9]f|f$|g$|e$")
"""A format of numbers with decimals; `.0f` has none."""


def written_with_a_point(tree: ast.AST):
    """Lines of f-strings that hold a number with decimals, but where they are taken apart at once or handed to units._trim."""
    pointed = [node for node in ast.walk(tree) if isinstance(node, ast.FormattedValue) and _has_decimals(node)]
    inside = {id(child) for node in ast.walk(tree) for child in ast.walk(node)
              if isinstance(node, ast.Attribute) or isinstance(node, ast.Call) and getattr(node.func, "id", "") == "_trim"} if pointed else ()
    return [node.lineno for node in pointed if id(node) not in inside]


def _has_decimals(value: ast.FormattedValue) -> bool:
    spec = "".join(part.value if isinstance(part, ast.Constant) else "1" for part in getattr(value.format_spec, "values", ()))
    return bool(DECIMALS.search(spec)) and not spec.endswith(".0f")


def test_no_number_for_a_maker_is_written_past_the_one_place_that_knows_its_sign() -> None:
    """A number in an f-string has a point in every language: `number`, a field of `say`, or geometry/units tells it."""
    bare = []
    for file in sources():
        name = file.relative_to(ROOT).as_posix()
        if name not in MACHINES:
            bare += [f"{name}:{line}" for line in written_with_a_point(ast.parse(file.read_text(encoding="utf-8")))]
    assert bare == []


def test_it_sees_one() -> None:
    seen = ast.parse('f"{a:.1f}"\nf"{a:g} mm"\nf"{a:.{n}f}"\nf"{a:.0f}"\nf"{a:.2f}".rstrip("0")\nsay("{a:.1f}", a=1)')
    assert written_with_a_point(seen) == [1, 2, 3]


def test_sizes_side_by_side_are_told_apart(german):
    """`8,8 x 8 tief, 6,5 durch` could be read as 8 and 6 and 5: each stands on a line of its own."""
    from geometry.drawing.hole_words import bores_words
    from geometry.solids import holes
    from tests.app.sheets.specimens import demo

    words = next(bores_words(hole.of, hole.drillings) for hole in holes(demo()) if hole.of == "treble face 1" and len(hole.drillings) == 2)
    assert words == ["treble face 1", "8,8 x 8 tief", "6,5 durch"]


def test_a_day_is_written_as_the_language_does(german):
    from app.window.running.recovery import written_down

    assert written_down(datetime(2026, 3, 7, 16, 5)) == ["Letzte Änderung aufgeschrieben: 07.03.2026, 16:05:00"]


def test_what_was_typed_stands_in_the_quotation_marks_of_the_language(german):
    with pytest.raises(ValueError, match="^„eine Handbreit“ ist keine Länge"):
        parse_length("eine Handbreit", "mm")
