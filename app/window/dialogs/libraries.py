"""The libraries that the program is built on, with their versions and licences as their own records say."""

from __future__ import annotations

import importlib.metadata
import platform

import PySide6
import shapely
from msgspec import Struct
from PySide6.QtCore import QLocale, qVersion
from PySide6.QtGui import QGuiApplication

from app import __version__

ROOTS = ("PySide6-Essentials", "shapely", "numpy", "ezdxf", "svgelements", "msgspec", "fonttools", "reportlab",
         "platformdirs", "pillow", "contourpy", "packaging")
"""What pyproject.toml asks for (a test compares); what these need in turn is looked up."""
MOST_LETTERS = 70
"""A licence told in more is a whole text, and only what kind it is is shown."""


class Library(Struct, frozen=True):
    """One library. `licence` is "" where its record does not say."""

    name: str
    version: str
    licence: str


def libraries() -> list[Library]:
    """Every library that is needed and here, by name. One without a record (it cannot be told) is left out."""
    from packaging.requirements import Requirement
    from packaging.utils import canonicalize_name

    found: dict[str, Library] = {}
    waiting = list(ROOTS)
    while waiting:
        name = waiting.pop()
        key = canonicalize_name(name)
        if key in found:
            continue
        try:
            record = importlib.metadata.distribution(name)
        except importlib.metadata.PackageNotFoundError:
            continue
        found[key] = Library(record.metadata["Name"], record.version, licence_of(record.metadata))
        for line in record.requires or []:
            needed = Requirement(line)
            if needed.marker is None or needed.marker.evaluate({"extra": ""}):
                waiting.append(needed.name)
    return sorted(found.values(), key=lambda library: library.name.lower())


def licence_of(record) -> str:
    """What a package's record says of its licence: the expression, else a short text, else the kind it is filed under."""
    said = record.get("License-Expression") or ""
    text = (record.get("License") or "").strip()
    if not said and 0 < len(text) <= MOST_LETTERS and "\n" not in text:
        said = text
    if not said:
        kinds = [line.rpartition(" :: ")[2] for line in record.get_all("Classifier") or [] if line.startswith("License ::")]
        said = ", ".join(kinds) or text.partition("\n")[0][:MOST_LETTERS]
    return said


def versions() -> list[str]:
    """Lines for a report: the program, what it runs on, the screen, the libraries. No names of folders."""
    screen = QGuiApplication.primaryScreen()
    seen = "none" if screen is None else (
        f"{screen.size().width()} x {screen.size().height()} points at {screen.devicePixelRatio():g}, "
        f"shown by {QGuiApplication.platformName()}")
    return [f"Pegwright {__version__}",
            f"Python {platform.python_version()} ({platform.python_implementation()}), PySide6 {PySide6.__version__}, "
            f"Qt {qVersion()}, GEOS {shapely.geos_version_string}",
            f"{platform.system()} {platform.release()} {platform.machine()}, language {QLocale().name()}",
            f"Screen {seen}",
            *(f"{library.name} {library.version}" for library in libraries())]
