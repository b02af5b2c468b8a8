"""No test waits for a time of its own: a busy machine needs longer (see `tests/waiting.py`)."""

import re
from pathlib import Path

TESTS = Path(__file__).parents[1]
NOT_PATIENT = re.compile(r"wait(?:Until|Signals?|Callback)\(.*timeout=|\bqWait|waitExposed\(|waitActive\(")
"""A limit named in a test, a wait that holds the interpreter, and two of the test library that do nothing outside a `with`."""


def test_waits_are_those_of_the_house():
    found = [f"{file.relative_to(TESTS)}:{number}: {line.strip()}"
             for file in sorted(TESTS.rglob("*.py")) if file.name not in ("waiting.py", Path(__file__).name)
             for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1) if NOT_PATIENT.search(line)]
    assert found == []
