"""The way of the Tab key: every part that takes the keyboard, in the order in which it is read.

No part is asked for its focus proxy, its group or its neighbours in the toolkit's own order: the binding between Python
and the toolkit takes what such a question is answered with for a part of whom was asked. The inside of a scroll area
would own the area, which is its own parent: two that own each other and that nobody else holds are given up at the next
collection of garbage, with all that is in them, while they are on show.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QButtonGroup,
    QComboBox,
    QLineEdit,
    QScrollArea,
    QWidget,
)

NONE = -1
"""The number that a group gives a button which is not one of it."""


def stops(root: QWidget, also: QWidget | None = None, groups: Sequence[QButtonGroup] = ()) -> list[QWidget]:
    """What Tab stops at below `root`, row by row from the left. Of buttons of which one is chosen, that one alone.

    A scroll area is a stop only where there is something to scroll. `also` is listed in its place, stop or not.
    `groups` are the groups of buttons around `root`: a group is a part of what its buttons are in.
    """
    children = root.children()
    groups = (*groups, *(part for part in children if isinstance(part, QButtonGroup)))
    found: list[QWidget] = []
    for row in _rows([child for child in children if isinstance(child, QWidget)]):
        for child in row:
            if child is also or _stops(child, root, groups):
                found.append(child)
            found += stops(child, also, groups)
    return found


def step(root: QWidget, onward: bool) -> bool:
    """Give the keyboard to the next stop, or the one before; round again at the ends. False where there is none."""
    chain = stops(root)
    if not chain:
        return False
    now = QApplication.focusWidget()
    if now in chain:
        to = chain[(chain.index(now) + (1 if onward else -1)) % len(chain)]
    else:
        to = _after(root, chain, now, onward)
    give_keyboard(to, Qt.FocusReason.TabFocusReason if onward else Qt.FocusReason.BacktabFocusReason)
    return True


def give_keyboard(to: QWidget, reason: Qt.FocusReason = Qt.FocusReason.TabFocusReason) -> None:
    """Give it the keyboard, and bring it into view in all that scrolls around it: or what has the keyboard in its place, since the
    field that was left may have had rows shown anew by what was typed into it."""
    to.setFocus(reason)
    now = QApplication.focusWidget()
    if now is not None and now is not to:
        to = now
        QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)  # it was made a moment ago, and lies nowhere yet
    area = to.parentWidget()
    while area is not None:
        if isinstance(area, QScrollArea):
            area.ensureWidgetVisible(to)
        area = area.parentWidget()


class ReadInOrder:
    """Mixed into a dialog: Tab leads through it as it is read, not as its parts were made, and Alt with a letter presses a button."""

    def showEvent(self, event: QShowEvent) -> None:
        from app.look.alt_letters import give_letters  # here: a start shows no dialog

        give_letters(self)
        super().showEvent(event)

    def focusNextPrevChild(self, onward: bool) -> bool:
        return step(self, onward)


def _after(root: QWidget, chain: list[QWidget], now: QWidget | None, onward: bool) -> QWidget:
    """The stop beside a widget that is none itself, as a button that is not the chosen one of its group."""
    order = stops(root, now)
    at = order.index(now) if now in order else (-1 if onward else len(order))
    left = order[at + 1:] if onward else order[:max(at, 0)][::-1]
    return left[0] if left else (chain[0] if onward else chain[-1])


def _stops(widget: QWidget, parent: QWidget, groups: Sequence[QButtonGroup]) -> bool:
    one_of = _one_of(widget, groups)
    chosen = one_of and widget.isChecked()
    if not widget.isEnabled() or passes_on(widget, parent) or not widget.focusPolicy() & Qt.FocusPolicy.TabFocus and not chosen:
        return False
    if isinstance(widget, QScrollArea):
        return widget.verticalScrollBar().maximum() > 0
    return chosen or not one_of


def passes_on(widget: QWidget, parent: QWidget) -> bool:
    """Whether it passes the keyboard on to what it is in: of what takes the keyboard the toolkit's own parts are the only such."""
    if isinstance(parent, QAbstractScrollArea):
        return widget is parent.viewport()
    return isinstance(parent, QComboBox | QAbstractSpinBox) and isinstance(widget, QLineEdit)


def _one_of(widget: QWidget, groups: Sequence[QButtonGroup]) -> bool:
    """Whether it is one of several buttons of which one is always chosen."""
    return isinstance(widget, QAbstractButton) and any(group.id(widget) != NONE for group in groups
                                                       if group.exclusive() and group.checkedId() != NONE)


def _rows(widgets: list[QWidget]) -> list[list[QWidget]]:
    """Visible widgets of one parent in rows: what lies beside each other for half of the lower one's height."""
    rows: list[list[QWidget]] = []
    bottom = 0.0
    for widget in sorted((w for w in widgets if w.isVisible() and not w.isWindow()), key=lambda w: w.y()):
        if rows and widget.y() + widget.height() / 2 <= bottom:
            rows[-1].append(widget)
            bottom = min(bottom, widget.y() + widget.height())
        else:
            rows.append([widget])
            bottom = widget.y() + widget.height()
    return [sorted(row, key=lambda w: w.x()) for row in rows]
