"""One page of a form: the widgets of its rows, made in some turns of the event loop where there are many."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QGridLayout,
    QLabel,
    QToolTip,
    QWidget,
)
from shiboken6 import isValid

from app.look.choice import Choice
from app.look.paragraph import restyle
from app.look.plain import plain
from app.look.turns import Steps, Turns
from app.look.wrapping import WrappingButton
from app.panels.forms.field_help import explained
from app.panels.forms.fields import AngleField, Field, LengthField, TextField
from app.panels.forms.rows import FieldRow
from geometry.errors import GeometryError
from geometry.layout import Headstock, Rack
from geometry.lengths import speaking
from geometry.units import LengthUnit

AT_ONCE = 28
"""Rows that are there at once: more than fit on a screen."""


class FormPage(QWidget):
    """Widgets for rows of one shape; sends (what was changed, edited layout or rack) when one is edited."""

    edited = Signal(str, object)
    refused = Signal(str)

    def __init__(self, rows: list[FieldRow], unit: LengthUnit, columns: tuple[int, int], at_once: int, parent: QWidget) -> None:
        super().__init__(parent)
        self.unit = unit
        self.rows = rows
        self.shape = [row.shape for row in rows]
        self.widgets: list[QWidget] = []
        self._labels: dict[int, QLabel] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(6)
        self._grid.setColumnStretch(0, columns[0])
        self._grid.setColumnStretch(1, columns[1])
        for row in rows[:at_once]:
            self._add(row)
        self._later = Turns(self, self._grid)
        if len(rows) > at_once:
            self._later.begin(self._add_rest())

    def show_rows(self, rows: list[FieldRow]) -> None:
        """Show other values in the same widgets."""
        self.rows = rows
        for row, widget in zip(rows, self.widgets, strict=False):  # what is not made yet is filled when it is made
            self._fill(row, widget)

    def set_unit(self, unit: LengthUnit) -> None:
        """Take what is typed from now on in another unit; the fields are told themselves."""
        self.unit = unit

    def put_back(self) -> None:
        """Forget what was typed and not taken."""
        for widget in self.widgets:
            if isinstance(widget, Field):
                widget.put_back()

    def hold_room(self, height: int) -> None:
        """Stay so high until all rows are made: what is scrolled to stays in its place."""
        if len(self.widgets) < len(self.rows):
            self.setMinimumHeight(height)

    def take_keyboard(self, before: FormPage) -> None:
        """Give the keyboard to the row of the same name as the one that has it on the page before; where that is gone, as a
        button whose work is done, to the nearest row with a value: a button in its place might be pressed unasked."""
        now = QApplication.focusWidget()
        if now not in before.widgets:
            return
        place = before.widgets.index(now)
        gone = before.rows[place]
        made = sorted(range(len(self.widgets)), key=lambda i: abs(i - place))  # what is not made yet cannot be given it
        same = [i for i in made if (self.rows[i].label, self.rows[i].kind) == (gone.label, gone.kind)]
        values = [i for i in made if self.rows[i].change is not None and self.widgets[i].isEnabled()
                  and self.rows[i].kind not in ("heading", "note", "button", "fact")]
        if same or values:
            self.widgets[(same or values)[0]].setFocus()

    def event(self, event: QEvent) -> bool:
        """A drawing is made when its tip is asked for: label and field pass that on, for their own tip is empty then."""
        if event.type() == QEvent.Type.ToolTip and self._show_drawing(event):
            return True
        return super().event(event)

    # ---- inside ---------------------------------------------------------
    def _add_rest(self) -> Steps:
        while len(self.widgets) < len(self.rows):
            self._add(self.rows[len(self.widgets)])
            yield
        self.setMinimumHeight(0)

    def _add(self, row: FieldRow) -> None:
        i = len(self.widgets)
        at = 2 * i  # two rows of the grid each: words stand below their label
        widget = self._make(row)
        widget.setProperty("row", i)
        self.widgets.append(widget)
        if row.kind in ("heading", "note"):
            self._grid.addWidget(widget, at, 0, 1, 2)
        elif row.kind == "button":
            self._grid.addWidget(widget, at, 0, 1, 2, Qt.AlignmentFlag.AlignLeft)
        else:
            label = QLabel(row.label, self, textFormat=Qt.TextFormat.PlainText, objectName="dim", wordWrap=True)
            self._labels[i] = label
            label.setBuddy(widget)
            widget.setAccessibleName(row.label)
            if row.kind == "words":
                self._grid.addWidget(label, at, 0, 1, 2)
                self._grid.addWidget(widget, at + 1, 0, 1, 2)
            else:
                self._grid.addWidget(label, at, 0)
                self._grid.addWidget(widget, at, 1)
        self._fill(row, widget)

    def _make(self, row: FieldRow) -> QWidget:
        if row.kind in ("heading", "note"):
            label = QLabel(row.label, self, textFormat=Qt.TextFormat.PlainText,
                           objectName="heading" if row.kind == "heading" else "dim", wordWrap=True)
            label.setContentsMargins(0, 8 if row.kind == "heading" else 0, 0, 0)
            return label
        if row.kind == "button":
            return WrappingButton(row.label, self, clicked=self._pressed)
        if row.kind == "fact" or row.change is None:
            return QLabel(self, textFormat=Qt.TextFormat.PlainText,
                          alignment=Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, wordWrap=True,
                          textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse)
        if row.kind == "choice":
            return Choice(self, row.asks, row.choices, minimumContentsLength=10, activated=self._chosen,
                          sizeAdjustPolicy=QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        if row.kind == "flag":
            return QCheckBox(self, clicked=self._flagged)
        if row.kind == "length":
            field = LengthField(self.unit, row.optional, row.empty, self)
        elif row.kind == "angle":
            field = AngleField(row.optional, row.empty, self)
        else:
            field = TextField(self, placeholderText=row.empty)
        field.sent.connect(self._sent)
        field.refused.connect(self.refused)
        field.mended.connect(self._mended)
        return field

    def _fill(self, row: FieldRow, widget: QWidget) -> None:
        if row.kind in ("heading", "button", "note"):
            return
        self._explain(row, widget)
        if isinstance(widget, QLabel):
            text = str(row.value)
            if widget.text() != text:
                widget.setText(text)
            restyle(widget, "warning" if row.warn else "")
        elif isinstance(widget, QComboBox):
            index = widget.findData(row.value)
            if index != widget.currentIndex():
                widget.setCurrentIndex(index)
            tip = "\n".join(word for word in (widget.currentText(), row.help) if word)
            if widget.toolTip() != tip:
                widget.setToolTip(tip)
        elif isinstance(widget, QCheckBox):
            widget.setChecked(bool(row.value))
        else:
            widget.show_value(row.value)

    def _explain(self, row: FieldRow, widget: QWidget) -> None:
        """The row's sentence as a tip of label and field, and for screen readers; a tip with a drawing waits for event(). Words may be
        longer than their field: its tip begins with them."""
        sentence, drawing = explained(row)
        words = row.kind == "words"
        tip = "" if drawing else plain("\n".join(filter(None, (str(row.value), sentence)))) if words else sentence
        label = self._labels.get(widget.property("row"))
        if label is not None and label.toolTip() != tip:
            label.setToolTip(tip)
        own = isinstance(widget, QComboBox)  # whose tip begins with what is chosen
        if (sentence or words) and not own and widget.property("bad") is not True and widget.toolTip() != tip:
            widget.setToolTip(tip)
        if sentence and widget.accessibleDescription() != sentence:
            widget.setAccessibleDescription(sentence)

    def _show_drawing(self, event: QHelpEvent) -> bool:
        """Show the tip with a drawing of the row under the mouse, where the row has one."""
        child = self.childAt(event.pos())
        while child is not None and child.parentWidget() is not self:
            child = child.parentWidget()
        widget = next((self.widgets[row] for row, label in self._labels.items() if label is child), child)
        if widget not in self.widgets:
            return False
        sentence, drawing = explained(self.rows[widget.property("row")])
        if drawing:
            from app.help.tip import pictured
            QToolTip.showText(event.globalPos(), pictured(sentence, drawing), child)
        return bool(drawing)

    def _row(self) -> tuple[FieldRow, QWidget]:
        widget = self.sender()
        return self.rows[widget.property("row")], widget

    def _change(self, row: FieldRow, widget: QWidget, value: object) -> None:
        try:
            with speaking(self.unit):
                layout = row.change(value)
        except GeometryError as error:
            if hasattr(widget, "refuse"):
                widget.refuse(str(error))
            else:
                self._fill(row, widget)
                self.refused.emit(str(error))
            return
        if isinstance(layout, Headstock | Rack):
            self.edited.emit(row.label, layout)

    def _mended(self) -> None:
        self.refused.emit("")

    def _sent(self, value: object) -> None:
        self._change(*self._row(), value)

    def _chosen(self) -> None:
        row, widget = self._row()
        if row.asks and widget.currentIndex() == 0:  # the question itself, pressed in the open list
            return
        self._change(row, widget, widget.currentData())
        if isValid(widget) and self.rows[widget.property("row")] is row:  # nothing came of it: the box says again what is so
            self._fill(row, widget)

    def _flagged(self, on: bool) -> None:
        self._change(*self._row(), on)

    def _pressed(self) -> None:
        self._change(*self._row(), True)
