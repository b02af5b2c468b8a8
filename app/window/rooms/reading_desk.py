"""The readings page of the Job book stage: entries go into the book, what they say goes where the maker wants."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QObject

from app.panels.book.reading_page import ReadingPage
from app.panels.book.reading_rows import (
    asked,
    fit_sentences,
    key_of,
    not_asked,
    printer_sentence,
    reading_cells,
    shop_sentences,
    what_words,
)
from app.window.history_buttons import ACCURACY_TAKEN
from geometry.book import put_reading, remove_reading
from geometry.checks.in_wood import by_the_wood
from geometry.checks.words import few
from geometry.errors import GeometryError
from geometry.layout import Book, Reading
from geometry.measured import Found, Off, at_square_edge, drillings, implied, joined, offs, take_accuracy, with_side
from geometry.saying import count, say
from geometry.units import parse_angle, parse_length

if TYPE_CHECKING:
    from app.window.frame import Frame

MEASURED = {"practice": say("These are readings of the practice piece; the panel has the choice."),
            "real": say("These are readings of the real piece; the panel has the choice.")}
MOST_NAMED = 12
"""Doubtful readings that are named one by one; a table that was read with a wrong unit may hold nothing else."""


class ReadingDesk(QObject):
    """Feeds a ReadingPage from the book of record."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self.page = ReadingPage()
        self.page.way_chosen.connect(self._begin)
        self.page.wanted.connect(self._wanted)
        self.page.table.entered.connect(self._entered)
        self.page.table.struck.connect(self._strike)
        self.page.table.refused.connect(window.foot.refuse)
        self._rows: list[Reading] = []
        self._old: list[Reading] = []
        """those of the rows that can only be struck out"""
        self._found: tuple[Found, ...] = ()

    def show(self) -> None:
        """Show the readings of the piece on the bench."""
        document, unit = self._window.document, self._window.unit
        piece = document.book.piece
        layout = by_the_wood(document.layout, piece)
        try:
            wanted = asked(layout, self.page.way)
            self._old = not_asked(wanted, layout.book.readings, piece, self.page.way)
            self._rows = wanted + self._old
            found = offs(layout, layout.book.readings, piece)
            self._found, fit = implied(layout, found)
            pairs = joined(layout, found)
        except GeometryError as error:
            self.page.show_readings([], [str(error)], False)
            return
        sentences = [*self._slips(found), *fit_sentences(pairs, unit), *shop_sentences(self._found, layout.accuracy, unit),
                     printer_sentence(fit)]
        how = say("Measure the finished holes with a caliper; Enter goes to the next hole. An emptied cell is struck out. On the "
                  "bass side of the centreline x is below zero; the sign may be left out.")
        way = self.page.way
        if way.what in ("y", "depth") and way.how != "square edge" and any(at_square_edge(d, way.what) for d in drillings(layout).values()):
            how = say("Bores from the side are planned here where they meet the finished outline: while the edges are square "
                      "choose the measure at or from the square edge.") + " " + how
        if piece == "real" and any(abs(off.by) > layout.accuracy.mark for off in found if off.reading.what != "tilt"):
            sentences.insert(0, say("To have what is still to be done checked against a hole as it came out: draw it so (Tuners stage) and "
                                    "tick its step again (Order stage)."))
        sentences = [MEASURED[piece], *sentences, how] if found else [MEASURED[piece], how, *sentences]
        cells = reading_cells(layout, self._rows, layout.book.readings, piece, unit)
        self.page.show_readings(cells, sentences, any(one.enough for one in self._found), [key_of(one) for one in self._rows],
                                (self._window.document.opened, piece, self.page.way.words))

    def _begin(self) -> None:
        """Another measure is taken from the first hole on."""
        self.show()
        if self._rows:
            self.page.table.stand_at(0, 2)

    def _slips(self, found: tuple[Off, ...]) -> list[str]:
        doubtful = [what_words(off.reading) for off in found if off.doubtful]
        if not doubtful:
            return []
        which = few(doubtful, MOST_NAMED)
        return [count(len(doubtful), "One reading is so far off that a slip of the pen is likelier; left out below: {which}.",
                      "{n} readings are so far off that a slip of the pen is likelier; left out below: {which}.", which=which)]

    def _entered(self, row: int, column: int, text: str) -> None:
        table = self.page.table
        one = next((one for one in self._rows if key_of(one) == table.key(row)), None)
        if one is None or text.strip() and one in self._old:
            self._window.say(say("This hole is no longer in the layout: nothing was written down."))
            return
        document = self._window.document
        change = partial(self._written, one=replace(one, piece=document.book.piece), text=text)
        table.put_down(row, column, text, lambda: document.record(say("Reading of {drilling}", drilling=one.drilling), change))

    def _written(self, book: Book, one: Reading, text: str) -> Book:
        """The book with a reading as it was typed, without it for an emptied cell. GeometryError for what cannot be read."""
        if not text.strip():
            return remove_reading(book, one)
        value = math.degrees(parse_angle(text)) if one.what == "tilt" else with_side(one, parse_length(text, self._window.unit))
        if one.what in ("diameter", "depth", "distance") and value <= 0:
            raise GeometryError(say("“{text}” cannot be: this measure is above zero.", text=text))
        return put_reading(book, replace(one, value=value))

    def _strike(self, row: int) -> None:
        self._entered(row, 2, "")

    def _wanted(self, key: str) -> None:
        if key == "printer":
            self._window.do("correct")
            return
        layout = self._window.document.layout
        self._window.document.apply(ACCURACY_TAKEN, replace(layout, accuracy=take_accuracy(layout.accuracy, self._found)))
        self._window.say(say("The chances now reckon with what you measured; one undo takes it back."))
