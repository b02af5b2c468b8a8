"""Settings that another program, another version or a bad disk wrote: what makes no sense is as if it were not there."""

import os
import sys

import pytest
from PySide6.QtCore import QByteArray, QPoint, QSettings, Qt, QUrl
from PySide6.QtTest import QTest

from app.formats.reading import unasked
from app.look.theme import DAY, LAMP, theme
from app.window import kept
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows

ODD = (5, 2.5, True, "no such word", ["a", "b"], [1, 2], {"a": 1}, QByteArray(b"abc"), QPoint(1, 2), QUrl("a:b"), "", None)


@pytest.fixture
def settings(tmp_path):
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


@pytest.mark.parametrize("value", ODD, ids=repr)
def test_any_value_under_any_key_gives_a_sensible_answer(settings, tmp_path, value):
    settings.setValue("key", value)
    settings.sync()
    for store in (settings, QSettings(settings.fileName(), settings.format())):
        assert kept.one_of(store, "key", ("mm", "in"), "mm") == "mm"
        assert kept.flag(store, "key") == (value is True)
        assert all(isinstance(word, str) for word in kept.words(store, "key"))
    settings.setValue("key", "in")
    assert kept.one_of(settings, "key", ("mm", "in"), "mm") == "in"


def test_the_paper_chosen_last_is_kept_and_until_then_it_follows_the_unit(qtbot, settings):
    one = MainWindow(demo(), None, Windows(settings))
    qtbot.addWidget(one)
    assert one.tools.paper.currentText() == "A4"
    one.set_unit("in64")
    assert one.tools.paper.currentText() == "Letter"
    one.set_stage("sheets")
    one.show()
    one.tools.paper.setFocus()
    QTest.keyClick(one.tools.paper, Qt.Key.Key_Down)
    assert one.tools.paper.currentText() == "Tabloid"
    one.set_unit("mm")
    other = MainWindow(demo(), None, Windows(settings))
    qtbot.addWidget(other)
    assert one.tools.paper.currentText() == other.tools.paper.currentText() == "Tabloid"


def test_a_window_opens_on_settings_without_sense(qtbot, settings):
    for key, value in (("unit", "furlong"), ("theme", ["a", "b"]), ("solid", QPoint(1, 2)), ("geometry", QUrl("a:b")),
                       ("stage", 5), ("splitter", ["a"]), ("language", ["a"]), ("recent", ["a\0b", 5, settings.fileName(), "/gone"])):
        settings.setValue(key, value)
    settings.sync()
    window = MainWindow(demo(), None, Windows(settings))
    qtbot.addWidget(window)
    assert window.unit == "mm" and theme() in (DAY, LAMP)
    assert [str(path) for path in window.files.recent()] == [settings.fileName(), "/gone"]


class Watched(QSettings):
    """Settings in a file of their own that note what is written into them."""

    def __init__(self, file):
        super().__init__(str(file), QSettings.Format.IniFormat)
        self.written = []

    def setValue(self, key, value):
        self.written.append(key)
        super().setValue(key, value)


def test_a_window_writes_nothing_that_is_kept_already(qtbot, tmp_path):
    """What is written is flushed to the disk, and the first painting of a window would wait for that."""
    written = []
    for _ in range(2):
        settings = Watched(tmp_path / "settings.ini")
        window = MainWindow(demo(), None, Windows(settings))
        qtbot.addWidget(window)
        window.files.remember(unasked(tmp_path / "mine.headstock.json"))
        written.append(settings.written)
        settings.sync()
    assert written == [["unit", "recent"], []]
    window.set_unit("in")
    assert settings.written == ["unit"] and settings.value("unit") == "in"


def test_a_file_of_rubbish_is_like_none(qtbot, tmp_path):
    file = tmp_path / "settings.ini"
    file.write_bytes(os.urandom(3000) + b"\n[General]\nunit=furlong\ngeometry=hello\ntheme=a, b\nrecent=@Point(1 2)\n")
    window = MainWindow(demo(), None, Windows(QSettings(str(file), QSettings.Format.IniFormat)))
    qtbot.addWidget(window)
    assert window.unit == "mm" and window.files.recent() == []


@pytest.mark.skipif(sys.platform == "win32", reason="POSIX permissions")
def test_settings_that_cannot_be_written_hold_nothing_up(qtbot, tmp_path):
    place = tmp_path / "a file"
    place.write_text("in the way")
    window = MainWindow(demo(), None, Windows(QSettings(str(place / "settings.ini"), QSettings.Format.IniFormat)))
    qtbot.addWidget(window)
    window.set_unit("in")
    window.show()
    assert window.close() and window.unit == "in"
