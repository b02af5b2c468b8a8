"""The drawing has the room of the panel for as long as nobody asks for the panel."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.window import place


def test_a_key_gives_the_drawing_the_room_of_the_panel_and_takes_it_back(bench):
    window = bench.window
    before, panel = window.canvas.width(), window.side.width()
    window.side.inside.snags.setFocus()
    window.actions_["panel"].trigger()
    bench.pump()
    assert window.canvas.width() >= before + panel
    assert not window.side.isVisible() and window.canvas.isAncestorOf(window.focusWidget())
    window.resize(1100, 700)
    bench.pump()
    window.actions_["next part"].trigger()
    assert not window.side.isAncestorOf(window.focusWidget())
    window.resize(1360, 880)
    window.actions_["panel"].trigger()
    bench.pump()
    assert window.canvas.width() == before
    assert window.side.width() == panel and window.actions_["panel"].isChecked()


def test_another_stage_and_the_list_of_changes_bring_the_panel_back(bench):
    window = bench.window
    for ask in (lambda: window.set_stage("outline"), lambda: window.actions_["changes"].trigger()):
        window.actions_["panel"].trigger()
        assert not window.side.isVisible() and not window.actions_["panel"].isChecked()
        ask()
        assert window.side.isVisible() and window.actions_["panel"].isChecked()


def test_a_list_of_changes_that_went_with_the_panel_comes_back_when_it_is_asked_for(bench):
    window = bench.window
    window.actions_["changes"].trigger()
    window.actions_["panel"].trigger()
    window.actions_["changes"].trigger()
    assert window.side.inside.changes.isVisible() and window.actions_["changes"].isChecked()
    window.actions_["changes"].trigger()
    assert window.side.isVisible() and not window.side.inside.changes.isVisible()


def test_enter_on_the_drawing_leads_into_a_panel_that_is_away(bench):
    window = bench.window
    window.activateWindow()
    bench.click(bench.inside("treble side 2"))
    bench.view.setFocus()
    window.actions_["panel"].trigger()
    QTest.keyClick(bench.view, Qt.Key.Key_Return)
    assert window.side.isVisible() and window.side.inside.upper.isAncestorOf(window.focusWidget())


def test_a_drag_with_the_panel_away_still_finds_its_snags(bench):
    window, id = bench.window, "treble side 2"
    window.actions_["panel"].trigger()
    start = bench.inside(id)
    bench.drag(start, (start[0], start[1] + 14.0))
    assert window.document.result.snags
    window.actions_["panel"].trigger()
    bench.pump()
    assert window.side.inside.snags.model().rowCount() == len(window.document.result.snags)


def test_the_next_start_has_the_panel(bench):
    window = bench.window
    panel = window.side.width()
    window.actions_["panel"].trigger()
    place.keep(window)
    place.restore(window)
    bench.pump()
    assert window.side.isVisible() and window.side.width() > 0.9 * panel, "restoring bounds the window to the screen"
