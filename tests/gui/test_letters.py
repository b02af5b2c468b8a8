"""Letters up to twice their size: nothing is cut off on any stage, and every window follows."""

from contextlib import contextmanager

import pytest
from PySide6.QtCore import QPoint, QRect, QSettings, Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QAbstractButton, QApplication, QStyle

from app.languages.catalogue import speak
from app.look import sizes
from app.look.descendants import below
from app.window.demo import demo
from app.window.looks import Looks
from app.window.main import MainWindow
from app.window.stages import STAGES
from app.window.windows import Windows
from geometry import saying
from tests.gui.bench import _forget, at_rest
from tests.gui.cut import cut
from tests.waiting import on_screen, until


@pytest.mark.parametrize("percent", [100, 150, 200])
def test_no_word_is_cut_off_on_any_stage(percent, qtbot, tmp_path):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    settings.setValue("letters", str(percent))
    window = MainWindow(demo(), None, Windows(settings))
    qtbot.addWidget(window, before_close_func=_forget)
    window.resize(1360, 880)
    window.show()
    on_screen(window)
    assert window.canvas._marks._font.pixelSize() == round(11 * percent / 100)
    for stage in STAGES:
        window.set_stage(stage.key)
        if stage.key in ("tuners", "slots"):
            window.document.hold(("treble side 3",))
        at_rest(window)
        assert (window.width(), window.height()) == (1360, 880), stage.key
        assert cut(window) == [], stage.key
    window.front.show()
    at_rest(window)
    assert cut(window) == []


def test_keys_make_letters_larger_and_smaller_and_it_is_kept(bench):
    window = bench.window
    window.resize(1360, 880)
    before = window.side.inside._title.fontMetrics().height()
    for _ in range(6):
        window.actions_["letters larger"].trigger()
    bench.pump()
    assert window.settings.value("letters") == "200" and window.actions_["letters 200"].isChecked()
    assert window.side.inside._title.fontMetrics().height() > 1.8 * before
    assert window.canvas._top.height() == 44
    window.actions_["letters 125"].trigger()
    assert sizes.sizes().factor == 1.25 and not window.actions_["letters 200"].isChecked()
    window.actions_["letters smaller"].trigger()
    assert sizes.sizes().factor == 1.0 and window.canvas._top.height() == 22


def test_every_window_has_the_same_letters(bench):
    bench.window.front.show()
    second = bench.window.windows.empty()
    second.actions_["letters 150"].trigger()
    assert bench.window.actions_["letters 150"].isChecked()
    assert bench.window.canvas._top.height() == second.canvas._top.height() == 33
    assert {way.iconSize().width() for way in bench.window.front.page.ways.values()} == {30}, "signs grow with the words beside them"
    _forget(second)
    second.close()


def test_the_desktops_letters_are_followed_while_the_program_runs(bench, monkeypatch):
    before, painted, paint = QApplication.font(), [], Looks.paint
    second = bench.window.windows.empty()
    monkeypatch.setattr(Looks, "paint", lambda looks: (painted.append(looks), paint(looks)))
    larger = QFont(before)
    larger.setPixelSize(20)
    try:
        QApplication.setFont(larger)
        bench.pump()
        assert sizes.sizes().body == 20
        assert painted == [bench.window.looks, second.looks], "every window once, though each of them hears of it"
        bench.window.actions_["letters 150"].trigger()
        assert sizes.sizes().body == 30
    finally:
        QApplication.setFont(before)
        bench.pump()
    assert bench.window.side.inside._title.font().pixelSize() > 0
    _forget(second)
    second.close()


def test_labels_of_the_drawing_never_lie_over_each_other(bench):
    bench.window.resize(1100, 700)
    bench.window.actions_["letters 200"].trigger()
    bench.pump()
    for _ in range(12):  # somewhere on the way two of them come to stand beside each other, with nothing between
        labels = [item for items in bench.window.canvas._marks._labels.values() for item in items
                  if item.isVisible() and item.rotation() == 0 and item.text()]
        boxes = [item.deviceTransform(bench.view.viewportTransform()).mapRect(item.boundingRect()) for item in labels]
        assert len(labels) >= 3
        assert {"bass edge", "treble edge"} & {item.text() for item in labels}
        for i, one in enumerate(boxes):
            assert not any(one.adjusted(-1, 1, 1, -1).intersects(two.adjusted(0, 1, 0, -1)) for two in boxes[i + 1:]), labels[i].text()
        bench.view.zoom(1.07)


@pytest.mark.parametrize("percent", [100, 200])
def test_every_stage_and_tool_is_reached_in_a_small_window(bench, percent):
    window = bench.window
    window.looks.choose_letters(percent)
    window.resize(*((1100, 700) if percent == 100 else (1360, 880)))
    for stage in STAGES:
        window.set_stage(stage.key)
        if stage.key == "tuners":
            window.document.hold(("treble side 3", "treble side 2"))
        for _ in range(3):
            bench.pump()
        for bar in (window.stages, window.tools):
            buttons = [b for b in below(bar, QAbstractButton) if b.isVisible()]
            for button in buttons:
                corner = button.mapTo(bar, QPoint(0, 0))
                assert bar.rect().contains(QRect(corner, button.size())), (stage.key, button.text())
                assert button.text() or button.accessibleName() and button.toolTip(), stage.key


def test_posts_can_be_told_apart_in_letters_of_twice_the_size(bench):
    """`bass face 1` and `bass side 1` read alike when the column ends after a word; changed while the table stands, too."""
    window = bench.window
    window.set_stage("strings")
    at_rest(window)
    for size in ("letters 200", "letters 100", "letters 200"):
        window.actions_[size].trigger()
        at_rest(window)
        for post, winds, _ in window.room.panel.table._made:
            wide = post.fontMetrics().horizontalAdvance(post.currentText())
            assert post.width() >= wide + 20, (size, post.currentText(), post.width(), wide)
            assert (winds.y() > post.y()) == (size == "letters 200")
            assert size != "letters 100" or post.width() > 2 * winds.width(), "posts have the longer names"


def test_the_rack_and_the_readings_stay_readable_in_a_small_window_with_large_letters(bench):
    """Side by side they had room for no row of the one and for neither hole nor plan of the other."""
    window = bench.window
    window.looks.choose_letters(150)
    window.resize(1100, 700)
    window.set_stage("router")
    window.rooms["router"].open_rack()
    at_rest(window)
    rack = window.rooms["router"].rack.view
    parts = [button for button in below(rack, QAbstractButton) if button.isVisible()]
    boxes = [(QRect(part.mapTo(rack, QPoint(0, 0)), part.size()), part.text()) for part in parts]
    assert all(not one.intersects(two) for i, (one, _) in enumerate(boxes) for two, _ in boxes[i + 1:]), boxes
    assert rack.table.columnWidth(0) >= rack.table.sizeHintForColumn(0), "no name is shortened"
    assert rack.table.viewport().height() >= 3 * rack.table.rowHeight(0)
    window.set_stage("book")
    at_rest(window)
    window.room.view.show_page(3)
    at_rest(window)
    page = window.room.readings.page
    assert sum(page.table.columnWidth(column) for column in range(4)) <= page.table.viewport().width()
    assert page.table.viewport().height() >= 3 * page.table.rowHeight(0)
    window.looks.choose_letters(100)
    window.resize(1360, 880)
    at_rest(window)
    assert page.table.width() < page.width() - 300, "with room, the words stand beside the table again"


def test_in_german_large_letters_the_bores_of_one_hole_are_told_apart_in_the_readings(qtbot, tmp_path):
    """Beside what the readings say they would end before the word that tells a counterbore from the bore below it."""
    with _german(qtbot, tmp_path, 150, (1520, 900)) as window:
        window.set_stage("book")
        at_rest(window)
        window.room.view.show_page(3)
        at_rest(window)
        table = window.room.readings.page.table
        assert table.columnWidth(0) >= table.sizeHintForColumn(0) and table.horizontalScrollBar().maximum() == 0


def test_long_words_in_the_largest_letters_are_squeezed_on_no_stage_of_a_small_window(qtbot, tmp_path):
    with _german(qtbot, tmp_path, 200, (1024, 700)) as window:
        for stage in ("blank", "router", "order", "book"):
            window.set_stage(stage)
            at_rest(window)
            assert cut(window) == [], stage


@contextmanager
def _german(qtbot, tmp_path, percent, size):
    """A window of the demo in German, with letters and outer size (pixels) as given."""
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    settings.setValue("letters", str(percent))
    speak("de")
    try:
        window = MainWindow(demo(), None, Windows(settings))
        qtbot.addWidget(window, before_close_func=_forget)
        window.resize(*size)
        window.show()
        on_screen(window)
        yield window
    finally:
        saying.use(None)


def test_steps_that_begin_alike_are_told_apart_where_they_are_shortened(bench):
    window = bench.window
    window.set_stage("book")
    at_rest(window)
    hours = window.room.view.hours
    shown = [hours.fontMetrics().elidedText(row[1], hours.textElideMode(), 160) for row in hours.words.rows]
    long = [words for words, row in zip(shown, hours.words.rows, strict=True) if words != row[1]]
    assert len(long) > 5 and len(set(long)) == len(long)
    assert hours.words.index(3, 1).data(Qt.ItemDataRole.ToolTipRole) == hours.words.rows[3][1]


@pytest.mark.parametrize("language", ["en", "de"])
def test_letters_of_twice_the_size_leave_the_window_on_a_screen_of_1024(language, qtbot, tmp_path):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    settings.setValue("letters", "200")
    settings.setValue("theme", "lamp")
    try:
        speak(language)
        window = MainWindow(demo(), None, Windows(settings))
        qtbot.addWidget(window, before_close_func=_forget)
        window.resize(760, 640)
        window.show()
        on_screen(window)
        for stage in STAGES:
            window.set_stage(stage.key)
            at_rest(window)
            assert window.width() <= 1014, stage.key
        assert cut(window) == []
        window.menuBar().setFixedWidth(500)
        more = window.history_buttons.more
        until(more.isVisible)
        seen = more.grab().toImage()
        inks = [seen.pixelColor(x, y).lightness() for x in range(seen.width()) for y in range(seen.height())]
        assert max(inks) - min(inks) > 100, "the sign for the menus without room is seen"
    finally:
        speak("en")


def test_large_letters_bring_back_the_counts_that_a_long_sentence_took_the_room_of(bench):
    foot = bench.window.foot
    foot.say("a sentence of many words " * 12)
    assert foot._counts.isHidden()
    bench.window.actions_["letters 200"].trigger()
    assert not foot._counts.isHidden(), "the sentence has a row of its own"


def test_signs_in_menus_grow_with_the_letters(bench):
    menu = bench.window.actions_["letters"].menu()
    for percent in (100, 200):
        bench.window.looks.choose_letters(percent)
        menu.ensurePolished()
        assert menu.style().pixelMetric(QStyle.PixelMetric.PM_SmallIconSize, None, menu) == sizes.px(16) == 16 * percent / 100
