"""A drawing at a scale of its own in the import dialog, and the dialog in large letters."""

import ezdxf
import ezdxf.units
import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QAbstractButton, QLineEdit

from app.look.descendants import below
from geometry.layout import loop_path
from tests.gui.hands import choose, fill
from tests.gui.test_importing import closed, opened


def test_a_drawing_at_half_size_is_made_as_long_as_it_is_in_truth(bench, tmp_path):
    path = tmp_path / "half.dxf"
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([(11, 0), (20, 20), (20, 90), (-20, 90), (-20, 20), (-11, 0)], close=True)
    drawing.modelspace().add_circle((10, 50), 2.5)
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    assert dialog._longest.text() == "90 mm"
    assert [dialog._table.item(i, 0).text() for i in range(2)] == ["40 x 90 mm, layer 0", "5 mm hole, layer 0"]
    fill(dialog._longest, "-3")
    assert dialog._longest.bad and dialog.isVisible()
    fill(dialog._longest, "180")
    assert dialog.isVisible(), "Enter shows what was typed, and imports nothing yet"
    assert "80.0 x 180.0 mm" in dialog._says.text() and dialog._unit.currentText() == "as typed: 80 x 180 mm"
    dialog._unit.setCurrentIndex(0)
    dialog._unit.activated.emit(0)
    assert dialog._longest.text() == "90 mm"
    fill(dialog._longest, "180")
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert loop_path(made.outline).box == pytest.approx((-40, 0, 40, 180))
    assert (made.nut.width, made.holes[0].diameter) == pytest.approx((44, 10))


def test_a_scale_that_stands_in_the_drawing_is_asked_about_and_offered(bench, tmp_path):
    path = tmp_path / "half.dxf"
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([(11, 0), (20, 20), (20, 90), (-20, 90), (-20, 20), (-11, 0)], close=True)
    drawing.modelspace().add_text("SCALE 1:2")
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    assert "says 1:2, and was read as it is drawn: at that scale the outline measures 80.0 x 180.0 mm" in dialog._says.text()
    assert dialog._longest.text() == "90 mm" and dialog._says.objectName() == "warning"
    choose(dialog._unit, "2.0")
    assert dialog._longest.text() == "180 mm" and dialog._says.text().startswith("The outline measures 80.0 x 180.0 mm")
    assert dialog._unit.currentText() == "drawn 1:2: 80 x 180 mm"
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert loop_path(made.outline).box == pytest.approx((-40, 0, 40, 180))


def test_several_heads_of_one_size_are_told_and_another_may_be_chosen(bench, tmp_path):
    path = tmp_path / "two.dxf"
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    for x in (0, 150):
        drawing.modelspace().add_lwpolyline([(x + 22, 0), (x + 40, 40), (x + 40, 180), (x - 40, 180), (x - 40, 40), (x - 22, 0)], close=True)
    drawing.modelspace().add_circle((175, 60), 5)
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    assert "The drawing has 2 heads of one size, as from face and back: number 2 from the left is taken." in dialog._warnings.text()
    assert sorted(dialog._made_of.of) == ["hole", "other", "outline"]
    dialog._role(dialog._made_of.of.index("other"), "outline")
    assert "number 1 from the left" in dialog._warnings.text() and sorted(dialog._made_of.of) == ["other", "other", "outline"]
    closed(dialog)


@pytest.mark.parametrize("letters", [100, 125, 150, 200])
def test_no_button_stands_on_another_line(bench, letters):
    """The column as narrow as it gets: the buttons that turn the drawing go on in other rows."""
    bench.window.looks.choose_letters(letters)
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    dialog.resize(dialog.minimumSizeHint())
    bench.pump()
    column = dialog._across.parentWidget()
    parts = [part for kind in (QAbstractButton, QLineEdit) for part in below(column, kind) if part.isVisible() and part.parentWidget() is column]
    boxes = [QRect(part.geometry()) for part in parts]
    touching = [(a, b) for i, a in enumerate(boxes) for b in boxes[i + 1:] if a.intersects(b)]
    closed(dialog)
    assert len(boxes) > 8 and not touching
