"""What is said of the two sides where the strings do not run as their names would have it."""

from __future__ import annotations

from app.sheets.lay import Block, paragraph
from geometry.layout import Headstock
from geometry.saying import say
from geometry.strings.hands import thick_on_treble


def side_words(layout: Headstock) -> str:
    """Which edge is which when the strings run left-handed; nothing otherwise."""
    if not thick_on_treble(layout.strings):
        return ""
    return say("Strings left-handed: the sides keep their names all the same. Seen on the face with the nut below, the left edge "
               "is called bass and the right one treble, and the thick strings run on the treble side.")


def side_blocks(layout: Headstock, width: float) -> list[Block]:
    """The same as a paragraph, none where nothing is to be said."""
    said = side_words(layout)
    return [paragraph(said, width, after=2.5)] if said else []
