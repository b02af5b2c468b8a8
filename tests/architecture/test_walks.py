"""No window is walked with the toolkit's `findChildren`: it keeps what the toolkit made for good (see `app/look/descendants.py`)."""

import re
from pathlib import Path

ROOT = Path(__file__).parents[2]
WALK = re.compile(r"\bfindChild(?:ren)?\(")
MAY = {"tests/gui/test_descendants.py"}
"""Compares the house's own walk with the toolkit's, on a window that goes at once."""


def walks() -> list[str]:
    """Every line that asks the toolkit for the parts of a window, with its place."""
    return [f"{name}:{number}: {line.strip()}"
            for room in ("app", "tests") for file in sorted((ROOT / room).rglob("*.py"))
            if (name := file.relative_to(ROOT).as_posix()) not in MAY
            for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1) if WALK.search(line)]


TAKEN = re.compile(r"\.(?:focusProxy|checkedButton|buddy|nextInFocusChain|previousInFocusChain|topLevelWidget)\(|\b(?:button|widget)\.group\(")
"""What the binding answers with a part that it then takes for one of whom was asked (see `app/look/walk.py`)."""


def test_no_part_is_asked_for_what_it_does_not_own():
    assert [f"{file.relative_to(ROOT)}:{number}: {line.strip()}" for file in sorted((ROOT / "app").rglob("*.py"))
            for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1) if TAKEN.search(line)] == []


def test_parts_of_a_window_are_found_with_below():
    assert walks() == []


def test_who_may_does():
    assert all(WALK.search((ROOT / name).read_text(encoding="utf-8")) for name in MAY)
