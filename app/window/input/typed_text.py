"""What is being typed in a window when something else happens: it counts first, and what was refused goes with its layout, as
does how far the panels were scrolled."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QLineEdit

from app.look.descendants import tell
from app.panels.forms.fields import Field, refused_in

if TYPE_CHECKING:
    from app.window.frame import Frame


def take_typed(window: Frame) -> None:
    """Take what is being typed, as if its field or cell were left: the keyboard stays where it is when a menu or a key is used.

    Saving, printing and closing would leave it out, and another unit would read it as another length. What cannot be
    read is refused in its place.
    """
    now = window.focusWidget()
    if isinstance(now, Field):
        now.take()
    elif isinstance(now, QLineEdit):
        from PySide6.QtWidgets import QAbstractItemView  # here: a start shows no table

        table = now.parentWidget() and now.parentWidget().parentWidget()
        if isinstance(table, QAbstractItemView):
            table.setFocus()  # its editor is left, and sends what is in it


class TypedText(QObject):
    """Puts back what was refused for a layout when another one is opened, whose panels are read from their beginning."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self._opened = window.document.opened
        window.document.file_changed.connect(self._file)

    def _file(self) -> None:
        if self._opened != self._window.document.opened:
            self._opened = self._window.document.opened
            for field in refused_in(self._window):
                field.put_back()
            tell(self._window, "to_top")
