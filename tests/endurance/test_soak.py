"""A short share of the soak; `python3 -m tests.endurance soak 2` works for two minutes, without a number for thirty."""

import os
import subprocess
import sys

import pytest

from tests.endurance.soaked import ROOT, judged, soaked

THINGS = 40
"""Done in the short share, and not seconds: how many a machine does in so long is its own."""


def test_a_short_soak_leaves_no_thread_file_or_fault(tmp_path):
    counts = soaked(0, 3, tmp_path, counts=2, things=THINGS)
    # Memory is judged by the longer forms: in so short a time rooms and dialogs are still being made.
    last = counts[-1]
    assert last["done"] == THINGS and last["faults"] == 0 and last["children"] == 0 and last["beside"] == 0
    for name in ("threads", "files", "items", "actions"):
        assert last[name] <= counts[0][name], name


def test_what_hangs_is_told_with_its_place():
    code = ("import threading, tests.endurance.soak as soak\nsoak.HANGS = 0.5\n"
            "def stuck():\n    soak.alive()\n    threading.Event().wait(600)\nstuck()")
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, timeout=900,
                          env={**os.environ, "QT_QPA_PLATFORM": "offscreen"})
    assert done.returncode != 0 and "Timeout" in done.stderr and "in stuck" in done.stderr


STEADY = {"RSS": 100.0, "objects": 1000, "threads": 4, "files": 9, "actions": 5, "items": 50, "children": 0, "toolkit objects": 70,
          "windows": 6, "frame": 5.0, "faults": 0, "beside": 0, "done": 10}


@pytest.mark.parametrize(("name", "end", "leaks"), [
    ("RSS", 104.0, 0), ("RSS", 106.0, 1), ("objects", 1100, 1), ("threads", 5, 1), ("files", 10, 1), ("items", 51, 1), ("items", 49, 0),
    ("toolkit objects", 80, 1), ("frame", 9.0, 0), ("frame", 11.0, 1), ("faults", 1, 1), ("beside", 1, 1)])
def test_what_grows_is_named(name, end, leaks):
    counts = [STEADY] * 7 + [STEADY | {name: end}]
    assert len(judged(counts)) == leaks
