"""`python3 -m tests.endurance kills|fuzz|sessions|soak`: the longer jobs, each ending in a line of numbers and exit code 0 or 1."""

import argparse
import sys
import tempfile
from pathlib import Path

from app.setup.version import complaint, find_command


def main() -> int:
    """Set up what is missing, run one job; the exit code."""
    sentence = complaint(sys.version_info, find_command)
    if sentence:
        sys.stderr.write(sentence + "\n")
        return 2
    parser = argparse.ArgumentParser(prog="python3 -m tests.endurance", description="Tries to break the program.")
    jobs = parser.add_subparsers(dest="job", required=True)
    kills = jobs.add_parser("kills", help="kill an editing program at random moments")
    kills.add_argument("--count", type=int, default=300)
    kills.add_argument("--windows", type=int, default=12, help="how many of them have the whole window")
    fuzz = jobs.add_parser("fuzz", help="read broken files")
    fuzz.add_argument("--count", type=int, default=20_000)
    sessions = jobs.add_parser("sessions", help="edits, undo, entries, saving and dying in any order, against a replay")
    sessions.add_argument("--count", type=int, default=2000)
    sessions.add_argument("--steps", type=int, default=40)
    soak = jobs.add_parser("soak", help="random work at the window, and what it holds on to")
    soak.add_argument("minutes", type=float, nargs="?", default=30.0)
    for job in (kills, fuzz, sessions, soak):
        job.add_argument("--seed", type=int, default=1)
    words = parser.parse_args()

    from app.setup import start
    from app.setup.system import ensure_window_libraries
    start.ensure(["app", "tests"])
    ensure_window_libraries()
    with tempfile.TemporaryDirectory(prefix="pegwright-endurance-") as folder:
        return {"kills": _kills, "fuzz": _fuzz, "sessions": _sessions, "soak": _soak}[words.job](words, Path(folder))


def _kills(words: argparse.Namespace, folder: Path) -> int:
    from PySide6.QtCore import QCoreApplication

    from tests.endurance.kills import MOST_LOST, run
    application = QCoreApplication([])
    seeds = list(range(words.seed * 10_000, words.seed * 10_000 + words.count))
    lost = sorted(run(folder, seeds, frozenset(seeds[:words.windows]), say=_say))
    _say(f"{len(lost)} kills: lost at most {lost[-1]:.2f} s (allowed {MOST_LOST:.1f}), "
         f"median {lost[len(lost) // 2]:.2f} s; every layout whole")
    application.quit()
    return 0


def _fuzz(words: argparse.Namespace, folder: Path) -> int:
    from tests.endurance.fuzz import run
    found = run(folder, words.seed, words.count, say=_say)
    for case in found.bad:
        _say(case)
    _say(found.line)
    return 1 if found.bad else 0


def _sessions(words: argparse.Namespace, folder: Path) -> int:
    import random

    from PySide6.QtCore import QCoreApplication

    from app.window.demo import demo
    from tests.endurance.session import Session, by_chance
    application = QCoreApplication([])
    for number in range(words.count):
        place = folder / str(number)
        place.mkdir()
        session = Session(demo(), place)
        try:
            by_chance(session, random.Random(words.seed * 1_000_003 + number), words.steps)
            session.end()
        except Exception:
            _say(f"session {number} of seed {words.seed} broke")
            raise
        if number % 100 == 99 or number == words.count - 1:
            _say(f"{number + 1} sessions of {words.steps} things done: each is what a replay gives")
    application.quit()
    return 0


def _soak(words: argparse.Namespace, folder: Path) -> int:
    from tests.endurance.soaked import judged, soaked
    counts = soaked(60 * words.minutes, words.seed, folder, say=_say)
    leaks = judged(counts)
    for leak in leaks:
        _say(leak)
    warm, last = counts[len(counts) // 4], counts[-1]
    _say(f"{last['done']} things done: memory {warm['RSS']:.0f} to {last['RSS']:.0f} MB, objects {warm['objects']:,} to "
         f"{last['objects']:,}, a frame {warm['frame']:.1f} to {last['frame']:.1f} ms")
    return 1 if leaks else 0


def _say(text: str) -> None:
    print(text, flush=True)


if __name__ == "__main__":
    sys.exit(main())
