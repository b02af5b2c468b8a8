"""`What must I hold?` beside the drawing: the answer, a proposal as a ghost, one step to take it."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt

from geometry.accuracy import propose_moves, requirements, rise_words, simulate, success_words
from tests.geometry.accuracy.specimens import crowded, rough, sample
from tests.gui.bench import Bench
from tests.waiting import press

TRIALS = 2000
"""Fewer than in the program, for speed; what is shown is compared with the same number."""


@pytest.fixture(autouse=True)
def chances_come(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("app.window.chances.REST_MS", 1)
    monkeypatch.setattr("app.window.dialogs.holding.REST_MS", 1)


@pytest.fixture(autouse=True)
def few_trials(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("app.window.dialogs.holding.TRIALS", TRIALS)
    monkeypatch.setattr("app.window.chances.TRIALS", TRIALS)
    monkeypatch.setattr("geometry.accuracy.proposal.STEPS", (2.0,))


def opened(bench: Bench, qtbot):
    watch = bench.window.rooms.chances
    qtbot.waitUntil(lambda: watch.chances.fresh)
    press(bench.window.side.inside.tabs.button(1))
    press(bench.window.side.inside.chances.ask)
    dialog = watch.dialog
    assert dialog.isVisible()
    return dialog


def ended(dialog, qtbot) -> None:
    qtbot.waitUntil(lambda: not dialog.errand.busy and not dialog._rest.isActive())


def ghosts(bench: Bench) -> set[str]:
    return {mark.owner for mark in bench.window.canvas._ghost._marks.get("ghost", ())}


@pytest.fixture
def crowd(qtbot, tmp_path) -> Bench:
    return Bench(qtbot, tmp_path, crowded())


def test_a_crowded_tuner_is_shown_where_it_would_do_better_and_moved_in_one_step(crowd: Bench, qtbot) -> None:
    dialog = opened(crowd, qtbot)
    assert dialog.aim.currentData() == "within", "it comes out sound anyway, so margins are asked"
    ended(dialog, qtbot)
    assert not dialog.requirements.possible
    assert "treble face 2 – treble side 2 has to change" in dialog.answer.text()
    assert dialog.table.rowCount() == 0
    before = crowd.layout
    meant = propose_moves(before, "within", trials=TRIALS, seed=1)
    assert dialog.proposal == meant and "treble side 2" in dict(meant.moves)
    assert ghosts(crowd) == dict(meant.moves).keys()
    said = dialog.says.text()
    assert said.startswith("Moving ")
    assert rise_words(meant.before.chance, meant.after.chance, TRIALS) in said
    press(dialog.move_them)
    assert crowd.layout == meant.layout and ghosts(crowd) == set()
    assert crowd.window.document.history.undo_name == "Move tuners as proposed"
    ended(dialog, qtbot)
    assert dialog.requirements.possible and dialog.requirements.reached >= 0.99
    assert simulate(crowd.layout, TRIALS, 1).within == pytest.approx(meant.after.chance)
    crowd.window.commands.run("undo")
    assert crowd.layout is before
    dialog.close()
    assert dialog.errand.free or dialog.errand._stop.is_set()


def test_leaving_it_takes_the_ghost_away(crowd: Bench, qtbot) -> None:
    dialog = opened(crowd, qtbot)
    ended(dialog, qtbot)
    before = crowd.layout
    assert ghosts(crowd)
    press(dialog.leave)
    assert ghosts(crowd) == set() and crowd.layout is before and not dialog.move_them.isEnabled()


def test_a_held_tuner_is_not_proposed_to_move(crowd: Bench, qtbot) -> None:
    crowd.window.document.hold(("treble side 2",))
    form = crowd.window.side.inside._fields
    flag = form.widgets[[row.label for row in form.rows].index("Leave it where it is")]
    press(flag, QPoint(9, flag.height() // 2))
    assert crowd.layout.tuner("treble side 2").held
    dialog = opened(crowd, qtbot)
    ended(dialog, qtbot)
    assert "treble side 2" not in dict(dialog.proposal.moves)


def test_what_is_needed_stands_in_the_table(qtbot, tmp_path) -> None:
    bench = Bench(qtbot, tmp_path, rough(sample("twelve-string-mixed"), 2.0))
    dialog = opened(bench, qtbot)
    ended(dialog, qtbot)
    meant = requirements(bench.layout, 0.99, "within", TRIALS)
    rows = [[dialog.table.item(r, c).text() for c in range(4)] for r in range(dialog.table.rowCount())]
    assert len(rows) == len(meant.needs) >= 2
    marks = next(row for row in rows if row[0] == "Marks")
    need = next(n for n in meant.needs if n.source == "mark")
    high = dialog.table.fontMetrics().lineSpacing()
    assert all(dialog.table.rowHeight(row) < 3.5 * high for row in range(len(rows))), "no higher than their words, which take two lines"
    assert marks[1:3] == ["±0.6 mm", f"±{need.wanted:g} mm"] and "more" in marks[3]
    assert "Hold what follows" in dialog.answer.text() and success_words(meant.now, TRIALS) in dialog.answer.text()
    bench.window.document.apply("Other words", replace(bench.layout, about="other words"))
    assert "what stands below is older" in dialog.answer.text() and not dialog.table.isHidden()
    dialog.close()


def test_an_edit_beside_it_begins_anew(beside, crowd: Bench, qtbot) -> None:
    beside.set()
    qtbot.waitUntil(lambda: crowd.window.rooms.chances.chances.fresh)
    beside.clear()
    dialog = opened(crowd, qtbot)
    qtbot.waitUntil(lambda: dialog.errand.busy)
    stop = dialog.errand._stop
    crowd.window.document.hold(("treble side 2",))
    for _ in range(5):
        crowd.key(Qt.Key.Key_Up)
    assert stop.is_set()
    beside.set()
    ended(dialog, qtbot)
    assert dialog.requirements.now > 0.9
    crowd.window.document.replace(crowd.layout, None)
    assert crowd.window.close()


def test_what_takes_long_is_stopped_and_done_after_all(beside, crowd: Bench, qtbot) -> None:
    beside.set()
    qtbot.waitUntil(lambda: crowd.window.rooms.chances.chances.fresh)
    beside.clear()
    dialog = opened(crowd, qtbot)
    press(dialog.halt)
    beside.set()
    qtbot.waitUntil(lambda: dialog.halt.text().replace("&", "") == "Work it out")
    assert dialog.errand.free and dialog.answer.text().startswith("Stopped") and dialog.requirements is None
    assert dialog.bar.isHidden() and dialog.look.isEnabled()
    press(dialog.halt)
    qtbot.waitUntil(lambda: dialog.requirements is not None and dialog.halt.isHidden())
    assert not dialog.answer.text().startswith("Stopped")
    said = dialog.says.text()
    assert ghosts(crowd)
    beside.clear()
    press(dialog.look)
    press(dialog.halt)
    beside.set()
    qtbot.waitUntil(lambda: dialog.halt.text().replace("&", "") == "Work it out")
    assert dialog.says.text() == said and ghosts(crowd) and dialog.move_them.isEnabled(), "what was found before stays"
    dialog.leave.click()
    beside.clear()
    press(dialog.look)
    press(dialog.halt)
    beside.set()
    qtbot.waitUntil(lambda: dialog.errand.free)
    assert dialog.says.text().startswith("Stopped") and not ghosts(crowd) and not dialog.move_them.isEnabled()
    dialog.reject()
    assert not dialog.isVisible() and dialog.errand.free
