"""Puts the front page before the rest of the window, and does what is chosen on it."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QStackedWidget, QWidget

from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.headstock import SUFFIX
from app.threads.background import raised
from app.window import ask
from app.window.background.errand import Errand
from app.window.demo import in_language, samples
from app.window.place import kept_stage
from app.window.there import There
from geometry.layout import Headstock
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame
    from app.window.front.page import FrontPage


class Front(QObject):
    """Owns the front page of a window. The page is made when it is first shown, its pictures after that, one by one."""

    def __init__(self, window: Frame, work: QWidget) -> None:
        super().__init__(window)
        self._window = window
        self._work = work
        self.stack = QStackedWidget(window)
        self.stack.addWidget(work)
        window.setCentralWidget(self.stack)
        self.page: FrontPage | None = None
        self._waiting: list[Path] = []
        self.errand = Errand(self, answered=self._answered, failed=raised, ended=self._draw_next)
        self.there = There(self, told=self._missing)
        window.document.file_changed.connect(self.leave)

    @property
    def shown(self) -> bool:
        """Whether the front page is on show."""
        return self.page is not None and self.stack.currentWidget() is self.page

    def show(self) -> None:
        """Bring the page to the front and the keyboard to its first way."""
        if self.page is None:
            from app.window.front.page import FrontPage  # here: a start with a layout shows no page

            self.page = FrontPage(self.stack)
            self.page.chosen.connect(self._chosen)
            self.page.sample_chosen.connect(self._sample)
            self.page.recent_chosen.connect(self._recent)
            self.stack.addWidget(self.page)
            self._waiting = sorted(samples().glob(f"*{SUFFIX}"))
            self.page.show_samples(self._waiting)
        recent = self._window.files.recent()
        self.page.show_recent(recent)
        self.there.look(recent)
        self._missing()
        self.page.back.set_words(say("Back to “{name}”", name=self._window.document.layout.name.replace("&", "&&")))
        self.stack.setCurrentWidget(self.page)
        self.page.ways["numbers"].setFocus()
        self._draw_next()

    def leave(self) -> None:
        """Show the work again."""
        if self.shown:
            self.stack.setCurrentWidget(self._work)
            self._window.canvas.fit(self._window.document.shown)
            self._window.canvas.view.setFocus()

    def end(self) -> None:
        """The window goes: wait for the picture that is being drawn, and begin no other."""
        self.errand.end()
        self.there.end()

    def _missing(self) -> None:
        self.page.show_missing(self.there.missing)

    # ---- pictures -------------------------------------------------------
    def _draw_next(self) -> None:
        if self.errand.free and self._waiting:
            self.errand.start(partial(_drawn, self._waiting.pop(0)))

    def _answered(self, answer: tuple[Path, Headstock, tuple] | None) -> None:
        if answer is None:
            return
        file, layout, picture = answer
        for card in self.page.cards:
            if card.property("file") == str(file):
                card.set_name(layout.name, layout.about)
                from app.look.face_picture import FacePicture

                card.show_picture(FacePicture(*picture))

    # ---- what is chosen -------------------------------------------------
    def _chosen(self, way: str) -> None:
        if way == "back":
            self.leave()
        elif way == "numbers":
            from app.window.front.numbers_dialog import begin_from_numbers
            begin_from_numbers(self._window)
        elif way == "draw":
            from app.window.front.bare import begin_bare
            begin_bare(self._window)
        else:
            self._window.do(way)

    def _sample(self, file: Path) -> None:
        try:
            read = headstock.opened(file)
        except FormatError as error:
            ask.warn(self._window, say("This sample was not opened"), str(error))
            return
        if self._window.files.may_leave():
            self._window.files.take(file, read)

    def _recent(self, file: Path) -> None:
        if self._window.files.open(file):
            self._window.set_stage(kept_stage(self._window.settings))


def _drawn(file: Path) -> tuple[Path, Headstock, tuple] | None:
    """A sample with its marks; None for one that cannot be read, which says so when it is chosen."""
    try:
        read = headstock.opened(file)
    except FormatError:
        return None
    from app.look.face_picture import face_picture  # it was loaded with the page

    return file, in_language(read.known, read.layout), face_picture(read.layout)
