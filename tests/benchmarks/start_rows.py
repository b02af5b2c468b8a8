"""Starting: the first painted window and ready to drag, against a bare window; a check without any."""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import time
from collections.abc import Iterator

from app.window.demo import DEMO, samples
from tests.benchmarks.lines import Line


def lines(rounds: int) -> Iterator[Line]:
    """Each start in a process of its own, in turn, from the call of Python on."""
    bare, painted, ready, check = [], [], [], []
    _started("bare"), _started("program")
    for _ in range(max(1, rounds)):
        bare.append(_started("bare")["painted"])
        program = _started("program")
        painted.append(program["painted"])
        ready.append(program["ready"])
        check.append(_check())
    yield Line("start to the first painted window", painted, None, "a bare window", bare, 1.2)
    yield Line("start to ready to drag", ready, None, "a bare window", bare, 2.0)
    yield Line("check of the demo without a window, processor time", check, 500.0)


def _started(what: str) -> dict[str, float]:
    command = [sys.executable, "-m", "tests.benchmarks.started", what, repr(time.time())]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    return {word: float(number) for word, number in (line.split() for line in done.stdout.splitlines())}


def _check() -> float:
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    code = f"import sys; sys.argv[1:] = ['check', {str(samples() / DEMO)!r}]; " \
           "from app.commands.arguments import parse; from app.commands.main import run; run(parse(sys.argv[1:]))"
    subprocess.run([sys.executable, "-c", code], stdout=subprocess.DEVNULL, check=True, env=os.environ)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return (after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1000
