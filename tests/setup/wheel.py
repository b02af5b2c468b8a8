"""Building the wheel of the source tree, with what is installed and without a network."""

import subprocess
import sys
import zipfile
from pathlib import Path

from app.setup.places import CHECKOUT

BUILD = """
import sys
from hatchling.builders.wheel import WheelBuilder
print(next(iter(WheelBuilder(sys.argv[1]).build(directory=sys.argv[2], versions=["standard"]))))
"""


def build(folder: Path) -> Path:
    """The wheel, made in `folder`. Nothing in the source tree changes."""
    done = subprocess.run(
        [sys.executable, "-c", BUILD, str(CHECKOUT), str(folder)], capture_output=True, text=True, timeout=900
    )
    assert done.returncode == 0, done.stderr
    return Path(done.stdout.strip().splitlines()[-1])


def unpack(wheel: Path, folder: Path) -> None:
    """Lay the files of a wheel where an installer would."""
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(folder)


def wanted() -> set[str]:
    """What has to be in the wheel, as names inside it: all of both packages, and the samples."""
    names = {file.relative_to(CHECKOUT).as_posix() for room in ("app", "geometry") for file in _files(CHECKOUT / room)}
    return names | {f"app/{file.relative_to(CHECKOUT).as_posix()}" for file in _files(CHECKOUT / "samples")}


def _files(folder: Path) -> list[Path]:
    return [
        file
        for file in folder.rglob("*")
        if file.is_file() and "__pycache__" not in file.parts and not file.name.endswith((".before", ".pyc"))
    ]
