"""The rulers along the canvas: no figure that an end cuts, for the rest of -180 reads 0."""

import numpy as np
from PySide6.QtGui import QColor, QImage

from app.canvas.rulers import THICK, Ruler
from app.look.descendants import below
from app.look.theme import DAY

STEPS = 60
"""Pixels that the paper is moved by, one by one: more than figures stand apart."""


def ends(ruler: Ruler, upright: bool) -> np.ndarray:
    """The outermost line of pixels at both ends of a ruler, where figures stand: away from the ticks."""
    image = ruler.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    pixels = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.width(), 4)[..., :3].copy()
    if upright:
        pixels = pixels.transpose(1, 0, 2)
    return pixels[:THICK // 2 + 1, [0, -1]]


def test_no_figure_is_cut_by_an_end_of_its_ruler(bench):
    paper = np.array(QColor(DAY.bar).getRgb()[2::-1])
    view = bench.view
    rulers = list(below(bench.window.canvas, Ruler))
    assert len(rulers) == 2
    for _ in range(STEPS):
        for bar in (view.horizontalScrollBar(), view.verticalScrollBar()):
            bar.setValue(bar.value() + 1)
        for ruler in rulers:
            assert (ends(ruler, ruler.width() < ruler.height()) == paper).all()
