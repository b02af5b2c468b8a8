"""A window that opens with its drawing first: what the panel lacks then comes by itself, and at once for whoever asks."""

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest

from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows
from geometry.solids import frames

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def opened(qtbot, tmp_path):
    """A window as a start makes it, shown but without a turn of the event loop yet."""
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    window = MainWindow(demo(), None, Windows(settings), drawing_first=True)
    qtbot.addWidget(window, before_close_func=lambda window: window.document.replace(window.document.layout, None))
    window.resize(1360, 880)
    window.show()
    return window


def filled(window) -> bool:
    return window.side.made and window.side.inside.isVisible() and hasattr(window, "spoken")


def told(window) -> tuple:
    """What the panel says."""
    inside = window.side.inside
    return (inside._title.text(), [row.label for row in inside._fields.rows], inside._tally.text(),
            inside.snags.model().rowCount(), inside._section.isVisible(), window.canvas.view.accessibleDescription())


def test_the_panel_comes_by_itself_and_is_the_same(opened, bench, qtbot):
    assert not opened.side.made, "nothing of the panel is made before the drawing is shown"
    qtbot.waitUntil(lambda: filled(opened))
    assert told(opened) == told(bench.window)


def test_a_drag_of_the_first_moment_is_not_held_up_and_the_panel_follows_it(opened, qtbot):
    view, layout = opened.canvas.view, opened.document.layout
    x, y = frames(layout)["treble face 2"].origin[:2]
    place = view.viewport()
    QTest.mousePress(place, LEFT, pos=view.mapFromScene(x, y))
    QTest.mouseMove(place, view.mapFromScene(x, y + 3))
    QTest.mouseMove(place, view.mapFromScene(x, y + 6))
    assert opened.hand.busy and opened.document.shown is not layout
    opened.opening._go()
    assert not opened.side.made, "it waits until the hand is done"
    QTest.mouseRelease(place, LEFT, pos=view.mapFromScene(x, y + 6))
    qtbot.waitUntil(lambda: filled(opened))
    assert opened.document.layout is not layout
    assert opened.side.inside._title.text() == "Face tuner, treble face 2"


def test_what_a_resting_window_asks_for_waits_until_all_of_it_is_there(opened, qtbot):
    """On a slow machine its time is up before the drawing is painted, and the drawing would come after it."""
    cures, chances, warming = opened.cures, opened.rooms.chances, opened.rooms._warming
    cures._seek()
    chances._begin()
    warming._modules = [*warming._modules, "app.not_there_yet"]
    warming._begin()
    assert cures._search is None and chances.errand.free and warming._thread is None
    assert cures._pause.isActive() and chances._rest.isActive() and warming._rest.isActive()
    warming.end()
    qtbot.waitUntil(lambda: filled(opened) and not opened.opens)
    qtbot.waitUntil(lambda: cures._search is not None and cures.settled)


def test_whoever_asks_for_the_panel_has_it_at_once(opened, qtbot):
    opened.keyboard.snag(1)
    assert filled(opened) and opened.side.inside.snags.model().rowCount() == len(opened.document.result.snags)
    assert opened.document.held and opened.side.inside.snags.currentIndex().row() == 0


def test_what_was_told_before_is_shown_then(opened, qtbot):
    opened.set_unit("in")
    opened.set_stage("router")
    opened.set_stage("blank")
    qtbot.waitUntil(lambda: filled(opened))
    lengths = [widget.text() for widget in opened.side.inside._fields.widgets if hasattr(widget, "set_unit")]
    assert lengths and all('"' in text or not text for text in lengths)


def test_a_window_that_is_closed_at_once_leaves_the_rest(opened):
    opened.close()
    assert not opened.opening._next.isActive()


def test_a_fault_in_one_part_of_the_panel_leaves_the_others_on_show(opened, qtbot):
    def broken() -> None:
        raise ValueError("broken")

    parts = opened.held_page._parts
    opened.held_page._parts = (*parts[:-1], broken)
    with qtbot.captureExceptions() as faults:
        qtbot.waitUntil(lambda: bool(faults))
    opened.held_page._parts = parts
    assert [str(fault) for _, fault, _ in faults] == ["broken"]
    assert opened.side.inside.isVisible() and opened.side.inside._title.text() and opened.side.inside.snags.model().rowCount()


@pytest.mark.parametrize("steps", [1, 5, 12, 13])
def test_whoever_asks_in_the_midst_of_it_has_all_of_it(opened, steps):
    for _ in range(steps):
        opened.opening._go()
    assert opened.side.inside.snags.model().rowCount() == len(opened.document.result.snags)
    assert filled(opened) and opened.side.inside._title.text()
    assert not opened.opening._next.isActive()
