"""In inches every length carries its sign, wherever it is shown: a bare 0.25 could be read as millimetres.

Of whole numbers alone nobody can tell what they are, so the layout has no length of whole inches; the rulers, whose figures
are those of a scale, are painted without.
"""

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractItemView, QComboBox, QGraphicsSimpleTextItem, QTableView

from app.look.descendants import below
from app.sheets.pages import pages
from app.threads.background import running
from app.window.demo import demo
from app.window.stages import STAGES
from geometry.drawing import Label
from geometry.layout import Headstock
from tests.gui.bench import at_rest
from tests.waiting import until

UNITS = ("in64", "in")
NUMBER = re.compile(r'(?<![\w.,/])\d+(?:\.\d+| \d+/\d+|/\d+)(?!\d)')
"""A number with decimals or a fraction."""
SIGNED = re.compile(r'"|°| degrees| mm\b| %| min\b| hours?\b| h\b| N\b| kg\b| sq in\b| points\b| m/s\b| times\b')
"""What tells that it is in inches, or no length."""


READINGS = 3
NO_LENGTHS = re.compile(r"down to 1/64|about \d+\.\d\b|^0\.00$")
"""What is said of an action, hours, and money."""
TILT = re.compile(r"-?\d+\.\d")
"""A cell of a column of degrees."""


def named(layout: Headstock) -> list[str]:
    """Every name of the layout that has a figure in it, the longest first."""
    rack = layout.rack
    names = {one.id for group in (layout.tuners, layout.slots, layout.pins, layout.holes, layout.ears, layout.rows, layout.strings,
                                  layout.patterns, rack.bits, rack.bushes, rack.drills) for one in group}
    return sorted((name for name in names if re.search(r"\d", name) and not name.isdigit()), key=len, reverse=True)


def bare(text: str, names: list[str]) -> list[str]:
    """The numbers of a text that carry no sign; those in names do not count."""
    text = re.sub(r"<[^>]*>", " ", text)
    if not NUMBER.search(text):
        return []
    for name in names:
        text = re.sub(re.escape(name), "\x00", text, flags=re.IGNORECASE)
    return [found[0] for found in NUMBER.finditer(text) if not SIGNED.match(text, found.end())]


def told(window) -> list[str]:
    """Everything that a window shows, tells as a tip or says aloud, on its drawing too."""
    found = [item.text() for item in window.canvas.view.scene().items() if isinstance(item, QGraphicsSimpleTextItem)]
    for widget in below(window):
        if not widget.isVisible():
            continue
        for ask in ("text", "toolTip", "accessibleName", "accessibleDescription", "placeholderText", "toPlainText"):
            answer = getattr(widget, ask, "")
            found.append(str(answer() if callable(answer) else answer))
        model = widget.model() if isinstance(widget, QAbstractItemView | QComboBox) else None
        for row in range(0 if model is None else model.rowCount()):
            for column in range(model.columnCount() if isinstance(widget, QTableView) else 1):
                index = model.index(row, column)
                found += [str(index.data(role) or "") for role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole)]
    return found


@pytest.mark.parametrize(("text", "found"), [
    ('1/2" and 0.25"', []), ("0.25 across", ["0.25"]), ('3.585 x 7.48"', ["3.585"]), ("1 5/8 wide", ["1 5/8"]),
    ("tilt 6.8°", []), ("brad 6.4, 12 holes", [])])
def test_it_finds_what_lacks_its_sign(text, found):
    assert bare(text, ["brad 6.4"]) == found


def lacking(bench) -> dict[str, str]:
    """Words of the window with a length that has no sign, and where they stand, in both kinds of inches."""
    window, names, found = bench.window, named(bench.layout), {}

    def look(where: str, plans: bool = True) -> None:
        for unit in UNITS:
            window.actions_[unit].trigger()
            if plans:
                at_rest(window)
                until(lambda: not running())
            bench.pump()
            for text in set(told(window)):
                if bare(text, names) and not NO_LENGTHS.search(text):
                    found.setdefault(text, f"{where}, {unit}")

    for stage in STAGES:
        window.set_stage(stage.key)
        if stage.key != "book":
            look(stage.key)
    window.set_stage("book")
    window.room.view.show_page(READINGS)
    look("readings")
    window.commands.run("rack")
    look("rack")
    window.set_stage("tuners")
    for held in (("treble side 3",), ("treble face 1",), ("treble slot",), ("outline",), ("nut pin",), ("blank",),
                 ("treble face 1", "treble face 2")):
        window.document.hold(held)
        look(str(held), plans=False)
    return found


def test_every_length_of_the_window_has_its_sign(bench):
    assert not lacking(bench)


@pytest.mark.parametrize("unit", UNITS)
def test_every_length_on_the_sheets_has_its_sign(unit):
    layout = demo()
    names, words = named(layout), [mark.text for page in pages(layout, "A4", unit=unit) for placed in page.content
                                   for mark in placed.drawing if isinstance(mark, Label)]
    assert not [text for text in words if bare(text, names) and not NO_LENGTHS.search(text) and not TILT.fullmatch(text)]


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("tool", ["tuner", "pin", "slot", "measure", "draw slot"])
def test_the_card_at_the_pointer_has_them_too(bench, unit, tool):
    window = bench.window
    window.set_stage("slots" if "slot" in tool else "tuners")
    window.set_tool(tool)
    window.actions_[unit].trigger()
    shown = []
    window.hand.shown.connect(lambda one: shown.append(one) if one is not None else None)
    bench.click((3.3, 50.7))
    bench.move((4.1, 71.3))
    said = [one.readout for one in shown] + [mark.text for one in shown for mark in one.marks if isinstance(mark, Label)]
    assert any('"' in text for text in said) and not [text for text in said if bare(text, named(bench.layout))]
