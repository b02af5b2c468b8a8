"""What the panel shows of a feature, as data: labels, values, and the edit each one stands for."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from msgspec import Struct

from geometry.layout import Headstock, Rack

RowKind = Literal["length", "angle", "text", "words", "choice", "flag", "fact", "heading", "button", "note"]


class FieldRow(Struct, frozen=True):
    """One line of the panel.

    Lengths are in mm, angles in degrees (as the file keeps them). `change`
    takes the new value and returns the edited layout (of a row of the rack: the rack), or raises GeometryError
    with a sentence; a row without it is a fact to read, a `note` a sentence across the panel, `words` a text that has
    the whole width below its label. `optional` lengths may be left empty (None), shown as `empty`.
    """

    label: str
    kind: RowKind
    value: object = None
    change: Callable[[object], Headstock | Rack] | None = None
    choices: tuple[tuple[str, str], ...] = ()
    """(value, shown) pairs of a choice"""
    asks: bool = False
    """a choice that is no state: it does what is chosen and asks again; the first of its choices is the question"""
    help: str = ""
    key: str = ""
    """the path of the field that it edits, as field_help.pattern writes it"""
    optional: bool = False
    empty: str = ""
    warn: bool = False

    @property
    def shape(self) -> tuple:
        """What decides which widget it needs; equal shapes can be updated in place."""
        return (self.label, self.kind, self.change is not None, self.choices, self.asks, self.optional, self.empty)
