"""No test waits for a time of its own, nor measures one: a busy machine needs longer (see `tests/waiting.py`, `tests/spent.py`)."""

import re
from pathlib import Path

TESTS = Path(__file__).parents[1]
NOT_PATIENT = re.compile(r"wait(?:Until|Signals?|Callback)\(.*timeout=|\bqWait|waitExposed\(|waitActive\(")
"""A limit named in a test, a wait that holds the interpreter, and two of the test library that do nothing outside a `with`."""
CLOCK = re.compile(r"\btime\.(?:time|monotonic|perf_counter|process_time|thread_time)\(")
LOOK_AT_A_CLOCK = {
    "app/look/test_turns.py",  # uses up time for others to be measured by
    "geometry/accuracy/test_simulation.py",  # the times between many questions, measured again by `least`
}


def lines(pattern: re.Pattern, name: str) -> list[str]:
    """Every line of the tests' files of such names in which the pattern is found, with its place."""
    return [f"{file.relative_to(TESTS).as_posix()}:{number}: {line.strip()}"
            for file in sorted(TESTS.rglob(name)) if file.name not in ("waiting.py", Path(__file__).name)
            for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1) if pattern.search(line)]


def test_waits_are_those_of_the_house():
    assert lines(NOT_PATIENT, "*.py") == []


def test_what_work_takes_is_asked_of_the_house():
    assert [line for line in lines(CLOCK, "test_*.py") if line.partition(":")[0] not in LOOK_AT_A_CLOCK] == []
