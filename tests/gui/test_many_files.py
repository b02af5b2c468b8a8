"""Several files at once, and the list of those opened lately."""


import pytest
from msgspec.structs import replace
from PySide6.QtWidgets import QPushButton

from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.formats import headstock
from app.formats.reading import unasked
from app.look.descendants import below
from app.window import ask
from app.window.demo import demo
from app.window.running.recovery import recover
from tests.gui.hands import drop
from tests.waiting import until


@pytest.fixture
def layouts(tmp_path):
    """Three layouts on the disk."""
    files = [tmp_path / f"{name}.headstock.json" for name in ("one", "two", "three")]
    for file in files:
        headstock.write(replace(demo(), name=file.name.partition(".")[0]), file)
    return files


@pytest.fixture(autouse=True)
def others_closed(bench):
    yield
    for window in bench.window.windows.all:
        if window is not bench.window:
            window.document.replace(window.document.layout, None)
            window.close()
    bench.window.windows.end()


def names(bench) -> list[str]:
    return [window.document.layout.name for window in bench.window.windows.all]


def test_several_layouts_dropped_open_in_windows_of_their_own(bench, layouts):
    assert drop(bench.window, *layouts)
    assert names(bench) == ["one", "two", "three"] and bench.layout.name == "one"
    assert drop(bench.window, *layouts)
    assert sorted(names(bench)) == ["one", "three", "two"], "each is open already"


def test_layouts_go_before_drawings_and_what_is_left_is_said(bench, layouts, tmp_path):
    picture = tmp_path / "photo.png"
    picture.write_bytes(b"")
    assert drop(bench.window, picture, layouts[0], picture)
    assert bench.layout.name == "one"
    assert bench.window.foot.said == "2 files were left: drop drawings and pictures one at a time."


def test_the_list_shows_what_is_missing_and_can_be_cleared(bench, layouts, tmp_path):
    far = tmp_path / "far" / "one.headstock.json"
    far.parent.mkdir()
    headstock.write(replace(demo(), name="far one"), far)
    for file in (*layouts, far):
        assert bench.window.files.open(file)
    layouts[1].unlink()
    menu = bench.window.actions_["recent"].menu()
    menu.aboutToShow.emit()
    entries = [action for action in menu.actions() if action.data()]
    until(lambda: not entries[2].isEnabled())
    assert [action.data() for action in entries] == [far, layouts[2], layouts[1], layouts[0]]
    assert [action.text() for action in entries] == [
        "one.headstock.json (far)", "three.headstock.json", "two.headstock.json – not there now",
        f"one.headstock.json ({tmp_path.name})"]
    assert [action.isEnabled() for action in entries] == [True, True, False, True]
    bench.window.front.show()
    page = bench.window.front.page
    second = [page._recent.itemAt(i).widget() for i in range(4)][2]
    until(lambda: not second.isEnabled())
    assert second.text() == "two – not there now"
    entries[3].trigger()
    assert bench.layout.name == "one"
    menu.aboutToShow.emit()
    menu.actions()[-1].trigger()
    assert bench.window.files.recent() == [] and layouts[0].exists()
    menu.aboutToShow.emit()
    assert [action.text() for action in menu.actions() if action.text()] == ["Nothing yet"]


def test_a_drive_that_does_not_answer_holds_up_neither_the_menu_nor_the_front_page(beside, bench, tmp_path):
    """Each name was asked for in the window's own thread: a network drive that had gone kept it waiting, at a start too."""
    gone = tmp_path / "gone.headstock.json"
    bench.window.files.remember(unasked(gone))
    menu = bench.window.actions_["recent"].menu()
    menu.aboutToShow.emit()
    entry = menu.actions()[0]
    bench.window.front.show()
    button = bench.window.front.page._recent.itemAt(0).widget()
    assert (entry.text(), button.text()) == ("gone.headstock.json", "gone") and entry.isEnabled() and button.isEnabled()
    beside.set()
    until(lambda: not entry.isEnabled() and not button.isEnabled())
    assert (entry.text(), button.text()) == ("gone.headstock.json – not there now", "gone – not there now")
    menu.aboutToShow.emit()
    assert not menu.actions()[0].isEnabled(), "as it was known last, until it is known anew"


def test_whatever_was_open_when_the_program_died_comes_back_in_windows_of_its_own(bench, tmp_path, monkeypatch):
    for name in ("older", "newer"):
        journal = Journal(tmp_path / "left")
        journal.note(replace(demo(), name=name), None)
        journal.write()
        journal._lock.unlock()
    windows = bench.window.windows
    windows.journal_folder = bench.window.journal_folder = tmp_path / "own"
    bench.window.journal = Journal(tmp_path / "own", bench.window)
    monkeypatch.setattr(ask, "recover", lambda *_: "open")
    found = leftovers(tmp_path / "left")
    assert recover(windows, found) == 2
    assert sorted(names(bench)) == ["newer", "older"]
    assert all(window.document.unsaved and window.journal.file.exists() for window in windows.all)
    assert leftovers(tmp_path / "left") == []
    bench.window.journal.end()


def test_a_name_as_long_as_a_disk_takes_and_one_of_two_lines_widen_nothing(bench, tmp_path):
    bench.window.front.show()
    bench.pump()
    front = bench.window.front.page
    column = front.ways["open"].parentWidget()
    wide = column.minimumSizeHint().width()
    paths = [tmp_path / f"{name}.headstock.json" for name in ("W" * 240, "two\nlines", "a\u202eb", "ends in a dot.", "-rf & co")]
    for path in paths:
        path.write_bytes(b"{}")
        bench.window.files.remember(unasked(path))
    assert bench.window.files.recent() == paths[::-1]
    front.show_recent(paths)
    bench.pump()
    bench.pump()
    assert column.minimumSizeHint().width() == wide
    shown = [button.text() for button in below(column, QPushButton) if button.objectName() == "link" and button.property("file")]
    assert shown[1:] == ["two lines", "a b", "ends in a dot.", "-rf && co"] and "…" in shown[0]
    bench.window.actions_["recent"].menu().aboutToShow.emit()
    words = [action.text() for action in bench.window.actions_["recent"].menu().actions()]
    assert words[:2] == ["-rf && co.headstock.json", "ends in a dot..headstock.json"] and len(words[4]) == 60
