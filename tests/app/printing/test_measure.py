"""The dialog that asks for two bars."""

import pytest
from PySide6.QtWidgets import QApplication

from app.printing.correction import Correction
from app.printing.measure import MeasureBars
from app.printing.printers import correction_for, keep_correction


@pytest.fixture
def file(tmp_path):
    return tmp_path / "printers.json"


@pytest.fixture
def dialog(qtbot, file):
    made = MeasureBars("A4", settings=file)
    qtbot.addWidget(made)
    made.printer.setCurrentText("shop")
    return made


def test_two_bars_make_a_correction(dialog, file):
    dialog.lying.setText("99.6")
    dialog.upright.setText("100.9 mm")
    assert "New: across 1.004, along 0.991" in dialog.says.text()
    dialog.accept()
    assert dialog.result() == MeasureBars.DialogCode.Accepted
    found = correction_for("shop", "A4", file)
    assert (found.across, found.along) == pytest.approx((100 / 99.6, 100 / 100.9), abs=1e-5)


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
def test_a_bar_that_nobody_entered_is_100_mm_in_any_unit(qtbot, file, unit):
    """In inches no more than 3.937 or 3 15/16 is shown of it, which would be a correction."""
    made = MeasureBars("A4", unit, settings=file)
    qtbot.addWidget(made)
    made.printer.setCurrentText("shop")
    assert made.correction() == Correction() and "New" not in made.says.text()
    made.lying.setText('3.95"')
    assert made.correction() == Correction(pytest.approx(100 / (3.95 * 25.4)), 1.0)


def test_inches_are_read_too(dialog):
    dialog.lying.setText('3 15/16"')  # 100.0125 mm
    assert dialog.correction().across == pytest.approx(100 / 100.0125)


@pytest.mark.parametrize(("lying", "says"), [("80", "Print it again at 100 %"), ("about a hand", "is not a length"), ("", "Type a length")])
def test_what_cannot_be_keeps_the_dialog_open_and_says_why(dialog, file, lying, says):
    dialog.lying.setText(lying)
    assert dialog.says.objectName() == "dim", "it may be half typed"
    dialog.accept()
    assert dialog.result() != MeasureBars.DialogCode.Accepted and says in dialog.says.text()
    assert dialog.says.objectName() == "warning"
    assert correction_for("shop", "A4", file) is None


def test_a_large_stretch_is_warned_of_but_kept(dialog, file):
    dialog.lying.setText("97")
    assert "more than 2 %" in dialog.says.text()
    dialog.accept()
    assert correction_for("shop", "A4", file).across == pytest.approx(100 / 97, abs=1e-5)


def test_without_a_name_nothing_is_kept(dialog, file):
    dialog.printer.setCurrentText(" ")
    dialog.accept()
    assert "Name the printer" in dialog.says.text() and not file.exists()


def test_a_page_that_was_corrected_already_is_taken_into_account(qtbot, file):
    keep_correction("shop", "A4", Correction(1.01, 1.0), file)
    dialog = MeasureBars("A4", settings=file)
    qtbot.addWidget(dialog)
    dialog.printer.setCurrentText("shop")
    assert dialog.already.isChecked() and "Now: corrected for this printer: across 1.010" in dialog.says.text()
    dialog.lying.setText("100.5")
    assert dialog.correction().across == pytest.approx(1.01 * 100 / 100.5)
    dialog.already.setChecked(False)
    assert dialog.correction().across == pytest.approx(100 / 100.5)
    dialog.paper.setCurrentText("A3")
    assert not dialog.already.isEnabled() and "Nothing is kept" in dialog.says.text()


def test_a_correction_can_be_forgotten(dialog, file):
    keep_correction("shop", "A4", Correction(1.01, 1.0), file)
    dialog.forget()
    assert correction_for("shop", "A4", file) is None


def test_a_file_that_cannot_be_used_is_said(dialog, file):
    file.write_text("{")
    dialog.printer.setCurrentText("other")
    assert "cannot be used" in dialog.says.text()
    dialog.accept()
    assert dialog.result() != MeasureBars.DialogCode.Accepted
    dialog.forget()
    assert file.read_text() == "{"


def test_rows_are_scrolled_and_never_squashed(dialog):
    dialog.show()
    rows = (dialog.printer, dialog.paper, dialog.lying, dialog.upright)
    before = [one.height() for one in rows]
    dialog.resize(dialog.width(), dialog.minimumSizeHint().height())
    QApplication.processEvents()
    assert [one.height() for one in rows] == before and dialog.height() < 2 * sum(before)
