"""How the suite is run: in its own environment, without a screen, on all cores."""

import os
import sys
from pathlib import Path

from app.setup import start
from app.setup.system import ensure_window_libraries
from app.setup.trouble import SetupTrouble

MOST_WORKERS = 4
"""Each loads all libraries for itself, and some tests start whole programs beside."""


def run_suite(words: list[str]) -> int:
    """Run pytest with these words after setting up; its exit code, or 2 when set-up cannot go on."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    try:
        start.ensure(["app", "tests"])
        ensure_window_libraries()
    except SetupTrouble as trouble:
        print(trouble, file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        return 130
    import pytest

    os.chdir(Path(__file__).resolve().parent.parent)
    return int(pytest.main([*_spread(words), *words]))


def _spread(words: list[str]) -> list[str]:
    """The words that share the tests out among the cores, unless the maker's words run them in one process."""
    one_process = {"--pdb", "no:xdist", "-pno:xdist", "--trace", "--collect-only", "--co", "--version", "--help", "-h"}
    if one_process.intersection(words):
        return []
    available = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1
    return ["-n", str(min(available, MOST_WORKERS)), "--dist", "worksteal"]
