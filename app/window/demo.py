"""Invented layouts that come with the program."""

from __future__ import annotations

from pathlib import Path

import app
from app.formats import headstock
from app.formats.headstock import SUFFIX
from app.formats.reading import real
from geometry.layout import Headstock
from geometry.saying import language

DEMO = f"twelve-string-mixed{SUFFIX}"


def samples() -> Path:
    """The folder of samples: inside an installed package, or beside it in a checkout."""
    package = Path(app.__file__).parent
    installed = package / "samples"
    return installed if installed.is_dir() else package.parent / "samples"


def home_of(path: Path) -> Path | None:
    """Where a layout read from a file is saved: there, but None for a sample, of which a copy opens. Links are followed."""
    return None if Path(real(path)).is_relative_to(real(samples())) else path


def demo() -> Headstock:
    """The invented twelve-string layout that the window opens on."""
    return headstock.read(samples() / DEMO)


def in_language(path: Path, layout: Headstock) -> Headstock:
    """A layout that was read from a file; of a sample the words are in the language in use. Its file is English."""
    if language() == "en" or home_of(path) is not None:
        return layout
    from app.window.sample_words import said  # here: an English start needs none of it

    return said(path.name.split(".")[0], layout)
