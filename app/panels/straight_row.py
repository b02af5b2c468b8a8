"""Rows of the panel for what is to lie straight: the line and the buttons of a row, and the edge under side tuners that share a plate."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from app.panels.forms.rows import FieldRow
from geometry.edits import set_row_heading, set_turn, square_row
from geometry.layout import Headstock, Row
from geometry.saying import say

_SQUARE = 1e-6
"""How little off square, in degrees, there is nothing to set square."""


def direction_rows(layout: Headstock, row: Row, member: str) -> list[FieldRow]:
    """The heading and the buttons of a straight row, asked of one of its members."""
    rows = [FieldRow(say("Row heads"), "angle", row.run.heading, partial(set_row_heading, layout, row.id),
                     help=say("Counter-clockwise from straight across to the treble side. Buttons that all point one way turn with it.")),
            FieldRow(say("Row's buttons point"), "angle", row.run.turn, partial(set_turn, layout, member),
                     optional=True, empty=say("each to the edge"),
                     help=say("All one way, as tuners on one plate do: counter-clockwise from straight across to the treble side. Left empty "
                              "each points squarely at its nearest edge."))]
    if row.run.turn is None or abs((row.run.turn - row.run.heading) % 180.0 - 90.0) > _SQUARE:
        rows.append(FieldRow(say("Point its buttons square to the row"), "button", None, lambda _: square_row(layout, row.id)))
    return rows


def straight_edge_rows(layout: Headstock, ids: Sequence[str]) -> list[FieldRow]:
    """A button that makes the edge straight under side tuners; none where their bores are parallel, or one plate could not hold them."""
    if len(ids) < 2:
        return []
    from geometry.edits.straight_edge import splayed, straighten_edge  # here: a start holds nothing

    if not splayed(layout, ids):
        return []
    return [FieldRow(say("Make the edge under side tuners straight"), "button", None, lambda _: straighten_edge(layout, ids),
                     help=say("From the plate of the first to that of the last: their bores are then parallel, and one plate lies flat under all. "
                              "Where each has its mirror image on the other edge, that is made straight too."))]
