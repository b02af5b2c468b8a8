"""Words of a layout are shown letter by letter: none is taken for markup, which would open the picture that it names."""

from pathlib import Path

import ezdxf
import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QInputDialog, QLabel

from app.formats.reading import unasked
from app.look.descendants import below
from app.look.plain import plain
from app.look.sizes import px
from app.window import ask
from app.window.ask import LINE
from app.window.demo import demo
from app.window.importing.importing import ImportDialog
from app.window.importing.reading import read_with_progress
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


@pytest.mark.parametrize("words", ["", "a < b", "a < b\nand more", "plain", PLANTED, "<b>&amp;"])
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
    window.files.remember(unasked(Path("/") / "<img src=planted.png>.headstock.json"))
    for stage in STAGES:
        window.set_stage(stage.key)
        window.document.hold(("bass slot",))
        bench.pump()
        assert taken_for_markup() == [], stage.key
    window.say(PLANTED)
    window.document.apply(PLANTED, replace(layout, about="other"))
    window.actions_["changes"].trigger()
    bench.pump()
    steps = window.side.inside.changes.model()
    tips = [steps.index(row).data(Qt.ItemDataRole.ToolTipRole) for row in range(steps.rowCount())]
    assert any("planted" in tip for tip in tips) and not any(markup(tip) for tip in tips)
    assert taken_for_markup() == []
    window.document.record("Stop", lambda book: replace(book, clock=None))


def test_a_drawing_that_names_its_shapes_with_markup(bench, tmp_path):
    """A kind of shape is a word of the file's own, and the maker is told which were left out."""
    file = tmp_path / "<img src=planted.png>.dxf"
    drawing = ezdxf.new()
    drawing.header["$INSUNITS"] = 4
    drawing.modelspace().add_lwpolyline([(0, 0), (44, 0), (60, 180), (-16, 180)], close=True)
    drawing.saveas(file)
    text = file.read_text()
    at = text.rindex("  0\n", 0, text.rindex("ENDSEC", 0, text.rindex("OBJECTS")))
    file.write_text(f"{text[:at]}  0\n<IMG SRC=PLANTED.PNG>{300 * 'X'}\n  5\nFEFE\n330\n1F\n100\nAcDbEntity\n  8\n0\n{text[at:]}")
    seen = []
    QTimer.singleShot(0, bench.window, lambda: seen.extend(taken_for_markup()))
    read = read_with_progress(bench.window, file, None, 0.01)
    assert any("<img src=planted.png>" in words and len(words) < 100 for words in read.warnings)
    dialog = ImportDialog(bench.window, file, read)
    dialog.show()
    bench.pump()
    seen += taken_for_markup()
    dialog.close()
    dialog.deleteLater()
    assert seen == []


def test_what_is_asked_about_a_step_with_such_a_name(bench, monkeypatch):
    asked, widths = [], []
    monkeypatch.setattr(QInputDialog, "exec", lambda dialog: asked.append(dialog.labelText()) or widths.append(dialog.width()))
    ask.text(bench.window, "Note", f"It cannot be.\n{PLANTED}: do this differently")
    assert not markup(asked[0]) and "planted" in asked[0] and "<br>" in asked[0]
    assert widths[0] >= px(LINE), "a note is a sentence"
