"""Unsaved work is offered at the next start, with a picture of it, by one running copy at a time."""

import os

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMessageBox

from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.formats import headstock
from app.formats.saving import fingerprint
from app.look.picture import picture
from app.look.theme import DAY, LAMP
from app.look.theme import theme as in_use
from app.window import ask
from app.window.demo import demo
from app.window.running.recovery import counted, recover
from geometry.drawing import opened_out
from geometry.edits import add_truss_rod_pocket


def left_behind(folder, name="Half done", path=None, seen=None):
    journal = Journal(folder)
    journal.note(replace(demo(), name=name), path, seen)
    journal.write()
    journal._lock.unlock()
    return leftovers(folder)


def test_it_comes_back_as_unsaved_work(bench, tmp_path, monkeypatch):
    bench.window.journal = Journal(tmp_path / "own", bench.window)
    found = left_behind(tmp_path)
    asked = []
    monkeypatch.setattr(ask, "recover", lambda _, text, seen: asked.append((text, seen)) or "open")
    recover(bench.window.windows, found)
    text, seen = asked[0]
    assert "Half done" in text and "12 tuners" in text and found[0].when.strftime("%H:%M") in text
    assert seen.toImage() == picture(opened_out(demo()), in_use(), 220, 260).toImage()
    assert bench.layout.name == "Half done"
    assert bench.window.document.unsaved
    assert leftovers(tmp_path) == []
    bench.window.journal.end()


def test_it_can_wait_or_go(bench, tmp_path, monkeypatch):
    monkeypatch.setattr(ask, "recover", lambda *_: "later")
    recover(bench.window.windows, left_behind(tmp_path))
    assert len(leftovers(tmp_path)) == 1
    monkeypatch.setattr(ask, "recover", lambda *_: "discard")
    recover(bench.window.windows, leftovers(tmp_path))
    assert leftovers(tmp_path) == []
    assert bench.layout.name != "Half done"


def test_to_throw_work_away_takes_two_answers(bench, tmp_path):
    """One press in a box that comes unasked at a start must not destroy hours of work."""
    presses = ["Throw it away", "Keep it", "Throw it away", "Throw it away for good"]

    def answer() -> None:
        box = QApplication.activeModalWidget()
        if isinstance(box, QMessageBox) and box.isVisible():
            assert len(leftovers(tmp_path / "kept")) == 0, "claimed, and not gone"
            word = presses.pop(0)
            next(button for button in box.buttons() if button.text().replace("&", "") == word).click()
        if presses:
            QTimer.singleShot(10, bench.window, answer)
    (tmp_path / "kept").mkdir()
    found = left_behind(tmp_path / "kept")
    QTimer.singleShot(10, bench.window, answer)
    recover(bench.window.windows, found)
    assert presses == [] and not found[0].file.exists()


def test_after_one_is_thrown_away_the_next_is_asked_about(bench, tmp_path, monkeypatch):
    left_behind(tmp_path, "older")
    os.utime(leftovers(tmp_path)[0].file, (1_700_000_000, 1_700_000_000))
    found = left_behind(tmp_path, "newer")
    asked = []
    monkeypatch.setattr(ask, "recover", lambda _, text, seen: asked.append(text.split("”")[0]) or
                        ("discard" if len(asked) == 1 else "open"))
    recover(bench.window.windows, found)
    assert asked == ["“newer", "“older"]
    assert bench.layout.name == "older"


def test_of_two_pieces_of_one_file_the_older_is_a_layout_of_its_own(bench, tmp_path, monkeypatch):
    """Two runs died over the same file: no file is open in two windows, and neither piece is lost."""
    file = tmp_path / "head.headstock.json"
    headstock.write(demo(), file)
    left_behind(tmp_path, "older", file)
    os.utime(leftovers(tmp_path)[0].file, (1_700_000_000, 1_700_000_000))
    found = left_behind(tmp_path, "newer", file)
    monkeypatch.setattr(ask, "recover", lambda *_: "open")
    recover(bench.window.windows, found)
    windows = bench.window.windows.all
    assert {(w.document.layout.name, w.document.path) for w in windows} == {("newer", file), ("older", None)}
    assert all(w.document.unsaved for w in windows)
    older = next(w for w in windows if w.document.path is None)
    assert file.name in older.foot.said and "asks for a place" in older.foot.said
    older.document.replace(older.document.layout, None)
    older.close()


def test_two_running_copies_do_not_ask_about_the_same(bench, tmp_path, monkeypatch):
    found = left_behind(tmp_path)
    theirs = leftovers(tmp_path)[0]
    assert theirs.claim()
    monkeypatch.setattr(ask, "recover", lambda *_: pytest.fail("another copy is asking"))
    recover(bench.window.windows, found)
    theirs.forget()
    theirs.release()
    recover(bench.window.windows, found)


def test_work_is_not_forgotten_before_it_is_written_down_anew(bench, tmp_path, monkeypatch):
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    bench.window.journal = Journal(blocked, bench.window)
    monkeypatch.setattr(ask, "recover", lambda *_: "open")
    recover(bench.window.windows, left_behind(tmp_path))
    assert bench.layout.name == "Half done"
    assert len(leftovers(tmp_path)) == 1
    bench.window.journal.end()


def test_what_was_saved_just_before_the_end_is_not_offered(bench, tmp_path, monkeypatch):
    path = tmp_path / "head.headstock.json"
    headstock.write(replace(demo(), name="Half done"), path)
    monkeypatch.setattr(ask, "recover", lambda *_: pytest.fail("nothing was lost"))
    assert recover(bench.window.windows, left_behind(tmp_path, "Half done", path)) == 0
    assert leftovers(tmp_path) == []


def test_after_recovery_a_file_changed_meanwhile_is_noticed(bench, tmp_path, monkeypatch):
    path = tmp_path / "head.headstock.json"
    headstock.write(replace(demo(), name="as opened"), path)
    found = left_behind(tmp_path, "Half done", path, fingerprint(path.read_bytes()))
    headstock.write(replace(demo(), name="theirs"), path)
    monkeypatch.setattr(ask, "recover", lambda *_: "open")
    recover(bench.window.windows, found)
    monkeypatch.setattr(ask, "changed_elsewhere", lambda *_: "cancel")
    assert not bench.window.files.save()
    assert headstock.read(path).name == "theirs"


@pytest.mark.parametrize("theme", [DAY, LAMP], ids=["day", "lamp"])
def test_the_picture_shows_wood_on_paper(qapp, theme):
    image = picture(opened_out(demo()), theme, 300, 260, 2.0).toImage()
    assert (image.width(), image.height()) == (600, 520)
    colours = {image.pixelColor(x, y).name() for x in range(0, 600, 3) for y in range(0, 520, 3)}
    assert {theme.paper.lower(), theme.wood.lower(), theme.slot.lower()} <= colours
    assert len({image.pixelColor(2, y).name() for y in range(10, 500)}) == 1, "nothing sticks out"
    picture((), theme, 10, 10)


def test_a_pocket_is_not_counted_as_a_slot():
    assert counted(demo()) == ["12 tuners", "2 slots"]
    one = add_truss_rod_pocket(demo())
    assert counted(one) == ["12 tuners", "2 slots", "1 pocket that is there"]
    assert counted(replace(add_truss_rod_pocket(one), tuners=(), slots=(one.slots[-1],) * 2)) == ["0 tuners", "0 slots", "2 pockets that are there"]
