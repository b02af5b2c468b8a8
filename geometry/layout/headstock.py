"""The whole layout in one immutable record: what the file holds and every edit returns."""

from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.blank import Blank, Ear
from geometry.layout.book import Book
from geometry.layout.hardware import Pattern
from geometry.layout.outline import Loop
from geometry.layout.parts import Id, Part, Text
from geometry.layout.picture import Picture
from geometry.layout.rates import Rates
from geometry.layout.shop import Accuracy, Margins, Rack, Route, Template
from geometry.layout.slots import Pin, SingleHole, Slot
from geometry.layout.strings import Nut, String
from geometry.layout.tuners import Row, Tuner

FORMAT = 1
"""Version of the layout file."""


Step = Annotated[str, Meta(min_length=1, max_length=140)]
"""Id of an operation: what is done and to what, for example "side bore treble side 1.1.1" (geometry.sequence)."""


class Note(Part, kw_only=True):
    """A remark of the maker, pinned to a feature by its id, or to the whole layout.

    No file is refused for a remark: one that names a feature which is not there is printed under that name.
    """

    on: Id | None = None
    text: Text


class Headstock(Part, kw_only=True):
    """A headstock layout. Lengths in mm, angles in degrees, frame of the package docstring.

    `order` is the maker's own running order, step by step; empty for the best
    one computed. Steps that the layout no longer asks for are passed over, new
    ones find their place (geometry.sequence.arranged).
    """

    pegwright: Literal[1] = FORMAT
    name: Text
    about: Text = ""
    blank: Blank
    ears: tuple[Ear, ...] = ()
    outline: Loop
    nut: Nut = Nut()
    strings: tuple[String, ...] = ()
    slots: tuple[Slot, ...] = ()
    patterns: tuple[Pattern, ...] = ()
    rows: tuple[Row, ...] = ()
    tuners: tuple[Tuner, ...] = ()
    pins: tuple[Pin, ...] = ()
    holes: tuple[SingleHole, ...] = ()
    margins: Margins = Margins()
    accuracy: Accuracy = Accuracy()
    rack: Rack = Rack()
    template: Template = Template()
    routes: tuple[Route, ...] = ()
    notes: tuple[Note, ...] = ()
    order: tuple[Step, ...] = ()
    rates: Rates = Rates()
    book: Book = Book()
    picture: Picture | None = None

    @property
    def to_rout(self) -> tuple[Slot, ...]:
        """The slots without those that are in the blank already."""
        return tuple([slot for slot in self.slots if not slot.there]) if any([slot.there for slot in self.slots]) else self.slots

    def pattern(self, id: str) -> Pattern:
        """The hardware pattern of that id; KeyError when there is none (validate() excludes it)."""
        for pattern in self.patterns:
            if pattern.id == id:
                return pattern
        raise KeyError(id)

    def row(self, id: str) -> Row:
        """The row of that id; KeyError when there is none."""
        for row in self.rows:
            if row.id == id:
                return row
        raise KeyError(id)

    def tuner(self, id: str) -> Tuner:
        """The tuner of that id; KeyError when there is none."""
        for tuner in self.tuners:
            if tuner.id == id:
                return tuner
        raise KeyError(id)
