"""How hard a string pulls, and how hard it presses on the nut.

T = mu (2 L f)^2 (Mersenne); pitches by equal temperament about A4 = 440 Hz
(ISO 16); a string bent by an angle presses with 2 T sin(angle / 2), friction left out.
"""

from __future__ import annotations

import math
import re

from geometry.layout.strings import Nut, String

STEEL = 7850.0
"""kg/m3: carbon steel, from memory of handbooks; music wire is listed at 7800"""
BRONZE = 8800.0
"""kg/m3: phosphor bronze, from memory of handbooks"""
_STEPS = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}
_NOTE = re.compile(r"^\s*([A-Ga-g])([#b♯♭]?)(-?\d)\s*$")


def frequency(note: str) -> float | None:
    """Hz of a note like E2, F#3 or Bb1; None for anything else."""
    found = _NOTE.match(note)
    if found is None:
        return None
    sharp = {"#": 1, "♯": 1, "b": -1, "♭": -1, "": 0}[found[2]]
    midi = 12 * (int(found[3]) + 1) + _STEPS[found[1].upper()] + sharp
    return 440.0 * 2.0 ** ((midi - 69) / 12)


def unit_mass(string: String) -> float:
    """kg/m. Plain: a steel wire. Wound: a steel core in one layer of round bronze wire, turn to turn.

    A layer of touching round turns fills pi / 4 of the ring that it takes. A core that is
    no thinner than the string counts as plain.
    """
    d, core = string.diameter / 1000, (string.core or string.diameter) / 1000
    core = min(core, d)
    return math.pi / 4 * (STEEL * core * core + BRONZE * math.pi / 4 * (d * d - core * core))


def tension(string: String, nut: Nut) -> float | None:
    """Newtons of a string at pitch; None while its note says no pitch."""
    hertz = frequency(string.note)
    if hertz is None:
        return None
    return unit_mass(string) * (2 * (string.scale_length or nut.scale_length) / 1000 * hertz) ** 2


def bend_force(pull: float, angle: float) -> float:
    """Newtons with which a string that pulls `pull` presses where it bends by `angle` (rad, either sign)."""
    return 2 * pull * math.sin(abs(angle) / 2)
