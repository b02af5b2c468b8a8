"""Millimetres and inches in every field: nothing drifts, and sums of both are understood everywhere."""

from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest

from app.formats import headstock
from app.look.descendants import below
from app.panels.forms.fields import LengthField
from app.window.main import MainWindow
from app.window.stages import STAGES
from app.window.windows import Windows
from geometry.errors import GeometryError
from geometry.layout import feature_ids
from geometry.units import MM_PER_INCH, format_length, parse_length
from tests.gui.hands import fill

UNITS = ("in64", "in", "mm")


def fields(bench) -> list[LengthField]:
    bench.pump()
    return [w for w in below(bench.window, LengthField) if w.isVisible()]


def walked(bench) -> int:
    """Put the cursor into every length field on show and leave it again, as Tab does."""
    found = fields(bench)
    for field in found:
        field.setFocus()
        QTest.keyClick(field, Qt.Key.Key_End)
        QTest.keyClick(field, Qt.Key.Key_Tab)
    return len(found)


def test_switching_units_leaves_the_very_same_layout_and_every_field_understands_sums(bench):
    window = bench.window
    before, data = bench.layout, headstock.encode(bench.layout)
    seen = 0
    for stage in STAGES:
        window.set_stage(stage.key)
        for unit in UNITS if fields(bench) else ():
            window.actions_[unit].trigger()
            for field in fields(bench):
                assert field.read('1 5/8" + 2 mm') == pytest.approx(1.625 * MM_PER_INCH + 2), field.accessibleName()
                assert field.read("12,5 mm") == field.read("12.5mm") == 12.5
                with pytest.raises(GeometryError):
                    field.read("twelve")
            seen += walked(bench)
            assert bench.layout is before, (stage.key, unit)
    assert seen > 60
    assert headstock.encode(bench.layout) == data
    assert not window.document.unsaved and window.document.history.undo_name is None


def test_the_numbers_of_every_held_thing_survive_it_too(bench):
    window = bench.window
    before = bench.layout
    window.set_stage("tuners")
    ids = [*feature_ids(before)[::4], "treble side 2", "bass slot", "outline", "nut", "blank"]
    for id in ids:
        window.document.hold((id,))
        bench.pump()
        first = [field.text() for field in fields(bench)]
        for unit in UNITS:
            window.actions_[unit].trigger()
        assert [field.text() for field in fields(bench)] == first, id
    window.set_stage("outline")
    for node in range(0, len(before.outline.nodes), 3):
        bench.click(before.outline.nodes[node].at)
        first = [field.text() for field in fields(bench)]
        assert first
        for unit in UNITS:
            window.actions_[unit].trigger()
        walked(bench)
        assert [field.text() for field in fields(bench)] == first
    assert bench.layout is before


def test_what_is_shown_in_inches_is_read_back_as_what_it_shows():
    # A field whose text was not touched sends nothing; one that was typed again takes what stands there.
    for mm in (0.0, 0.4, 3.175, 12.7, 100.0, 1000.0):
        for unit in ("mm", "in", "in64"):
            text = format_length(mm, unit, mark=True)
            step = {"mm": 0.01, "in": 0.001 * MM_PER_INCH, "in64": MM_PER_INCH / 64}[unit]
            assert abs(parse_length(text, unit) - mm) <= step / 2 + 1e-9
            assert format_length(parse_length(text, unit), unit, mark=True) == text


def test_a_typed_inch_is_kept_to_the_last_bit(bench, qtbot):
    bench.window.document.hold(("blank",))
    bench.window.actions_["in64"].trigger()
    field = next(w for w in fields(bench) if w.accessibleName() == "Thickness")
    fill(field, "5/8")
    assert bench.layout.blank.thickness == 0.625 * MM_PER_INCH
    kept = bench.layout
    for unit in UNITS:
        bench.window.actions_[unit].trigger()
    walked(bench)
    assert bench.layout is kept


def test_a_window_that_opens_in_inches_says_nothing_in_millimetres(qtbot, tmp_path):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    settings.setValue("unit", "in")
    layout = headstock.read(Path(__file__).parents[2] / "samples" / "mixed-one-slide-too-far.headstock.json")
    window = MainWindow(layout, None, Windows(settings))
    qtbot.addWidget(window)
    window.show()
    snags = window.side.inside.snags
    qtbot.waitUntil(lambda: snags.model().rowCount() > 0)
    told = [str(snags.model().index(row, 0).data(Qt.ItemDataRole.AccessibleTextRole)) for row in range(snags.model().rowCount())]
    assert any('"' in words for words in told) and not any(" mm" in words for words in told), told
