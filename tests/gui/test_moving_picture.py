"""The picture behind the drawing in hand: pulled from a press, by the pen, or moved by what is typed."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage

from app.formats.picture_in import read_picture
from geometry.edits.picture import lay_picture
from geometry.layout.picture import Picture
from geometry.tracing.plane_map import PlaneMap

PLACE = (0.5, 0.0, -50.0, 0.0, -0.5, 140.0, 0.0, 0.0, 1.0)
"""A point of the picture is half a millimetre."""


@pytest.fixture
def movable(bench, tmp_path):
    """A picture behind the drawing that can be moved, the tool for it in hand."""
    image = QImage(200, 300, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.lightGray)
    assert image.save(str(tmp_path / "head.png"))
    read = read_picture(tmp_path / "head.png")
    picture = Picture(name="head.png", jpeg=read.jpeg, width=read.width, height=read.height, place=PLACE, locked=False)
    bench.window.document.apply("Lay", lay_picture(bench.layout, picture))
    bench.window.actions_["move picture"].trigger()
    assert bench.window.tools.tool == "picture"
    return bench


def moved(bench, before) -> tuple[float, float]:
    """How far the picture of the layout on show lies from where it was, mm."""
    now, was = (PlaneMap(picture.place)((100.0, 100.0)) for picture in (bench.window.document.shown.picture, before))
    return now[0] - was[0], now[1] - was[1]


def test_nothing_moves_before_the_press(movable):
    before = movable.layout.picture
    for at in ((0.0, 60.0), (30.0, 70.0), (10.0, 40.0)):
        movable.move(at)
    assert moved(movable, before) == (0.0, 0.0)
    movable.drag((10.0, 40.0), (15.0, 40.0))
    assert moved(movable, before) == pytest.approx((5, 0), abs=0.6)
    movable.window.commands.run("undo")
    assert movable.layout.picture is before


def test_the_pen_pulls_the_picture_from_where_it_is_put_down(movable):
    before = movable.layout.picture
    movable.view.setFocus()
    for _ in range(3):
        movable.key(Qt.Key.Key_Right)
    assert moved(movable, before) == (0.0, 0.0)
    movable.key(Qt.Key.Key_Space)
    for _ in range(2):
        movable.key(Qt.Key.Key_Up)
    movable.key(Qt.Key.Key_Space)
    assert moved(movable, before) == pytest.approx((0, 2)) and movable.layout.picture is not before


@pytest.mark.parametrize("text, far", [("5;-3", (5, -3)), ("4", (4, 0)), ("\t2", (None, 2))])
def test_how_far_it_is_moved_is_typed(movable, text, far):
    before = movable.layout.picture
    movable.press((0.0, 60.0))
    movable.move((10.0, 60.0))
    for sign in text:
        movable.key(Qt.Key.Key_Tab) if sign == "\t" else movable.text(sign)
    movable.key(Qt.Key.Key_Return)
    movable.release((10.0, 60.0))
    across, along = moved(movable, before)
    assert along == pytest.approx(far[1]) and across == pytest.approx(10.0 if far[0] is None else far[0], abs=1e-6 if far[0] else 0.6)
    assert movable.layout.picture is not before and movable.window.document.history.undo_name == "Move the picture"


def test_an_angle_is_typed(movable):
    before = PlaneMap(movable.layout.picture.place)
    movable.press((0.0, 60.0))
    movable.text("90")
    movable.text("°")
    movable.key(Qt.Key.Key_Return)
    x, y = before((100.0, 100.0))
    assert PlaneMap(movable.layout.picture.place)((100.0, 100.0)) == pytest.approx((-y, x))
    assert movable.window.document.history.undo_name == "Turn the picture"
    movable.release((0.0, 60.0))


def test_what_is_no_way_to_move_it_is_said_and_it_stays_in_hand(movable):
    before = movable.layout.picture
    movable.press((0.0, 60.0))
    movable.move((10.0, 60.0))
    movable.text("5")
    for sign in " radius":
        movable.text(sign)
    movable.key(Qt.Key.Key_Return)
    assert movable.window.hand.busy and movable.layout.picture is before
    movable.key(Qt.Key.Key_Escape)
    assert movable.window.document.shown.picture is before
    movable.release((10.0, 60.0))


def test_a_hidden_picture_cannot_be_moved(movable):
    movable.window.actions_["picture shown"].trigger()
    assert movable.window.tools.tool == "hold" and not movable.window.actions_["move picture"].isEnabled()
    movable.window.actions_["picture shown"].trigger()
    assert movable.window.actions_["move picture"].isEnabled()
