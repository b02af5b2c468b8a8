"""Starting: the first painted window and ready to drag, against a bare window; a check without any."""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator

from app.window.demo import DEMO, samples
from tests.benchmarks.lines import Line


def lines(rounds: int) -> Iterator[Line]:
    """Each start in a process of its own, in turn, from the call of Python on, with what Python has compiled kept as usual."""
    bare, painted, ready, check = [], [], [], []
    with tempfile.TemporaryDirectory(prefix="pegwright-start-") as folder:
        told = dict.fromkeys(("XDG_CONFIG_HOME", "XDG_STATE_HOME", "PYTHONPYCACHEPREFIX"), folder)
        environment = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"} | told
        for counts in (False, *(True,) * rounds) if rounds else (True,):
            one, two, three = _started("bare", environment), _started("program", environment), _check(environment)
            if counts:
                bare.append(one["painted"])
                painted.append(two["painted"])
                ready.append(two["ready"])
                check.append(three)
    yield Line("start to the first painted window", painted, None, "a bare window", bare, 1.2)
    yield Line("start to ready to drag", ready, None, "a bare window", bare, 2.0)
    yield Line("check of the demo without a window, processor time", check, 500.0)


def _started(what: str, environment: dict[str, str]) -> dict[str, float]:
    command = [sys.executable, "-m", "tests.benchmarks.started", what, repr(time.time()), str(samples() / DEMO)]
    with tempfile.TemporaryDirectory(prefix="pegwright-state-") as state:  # else a start looks for the one before, which was cut off
        done = subprocess.run(command, capture_output=True, text=True, check=True, env=environment | {"XDG_STATE_HOME": state})
    return {word: float(number) for word, number in (line.split() for line in done.stdout.splitlines())}


def _check(environment: dict[str, str]) -> float:
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    code = f"from app.commands.arguments import parse; from app.commands.main import run; run(parse(['check', {str(samples() / DEMO)!r}]), alone=True)"
    subprocess.run([sys.executable, "-c", code], stdout=subprocess.DEVNULL, check=True, env=environment)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return (after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1000
