"""Whole calls of the command line: what is printed where, and the exit code."""

import errno
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from app.commands.arguments import parse
from app.commands.main import _about_file, run
from app.setup.places import CHECKOUT
from tests.app.commands.calling import RUN, SAMPLE, call, call_whole, modules_loaded, one_sentence

WINDOW_ONLY = {"PySide6", "shiboken6", "app.window", "app.canvas", "app.panels"}
DRAWING_ONLY = {"ezdxf", "reportlab", "fontTools"}


def test_schema_is_json_schema() -> None:
    done = call("schema")
    assert (done.returncode, done.stderr) == (0, "")
    schema = json.loads(done.stdout)
    assert schema["$schema"].startswith("https://json-schema.org/")
    assert "Headstock" in schema["$defs"]


def test_a_file_that_is_not_there() -> None:
    done = call_whole("check", "no such.headstock.json")
    assert one_sentence(done) == "There is no file no such.headstock.json: check its name and folder."
    assert done.returncode == 2


def test_a_folder_in_place_of_a_file(tmp_path: Path) -> None:
    done = call_whole("sheets", tmp_path, "--out", tmp_path / "out", "--language", "de")
    assert one_sentence(done) == f"{tmp_path} ist ein Ordner: eine Datei darin nennen."
    assert done.returncode == 2
    assert not (tmp_path / "out").exists()


def test_a_name_that_no_disk_takes() -> None:
    done = call_whole("check", "n" * 300)
    assert one_sentence(done) == f"{'n' * 300} cannot be used: its name is too long."
    assert done.returncode == 2


@pytest.mark.skipif(os.name == "nt", reason="closes its output by a shell")
def test_without_anywhere_to_print_to_the_exit_code_is_the_same() -> None:
    closed = ["sh", "-c", 'exec "$0" -c "$@" >&-', sys.executable, RUN, "check", str(SAMPLE)]
    done = subprocess.run(closed, cwd=CHECKOUT, stdin=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True)
    assert (done.returncode, done.stderr) == (call("check", SAMPLE).returncode, "")


@pytest.mark.parametrize("command", ["check", "sheets"])
def test_a_file_that_is_no_layout(tmp_path: Path, command: str, capsys: pytest.CaptureFixture) -> None:
    file = tmp_path / "bad.headstock.json"
    words = [command, str(file), *(["--out", str(tmp_path)] if command == "sheets" else [])]
    for text in ("", "{", "[]", '{"pegwright": 99}', '{"pegwright": 1, "nonsense": 2}', "\0\1\2"):
        file.write_text(text, encoding="utf-8")
        assert run(parse(words)) == 2
        said = capsys.readouterr()
        assert said.out == "" and said.err.count("\n") == 1 and "bad.headstock.json" in said.err, text
    done = call(*words)
    assert (one_sentence(done), done.returncode) == (said.err.strip(), 2), "a process of its own says the same"
    assert os.listdir(tmp_path) == ["bad.headstock.json"]


@pytest.mark.parametrize("drawing", ["head-with-slots-and-holes.dxf", "head-in-millimetres.svg"])
def test_a_drawing_in_place_of_a_layout_is_led_to_where_it_becomes_one(drawing: str, capsys: pytest.CaptureFixture) -> None:
    assert run(parse(["check", str(CHECKOUT / "samples" / "outlines" / drawing)])) == 2
    assert capsys.readouterr().err.startswith(f"{drawing} is a drawing, no layout yet: ")


@pytest.mark.skipif(os.name == "nt", reason="Windows always has a display")
def test_without_a_display_the_commands_that_need_none_are_named() -> None:
    done = call_whole(DISPLAY=None, WAYLAND_DISPLAY=None, QT_QPA_PLATFORM=None)
    assert done.returncode == 2
    said = one_sentence(done)
    assert said.startswith("There is no display to open a window on")
    for name in ("check", "sheets", "outline", "schema"):
        assert name in said


def test_a_fault_of_our_own_is_one_sentence_and_shown_whole_on_request() -> None:
    broken = "import app.commands.schema as s\ndef fail(request):\n    raise KeyError('odd')\ns.run = fail"
    done = call("schema", before=broken)
    assert done.returncode == 2
    assert one_sentence(done).startswith("Pegwright met a fault of its own (KeyError: 'odd')")
    assert "Traceback" in call("schema", before=broken, PEGWRIGHT_TRACE="1").stderr


@pytest.mark.skipif(os.name == "nt", reason="Windows has no such pipes")
def test_a_reader_that_goes_away_is_no_fault() -> None:
    process = subprocess.Popen(
        [sys.executable, "-c", RUN, "schema"], cwd=CHECKOUT, stdout=subprocess.PIPE, stderr=subprocess.PIPE
    )
    process.stdout.close()
    said = process.stderr.read()
    process.stderr.close()
    assert process.wait() == 2
    assert said == b""


def test_what_the_system_says_about_a_file_becomes_a_sentence() -> None:
    full, closed = OSError(errno.ENOSPC, "Leerer geht es nicht", "here.pdf"), OSError(errno.EACCES, "Verboten", "here.json")
    assert _about_file(full) == "here.pdf cannot be used: the disk is full."
    assert _about_file(closed, read=True) == "here.json cannot be used: you have no right to read it."
    assert _about_file(OSError(errno.EIO, "Schlecht")) == "What was asked for could not be written: the disk reports a fault."


def test_checking_needs_no_window_and_no_drawing_library(tmp_path: Path) -> None:
    loaded = modules_loaded(tmp_path / "modules", "check", SAMPLE)
    assert loaded.isdisjoint(WINDOW_ONLY | DRAWING_ONLY)


def test_the_schema_needs_no_window_and_no_drawing_library(tmp_path: Path) -> None:
    loaded = modules_loaded(tmp_path / "modules", "schema")
    assert loaded.isdisjoint(WINDOW_ONLY | DRAWING_ONLY | {"shapely"})


def test_sheets_need_no_window(tmp_path: Path) -> None:
    loaded = modules_loaded(tmp_path / "modules", "sheets", SAMPLE, "--out", tmp_path / "out")
    assert loaded.isdisjoint(WINDOW_ONLY)


@pytest.mark.parametrize("slanted", [True, False])
def test_a_drawing_with_a_slanted_nut_keeps_it_where_that_is_said(tmp_path: Path, slanted: bool) -> None:
    """40 mm wide, 40 tan 8 = 5.622 higher on the left, which is the bass side: laid level it is 40 / cos 8 = 40.39 wide."""
    drawing, out = tmp_path / "head.svg", tmp_path / "new.headstock.json"
    drawing.write_text('<svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="200mm" viewBox="0 0 80 200">'
                       '<path d="M20 184.378 L60 190 L75 150 L75 40 L40 5 L5 40 L5 150 Z"/></svg>', encoding="utf-8")
    done = call("outline", drawing, "--out", out, *(["--slanted"] if slanted else []))
    assert (done.returncode, done.stderr) == (0, "")
    nut = json.loads(out.read_text(encoding="utf-8"))["nut"]
    assert (nut.get("slant", 0.0), nut["width"]) == pytest.approx((8.0, 40.0) if slanted else (0.0, 40.393), abs=2e-3)
    assert ("slanted by 8.0 degrees" in done.stdout, "with --slanted" in done.stdout) == (slanted, not slanted)
