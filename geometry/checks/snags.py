"""What the checker hands back: snags, counts and holes, as plain data."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from msgspec import Struct

from geometry.checks.moves import Move
from geometry.checks.said import read
from geometry.solids.drilling import Hole
from geometry.tolerance import TOUCH
from geometry.units import LengthUnit
from geometry.vectors import Vec2, Vec3

Grade = Literal["spoils the work", "tight", "note"]
SPOILS: Grade = "spoils the work"
TIGHT: Grade = "tight"
NOTE: Grade = "note"
GRADES: tuple[Grade, ...] = (SPOILS, TIGHT, NOTE)
_RANKS = {grade: rank for rank, grade in enumerate(GRADES)}

BLANK, NUT, TEMPLATE = "blank", "nut line", "template"
FACE, BACK = "face", "back"
"""Names that stand in `Snag.between`, beside OUTLINE, for what is no feature with an id of its own."""


class Snag(Struct, frozen=True):
    """Something the checker found.

    `kind` is a key of KINDS. `between` holds the ids of the features concerned
    (once, when both sides belong to one) or one of the names above. `where` is a
    point of space in mm to look at. `measured` and `needed` are in `unit` (mm,
    deg or mm2), None when the finding is no number; measured is negative where
    wood is gone.

    `said` is the sentence, `advice` what to do about it where no single move
    does (see words.py for both). `push` is where the first of `between` would
    have to go in plan to get clear by the nearest way, mm, where the check knows.
    `cured` and `move` come from geometry.cures: None while nobody has looked
    for a cure; then the sentence, and the move that was tried and does it, if any does.
    `alone`: the twins of what it moves stay, with Mirrored on too.
    """

    kind: str
    grade: Grade
    between: tuple[str, ...]
    where: Vec3
    measured: float | None
    needed: float | None
    said: str
    advice: str
    unit: str = "mm"
    push: Vec2 | None = None
    cured: str | None = None
    move: Move | None = None
    alone: bool = False

    @property
    def text(self) -> str:
        """The sentence, lengths in mm."""
        return read(self.said)

    @property
    def cure(self) -> str:
        """What to do about it, lengths in mm; see cure_in."""
        return self.cure_in("mm")

    def text_in(self, unit: LengthUnit) -> str:
        """The sentence in the maker's unit."""
        return read(self.said, unit)

    def cure_in(self, unit: LengthUnit) -> str:
        """What to do about it in the maker's unit: the cure that was settled, else the advice."""
        return read(self.advice if self.cured is None else self.cured, unit)

    @property
    def has_place(self) -> bool:
        """Whether there is something to see at `where`: not for a note about the template as a whole."""
        return self.grade != NOTE or self.between != (TEMPLATE,)

    @property
    def lacks(self) -> float:
        """How much is missing (or too much), in `unit`; 0 when the finding is no number."""
        return 0.0 if self.measured is None or self.needed is None else abs(self.needed - self.measured)


class Counts(Struct, frozen=True):
    """What has to be drilled. `holes` counts an axis once and leaves locating pins out; `drilling` counts each trip."""

    holes: int
    counterbores: int
    drilling: int
    pins: int


class CheckResult(Struct, frozen=True):
    """All snags, worst first in a stable order, and every hole of the layout."""

    snags: tuple[Snag, ...]
    holes: tuple[Hole, ...]
    counts: Counts

    @property
    def spoils(self) -> bool:
        """Whether any snag spoils the work."""
        return any(snag.grade == SPOILS for snag in self.snags)


def short(measured: float, needed: float) -> bool:
    """Whether a measure stays under what is needed; touching the margin exactly passes (1e-6 mm)."""
    return measured < needed - TOUCH


def grade(measured: float) -> Grade:
    """Grade of a clearance that is under its margin: wood gone spoils the work, less wood than wanted is tight."""
    return SPOILS if measured < -TOUCH else TIGHT


def in_order(snags: Iterable[Snag]) -> tuple[Snag, ...]:
    """Worst first: by grade, then by how much is missing, then by kind, features and place."""
    snags = tuple(snags)
    keys = [_key(snag) for snag in snags]
    if len(set(keys)) < len(keys):
        # Only then the place and the words are looked at.
        keys = [(*key, tuple([round(c, 6) for c in snag.where]), snag.said) for key, snag in zip(keys, snags, strict=True)]
    return tuple([snags[i] for i in sorted(range(len(snags)), key=keys.__getitem__)])


def _key(snag: Snag) -> tuple:
    missing = snag.needed - snag.measured if snag.unit == "mm" and snag.needed is not None and snag.measured is not None else 0.0
    return _RANKS[snag.grade], -round(missing, 6), snag.kind, snag.between


def count(holes: tuple[Hole, ...]) -> Counts:
    """The counts of some holes; those that are there already are no work and do not count."""
    roles = [[drilling.role for drilling in hole.drillings] for hole in holes if not hole.drillings[0].there]
    real = [own for own in roles if own[0] != "locating"]
    return Counts(len(real), sum([own.count("counterbore") for own in real]), sum(map(len, real)), len(roles) - len(real))


def summed(counts: Iterable[Counts]) -> Counts:
    """All of some counts together."""
    rows = [(one.holes, one.counterbores, one.drilling, one.pins) for one in counts]
    return Counts(*map(sum, zip(*rows, strict=True))) if rows else Counts(0, 0, 0, 0)
