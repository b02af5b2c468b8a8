"""A drawing of a whole neck in the import dialog."""

import ezdxf
import ezdxf.units
import pytest

from geometry.layout import loop_path
from geometry.terms import POCKET
from tests.gui.hands import fill
from tests.gui.test_importing import closed, opened


def test_the_headstock_is_taken_out_of_a_whole_neck_where_the_maker_wants(bench, tmp_path):
    """Lying to the right, 43 wide at the nut line, which is 180 from the tip."""
    side = [(28, -420), (21.5, 0), (43, 45), (38, 150), (20, 180)]
    path = tmp_path / "neck.dxf"
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([(y, -x) for x, y in [*side, *((-x, y) for x, y in reversed(side))]], close=True)
    drawing.modelspace().add_circle((-100, 0), 4)
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    assert dialog._neck.only.isVisible() and dialog._neck.only.isChecked() and dialog._neck.length.text() == "180 mm"
    assert "180.0 x 86.0 mm" in dialog._says.text() and "whole neck" in dialog._warnings.text()
    assert [loop.role for loop in dialog._read.loops] == ["outline"]
    fill(dialog._neck.length, "185")
    assert "185.0 x 86.0 mm" in dialog._says.text() and "as you said" in dialog._warnings.text()
    fill(dialog._neck.length, "900")
    assert dialog._neck.length.bad and "185.0 x 86.0 mm" in dialog._says.text()
    dialog._accept()
    assert dialog.result_layout is None and "does not cross the neck" in dialog._says.text()
    fill(dialog._neck.length, "182")
    dialog._neck.only.click()
    assert not dialog._neck.length.isEnabled() and dialog._made_of.of == ["outline", "hole"]
    assert "that is the whole neck" in dialog._says.text() and "unit" not in dialog._says.text()
    dialog._neck.only.click()
    assert dialog._neck.length.text() == "182 mm"
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert loop_path(made.outline).box == pytest.approx((-43, 0, 43, 182), abs=1e-3)
    assert not made.holes and made.nut.width == pytest.approx(43.06, abs=0.01)
    head = opened(bench, "head-with-slots-and-holes.dxf")
    assert not head._neck.only.isVisible() and not head._neck.length.isVisible()
    closed(head)


def test_the_head_of_a_neck_is_the_outline_again_after_it_was_left_out(bench, tmp_path):
    side = [(28, -420), (21.5, 0), (43, 45), (38, 150), (20, 180)]
    path = tmp_path / "neck.dxf"
    drawing = ezdxf.new("R2010", units=0)
    drawing.modelspace().add_lwpolyline([*side, *((-x, y) for x, y in reversed(side))], close=True)
    drawing.modelspace().add_lwpolyline([(-3, -400), (3, -400), (3, 25), (-3, 25)], close=True)
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    dialog._role(0, "other")
    dialog._role(0, "outline")
    assert dialog._made_of.of == ["outline", POCKET] and "180.0" in dialog._says.text()
    dialog._role(1, "outline")  # the pocket of the truss rod, of which the neck has more
    assert dialog._made_of.of == ["other", "outline"]
    dialog._role(0, "outline")
    dialog._neck.only.click()
    assert "does not say its unit" in dialog._says.text() and "cut the outline off" not in dialog._says.text()
    closed(dialog)


def test_the_nut_line_of_a_neck_is_slanted_as_it_is_typed(bench, tmp_path):
    side = [(28, -420), (21.5, 0), (43, 45), (38, 150), (20, 180)]
    path = tmp_path / "neck.dxf"
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([*side, *((-x, y) for x, y in reversed(side))], close=True)
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    assert dialog._neck.slant.isVisible() and dialog._neck.slant.text().startswith("0") and not dialog._slanted.isChecked()
    fill(dialog._neck.slant, "40")
    assert not dialog._slanted.isChecked() and dialog._neck.slant.bad and "30 degrees at the most" in dialog._neck.slant.refusal
    fill(dialog._neck.slant, "6")
    assert dialog._slanted.isChecked() and "slanted by 6.0 degrees" in dialog._guess.text()
    assert dialog._placing().slant == pytest.approx(6)
    dialog._mirror()
    assert dialog._neck.slant.text().startswith("-6") and dialog._placing().slant == pytest.approx(-6)
    dialog._mirror()
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert made.nut.slant == pytest.approx(6)
