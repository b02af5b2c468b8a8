"""A fault of the program never closes it: one calm dialog, the layout kept, and on with the work.

Errors come from slots and virtual methods (sys.excepthook), from threads, and
from the window toolkit. They are shown from the event loop, not from where
they arose, since that may be in the middle of painting. The same fault is
shown once; after that the foot of the window says that it came again.
"""

from __future__ import annotations

import os
import sys
import threading
import time
from collections import Counter, deque
from contextlib import suppress
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer, QtMsgType, Signal, qInstallMessageHandler
from PySide6.QtWidgets import QApplication, QProgressDialog
from shiboken6 import isValid

from app.window.running.fault_report import place_of, report
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.main import MainWindow
    from app.window.running.fault_dialog import FaultDialog
    from app.window.windows import Windows

TRACE = "PEGWRIGHT_TRACE"
"""Set this in the environment to have faults printed as well."""
MOST_STEPS = 20
MOST_TOLD = 20
MOST_AT_ONCE, AT_ONCE_SECONDS = 100, 1.0
"""A fault that comes more often is told of once in so many seconds."""
MOST_TRIES, TRY_AGAIN_MS = 8, 250
MOST_SHOWN = 20
"""Different faults shown in one run; a program that breaks everywhere is not made better by more dialogs."""


class ToolkitFault(Exception):
    """The window toolkit called something critical."""


class Faults(QObject):
    """Catches what nothing else caught, and tells of it in the window used last."""

    _met = Signal(object)

    def __init__(self, windows: Windows) -> None:
        super().__init__(windows)
        self._windows = windows
        self._last = windows.current
        self._told: deque[str] = deque(maxlen=MOST_TOLD)
        self._shown: set[str] = set()
        self._times: Counter[str] = Counter()
        self._latest: dict[str, float] = {}
        self._before: tuple | None = None
        self.dialog: FaultDialog | None = None
        self._met.connect(self._show, Qt.ConnectionType.QueuedConnection)

    @property
    def _window(self) -> MainWindow:
        """The window used last; the last one that was, when all are closed."""
        self._last = self._windows.current or self._last
        return self._last

    # ---- catching -------------------------------------------------------
    def install(self) -> None:
        """Catch from now on."""
        self._before = (sys.excepthook, threading.excepthook, sys.unraisablehook, qInstallMessageHandler(self._message))
        sys.excepthook = self._raised
        threading.excepthook = self._raised_in_thread
        sys.unraisablehook = self._unraisable

    def remove(self) -> None:
        """Leave everything as it was before `install`."""
        if self._before is not None:
            sys.excepthook, threading.excepthook, sys.unraisablehook, handler = self._before
            qInstallMessageHandler(handler)
            self._before = None

    def _raised(self, kind: type, error: BaseException, trace) -> None:
        if not isinstance(error, Exception) or os.environ.get(TRACE):
            sys.__excepthook__(kind, error, trace)
        if isinstance(error, Exception):
            self._meet(error.with_traceback(trace))

    def _raised_in_thread(self, args) -> None:
        if isinstance(args.exc_value, Exception):
            self._meet(args.exc_value)

    def _meet(self, error: Exception) -> None:
        """Take the error to the event loop of the window, with what was being done."""
        place, now = place_of(error), time.monotonic()
        self._times[place] += 1
        if self._times[place] > MOST_AT_ONCE and now - self._latest[place] < AT_ONCE_SECONDS:
            return  # what every event brings about again would leave no time for anything else
        self._latest[place] = now
        commands = self._window.commands
        doing, commands.doing = commands.doing, ""
        self._met.emit((error, doing))

    def _unraisable(self, args) -> None:
        """An error while something was being thrown away: noted for the next report, not worth a dialog."""
        self._told.append(f"{type(args.exc_value).__name__}: {args.exc_value}")

    def _message(self, kind: QtMsgType, context, text: str) -> None:
        self._told.append(text)
        if kind == QtMsgType.QtCriticalMsg:
            self._meet(ToolkitFault(text))
        elif sys.stderr is not None:
            with suppress(OSError, ValueError):  # its reader may have gone: an error in here would take the program with it
                print(text, file=sys.stderr)

    # ---- showing --------------------------------------------------------
    def _show(self, met: tuple[Exception, str]) -> None:
        """Keep the layout, then tell; never raises, whatever state the window is in."""
        error, doing = met
        place = place_of(error)
        try:
            place = f"{place_of(error)} {error}"[:300] if isinstance(error, ToolkitFault) else place_of(error)
            known = place in self._shown or len(self._shown) >= MOST_SHOWN
            if self.dialog is not None and not isValid(self.dialog):
                self.dialog = None  # it went with the window that it stood before
            if self.dialog is not None:
                self._shown.add(place)
                self.dialog.more("" if known else self._report(error, doing))
            elif known:
                self._window.say(say("A fault of the program came again; your layout is kept."))
            else:
                self._shown.add(place)
                self._open(error, doing, self._keep())
        except Exception as second:
            # What broke may be the window itself, which the dialog belongs to: it may have passed in a moment.
            if self._times[place] <= MOST_TRIES and (self.dialog is None or not isValid(self.dialog) or not self.dialog.isVisible()):
                self.dialog = None
                self._shown.discard(place)
                self._times[place] += 1
                QTimer.singleShot(TRY_AGAIN_MS, self, partial(self._met.emit, met))
            sys.__excepthook__(type(second), second, second.__traceback__)

    def _keep(self) -> str:
        """Put back what the hand was doing, write the journals, and say where the work is."""
        window = self._window
        for other in self._windows.all:
            if other is not window and other.journal is not None:
                other.journal.write()
        try:
            window.hand.cancel()
        except Exception as error:
            self._told.append(f"putting the gesture back: {type(error).__name__}: {error}")
        document, journal = window.document, window.journal
        if not document.unsaved and document.path is not None:
            return say("Your layout is safe: it is saved as {path}.", path=document.path.name)
        if journal is not None and document.unsaved:
            journal.note(document.layout, document.path, document.seen)
            journal.write()
            if not journal.trouble:
                return say("Your layout is as it was after the last step, and it has been written down as {file}: it "
                           "is offered at the next start if anything else goes wrong. Go on, and save it soon.",
                           file=journal.file)
        if not document.unsaved:
            return say("Your layout is as it was; it holds nothing that is not saved.")
        return say("Your layout is still in the window, but it could not be written down: save it now.")

    def _open(self, error: Exception, doing: str, kept: str) -> None:
        from app.window.running.fault_dialog import (
            FaultDialog,  # here: a start need not wait for it, it is loaded beside the window
        )
        what = (say("Something inside the program went wrong at “{doing}”.", doing=doing) if doing else
                say("Something inside the program went wrong."))
        parent = QApplication.activeModalWidget() or self._window
        if isinstance(parent, QProgressDialog):  # it goes by itself when the work is done, and would take this along unread
            parent = parent.parentWidget() or self._window
        self.dialog = FaultDialog(what, kept, self._report(error, doing), parent)
        self.dialog.finished.connect(self._closed)
        self.dialog.open()

    def _report(self, error: Exception, doing: str) -> str:
        window = self._window
        document = window.document
        steps = [name for name, _ in document.history.past[-MOST_STEPS:]]
        hidden = [str(document.path.parent), document.path.name] if document.path is not None else []
        where = f"{doing or 'no command'} (stage {window.stage}, tool {window.tools.tool})"
        return report(error, where, steps, self._told, hidden)

    def _closed(self) -> None:
        self.dialog.deleteLater()
        self.dialog = None
