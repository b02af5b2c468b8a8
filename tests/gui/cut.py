"""Which words of a window are cut off: widgets too small for their text, or beyond what their scroll area shows."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QCheckBox,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QRadioButton,
    QScrollArea,
    QStyle,
    QStyleOptionComboBox,
    QWidget,
)

from app.look.descendants import below
from app.look.elided import Elided
from app.look.flow import Flow
from app.look.wrapping import Wrapping


def cut(root: QWidget) -> list[str]:
    """One sentence for each visible text that is not seen whole; what is shortened with dots and a tip is meant so."""
    found = []
    for widget in below(root):
        if not widget.isVisible() or widget.visibleRegion().isEmpty() and _scroll_area(widget) is None:
            continue
        why = _too_small(widget) or _beyond(widget, root)
        if why:
            found.append(f"{_name(widget)}: {why}")
    return found


def _name(widget: QWidget) -> str:
    text = widget.text() if hasattr(widget, "text") and callable(widget.text) else widget.accessibleName()
    return f"{type(widget).__name__} {text[:60]!r}"


def _too_small(widget: QWidget) -> str:
    if isinstance(widget, Elided):
        return ""
    if isinstance(widget, QLabel) and widget.text():
        return _label(widget)
    if isinstance(widget, Wrapping):
        needed = widget.minimumSizeHint()
        short = widget.width() < needed.width() or widget.height() < needed.height()
        return f"{widget.width()} x {widget.height()} where {needed.width()} x {needed.height()} are needed" if short else ""
    if isinstance(widget, QAbstractButton) and (widget.text() or not widget.icon().isNull()):
        needed = widget.minimumSizeHint() if isinstance(widget, (QCheckBox, QRadioButton)) else widget.sizeHint()
        if widget.objectName() in ("card", "fold") or isinstance(widget, (QCheckBox, QRadioButton)):
            needed.setWidth(min(needed.width(), widget.fontMetrics().horizontalAdvance(widget.text()) + 8))
        if widget.width() < needed.width() or widget.height() < min(needed.height(), widget.fontMetrics().height() + 2):
            return f"{widget.width()} x {widget.height()} where {needed.width()} x {needed.height()} are needed"
    if isinstance(widget, QComboBox):
        return _combo(widget)
    if isinstance(widget, QLineEdit):
        return _line(widget)
    if isinstance(widget, QHeaderView):
        return _heads(widget)
    return ""


def _label(label: QLabel) -> str:
    if label.wordWrap():
        needed = label.heightForWidth(label.width())
        if needed > label.height() + 1:
            return f"{label.height()} pixels high where {needed} are needed"
        words = label.text().split() if label.textFormat() != Qt.TextFormat.RichText and "<" not in label.text() else []
        widest = max((label.fontMetrics().horizontalAdvance(word) for word in words), default=0)
        return f"{label.width()} pixels wide, a word takes {widest}" if widest > label.width() + 1 else ""
    needed = label.sizeHint()
    if needed.width() > label.width() + 1 or needed.height() > label.height() + 1:
        return f"{label.width()} x {label.height()} where {needed.width()} x {needed.height()} are needed"
    return ""


def _combo(box: QComboBox) -> str:
    """What is chosen is seen whole, or told by the tip."""
    option = QStyleOptionComboBox()
    box.initStyleOption(option)
    field = box.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, box)
    needed = box.fontMetrics().horizontalAdvance(box.currentText())
    if needed > field.width() and box.currentText() not in box.toolTip():
        return f"{field.width()} pixels for what is chosen, {needed} are needed"
    return "" if box.height() >= box.fontMetrics().height() else "not as high as its letters"


def _line(line: QLineEdit) -> str:
    if isinstance(line.parent(), QComboBox):
        return ""
    text = line.text() or line.placeholderText()
    needed = line.fontMetrics().horizontalAdvance(text)
    room = line.contentsRect().width() - 2 * line.fontMetrics().horizontalAdvance("i")
    if needed > room and text not in line.toolTip():
        return f"{room} pixels for its text, {needed} are needed"
    return "" if line.height() >= line.fontMetrics().height() else "not as high as its letters"


def _heads(header: QHeaderView) -> str:
    if header.orientation() != Qt.Orientation.Horizontal:
        return ""
    for i in range(header.count()):
        if not header.isSectionHidden(i) and header.sectionSize(i) < header.sectionSizeFromContents(i).width():
            return f"column {i} is {header.sectionSize(i)} wide, its head takes {header.sectionSizeFromContents(i).width()}"
    return ""


def _scroll_area(widget: QWidget) -> QScrollArea | None:
    parent = widget.parentWidget()
    while parent is not None and not isinstance(parent, QScrollArea):
        parent = parent.parentWidget()
    return parent


def _beyond(widget: QWidget, root: QWidget) -> str:
    """Sticks out sideways of what does not scroll sideways, or of the window."""
    if not isinstance(widget, (QLabel, QAbstractButton, QComboBox, QLineEdit)):
        return ""
    if isinstance(widget, QLineEdit) and isinstance(widget.parent(), QComboBox):
        return ""
    area = _scroll_area(widget)
    if area is None:
        frame: QWidget = root
    elif area.horizontalScrollBarPolicy() == Qt.ScrollBarPolicy.ScrollBarAlwaysOff:
        frame = area.viewport()
    else:
        return ""
    left = widget.mapTo(root, QPoint(0, 0)).x() - frame.mapTo(root, QPoint(0, 0)).x()
    if left < -1 or left + widget.width() > frame.width() + 1:
        return f"sticks out: from {left} to {left + widget.width()} in {frame.width()} pixels"
    if area is None:
        top = widget.mapTo(root, QPoint(0, 0)).y()
        if top < -1 or top + widget.height() > root.height() + 1:
            return f"sticks out below: to {top + widget.height()} in {root.height()} pixels"
        parent = widget.parentWidget()
        if not isinstance(parent, QAbstractScrollArea) and parent is not None and not (
                parent.rect().adjusted(-1, -1, 1, 1).contains(widget.geometry())) and not isinstance(parent.layout(), Flow):
            return "is larger than what it lies in"
    return ""
