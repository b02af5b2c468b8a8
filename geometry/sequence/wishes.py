"""How this maker likes to work: choices that the layout does not hold."""

from __future__ import annotations

from msgspec import Struct

from geometry.units import LengthUnit


class Wishes(Struct, frozen=True):
    """Defaults are common practice, no source.

    `pilots_from_square_edge`: screw pilots of side tuners are drilled through the
    waste at the tilt of their post bore, instead of by hand through the plate
    once the seat exists. `finish`: the head is lacquered or oiled, and the bores
    of plated parts are brought to their final diameter afterwards.
    `same_tilt`: side bores whose tilts lie within so many degrees share a setting.
    """

    pilots_from_square_edge: bool = False
    finish: bool = False
    same_tilt: float = 0.05
    unit: LengthUnit = "mm"
