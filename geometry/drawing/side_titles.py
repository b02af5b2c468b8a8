"""Over a drawing of the head which side lies where and from where it is seen, so that no paper is taken for its mirror."""

from __future__ import annotations

from geometry.drawing.heights import READ
from geometry.drawing.marks import Label
from geometry.drawing.room import words_width
from geometry.layout import Headstock, loop_path
from geometry.saying import say

TITLE = READ
"""Capital height of the words over the drawing, mm."""
OVER = 5.0
"""From the drawing to the words, mm."""


def face_titles(layout: Headstock) -> list[Label]:
    """Over the head seen from the face: the bass side is on the left."""
    x0, _, x1, y1 = loop_path(layout.outline).box
    return side_titles(x0, x1, y1, say("bass side"), say("seen from the face"), say("treble side"))


def side_titles(x0: float, x1: float, top: float, left: str, middle: str, right: str) -> list[Label]:
    """Three words over what lies between x0 and x1 and reaches up to `top` (mm).

    In one line, or where the head is narrow with the middle one, which stands on the centreline, above the others.
    """
    free = min(-x0 - words_width(left, TITLE), x1 - words_width(right, TITLE)) - TITLE
    higher = 0.0 if words_width(middle, TITLE) / 2 < free else 2 * TITLE
    return [Label(text, (x, top + OVER + up), TITLE, "note", anchor=anchor) for text, x, up, anchor in
            ((left, x0, 0.0, "left"), (middle, 0.0, higher, "middle"), (right, x1, 0.0, "right"))]
