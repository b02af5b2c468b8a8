"""A small checkout to set up in: the real set-up code, two tiny parts in place of the real ones."""

import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

from app.setup.places import APP, base_python

PROBE = """
import sys
from app.setup import start
from app.setup.trouble import SetupTrouble
try:
    start.ensure(sys.argv[1:] or ["app"])
except SetupTrouble as trouble:
    print(trouble, file=sys.stderr)
    sys.exit(2)
import tiny
print(tiny.NAME, sys.prefix)
"""


class Checkout:
    """A folder with the program's set-up in it and a program, `probe`, that needs the part `tiny`."""

    def __init__(self, folder: Path, wheels: Path) -> None:
        self.folder = folder
        self.environment = folder / ".venv"
        self._wheels = wheels
        folder.mkdir()
        shutil.copytree(APP / "setup", folder / "app" / "setup", ignore=shutil.ignore_patterns("__pycache__"))
        shutil.copy(APP / "__init__.py", folder / "app")
        # A requirement that nothing meets, so that no environment around the tests is taken for a whole one.
        (folder / "pyproject.toml").write_text(
            '[project]\ndependencies = ["pegwright-has-no-such-part"]\noptional-dependencies = {}\n', encoding="utf-8"
        )
        (folder / "probe.py").write_text(PROBE, encoding="utf-8")
        self.pin("app", "tiny==1.0")
        self.pin("tests", "tiny-extra==1.0")

    def pin(self, part: str, line: str) -> None:
        """Make this the one pin of the part."""
        (self.folder / "app" / "setup" / ("pins.txt" if part == "app" else "pins-tests.txt")).write_text(
            f"# Invented.\n{line}\n", encoding="utf-8"
        )

    def begin(self, *words: str, module: str = "probe", **environ: str) -> subprocess.Popen:
        """Start `python -m probe`, or another module, on a bare Python that sees only the wheels beside the checkout."""
        clean = {
            name: value
            for name, value in os.environ.items()
            if not name.startswith(("PIP_", "PYTHON", "PEGWRIGHT_", "VIRTUAL_ENV"))
        }
        offline = {
            "PIP_CONFIG_FILE": os.devnull,
            "PIP_NO_INDEX": "1",
            "PIP_FIND_LINKS": self._wheels.as_uri(),  # a plain path would be taken apart at its spaces
            "PIP_RETRIES": "0",
        }
        return subprocess.Popen(
            [base_python(), "-m", module, *words],
            cwd=self.folder,
            env={**clean, **offline, **environ},
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            encoding="utf-8",
        )

    def start(self, *words: str, **environ: str) -> tuple[int, str, str]:
        """The exit code, output and error output of one start."""
        process = self.begin(*words, **environ)
        out, err = process.communicate(timeout=900)
        return process.returncode, out, err


def tiny_wheel(folder: Path, name: str, version: str) -> None:
    """Write an installable package of one module that knows its own name and version."""
    module = name.replace("-", "_")
    info = f"{module}-{version}.dist-info"
    files = {
        f"{module}.py": f'NAME = "{name} {version}"\n',
        f"{info}/METADATA": f"Metadata-Version: 2.1\nName: {name}\nVersion: {version}\n",
        f"{info}/WHEEL": "Wheel-Version: 1.0\nGenerator: tests\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
    }
    files[f"{info}/RECORD"] = "".join(f"{file},,\n" for file in [*files, f"{info}/RECORD"])
    with zipfile.ZipFile(folder / f"{module}-{version}-py3-none-any.whl", "w") as wheel:
        for file, text in files.items():
            wheel.writestr(file, text)


def running_version() -> str:
    """Version of the Python that the tests and the small checkouts run on, such as `3.12`."""
    return f"{sys.version_info[0]}.{sys.version_info[1]}"
