"""The buttons at the foot of a dialog that takes something or leaves it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton


def ok_cancel(dialog: QDialog, accept: Callable[[], object], word: str = "") -> tuple[QDialogButtonBox, QPushButton]:
    """(the two buttons, the one of them that takes: it calls `accept`, and has this word instead of the system's)."""
    kinds = QDialogButtonBox.StandardButton
    box = QDialogButtonBox(kinds.Ok | kinds.Cancel, dialog, accepted=accept, rejected=dialog.reject)
    take = box.button(kinds.Ok)
    if word:
        take.setText(word)
    return box, take
