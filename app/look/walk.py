"""The way of the Tab key: every part that takes the keyboard, in the order in which it is read."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QScrollArea, QWidget


def stops(root: QWidget, also: QWidget | None = None) -> list[QWidget]:
    """What Tab stops at below `root`, row by row from the left. Of buttons of which one is chosen, that one alone.

    A scroll area is a stop only where there is something to scroll. `also` is listed in its place, stop or not.
    """
    found: list[QWidget] = []
    for row in _rows([child for child in root.children() if isinstance(child, QWidget)]):
        for child in row:
            if child is also or _stops(child):
                found.append(child)
            found += stops(child, also)
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
    to.setFocus(Qt.FocusReason.TabFocusReason if onward else Qt.FocusReason.BacktabFocusReason)
    area = to.parentWidget()
    while area is not None and area is not root:
        if isinstance(area, QScrollArea):
            area.ensureWidgetVisible(to)
        area = area.parentWidget()
    return True


class ReadInOrder:
    """Mixed into a window or dialog: Tab leads through it as it is read, not as its parts were made."""

    def focusNextPrevChild(self, onward: bool) -> bool:
        return step(self, onward)


def _after(root: QWidget, chain: list[QWidget], now: QWidget | None, onward: bool) -> QWidget:
    """The stop beside a widget that is none itself, as a button that is not the chosen one of its group."""
    order = stops(root, now)
    at = order.index(now) if now in order else (-1 if onward else len(order))
    left = order[at + 1:] if onward else order[:max(at, 0)][::-1]
    return left[0] if left else (chain[0] if onward else chain[-1])


def _stops(widget: QWidget) -> bool:
    if not widget.isEnabled() or widget.focusProxy() is not None or not widget.focusPolicy() & Qt.FocusPolicy.TabFocus \
            and not _chosen(widget):
        return False
    if isinstance(widget, QScrollArea):
        return widget.verticalScrollBar().maximum() > 0
    return _chosen(widget) if _one_of(widget) else True


def _one_of(widget: QWidget) -> bool:
    """Whether it is one of several buttons of which one is always chosen."""
    if not isinstance(widget, QAbstractButton):
        return False
    group = widget.group()
    return group is not None and group.exclusive() and group.checkedButton() is not None


def _chosen(widget: QWidget) -> bool:
    return _one_of(widget) and widget.isChecked()


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
