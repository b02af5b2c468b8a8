"""`python3 -m tests.bundle [DIR]`: make the one-file program in build/bundle and look whether it works.

It needs PyInstaller in the environment: `.venv/bin/python -m pip install -e ".[bundle]"`
brings it. It is no part of the suite, since it takes a minute or two.
"""

from __future__ import annotations

import importlib.util
import os
import subprocess
import sys
import time
from pathlib import Path

from app.setup import start

HERE = Path(__file__).resolve().parent


def make(folder: Path) -> Path:
    """The program, made in `folder`. RuntimeError with the last lines of what was said when it cannot be made."""
    command = [sys.executable, "-m", "PyInstaller", "--noconfirm", "--clean", "--log-level", "WARN",
               "--distpath", str(folder), "--workpath", str(folder / "work"), str(HERE / "pegwright.spec")]
    environ = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(command, cwd=HERE.parents[1], env=environ, capture_output=True, text=True)
    if done.returncode:
        raise RuntimeError("\n".join(done.stderr.splitlines()[-20:]))
    return folder / ("pegwright.exe" if os.name == "nt" else "pegwright")


def main() -> int:
    """Make it, tell its size, and time its first and second start; 1 when something does not work."""
    if importlib.util.find_spec("PyInstaller") is None:
        print('PyInstaller is not here: .venv/bin/python -m pip install -e ".[bundle]" brings it.', file=sys.stderr)
        return 2
    from tests.bundle.look import look

    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else HERE.parents[1] / "build" / "bundle"
    began = time.monotonic()
    program = make(folder)
    print(f"{program}: {program.stat().st_size / 1e6:.1f} MB, made in {time.monotonic() - began:.0f} s")
    failed = 0
    for what, good, seconds in look(program, folder):
        print(f"{'works' if good else 'FAILS'}: {what}, {seconds:.1f} s")
        failed += not good
    return 1 if failed else 0


if __name__ == "__main__":
    start.ensure(["app"])
    sys.exit(main())
