"""A button that goes grey or away as it is pressed hands the keyboard to a sensible place: the toolkit would give it to
whatever comes next, and the same key pressed once more would then do something that nobody wanted."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.window.rooms import rack_desk
from geometry.accuracy import Proposal
from geometry.accuracy.proposal import Outlook
from geometry.edits import move_features
from geometry.layout import Headstock
from tests.gui.hands import pick, space
from tests.waiting import press, until


def test_back_to_the_best_plan(bench):
    room = bench.enter("router")
    panel = room.panel
    panel.plans.setFocus()
    QTest.keyClick(panel.plans, Qt.Key.Key_Down)
    bench.planned("router")
    before = bench.layout
    space(panel.best)
    bench.planned("router")
    assert bench.layout != before and not panel.best.isVisible()
    assert QApplication.focusWidget() is panel.what


def test_the_template_made_for_a_plan(bench):
    room = bench.enter("router")
    panel = room.panel
    words = [panel.plans.itemText(i) for i in range(panel.plans.count())]
    pick(panel.plans, next(i for i, text in enumerate(words) if " with bush" in text))
    bench.planned("router")
    space(panel.make_template)
    bench.planned("router")
    assert not panel.make_template.isVisible() and QApplication.focusWidget() is panel.what


def test_the_last_change_of_my_rack_taken_back_and_the_last_entry_removed(bench, tmp_path, monkeypatch):
    monkeypatch.setattr(rack_desk, "rack_path", lambda: tmp_path / "rack.json")
    room = bench.enter("router")
    room.open_rack()
    bench.pump()
    view = room.rack.view
    view._whose.setFocus()
    QTest.keyClick(view._whose, Qt.Key.Key_Down)
    space(view.buttons["add"])
    assert space(view.buttons["back"]) is view.table and not view.buttons["back"].isEnabled()
    for _ in bench.layout.rack.bits:
        now = space(view.buttons["remove"])
    assert now is view.table and not view.table.id


def test_the_corner_that_was_rounded(bench):
    window = bench.window
    window.set_stage("outline")
    window.document.hold(("outline",))
    window.hold_nodes(1, (1,))
    bench.pump()
    button = window.tools._actions["fillet"]
    button.setFocus()
    window.hold_nodes(None, ())
    assert not button.isEnabled() and QApplication.focusWidget() is window.tools._tools["hold"]


@pytest.fixture
def dialog(bench, monkeypatch):
    """What must be held, with one proposal at once: to slide a tuner by a millimetre."""
    def proposed(layout: Headstock, aim, *_) -> Proposal:
        moved = move_features(layout, ("treble side 2",), (0.0, 1.0))
        return Proposal(moved, (("treble side 2", (0.0, 1.0)),), aim, Outlook(0.5, 0.5, ()), Outlook(0.75, 0.75, ()))
    monkeypatch.setattr("app.window.dialogs.holding.TRIALS", 200)
    monkeypatch.setattr("app.window.dialogs.holding.REST_MS", 1)
    monkeypatch.setattr("app.window.dialogs.holding.propose_moves", proposed)
    return bench.window.rooms.chances


def opened(watch):
    watch.ask()
    ended(watch.dialog)
    return watch.dialog


def ended(dialog) -> None:
    until(lambda: not dialog.errand.busy and not dialog._rest.isActive())


def test_better_places_looked_for_and_taken(bench, dialog):
    dialog = opened(dialog)
    assert space(dialog.look) in (dialog.halt, dialog.look)
    ended(dialog)
    assert QApplication.focusWidget() is dialog.look and dialog.move_them.isEnabled()
    before = bench.layout
    space(dialog.move_them)
    assert bench.layout != before and QApplication.focusWidget() in (dialog.look, dialog.halt)
    ended(dialog)


def test_better_places_for_what_hangs_at_the_pointer_are_not_taken_as_a_step(bench, dialog):
    """The proposal was of the layout with the tuner that hung at the pointer: taking it left that tuner there."""
    bench.window.set_tool("tuner")
    bench.move((0.0, 60.0))
    bench.move((1.0, 61.0))
    before = bench.layout
    assert bench.window.hand.busy and len(bench.window.document.shown.tuners) == len(before.tuners) + 1
    dialog = opened(dialog)
    press(dialog.look)
    ended(dialog)
    press(dialog.move_them)
    assert bench.layout is before and "in hand" in dialog.says.text()
    dialog.close()
    bench.key(Qt.Key.Key_Escape)
    assert bench.layout is before
