"""What is typed while the hand draws or drags goes to the drawing, whatever was pressed before, and removes nothing."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication

from app.look.descendants import below
from tests.waiting import press, until


@pytest.fixture
def window(bench):
    bench.window.activateWindow()
    until(bench.window.isActiveWindow)
    bench.view.setFocus()
    bench.pump()
    return bench.window


def typed(bench, text: str) -> None:
    """Keys go to whoever has the keyboard."""
    for letter in text:
        QTest.keyClicks(QApplication.focusWidget(), letter)
    bench.pump()


def test_backspace_in_a_drag_corrects_the_number_and_leaves_the_tuner(bench, window):
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 4))
    assert window.document.held == ("treble side 2",) and window.actions_["remove"].isEnabled()
    typed(bench, "12")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    assert [text for _, text, _ in window.hand.entries if text] == ["1"]
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    assert window.hand.busy and not window.hand.entries
    bench.key(Qt.Key.Key_Escape)
    bench.release(start)
    assert bench.layout.tuner("treble side 2") and window.document.history.undo_name is None
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    assert window.document.history.undo_name == "Remove treble side 2", "nothing is in hand: what is held goes"


def test_to_let_go_of_what_is_dragged_takes_what_was_typed(bench, window):
    start, before = bench.origin("treble face 2"), bench.layout
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 5))
    bench.text("0; 7")
    bench.release((start[0], start[1] + 5))
    assert not window.hand.busy
    assert bench.origin("treble face 2") != pytest.approx((start[0], start[1] + 5), abs=0.6)
    taken = bench.layout
    window.commands.run("undo")
    assert bench.layout is before
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 5))
    bench.text("0; 7")
    bench.key(Qt.Key.Key_Return)
    assert bench.layout == taken, "as with Enter"
    bench.release(start)


@pytest.mark.parametrize("text", ["9999", "5 qqq"])
def test_what_is_let_go_of_with_a_refused_number_goes_back_and_says_why(bench, window, text):
    start, before = bench.inside("treble side 2"), bench.layout
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 4))
    typed(bench, text)
    bench.release((start[0], start[1] + 4))
    assert not window.hand.busy and bench.layout is before
    why = window.foot.said
    assert "put back" in why and len(why) > len("What was in hand is put back. ")
    bench.move((start[0], start[1] + 9))
    assert window.document.shown is before, "nothing follows a mouse that is up"


def test_to_let_go_after_the_number_was_deleted_ends_the_drag_where_it_is(bench, window):
    start, before = bench.origin("treble face 2"), bench.layout
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 5))
    typed(bench, "7")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    bench.release((start[0], start[1] + 5))
    assert not window.hand.busy and bench.layout is not before
    assert bench.origin("treble face 2")[1] == pytest.approx(start[1] + 5, abs=0.6)


def test_the_next_node_may_be_typed_before_the_button_of_the_last_one_is_up(bench, window):
    window.set_stage("outline")
    press(window.tools._tools["draw outline"])
    bench.move((23.0, 0.0))
    bench.press((23.0, 0.0))
    typed(bench, "4")
    bench.release((23.0, 0.0))
    typed(bench, "0")
    assert [text for _, text, _ in window.hand.entries if text] == ["40"]
    bench.key(Qt.Key.Key_Escape)


def test_backspace_takes_the_last_node_back_while_the_outline_is_held(bench, window):
    window.set_stage("outline")
    window.document.hold(("outline",))
    before = bench.layout.outline
    press(window.tools._tools["draw outline"])
    for place in ("23; 0", "60; 20"):
        bench.move((10.0, 10.0))
        typed(bench, place)
        bench.key(Qt.Key.Key_Return)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    assert window.hand.busy and bench.layout.outline is before
    for place in ("30; 20", "38; 100", "0; 170"):
        typed(bench, place)
        bench.key(Qt.Key.Key_Return)
    bench.key(Qt.Key.Key_Return)
    assert max(node.at[0] for node in bench.layout.outline.nodes) == pytest.approx(38.0)


@pytest.mark.parametrize("tool, stage, made", [("draw outline", "outline", None), ("slot", "slots", "slots"),
                                               ("pin", "slots", "pins"), ("hole", "tuners", "holes")])
def test_the_mouse_takes_a_tool_and_the_keyboard_types_where(bench, window, tool, stage, made):
    press(next(b for b in below(window.stages, QAbstractButton) if b.property("stage") == stage))
    press(window.tools._tools[tool])
    assert QApplication.focusWidget() is bench.view
    count = len(getattr(bench.layout, made)) if made else 0
    bench.move((2.0, 150.0))
    typed(bench, "3")
    assert window.hand.entries
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    typed(bench, "155")
    assert [text for _, text, _ in window.hand.entries] == ["3", "155"]
    bench.key(Qt.Key.Key_Return)
    if tool in ("pin", "hole"):
        assert len(getattr(bench.layout, made)) == count + 1
        assert getattr(bench.layout, made)[-1].at == pytest.approx((3.0, 155.0))
    window.hand.cancel()


def test_delete_on_the_outline_says_why_it_stays(bench, window):
    window.set_stage("outline")
    for held, words in (("outline", "The outline stays"), ("nut", "Nut and blank stay"), ("blank", "Nut and blank stay")):
        window.document.hold((held,))
        before = bench.layout
        bench.key(Qt.Key.Key_Delete)
        assert bench.layout is before and words in window.foot.said


def test_what_is_no_thing_of_its_own_is_neither_nudged_nor_duplicated_and_stays_held(bench, window):
    before = bench.layout
    for held, ways in (("nut", ("nudge", "duplicate")), ("blank", ("nudge", "duplicate")), ("outline", ("duplicate",))):
        for way in ways:
            window.document.hold((held,))
            window.foot.say("")
            bench.key(Qt.Key.Key_Right) if way == "nudge" else bench.key(Qt.Key.Key_D, Qt.KeyboardModifier.ControlModifier)
            assert bench.layout is before and window.document.held == (held,)
            assert window.foot.said == f"This can be done with ears, slots, tuners, pins and holes, but not with the {held}."


def test_the_next_node_is_typed_as_calipers_find_it(bench, window):
    """Half the width and how far from the nut, without a mark between them to be known: Tab leads past length and angle."""
    window.set_stage("outline")
    window.tools.mirrored.setChecked(True)
    press(window.tools._tools["draw outline"])
    bench.move((20.0, 10.0))
    typed(bench, "23;0")
    bench.key(Qt.Key.Key_Return)
    bench.move((30.0, 40.0))
    typed(bench, "5")
    assert [label for label, _, _ in window.hand.entries] == ["length", "angle", "to the treble", "from the nut line"]
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    for number in ("", "", "37", "31"):
        typed(bench, number)
        if number != "31":
            QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    bench.key(Qt.Key.Key_Return)
    typed(bench, "0; 170")
    bench.key(Qt.Key.Key_Return)
    places = [node.at for node in bench.layout.outline.nodes]
    assert any(at == pytest.approx((37.0, 31.0)) for at in places) and any(at == pytest.approx((-37.0, 31.0)) for at in places)


def test_the_tip_end_of_a_slot_is_typed_as_a_place_too(bench, window):
    window.set_stage("slots")
    press(window.tools._tools["slot"])
    before = len(bench.layout.slots)
    bench.move((2.0, 20.0))
    typed(bench, "0;40")
    bench.key(Qt.Key.Key_Return)
    bench.move((3.0, 90.0))
    for _ in range(2):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    typed(bench, "1")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    typed(bench, "99")
    bench.key(Qt.Key.Key_Return)
    assert len(bench.layout.slots) == before + 1 and bench.layout.slots[-1].shape.tip_end == pytest.approx((1.0, 99.0))


def test_what_is_refused_stays_to_be_mended(bench, window):
    window.set_stage("slots")
    press(window.tools._tools["slot"])
    before = len(bench.layout.slots)
    bench.click((0.0, 150.0))
    bench.move((0.0, 165.0))
    typed(bench, "3")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    typed(bench, "90")
    bench.key(Qt.Key.Key_Return)
    assert "cannot be shorter" in window.canvas.tag.said.lines[0]
    assert [(label, text) for label, text, _ in window.hand.entries][:2] == [("length", "3"), ("angle", "90")]
    assert len(window.document.shown.slots) == before + 1, "and the slot as it was shown"
    for _ in range(3):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    typed(bench, "0")
    bench.key(Qt.Key.Key_Return)
    made = bench.layout.slots[-1].shape
    assert len(bench.layout.slots) == before + 1
    assert made.tip_end[1] - made.nut_end[1] == pytest.approx(30 - made.width)


@pytest.mark.parametrize("text", ["500000", "5 qqq"])
def test_what_a_drag_refuses_stays_too_and_a_number_that_fits_is_taken(bench, window, text):
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 4))
    typed(bench, text)
    bench.key(Qt.Key.Key_Return)
    assert window.hand.busy and [words for _, words, _ in window.hand.entries] == [text]
    for _ in text:
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backspace)
    typed(bench, "100")
    bench.key(Qt.Key.Key_Return)
    bench.release(start)
    assert bench.layout.tuner("treble side 2").place.along == pytest.approx(100.0)
