"""Putting the pinned parts into an environment with pip, and saying in one sentence why it failed."""

import importlib.metadata
import importlib.util
import os
import queue
import re
import subprocess
import sys
import threading
from collections.abc import Iterable
from pathlib import Path

from .places import PINS, base_python, interpreter
from .progress import Progress
from .trouble import SetupTrouble

LOG_NAME = "pegwright-setup.log"
TICK_S = 0.5
OLDEST_PIP_FOR_OTHERS = (22, 3)
"""First pip that installs into another interpreter's environment (its option --python)."""

_NAMED = re.compile(r"^(?:Collecting|Requirement already satisfied:) ([A-Za-z0-9._-]+)==(\S+)")
_AT_HAND = re.compile(r"^Processing (?:.*[/\\])?([A-Za-z0-9._]+)-(\d[^-/\\]*)-[^/\\]+\.whl")
_FETCHED = re.compile(r"^\s*Downloading \S+ \((.+)\)")
_UNREACHED = re.compile(
    r"NewConnectionError|NameResolutionError|ConnectTimeout|ReadTimeout|ConnectionResetError|RemoteDisconnected"
    r"|Connection refused|Network is unreachable|Temporary failure in name resolution|getaddrinfo failed"
    r"|ProxyError|Max retries exceeded|Read timed out|IncompleteRead|connection broken"
)
_UNTRUSTED = re.compile(r"CERTIFICATE_VERIFY_FAILED|SSLCertVerificationError|SSLError")
_NOT_OFFERED = re.compile(r"No matching distribution found for ([A-Za-z0-9._-]+)")
_FULL = re.compile(r"No space left on device|\[Errno 28\]|not enough space on the disk", re.IGNORECASE)
_NO_PIP = re.compile(r"No module named '?pip\b")
_REFUSED = re.compile(r"Permission denied|Read-only file system|\[Errno 13\]|\[Errno 30\]|\[WinError 5\]")


def own_pip_for_others() -> bool:
    """Whether the running Python has a pip that can fill an environment that has none."""
    if importlib.util.find_spec("pip") is None:
        return False
    numbers = re.findall(r"\d+", importlib.metadata.version("pip"))
    return tuple(int(n) for n in numbers[:2]) >= OLDEST_PIP_FOR_OTHERS


def _pip_command(environment: Path) -> list[str]:
    """The pip to call for this environment: its own, or the running Python's."""
    inner = str(interpreter(environment))
    has_own = any(environment.glob("[Ll]ib*/**/site-packages/pip/__main__.py"))
    return [inner, "-m", "pip"] if has_own else [base_python(), "-m", "pip", "--python", inner]


def install(environment: Path, parts: list[str], progress: Progress, keep_open: tuple[int, ...] = ()) -> None:
    """Put the pins of the parts into the environment; raises SetupTrouble with what stood in the way.

    The pins name every part of every part, so pip resolves nothing and builds
    nothing. `keep_open` are file numbers that the installer inherits.
    """
    command = [*_pip_command(environment), "install", "--no-input", "--disable-pip-version-check"]
    command += ["--progress-bar", "off", "--no-deps", "--only-binary", ":all:"]
    for part in parts:
        command += ["-r", str(PINS[part])]
    total = sum(_count(PINS[part]) for part in parts)
    progress.stage(f"fetching {total} parts, about 130 MB the first time")
    said, code = _run(command, progress, total, keep_open)
    log = environment / LOG_NAME
    log.write_text("\n".join(said) + "\n", encoding="utf-8")
    if code != 0:
        raise SetupTrouble(explain(said, log))


def explain(said: Iterable[str], log: Path) -> str:
    """One sentence for what pip said when it failed."""
    whole = "\n".join(said)
    if _FULL.search(whole):
        return "The disk is full: free about 1 GB for Pegwright's parts and start again."
    if _REFUSED.search(whole):
        return f"Set-up may not write its parts below {log.parent}: make that folder yours and start again."
    if _NO_PIP.search(whole):
        return (
            "This Python has no pip to fetch Pegwright's parts with: "
            "install pip for it, or start with another Python 3.11 to 3.13."
        )
    if _UNTRUSTED.search(whole):
        return (
            "The package index was reached but its certificate was not accepted: "
            "set the clock, or the proxy's certificate for pip, and start again."
        )
    if _UNREACHED.search(whole):
        return (
            "The package index could not be reached to fetch Pegwright's parts: "
            "connect to the network (or set pip's proxy) and start again."
        )
    lacking = _NOT_OFFERED.search(whole)
    if lacking:
        return (
            f"No ready-made {lacking[1]} was found for this machine: check the network and pip's index settings, "
            "or use a 64-bit Python 3.11 to 3.13 on Linux, Windows or macOS."
        )
    return f"Pegwright's parts could not be installed: what pip said is in {log}."


def _count(pins: Path) -> int:
    lines = pins.read_text(encoding="utf-8").splitlines()
    return sum(1 for line in lines if line.strip() and not line.startswith("#") and _meant_for_us(line))


def _meant_for_us(line: str) -> bool:
    """Whether a pin's marker, one of the three that the pins use, holds here; only the count depends on it."""
    if "sys_platform" in line:
        return os.name == "nt"
    old = sys.version_info[:2] < (3, 12)
    if 'python_version < "3.12"' in line:
        return old
    return not old if "python_version" in line else True


def _run(command: list[str], progress: Progress, total: int, keep_open: tuple[int, ...]) -> tuple[list[str], int]:
    inherited = {} if os.name == "nt" else {"pass_fds": keep_open}
    try:
        process = subprocess.Popen(
            command,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            env={**os.environ, "PYTHONUNBUFFERED": "1", "PYTHONIOENCODING": "utf-8"},
            **inherited,
        )
    except OSError as error:
        raise SetupTrouble(
            f"The Python in {Path(command[0]).parent} does not run ({error.strerror}): delete .venv and start again."
        ) from error
    lines: queue.Queue[str | None] = queue.Queue()
    threading.Thread(target=_feed, args=(process.stdout, lines), daemon=True).start()
    said: list[str] = []
    seen = 0
    try:
        while True:
            try:
                line = lines.get(timeout=TICK_S)
            except queue.Empty:
                progress.tick()
                continue
            if line is None:
                return said, process.wait()
            said.append(line)
            seen = _show(line, seen, total, progress)
    except BaseException:
        process.kill()
        process.wait()
        raise


def _show(line: str, seen: int, total: int, progress: Progress) -> int:
    named = _NAMED.match(line) or _AT_HAND.match(line)
    if named:
        progress.stage(f"part {seen + 1} of {total}, {named[1]} {named[2]}")
        return seen + 1
    fetched = _FETCHED.match(line)
    if fetched and "MB" in fetched[1]:
        progress.stage(f"part {seen} of {total}, fetching {fetched[1]}")
    elif line.startswith("Installing collected packages"):
        progress.stage(f"unpacking {total} parts")
    return seen


def _feed(stream, lines: "queue.Queue[str | None]") -> None:
    with stream:
        for raw in stream:
            lines.put(raw.decode("utf-8", "replace").rstrip())
    lines.put(None)
