"""What the maker made of each loop of a drawing, kept while the drawing is read again with another unit or other gaps."""

from __future__ import annotations

from collections import Counter

from app.formats.drawing_in import DrawingRead, Loop
from app.formats.drawing_in.roles import is_upright
from geometry.edits.imported_openings import there_again
from geometry.joining.placing import place
from geometry.layout import Headstock, Nut
from geometry.saying import say
from geometry.terms import HOLE_THERE, POCKET, term

ROLES = ("outline", "slot", POCKET, "hole", HOLE_THERE, "other")
MOST_KNOWN = 200
"""Loops, the largest, among which what is there already is looked for."""
AS_SLANTED = 0.1
"""Degrees between the slant of a nut and that of an edge that was drawn for it"""
ALIKE = 0.01
"""mm between the sides of loops that are of one size, as the same block drawn twice has them"""
ROLE_WORDS = {role: say("leave out") if role == "other" else term(role) for role in ROLES}


class Roles:
    """Roles chosen by hand, by where a loop lies in the drawing's own numbers: those stay whatever the unit is."""

    def __init__(self, read: DrawingRead) -> None:
        self._chosen: dict[tuple, str] = {}
        self.of: list[str] = []
        """the role of each loop of the drawing as it was read last"""
        self.take(read)

    def take(self, read: DrawingRead) -> None:
        """The drawing has been read again: a loop that is there as before keeps the role that was chosen for it."""
        self._names = _names(read)
        self._loops, self._nut, self._up, self._upright = read.loops, read.nut, read.up, is_upright(read)
        self.of = [self._chosen.get(name, loop.role) for name, loop in zip(self._names, read.loops, strict=True)]

    def know(self, layout: Headstock) -> None:
        """Of loops that are where the layout that is open has a pocket or a hole that is there: they are these, until the maker says otherwise."""
        loops = [(loop.path, role) for loop, role in zip(self._loops[:MOST_KNOWN], self.of, strict=False)]
        outline = next((path for path, role in loops if role == "outline"), None)
        if outline is not None:
            found = place(outline, slanted=self.slanted_as(layout.nut), nut=self._nut, up=self._up)
            for number, role in there_again(loops, found.matrix, layout).items():
                self._set(number, role)

    def slanted_as(self, nut: Nut) -> bool:
        """Whether the outline ends in an edge that is slanted as a nut is, as in a drawing that was made for it, or is drawn with its slant."""
        outline = next((loop.path for loop, role in zip(self._loops, self.of, strict=True) if role == "outline"), None)
        askew = place(outline, nut=self._nut, up=self._up).askew if outline is not None and (nut.slant or self._upright) else 0.0
        return askew != 0 and (self._upright or abs(askew - nut.slant) <= AS_SLANTED)

    def outline_of(self, read: DrawingRead) -> int | None:
        """Which loop of a drawing read again is the outline, where the maker has chosen another than the largest."""
        names = _names(read)
        return next((i for i, name in enumerate(names) if self._chosen.get(name) == "outline" and read.loops[i].role != "outline"), None)

    def alike(self, number: int) -> list[int]:
        """The other loops on the layer of one that are of its size, lying or upright; the outline is like none."""
        own = _size(self._loops[number])
        return [i for i, loop in enumerate(self._loops)
                if i != number and self.of[i] != "outline" and loop.layer == self._loops[number].layer
                and all(abs(a - b) <= ALIKE for a, b in zip(_size(loop), own, strict=True))]

    def choose(self, number: int, role: str) -> None:
        """The maker says what a loop becomes; one loop alone is the outline, and what was it before is left out."""
        if role == "outline":
            for i, other in enumerate(self.of):
                if other == "outline" and i != number:
                    self.of[i] = "other"
                    self._chosen.pop(self._names[i], None)
        self._set(number, role)

    def _set(self, number: int, role: str) -> None:
        self.of[number] = self._chosen[self._names[number]] = role


def _size(loop: Loop) -> list[float]:
    x0, y0, x1, y1 = loop.path.box
    return sorted((x1 - x0, y1 - y0))


def _names(read: DrawingRead) -> list[tuple]:
    """Of each loop: its layer, its place in the drawing's own numbers, and which of those drawn there it is."""
    seen: Counter[tuple] = Counter()
    names = []
    for loop in read.loops:
        place = (loop.layer, *(round(side / read.unit_mm, 6) for side in loop.path.box))
        names.append((*place, seen[place]))  # the same line may be drawn twice
        seen[place] += 1
    return names
