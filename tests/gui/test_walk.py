"""Tab leads through every stage as it is read, without a trap; everything that takes the keyboard has a name."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QGraphicsView,
    QLineEdit,
    QPlainTextEdit,
    QProgressBar,
    QScrollArea,
    QSlider,
    QWidget,
)

from app.look.descendants import below
from app.window.stages import STAGES
from tests.gui.bench import at_rest
from tests.gui.hands import field, fill

TAKES = (QAbstractButton, QLineEdit, QComboBox, QAbstractItemView, QSlider, QGraphicsView, QPlainTextEdit)


def takers(root: QWidget) -> list[QWidget]:
    """Every visible part that a hand can do something with, found without asking the way of Tab."""
    return [widget for widget in below(root)
            if widget.isVisible() and widget.isEnabled() and isinstance(widget, TAKES)
            and not isinstance(widget.parent(), QComboBox) and type(widget).__name__ != "QHeaderView"]


def group_of(widget: QWidget):
    return widget.group() if isinstance(widget, QAbstractButton) and widget.group() is not None else None


def walked(window: QWidget, key: Qt.Key) -> list[QWidget]:
    """What has the keyboard, one after the other, until it comes round."""
    found: list[QWidget] = []
    for _ in range(300):
        now = QApplication.focusWidget()
        if found and now is found[0]:
            return found
        assert now not in found, f"a trap: {[_told(widget) for widget in [*found, now]]}"
        found.append(now)
        QTest.keyClick(now, key)
    raise AssertionError("Tab never comes round")


def _told(widget: QWidget) -> str:
    return f"{type(widget).__name__} {widget.accessibleName() or getattr(widget, 'text', str)()!r}"


@pytest.fixture
def window(bench):
    bench.window.activateWindow()
    bench.pump()
    return bench.window


def test_the_panel_stays_where_it_is_when_what_was_typed_brings_or_takes_a_row(window):
    """The next press would go into another field than the one that was there to be read."""
    window.set_stage("blank")
    at_rest(window)
    area = next(part for part in below(window) if isinstance(part, QScrollArea) and part.isVisible() and part.isAncestorOf(field(part, "Face veneer, counted in")))
    for text, rows in (("0.8", 1), ("0", 0)):
        before = field(window, "Face veneer, counted in")
        before.setFocus()
        at_rest(window)
        scrolled, top = area.verticalScrollBar().value(), before.mapTo(area, QPoint(0, 0)).y()
        fill(before, text, Qt.Key.Key_Tab)
        at_rest(window)
        assert window.document.layout.blank.face_veneer == float(text)
        assert sum(isinstance(part, QLineEdit) and part.isVisible() and part.accessibleName() == "Planed to before the veneers" for part in below(window)) == rows
        assert QApplication.focusWidget().accessibleName() == "Back veneer, counted in"
        assert area.verticalScrollBar().value() == scrolled
        assert field(window, "Face veneer, counted in").mapTo(area, QPoint(0, 0)).y() == top


def test_tab_visits_all_of_each_stage_and_comes_back_and_all_has_a_name(window):
    for stage in STAGES:
        window.set_stage(stage.key)
        if stage.key == "tuners":
            window.document.hold(("treble side 3",))
        at_rest(window)
        assert nameless(window) == [], stage.key
        assert QApplication.focusWidget() is not None, stage.key
        there = walked(window, Qt.Key.Key_Tab)
        groups = {group_of(widget) for widget in there} - {None}
        missed = [widget for widget in takers(window) if widget not in there and group_of(widget) not in groups]
        assert not missed, (stage.key, [(type(w).__name__, w.accessibleName(), getattr(w, "text", str)()) for w in missed])
        back = walked(window, Qt.Key.Key_Backtab)
        assert back == [there[0], *reversed(there[1:])], stage.key


def test_stages_come_before_tools_before_the_drawing_before_the_panel(window):
    window.set_stage("blank")
    at_rest(window)
    there = walked(window, Qt.Key.Key_Tab)
    at = [next(i for i, widget in enumerate(there) if part.isAncestorOf(widget)) for part in window.parts]
    first = at.index(min(at))
    assert at[first:] + at[:first] == sorted(at)
    fields = [w.accessibleName() for w in there if window.side.inside.upper.isAncestorOf(w) and isinstance(w, QLineEdit)]
    assert fields[:3] == ["Name of the layout", "Centreline to the bass edge", "Centreline to the treble edge"]


def test_arrow_keys_lead_along_the_stages_and_stay_there(window):
    window.stages._buttons["tuners"].setFocus()
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Right)
    assert window.stage == "strings" and QApplication.focusWidget() is window.stages._buttons["strings"]
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Left)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Left)
    assert window.stage == "slots" and QApplication.focusWidget() is window.stages._buttons["slots"]


def test_f6_leads_from_part_to_part(window):
    window.canvas.view.setFocus()
    seen = []
    for _ in window.parts:
        window.actions_["next part"].trigger()
        seen.append(next(i for i, part in enumerate(window.parts) if part.isAncestorOf(QApplication.focusWidget())))
    assert seen == [3, 4, 0, 1, 2]
    window.actions_["part before"].trigger()
    assert window.tools.isAncestorOf(QApplication.focusWidget())


def nameless(root: QWidget) -> list[str]:
    found = []
    more = [w for w in below(root) if w.isVisible() and isinstance(w, (QScrollArea, QProgressBar))]
    own = [w for w in below(root) if w.isVisible() and w.focusPolicy() & Qt.FocusPolicy.TabFocus
           and w.focusProxy() is None]
    for widget in {*takers(root), *more, *own}:
        if isinstance(widget.parent(), QComboBox) or isinstance(widget, QScrollArea) and not (
                widget.focusPolicy() & Qt.FocusPolicy.TabFocus):
            continue
        interface = QAccessible.queryAccessibleInterface(widget)
        if not interface.text(QAccessible.Text.Name).strip():
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    return found


def test_everything_on_the_front_page_has_a_name(window):
    window.front.show()
    at_rest(window)
    assert nameless(window) == []
