"""The one seam through which the program asks the maker something, so that tests can answer."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

from PySide6.QtWidgets import QFileDialog, QInputDialog, QMessageBox, QWidget

LAYOUTS = "Headstock layouts (*.headstock.json)"
DRAWINGS = "Drawings (*.dxf *.svg)"


def open_file(parent: QWidget, title: str, folder: str, kinds: str) -> Path | None:
    """A file to read, or None."""
    name, _ = QFileDialog.getOpenFileName(parent, title, folder, kinds)
    return Path(name) if name else None


def save_file(parent: QWidget, title: str, suggestion: str, kinds: str) -> Path | None:
    """A file to write, or None."""
    name, _ = QFileDialog.getSaveFileName(parent, title, suggestion, kinds)
    return Path(name) if name else None


def folder(parent: QWidget, title: str, start: str) -> Path | None:
    """A folder, or None."""
    name = QFileDialog.getExistingDirectory(parent, title, start)
    return Path(name) if name else None


def save_first(parent: QWidget, name: str) -> Literal["save", "discard", "cancel"]:
    """What to do with unsaved work before it would go."""
    box = QMessageBox(parent)
    box.setWindowTitle(parent.tr("Unsaved work"))
    box.setText(parent.tr("{} has changes that are not saved.").format(name))
    buttons = QMessageBox.StandardButton
    box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
    box.setDefaultButton(buttons.Save)
    answer = box.exec()
    return {buttons.Save: "save", buttons.Discard: "discard"}.get(answer, "cancel")


def say(parent: QWidget, title: str, text: str) -> None:
    """Tell the maker one thing and wait until it is read."""
    QMessageBox.information(parent, title, text)


def warn(parent: QWidget, title: str, text: str) -> None:
    """Tell the maker what went wrong and wait until it is read."""
    QMessageBox.warning(parent, title, text)


def text(parent: QWidget, title: str, label: str, value: str = "") -> str | None:
    """A line of text, or None."""
    answer, given = QInputDialog.getText(parent, title, label, text=value)
    return answer if given else None


def recover(parent: QWidget, text: str) -> Literal["open", "later", "discard"]:
    """What to do with work that an earlier run had not saved."""
    box = QMessageBox(parent)
    box.setWindowTitle(parent.tr("Unsaved work was found"))
    box.setText(text)
    take = box.addButton(parent.tr("Open it"), QMessageBox.ButtonRole.AcceptRole)
    drop = box.addButton(parent.tr("Throw it away"), QMessageBox.ButtonRole.DestructiveRole)
    box.addButton(parent.tr("Ask me next time"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(take)
    box.exec()
    clicked = box.clickedButton()
    return "open" if clicked is take else "discard" if clicked is drop else "later"
