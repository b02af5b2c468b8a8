"""The one exception that geometry raises for input it cannot make sense of."""

from geometry.saying import say


class GeometryError(ValueError):
    """A shape or a number that has no meaning here.

    The message is one sentence for the maker: what is wrong, where, what to do.
    A judgement about the work (a thin rail, a hole too close) is never raised:
    it is a snag, returned as data. Where it lies in the file of a layout is told apart
    (`place`, as `$.blank.scarf`; "" where it lies in none): it helps whoever mends a file
    by hand, and nobody who types a number in the window.
    """

    def __init__(self, sentence: str, place: str = "") -> None:
        super().__init__(sentence)
        self.place = place


LONGEST_QUOTE = 40
"""Characters of what was typed that a sentence repeats."""


def quoted(text: str) -> str:
    """What was typed, in quotation marks on one line: cut short when it fills pages, `?` for what cannot be shown."""
    line = "".join(c if c.isprintable() else "?" for c in " ".join(text.split()))
    return say("“{title}”", title=line if len(line) <= LONGEST_QUOTE else line[:LONGEST_QUOTE] + "…")
