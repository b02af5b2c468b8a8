"""Small files with a head that says what they are for."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

from app.setup.places import CHECKOUT

AT_THE_TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "app", "geometry", "tests", "samples"}
"""What a newcomer sees first, beside files that begin with a dot."""
LONGEST = 400
LONGER_FOR_A_REASON: dict[str, str] = {}
"""Path of a file over the limit, and why it is better whole."""


def sources() -> list[str]:
    """Every Python file of the project, as a path from the checkout."""
    found = [file for room in ("app", "geometry", "tests", "samples") for file in (CHECKOUT / room).rglob("*.py")]
    return sorted(file.relative_to(CHECKOUT).as_posix() for file in found)


def test_all_rooms_are_looked_at() -> None:
    assert {file.partition("/")[0] for file in sources()} >= {"app", "geometry", "tests"}


@pytest.mark.skipif(not Path(CHECKOUT, ".git").exists(), reason="only a checkout tells what belongs to the project")
def test_the_top_level_stays_small() -> None:
    kept = subprocess.run(["git", "ls-files", "-z"], cwd=CHECKOUT, capture_output=True, check=True).stdout.decode()
    top = {name.partition("/")[0] for name in kept.split("\0") if name and not name.startswith(".")}
    assert top == AT_THE_TOP


def faults(file: str) -> list[str]:
    """What is wrong with the shape of a file, one sentence each; an empty package file is as it should be."""
    text = Path(CHECKOUT, file).read_text(encoding="utf-8")
    if not text.strip() and file.endswith("__init__.py"):
        return []
    found = []
    if not ast.get_docstring(ast.parse(text)):
        found.append(f"{file} does not begin with what it is for")
    lines = text.count("\n")
    if lines > LONGEST and file not in LONGER_FOR_A_REASON:
        found.append(f"{file} has {lines} lines: split it, or list it with a reason")
    if lines <= LONGEST and file in LONGER_FOR_A_REASON:
        found.append(f"{file} is short now: take it off the list")
    return found


def test_the_linter_finds_no_mistake() -> None:
    """Unused and undefined names, and what is known to go wrong; its rules stand in pyproject.toml."""
    command = [sys.executable, "-m", "ruff", "check", "--no-cache", "--output-format", "concise", "."]
    done = subprocess.run(command, cwd=CHECKOUT, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr


def test_every_file_says_what_it_is_for_and_is_short() -> None:
    assert [fault for file in sources() for fault in faults(file)] == []
