"""Words of which a widget says more than fit into one line."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel, QWidget


def paragraph(parent: QWidget, text: str = "", name: str = "", **more) -> QLabel:
    """A label that wraps; `name` is that of its kind in the style sheet (`dim`, `title`, `heading`),
    `more` what else of it is set."""
    return QLabel(text, parent, objectName=name, wordWrap=True, **more)


def restyle(widget: QWidget, name: str) -> None:
    """Show a widget as the style sheet has it for another kind."""
    if widget.objectName() != name:
        widget.setObjectName(name)
        widget.style().unpolish(widget)
        widget.style().polish(widget)
