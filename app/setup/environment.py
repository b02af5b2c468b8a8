"""Making, mending and finding the environment `.venv` in the checkout."""

import errno
import importlib.util
import os
import shutil
import subprocess
from pathlib import Path

from . import install, lock, stamps, system
from .places import base_python, inside, interpreter
from .progress import Progress
from .trouble import SetupTrouble

SPACE_NEEDED = 900_000_000
"""Bytes on the disk for the environment and what pip unpacks meanwhile (an app environment measures 410 MB)."""


def prepare(environment: Path, parts: list[str]) -> None:
    """Make or mend the environment so that it holds these parts; raises SetupTrouble.

    A second start at the same time waits for the first and then finds nothing
    left to do. An environment that was cut short, moved or made for another
    Python is emptied and made anew; one that the maker made is added to.
    """
    progress = Progress()
    try:
        environment.mkdir(exist_ok=True)
        with lock.held(environment, lambda: progress.stage("waiting for another start to finish")) as number:
            if not stamps.ready(environment, parts):
                _fill(environment, parts, progress, number)
    except OSError as error:
        raise SetupTrouble(_in_the_way(error, environment)) from error
    finally:
        progress.close()


def _fill(environment: Path, parts: list[str], progress: Progress, lock_number: int) -> None:
    if shutil.disk_usage(environment).free < SPACE_NEEDED and not interpreter(environment).exists():
        raise SetupTrouble(
            f"The disk that holds {environment.parent} is nearly full: "
            f"free {SPACE_NEEDED // 1_000_000} MB and start again."
        )
    python = stamps.running_python() if inside(environment) else None
    states = {stamps.state(environment, part, python) for part in parts}
    version = None if "broken" in states else _version_of(environment)
    stamps.begin(environment)
    if version is None:
        progress.stage("making the environment .venv")
        _make(environment, progress)
        version = stamps.running_python()
    install.install(environment, parts, progress, keep_open=(lock_number,))
    stamps.finish(environment, parts, version)


def _make(environment: Path, progress: Progress) -> None:
    _empty(environment)
    command = [base_python(), "-m", "venv"]
    if importlib.util.find_spec("ensurepip") is None:
        if install.own_pip_for_others():
            command.append("--without-pip")
        else:
            system.add_environment_maker(progress)
    done = subprocess.run(
        [*command, str(environment)], stdin=subprocess.DEVNULL, capture_output=True, text=True, errors="replace"
    )
    if done.returncode != 0:
        said = (done.stdout + done.stderr).strip().splitlines() or ["nothing was said"]
        if "No space left" in "".join(said):
            raise OSError(errno.ENOSPC, "No space left on device")
        raise SetupTrouble(
            f"Python could not make the environment .venv ({said[-1].strip()}): "
            "start again with another Python 3.11 to 3.13."
        )


def _empty(environment: Path) -> None:
    """Remove what is in the environment but for the lock and the note that work has begun."""
    kept = {lock.FILE_NAME, stamps.UNFINISHED}
    for entry in environment.iterdir():
        if entry.name in kept:
            continue
        if entry.is_dir() and not entry.is_symlink():
            shutil.rmtree(entry)
        else:
            entry.unlink()


def _version_of(environment: Path) -> str | None:
    """Version such as `3.12` of a sound environment's Python; None where it does not run or is not wanted."""
    if inside(environment):
        return stamps.running_python()
    question = "import sys; print('%d.%d' % sys.version_info[:2]); print(sys.prefix)"
    try:
        done = subprocess.run(
            [interpreter(environment), "-c", question],
            stdin=subprocess.DEVNULL,
            capture_output=True,
            text=True,
            timeout=60,
        )
    except (OSError, subprocess.TimeoutExpired):
        return None
    answer = done.stdout.splitlines()
    if done.returncode != 0 or len(answer) != 2 or os.path.realpath(answer[1]) != os.path.realpath(environment):
        return None
    return answer[0] if answer[0] in ("3.11", "3.12", "3.13") else None


def _in_the_way(error: OSError, environment: Path) -> str:
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        return "The disk is full: free about 1 GB for Pegwright's parts and start again."
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return (
            f"The folder {environment.parent} cannot be written to, and Pegwright keeps its parts in .venv inside it: "
            "copy it to a folder of your own and start there."
        )
    if error.errno in (errno.EEXIST, errno.ENOTDIR):
        return (
            f"{environment} is a file, and Pegwright keeps its parts in a folder of that name: "
            "move the file away and start again."
        )
    return (
        f"Set-up of {environment} stopped ({error.strerror or error}): "
        "close every program that uses that folder and start again."
    )
