"""Colours can be read: contrast by WCAG 2.2, success criterion 1.4.3 (4.5:1 for text) and 1.4.11 (3:1 for lines)."""

import pytest

from app.look.styles import LOOKS
from app.look.theme import DAY, LAMP, contrast
from geometry.drawing import STYLES


def test_contrast_of_black_and_white_is_21():
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


def test_contrast_worked_example():
    # #777777 on white is 4.48:1, just short of AA (published widely with WCAG's own formula).
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.005)


@pytest.mark.parametrize("theme", [DAY, LAMP], ids=lambda t: t.name)
@pytest.mark.parametrize("ground", ["paper", "panel", "card", "bar"])
@pytest.mark.parametrize("text", ["ink", "dim", "spoils", "tight", "note"])
def test_text_can_be_read(theme, ground, text):
    assert contrast(getattr(theme, text), getattr(theme, ground)) >= 4.5


@pytest.mark.parametrize("theme", [DAY, LAMP], ids=lambda t: t.name)
@pytest.mark.parametrize("line", ["edge", "bore", "spoils", "tight", "template"])
def test_lines_stand_out_on_wood(theme, line):
    assert contrast(getattr(theme, line), theme.wood) >= 3


@pytest.mark.parametrize("theme", [DAY, LAMP], ids=lambda t: t.name)
def test_a_stage_in_hand_can_be_read(theme):
    assert contrast(theme.accent_ink, theme.accent) >= 4.5


def test_every_style_of_the_display_list_has_a_look():
    assert set(STYLES) <= set(LOOKS)
