"""Chances in the window: worked out when the layout rests, told in the panel, ringed on the drawing."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest

from app.look.theme import DAY
from app.panels.snags.snag_card import CHANCE
from app.threads.background import running
from app.window.front.bare import bare
from geometry.accuracy import simulate
from geometry.layout import Accuracy
from geometry.layout.slots import Ramp
from tests.geometry.accuracy.specimens import crowded
from tests.geometry.accuracy.test_ramps import below
from tests.gui.bench import Bench
from tests.gui.hands import fill
from tests.waiting import press, until


@pytest.fixture(autouse=True)
def chances_come(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("app.window.chances.REST_MS", 1)


@pytest.fixture
def crowd(qtbot, tmp_path) -> Bench:
    return Bench(qtbot, tmp_path, crowded())


def known(bench: Bench, qtbot) -> None:
    watch = bench.window.rooms.chances
    qtbot.waitUntil(lambda: watch.chances.fresh and watch.chances.progress is None)


def test_the_panel_tells_what_the_simulation_says(beside, crowd: Bench, qtbot) -> None:
    side, watch = crowd.window.side, crowd.window.rooms.chances
    assert side.inside.chance_line.text == "Comes out sound: being worked out…"
    beside.set()
    known(crowd, qtbot)
    found = simulate(crowd.layout, 10_000, 1)
    assert watch.chances.simulation == found
    assert found.sound == 1.0 and 0.1 < found.within < 0.11
    assert side.inside.chance_line.text == "Comes out sound: over 999 in 1,000 · every other margin kept: 10 in 100"


def test_whoever_begins_to_draw_is_told_no_chance_of_a_bare_head(qtbot, tmp_path) -> None:
    bench = Bench(qtbot, tmp_path, bare())
    known(bench, qtbot)
    assert bench.window.side.inside.chance_line.text == "Comes out sound: told once a tuner, a hole or a slot is drawn"


def test_an_edit_cancels_what_runs_and_the_last_layout_counts(beside, crowd: Bench, qtbot) -> None:
    watch = crowd.window.rooms.chances
    qtbot.waitUntil(lambda: watch.chances.progress is not None)
    stop = watch.errand._stop
    crowd.window.document.hold(("treble side 2",))
    crowd.view.setFocus()
    for _ in range(4):
        crowd.key(Qt.Key.Key_Up)
    assert stop.is_set() and watch.chances.simulation is None
    beside.set()
    known(crowd, qtbot)
    assert watch._of is crowd.layout
    assert watch.chances.simulation == simulate(crowd.layout, 10_000, 1)
    before = watch.chances.simulation
    crowd.window.commands.run("undo")
    assert not watch.chances.fresh and watch.chances.simulation is before
    assert crowd.window.side.inside.chance_line._words.objectName() == "dim"


def test_a_click_on_a_card_holds_what_it_is_about(crowd: Bench, qtbot) -> None:
    known(crowd, qtbot)
    side = crowd.window.side
    press(side.inside.tabs.button(1))
    crowd.pump()
    cards = side.inside.chances.list
    assert cards.isVisible() and not side.inside.snags.isVisible()
    first = crowd.window.rooms.chances.chances.simulation.clearances[0]
    words = cards.model().index(0, 0).data()
    assert words.startswith("Screw meets another. treble face 2 – treble side 2. Spoils the work: under 1 in 3,300")
    assert "Under its margin of 2 mm: 89 in 100." in words and "Mostly " in words
    QTest.mouseClick(cards.viewport(), Qt.MouseButton.LeftButton,
                     pos=cards.visualRect(cards.model().index(0, 0)).center())
    assert crowd.window.document.held == first.between[:1]
    cards.setFocus()
    QTest.keyClick(cards, Qt.Key.Key_Down)
    second = crowd.window.rooms.chances.chances.simulation.clearances[1]
    assert crowd.window.document.held == second.between[:1]
    press(side.inside.tabs.button(0))
    assert side.inside.snags.isVisible()


def test_a_key_rings_the_worst_places_of_the_layout_on_show_alone(crowd: Bench, qtbot) -> None:
    known(crowd, qtbot)
    marks = crowd.window.canvas.chances
    assert marks.words == []
    crowd.view.setFocus()
    QTest.keyClick(crowd.view, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    crowd.pump()
    assert crowd.window.actions_["chances"].isChecked()
    assert marks.words[0] == "thin 89 in 100" and len(marks.words) > 3
    cards = [item._shown[5].translated(item.x() * marks._scale, -item.y() * marks._scale)
             for item in marks._items if item.words]
    assert not any(one.intersects(two) for i, one in enumerate(cards) for two in cards[i + 1:])
    assert not any(card.intersects(taken) for card in cards for taken in crowd.window.canvas._snags.taken)
    crowd.window.document.hold(("treble side 2",))
    crowd.key(Qt.Key.Key_Up)
    assert marks.words == []
    known(crowd, qtbot)
    assert marks.words


def test_the_window_closes_while_chances_are_worked_out(beside, crowd: Bench, qtbot) -> None:
    watch = crowd.window.rooms.chances
    qtbot.waitUntil(lambda: watch.errand.busy)
    [thread] = running(watch.errand)
    assert crowd.window.close() and thread.isFinished()
    crowd.pump()
    assert not watch.errand.busy and not watch._rest.isActive()


def test_the_shop_is_entered_in_the_blank_stage(bench: Bench, qtbot) -> None:
    bench.window.set_stage("blank")
    form = bench.window.side.inside._fields
    until(lambda: form.complete)
    labels = [row.label for row in form.rows]
    assert any("All are still the defaults: common practice, no source." in label for label in labels)
    mark = form.widgets[labels.index("Marking")]
    assert mark.text() == "0.3 mm" and mark.accessibleName() == "Marking"
    fill(mark, "1/64\"")
    assert bench.layout.accuracy.mark == pytest.approx(25.4 / 64)
    until(lambda: form.complete)
    labels = [row.label for row in form.rows]
    assert any(label.endswith("Common practice, no source, would be 0.3 mm.") for label in labels)
    paper = form.widgets[labels.index("Printed paper")]
    for typed, kept in (("0,4 %", 0.4), ("much", 0.4), ("30", 0.4), (".1", 0.1)):
        fill(paper, typed)
        until(lambda: form.complete)
        assert bench.layout.accuracy.paper_percent == kept
        labels = [row.label for row in form.rows]
        paper = form.widgets[labels.index("Printed paper")]


def test_a_headstock_that_is_spoiled_as_drawn_is_not_called_sound(qtbot, tmp_path, bench: Bench) -> None:
    bench.window.document.hold(("treble side 2",))
    bench.view.setFocus()
    for _ in range(12):
        bench.key(Qt.Key.Key_Down)
    assert any(s.grade == "spoils the work" for s in bench.window.document.result.snags)
    known(bench, qtbot)
    assert bench.window.side.inside.chance_line.text == "Does not come out sound as drawn"


def card(bench: Bench, row: int):
    snags = bench.window.side.inside.snags
    return snags.visualRect(snags.model().index(row, 0))


def test_the_snag_in_hand_shows_its_chance_and_never_that_of_an_older_layout(beside, crowd: Bench, qtbot) -> None:
    side, watch = crowd.window.side, crowd.window.rooms.chances
    snags, model = side.inside.snags, side.inside.snags.model()
    row, snag = next((i, s) for i, s in enumerate(crowd.window.document.result.snags) if s.kind == "screw-to-screw")
    snags.scrollTo(model.index(row, 0))
    low = card(crowd, row).height()
    QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=card(crowd, row).center())
    crowd.pump()
    # In hand its card has room for the picture, and says that the chance is on its way.
    assert snags.currentIndex().row() == row and card(crowd, row).height() > low + 60
    told = model.index(row, 0).data(Qt.ItemDataRole.AccessibleDescriptionRole)
    assert told == "Chance: being worked out…"
    beside.set()
    known(crowd, qtbot)
    crowd.pump()
    own = watch.chances.simulation.of(snag)
    told = model.index(row, 0).data(Qt.ItemDataRole.AccessibleDescriptionRole)
    assert told.startswith("Spoils the work: under 1 in 3,300")
    assert model.index(row, 0).data(CHANCE).clearance is own and own.spread.counts
    ink = painted(snags.viewport().grab().toImage(), card(crowd, row), DAY.tight)
    assert ink > 200, "the bars under the margin"
    # The next layout has no chance yet: not one number of the old one stays.
    beside.clear()
    crowd.window.document.hold(("treble side 2",))
    crowd.view.setFocus()
    crowd.key(Qt.Key.Key_Up)
    row = next(i for i, s in enumerate(crowd.window.document.result.snags) if s.kind == "screw-to-screw")
    assert model.index(row, 0).data(Qt.ItemDataRole.AccessibleDescriptionRole) == "Chance: being worked out…"
    assert model.index(row, 0).data(CHANCE).clearance is None


def test_a_snag_that_no_error_of_the_shop_changes_has_no_chance(qtbot, tmp_path) -> None:
    few = replace(crowded(), pins=())
    bench = Bench(qtbot, tmp_path, few)
    known(bench, qtbot)
    snags = bench.window.side.inside.snags
    row = next(i for i, s in enumerate(bench.window.document.result.snags) if s.kind == "few-pins")
    snags.scrollTo(snags.model().index(row, 0))
    low = card(bench, row).height()
    QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=card(bench, row).center())
    bench.pump()
    assert card(bench, row).height() == low
    assert snags.model().index(row, 0).data(Qt.ItemDataRole.AccessibleDescriptionRole) is None


@pytest.mark.parametrize("kind", ["hole-to-ramp", "ramp-to-outline", "ramp-to-nut"])
def test_a_snag_of_a_ramp_shows_its_chance(qtbot, tmp_path, kind: str) -> None:
    bench = Bench(qtbot, tmp_path, below(Accuracy(), ramp=Ramp(length=52.5, depth=4.0, width=51.0)))
    known(bench, qtbot)
    snags = bench.window.side.inside.snags
    row = next(i for i, s in enumerate(bench.window.document.result.snags) if s.kind == kind)
    snags.scrollTo(snags.model().index(row, 0))
    QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=card(bench, row).center())
    bench.pump()
    told = snags.model().index(row, 0).data(Qt.ItemDataRole.AccessibleDescriptionRole)
    assert told.startswith("Spoils the work: ") and "\nMostly the mark of " in told
    assert "mark of the ramp of slot" in told or kind == "hole-to-ramp"


def painted(image, box, colour: str) -> int:
    """How many points of a part of a picture have a colour, or nearly."""
    want = QColor(colour)
    scale = image.devicePixelRatio()
    found = 0
    for y in range(int(box.top() * scale), min(image.height(), int(box.bottom() * scale))):
        for x in range(int(box.left() * scale), min(image.width(), int(box.right() * scale))):
            got = image.pixelColor(x, y)
            found += abs(got.red() - want.red()) + abs(got.green() - want.green()) + abs(got.blue() - want.blue()) < 24
    return found
