"""The field above the drawing: what it refuses is said, and what it takes is drawn with."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.gui.hands import fill


def test_a_width_that_no_slot_can_have_is_refused_and_said(bench):
    window = bench.window
    window.set_stage("slots")
    window.set_tool("slot")
    field = window.tools.slot_width_field
    for text, why in (("-3", "above zero"), ("0", "above zero"), ("600", "500 mm"), ("wide", "is not a length")):
        fill(bench.window.tools.slot_width_field, text)
        assert why in window.foot.said and field.bad and field.text() == text
        assert window.tools.slot_width == 13.0
    QTest.keyClick(field, Qt.Key.Key_Escape)
    assert field.text() == "13 mm" and not field.bad
    fill(bench.window.tools.slot_width_field, "11")
    assert window.tools.slot_width == 11.0 and field.text() == "11 mm"


def test_a_new_slot_begins_with_half_an_inch_where_work_is_in_inches(bench):
    """13 mm in mm; a width that the maker typed stays what it is in every unit."""
    window = bench.window
    field = window.tools.slot_width_field
    seen = []
    for unit in ("in64", "in", "mm"):
        window.set_unit(unit)
        seen.append((window.tools.slot_width, window.chooser.options.slot_width, field.text()))
    assert seen == [(12.7, 12.7, '1/2"'), (12.7, 12.7, '0.5"'), (13.0, 13.0, "13 mm")]
    window.set_stage("slots")
    window.set_tool("slot")
    fill(bench.window.tools.slot_width_field, "12 mm")
    window.set_unit("in64")
    assert window.tools.slot_width == 12.0
