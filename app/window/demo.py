"""Invented layouts that come with the program."""

from __future__ import annotations

from pathlib import Path

import app
from app.formats import headstock
from app.formats.headstock import SUFFIX
from app.formats.reading import Known, known, real
from geometry.layout import Headstock
from geometry.saying import language

DEMO = f"twelve-string-mixed{SUFFIX}"


def samples() -> Path:
    """The folder of samples: inside an installed package, or beside it in a checkout."""
    package = Path(app.__file__).parent
    installed = package / "samples"
    return installed if installed.is_dir() else package.parent / "samples"


def is_sample(file: Known) -> bool:
    """Whether a file is one of these, of which a copy opens. Links are followed."""
    return Path(file.real).is_relative_to(real(samples()))


def demo() -> Headstock:
    """The invented twelve-string layout that the window opens on."""
    return headstock.read(samples() / DEMO)


def own_demo() -> Headstock:
    """The same in the language in use."""
    return in_language(known(samples() / DEMO), demo())


def in_language(file: Known, layout: Headstock) -> Headstock:
    """A layout that was read from a file; of a sample the words are in the language in use. Its file is English."""
    if language() == "en" or not is_sample(file):
        return layout
    from app.window.sample_words import said  # here: an English start needs none of it

    return said(Path(file.name).name.split(".")[0], layout)
