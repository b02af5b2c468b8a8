"""What the settings keep, read back with care: another program, another version or a bad disk may have written them.

A setting that makes no sense is as if it were not there.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QSettings


def one_of(settings: QSettings, key: str, known: Iterable[str], otherwise: str) -> str:
    """The word kept, when it is one that is known."""
    value = settings.value(key)
    return value if isinstance(value, str) and value in tuple(known) else otherwise


def flag(settings: QSettings, key: str) -> bool:
    """Whether it is kept that something is on."""
    return settings.value(key) in (True, "true")


def note(settings: QSettings, key: str, word: str) -> None:
    """Keep a word where another is kept. To write the same again has the disk flush the whole file, and a window that does so
    as it is made is painted after that."""
    if settings.value(key) != word:
        settings.setValue(key, word)


def words(settings: QSettings, key: str) -> list[str]:
    """The words kept."""
    value = settings.value(key)
    value = [value] if isinstance(value, str) else value
    return [one for one in value if isinstance(one, str) and "\0" not in one] if isinstance(value, list) else []
