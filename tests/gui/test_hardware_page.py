"""Hardware by its dimensions: the page goes on with the copy that was made and with the one whose name was changed."""

import pytest
from PySide6.QtWidgets import QLabel

from app.look.descendants import below
from app.window.stage_pages import NO_TUNER
from geometry.edits import remove_features
from tests.gui.hands import button, field, fill
from tests.waiting import press, until

SIDE = "side 6.4 post two screws"


@pytest.fixture
def page(bench):
    """The panel of the Tuners stage while nothing is held: the hardware chosen in the strip."""
    bench.window.set_stage("tuners")
    box = bench.window.tools.hardware
    box.setCurrentText(SIDE)
    box.activated.emit(box.currentIndex())
    bench.pump()
    return bench.window.side


def pattern(bench, id):
    return next((p for p in bench.layout.patterns if p.id == id), None)


def test_what_is_changed_after_a_copy_is_the_copy_under_its_new_name(bench, page):
    first = pattern(bench, SIDE)
    count = len(bench.layout.patterns)
    press(button(page, "Make a copy to change"))
    until(lambda: field(page, "Name").text() == SIDE + " 2", "the page stays with the old one")
    fill(field(page, "Name"), "mine")
    assert bench.window.tools.hardware.currentText() == "mine"
    until(lambda: field(page, "Name").text() == "mine", "the page goes to another")
    fill(field(page, "Diameter"), "6.35")
    assert pattern(bench, "mine").bores[0].diameter == 6.35 and pattern(bench, SIDE) == first
    assert len(bench.layout.patterns) == count + 1
    for _ in range(2):
        bench.window.actions_["undo"].trigger()
    assert bench.window.tools.hardware.currentText() == SIDE + " 2", "the same again under its old name"
    bench.window.actions_["undo"].trigger()
    assert pattern(bench, "mine") is None and len(bench.layout.patterns) == count
    bench.window.actions_["redo"].trigger()
    assert bench.window.tools.hardware.currentText() == SIDE + " 2"


def test_another_layout_and_a_removal_keep_to_what_is_there(bench, page):
    strip = bench.window.tools
    strip.set_hardware(["a", "b", "c"])
    strip.hardware.setCurrentText("c")
    strip.set_hardware(["a", "b"])
    assert strip.hardware.currentText() == "b"
    strip.set_hardware(["b", "a", "x", "y"])
    assert strip.hardware.currentText() == "b"


def test_hardware_that_comes_with_a_tuner_is_not_chosen_for_the_next(bench, page):
    """Its mirror image comes with the tuner on the other edge: the next one on this edge has the hardware that was chosen."""
    strip = bench.window.tools
    strip.set_hardware(["a", "b"], ["a"])
    strip.hardware.setCurrentText("a")
    strip.set_hardware(["a", "b", "a mirrored"], ["a", "a mirrored"])
    assert strip.hardware.currentText() == "a"
    strip.set_hardware(["a", "b", "a mirrored", "a 2"], ["a", "a mirrored"])
    assert strip.hardware.currentText() == "a 2"


def test_a_head_without_tuners_says_how_the_first_is_placed(bench, page):
    assert not any(NO_TUNER in label.text() for label in below(page, QLabel))
    bench.window.document.apply("Bare", remove_features(bench.layout, tuple(tuner.id for tuner in bench.layout.tuners)))
    bench.pump()
    until(lambda: any(NO_TUNER in label.text() for label in below(page, QLabel)), "nothing says how")


def test_words_that_are_longer_than_their_field_begin_its_tip(bench, page):
    words = field(page, "In words")
    assert words.toolTip().startswith(words.text() + "\n") and words.text() == pattern(bench, SIDE).about
    fill(words, "bought by weight, <measure each>")
    until(lambda: field(page, "In words").toolTip() .startswith("<qt>bought by weight, &lt;measure each&gt;<br>"), "it tells of what was there before")
