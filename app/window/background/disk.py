"""What asks a disk, done beside the window and given up when the maker has waited long enough: a network drive that has gone
answers after a minute, or never."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtWidgets import QWidget

from app.formats.errors import FormatError
from app.formats.saving import save_bytes
from app.threads.waiting import done_beside
from app.window import ask
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

Answer = TypeVar("Answer")


class NotWaitedFor(FormatError):
    """The maker gave up waiting: what the drive holds is not known."""


def read_beside(parent: QWidget | None, path: Path, work: Callable[[], Answer]) -> Answer | None:
    """What `work` reads of a file; None when the maker does not wait for it. What it raises is raised here."""
    return done_beside(parent, say("Reading {name}…", name=path.name), work, gives_up=say("Do not wait"))


def written_beside(parent: QWidget, path: Path, work: Callable[[Callable[[], None]], Answer]) -> Answer:
    """What comes of `work`, which writes a file and is given what it calls before it replaces anything. NotWaitedFor when the maker
    does not wait for it: what was there is then replaced no more. What the work raises is raised here."""
    given_up: list[bool] = []
    kept: list[Answer] = []

    def go_on() -> None:
        if given_up:
            raise NotWaitedFor

    def write() -> bool:
        kept.append(work(go_on))
        return True
    if done_beside(parent, say("Writing {name}…", name=path.name), write, gives_up=say("Do not wait")) is None:
        given_up.append(True)
        raise NotWaitedFor(say("{name} was not written as long as you waited: its drive does not answer. What was there before stays, "
                               "unless it was being replaced at that very moment.", name=path.name))
    return kept[0]


def saved_where_asked(window: Frame, title: str, name: str, kinds: str, endings: Sequence[str], failed: str,
                      made: Callable[[Path], bytes]) -> Path | None:
    """Ask for a file, at first of that name beside the layout, and save in it what `made` gives for its path, in the thread too.

    The path; None when none was chosen, and when nothing could be written, which the maker is told under the title `failed`, or the
    disk does not vouch for what was, which is told too.
    """
    path = ask.save_file(window, title, str(window.folder / name), kinds, endings)
    if path is None:
        return None
    try:
        written_beside(window, path, lambda go_on: save_bytes(path, made(path), go_on=go_on))
    except FormatError as error:
        ask.warn(window, ask.title_of(error, failed), str(error))
        return None
    return path
