"""Fields: what makers type, in the unit on show, and what they are told when it cannot be read."""

import pytest
from PySide6.QtCore import Qt

from app.panels.forms.fields import AngleField, LengthField
from app.panels.forms.form import Form
from app.panels.forms.rows import FieldRow
from geometry.errors import GeometryError


@pytest.fixture
def length(qtbot):
    field = LengthField("mm")
    qtbot.addWidget(field)
    field.show()
    return field


def typed(qtbot, field, text, key=Qt.Key.Key_Return):
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, key)


@pytest.mark.parametrize(("text", "mm"), [("12.5", 12.5), ("12,5", 12.5), ('1/2"', 12.7), ("12 mm", 12.0),
                                          ('1 5/8" + 2 mm', 43.275), ("-3", -3.0), ("1.2 cm", 12.0)])
def test_a_typed_length_is_sent_in_mm(qtbot, length, text, mm):
    length.show_value(1.0)
    with qtbot.waitSignal(length.sent) as sent:
        typed(qtbot, length, text)
    assert sent.args[0] == pytest.approx(mm, abs=1e-9)


def test_a_number_without_a_unit_is_in_the_unit_on_show(qtbot, length):
    length.set_unit("in64")
    length.show_value(1.0)
    with qtbot.waitSignal(length.sent) as sent:
        typed(qtbot, length, "3/4")
    assert sent.args[0] == pytest.approx(19.05)


def test_nonsense_is_refused_with_a_sentence_and_keeps_the_text(qtbot, length):
    length.show_value(1.0)
    with qtbot.waitSignal(length.refused) as refused:
        typed(qtbot, length, "twelve")
    assert "not a length" in refused.args[0]
    assert length.text() == "twelve"


@pytest.mark.parametrize("mend", ["typed", "escape"])
def test_what_was_refused_leaves_no_tip_behind(qtbot, length, mend):
    length.setToolTip("How wide it is.")
    length.show_value(1.0)
    typed(qtbot, length, "twelve")
    typed(qtbot, length, "13 apples")
    assert length.bad and "13 apples" in length.toolTip() and length.refusal == length.toolTip()
    if mend == "typed":
        typed(qtbot, length, "12")
    else:
        qtbot.keyClick(length, Qt.Key.Key_Escape)
    assert not length.bad and length.toolTip() == "How wide it is." and length.refusal == ""


def test_escape_puts_the_old_text_back(qtbot, length):
    length.show_value(7.5)
    with qtbot.assertNotEmitted(length.sent):
        typed(qtbot, length, "99", Qt.Key.Key_Escape)
    assert length.text() == "7.5 mm"


def test_leaving_a_field_untouched_sends_nothing(qtbot, length):
    length.set_unit("in64")
    length.show_value(10.0)
    with qtbot.assertNotEmitted(length.sent):
        length.setFocus()
        qtbot.keyClick(length, Qt.Key.Key_Return)


def test_an_empty_optional_length_is_none(qtbot):
    field = LengthField("mm", optional=True, empty="through")
    qtbot.addWidget(field)
    field.show()
    field.show_value(5.0)
    with qtbot.waitSignal(field.sent) as sent:
        field.setFocus()
        field.selectAll()
        qtbot.keyClick(field, Qt.Key.Key_Delete)
        qtbot.keyClick(field, Qt.Key.Key_Return)
    assert sent.args[0] is None
    assert field.placeholderText() == "through"


def test_an_angle_is_sent_in_degrees(qtbot):
    field = AngleField()
    qtbot.addWidget(field)
    field.show()
    field.show_value(1.0)
    with qtbot.waitSignal(field.sent) as sent:
        typed(qtbot, field, "14,5°")
    assert sent.args[0] == pytest.approx(14.5)


@pytest.mark.parametrize(("degrees", "shown"), [(14.0, "14.0°"), (14.5, "14.5°"), (0.25, "0.25°"), (-3.75, "-3.75°"),
                                                (7.128, "7.13°"), (-0.001, "0.0°")])
def test_an_angle_is_shown_as_finely_as_it_was_typed(qtbot, degrees, shown):
    field = AngleField()
    qtbot.addWidget(field)
    field.show_value(degrees)
    assert field.text() == shown


def test_escape_after_a_value_that_the_layout_refused_shows_what_the_layout_holds(qtbot, length):
    length.show_value(7.5)
    length.sent.connect(lambda _: length.refuse("A slot is wider than nothing."))
    typed(qtbot, length, "-3")
    assert length.text() == "-3", "it stays, to be mended"
    qtbot.keyClick(length, Qt.Key.Key_Escape)
    assert length.text() == "7.5 mm"


def test_a_value_that_was_taken_is_what_escape_puts_back(qtbot, length):
    length.show_value(7.5)
    length.sent.connect(length.show_value)
    typed(qtbot, length, "8")
    typed(qtbot, length, "99", Qt.Key.Key_Escape)
    assert length.text() == "8 mm"


def test_what_was_refused_is_not_shown_of_another_thing_of_the_same_kind(qtbot):
    form = Form("mm")
    qtbot.addWidget(form)
    form.show()

    def row(of: str, value: float) -> FieldRow:
        def change(_: object) -> None:
            raise GeometryError(f"{of} is refused.")
        return FieldRow("Width", "length", value, change)
    form.show_rows([row("bass slot", 13.0)], "bass slot")
    field = form.widgets[0]
    typed(qtbot, field, "-3")
    assert field.text() == "-3"
    form.show_rows([row("bass slot", 13.0)], "bass slot")
    assert field.text() == "-3", "the same thing once more: it waits to be mended"
    form.show_rows([row("treble slot", 13.0)], "treble slot")
    assert field.text() == "13 mm" and field.property("bad") is not True
