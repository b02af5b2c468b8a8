"""A layout written to its file, with all that the disk is asked on the way: one piece of work that may be done beside a window."""

from __future__ import annotations

from collections.abc import Callable, Collection
from pathlib import Path

from msgspec import Struct

from app.formats import headstock
from app.formats.reading import Known, known
from app.formats.saving import fingerprint, fingerprint_of, other_names, sweep
from geometry.layout import Headstock


class ChangedElsewhere(Exception):
    """Another program has written the file since it was read or saved here: nothing was written."""


class Written(Struct, frozen=True):
    """What came of a writing."""

    layout: Headstock
    path: Path
    known: Known
    seen: str
    """fingerprint of what was written"""
    kept: bool
    """whether the version before could be kept, if there was one"""
    others: int
    """other names of the file that was there, which keep what was in it"""


def written(layout: Headstock, path: Path, mine: Known | None = None, seen: str | None = None, tried: Collection[str] = (),
            go_on: Callable[[], None] = lambda: None) -> Written:
    """Write a layout under that name.

    ChangedElsewhere when that is the file `mine`, which had the fingerprint `seen` when this program had to do with it last,
    and now has neither that nor one of what this program has `tried` to write there since, be it while this is being written.
    FormatError and Unconfirmed as for `headstock.write`. `go_on` may raise: nothing is then touched.
    """
    path = Path(path)

    def look() -> None:
        if mine is not None and known(path).same(mine) and changed(path, seen, tried):
            raise ChangedElsewhere

    def look_again() -> None:
        """Right before the file is replaced: on a slow drive another program has had minutes since."""
        go_on()
        look()
    look()
    others = other_names(path)
    kept = headstock.write(layout, path, look_again)
    sweep(path.parent)
    return Written(layout, path, known(path), fingerprint(headstock.encode(layout)), kept, others)


def changed(path: Path, seen: str | None, tried: Collection[str] = ()) -> bool:
    """Whether a file is there that has none of these fingerprints; without the first that is not known."""
    return seen is not None and fingerprint_of(path) not in (None, seen, *tried)
