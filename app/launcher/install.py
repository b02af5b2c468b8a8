"""Puts the launcher, the kind of file and the pictures where a desktop of this user looks for them, and takes them away."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Iterable, Mapping
from pathlib import Path

from msgspec import Struct

from app.formats.saving import save_bytes
from app.launcher.entry import ID, KIND, desktop_entry, mime_package
from app.look.program_sizes import FOLDER, SIZES, png

TOOLS = (("update-mime-database", "mime"), ("update-desktop-database", "applications"))
"""What tells a desktop that something is new, and the folder it is told about; a desktop without them finds out later."""


class Done(Struct, frozen=True):
    """What came of one file: written, unchanged, removed or absent."""

    file: Path
    how: str


def data_folder(environ: Mapping[str, str] = os.environ) -> Path:
    """Where this user's own data for desktops lie: XDG_DATA_HOME if it is an absolute path, else ~/.local/share."""
    named = environ.get("XDG_DATA_HOME", "")
    return Path(named) if os.path.isabs(named) else Path.home() / ".local" / "share"


def files(folder: Path) -> dict[Path, bytes]:
    """Every file that belongs to the launcher, with what is in it."""
    icons = folder / "icons" / "hicolor"
    found = {folder / "applications" / f"{ID}.desktop": desktop_entry().encode(),
             folder / "mime" / "packages" / f"{ID}.xml": mime_package().encode(),
             icons / "scalable" / "apps" / f"{ID}.svg": (FOLDER / "pegwright.svg").read_bytes(),
             icons / "scalable" / "mimetypes" / f"{KIND.replace('/', '-')}.svg": (FOLDER / "layout.svg").read_bytes()}
    for size in SIZES:
        found[icons / f"{size}x{size}" / "apps" / f"{ID}.png"] = png(size).read_bytes()
    return found


def install(folder: Path) -> list[Done]:
    """Write what is not there yet or differs. FormatError when a place cannot be written."""
    done = []
    for file, data in files(folder).items():
        same = file.is_file() and file.read_bytes() == data
        if not same:
            file.parent.mkdir(parents=True, exist_ok=True)
            save_bytes(file, data)
        done.append(Done(file, "unchanged" if same else "written"))
    _tell(folder, done)
    return done


def remove(folder: Path) -> list[Done]:
    """Take away what `install` wrote; folders stay, since others may use them."""
    done = []
    for file in files(folder):
        there = file.is_file()
        file.unlink(missing_ok=True)
        done.append(Done(file, "removed" if there else "absent"))
    _tell(folder, done)
    return done


def _tell(folder: Path, done: Iterable[Done]) -> None:
    """Bring the desktop's own lists up to date where that can be done and anything has changed."""
    if not any(one.how in ("written", "removed") for one in done):
        return
    for tool, part in TOOLS:
        found = shutil.which(tool)
        if found and (folder / part).is_dir():
            subprocess.run([found, str(folder / part)], stdin=subprocess.DEVNULL, capture_output=True, check=False)
