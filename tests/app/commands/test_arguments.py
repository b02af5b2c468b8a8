"""The words of the command line."""

from argparse import Namespace
from pathlib import Path

import pytest

from app import __version__
from app.commands.arguments import PAPERS, WITHOUT_WINDOW, _window, parse
from app.formats import paper


def test_no_words_open_the_window_on_the_demo() -> None:
    request = parse([])
    assert (request.command, request.file) == ("window", None)


def test_more_files_open_in_windows_of_their_own() -> None:
    request = parse(["one.headstock.json", "two.headstock.json", "three.headstock.json"])
    assert request.file == Path("one.headstock.json")
    assert request.more == [Path("two.headstock.json"), Path("three.headstock.json")]


def test_a_file_opens_the_window_on_it() -> None:
    request = parse(["mine.headstock.json"])
    assert (request.command, request.file) == ("window", Path("mine.headstock.json"))


def test_files_alone_are_understood_as_the_parser_does(monkeypatch: pytest.MonkeyPatch) -> None:
    """No parser is made for them: that takes long, and most starts of the window have nothing else to tell."""
    for words in ([], ["one"], ["one", "", "two words"]):
        assert vars(parse(words)) == vars(_window().parse_args(words, Namespace(command="window")))
    monkeypatch.delattr("app.commands.arguments._window")
    assert parse(["one"]).file == Path("one")


def test_check() -> None:
    request = parse(["check", "mine.headstock.json", "--json"])
    assert (request.command, request.file, request.json) == ("check", Path("mine.headstock.json"), True)


@pytest.mark.parametrize("words", ["--language de check this", "--language=de check this", "check --language de this"])
def test_a_language_may_stand_before_the_command(words: str) -> None:
    request = parse(words.split())
    assert (request.command, request.language, request.file) == ("check", "de", Path("this"))


def test_a_file_after_a_language_is_no_command() -> None:
    request = parse(["--language", "de", "this"])
    assert (request.command, request.language, request.file) == ("window", "de", Path("this"))


def test_sheets_take_the_usual_paper_of_the_unit_unless_told() -> None:
    assert parse(["sheets", "mine", "--out", "here"]).paper is None
    assert parse(["sheets", "mine", "--out", "here", "--paper", "tabloid"]).paper == "Tabloid"
    assert [parse(["sheets", "mine", "--out", "here", *more]).unit for more in ((), ("--unit", "in64"))] == ["mm", "in64"]


def test_outline() -> None:
    request = parse(["outline", "head.dxf", "--out", "new.headstock.json", "--unit", "INCH"])
    assert (request.drawing, request.out, request.unit, request.json) == (
        Path("head.dxf"),
        Path("new.headstock.json"),
        "inch",
        False,
    )
    plain = parse(["outline", "head.dxf", "--out", "new"])
    assert (plain.unit, plain.scale, plain.head, plain.turn, plain.mirrored) == (None, None, None, 0, False)
    assert [parse(["outline", "head.dxf", "--out", "new", "--scale", scale]).scale for scale in ("1:2", "2:1", "1:2,5")] == [2.0, 0.5, 2.5]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["check"], "The following arguments are required: FILE; see "),
        (["sheets", "mine"], "The following arguments are required: --out; see "),
        (["sheets", "mine", "--out", "here", "--paper", "A5"], "'A5' is not one of A4, A3, Letter, Tabloid; see "),
        (["outline", "head.dxf", "--out", "new", "--unit", "furlong"], "'furlong' is not one of mm, cm, inch, pt, px, 1/90 inch; see "),
        *((["outline", "head.dxf", "--out", "new", "--scale", text], f"'{text}' is no scale such as 1:2") for text in ("half", "0:1", "1:0", "1:-2", "1:nan", "2")),
        *((["outline", "head.dxf", "--out", "new", "--nut-slant", text], f"'{text}' is no slant between -30 and 30 degrees") for text in ("31", "much", "nan")),
        (["--papr"], "Unrecognized arguments: --papr; see "),
        (["check", "mine", "--js"], "Unrecognized arguments: --js; see "),
    ],
)
def test_words_that_make_no_sense_get_one_sentence(
    words: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as left:
        parse(words)
    out, err = capsys.readouterr()
    assert left.value.code == 2
    assert said in err
    assert out == ""
    assert err.count("\n") == 1


def test_version(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as left:
        parse(["--version"])
    assert left.value.code == 0
    assert capsys.readouterr().out == f"Pegwright {__version__}\n"


def test_help_names_every_command(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as left:
        parse(["--help"])
    assert left.value.code == 0
    out = capsys.readouterr().out
    for name, about in WITHOUT_WINDOW.items():
        assert f" {name}" in out
        assert about in out


@pytest.mark.parametrize("name", WITHOUT_WINDOW)
def test_every_command_has_help(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as left:
        parse([name, "--help"])
    assert left.value.code == 0
    assert f" {name} [-h]" in capsys.readouterr().out


def test_the_papers_are_those_that_the_sheets_know() -> None:
    """Written twice, as the words are read before anything but the standard library is there."""
    assert PAPERS == tuple(paper.PAPERS)
