"""The pages as a list with small pictures, painted one by one when their rows have come into sight."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPixmap

from app.formats.paper import Page
from app.look.plain import plain
from app.look.sizes import sizes
from app.look.turns import Steps, Turns
from app.printing.page_paint import painted, shapes_of
from geometry.saying import say

PICTURE = QSize(46, 60)
"""Room for the picture of a page at 100 %, pixels."""
IDLE_MS = 8
"""Between two pictures, for whatever else there is to do."""


class PageModel(QAbstractListModel):
    """Titles and pictures of pages."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pages: list[Page] = []
        self._pictures: dict[int, QPixmap] = {}
        self._wanted: list[int] = []
        self._turns = Turns(self)
        self._turns.done.connect(self._painted)
        self.pixel_ratio = 1.0

    @property
    def pages(self) -> list[Page]:
        return self._pages

    def set_pages(self, pages: Sequence[Page]) -> None:
        """Replace all pages; pictures are painted anew."""
        self.beginResetModel()
        self._pages = list(pages)
        self.paint_anew()
        self.endResetModel()

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._pages)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not index.isValid() or index.row() >= len(self._pages):
            return None
        page = self._pages[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{index.row() + 1}  {page.title.partition(',')[0]}"
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            told = say("Page {number}: {title}", number=index.row() + 1, title=page.title)
            return plain(told) if role == Qt.ItemDataRole.ToolTipRole else told
        if role == Qt.ItemDataRole.DecorationRole:
            return self._picture(index.row(), page)
        return None

    def paint_anew(self) -> None:
        """Paint the pictures anew."""
        self._turns.stop()
        self._pictures, self._wanted = {}, []

    def _picture(self, row: int, page: Page) -> QPixmap:
        if row not in self._pictures:
            if row not in self._wanted:
                self._wanted.append(row)
                if not self._turns.busy:
                    self._next()
            return _sheet(page, self.pixel_ratio)[0]
        return self._pictures[row]

    def _next(self) -> None:
        """Paint the picture of the next row that came into sight: a whole list at once would keep the window waiting."""
        if self._wanted:
            self._turns.begin(self._paint(self._wanted[0]), IDLE_MS)

    def _paint(self, row: int) -> Steps:
        page = self._pages[row]
        picture, scale = _sheet(page, self.pixel_ratio)
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(*_corner(page, scale))
        try:
            yield from painted(painter, shapes_of(page), page, scale)
        finally:
            painter.end()
        self._pictures[row] = picture

    def _painted(self) -> None:
        index = self.index(self._wanted.pop(0))
        self.dataChanged.emit(index, index, [Qt.ItemDataRole.DecorationRole])
        self._next()


def _room() -> QSize:
    """Room for a picture beside letters of the size in use."""
    return QSize(sizes().soft(PICTURE.width()), sizes().soft(PICTURE.height()))


def _sheet(page: Page, ratio: float) -> tuple[QPixmap, float]:
    """(the empty sheet in the room of a picture, pixels to the mm)."""
    room = _room()
    scale = min(room.width() / page.width, room.height() / page.height)
    picture = QPixmap(room * ratio)
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(*_corner(page, scale))
    sheet = QRectF(0.5, 0.5, page.width * scale - 1.0, page.height * scale - 1.0)
    painter.fillRect(sheet, Qt.GlobalColor.white)
    painter.setPen(QPen(QColor(0, 0, 0, 90), 0))
    painter.drawRect(sheet)
    painter.end()
    return picture, scale


def _corner(page: Page, scale: float) -> tuple[float, float]:
    room = _room()
    return (room.width() - page.width * scale) / 2, (room.height() - page.height * scale) / 2
