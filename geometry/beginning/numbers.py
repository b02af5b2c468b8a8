"""The few numbers that a layout may begin from, what they are called, and how a refusal names one of them."""

from __future__ import annotations

import math
from typing import Literal

from msgspec import Struct

from geometry.errors import GeometryError
from geometry.layout.blank import Side
from geometry.layout.strings import MOST_SLANT
from geometry.saying import say
from geometry.terms import term

Mount = Literal["face", "side", "mixed"]
MOUNTS: tuple[Mount, ...] = ("face", "side", "mixed")
LEAST_STRINGS, MOST_STRINGS = 4, 12
MOST_SCALE = 1500.0
MOST_ANGLE = 30
"""mm, and degrees by which a head may lean back to begin with"""

FIELDS = {
    "bass": say("tuners on the bass side"), "treble": say("tuners on the treble side"),
    "pitch": say("from tuner to tuner"), "length": say("length of the blank"), "width": say("width of the blank"),
    "thickness": say("thickness of the blank"), "nut_width": say("width of the nut"),
    "scale": say("scale length"), "scale_treble": say("scale length on the treble side"),
}
"""What a refusal can be about, and what the number is called."""


class Refused(GeometryError):
    """Numbers that make no headstock. `field` is a key of FIELDS, `value` what that number would have to be
    (mm, or a count)."""

    def __init__(self, field: str, value: float, sentence: str) -> None:
        super().__init__(sentence)
        self.field = field
        self.value = value


class Numbers(Struct, frozen=True):
    """What a maker knows before anything is drawn (mm).

    `bass` and `treble` count the tuners of each side, `pitch` is from one
    tuner to the next along an edge, whatever their mount. `mixed` alternates,
    the one nearest the nut through the face. `length` of the blank is measured
    from the nut line to the far end. `courses` sets the strings in pairs.
    `instrument` is a key of `instruments.INSTRUMENTS`, which strings the head and
    sets its nut up. `face` and `through` are the generic patterns of the tuners
    through the face and the side, "" for those that fit. `scale` is that of the
    bass side, `scale_treble` of the other where frets are fanned. `angle` leans
    the head back, `slant` turns the nut (degrees, as in `Nut`). `left_handed`
    mirrors the whole layout, the sides of these numbers with it.
    """

    bass: int = 3
    treble: int = 3
    bass_mount: Mount = "face"
    treble_mount: Mount = "face"
    pitch: float = 30.0
    length: float = 190.0
    width: float = 100.0
    thickness: float = 16.0
    nut_width: float = 43.0
    courses: bool = False
    instrument: str = "guitar"
    face: str = ""
    through: str = ""
    scale: float = 648.0
    scale_treble: float = 648.0
    angle: float = 13.0
    slant: float = 0.0
    left_handed: bool = False

    @property
    def strings(self) -> int:
        """How many strings, one a tuner."""
        return self.bass + self.treble

    def count(self, side: Side) -> int:
        """Tuners of a side."""
        return self.bass if side == "bass" else self.treble

    def mount(self, side: Side) -> Mount:
        """How the tuners of a side are mounted."""
        return self.bass_mount if side == "bass" else self.treble_mount

    def counted(self) -> None:
        """Refused when the counts make no head, or a length is no number above zero and below a metre."""
        for side in ("bass", "treble"):
            if self.count(side) < 0:
                raise Refused(side, 0, say("A side has no {count} tuners: give 0 or more.", count=self.count(side)))
            if self.mount(side) not in MOUNTS:
                raise GeometryError(say("A tuner is mounted through the face or the side, or the two are mixed; not {mount!r}.",
                                        mount=self.mount(side)))
        if not LEAST_STRINGS <= self.strings <= MOST_STRINGS:
            wanted = min(max(self.strings, LEAST_STRINGS), MOST_STRINGS)
            field = "bass" if self.bass >= self.treble else "treble"
            value = getattr(self, field) + wanted - self.strings
            if value < 0:
                raise GeometryError(say("There are {strings} strings: from {least} to {most} work.",
                                        strings=self.strings, least=LEAST_STRINGS, most=MOST_STRINGS))
            raise Refused(field, value, say("There are {strings} strings; from {least} to {most} "
                                            "work: give the {side} side {value}.",
                                            strings=self.strings, least=LEAST_STRINGS,
                                            most=MOST_STRINGS, side=term(field), value=value))
        if self.courses and self.strings % 2:
            field = "bass" if self.bass >= self.treble else "treble"
            raise Refused(field, getattr(self, field) + (1 if self.strings < MOST_STRINGS else -1),
                          say("{strings} strings cannot stand in pairs: give the {side} side one more.",
                              strings=self.strings, side=term(field)))
        for field in ("pitch", "length", "width", "thickness", "nut_width"):
            self._within(field, 1000)
        for field in ("scale", "scale_treble"):
            self._within(field, MOST_SCALE)
        for field, name, least, most in (("angle", say("pitch of the head"), 0, MOST_ANGLE), ("slant", say("slant of the nut"), -MOST_SLANT, MOST_SLANT)):
            if not least <= getattr(self, field) <= most:
                raise GeometryError(say("The number for {field!r} is not an angle from {least} to {most} degrees.",
                                        field=name, least=least, most=most))

    def _within(self, field: str, most: float) -> None:
        value = getattr(self, field)
        if not (math.isfinite(value) and 0 < value <= most):
            raise GeometryError(say("The number for {field!r} is not a length between 0 and {most:g} mm.", field=FIELDS[field], most=most))
