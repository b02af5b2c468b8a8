"""`python3 -m tests.installed`: install the wheel into a fresh environment as a maker would, and use it there.

It fetches the libraries, so it is no part of the suite; tests/setup/test_wheel.py
looks at the same wheel without a network.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import time
import venv
from pathlib import Path

from app.setup import start

SAMPLE = "twelve-string-mixed.headstock.json"


def main() -> int:
    """Build, install, check a sample, write its sheets, and import a drawing; the first exit code that is not 0."""
    from tests.setup.wheel import build

    with tempfile.TemporaryDirectory() as kept:
        folder = Path(kept)
        wheel = build(folder)
        print(f"{wheel.name}: {wheel.stat().st_size / 1e6:.2f} MB")
        began = time.monotonic()
        venv.create(folder / "fresh", with_pip=True)
        scripts = folder / "fresh" / ("Scripts" if os.name == "nt" else "bin")
        installing = [scripts / "python", "-m", "pip", "install", "--quiet", "--disable-pip-version-check", wheel]
        code = subprocess.call(installing, cwd=folder)
        print(f"installed in {time.monotonic() - began:.0f} s")
        samples = next((folder / "fresh").rglob(SAMPLE)).parent
        for words in (
            ["--version"],
            ["check", samples / SAMPLE],
            ["sheets", samples / SAMPLE, "--out", folder / "sheets"],
            ["outline", samples / "outlines" / "head-in-millimetres.svg", "--out", folder / "new.headstock.json"],
        ):
            began = time.monotonic()
            code = code or subprocess.call([scripts / "pegwright", *words], cwd=folder)
            print(f"pegwright {words[0]}: exit code {code}, {time.monotonic() - began:.1f} s")
        made = sorted(file.name for file in folder.iterdir())
        print("beside it:", ", ".join(made))
        return code


if __name__ == "__main__":
    start.ensure(["app", "tests"])
    sys.exit(main())
