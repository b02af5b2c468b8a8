"""The head in space beside the drawing: shown, turned, brought closer, put away."""

import math

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.look.descendants import below
from app.look.theme import theme
from tests.waiting import press


def shown(bench):
    bench.window.actions_["solid"].trigger()
    bench.pump()
    return bench.window.beside.solid.turntable


def test_it_comes_beside_the_canvas_and_goes_again(bench):
    table = shown(bench)
    assert table.isVisible() and bench.window.canvas.isVisible()
    bench.window.actions_["solid"].trigger()
    assert not table.isVisible() and bench.window.canvas.isVisible()


def test_the_mouse_turns_it_and_a_button_shows_a_side(bench):
    table = shown(bench)
    before = table.view
    QTest.mousePress(table, Qt.MouseButton.LeftButton, pos=QPoint(100, 100))
    QTest.mouseMove(table, QPoint(160, 100))
    QTest.mouseRelease(table, Qt.MouseButton.LeftButton, pos=QPoint(160, 100))
    assert table.view.yaw != before.yaw and math.isclose(table.view.tilt, before.tilt)
    back = next(b for b in bench.window.beside.solid._views if b.text() == "Back")
    press(back)
    assert math.isclose(abs(table.view.yaw), math.pi)


def test_keys_turn_it_and_never_past_the_top(bench):
    table = shown(bench)
    table.setFocus()
    for _ in range(60):
        QTest.keyClick(table, Qt.Key.Key_Up)
    assert math.isclose(table.view.tilt, math.pi / 2)
    QTest.keyClick(table, Qt.Key.Key_Plus)
    assert table._zoom > 1


def test_it_follows_the_layout_once_the_hand_rests(bench, qtbot):
    table = shown(bench)
    qtbot.waitUntil(lambda: table._of is bench.layout)
    bench.window.document.hold(("treble side 2",))
    bench.window.commands.nudge(0, 1)
    qtbot.waitUntil(lambda: table._of is bench.layout)


def test_a_window_opened_later_shows_it_again(bench, qtbot):
    shown(bench)
    assert bench.window.settings.value("solid", False, bool) is True


def test_it_stays_away_from_stages_that_have_no_canvas(bench):
    table = shown(bench)
    bench.window.set_stage("sheets")
    assert not table.isVisible()
    bench.window.set_stage("slots")
    assert table.isVisible()


def test_pages_that_are_not_on_show_do_not_widen_the_window(bench):
    from app.window.stages import STAGES
    before = bench.window.minimumSizeHint().width()
    for stage in STAGES:
        bench.window.set_stage(stage.key)
        bench.pump()
    bench.window.set_stage("tuners")
    bench.pump()
    assert bench.window.minimumSizeHint().width() <= max(before, 1100)


def test_a_snag_is_marked_in_the_face_the_opened_out_view_the_section_and_the_solid(bench, monkeypatch):
    """Red rings are there with the snags and gone without, in each of the four."""
    from app.formats import headstock
    from app.window.demo import samples
    window = bench.window
    window.document.replace(headstock.read(samples() / "mixed-one-slide-too-far.headstock.json"), None)
    window.show_solid(True)
    window.document.hold(("treble side 2",))
    bench.pump()
    red = theme().spoils.lower()

    def shows(widget) -> bool:
        image = widget.grab().toImage()
        return any(image.pixelColor(x, y).name() == red for x in range(image.width()) for y in range(image.height()))

    # The canvas is face and folded edges in one: a ring stands on each.
    blank = bench.layout.blank
    at = [item.pos() for item in window.canvas._snags._items]
    assert any(abs(p.x()) < blank.treble for p in at) and any(p.x() > blank.treble for p in at)
    turntable, section = window.beside.solid.turntable, window.side.inside._section
    assert section.isVisible() and turntable.isVisible()
    assert shows(section) and shows(turntable)
    window.document.hold(())
    window.document.replace(headstock.read(samples() / "twelve-string-mixed.headstock.json"), None)
    window.document.hold(("treble side 2",))
    bench.pump()
    assert not [item for item in window.canvas._snags._items if item._grade != "note"]
    assert not shows(section) and not shows(turntable)


def test_a_held_slot_or_pin_is_shown_in_section_and_follows_a_drag(bench):
    window = bench.window
    window.set_stage("slots")
    bench.click((15.0, 60.0))
    assert window.document.held == ("treble slot",)
    section = window.side.inside._section
    assert section.isVisible() and window.side.inside._section_title.text() == "Section through treble slot"
    bench.click(bench.layout.pins[0].at)
    bench.pump()
    assert section.isVisible() and "pin" in window.side.inside._section_title.text()
    window.document.hold(())
    bench.pump()
    assert not section.isVisible()


def test_what_is_noted_of_a_thing_stands_on_its_page(bench):
    from PySide6.QtWidgets import QLabel

    from app.formats import headstock
    from app.window.demo import samples
    bench.window.document.replace(headstock.read(samples() / "slotted-snags-to-find.headstock.json"), None)
    bench.window.document.hold(("treble 3",))
    bench.pump()
    said = [label.text() for label in below(bench.window.side, QLabel) if label.isVisible()]
    assert any(text.startswith("Deliberate: plates too close") for text in said)
    bench.window.document.hold(("treble 1",))
    bench.pump()
    said = [label.text() for label in below(bench.window.side, QLabel) if label.isVisible()]
    assert not any(text.startswith("Deliberate") for text in said)


def test_the_sides_to_look_from_stand_in_one_row_at_its_least_width(bench):
    shown(bench)
    solid = bench.window.beside.solid
    row = next(iter(solid._views)).parentWidget()
    assert row.layout().sizeHint().width() <= solid.minimumWidth()
