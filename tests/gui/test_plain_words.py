"""Words of a layout are shown letter by letter: none is taken for markup, which would open the picture that it names."""

from pathlib import Path

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QLabel

from app.look.descendants import below
from app.look.plain import plain
from app.window.demo import demo
from app.window.stages import STAGES
from geometry.layout import Book, Clock, Note, Price, Remark, Task

PLANTED = '<img src="file:///planted.png">planted'


def markup(words: str) -> bool:
    return "<img src=planted" in words or '<img src="file' in words


def taken_for_markup() -> list[str]:
    """Labels and tips in which the planted words would be."""
    found = [f"{type(one.parent()).__name__} says {one.text()}" for one in QApplication.allWidgets() if isinstance(one, QLabel)
             and markup(one.text()) and one.textFormat() != Qt.TextFormat.PlainText]
    found += [f"{type(one).__name__} tips {one.toolTip()}" for one in QApplication.allWidgets() if markup(one.toolTip())]
    return found + [one.toolTip() for window in QApplication.topLevelWidgets() for one in below(window, QAction)
                    if markup(one.toolTip()) and one.toolTip() != one.iconText()]


@pytest.mark.parametrize("words", ["", "a < b", "plain", PLANTED, "<b>&amp;"])
def test_a_tip_shows_the_letters(words):
    from PySide6.QtGui import QTextDocument
    document = QTextDocument()
    document.setHtml(plain(words)) if "<" in words else document.setPlainText(plain(words))
    assert document.toPlainText() == words


def test_words_of_a_layout_are_words_on_every_stage(bench):
    task = Task(operation="rout bass slot", title=PLANTED, features=("bass slot",))
    book = Book(remarks=(Remark(piece="practice", text=PLANTED, on="bass slot"),), prices=(Price(piece="practice", part=PLANTED),),
                clock=Clock(piece="practice", task=task, since=1.0))
    strings = tuple(replace(string, note=PLANTED) for string in demo().strings)
    layout = replace(demo(), name=PLANTED, about=PLANTED, strings=strings, notes=(Note(on="bass slot", text=PLANTED),), book=book)
    window = bench.window
    window.document.replace(layout, None)
    window.files.remember(Path("/") / "<img src=planted.png>.headstock.json")
    for stage in STAGES:
        window.set_stage(stage.key)
        window.document.hold(("bass slot",))
        bench.pump()
        assert taken_for_markup() == [], stage.key
    window.say(PLANTED)
    window.document.apply(PLANTED, replace(layout, about="other"))
    window.actions_["changes"].trigger()
    bench.pump()
    steps = window.side.changes.model()
    tips = [steps.index(row).data(Qt.ItemDataRole.ToolTipRole) for row in range(steps.rowCount())]
    assert any("planted" in tip for tip in tips) and not any(markup(tip) for tip in tips)
    assert taken_for_markup() == []
    window.document.record("Stop", lambda book: replace(book, clock=None))
