"""The editor's window."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Sequence
from contextlib import suppress
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from app.window.running.process import give_back, keep_own_import, paint_alone
from app.window.running.start_lock import Turn
from app.window.running.state_folder import state_folder

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings
    from PySide6.QtWidgets import QApplication

    from app.formats.headstock import Opened
    from app.setup.import_cache import ImportCache
    from app.window.running.faults import Faults
    from app.window.running.threshold import Threshold
    from app.window.windows import Windows

READ_SECONDS = 2.0
"""How long the opening of the window waits for a layout that it is started with."""
RECEIVES_MS = 300
"""From the opening of the window to listening for later starts: the window comes first."""
KEPT_MS = 5000
"""From there to keeping what this start loaded for the next, where there is anything new to keep."""


def run(file: Path | None = None, language: str | None = None, more: Sequence[Path] = ()) -> int:
    """Open the window on a layout (the front page without one) and return when it is closed.

    `language` is a code, for this time; else what the maker chose. `more` are
    files that open in windows of their own. When the program runs already
    and no language is asked for, it is given the files and 0 comes at once. Drawings and pictures are begun from. A file
    that cannot be read is told of in the window: whoever opens it from the desktop sees nothing else.
    """
    # What is loaded stays: to look through it for garbage while it grows costs a tenth of a start. See app/threads/collector.py too.
    gc.disable()
    # Where the program was started from may be gone, or be another place, when the layout is saved or recovered.
    file = file.absolute() if file is not None else None
    more = [other.absolute() for other in more]
    state = state_folder()
    turn = Turn(state)
    try:
        if language is None and handed_over(state, [one for one in (file, *more) if one is not None]):
            return 0
        return _run(file, language, more, state, turn)
    finally:
        turn.over()


def _run(file: Path | None, language: str | None, more: Sequence[Path], state: Path, turn: Turn) -> int:
    """Be the program that runs."""
    from PySide6.QtCore import QSettings, QTimer
    keep_own_import()
    from PySide6.QtWidgets import QApplication

    from app.languages import chosen
    from app.setup import import_cache
    from app.threads.background import left
    from app.window.colours import card_theme
    from app.window.running.threshold import Threshold

    paint_alone()
    settings = QSettings("Pegwright", "Pegwright")
    code = language or chosen.chosen(settings)
    chosen.speak(code)  # before the rooms are loaded: their constants are said as they are loaded

    # The style by its word on the command line: to be handed it, the toolkit loads its table of all that styles have names for.
    application = QApplication.instance() or QApplication([*sys.argv[:1], "-style", "Fusion"])
    application.setApplicationName("Pegwright")
    application.setOrganizationName("Pegwright")
    application.setDesktopFileName("pegwright")
    threshold = Threshold(card_theme(settings), file)
    threshold.appear()
    give_back()
    imports = import_cache.ImportCache(import_cache.place())
    windows, faults = _opened(application, settings, code, state, file, more, threshold, turn)
    imports.stop()
    if imports.grown:
        QTimer.singleShot(KEPT_MS, partial(_keep, imports, windows))
    if sys.platform == "darwin":
        application.installEventFilter(windows)  # elsewhere nobody sends files in this way, and a filter costs time
    # Without a window that closes, as one may have while something was asked, the loop would never end.
    code = application.exec() if windows.current is not None else 0
    windows.stop_receiving()
    windows.end()
    faults.remove()
    if left():
        settings.sync()
        for words in (sys.stdout, sys.stderr):
            with suppress(OSError, ValueError, AttributeError):
                words.flush()
        os._exit(code)
    return code


def _opened(application: QApplication, settings: QSettings, code: str, state: Path, file: Path | None,
            more: Sequence[Path], threshold: Threshold, turn: Turn) -> tuple[Windows, Faults]:
    """Load the rooms and open the windows."""
    from PySide6.QtCore import QTimer

    from app.document.leftovers import found_in
    from app.languages import chosen
    from app.look.program_icon import program_icon
    from app.look.sizes import follow_desktop
    from app.threads.collector import Collector
    from app.window import ask
    from app.window.demo import in_language, is_sample, own_demo
    from app.window.front.drops import is_drawn, take
    from app.window.main import MainWindow
    from app.window.place import kept_stage
    from app.window.running.faults import Faults
    from app.window.running.recovery import recover
    from app.window.windows import Windows
    from geometry.saying import say

    gc.freeze()
    drawn = file is not None and is_drawn(file)
    read, unread, slow = (None, "", False) if file is None or drawn else _read(file)
    application.setWindowIcon(program_icon())
    chosen.teach_toolkit(application, code)
    follow_desktop(application.font(), application.primaryScreen().logicalDotsPerInchY())
    found = found_in(state / "journal")
    windows = Windows(settings, state / "journal")
    layout = own_demo() if read is None else in_language(read.known, read.layout)
    window = MainWindow(layout, None if read is None or is_sample(read.known) else file, windows, drawing_first=True)
    if window.document.path is not None:
        window.document.seen, window.document.known = read.seen, read.known
    faults = Faults(windows)
    faults.install()
    if read is not None:
        window.set_stage(kept_stage(settings))
        window.files.opened(read.known)
    window.show()
    Collector(windows)  # a window while it is built leaves next to nothing to collect
    threshold.give_way()  # before anything is asked, which it would cover
    QTimer.singleShot(RECEIVES_MS, partial(receive, windows, state, turn))
    if not recover(windows, found.left) and read is None:
        window.front.show()
    if found.unreadable:
        from app.window.running import unreadable  # here: hardly any start finds such
        unreadable.tell(windows, found.unreadable)
    if unread:
        ask.warn(window, say("This file was not opened"), unread)
    if slow and windows.current is not None and windows.current.files.open(file):
        windows.current.set_stage(kept_stage(settings))
    if drawn and windows.current is not None:
        if window in windows.all and window.front.shown:
            take(window, file)
        else:  # what was recovered stays as it is
            windows.open(file)
    for other in more:
        windows.open(other)
    return windows, faults


def _read(file: Path) -> tuple[Opened | None, str, bool]:
    """A layout, if it could be read; why it could not; whether its drive has not answered yet."""
    from app.formats.errors import FormatError

    try:
        return read_soon(file), "", False
    except FormatError as error:
        return None, str(error), False
    except TimeoutError:
        return None, "", True


def read_soon(file: Path) -> Opened:
    """A layout and what is known of its file. FormatError when it cannot be read, TimeoutError when its drive does not answer within
    READ_SECONDS: a start does not wait longer, and goes on to read it behind a box that can be called off."""
    from app.formats import headstock
    from app.threads.background import Background

    kept: list[Opened | Exception] = []

    def read() -> None:
        try:
            kept.append(headstock.opened(file))
        except Exception as error:
            kept.append(error)
    thread = Background(read, None)
    thread.start()
    if not thread.wait(READ_SECONDS):
        thread.leave()
        raise TimeoutError
    if isinstance(kept[0], Exception):
        raise kept[0]
    return kept[0]


def _keep(imports: ImportCache, windows: Windows) -> None:
    """Write down, beside the windows, what this start loaded."""
    from app.threads.background import Background

    Background(imports.write, windows).start()


def handed_over(state: Path, files: Sequence[Path]) -> bool:
    """Whether the program runs already, with its own things in this folder, and has taken the files."""
    if os.name != "nt" and not os.path.exists(state / "running"):
        return False
    from app.window.running.one_program import hand_over, meeting_place

    return hand_over(meeting_place(state), files)


def receive(windows: Windows, state: Path, turn: Turn) -> None:
    """Hear from later starts and of Ctrl-C from now on, and let the next start begin; without a folder no start is heard."""
    from app.window.running.interrupt import Interrupt
    from app.window.running.one_program import Reception, meeting_place

    with suppress(OSError):
        state.mkdir(parents=True, exist_ok=True)
        windows.reception = Reception(windows, meeting_place(state))
    turn.over()
    windows.interrupt = Interrupt(windows)
