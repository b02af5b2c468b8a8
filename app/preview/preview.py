"""The preview: pages on the left, the chosen one beside them, zoom above it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QListView, QPushButton, QVBoxLayout, QWidget

from app.formats.paper import Page
from app.look.elided import Elided
from app.look.filled import filled
from app.look.flow import Flow
from app.look.sizes import keep
from app.preview.page_list import PICTURE, PageModel
from app.preview.page_view import STEP, PageView
from geometry.saying import say


class SheetPreview(QWidget):
    """Shows pages exactly as PDF and printer have them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.model = PageModel(self)
        self.list = QListView(self)
        self.list.setModel(self.model)
        keep(self.list, icons=(PICTURE.width(), PICTURE.height()), fixed_panel=180)
        self.list.setWordWrap(True)
        self.list.setUniformItemSizes(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.list.setAccessibleName(say("Pages"))
        self.view = PageView(self)
        self._title = Elided(self, objectName="heading")
        self._size = QLabel(self, objectName="dim")
        self.message = QLabel(self, objectName="dim", alignment=Qt.AlignmentFlag.AlignCenter, wordWrap=True)
        self._lay_out()
        self.list.selectionModel().currentChanged.connect(self._chosen)
        self.view.zoomed.connect(self._zoomed)
        self.view.turned.connect(self.turn)
        self.show_pages(())

    def _lay_out(self) -> None:
        bar = QWidget(self, objectName="tools")
        bar.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = Flow(bar, (14, 5, 14, 5), 6)
        row.addWidget(self._title, gives_way=True)
        row.add_gap()
        row.addWidget(self._size)
        for word, about, slot in ((say("Whole page"), say("Show the whole page (0)"), self.view.fit),
                                  (say("Full size"), say("As large as on paper (1)"), self.view.zoom_full_size),
                                  ("−", say("Smaller (-)"), self.smaller), ("+", say("Larger (+)"), self.larger)):
            button = QPushButton(word, bar, toolTip=about, accessibleName=about, clicked=slot)
            row.addWidget(button)
        self.right = QWidget(self)
        filled(QVBoxLayout(self.right), bar, (self.view, 1), (self.message, 1), margins=(0, 0, 0, 0), gap=0)
        filled(QHBoxLayout(self), self.list, (self.right, 1), margins=(0, 0, 0, 0), gap=0)

    # ---- what is shown --------------------------------------------------
    def show_pages(self, pages: Sequence[Page]) -> None:
        """Show these pages; the one with the title and place of the page on show stays chosen."""
        before, old = self.current, self.model.pages
        number = self._same(old, before, pages) if 0 <= before < len(old) else 0
        self.model.pixel_ratio = self.devicePixelRatioF()
        self.model.set_pages(pages)
        self.message.setVisible(not pages)
        self.view.setVisible(bool(pages))
        if not pages:
            self.view.show_page(None)
            self._title.setText("")
            self._size.setText("")
            return
        self.list.setCurrentIndex(self.model.index(number))

    def show_message(self, text: str) -> None:
        """Say in the place of the pages why there are none."""
        self.show_pages(())
        self.message.setText(text)

    def follow_sizes(self) -> None:
        """Pictures of the pages for letters of another size."""
        self.model.paint_anew()

    @property
    def current(self) -> int:
        """Number of the page on show, 0 first; -1 for none."""
        return self.list.currentIndex().row()

    def turn(self, by: int) -> None:
        """Some pages on, or back; stops at the ends."""
        if self.model.pages:
            self.list.setCurrentIndex(self.model.index(min(max(self.current + by, 0), len(self.model.pages) - 1)))

    def larger(self) -> None:
        self.view.zoom(STEP)

    def smaller(self) -> None:
        self.view.zoom(1 / STEP)

    @staticmethod
    def _same(old: Sequence[Page], before: int, pages: Sequence[Page]) -> int:
        """The page in the place of the one before among those of its first section, else the last of them, else the cover."""
        section = old[before].sections[0]
        rank = sum(section in page.sections for page in old[:before])
        found = [i for i, page in enumerate(pages) if section in page.sections]
        return found[min(rank, len(found) - 1)] if found else 0

    def _chosen(self, index: QModelIndex) -> None:
        if not index.isValid():
            return
        page = self.model.pages[index.row()]
        self.view.show_page(page)
        self._title.setText(page.title)

    def _zoomed(self, pixels_per_mm: float) -> None:
        pages = self.model.pages
        if 0 <= self.current < len(pages):
            page = pages[self.current]
            self._size.setText(f"{page.paper}, {100 * pixels_per_mm / self.view.full_size:.0f} %")
