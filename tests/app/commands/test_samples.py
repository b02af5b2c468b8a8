"""Every sample goes through the commands that a maker would use on it."""

import csv
import json
import math
import shutil
from pathlib import Path

import pytest
from pypdf import PdfReader

from app.commands.arguments import parse
from app.commands.main import run
from app.formats import headstock
from app.setup.places import CHECKOUT
from geometry.checks import check
from geometry.layout import loop_path
from tests.samples.test_samples import DELIBERATE, stem

LAYOUTS = sorted((CHECKOUT / "samples").glob("*.headstock.json"))
DRAWINGS = sorted(file for file in (CHECKOUT / "samples" / "outlines").iterdir() if file.suffix in (".dxf", ".svg"))


def named(path: Path) -> str:
    return path.name


def told(capsys: pytest.CaptureFixture[str], *words: str | Path) -> tuple[int, str]:
    """The exit code and output of a command that must have nothing to complain about."""
    code = run(parse([str(word) for word in words]))
    out, err = capsys.readouterr()
    assert err == ""
    return code, out


@pytest.mark.parametrize("file", LAYOUTS, ids=named)
def test_a_sample_layout_is_checked_and_nothing_spoils_the_work_but_on_purpose(
    file: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, out = told(capsys, "check", file, "--json")
    report = json.loads(out)
    spoils = any(snag["grade"] == "spoils the work" for snag in report["snags"])
    assert code == (1 if spoils else 0)
    assert not spoils or stem(file) in DELIBERATE
    assert report["counts"]["holes"] > 0
    assert len(report["holes"]) == report["counts"]["drilling"]
    for hole in report["holes"] + report["pins"]:
        assert math.isclose(math.hypot(*hole["direction"]), 1, abs_tol=1e-9)
        assert hole["diameter"] > 0
        assert hole["depth"] > 0
    for snag in report["snags"]:
        assert snag["grade"] in ("spoils the work", "tight", "note")
        assert snag["between"]
        assert snag["text"].endswith(".")
    again, text = told(capsys, "check", file)
    assert again == code
    assert text.splitlines()[0] == headstock.read(file).name


def test_the_twelve_string_sample_has_the_counts_of_its_hardware(capsys: pytest.CaptureFixture[str]) -> None:
    """Six tuners each way, each with a post bore and two screws, and six bushings: common practice, no source."""
    _, out = told(capsys, "check", CHECKOUT / "samples" / "twelve-string-mixed.headstock.json", "--json")
    assert json.loads(out)["counts"] == {"holes": 36, "counterbores": 6, "drilling": 42, "pins": 2}


def test_a_layout_that_spoils_the_work_ends_with_1_and_a_warning_on_its_sheets(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    layout = json.loads((CHECKOUT / "samples" / "twelve-string-mixed.headstock.json").read_text(encoding="utf-8"))
    layout["blank"]["thickness"] = 7
    file = tmp_path / "thin.headstock.json"
    file.write_text(json.dumps(layout), encoding="utf-8")
    code, out = told(capsys, "check", file, "--json")
    assert code == 1
    assert json.loads(out)["snags"][0]["grade"] == "spoils the work"
    assert run(parse(["sheets", str(file), "--out", str(tmp_path / "out")])) == 0
    said = capsys.readouterr().err
    assert said.startswith("Do not cut from these sheets yet: something spoils the work, see ")
    assert said.count("\n") == 1


@pytest.mark.parametrize("file", LAYOUTS, ids=named)
def test_a_sample_layout_is_written_to_sheets(file: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    words = ["sheets", file, "--out", tmp_path / "new folder", "--paper", "Letter"]
    code = run(parse([str(word) for word in words]))
    out, err = capsys.readouterr()
    assert code == 0
    assert err.startswith("Do not cut from these sheets yet") if check(headstock.read(file)).spoils else err == ""
    written = [Path(line) for line in out.splitlines()]
    assert sorted(path.name for path in written) == sorted(path.name for path in (tmp_path / "new folder").iterdir())
    assert {path.suffix for path in written} >= {".dxf", ".svg", ".pdf", ".csv"}
    table = next(path for path in written if path.suffix == ".csv")
    with table.open(encoding="utf-8-sig", newline="") as lines:
        assert len(list(csv.reader(lines))) > len(headstock.read(file).tuners)


def test_a_back_paper_of_an_earlier_plan_is_told_of_beside_the_sheets(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    old = tmp_path / "slotted-three-a-side-back.svg"
    old.write_text("an earlier one", encoding="utf-8")
    assert run(parse(["sheets", str(CHECKOUT / "samples" / "slotted-three-a-side.headstock.json"), "--out", str(tmp_path)])) == 0
    out, err = capsys.readouterr()
    assert old.name in err and old.name not in out and old.read_text(encoding="utf-8") == "an earlier one"


@pytest.mark.parametrize(("words", "size"), [([], (210, 297)), (["--unit", "in"], (215.9, 279.4)), (["--unit", "in64"], (215.9, 279.4)),
                                             (["--unit", "in", "--paper", "A4"], (210, 297))])
def test_without_a_paper_it_is_the_usual_one_of_the_unit(words: list[str], size: tuple[float, float], tmp_path: Path,
                                                         capsys: pytest.CaptureFixture[str]) -> None:
    """A4 of ISO 216, Letter of 8.5 x 11 inches."""
    told(capsys, "sheets", LAYOUTS[0], "--out", tmp_path, *words)
    pdf = next(path for path in tmp_path.iterdir() if path.suffix == ".pdf" and "sheets" in path.name)
    page = PdfReader(pdf).pages[0].mediabox
    assert sorted(float(side) * 25.4 / 72 for side in (page.width, page.height)) == pytest.approx(size, abs=0.01)


@pytest.mark.parametrize("drawing", DRAWINGS, ids=named)
def test_a_sample_drawing_becomes_a_layout(drawing: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out_file = tmp_path / "new.headstock.json"
    code, out = told(capsys, "outline", drawing, "--out", out_file, "--json")
    report = json.loads(out)
    assert code == 0
    outlines = [loop for loop in report["loops"] if loop["role"] == "outline"]
    assert len(outlines) == 1
    layout = headstock.read(out_file)
    assert layout.name == "new"
    assert math.isclose(loop_path(layout.outline).area, outlines[0]["area_mm2"], rel_tol=1e-9)
    assert len(layout.slots) == sum(loop["role"] == "slot" for loop in report["loops"])
    assert len(layout.holes) == sum(loop["role"] == "hole" for loop in report["loops"])
    code, _ = told(capsys, "check", out_file)
    assert code == 0


def test_a_drawing_is_told_in_words_too(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out = told(
        capsys,
        "outline",
        CHECKOUT / "samples" / "outlines" / "head-in-inches.dxf",
        "--out",
        tmp_path / "new.headstock.json",
    )
    assert code == 0
    assert "one unit of the drawing is 1 inch, as the drawing says." in out.splitlines()[0]
    assert out.splitlines()[-1] == f"Written to {tmp_path / 'new.headstock.json'}."


def test_a_page_in_inches_with_units_of_a_millimetre_is_told_as_that(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    drawing = tmp_path / "head.svg"
    drawing.write_text('<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="8in" viewBox="0 0 101.6 203.2">'
                       '<path d="M30,180 h43 L90,140 L80,20 H23 L13,140 Z"/></svg>')
    code, out = told(capsys, "outline", drawing, "--out", tmp_path / "new.headstock.json")
    assert code == 0 and "Outline 77.00 x 160.00 mm; one unit of the drawing is 1 mm, as the drawing says." in out


@pytest.mark.parametrize(("unit", "told_as"), [("1/90 inch", "1/90 inch"), ("px", "1 px")])
def test_a_unit_that_is_a_fraction_is_not_told_as_one_and_a_fraction(unit: str, told_as: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    drawing = tmp_path / "head.svg"
    drawing.write_text('<svg xmlns="http://www.w3.org/2000/svg"><path d="M106,638 h152 L319,496 L283,71 H81 L46,496 Z"/></svg>')
    code, out = told(capsys, "outline", drawing, "--out", tmp_path / "new.headstock.json", "--unit", unit)
    assert code == 0 and f"one unit of the drawing is {told_as}, as you said." in out


def test_pockets_of_a_template_are_told_and_never_counted_as_slots(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Eight tuners through the face and a truss rod's pocket, as the sample says: no slot in it."""
    told(capsys, "sheets", CHECKOUT / "samples" / "eight-strings.headstock.json", "--out", tmp_path)
    made = tmp_path / "again.headstock.json"
    code, out = told(capsys, "outline", tmp_path / "eight-strings-template.dxf", "--out", made)
    assert code == 0
    assert "Slots: 0. " in out and "Pockets that are there: 1. Holes that are there: 0." in out and "tells no depth of it" not in out
    pocket, = headstock.read(CHECKOUT / "samples" / "eight-strings.headstock.json").slots
    assert [(slot.there, slot.depth) for slot in headstock.read(made).slots] == [(True, pocket.depth)] and pocket.depth


def test_a_drawing_that_is_none_leaves_nothing_behind(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    drawing = tmp_path / "notes.svg"
    drawing.write_text("not a drawing", encoding="utf-8")
    assert run(parse(["outline", str(drawing), "--out", str(tmp_path / "new.headstock.json")])) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err.count("\n") == 1
    assert not (tmp_path / "new.headstock.json").exists()


def test_a_place_that_cannot_be_written_is_named(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    drawing = CHECKOUT / "samples" / "outlines" / "head-in-inches.dxf"
    assert run(parse(["outline", str(drawing), "--out", str(tmp_path / "nowhere" / "new.headstock.json")])) == 2
    assert "new.headstock.json cannot be written" in capsys.readouterr().err


def test_a_drawing_is_not_written_over_by_the_layout_made_from_it(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    drawing = Path(shutil.copy(CHECKOUT / "samples" / "outlines" / "head-in-millimetres.svg", tmp_path / "own.svg"))
    before = drawing.read_bytes()
    (tmp_path / "again.svg").symlink_to(drawing)
    for name in ("own.svg", "again.svg"):
        assert run(parse(["outline", str(drawing), "--out", str(tmp_path / name)])) == 2
        assert capsys.readouterr().err == f"{tmp_path / name} is the drawing itself: name another file for the layout.\n"
    assert drawing.read_bytes() == before and len(list(tmp_path.iterdir())) == 2
