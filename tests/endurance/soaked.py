"""A soak in a process of its own, and what its counts say."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).parents[2]
COUNTS = 8
"""How often all is counted; the first quarter is for warming up."""
MOST_GROWTH = 1.05
SAME = ("threads", "files", "actions", "items", "children", "beside")
"""What there is exactly as much of at the end; beside: work in threads beside the window."""
FRAME_GROWTH = 2.0
"""It is the same drag at every count; but a machine that others work on is not even."""


def soaked(seconds: float, seed: int, folder: Path, counts: int = COUNTS, things: int = 0,
           say: Callable[[str], None] = lambda text: None) -> list[dict]:
    """Counts of one soak of so many seconds and things done. AssertionError when the program did not reach its end."""
    found = []
    with subprocess.Popen([sys.executable, "-m", "tests.endurance.soak", str(seconds), str(things), str(seed), str(folder), str(counts),
                           *(["tour"] if counts == COUNTS else [])],
                          cwd=ROOT, env={**os.environ, "QT_QPA_PLATFORM": "offscreen"}, stdout=subprocess.PIPE,
                          stderr=subprocess.PIPE if counts != COUNTS else None, text=True) as process:
        for line in process.stdout:
            found.append(json.loads(line))
            say(line.strip())
        told = process.stderr.read() if process.stderr else ""
    assert process.returncode == 0 and len(found) == counts, f"ended with {process.returncode}: {told[-2000:]}"
    return found


def judged(counts: list[dict], growth: float = MOST_GROWTH) -> list[str]:
    """What has grown from the end of the warming up to the end, a line each; none when nothing has."""
    warm, last = counts[len(counts) // 4], counts[-1]
    found = [f"{name}: {warm[name]} at first, {last[name]} at the end" for name in SAME if last[name] > warm[name]]
    # Rooms and dialogs are made when they are first shown, so of these the second half counts.
    half = counts[len(counts) // 2]
    found += [f"{name}: {half[name]:.0f} half way, {last[name]:.0f} at the end" for name in ("toolkit objects", "windows")
              if last[name] > growth * half[name]]
    found += [f"{name}: {warm[name]:.0f} at first, {last[name]:.0f} at the end" for name in ("RSS", "objects")
              if last[name] > growth * warm[name]]
    if last["frame"] > FRAME_GROWTH * warm["frame"]:
        found.append(f"a frame: {warm['frame']:.1f} ms at first, {last['frame']:.1f} ms at the end")
    if last["faults"]:
        found.append(f"{last['faults']} faults of the program")
    return found
