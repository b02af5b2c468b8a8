"""Several windows of one program: each with its own layout, no file in two, and an end that asks in each."""

import os

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QFileOpenEvent, QGuiApplication
from shiboken6 import isValid

from app.document.leftovers import leftovers
from app.formats import headstock
from app.look.theme import LAMP, theme
from app.window import ask, colours
from app.window.demo import demo
from app.window.looks import Looks
from geometry.edits import move_features
from geometry.lengths import spoken


def destroyed():
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.fixture
def windows(bench, tmp_path):
    """Those of the bench, with a journal for each further one; all but the bench's own are gone in the end."""
    all_windows = bench.window.windows
    all_windows.journal_folder = tmp_path / "journal"
    yield all_windows
    for window in all_windows.all:
        if window is not bench.window:
            window.document.replace(window.document.layout, None)
            window.close()
    all_windows.end()


def written(path, name):
    headstock.write(replace(demo(), name=name), path)
    return path


def rename(window, name):
    window.document.apply("Rename", replace(window.document.layout, name=name))


def test_a_second_layout_opens_beside_the_first_and_neither_touches_the_other(bench, windows, tmp_path):
    rename(bench.window, "mine")
    second = windows.open(written(tmp_path / "second.headstock.json", "second"))
    assert len(windows.all) == 2 and windows.current is second
    assert second.document.layout.name == "second" and not second.document.unsaved
    assert bench.layout.name == "mine" and bench.window.document.unsaved
    second.set_unit("in")
    second.set_stage("strings")
    second.document.apply("Nudge", move_features(second.document.layout, ("bass face 1",), (2.0, 0.0)))
    second.commands.run("hold all")
    assert (bench.window.unit, bench.window.stage, bench.window.document.held) == ("mm", "tuners", ())
    assert len(bench.window.document.history.past) == 1 and spoken() == "mm"
    second.commands.run("undo")
    assert second.document.history.undo_name is None and bench.layout.name == "mine"
    assert second.pos() != bench.window.pos()


def test_a_file_is_open_once(bench, windows, tmp_path):
    path = written(tmp_path / "head.headstock.json", "head")
    second = windows.open(path)
    assert windows.open(tmp_path / "." / "head.headstock.json") is second
    linked = tmp_path / "linked.headstock.json"
    linked.symlink_to(path)
    windows.front(bench.window)
    assert not bench.window.files.open(linked)
    assert windows.current is second and len(windows.all) == 2
    assert "open in this window already" in second.foot.said
    assert bench.window.document.path is None


def test_a_new_file_is_not_taken_for_one_whose_number_it_got(bench, windows, tmp_path):
    """As when a folder is kept alike with another machine's while a layout of it is open."""
    path = written(tmp_path / "head.headstock.json", "head")
    assert bench.window.files.open(path)
    number = path.stat().st_ino
    os.replace(written(tmp_path / "theirs.headstock.json", "head, from elsewhere"), path)
    made = (written(tmp_path / f"{n}.headstock.json", "another") for n in range(20))
    got = next((file for file in made if file.stat().st_ino == number), None)
    if got is None:
        pytest.skip("this disk gives no number twice")
    second = windows.open(got)
    assert second is not bench.window and second.document.layout.name == "another"


def test_a_file_handed_over_by_the_system_opens_in_a_window_of_its_own(bench, windows, tmp_path):
    path = written(tmp_path / "handed.headstock.json", "handed")
    assert windows.eventFilter(bench.window.windowHandle(), QFileOpenEvent(str(path)))
    assert windows.current.document.path == path and bench.window.document.path is None


@pytest.mark.parametrize("name", ["head.dxf", "HEAD.SVG", "scan.png"])
def test_a_drawing_or_a_picture_is_begun_from_in_a_window_of_its_own(bench, windows, tmp_path, monkeypatch, name):
    """As a later start hands it over, or the second word of the first start."""
    taken = []
    monkeypatch.setattr("app.window.windows.take", lambda window, file: taken.append((window, window.front.shown, file.name)))
    opened = windows.open(tmp_path / name)
    assert taken == [(opened, True, name)] and opened is windows.current and opened is not bench.window
    monkeypatch.setattr("app.window.windows.take", lambda window, file: window.close())
    assert windows.open(tmp_path / name) is None and windows.all == [bench.window, opened]


def test_a_file_that_is_open_elsewhere_is_not_saved_over(bench, windows, tmp_path, monkeypatch):
    path = written(tmp_path / "head.headstock.json", "head")
    windows.open(path)
    told = []
    monkeypatch.setattr(ask, "save_file", lambda *_: path)
    monkeypatch.setattr(ask, "warn", lambda _, title, text: told.append(text))
    rename(bench.window, "mine")
    assert not bench.window.files.save_as()
    assert "open in another window" in told[0] and headstock.read(path).name == "head"


def test_closing_one_leaves_the_other(bench, windows, tmp_path):
    second = windows.open(written(tmp_path / "second.headstock.json", "second"))
    rename(bench.window, "mine")
    assert second.close()
    destroyed()
    assert not isValid(second) and windows.all == [bench.window]
    assert bench.window.isVisible() and bench.layout.name == "mine"
    bench.window.commands.run("undo")
    bench.window.actions_["lamp"].trigger()


def test_each_window_keeps_a_journal_of_its_own(bench, windows, tmp_path, monkeypatch):
    second, third = windows.empty(), windows.empty()
    assert second.front.shown and third.front.shown
    for window, name in ((second, "two"), (third, "three")):
        rename(window, name)
        window.journal.write()
    files = sorted(window.journal.file for window in (second, third))
    assert len(set(files)) == 2 and all(file.exists() for file in files)
    assert leftovers(windows.journal_folder) == [], "a running window's journal is nothing left behind"
    monkeypatch.setattr(ask, "save_first", lambda *_: "discard")
    second.close()
    assert not files[files.index(second.journal.file)].exists()
    assert third.journal.file.exists()


def test_quitting_asks_in_each_and_one_that_stays_keeps_all(bench, windows, monkeypatch):
    windows.gone(bench.window)
    first, second = windows.empty(), windows.empty()
    rename(first, "one")
    rename(second, "two")
    asked = []
    monkeypatch.setattr(ask, "save_first", lambda _, name: asked.append(name) or
                        ("cancel" if name == "one" else "discard"))
    assert not windows.quit()
    assert asked == ["two", "one"] and len(windows.all) == 2
    assert first.isVisible() and second.isVisible() and second.document.unsaved
    asked.clear()
    monkeypatch.setattr(ask, "save_first", lambda _, name: asked.append(name) or "discard")
    assert windows.quit()
    assert asked == ["one", "two"], "the one that wanted to stay is in front, and asked first"
    assert windows.all == [] and not first.isVisible() and not second.isVisible()
    for window in (first, second):
        window.deleteLater()


def test_quitting_asks_about_what_was_done_while_another_window_was_saved(bench, windows, monkeypatch):
    """A drive that is slow lets the maker go on in the other windows, and close them."""
    windows.gone(bench.window)
    first, second, third = windows.empty(), windows.empty(), windows.empty()
    rename(second, "two")
    asked = []

    def answered(_, name):
        if not asked:
            rename(first, "one")
            third.close()
            destroyed()
        asked.append(name)
        return "discard"
    third.document.replace(third.document.layout, None)
    windows.front(second)
    windows.front(first)
    monkeypatch.setattr(ask, "save_first", answered)
    assert windows.quit() and asked == ["two", "one"] and windows.all == []
    for window in (first, second):
        window.deleteLater()


def test_lamplight_is_lit_in_every_window(bench, windows):
    second = windows.empty()
    second.actions_["lamp"].trigger()
    assert theme() is LAMP
    assert bench.window.actions_["lamp"].isChecked()
    windows.empty()
    assert theme() is LAMP


def test_each_is_painted_once_when_the_desktop_changes_its_colours(bench, windows, tmp_path, monkeypatch):
    second, painted = windows.open(written(tmp_path / "second.headstock.json", "second")), []
    monkeypatch.setattr(colours, "desktop_is_dark", lambda: True)
    monkeypatch.setattr(Looks, "paint", lambda looks: painted.append(looks))
    QGuiApplication.styleHints().colorSchemeChanged.emit(Qt.ColorScheme.Dark)
    assert painted == [bench.window.looks, second.looks]


def test_the_snags_of_each_are_its_own(bench, windows):
    second = windows.empty()
    second.front.leave()
    before = bench.window.document.result.snags
    spoiled = move_features(second.document.layout, ("treble side 2",), (0.0, -20.0))
    second.document.apply("Nudge", spoiled)
    assert second.document.result.spoils and bench.window.document.result.snags == before
    bench.window.commands.run("hold all")
    assert second.side.inside.snags.model().rowCount() == len(second.document.result.snags)
    assert bench.window.side.inside.snags.model().rowCount() == len(before)
