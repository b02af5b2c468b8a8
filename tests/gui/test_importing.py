"""Importing a drawing through the window: read in another process, roles, placing, a new layout."""

from functools import partial
from pathlib import Path

import ezdxf
import ezdxf.units
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPointF, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QProgressDialog, QPushButton
from shiboken6 import delete, isValid

from app.formats import rack as racks
from app.formats.drawing_in.closing import JOINS, read_closing
from app.look.descendants import below
from app.window import ask
from app.window.importing import reading as import_reading
from app.window.importing.importing import ImportDialog, import_drawing
from app.window.importing.reading import read_with_progress
from geometry.edits import add_hole
from geometry.layout import StraightSlot, loop_path
from geometry.layout.generic import RACK
from tests.gui.hands import choose, fill
from tests.waiting import press

OUTLINES = Path(__file__).parents[2] / "samples" / "outlines"


def opened(bench, name: str) -> ImportDialog:
    path = OUTLINES / name
    read = read_with_progress(bench.window, path, None, 0.01)
    dialog = ImportDialog(bench.window, path, read)
    dialog.show()
    bench.pump()
    return dialog


def closed(dialog: ImportDialog) -> None:
    dialog.close()
    dialog.deleteLater()


def test_slots_and_holes_become_slots_and_holes(bench):
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert [type(s.shape) for s in made.slots] == [StraightSlot, StraightSlot]
    assert {s.shape.width for s in made.slots} == {13.0}
    assert len(made.holes) == 6
    x0, y0, x1, _ = loop_path(made.outline).box
    assert abs(y0) < 1e-6 and abs(x0 + x1) < 1e-6
    assert made.blank.treble > x1


def test_an_edge_that_is_askew_may_be_a_slanted_nut(bench, tmp_path):
    """Drawn upright, its treble end 6.18 mm nearer the tip: atan(6.18 / 44) is 8 degrees."""
    path = tmp_path / "fanned.dxf"
    drawing = ezdxf.new("R2010", units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([(-22, -3.09), (22, 3.09), (45, 60), (40, 180), (-40, 180), (-45, 60)], close=True)
    drawing.saveas(path)
    dialog = opened(bench, str(path))
    assert dialog._slanted.isEnabled() and not dialog._slanted.isChecked() and "turned by -8.0 degrees" in dialog._guess.text()
    dialog._slanted.setFocus()
    QTest.keyClick(dialog._slanted, Qt.Key.Key_Space)
    assert "slanted by 8.0 degrees" in dialog._guess.text() and "turned" not in dialog._guess.text()
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert (made.nut.slant, made.nut.width) == pytest.approx((-8.0, 44.0), abs=0.01)
    assert loop_path(made.outline).box == pytest.approx((-45, -3.09, 45, 180))
    level = opened(bench, "head-with-slots-and-holes.dxf")
    assert not level._slanted.isEnabled()
    closed(level)


@pytest.mark.parametrize("cancelled", [False, True])
def test_a_bit_of_my_own_rack_is_looked_for_beside_the_window(beside, bench, monkeypatch, cancelled):
    """Round an outline of thousands of nodes that takes seconds."""
    mine = replace(RACK, bits=tuple(replace(bit, id=f"my {bit.id}") for bit in RACK.bits))
    monkeypatch.setattr(racks, "kept_rack", lambda path: mine)
    beside.set()
    dialog, seen = opened(bench, "head-with-slots-and-holes.dxf"), []
    beside.clear()

    def meanwhile() -> None:
        box = next(below(dialog, QProgressDialog), None)
        if box is None or not box.isVisible():
            QTimer.singleShot(20, dialog, meanwhile)
            return
        seen.append((dialog.isVisible(), QApplication.activeModalWidget() is box, box.maximum()))
        if cancelled:
            press(next(below(box, QPushButton)))
        beside.set()
    QTimer.singleShot(0, dialog, meanwhile)
    dialog._accept()
    made, there = dialog.result_layout, dialog.isVisible()
    closed(dialog)
    assert seen == [(True, True, 0)]
    if cancelled:
        assert made is None and there, "the maker is back at the dialog"
    else:
        assert made.rack == mine and made.template.bit.startswith("my ") and not there


def test_a_shift_that_cannot_be_read_imports_nothing(bench):
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    fill(dialog._across, "2 o")
    says, there, made = dialog._says.text(), dialog.isVisible(), dialog.result_layout
    closed(dialog)
    assert "“2 o” is not a length" in says and there and made is None


def test_what_is_left_out_is_left_out(bench):
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    box = dialog._table.cellWidget(1, 1)
    box.setCurrentIndex(box.findData("other"))
    box.activated.emit(box.currentIndex())
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert len(made.slots) == 1


def test_a_guessed_unit_is_asked_about_with_its_sizes(bench):
    dialog = opened(bench, "head-with-gaps.dxf")
    says = dialog._says.text()
    sizes = [dialog._unit.itemText(i) for i in range(dialog._unit.count())]
    closed(dialog)
    assert "does not say its unit" in says
    assert any("inch" in size.split(":")[0] for size in sizes)


def test_a_drawing_with_a_scale_of_its_own_is_offered_as_it_says(bench, tmp_path):
    """Two inches by seven, drawn in hundredths of an inch: no unit that has a name."""
    path = tmp_path / "hundredths.svg"
    path.write_text('<svg xmlns="http://www.w3.org/2000/svg" width="3in" height="8in" viewBox="0 0 300 800">'
                    '<rect x="20" y="40" width="200" height="700"/></svg>', encoding="utf-8")
    dialog = opened(bench, str(path))
    chosen = [dialog._unit.currentText()]
    for wanted in ("mm", None):
        dialog._unit.setCurrentIndex(dialog._unit.findData(wanted))
        dialog._unit.activated.emit(dialog._unit.currentIndex())
        chosen.append(dialog._unit.currentText())
    size = dialog._read.size_mm
    closed(dialog)
    assert chosen == ["as stated: 50.8 x 177.8 mm", "mm: 200 x 700 mm", "as stated: 50.8 x 177.8 mm"]
    assert size == pytest.approx((50.8, 177.8))


@pytest.mark.qt_log_ignore("This plugin does not support grabbing the keyboard", extend=True)
def test_holes_of_a_drawing_become_tuners_that_are_held(bench, qtbot):
    bench.window.document.apply("Two holes", add_hole(add_hole(bench.layout, (0.0, 20.0), 8.8), (0.0, 26.0), 8.8))
    bench.window.set_stage("tuners")
    before = bench.layout
    for held in (before.holes[-1:], before.holes[-2:]):
        bench.window.document.hold(tuple(hole.id for hole in held))
        qtbot.waitUntil(lambda: any("place" in row.label and row.kind == "choice" for row in bench.window.side.inside._fields.rows))
        form = bench.window.side.inside._fields
        box = next(w for row, w in zip(form.rows, form.widgets, strict=True) if "place" in row.label and row.kind == "choice")
        qtbot.waitUntil(lambda box=box: box.isVisible() and box.isEnabled())
        box.setFocus()
        QTest.keyClick(box, Qt.Key.Key_Down)
        assert box.view().isVisible() and not bench.layout.tuners[len(before.tuners):], "walked past, nothing is taken"
        QTest.keyClick(box.view(), Qt.Key.Key_Down)
        QTest.keyClick(box.view(), Qt.Key.Key_Return)
        made = bench.layout.tuners[len(before.tuners):]
        assert [t.place.at for t in made] == [hole.at for hole in held]
        assert bench.window.document.held == tuple(t.id for t in made) and made[0].pattern.startswith("face 8.8")
        bench.window.document.undo()
        assert bench.layout == before


def test_only_the_outline_goes_into_the_open_layout(bench, monkeypatch):
    monkeypatch.setattr(ImportDialog, "exec", lambda self: (self._only.setChecked(True), self._accept(),
                                                            QDialog.DialogCode.Accepted)[-1])
    tuners, slots = bench.layout.tuners, bench.layout.slots
    import_drawing(bench.window, OUTLINES / "head-with-slots-and-holes.dxf")
    assert bench.layout.tuners == tuners and bench.layout.slots == slots
    assert bench.window.document.history.undo_name == "Import head-with-slots-and-holes.dxf"
    assert bench.window.stage == "outline"


@pytest.mark.parametrize(("name", "content"), [("empty.dxf", b""), ("picture.dxf", b"\x89PNG\r\n\x1a\n0000"),
                                               ("page.svg", b"<html><body/></html>")])
def test_what_is_no_drawing_is_said_in_a_sentence(bench, tmp_path, monkeypatch, name, content):
    path = tmp_path / name
    path.write_bytes(content)
    said = []
    monkeypatch.setattr(ask, "warn", lambda _, title, text: said.append(text))
    before = bench.layout
    import_drawing(bench.window, path)
    assert bench.layout is before
    assert len(said) == 1 and "\n" not in said[0]


def test_a_drawing_of_very_many_loops_is_shown_in_slices(qtbot):
    """Eight hundred loops are more than one slice makes; a shift of the drawing makes none of them anew."""
    from app.window.importing.preview import ImportPreview
    from geometry.curves import Matrix, circle
    preview = ImportPreview()
    qtbot.addWidget(preview)
    loops = [(circle((0.0, 0.0), 200.0), "outline")]
    loops += [(circle((x * 6.0 - 90, y * 6.0 - 90), 2.0), "hole") for x in range(30) for y in range(30)]
    preview.show_loops(loops, (), Matrix())
    preview.show()
    assert len(preview._paths) < len(loops)
    qtbot.waitUntil(lambda: not preview._making.busy)
    made = list(preview._paths)
    assert len(made) == len(loops)
    preview.show_loops(loops, (), Matrix(e=5.0))
    assert all(a is b for a, b in zip(preview._paths, made, strict=True)) and not preview._making.busy
    picked = []
    preview.picked.connect(picked.append)
    preview.grab()
    place = (preview._place * preview._move).map(QPointF(0.0, 0.0)).toPoint()
    QTest.mouseClick(preview, Qt.MouseButton.LeftButton, pos=place)
    assert loops[picked[0]][0].box == circle((0.0, 0.0), 2.0).box


def test_what_is_left_out_does_not_make_the_head_small_in_the_picture(qtbot):
    """A head 200 across fills what it would fill alone, be there the frame of a sheet or a long fretboard beside it; with a view of its
    side both are seen, and so is what is in hand."""
    from app.window.importing.preview import ImportPreview
    from geometry.curves import Matrix, circle
    preview = ImportPreview()
    qtbot.addWidget(preview)
    preview.resize(400, 400)
    head = (circle((0.0, 0.0), 100.0), "outline")

    def scale(*others) -> float:
        preview.show_loops([head, *others], (), Matrix())
        preview.grab()
        return preview._move.m11()
    alone = scale()
    assert scale((circle((0.0, 0.0), 900.0), "other")) == pytest.approx(alone)
    assert scale((circle((140.0, 0.0), 30.0), "other")) < 0.8 * alone
    far = (circle((300.0, 0.0), 60.0), "other")
    assert scale(far) == pytest.approx(alone)
    preview.set_current(1)
    assert scale(far) < 0.5 * alone
    preview.set_current(-1)
    assert scale((circle((300.0, 0.0), 60.0), "hole")) < 0.5 * alone


def test_a_dialog_destroyed_while_it_reads_again_takes_nothing_along(bench):
    """Freed memory was walked through once: the loop that waited was a child of the dialog."""
    window, path = bench.window, OUTLINES / "head-in-millimetres.svg"
    dialog = ImportDialog(window, path, read_with_progress(window, path, None, JOINS[0]))
    QTimer.singleShot(0, lambda: delete(dialog))
    dialog._read_again()
    assert not isValid(dialog)
    bench.pump()
    assert len(read_with_progress(window, path, None, JOINS[0]).loops) > 0, "and reading goes on as before"


@pytest.mark.parametrize(("gap", "join", "outline"), [(0.08, 0.01, True), (0.3, 0.5, True), (0.8, 0.01, False)])
def test_a_small_gap_in_the_outline_is_closed_unasked_and_told(bench, tmp_path, gap, join, outline):
    """An outline in single lines, the last of which ends short of the first, round a hole that is the only loop. A tenth is always closed."""
    file = tmp_path / "gap.dxf"
    drawing = ezdxf.new()
    drawing.units = ezdxf.units.MM
    corners = [(-22, 0), (-40, 60), (-35, 170), (35, 170), (40, 60), (22, 0)]
    for a, b in zip(corners, corners[1:], strict=False):
        drawing.modelspace().add_line(a, b)
    drawing.modelspace().add_line((22, 0), (-22 + gap, 0))
    drawing.modelspace().add_circle((0, 100), 7)
    drawing.saveas(file)
    read, closed_to = read_closing(partial(read_with_progress, bench.window, file, None))
    assert closed_to == join
    x0, y0, x1, y1 = read.loops[0].path.box
    assert (x1 - x0 == pytest.approx(80) and y1 - y0 == pytest.approx(170)) is outline
    dialog = ImportDialog(bench.window, file, read, closed_to)
    said, shown = dialog._warnings.text(), dialog._join.currentData()
    closed(dialog)
    assert shown == join and ("1 gap was closed: straight lines run on" in said and f"It was {gap:.3f} mm wide" in said) is outline


def roles(dialog: ImportDialog) -> list[str]:
    return [dialog._table.cellWidget(i, 1).currentData() for i in range(dialog._table.rowCount())]


def test_what_loops_become_is_kept_when_the_drawing_is_read_with_another_unit_or_other_gaps(bench):
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    as_read = roles(dialog)
    choose(dialog._table.cellWidget(2, 1), "hole")
    choose(dialog._table.cellWidget(1, 1), "other")
    wanted = roles(dialog)
    assert wanted != as_read
    for box, value in ((dialog._unit, "cm"), (dialog._join, JOINS[2]), (dialog._unit, "mm")):
        size = dialog._read.size_mm
        box.setCurrentIndex(box.findData(value))
        box.activated.emit(box.currentIndex())
        assert roles(dialog)[1:3] == ["other", "hole"] and (box is dialog._join or dialog._read.size_mm != size)
    assert roles(dialog) == wanted, "what was not chosen is as it was read with that unit"
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert len(made.slots) + len(made.holes) == len([role for role in wanted if role in ("slot", "hole")])


def test_one_loop_alone_is_the_outline(bench):
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    choose(dialog._table.cellWidget(1, 1), "outline")
    found = roles(dialog)
    closed(dialog)
    assert found[0] == "other" and found[1] == "outline" and found.count("outline") == 1


def test_who_stays_with_the_layout_that_is_open_stays_with_the_drawing_as_it_was_prepared(bench, monkeypatch):
    """Unsaved work is asked about as the import is pressed: on Cancel the dialog stands as it stood, and nothing moved."""
    bench.window.document.apply("Hole", add_hole(bench.layout, (0.0, 20.0), 8.8))
    bench.window.set_stage("tuners")
    before, answers = bench.layout, ["cancel", "discard"]
    monkeypatch.setattr(ask, "save_first", lambda *_: answers.pop(0))
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    choose(dialog._table.cellWidget(1, 1), "other")
    wanted = roles(dialog)
    dialog._accept()
    assert dialog.isVisible() and roles(dialog) == wanted and bench.layout is before and bench.window.stage == "tuners"
    dialog._accept()
    assert not dialog.isVisible() and dialog.result() == QDialog.DialogCode.Accepted and not answers
    closed(dialog)


@pytest.fixture
def cancelled_at(monkeypatch):
    """Has the maker cancel one of the readings, the first being 1."""
    def choose(number: int) -> None:
        done, readings = import_reading._done, []

        def cancelled(*job) -> bool:
            readings.append(job)
            return len(readings) != number and done(*job)
        monkeypatch.setattr(import_reading, "_done", cancelled)
    return choose


@pytest.mark.parametrize("reading", [1, 2])
def test_cancel_ends_the_import_also_while_gaps_are_closed(bench, tmp_path, monkeypatch, cancelled_at, reading):
    """An outline that stays open has the drawing read again: who cancels then wants no import at all."""
    drawing = ezdxf.new(units=ezdxf.units.MM)
    drawing.modelspace().add_lwpolyline([(-40, 0), (40, 0), (40, 170), (-40, 170), (-40, 0.3)])
    drawing.modelspace().add_circle((0, 100), 4)
    file = tmp_path / "open.dxf"
    drawing.saveas(file)
    opened = []
    monkeypatch.setattr(ImportDialog, "exec", lambda dialog: opened.append(dialog) or QDialog.DialogCode.Rejected)
    import_drawing(bench.window, file)
    assert len(opened) == 1, "it is read twice, and then offered"
    before = bench.layout
    cancelled_at(reading)
    import_drawing(bench.window, file)
    assert len(opened) == 1 and bench.layout is before


def test_a_choice_whose_reading_was_cancelled_is_as_before(bench, cancelled_at):
    dialog = opened(bench, "head-in-millimetres.svg")
    unit, read = dialog._unit.currentText(), dialog._read
    cancelled_at(1)
    dialog._join.setFocus()
    QTest.keyClick(dialog._join, Qt.Key.Key_Down)
    assert dialog._join.currentData() == 0.01 and dialog._unit.currentText() == unit and dialog._read is read
    closed(dialog)


def test_a_size_that_no_headstock_has_is_taken_only_when_it_is_asked_for_twice(bench, tmp_path):
    """The wrong unit makes a head of 7 mm, in which nothing is in the way and every chance is good."""
    path = tmp_path / "inches.svg"
    path.write_text('<svg xmlns="http://www.w3.org/2000/svg" width="3in" height="8in" viewBox="0 0 3 8">'
                    '<rect x="0.2" y="0.4" width="2" height="7"/></svg>', encoding="utf-8")
    dialog = opened(bench, str(path))

    def choose(unit):
        dialog._unit.setCurrentIndex(dialog._unit.findData(unit))
        dialog._unit.activated.emit(dialog._unit.currentIndex())
    choose("mm")
    assert "no headstock is that size" in dialog._says.text() and dialog._says.objectName() == "warning"
    dialog._accept()
    once = dialog.result_layout, dialog._says.text()
    choose("inch")
    assert dialog._says.objectName() == "heading"
    choose("mm")
    dialog._accept()
    twice = dialog.result_layout
    closed(dialog)
    assert once[0] is None and "import once more" in once[1]
    assert twice is not None, "who was told of this size and comes back to it means it"
