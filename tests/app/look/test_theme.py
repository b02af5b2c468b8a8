"""Colours can be read: contrast by WCAG 2.2, success criterion 1.4.3 (4.5:1 for text) and 1.4.11 (3:1 for lines)."""

import re

import pytest

from app.look.style import sheet
from app.look.styles import LOOKS
from app.look.theme import DAY, LAMP
from geometry.drawing import STYLES
from tests.app.look.contrast import contrast


def test_contrast_of_black_and_white_is_21():
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


def test_contrast_worked_example():
    # #777777 on white is 4.48:1, just short of AA (published widely with WCAG's own formula).
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.005)


BOTH = pytest.mark.parametrize("theme", [DAY, LAMP], ids=lambda t: t.name)

TEXTS = [(text, ground) for text in ("ink", "dim", "spoils", "tight", "note") for ground in ("paper", "panel", "card", "bar")] + [
    ("accent_ink", "accent"), ("panel", "focus"), ("ink", "line"),
    ("focus", "panel"), ("template", "panel"), ("bore", "panel"), ("edge", "panel"),
    *((text, ground) for text in ("dim", "edge", "ink", "bore") for ground in ("wood", "strip", "waste", "slot"))]
"""Every pair of letters and ground that the style sheet, the painted cards and the labels of drawings make. Letters of
what cannot be pressed are excepted by the criterion and are dim here all the same."""

GROUNDS = ("paper", "panel", "wood", "strip", "waste", "slot")
ONLY_ON = {"blank": ("paper",)}
"""Lines that never lie elsewhere."""


@BOTH
@pytest.mark.parametrize("text, ground", TEXTS)
def test_text_can_be_read(theme, text, ground):
    assert contrast(getattr(theme, text), getattr(theme, ground)) >= 4.5


@BOTH
@pytest.mark.parametrize("style", sorted(LOOKS))
def test_every_line_of_a_drawing_stands_out_from_what_it_lies_on(theme, style):
    look = LOOKS[style]
    if look.line:
        for ground in ONLY_ON.get(style, GROUNDS):
            assert contrast(getattr(theme, look.line), getattr(theme, ground)) >= 3, ground


@BOTH
@pytest.mark.parametrize("grade", ["spoils", "tight", "note"])
def test_lines_of_what_is_snagged_stand_out_too(theme, grade):
    for ground in GROUNDS:
        assert contrast(getattr(theme, grade), getattr(theme, ground)) >= 3, ground


@BOTH
@pytest.mark.parametrize("ground", ["paper", "panel", "card", "bar", "accent"])
def test_the_frame_of_what_has_the_keyboard_stands_out(theme, ground):
    assert contrast(theme.ring, getattr(theme, ground)) >= 3


@BOTH
@pytest.mark.parametrize("ground", ["paper", "panel", "card", "bar"])
def test_frames_of_fields_and_scroll_bars_stand_out(theme, ground):
    assert contrast(theme.rim, getattr(theme, ground)) >= 3


@BOTH
def test_the_style_sheet_has_no_colour_of_its_own(theme):
    known = {getattr(theme, name).upper() for name in theme._fields if name != "name"}
    assert {colour.upper() for colour in re.findall(r"#[0-9A-Fa-f]{6}\b", sheet(theme))} <= known


def test_every_style_of_the_display_list_has_a_look():
    assert set(STYLES) <= set(LOOKS)
