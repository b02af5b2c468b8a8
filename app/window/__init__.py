"""The editor's window."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path


def run(file: Path | None = None, language: str | None = None, more: Sequence[Path] = ()) -> int:
    """Open the window on a layout (the front page without one) and return when it is closed.

    `language` is a code, for this time; else what the maker chose. `more` are
    layouts that open in windows of their own. Raises
    FormatError when the file cannot be read.
    """
    from PySide6.QtCore import QSettings

    from app.languages import chosen

    settings = QSettings("Pegwright", "Pegwright")
    code = language or chosen.chosen(settings)
    chosen.speak(code)  # before the rooms are loaded: their constants are said as they are loaded

    from platformdirs import user_state_path
    from PySide6.QtWidgets import QApplication

    from app.document.leftovers import leftovers
    from app.formats import headstock
    from app.look.program_icon import program_icon
    from app.look.sizes import follow_desktop
    from app.window.demo import demo
    from app.window.faults import Faults
    from app.window.main import MainWindow
    from app.window.place import kept_stage
    from app.window.recovery import recover
    from app.window.windows import Windows

    # Where the program was started from may be gone, or be another place, when the layout is saved or recovered.
    file = file.absolute() if file is not None else None
    layout, seen = headstock.read_marked(file) if file is not None else (demo(), None)
    application = QApplication.instance() or QApplication(sys.argv[:1])
    application.setApplicationName("Pegwright")
    application.setOrganizationName("Pegwright")
    application.setStyle("Fusion")
    application.setWindowIcon(program_icon())
    application.setDesktopFileName("pegwright")
    chosen.teach_toolkit(application, code)
    follow_desktop(application.font(), application.primaryScreen().logicalDotsPerInchY())
    folder = user_state_path("Pegwright", appauthor=False) / "journal"
    left = leftovers(folder)
    windows = Windows(settings, folder)
    window = MainWindow(layout, file, settings, windows=windows)
    window.document.seen = seen
    faults = Faults(windows)
    faults.install()
    if file is not None:
        window.files.remember(file)
        window.set_stage(kept_stage(settings))
    window.show()
    if not recover(windows, left) and file is None:
        window.front.show()
    for other in more:
        windows.open(other)
    if sys.platform == "darwin":
        application.installEventFilter(windows)  # elsewhere nobody sends files in this way, and a filter costs time
    code = application.exec()
    faults.remove()
    return code
