"""Printing behind a small window with Cancel: some milliseconds of painting at a time, so that the program answers."""

from __future__ import annotations

import time
from collections.abc import Iterator

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QProgressDialog, QWidget

from geometry.saying import say

SLICE = 0.02
"""Seconds of painting between two looks at what else there is to do."""


def in_slices(parent: QWidget, steps: Iterator[tuple[int, int]]) -> int | None:
    """Go through the steps of printing, (pages done, pages in all); the pages printed, None when the maker cancelled.

    What a step raises comes through. The rest of the window is locked meanwhile.
    """
    box = QProgressDialog(say("Printing…"), say("Cancel"), 0, 1, parent)
    box.setWindowModality(Qt.WindowModality.WindowModal)
    box.setMinimumDuration(0)
    box.setAutoClose(False)
    box.setAutoReset(False)
    done, looked = 0, time.monotonic()
    try:
        for done, whole in steps:
            if time.monotonic() - looked < SLICE:
                continue
            box.setMaximum(whole)
            box.setValue(done)
            QCoreApplication.processEvents()
            if box.wasCanceled():
                return None
            looked = time.monotonic()
    finally:
        steps.close()
        box.close()
        box.deleteLater()
    return done
