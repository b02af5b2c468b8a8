"""A photo or scan that lies behind the drawing, to trace from."""

from typing import Annotated

from msgspec import Meta

from geometry.layout.parts import Part, Text

MOST_BYTES = 3_000_000
"""Largest picture that a layout carries."""
MOST_UNPACKED = 4 * 2400**2
"""Points of a picture that are unpacked from a layout: four times what the program keeps. A few bytes of JPEG can stand for
gigabytes of points."""


class Picture(Part, kw_only=True):
    """A picture, reduced and kept inside the layout so that it opens elsewhere. It is never printed.

    `jpeg` are the bytes of a JPEG of `width` x `height` points. `place` takes a
    point of it (x right, y down, from its upper left corner) to mm: nine
    numbers, row by row, of geometry.tracing.PlaneMap. A locked picture is not
    moved by the hand.
    """

    name: Text = ""
    jpeg: Annotated[bytes, Meta(min_length=4, max_length=MOST_BYTES)]
    width: Annotated[int, Meta(ge=1, le=20000)]
    height: Annotated[int, Meta(ge=1, le=20000)]
    place: tuple[float, float, float, float, float, float, float, float, float]
    opacity: Annotated[float, Meta(ge=0, le=1)] = 0.6
    hidden: bool = False
    locked: bool = True
