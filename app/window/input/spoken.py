"""What a screen reader is told of the drawing: what is held, where it is and what is wrong with it, and every sentence of the foot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QWidget

from app.panels.describe import describe
from app.panels.snags.snag_words import title
from app.window.input.stepping import place_of
from geometry.checks import Snag
from geometry.checks.words import few
from geometry.layout import Headstock
from geometry.lengths import from_line
from geometry.saying import count, say
from geometry.strings.square_line import square_line
from geometry.terms import term
from geometry.units import LengthUnit, format_close

if TYPE_CHECKING:
    from app.window.frame import Frame

MOST, MOST_NAMED = 3, 8
"""Snags that are told one by one, and things that are held."""


class Spoken(QObject):
    """Keeps the description of the canvas as the drawing is, and has changes of it announced."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._w = window
        self.told = ""
        window.document.held_changed.connect(self.follow)
        window.document.history_changed.connect(self.follow)
        window.foot.saying.connect(self.announce)
        self.follow()

    def follow(self) -> None:
        """Tell anew, unless a drag is under way or nothing has changed."""
        w = self._w
        if w.hand.busy:
            return
        words = described(w.document.shown, w.document.held, w.node, w.document.result.snags, w.unit)
        if words != self.told:
            self.told = words
            w.canvas.view.setAccessibleDescription(words)
            if w.document.held:
                announce(w.canvas.view, words)

    def announce(self, text: str) -> None:
        """Have a sentence of the foot read out."""
        if text:
            announce(self._w.foot, text)


def announce(widget: QWidget, text: str) -> None:
    """Have a text read out, if somebody listens."""
    if QAccessible.isActive():
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(widget, text))


def described(layout: Headstock, held: tuple[str, ...], node: int | None, snags: tuple[Snag, ...],
              unit: LengthUnit) -> str:
    """What is held, its place, and its snags; of the whole headstock when nothing is held."""
    if not held:
        wrong = [snag for snag in snags if snag.grade != "note"]
        return say("Nothing is held.") + " " + (_counted(wrong) or say("There are no snags."))
    if len(held) > 1:
        about = [snag for snag in snags if set(snag.between) & set(held)]
        names = few(held, MOST_NAMED)
        return " ".join(filter(None, (say("{n} things are held: {names}.", n=len(held), names=names), _counted(about))))
    about = [snag for snag in snags if held[0] in snag.between]
    parts = [f"{describe(layout, held[0], unit, node).title}.", _place(layout, held[0], unit), _counted(about)]
    parts += [_told(snag, unit) for snag in about[:MOST]]
    return " ".join(part for part in parts if part)


def _place(layout: Headstock, id: str, unit: LengthUnit) -> str:
    at = place_of(layout, id)
    if at is None or id in ("outline", "nut"):
        return ""
    across, along = (format_close(abs(n), unit, mark=True) for n in at)
    along = from_line(at[1], along, square_line(layout.nut))
    if at[0] >= 0:
        return say("{across} to the treble side, {along}", across=across, along=along) + "."
    return say("{across} to the bass side, {along}", across=across, along=along) + "."


def _counted(snags: list[Snag]) -> str:
    return count(len(snags), "{n} snag.", "{n} snags.") if snags else ""


def _told(snag: Snag, unit: LengthUnit) -> str:
    return say("{grade}: {kind}. {sentence}", grade=term(snag.grade), kind=title(snag), sentence=snag.text_in(unit))
