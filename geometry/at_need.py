"""Names of a room that are fetched from its files when they are first used, so that a start does not pay for all of it."""

from __future__ import annotations

import sys
from collections.abc import Callable
from importlib import import_module


def fetched(room: str, homes: dict[str, tuple[str, ...]]) -> Callable[[str], object]:
    """The `__getattr__` of a package: each name from the file that is its home, `homes` being file to names.

    A name must not be that of a file of the room: an import of the file would stand in its place. AttributeError for
    any other name.
    """
    home = {name: file for file, names in homes.items() for name in names}

    def get(name: str) -> object:
        if name not in home:
            raise AttributeError(f"module {room!r} has no attribute {name!r}")
        found = getattr(import_module(f"{room}.{home[name]}"), name)
        setattr(sys.modules[room], name, found)
        return found

    return get
