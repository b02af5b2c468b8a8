"""A page painted into a picture beside whatever else the window does: as a whole it would keep the window waiting."""

from __future__ import annotations

import math
from collections.abc import Iterator

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QImage, QPainter

from app.formats.paper import Page
from app.look.turns import Steps, Turns
from app.printing.page_paint import Shape, painted, shapes_of

RESTS_MS = 40
"""How long a scale has to stay before a picture that is there already is painted anew in it."""


class PagePicture(QObject):
    """What is printed on a page, at the scale that was wanted last."""

    ready = Signal()
    """there is another picture"""

    def __init__(self, page: Page, parent: QObject) -> None:
        super().__init__(parent)
        self._page = page
        self._shapes: list[Shape] | None = None
        self.image: QImage | None = None
        """on nothing, so that it lies on any paper"""
        self.scale = 0.0
        """pixels of the image to the mm"""
        self._wanted = 0.0
        self._turns = Turns(self)
        self._turns.done.connect(self.ready)

    @property
    def shapes(self) -> list[Shape]:
        """All that is painted on the page."""
        if self._shapes is None:
            self._shapes = list(shapes_of(self._page))
        return self._shapes

    @property
    def settled(self) -> bool:
        """Whether the picture is at the scale that was wanted last."""
        return not self._turns.busy

    def want(self, scale: float) -> None:
        """See to a picture of so many pixels to the mm; `ready` tells when it is there."""
        if scale != self._wanted:
            self._wanted = scale
            self._turns.begin(self._paint(scale), 0 if self.image is None else RESTS_MS)

    def stop(self) -> None:
        """It is wanted no longer."""
        self._turns.stop()

    def _paint(self, scale: float) -> Steps:
        size = math.ceil(self._page.width * scale), math.ceil(self._page.height * scale)
        image = QImage(*size, QImage.Format.Format_ARGB32_Premultiplied)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        try:
            yield from painted(painter, self._each(), self._page, scale)
        finally:
            painter.end()
        self.image, self.scale = image, scale

    def _each(self) -> Iterator[Shape]:
        """The shapes; made one by one the first time."""
        if self._shapes is not None:
            yield from self._shapes
            return
        made = []
        for shape in shapes_of(self._page):
            made.append(shape)
            yield shape
        self._shapes = made
