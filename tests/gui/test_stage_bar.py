"""The bar along the top: the layout's name beside the stages."""

import pytest
from PySide6.QtWidgets import QPushButton

from app.look.descendants import below
from app.look.sizes import px
from app.window.stages import APART, NAME, STAGES, StageBar

LONG = "Twelve strings for the lady from next door, second try"


@pytest.fixture
def bar(qtbot) -> StageBar:
    made = StageBar()
    qtbot.addWidget(made)
    made.show()
    return made


def laid(bar: StageBar, width: int) -> tuple[str, list[int]]:
    """What is read of the name in a bar of that width, and where the stages begin; they stand in one row."""
    bar.resize(width, bar.layout().heightForWidth(width))
    bar.layout().activate()
    buttons = list(below(bar, QPushButton))
    assert len(buttons) == len(STAGES) and len({button.y() for button in buttons}) == 1
    return bar._name.shown, [button.x() for button in buttons]


def test_a_long_name_is_read_whole_where_the_stages_leave_room(bar):
    bar.set_name(LONG, False)
    least = bar.layout().sizeHint().width()
    whole = bar._name.fontMetrics().horizontalAdvance(LONG)
    assert whole > px(NAME)
    words, _ = laid(bar, least + 10)
    assert words.endswith("…") and LONG.startswith(words[:-1])
    more, _ = laid(bar, least + 150)
    assert len(words) < len(more) < len(LONG), "half of what is over is before the stages"
    words, before = laid(bar, least + 2 * whole)
    assert words == LONG and bar._name.geometry().right() + APART <= before[0]
    bar.set_name(LONG, True)
    assert laid(bar, least + 2 * whole) == (f"{LONG} •", before), "the dot moves nothing"
    assert bar._name.accessibleName() == f"{LONG} (not saved)"


def test_a_short_name_leaves_the_stages_in_the_middle_of_what_is_left(bar):
    bar.set_name("Eight", False)
    words, at = laid(bar, bar.layout().sizeHint().width() + 300)
    assert words == "Eight" and at[0] > bar._name.sizeHint().width() + 140


def test_a_long_name_gives_way_before_a_stage_goes_to_the_next_row(bar):
    bar.set_name(LONG, False)
    whole = bar.layout().sizeHint().width()
    for less in (1, bar._name.sizeHint().width() - bar._name.minimumSizeHint().width()):
        words, _ = laid(bar, whole - less)
        assert words.endswith("…") and LONG.startswith(words[:-1])
    one = bar.layout().heightForWidth(whole)
    assert bar.layout().heightForWidth(whole - px(NAME)) > one, "but some of it is always read"
