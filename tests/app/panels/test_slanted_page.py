"""The panel of a layout whose nut is slanted: from which line its lengths along the head are."""

import math

import pytest
from msgspec.structs import replace

from app.panels.blank_rows import blank_rows
from app.panels.describe import describe
from geometry.edits import add_pin
from tests.geometry.checks.heads import bore, head, loop, pattern, side

OF = pattern("of", "side", bore(surface="seat", depth=30.0))
DEEP = 30.0 * math.tan(math.radians(8.0))
SQUARE = loop((-30.0, 0.0), (30.0, 0.0), (30.0, 180.0), (-30.0, 180.0))
ALONG = loop((-30.0, DEEP), (30.0, -DEEP), (30.0, 180.0), (-30.0, 180.0))


def rows(layout, id):
    return {row.label: row for row in describe(layout, id, "mm").fields}


def of(outline, slant):
    layout = head(tuners=(side("a", 90.0, OF),), patterns=(OF,), outline=outline)
    return add_pin(replace(layout, nut=replace(layout.nut, slant=slant)), (0.0, 40.0), 6.0)


@pytest.mark.parametrize(("slant", "line"), [(8.0, "base line"), (0.0, "nut line")])
def test_places_are_from_the_line_square_to_the_centreline(slant, line):
    layout = of(SQUARE, slant)
    along = rows(layout, layout.pins[-1].id)[f"Along, from the {line}"]
    assert along.value == 40.0 and along.help == f"From the {line}, positive to the tip."
    assert f"Wood behind the {line}" in {row.label for row in blank_rows(layout)}
    assert f"Along, from the {line}" in {row.label for row in describe(layout, "outline", "mm", 0).fields}


@pytest.mark.parametrize(("outline", "slant", "line"), [(SQUARE, 0.0, "nut line"), (SQUARE, 8.0, "base line"), (ALONG, 8.0, "nut line")])
def test_lengths_along_an_edge_are_from_where_the_outline_ends(outline, slant, line):
    """A square end behind a slanted nut begins on the base line, one that is drawn along it at the end of the nut line."""
    assert rows(of(outline, slant), "a")["Along the edge"].help == f"Arc length from the {line}."
