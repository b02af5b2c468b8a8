"""Pockets and holes that are there already, in the import of a drawing."""

import ezdxf
import ezdxf.units
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.formats.dxf_out import dxf_bytes
from geometry.drawing.template import template_drawing
from geometry.edits import add_truss_rod_pocket
from geometry.terms import HOLE_THERE, POCKET
from tests.gui.hands import choose
from tests.gui.test_importing import closed, opened


def test_the_pocket_that_is_there_stays_and_the_maker_is_told_before(bench):
    bench.window.document.apply("Pocket", add_truss_rod_pocket(bench.layout))
    pocket = bench.layout.slots[-1]
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    told = [dialog._guess.text()]
    for choice in (dialog._with, dialog._only):
        choice.setFocus()
        QTest.keyClick(choice, Qt.Key.Key_Space)
        told.append(dialog._guess.text())
    dialog._with.setFocus()
    QTest.keyClick(dialog._with, Qt.Key.Key_Space)
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert ["truss rod pocket is there already and stays as it is" in words for words in told] == [False, True, False]
    assert pocket in made.slots and len(made.slots) == 3 and len(made.holes) == 6


def test_a_loop_is_said_to_be_a_pocket_or_a_hole_that_is_there(bench):
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    for row, role in ((1, POCKET), (3, HOLE_THERE)):
        box = dialog._table.cellWidget(row, 1)
        assert box.accessibleName().startswith("What the loop ")
        choose(box, role)
        bench.pump()
    told = dialog._guess.text()
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert "The drawing tells no depth of it" in told
    assert [(slot.id, slot.there) for slot in made.slots] == [("pocket 1", True), ("slot 1", False)]
    assert [hole.there for hole in made.holes].count(True) == 1


def test_a_pocket_that_is_known_is_none_to_cut_when_another_program_draws_it(bench, tmp_path):
    """Without layers, drawn half out of the outline: by its place it would be left out, and the other one, 1 mm aside, is."""
    bench.window.document.apply("Pocket", add_truss_rod_pocket(bench.layout))
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([(-24, 0), (24, 0), (45, 60), (40, 180), (-40, 180), (-45, 60)], close=True)
    for aside in (0.0, 1.0):
        drawing.modelspace().add_lwpolyline([(6 + aside, -6, 0), (6 + aside, 22, 1), (-6 + aside, 22, 0), (-6 + aside, -6, 1)], format="xyb",
                                            close=True)
        path = tmp_path / f"{aside}.dxf"
        drawing.saveas(path)
        dialog = opened(bench, str(path))
        roles = list(dialog._made_of.of)
        dialog._with.setFocus()
        QTest.keyClick(dialog._with, Qt.Key.Key_Space)
        dialog._accept()
        made = dialog.result_layout
        closed(dialog)
        assert sorted(roles) == sorted(["outline", POCKET, *(["other"] if aside else [])])
        assert [slot for slot in made.slots if slot.there] == [bench.layout.slots[-1]] == list(made.slots)


def test_that_bores_of_tuners_are_not_set_once_more_is_told_where_it_matters(bench, tmp_path):
    path = tmp_path / "own.dxf"
    path.write_bytes(dxf_bytes(template_drawing(bench.layout, None)))
    dialog = opened(bench, str(path))
    told = []
    for choice in (dialog._whole, dialog._only, dialog._with):
        choice.setFocus()
        QTest.keyClick(choice, Qt.Key.Key_Space)
        told.append("not set once more" in dialog._guess.text())
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert told == [False, False, True]
    assert (made.holes, made.slots, made.tuners) == (bench.layout.holes, bench.layout.slots, bench.layout.tuners)
