"""Reads a catalogue without Qt, and knows which languages there are."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from geometry import saying

FOLDER = Path(__file__).parent
ENGLISH = "en"
NAMES = {"en": "English", "de": "Deutsch"}
"""Each language by its own name; every one but English has a catalogue."""
CONTEXT = "Pegwright"
"""The one context of every message: the English text and what it is about are key enough."""


def source_file(code: str) -> Path:
    """The catalogue that translators edit."""
    return FOLDER / f"pegwright_{code}.ts"


def compiled_file(code: str) -> Path:
    """The catalogue that the window loads."""
    return FOLDER / f"pegwright_{code}.qm"


def read(code: str) -> dict[tuple[str, str], str]:
    """Every finished translation by (English text, what it is about); empty for English."""
    if code == ENGLISH:
        return {}
    from xml.etree import ElementTree  # here, for the window reads the compiled catalogue
    found = {}
    for message in ElementTree.parse(source_file(code)).iter("message"):
        translation = message.find("translation")
        if translation is not None and translation.get("type") is None and translation.text:
            found[message.findtext("source", ""), message.findtext("comment", "")] = translation.text
    return found


def speak(code: str) -> None:
    """Say everything in this language, read without Qt. For commands that open no window."""
    known = read(code if code in NAMES else ENGLISH)
    saying.use((lambda text, about: known.get((text, about), "")) if known else None, code)


def fitting(wanted: Iterable[str]) -> str:
    """The first language in a list such as `de-AT, en-GB` that the program speaks; else English."""
    for name in wanted:
        code = name.replace("_", "-").partition("-")[0].lower()
        if code in NAMES:
            return code
    return ENGLISH
