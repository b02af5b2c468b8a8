"""What left the drawing is let go: lines of rooms, ghosts and guides come and go all day."""

import gc

import pytest
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QGraphicsPathItem, QGraphicsScene

from app.canvas.layer import MarkLayer
from app.threads.background import running
from geometry.drawing import Stroke
from geometry.drawing.shapes import straight
from tests.waiting import until


def lines() -> int:
    """How many there are, once nothing runs beside the window: to ask for all objects takes hold of tuples that another
    thread is about to fill, and that thread breaks off."""
    until(lambda: not running())
    gc.collect()
    return sum(isinstance(one, QGraphicsPathItem) for one in gc.get_objects())


@pytest.mark.parametrize("followed", [False, True])
def test_lines_that_went_are_held_by_nobody(qtbot, followed):
    scene = QGraphicsScene()
    layer = MarkLayer(scene, QFont(), followed=followed)
    marks = {"ghost": (Stroke(straight((0.0, 0.0), (50.0, 10.0)), "axis", "ghost"),)}
    before = lines()
    for _ in range(20):
        layer.show(marks)
        layer.show({})
        if followed:
            assert len(layer.take_changed()[0]) == 1
    assert lines() == before


def test_rooms_leave_no_lines_behind(bench):
    def visit():
        for stage in ("strings", "router", "order", "tuners"):
            bench.window.set_stage(stage)
            bench.pump()
    visit()
    visit()
    before = lines()
    for _ in range(4):
        visit()
    assert lines() <= before
