"""Run in a process of its own: opens the window with every said text in brackets and prints what is shown without them.

What is printed was forgotten, or is a name that the layout holds, a number or a key.
"""

from __future__ import annotations

import re
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from geometry import saying

OPEN, CLOSE = "«", "»"
"""Signs that the letters of the sheets have too."""


def bracket(text: str, about: str) -> str:
    """The text as its own translation, marked."""
    return f"{OPEN}{text}{CLOSE}"


def unsaid(text: str) -> str:
    """What stands outside all brackets and has letters in it; "" when everything was said."""
    while True:
        inner = re.sub(f"{OPEN}[^{OPEN}{CLOSE}]*{CLOSE}", " ", text)
        if inner == text:
            break
        text = inner
    text = re.sub(r"<[^>]*>|&(nbsp|amp|lt|gt|quot|#\d+);", " ", text)
    return " ".join(re.findall(r"[^\W\d_]{3,}", text)) and text.strip()


def texts(window) -> Iterator[tuple[str, str]]:
    """(where, text) of everything that the widgets of a window show, say aloud or tell as a tip."""
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QAbstractItemView, QComboBox, QTableView

    from app.look.descendants import below

    for widget in (window, *below(window)):
        where = f"{type(widget).__name__} {widget.objectName()}".strip()
        for ask in ("text", "title", "toolTip", "statusTip", "accessibleName", "accessibleDescription", "placeholderText",
                    "windowTitle", "toPlainText"):
            if hasattr(widget, ask):
                answer = getattr(widget, ask)
                yield f"{where}.{ask}", str(answer() if callable(answer) else answer)
        model = widget.model() if isinstance(widget, (QAbstractItemView, QComboBox)) else None
        if model is not None:
            columns = model.columnCount() if isinstance(widget, QTableView) else 1
            for row in range(min(model.rowCount(), 40)):
                for column in range(columns):
                    for role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
                        yield f"{where} row {row}", str(model.index(row, column).data(role) or "")
            for column in range(columns if columns > 1 else 0):
                yield f"{where} head", str(model.headerData(column, Qt.Orientation.Horizontal) or "")
    for action in below(window, QAction):
        for ask in ("text", "toolTip", "statusTip"):
            yield f"action {action.data()}.{ask}", getattr(action, ask)()


def drawn(window) -> Iterator[tuple[str, str]]:
    """Words on the drawing and on the sheets."""
    from app.sheets.pages import pages
    from geometry.drawing import Label

    for page in pages(window.document.layout, "A4"):
        for placed in page.content:
            # Lines of one paragraph follow each other: only together are its brackets whole.
            yield f"sheet {page.title}", " ".join(mark.text for mark in placed.drawing if isinstance(mark, Label))
    from geometry.drawing.opened_out import opened_out_groups

    for marks in opened_out_groups(window.document.layout).values():
        yield from (("drawing", mark.text) for mark in marks if isinstance(mark, Label))


def dialogs(window) -> Iterator[tuple[str, str]]:
    """What the dialogs say that need nothing but the window."""
    from app.help.window import HelpWindow
    from app.printing.measure import MeasureBars
    from app.window import texts as words
    from app.window.dialogs.holding import HoldDialog
    from app.window.dialogs.offset_dialog import OffsetDialog
    from app.window.front.numbers_dialog import NumbersDialog

    yield "safety", words.safety_text()
    for made in (HelpWindow(list(window.actions_.values()), words.HAND_KEYS, window), NumbersDialog(window),
                 HoldDialog(window), OffsetDialog(window, "outline"), MeasureBars("A4", "mm", window)):
        yield from texts(made)
        made.done(0)


def names(layout) -> set[str]:
    """Words that the layout itself holds: names that the maker gave."""
    import msgspec

    found: set[str] = set()

    def walk(thing) -> None:
        if isinstance(thing, str):
            found.update(re.findall(r"[^\W\d_]{3,}", thing.lower()))
        elif isinstance(thing, dict):
            for value in thing.values():
                walk(value)
        elif isinstance(thing, (list, tuple)):
            for value in thing:
                walk(value)

    walk(msgspec.to_builtins(layout))
    return found


def main() -> None:
    """Print every text that nobody said, once."""
    saying.use(bracket, "de")
    from PySide6.QtCore import QSettings
    from PySide6.QtWidgets import QApplication

    from app.threads.background import running
    from app.window.demo import demo
    from app.window.main import MainWindow
    from app.window.stages import STAGES
    from app.window.windows import Windows
    from geometry.layout.generic import PATTERNS
    from tests.waiting import rest, until

    application = QApplication([])
    settings = QSettings(str(Path(tempfile.mkdtemp()) / "none.ini"), QSettings.Format.IniFormat)
    layout = demo()
    window = MainWindow(layout, None, Windows(settings))
    window.show()
    seen: dict[str, str] = {}
    given = names([layout, [pattern.id for pattern in PATTERNS]]) | {word.lower() for word in KEPT}

    def note(where: str, text: str) -> None:
        left = unsaid(text)
        if left and not set(re.findall(r"[^\W\d_]{3,}", left.lower())) <= given:
            seen.setdefault(left, where)

    def look() -> None:
        for where, text in texts(window):
            note(where, text)

    for stage in STAGES:
        window.set_stage(stage.key)
        rest(0.05)
        until(lambda: not running())
        application.processEvents()
        look()
        if stage.key in ("blank", "tuners"):
            for held in ("treble side 3", "treble face 1", "treble slot", "outline", "nut", "nut pin"):
                window.document.hold((held,))
                application.processEvents()
                look()
    for where, text in (*drawn(window), *dialogs(window)):
        note(where, text)
    for text, where in seen.items():
        print(f"{where}: {text!r}")
    window.document.replace(window.document.layout, None)
    window.close()
    window.windows.end()  # as the program does: else everything is destroyed in any order
    sys.stdout.flush()


KEPT = ("Pegwright", "Ctrl", "Shift", "Alt", "Esc", "Del", "Home", "min", "DXF", "SVG", "PDF", "CSV", "Letter", "Tabloid",
        "English", "Deutsch", "Tab", "Backspace", "Insert", "Page", "Space", "Up", "Down", "Left", "Right", "Save", "Cancel", "Close")
"""The program's name, formats, papers, names of languages; keys and buttons that the toolkit translates itself."""

if __name__ == "__main__":
    main()
