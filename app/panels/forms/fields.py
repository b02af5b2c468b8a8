"""Fields that take what makers type: `12.5`, `1/2"`, `12 mm`, `14°`."""

from __future__ import annotations

import math
from weakref import WeakSet

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QLineEdit, QWidget
from shiboken6 import isValid

from app.look.plain import plain
from geometry.errors import GeometryError
from geometry.units import LengthUnit, format_angle, format_close, parse_angle, parse_length

STEPS = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)

_refused: WeakSet[Field] = WeakSet()
"""the fields of all windows in which stands what was refused"""


def refused_in(window: QWidget) -> list[Field]:
    """The fields of a window, seen or not, in which stands what was refused."""
    return [field for field in _refused if isValid(field) and field.window() is window]


class Field(QLineEdit):
    """A line that sends its value when Enter is pressed or the field is left, and Esc puts the old text back."""

    sent = Signal(object)
    refused = Signal(str)
    mended = Signal()
    """what was refused is no longer there"""

    def __init__(self, parent: QWidget | None = None, **more) -> None:
        super().__init__(parent, **more)
        self._text = ""
        self._taken_over = ""
        self._own_tip = ""
        """its tip while nothing is refused"""
        self.refusal = ""
        """why what stands in it was refused, in a sentence; "" when it was not"""
        self.setAlignment(Qt.AlignmentFlag.AlignRight)
        self.editingFinished.connect(self.take)
        self.textEdited.connect(self._clear_bad)

    def show_text(self, text: str) -> None:
        """Show a value without sending it; what is being typed is left alone."""
        if self._text == text:
            return
        self._text = text
        if not (self.hasFocus() and self.isModified()):
            self.setText(text)
            self.setCursorPosition(0)
            self._mark(False)

    def read(self, text: str) -> object:
        """The value that a text stands for; GeometryError with a sentence when it stands for none."""
        raise NotImplementedError

    def refuse(self, message: str) -> None:
        """Mark the field and say why; the text stays so that it can be mended, Esc puts back what was there before."""
        if self._text == self.text():
            self._text = self._taken_over
        if not self.bad:
            self._own_tip = self.toolTip()
        self._mark(True)
        self.refusal = message
        self.setToolTip(plain(message))
        self.refused.emit(message)

    def take(self) -> None:
        """Send what was typed, if it can be read."""
        if not self.isModified() or self.text() == self._text:
            self.setModified(False)
            return
        try:
            value = self.read(self.text())
        except GeometryError as error:
            self.refuse(str(error))
            return
        self.setModified(False)
        self._taken_over, self._text = self._text, self.text()
        self.sent.emit(value)

    @property
    def bad(self) -> bool:
        """Whether what stands in it was refused; `refusal` and its tip say why."""
        return self.property("bad") is True

    def _mark(self, bad: bool) -> None:
        if self.bad != bad:
            self.setProperty("bad", bad)
            (_refused.add if bad else _refused.discard)(self)
            self.style().unpolish(self)
            self.style().polish(self)
            if not bad:
                self.refusal = ""
                self.setToolTip(self._own_tip)
                self.mended.emit()

    def _clear_bad(self) -> None:
        self._mark(False)

    def focusInEvent(self, event) -> None:
        super().focusInEvent(event)
        self.installEventFilter(self)

    def focusOutEvent(self, event) -> None:
        self.removeEventFilter(self)
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason and not self.bad:
            self.home(False)  # whoever reads on finds its beginning

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Esc in a field that is being typed into puts it back, and does nothing else in the window. Undo takes typing back, and
        where nothing is typed the last step: who has just sent a wrong number with Enter is still in its field.

        Only what has the keyboard looks at its events: a page of fields gets thousands while it is laid out.
        """
        if event.type() == QEvent.Type.ShortcutOverride and event.key() == Qt.Key.Key_Escape and self._typed_into:
            event.accept()
            return True
        if event.type() == QEvent.Type.ShortcutOverride and not self._typed_into and any(map(event.matches, STEPS)):
            event.ignore()  # else the line takes the key for itself, and has nothing to take back
            return True
        return False

    def put_back(self) -> None:
        """Forget what was typed and not taken."""
        if self._typed_into:
            self.setText(self._text)
            self.setModified(False)
            self._mark(False)

    @property
    def _typed_into(self) -> bool:
        return self.isModified() or self.bad

    def keyPressEvent(self, event) -> None:
        if event.key() == Qt.Key.Key_Escape and self._typed_into:
            self.put_back()
            event.accept()
            return
        super().keyPressEvent(event)


class LengthField(Field):
    """A length; sends mm, or None when empty and that is allowed."""

    def __init__(self, unit: LengthUnit, optional: bool = False, empty: str = "",
                 parent: QWidget | None = None, **more) -> None:
        super().__init__(parent, placeholderText=empty, **more)
        self._unit = unit
        self._value: float | None = None
        self._optional = optional

    @property
    def unit(self) -> LengthUnit:
        """What lengths are shown in."""
        return self._unit

    def set_unit(self, unit: LengthUnit) -> None:
        """Show in another unit; the value does not change."""
        self._unit = unit
        self.show_value(self._value)

    def show_value(self, mm: float | None) -> None:
        """Show a length in mm; in fractions of an inch only where they are true to the length, else in thousandths."""
        self._value = mm
        self.show_text("" if mm is None else format_close(mm, self._unit, decimals=2, mark=True))

    def read(self, text: str) -> float | None:
        if not text.strip() and self._optional:
            return None
        return parse_length(text, self._unit)


class AngleField(Field):
    """An angle; sends degrees, or None when empty and that is allowed."""

    def __init__(self, optional: bool = False, empty: str = "", parent: QWidget | None = None, **more) -> None:
        super().__init__(parent, placeholderText=empty, **more)
        self._optional = optional

    def show_value(self, degrees: float | None) -> None:
        """Show an angle in degrees: with a tenth, or with the hundredths that it has."""
        if degrees is None:
            self.show_text("")
            return
        fine = abs(degrees - round(degrees, 1)) >= 0.005
        self.show_text(format_angle(math.radians(degrees), 2 if fine else 1))

    def read(self, text: str) -> float | None:
        if not text.strip() and self._optional:
            return None
        return math.degrees(parse_angle(text))


class TextField(Field):
    """Plain text."""

    def __init__(self, parent: QWidget | None = None, **more) -> None:
        super().__init__(parent, **more)
        self.setAlignment(Qt.AlignmentFlag.AlignLeft)

    def show_value(self, text: str) -> None:
        """Show a text."""
        self.show_text(text)

    def read(self, text: str) -> str:
        return text.strip()
