"""Words that are keys in code and files, as the maker reads them.

A side is `treble` in every file whatever language is spoken; `term("treble")`
is what a sentence shows. In English a term is its key. A key that is not listed
here is shown as it is: names that the maker gave pass unharmed.
"""

from __future__ import annotations

from geometry.saying import say

ABOUT = "term"
"""What the catalogue says of each of these words."""

TERMS = frozenset({
    # sides and faces
    "face", "back", "bass", "treble", "bass edge", "treble edge", "nut", "tip", "nut line", "centreline", "outline",
    "tip end", "nut end", "seat",
    # walls and edges of a slot
    "rail", "inner wall",
    # several of one sort
    "post bores", "counterbores", "clearance bores", "screw holes", "pin holes",
    # kinds of features, and the pieces that are built
    "ears", "slots", "tuners", "pins", "holes", "patterns", "rows", "practice", "real",
    # what is drilled
    "hole", "bore", "side bore", "counterbore", "screw", "pin hole", "locating pin", "post bore", "clearance bore",
    "screw pilot", "locating pin hole",
})


def term(key: str) -> str:
    """The word that is shown for this key."""
    return say(key, about=ABOUT) if key in TERMS else key
