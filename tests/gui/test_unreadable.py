"""Unsaved work that cannot be read is told of at the start: what, where, that it stays; once, or until the maker has heard enough."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QLabel, QMessageBox

from app.document.leftovers import Unreadable, found_in
from app.look.descendants import below
from app.window import ask
from app.window.running import unreadable
from tests.waiting import press, until


def spoiled(folder: Path, *names: str) -> list[Unreadable]:
    folder.mkdir(exist_ok=True)
    for name in names:
        (folder / f"{name}.journal.json").write_text('{"path": "/shop/head.headstock.json", "seen": nu')
    return found_in(folder).unreadable


def test_it_says_what_where_whose_and_what_to_do(bench, tmp_path, monkeypatch):
    found, asked = spoiled(tmp_path / "journal", "one"), []
    monkeypatch.setattr(ask, "unreadable", lambda _, text, place: asked.append((text, place)) or "later")
    unreadable.tell(bench.window.windows, found)
    (text, place), = asked
    for part in (str(found[0].file), "breaks off", "/shop/head.headstock.json", found[0].when.strftime("%H:%M"), "Nothing of it is removed",
                 "open the layout as it was saved last"):
        assert part in text
    assert place == tmp_path / "journal" and found[0].file.exists()


def test_many_are_one_question_and_it_is_asked_until_the_maker_has_heard_enough(bench, tmp_path, monkeypatch):
    windows, folder, asked, answer = bench.window.windows, tmp_path / "journal", [], "later"
    monkeypatch.setattr(ask, "unreadable", lambda _, text, place: asked.append(text) or answer)
    spoiled(folder, *"abcde")
    for _ in range(2):
        unreadable.tell(windows, found_in(folder).unreadable)
    assert len(asked) == 2 and "5 pieces" in asked[0] and "2 more lie in the same folder" in asked[0]
    answer = "enough"
    for _ in range(2):
        unreadable.tell(windows, found_in(folder).unreadable)
    assert len(asked) == 3
    spoiled(folder, "f")
    unreadable.tell(windows, [one for one in found_in(folder).unreadable])
    assert len(asked) == 4 and "f.journal.json" in asked[3] and "a.journal.json" not in asked[3], "only what is new"
    assert len(list(folder.glob("*.journal.json"))) == 6, "all of it is kept"


def test_a_folder_that_cannot_be_opened_is_told_as_one(bench, tmp_path, monkeypatch):
    asked = []
    monkeypatch.setattr(ask, "unreadable", lambda _, text, place: asked.append((text, place)) or "later")
    unreadable.tell(bench.window.windows, [Unreadable(tmp_path, "The folder cannot be opened: the disk reports a fault.")])
    (text, place), = asked
    assert "the disk reports a fault" in text and place == tmp_path and "written down" not in text.lower().split("nothing of it")[0]


@pytest.mark.parametrize(("name", "answer"), [("Do not tell me again", "enough"), ("Remind me next time", "later"),
                                              ("Show its folder", "later")])
def test_each_button_does_what_it_says(bench, tmp_path, monkeypatch, name, answer):
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication
    shown = []
    monkeypatch.setattr("PySide6.QtGui.QDesktopServices.openUrl", lambda url: shown.append(Path(url.toLocalFile())))

    def box():
        return QApplication.activeModalWidget()

    def do():
        until(lambda: isinstance(box(), QMessageBox))
        texts = [label.text() for label in below(box(), QLabel)]
        assert any("<b>none" in text for text in texts), "as it stands, and not as markup"
        press(next(button for button in box().buttons() if button.text().replace("&", "") == name))
    QTimer.singleShot(0, do)
    assert ask.unreadable(bench.window, "<b>none", tmp_path) == answer
    assert shown == ([tmp_path] if name == "Show its folder" else [])


def test_that_work_is_not_kept_safe_stays_in_sight_until_it_is(bench, tmp_path):
    from app.document.journal import Journal
    window = bench.window
    blocked = tmp_path / "in the way"
    blocked.write_text("")
    window.journal = Journal(blocked, window)
    window.journal.troubled.connect(window.foot.show_unkept)
    window.journal.note(bench.layout, None)
    window.journal.write()
    window.say("something else")
    mark = window.foot._unkept
    assert mark.isVisible() and mark.text() == "Unsaved work is not kept safe"
    assert window.journal.trouble in mark.toolTip() and window.journal.trouble in mark.accessibleDescription()
    blocked.unlink()
    window.journal.write()
    assert not mark.isVisible() and window.foot.said == "something else"
    window.journal.end()
