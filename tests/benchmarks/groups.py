"""The groups of benchmarks, and how one is run in a process of its own."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

from tests.benchmarks.lines import Line, loaded

GROUPS = ("drag", "check", "chance", "plan", "start", "sheets", "import")
ROUNDS = {"drag": 200, "check": 60, "chance": 7, "plan": 15, "start": 11, "sheets": 7, "import": 1}
"""How often each is measured; a row that takes long may take a share of it."""
SETTINGS: dict[str, dict[str, dict[str, str]]] = {
    "drag": {"scale 1": {"QT_SCALE_FACTOR": "1"}, "scale 2": {"QT_SCALE_FACTOR": "2"}},
}
"""Group to the environments that it is measured in, by the word that stands before its rows."""
TOP = Path(__file__).resolve().parents[2]


def measured(group: str, rounds: int | None = None) -> Iterator[Line]:
    """The lines of a group as they are ready; rounds of 0 only try every row with as little as it takes.

    RuntimeError with the end of its words when its process fails."""
    settings = list(SETTINGS.get(group, {"": {}}).items())
    for word, more in settings if rounds != 0 else settings[:1]:
        command = [sys.executable, "-m", "tests.benchmarks.one", group, str(ROUNDS[group] if rounds is None else rounds)]
        told = os.environ | {"QT_QPA_PLATFORM": "offscreen"} | more
        with subprocess.Popen(command, cwd=TOP, env=told, stdout=subprocess.PIPE, text=True) as process:
            for text in process.stdout:
                line = loaded(text)
                yield line if not word else Line(**(vars(line) | {"name": f"{line.name}, {word}"}))
        if process.returncode:
            raise RuntimeError(f"the benchmark {group} {word} ended with code {process.returncode}")
