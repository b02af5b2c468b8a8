"""Names of many things, and long ones of files, where the toolkit makes a menu or a question as wide as its words."""

from msgspec.structs import replace
from PySide6.QtWidgets import QInputDialog, QWidget

from app.window import ask


def narrow(widget: QWidget) -> bool:
    """Whether it asks for no more room than a hundred letters take: both sizes of the window that are looked at have that."""
    return widget.sizeHint().width() < widget.fontMetrics().horizontalAdvance(100 * "x")


def test_a_step_with_everything_leaves_the_menu_narrow(bench):
    window = bench.window
    window.document.hold(tuple(tuner.id for tuner in bench.layout.tuners))
    window.commands.run("remove")
    assert not bench.layout.tuners
    undo = window.actions_["undo"]
    assert "treble" in undo.text() or "bass" in undo.text()
    assert undo.text().endswith("and 9 more")
    menu = next(menu for menu in undo.associatedObjects() if hasattr(menu, "popup"))
    assert narrow(menu)
    window.document.apply(f"Import wood & {40 * 'long '}name.dxf", replace(bench.layout, about="another"))
    assert "wood && long" in undo.text() and narrow(menu)
    assert "wood & long" in window.history_buttons.buttons["undo"].accessibleName()


def test_a_note_to_everything_asks_in_few_words(bench, monkeypatch):
    asked = []
    monkeypatch.setattr(ask, "text", lambda parent, title, label, value: asked.append(label) or "sand it")
    ids = tuple(tuner.id for tuner in bench.layout.tuners)
    bench.window.document.hold(ids)
    bench.window.commands.run("note")
    assert asked[0].startswith(f"Do differently: {ids[0]}, {ids[1]}, {ids[2]} and 9 more") and ids[4] not in asked[0]
    assert {note.on for note in bench.layout.book.remarks} == set(ids), "each has the note"
    dialog = QInputDialog(bench.window)
    dialog.setLabelText(asked[0])
    assert narrow(dialog)
    dialog.deleteLater()
