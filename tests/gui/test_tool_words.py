"""Words beside the signs of the tool bar, and in its boxes, while there is room for them."""

import pytest
from PySide6.QtWidgets import QStyle, QStyleOptionComboBox

from app.look.choice import beside
from app.look.sizes import px
from app.window.sign_button import SignButton


def test_each_sign_is_asked_once_how_wide_it_wants_to_be(bench, monkeypatch):
    """To answer takes long, and it is asked at each step of the window's edge, where every number of words is weighed."""
    asked, own = [], SignButton.rooms
    monkeypatch.setattr(SignButton, "rooms", lambda button: asked.append(button) or own(button))
    monkeypatch.setattr(bench.window.tools, "width", lambda: 0)  # nothing fits: all are weighed
    bench.window.tools._fit_words()
    assert asked and len(asked) == len(set(asked))


def test_words_go_one_by_one_from_the_right_as_the_row_narrows(bench):
    """Else a row that lacks the room for one word shows none, and a part of it stays empty."""
    tools = bench.window.tools
    bench.window.set_stage("slots")
    signs, wanted = tools._wanted()
    row = tools._row.heightForWidth(4000)
    for words in range(len(signs), 0, -1):
        for width, shown in ((wanted(words), words), (wanted(words) - 1, words - 1)):
            tools.resize(width, row)
            tools._fit_words()
            assert [bool(button.text()) for button in signs] == [True] * shown + [False] * (len(signs) - shown)
            assert tools._row.heightForWidth(width) == row


@pytest.mark.parametrize("stage", ["tuners", "router"])
def test_words_give_way_before_the_row_goes_on_below(bench, stage):
    """All parts in one row at every width that the signs alone leave room for; below that the name of the hardware gives way."""
    tools = bench.window.tools
    bench.window.set_stage(stage)
    row, least = tools._row.heightForWidth(4000), tools._wanted()[1](0)
    shorter = tools.hardware.sizeHint().width() - tools.hardware.minimumSizeHint().width() if stage == "tuners" else 0
    for width in (*range(tools._wanted()[1](len(tools._wanted()[0])), least, -7), least, least - shorter + 8):
        tools.resize(width, row)
        tools._fit_words()
        tools._row.activate()
        assert tools._row.heightForWidth(width) == row, width
        assert stage != "tuners" or (tools.hardware.width() == tools.hardware.sizeHint().width()) is (width >= least), width
    assert tools._row.heightForWidth(least - shorter - 8) > row
    tools.resize(least - shorter - 8, 2 * row)
    tools._fit_words()
    assert any(button.text() for button in tools._wanted()[0]) is (stage == "router"), "below the tools the strip takes no room from them"


@pytest.mark.parametrize("letters", ["100", "150", "200"])
def test_what_is_shortened_in_a_box_has_all_the_room_of_the_style(bench, letters):
    window = bench.window
    window.actions_[f"letters {letters}"].trigger()
    box, option = window.tools.hardware, QStyleOptionComboBox()
    box.setFixedWidth(px(120))
    box.initStyleOption(option)
    assert "…" in option.currentText and option.currentText != box.currentText()
    room = box.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, box)
    assert 0 <= room.width() - 2 - (box.width() - beside()) <= px(8), "the label keeps a point free on either side"
    assert box.fontMetrics().horizontalAdvance(option.currentText) <= room.width() - 2


def test_a_tool_that_is_taken_moves_the_drawing_at_no_width_at_which_all_stood_in_one_row(bench):
    """Its fields are as wide as they are made, not as their letters could make do with: else one of them began a second row."""
    tools = bench.window.tools
    bench.window.set_stage("slots")
    row = tools._row.heightForWidth(4000)
    tried = 0
    for width in range(tools.width(), tools._wanted()[1](0), -7):
        heights = set()
        for tool in ("hold", "slot"):
            bench.window.set_tool(tool)
            tools.resize(width, row)
            tools._fit_words()
            heights.add(tools._row.heightForWidth(width))
        assert len(heights) == 1, width
        tried += heights == {row}
    assert tried > 10
