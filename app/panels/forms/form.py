"""A form built from rows of data; values are updated in place while a drag goes on."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QEvent, Signal
from PySide6.QtWidgets import QApplication, QFrame, QVBoxLayout, QWidget

from app.panels.forms.fields import Field
from app.panels.forms.form_page import AT_ONCE, FormPage
from app.panels.forms.rows import FieldRow
from geometry.units import LengthUnit

KEPT = 4
"""Pages that are kept: to hold this and that in turn makes no widgets."""


class Form(QWidget):
    """Shows rows; sends (what was changed, edited layout or rack) when one is edited."""

    edited = Signal(str, object)
    refused = Signal(str)

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None, columns: tuple[int, int] = (4, 5),
                 at_once: int = AT_ONCE) -> None:
        """`at_once` rows are there at once, the others some moments later: few where the first ones are out of sight."""
        super().__init__(parent)
        self._unit = unit
        self._columns = columns
        self._at_once = at_once
        self._pages: list[FormPage] = []
        """the one on show last"""
        self._laid_by: list[FieldRow] = []
        """rows whose widgets were let go while nobody saw them"""
        self._of = ""
        self._asked = 0
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)

    @property
    def rows(self) -> list[FieldRow]:
        """What is shown."""
        return self._pages[-1].rows if self._pages else self._laid_by

    @property
    def widgets(self) -> list[QWidget]:
        """The widgets of the rows, in their order, as far as they are made."""
        return self._pages[-1].widgets if self._pages else []

    @property
    def complete(self) -> bool:
        """Whether every row has its widget."""
        return len(self.widgets) == len(self.rows)

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit, on the page on show and on all to come."""
        self._unit = unit
        self._keep(1)

    def show_rows(self, rows: list[FieldRow], of: str = "") -> None:
        """Show these rows, reusing the widgets while labels and kinds stay the same.

        `of` names what they are of: what was typed of one thing and not taken is never shown of another.
        """
        shape = [row.shape for row in rows]
        same = bool(self._pages) and self._pages[-1].shape == shape
        if not (same and of == self._of) and not self._leave():
            return
        if same:
            if of != self._of:
                self._pages[-1].put_back()
            self._of = of
            self._pages[-1].show_rows(rows)
            return
        self._of = of
        known = next((page for page in self._pages if page.shape == shape), None)
        if known is not None:
            self._pages.remove(known)
            known.show_rows(rows)
        page, before = known or self._made(rows), self._pages[-1] if self._pages else None
        self._pages.append(page)
        page.show()
        if before is not None:
            page.hold_room(before.height())
            page.take_keyboard(before)
            before.put_back()
            before.hide()
        self._keep(KEPT)

    def let_unseen_go(self) -> None:
        """Keep no widgets that are not seen: they are made again when they are to be shown."""
        if not self.isVisible():
            self._laid_by = self.rows
        for page in self._keep(1 if self.isVisible() else 0):
            QCoreApplication.sendPostedEvents(page, QEvent.Type.DeferredDelete)  # now, before what is left is styled anew

    def showEvent(self, event) -> None:
        super().showEvent(event)
        if not self._pages and self._laid_by:
            self.show_rows(self._laid_by, self._of)

    # ---- inside ---------------------------------------------------------
    def _leave(self) -> bool:
        """Take what is being typed on the page on show. False when that has brought newer rows, which are on show by now."""
        self._asked += 1
        asked, now = self._asked, QApplication.focusWidget()
        if self._pages and now in self._pages[-1].widgets and isinstance(now, Field):
            now.take()
        return asked == self._asked

    def _made(self, rows: list[FieldRow]) -> FormPage:
        """A page for these rows: of a page that changes a little under the maker's hand all is there at once."""
        before = {row.label for row in self._pages[-1].rows} if self._pages and self.isVisible() else set()
        alike = 2 * sum(row.label in before for row in rows) > len(rows)
        page = FormPage(rows, self._unit, self._columns, len(rows) if alike else self._at_once, self)
        page.edited.connect(self.edited)
        page.refused.connect(self.refused)
        self._column.addWidget(page)
        return page

    def _keep(self, most: int) -> list[FormPage]:
        gone = self._pages[:max(0, len(self._pages) - most)]
        del self._pages[:len(gone)]
        for page in gone:
            self._column.removeWidget(page)
            page.deleteLater()
        return gone


def rule(parent: QWidget) -> QFrame:
    """A thin line between parts of a panel."""
    return QFrame(parent, objectName="rule")
