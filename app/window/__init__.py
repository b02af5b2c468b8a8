"""The editor's window."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from app.setup.imports import keep_own
from app.window.state_folder import state_folder

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings
    from PySide6.QtWidgets import QApplication

    from app.window.faults import Faults
    from app.window.threshold import Threshold
    from app.window.windows import Windows

RECEIVES_MS = 300
"""From the opening of the window to listening for later starts: the window comes first."""


def run(file: Path | None = None, language: str | None = None, more: Sequence[Path] = ()) -> int:
    """Open the window on a layout (the front page without one) and return when it is closed.

    `language` is a code, for this time; else what the maker chose. `more` are
    layouts that open in windows of their own. When the program runs already
    and no language is asked for, it is given the files and 0 comes at once.
    Raises FormatError when the file cannot be read.
    """
    # What is loaded stays: to look through it for garbage while it grows costs a tenth of a start.
    gc.disable()
    # Where the program was started from may be gone, or be another place, when the layout is saved or recovered.
    file = file.absolute() if file is not None else None
    more = [other.absolute() for other in more]
    state = state_folder()
    if language is None and handed_over(state, [one for one in (file, *more) if one is not None]):
        return 0
    from PySide6.QtCore import QSettings, QTimer
    keep_own()
    from PySide6.QtWidgets import QApplication

    from app.languages import chosen
    from app.look.raster import paint_alone
    from app.window.colours import card_theme
    from app.window.heap import give_back
    from app.window.threshold import Threshold

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
    windows, faults = _opened(application, settings, code, state, file, more, threshold)
    if sys.platform == "darwin":
        application.installEventFilter(windows)  # elsewhere nobody sends files in this way, and a filter costs time
    QTimer.singleShot(RECEIVES_MS, partial(receive, windows, state))
    code = application.exec()
    windows.stop_receiving()
    windows.end()
    faults.remove()
    return code


def _opened(application: QApplication, settings: QSettings, code: str, state: Path, file: Path | None,
            more: Sequence[Path], threshold: Threshold) -> tuple[Windows, Faults]:
    """Load the rooms and open the windows."""
    from app.document.leftovers import leftovers
    from app.formats import headstock
    from app.languages import chosen
    from app.look.program_icon import program_icon
    from app.look.sizes import follow_desktop
    from app.window.demo import demo, home_of
    from app.window.faults import Faults
    from app.window.main import MainWindow
    from app.window.place import kept_stage
    from app.window.recovery import recover
    from app.window.windows import Windows

    gc.freeze()
    layout, seen = headstock.read_marked(file) if file is not None else (demo(), None)
    application.setWindowIcon(program_icon())
    chosen.teach_toolkit(application, code)
    follow_desktop(application.font(), application.primaryScreen().logicalDotsPerInchY())
    left = leftovers(state / "journal")
    windows = Windows(settings, state / "journal")
    home = home_of(file) if file is not None else None
    window = MainWindow(layout, home, settings, windows=windows, drawing_first=True)
    window.document.seen = seen if home is not None else None
    faults = Faults(windows)
    faults.install()
    if file is not None:
        window.set_stage(kept_stage(settings))
        window.files.opened(file)
    window.show()
    gc.enable()  # a window while it is built leaves next to nothing to collect
    threshold.give_way()  # before anything is asked, which it would cover
    if not recover(windows, left) and file is None:
        window.front.show()
    for other in more:
        windows.open(other)
    return windows, faults


def handed_over(state: Path, files: Sequence[Path]) -> bool:
    """Whether the program runs already, with its own things in this folder, and has taken the files."""
    if os.name != "nt" and not (state / "running").exists():
        return False
    from app.window.one_program import hand_over, meeting_place

    return hand_over(meeting_place(state), files)


def receive(windows: Windows, state: Path) -> None:
    """Hear from later starts from now on."""
    from app.window.one_program import Reception, meeting_place

    state.mkdir(parents=True, exist_ok=True)
    windows.reception = Reception(windows, meeting_place(state))
