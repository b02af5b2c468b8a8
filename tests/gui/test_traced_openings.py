"""Holes and slots that are seen in a picture: ticked, and taken along with the outline."""

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog

from app.formats import headstock
from app.window.demo import samples
from app.window.tracing import trace_dialog
from app.window.tracing.trace_dialog import TraceDialog
from geometry.curves import circle
from geometry.errors import GeometryError
from geometry.layout import StraightSlot, loop_path, slot_path
from geometry.layout.picture import Picture
from tests.geometry.tracing.scans import Scan
from tests.waiting import press

HEAD = headstock.read(samples() / "three-a-side.headstock.json")


def nothing_found(*_):
    raise GeometryError("There is no head.")


def test_holes_and_slots_that_are_ticked_come_along_in_the_same_step(bench, monkeypatch, qtbot, tmp_path):
    bores = [circle((x, y), 5.0) for x in (-25.0, 25.0) for y in (60.0, 100.0)]
    wide, short = (StraightSlot(nut_end=(-8.0, low), tip_end=(-8.0, 120.0), width=12.0) for low in (40.0, 42.0))
    there, *others = bench.layout.slots
    bench.window.document.apply("Draw", replace(bench.layout, slots=(replace(there, shape=short), *others)))
    scan = Scan(loop_path(HEAD.outline), 100, wood=150, openings=[(path, 20) for path in (*bores, slot_path(replace(there, shape=wide)))])
    (x, y), k = scan.to_mm(np.zeros((1, 2)))[0].tolist(), 1 / scan.per_mm
    picture = Picture(name="old head.jpg", jpeg=scan.jpeg, width=scan.grey.shape[1], height=scan.grey.shape[0], place=(k, 0, x, 0, -k, y, 0, 0, 1))
    bench.window.document.apply("Lay", replace(bench.layout, picture=picture))
    before = bench.layout

    def by_hand(dialog):
        dialog.show()
        qtbot.waitUntil(lambda: dialog.take_button.isEnabled())
        assert [box.text() for box in dialog.found.boxes] == ["1 slot, 12 x 91.9 mm", "4 holes, 10 mm wide"] and not dialog.found.chosen()
        slot, holes = dialog.found.boxes
        press(slot)
        QTest.mouseClick(dialog.board, Qt.MouseButton.LeftButton, pos=dialog.board.pixel(scan.at(25.0, 60.0)).toPoint())
        assert holes.checkState() == Qt.CheckState.PartiallyChecked and dialog.take_button.isEnabled(), "nothing is proposed anew"
        press(holes)
        assert holes.isChecked() and len(dialog.found.chosen()) == 5
        QTest.mouseClick(dialog.board, Qt.MouseButton.LeftButton, pos=dialog.board.pixel(scan.at(25.0, 60.0)).toPoint())
        with monkeypatch.context() as meanwhile:
            meanwhile.setattr(trace_dialog, "propose", nothing_found)
            dialog._best()
            qtbot.waitUntil(lambda: dialog.errand.free)
        assert not dialog.found.isVisible() and not dialog.take_button.isEnabled(), "there is no head in which they would be seen"
        dialog._best()
        qtbot.waitUntil(lambda: dialog.take_button.isEnabled() and not dialog.errand.busy)
        assert dialog.found.isVisible()
        assert len(dialog.found.chosen()) == 4, "what was ticked stays so where it is seen again"
        press(dialog.take_button)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(TraceDialog, "exec", by_hand)
    bench.window.commands.run("trace outline")
    assert [slot.id for slot in bench.layout.slots] == [slot.id for slot in before.slots], "the slot there is the same one"
    assert slot_path(bench.layout.slots[0]).box == pytest.approx(slot_path(replace(there, shape=wide)).box, abs=0.2)
    new = [hole for hole in bench.layout.holes if hole not in before.holes]
    assert sorted(hole.at for hole in new) == [pytest.approx(at, abs=0.1) for at in ((-25.0, 60.0), (-25.0, 100.0), (25.0, 100.0))]
    assert {hole.diameter for hole in new} == {10.0}
    bench.window.commands.run("undo")
    assert bench.layout is before
