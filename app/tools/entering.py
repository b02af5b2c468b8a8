"""What is typed while a gesture runs: one value after another, Tab leads to the next."""

from __future__ import annotations

import re

from app.tools.pointer import Takes

WHOLE = r"(?i)[;°]|, |deg|\b(?!inch(?:es)?\b|zoll\b)[A-Za-zÄÖÜäöüß]{3,}"
"""What only a text that says all by itself has in it: several values, an angle, or words."""


class Entering:
    """The values typed so far for a gesture that takes `takes` (word and label of each), in their order."""

    def __init__(self) -> None:
        self._texts: list[str] = [""]
        self._at = 0

    def __bool__(self) -> bool:
        return any(self._texts) or self._at > 0

    @property
    def open(self) -> str:
        """The text that is being typed into."""
        return self._texts[self._at]

    def add(self, text: str) -> None:
        """Go on typing."""
        self._texts[self._at] += text

    def back(self) -> None:
        """Take the last character back, and from an empty value the step to it."""
        if self._texts[self._at]:
            self._texts[self._at] = self._texts[self._at][:-1]
        elif self._at:
            self._at -= 1

    def next(self, takes: tuple[Takes, ...], step: int = 1) -> bool:
        """Go on to the next value (back with -1), round again at the end; False when the gesture takes fewer than two."""
        if len(takes) < 2:
            return False
        self._at = (self._at + step) % len(takes)
        self._texts += [""] * (len(takes) - len(self._texts))
        return True

    def composed(self, takes: tuple[Takes, ...]) -> str:
        """The whole as one text of words and values, as `typed.named` reads it; a text that says all stays as it is."""
        given = [(i, text.strip()) for i, text in enumerate(self._texts) if text.strip()]
        if not given:
            return ""
        if not takes or (len(given) == 1 and re.search(WHOLE, given[0][1])):
            return given[0][1]
        return " ".join(f"{takes[i][0]} {text}" for i, text in given if i < len(takes))

    def shown(self, takes: tuple[Takes, ...]) -> tuple[tuple[str, str, bool], ...]:
        """(label, text, whether it is being typed into) of each value that can be given."""
        if not takes or re.search(WHOLE, self.open):
            return (("", self.open, True),)
        return tuple((label, self._texts[i] if i < len(self._texts) else "", i == self._at)
                     for i, (_, label) in enumerate(takes))
