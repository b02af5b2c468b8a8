"""Calling the command line as a maker does, in a process of its own."""

import os
import subprocess
import sys
from pathlib import Path

from app.setup.places import CHECKOUT

SAMPLE = CHECKOUT / "samples" / "twelve-string-mixed.headstock.json"

RUN = """
import sys
from app.commands.arguments import parse
from app.commands.main import run
sys.argv[0] = "pegwright"
sys.exit(run(parse(sys.argv[1:])))
"""
"""What a start does once everything is set up."""

TELL = """
import atexit
def tell():
    with open({path!r}, "w", encoding="utf-8") as file:
        file.write("\\n".join(sorted(sys.modules)))
atexit.register(tell)
"""


def call(*words: str | Path, before: str = "", **environ: str) -> subprocess.CompletedProcess:
    """Run `pegwright WORDS` in the Python of the tests, with set-up left out, after the code `before`."""
    return _run(["-c", before + RUN, *map(str, words)], environ)


def call_whole(*words: str | Path, **environ: str | None) -> subprocess.CompletedProcess:
    """Run `python -m app WORDS`, set-up and all; a variable of value None is taken out of the environment."""
    return _run(["-m", "app", *map(str, words)], environ)


def modules_loaded(note: Path, *words: str | Path) -> set[str]:
    """Names of the modules that a command has loaded when it ends."""
    done = call(*words, before="import sys" + TELL.format(path=str(note)))
    assert done.returncode in (0, 1), done.stderr
    return set(note.read_text(encoding="utf-8").split("\n"))


def _run(words: list[str], environ: dict[str, str | None]) -> subprocess.CompletedProcess:
    whole = {**os.environ, **environ}
    return subprocess.run(
        [sys.executable, *words],
        cwd=CHECKOUT,
        env={name: value for name, value in whole.items() if value is not None},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=900,
    )


def one_sentence(done: subprocess.CompletedProcess) -> str:
    """What a failed command said, after making sure that it is one line, no traceback, and nothing else was printed."""
    assert done.stdout == ""
    assert done.stderr.count("\n") == 1, done.stderr
    assert "Traceback" not in done.stderr
    assert done.stderr.endswith(".\n"), done.stderr
    return done.stderr.strip()
