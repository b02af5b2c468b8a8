"""Grips are one item: where they are painted, how large, and that nothing of them lies outside its box."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QGraphicsScene, QStyleOptionGraphicsItem

from app.canvas.handles import GripLayer
from app.look.theme import DAY
from geometry.layout import Loop, Node

LOOP = Loop(nodes=(Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), smooth=True, handles=((30.0, 5.0), (10.0, 40.0))), Node(at=(0.0, 40.0))))
ALL = QRectF(-1000, -1000, 2000, 2000)
SIDE = 600


@pytest.fixture
def layer(qapp):
    scene = QGraphicsScene()
    layer = GripLayer(scene)
    layer.show_grips(LOOP, (2,))
    yield layer
    scene.deleteLater()


def painted(layer: GripLayer, zoom: float, seen: QRectF) -> QImage:
    """What the layer paints, y up, with (0, 20) mm in the middle, when asked for what is seen (mm)."""
    layer.look(zoom)
    image = QImage(SIDE, SIDE, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(0)
    painter, option = QPainter(image), QStyleOptionGraphicsItem()
    option.exposedRect = seen
    painter.translate(SIDE / 2, SIDE / 2)
    painter.scale(zoom, -zoom)
    painter.translate(0, -20)
    before = painter.worldTransform()
    layer.paint(painter, option)
    assert painter.worldTransform() == before
    painter.end()
    return image


def at(image: QImage, zoom: float, place: tuple[float, float], off: tuple[int, int] = (0, 0)) -> QColor:
    return image.pixelColor(round(SIDE / 2 + place[0] * zoom) + off[0], round(SIDE / 2 - (place[1] - 20) * zoom) + off[1])


@pytest.mark.parametrize("zoom", [1.0, 3.0, 6.5])
def test_grips_keep_their_size_and_their_box_holds_them(layer, zoom):
    image = painted(layer, zoom, ALL)
    assert at(image, zoom, (0.0, 40.0), (1, 1)) == QColor(DAY.focus), "what is held is filled"
    for place in ((-20.0, 0.0), (20.0, 0.0), (30.0, 5.0), (10.0, 40.0)):
        assert at(image, zoom, place) == QColor(DAY.panel)
    assert at(image, zoom, (-20.0, 0.0), (3, 3)).alpha() == 255 and at(image, zoom, (20.0, 0.0), (-5, 4)).alpha() < 60, \
        "a corner is square, a smooth node round"
    assert at(image, zoom, (-20.0, 0.0), (-6, 0)).alpha() == 0
    rows, columns = np.nonzero(np.frombuffer(image.constBits(), np.uint8).reshape(SIDE, SIDE, 4)[:, :, 3])
    left, low, right, high = layer.boundingRect().getCoords()
    across, up = (columns + 0.5 - SIDE / 2) / zoom, (SIDE / 2 - rows - 0.5) / zoom + 20
    assert left <= across.min() and across.max() <= right and low <= up.min() and up.max() <= high


def test_what_is_not_seen_is_not_painted(layer):
    image = painted(layer, 3.0, QRectF(-25, -5, 10, 10))
    assert at(image, 3.0, (-20.0, 0.0)).alpha() == 255 and at(image, 3.0, (20.0, 0.0), (2, 2)).alpha() == 0


def test_hundreds_of_nodes_are_one_item_and_none_are_nothing(layer):
    scene = layer.scene()
    layer.show_grips(Loop(nodes=tuple(Node(at=(float(i), float(i * i % 7))) for i in range(300))))
    assert scene.items() == [layer]
    layer.show_grips(None)
    assert layer.boundingRect().isEmpty()
