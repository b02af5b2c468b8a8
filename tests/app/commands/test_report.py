"""What `check` says, as data and as text."""

import json
from pathlib import Path

from msgspec.structs import replace

from app.commands import check as check_command
from app.commands.arguments import parse
from app.commands.main import run
from app.commands.report import check_lines, check_report, summary
from app.commands.terminal import shown
from app.formats import headstock
from app.window.demo import demo
from geometry.checks.moves import Slide
from geometry.checks.snags import CheckResult, Counts, Snag
from geometry.solids import Drilling, Hole

SPOILING = Snag(
    kind="bore to bore",
    grade="spoils the work",
    between=("treble 1", "treble 2"),
    where=(12.3456789, -80.0, 8.0),
    measured=-0.5,
    needed=3.0,
    said="Two bores meet.",
    advice="Choose smaller hardware.",
    cured="Slide treble 1 by 3.5 mm to the tip.",
    move=Slide("treble 1", 3.5),
)
NOTE = Snag("skates", "note", ("bass 1",), (0.0, 0.0, 0.0), None, None, "A drill may skate.", "", "deg")


def drilling(id: str, role: str, operation: str, diameter: float) -> Drilling:
    return Drilling(
        id=id,
        hole=id.rpartition(".")[0],
        of="treble 1",
        role=role,
        operation=operation,
        diameter=diameter,
        start=(10.0, 20.0, -0.0),
        direction=(0.0, 0.0, 1.0),
        depth=16.0,
        through=True,
        surface="face",
        drill="brad",
        mark=(10.0, 20.0, 0.0),
        stop=16.0,
    )


RESULT = CheckResult(
    snags=(SPOILING, NOTE),
    holes=(
        Hole(
            "t.1",
            "treble 1",
            (drilling("t.1.1", "counterbore", "counterbore", 12.0), drilling("t.1.2", "post", "post bore", 9.0)),
        ),
        Hole("p", "p", (drilling("p.1", "locating", "locating pin hole", 6.0),)),
    ),
    counts=Counts(holes=1, counterbores=1, drilling=2, pins=1),
)


def test_the_report_has_what_the_command_promises() -> None:
    report = json.loads(json.dumps(check_report(RESULT), allow_nan=False))
    assert report["counts"] == {"holes": 1, "counterbores": 1, "drilling": 2, "pins": 1}
    assert report["snags"][0] == {
        "kind": "bore to bore",
        "grade": "spoils the work",
        "between": ["treble 1", "treble 2"],
        "where": [12.345679, -80.0, 8.0],
        "measured": -0.5,
        "needed": 3.0,
        "unit": "mm",
        "text": "Two bores meet.",
        "cure": "Slide treble 1 by 3.5 mm to the tip.",
        "move": {"what": "slide", "of": "treble 1", "by": 3.5},
    }
    assert report["snags"][1]["measured"] is None
    assert report["holes"][1] == {
        "id": "t.1.2",
        "hole": "t.1",
        "of": "treble 1",
        "operation": "post bore",
        "diameter": 9.0,
        "start": [10.0, 20.0, 0.0],
        "direction": [0.0, 0.0, 1.0],
        "depth": 16.0,
    }


def test_holes_are_one_for_each_drilling_and_leave_the_pins_to_their_own_list() -> None:
    report = check_report(RESULT)
    assert len(report["holes"]) == report["counts"]["drilling"]
    assert [hole["id"] for hole in report["pins"]] == ["p.1"]


def test_minus_nothing_is_nothing() -> None:
    assert str(check_report(RESULT)["holes"][0]["start"][2]) == "0.0"


def test_the_text_says_how_much_then_what_and_what_cures_it() -> None:
    assert list(check_lines("Invented", RESULT)) == [
        "Invented",
        "1 hole, 1 counterbore, 2 drillings, 1 locating pin.",
        "1 spoils the work, 0 tight, 1 note.",
        "",
        "spoils the work  Two bores meet.",
        "                 Cure: Slide treble 1 by 3.5 mm to the tip.",
        "                 Look at x 12.3, y -80.0, z 8.0 mm.",
        "",
        "note             A drill may skate.",
        "                 Look at x 0.0, y 0.0, z 0.0 mm.",
    ]


def test_the_summary_without_a_snag() -> None:
    assert summary(CheckResult((), (), Counts(0, 0, 0, 0))) == "No snags."


def test_a_name_gives_the_terminal_no_orders(tmp_path, capsys):
    """The sign ESC begins what a terminal obeys: its title, its colours, what was there before."""
    file = tmp_path / "head.headstock.json"
    headstock.write(replace(demo(), name="walnut\x1b]0;gone\x07 \x9b2J Nuß"), file)
    run(parse(["check", str(file)]))
    out = capsys.readouterr().out
    assert out.startswith("walnut?]0;gone? ?2J Nuß\n") and all(sign.isprintable() or sign == "\n" for sign in out)


def test_a_refusal_gives_the_terminal_no_orders_either(tmp_path, capsys):
    file = tmp_path / "head.headstock.json"
    file.write_text('{"pegwright": 1, "\\u001b]0;gone\\u0007": 2}')
    run(parse(["check", str(file)]))
    run(parse(["check", str(tmp_path / "walnut\x1b[2J.headstock.json")]))
    told = capsys.readouterr().err.splitlines()
    assert len(told) == 2 and "walnut?[2J" in told[1] and all(line.isprintable() for line in told)


def test_a_space_that_does_not_break_stays_one():
    assert shown("12,5\u00a0mm und 3\u202f%") == "12,5\u00a0mm und 3\u202f%"
    assert shown("a\u2028b\tc\u200bd") == "a?b?c?d"


def test_a_slip_of_a_hundred_snags_is_not_waited_for(monkeypatch, capsys):
    """What there was no time to seek a move for is told with its advice, and how many they are."""
    sample = Path(__file__).parents[3] / "samples" / "mixed-one-slide-too-far.headstock.json"
    monkeypatch.setattr(check_command, "PATIENCE_S", -1.0)
    assert run(parse(["check", str(sample)])) == 1
    said = capsys.readouterr().out
    assert "For 3 of them no moves were sought" in said and "Cure: Slide treble side 2 by" not in said
    monkeypatch.undo()
    run(parse(["check", str(sample)]))
    said = capsys.readouterr().out
    assert "sought" not in said and "Cure: Slide treble side 2 by" in said
