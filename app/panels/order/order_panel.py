"""The panel of the Order stage: how much there is to do, the steps to drag, and the hours behind them."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.flow import Flow
from app.look.paragraph import paragraph, restyle
from app.look.scroll import Scroll, Yielding
from app.look.sizes import keep
from app.panels.forms.form import Form, rule
from app.panels.forms.pieces import Pieces
from app.panels.forms.tabs import Tabs
from app.panels.order.order_list import OrderList
from app.panels.order.order_rows import Row
from app.panels.order.rate_rows import hour_rows, rate_rows
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence import Counts
from geometry.units import LengthUnit

STEPS = 190
"""Height of the list of steps at least, at 100 %, pixels."""


class OrderPanel(QWidget):
    """Shows rows; `list` says what the hand does with them."""

    edited = Signal(str, object)
    refused = Signal(str)
    best_wanted = Signal()

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._title = QLabel(say("Running order"), self, objectName="title")
        self._whose = QLabel(self, objectName="dim")
        self._tally, self._changes, self._loud = paragraph(self, name="dim"), paragraph(self, name="dim"), paragraph(self, name="warning")
        self.pieces = Pieces(self)
        self.tabs = Tabs((say("Steps"), say("Hours")), self)
        self.back = QPushButton(say("Back to the best order"), self,
                                toolTip=say("Let go of your own order: the one with the fewest changes again."))
        self.back.clicked.connect(self.best_wanted)
        self.list = OrderList(self)
        self._hours, self._rates = Form(unit, self, (1, 1)), Form(unit, self, (5, 3))
        self._rates.edited.connect(self.edited)
        self._rates.refused.connect(self.refused)
        self._says = paragraph(self, name="dim", alignment=Qt.AlignmentFlag.AlignTop)
        keep(self._says, minimum_height=52)
        self._pages = QStackedWidget(self)
        self._pages.addWidget(self._step_page())
        self._pages.addWidget(self._hour_page())
        self.tabs.chosen.connect(self._pages.setCurrentIndex)
        self._lay_out()

    def _step_page(self) -> QWidget:
        page = QWidget(self, objectName="page")
        foot = filled(QVBoxLayout(), self._says, margins=(14, 2, 12, 4))
        filled(QVBoxLayout(page), (Yielding(self.list, self, STEPS), 1), rule(self), foot, margins=(0, 0, 0, 0), gap=6)
        return page

    def _hour_page(self) -> QWidget:
        page = QWidget(self, objectName="page")
        filled(QVBoxLayout(page), self._hours, rule(page), self._rates, 1, margins=(14, 6, 12, 10))
        return Scroll(say("Hours"), self, page)

    def _lay_out(self) -> None:
        head = Flow()
        head.addWidget(self._title)
        head.add_gap()
        head.addWidget(self._whose)
        row = Flow()
        row.addWidget(self.tabs)
        row.add_gap()
        row.addWidget(self.back)
        top = filled(QVBoxLayout(), head, self.pieces, self._tally, self._changes, self._loud, row, margins=(14, 0, 12, 0), gap=5)
        page = QWidget(self, objectName="page")
        filled(QVBoxLayout(page), top, rule(self), (self._pages, 1), margins=(8, 16, 0, 6), gap=6)
        self._scroll = Scroll(say("Running order"), self, page)
        filled(QVBoxLayout(self), self._scroll, margins=(0, 0, 0, 0))

    # ---- what is shown ------------------------------------------------------
    def show_order(self, rows: list[Row], current: str, own: bool, best: bool = True) -> None:
        """Show the steps; an order that is not `own` may yet not be the `best`, for what is done keeps its number."""
        self.list.show_rows(rows, current)
        self._whose.setText(say("your own order") if own else say("the best order") if best else say("the best with what is done"))
        self.back.setEnabled(own)

    def show_head(self, tally: str, changes: str, loud: str) -> None:
        """What stands above the steps: counts, changes, and what cannot be had."""
        for label, text in ((self._tally, tally), (self._changes, changes), (self._loud, loud)):
            label.setText(text)
            label.setVisible(bool(text))

    def show_hours(self, counts: Counts | None, found: float | None = None) -> None:
        """Show hours, those by the job book too."""
        self._hours.show_rows(hour_rows(counts, found) if counts else [])

    def show_rates(self, layout: Headstock) -> None:
        """Show the minutes of this layout, which is the one that is changed by typing."""
        self._rates.show_rows(rate_rows(layout))

    def say(self, text: str, warn: bool = False) -> None:
        """A sentence under the list; a new one that warns comes into sight, unless the list would move under the hand that drags."""
        new = text != self._says.text()
        self._says.setText(text)
        restyle(self._says, "warning" if warn else "dim")
        if warn and new and self._pages.currentIndex() == 0 and not self.list.dragging:
            for page in (self._pages.widget(0), self._scroll.widget()):
                page.layout().activate()  # a longer sentence takes more room
            self._scroll.ensureWidgetVisible(self._says, 0, 0)

    @property
    def said(self) -> str:
        """What stands under the list."""
        return self._says.text()

    @property
    def loud(self) -> str:
        """What cannot be had, as it is shown."""
        return self._loud.text()

    @property
    def counted(self) -> str:
        """Counts and changes as they are shown."""
        return f"{self._tally.text()}\n{self._changes.text()}"
