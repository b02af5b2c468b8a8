"""Where a window was it comes back to, unless the screen is no longer there."""

from types import SimpleNamespace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, QRect, QSettings, QSize, Qt

from app.window import place
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows
from tests.waiting import on_screen

ONE = QRect(0, 0, 1920, 1080)
TWO = QRect(1920, 0, 1280, 1024)


@pytest.mark.parametrize(("was", "screens", "then"), [
    (QRect(100, 80, 1360, 880), [ONE], QRect(100, 80, 1360, 880)),
    (QRect(2000, 80, 1200, 880), [ONE, TWO], QRect(2000, 80, 1200, 880)),
    (QRect(2000, 80, 1200, 880), [ONE], QRect(720, 80, 1200, 880)),
    (QRect(-3000, -2000, 1360, 880), [ONE], QRect(0, 0, 1360, 880)),
    (QRect(100, -30, 1360, 880), [ONE], QRect(100, 0, 1360, 880)),
    (QRect(1890, 300, 1360, 880), [ONE], QRect(560, 200, 1360, 880)),
    (QRect(0, 0, 1920, 1080), [QRect(0, 0, 1280, 720)], QRect(0, 0, 1280, 720)),
    (QRect(10, 10, 50, 60), [], QRect(10, 10, 50, 60)),
])
def test_a_place_off_the_screen_is_brought_back(was, screens, then):
    assert place.reachable(was, screens) == then


@given(st.integers(-5000, 5000), st.integers(-5000, 5000), st.integers(340, 4000), st.integers(300, 3000))
def test_wherever_it_was_it_can_be_taken_hold_of(x, y, width, height):
    then = place.reachable(QRect(x, y, width, height), [ONE, TWO])
    upper = QRect(then.x(), then.y(), then.width(), 40)
    assert any(screen.intersected(upper).width() >= 120 and screen.intersected(upper).height() == 40
               for screen in (ONE, TWO))
    assert any(then.width() <= screen.width() and then.height() <= screen.height() for screen in (ONE, TWO))
    assert place.reachable(then, [ONE, TWO]) == then


def window(qtbot, settings):
    made = MainWindow(demo(), None, Windows(settings))
    qtbot.addWidget(made)
    made.show()
    on_screen(made)
    return made


def test_size_division_and_stage_come_back(qtbot, tmp_path):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    first = window(qtbot, settings)
    screen = first.screen().availableGeometry()
    assert first.height() <= max(screen.height() - 30, first.minimumSizeHint().height()), "its foot is above the lower border"
    first.setGeometry(QRect(screen.topLeft() + QPoint(20, 30), screen.size() * 0.9))
    first.splitter.setSizes([400, 380])
    first.side.inside.setSizes([300, 500])
    qtbot.wait(1)
    sizes, below = first.splitter.sizes(), first.side.inside.sizes()
    first.set_stage("sheets")
    assert first.close()
    settings.sync()
    second = window(qtbot, settings)
    assert second.size() == first.size() and second.y() == first.y()
    assert second.splitter.sizes() == sizes
    assert second.stage == "tuners", "a new layout begins where hardware is placed"
    second.set_stage(place.kept_stage(settings))
    assert second.stage == "sheets"
    second.set_stage("tuners")
    assert second.side.inside.sizes() == below


def test_a_place_kept_from_a_screen_that_is_gone_is_mended(qtbot, tmp_path):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    first = window(qtbot, settings)
    first.move(5000, 4000)
    settings.setValue("geometry", first.saveGeometry())
    second = window(qtbot, settings)
    screen = second.screen().availableGeometry()
    assert screen.intersected(second.geometry()).width() >= 120 and 0 <= second.geometry().top() <= screen.bottom() - 40


@pytest.mark.parametrize("kept", [b"", b"nonsense", "words", 3, ["a"]])
def test_spoiled_settings_are_no_matter(qtbot, tmp_path, kept):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    for key in ("geometry", "splitter", "side splitter", "stage", "recent"):
        settings.setValue(key, kept)
    made = window(qtbot, settings)
    assert made.isVisible() and place.kept_stage(settings) == "tuners"
    made.files.recent()


def test_a_window_beside_another_has_its_foot_on_the_screen_under_the_title_of_the_desktop():
    """The desktop of the tests puts no title over a window: the other window tells of one."""
    screen = QRect(0, 0, 1440, 900)
    inside = QSize(1360, 856)
    other = SimpleNamespace(isMaximized=bool, isFullScreen=bool, size=lambda: inside, pos=lambda: QPoint(39, 10),
                            frameGeometry=lambda: QRect(QPoint(39, 10), inside + QSize(2, 24)),
                            screen=lambda: SimpleNamespace(availableGeometry=lambda: screen))
    asked = []
    window = SimpleNamespace(resize=lambda size: asked.append(size), move=lambda at: asked.append(at), geometry=lambda: QRect(),
                             setGeometry=lambda place: None, windowState=lambda: Qt.WindowState.WindowNoState)
    place.beside(window, other, 28)
    size, at = asked
    assert screen.contains(QRect(at, size + QSize(2, 24))) and size.height() > 800
