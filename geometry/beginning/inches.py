"""A beginning in inches: usual numbers, hardware and rack in fractions, with the same layout around them."""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry.beginning.begin import begin
from geometry.beginning.numbers import Numbers
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.generic import PATTERNS, RACK
from geometry.layout.generic_inch import PATTERNS_INCH, RACK_INCH, inch
from geometry.units import usual_pin

TEMPLATE_BIT, BOARD = "1/2 in shank bearing", inch("1/4")
"""Of the starting rack, and the thickness of a template's board: at 5/8 one pass goes through with enough bearing on it."""
EIGHTH, SIXTEENTH = inch("1/8"), inch("1/16")
LENGTHS = ("pitch", "nut_width", "scale", "scale_treble", "thickness", "length", "width")


def in_fractions(numbers: Numbers) -> Numbers:
    """The numbers with every length in the nearest sixteenth, the blank up to the next half inch in length and width."""
    def nearest(key: str) -> float:
        size = getattr(numbers, key)
        return math.ceil(size / (8 * SIXTEENTH) - 1e-9) * 8 if key in ("length", "width") else round(size / SIXTEENTH)
    return replace(numbers, **{key: round(nearest(key) * SIXTEENTH, 6) for key in LENGTHS})


def with_inch_hardware(layout: Headstock) -> Headstock:
    """The layout with the generic patterns in fractional sizes in the place of those in mm, and pins of 1/4; others stay.

    Tuners and pins keep their places. The starting rack in mm becomes that in inches, with a bit and
    a board for the template. A layout that has these patterns already comes back equal.
    """
    inches = {old.id: new for old, new in zip(PATTERNS, PATTERNS_INCH, strict=True) if old in layout.patterns}
    names = {old: new.id for old, new in inches.items()}
    pins = tuple(replace(pin, diameter=usual_pin("in")) if pin.diameter == usual_pin("mm") else pin for pin in layout.pins)
    if layout.rack == RACK:
        layout = replace(layout, rack=RACK_INCH, template=replace(layout.template, bit=TEMPLATE_BIT, bush=None, thickness=BOARD))
    return replace(layout, patterns=tuple(inches.get(pattern.id, pattern) for pattern in layout.patterns), pins=pins,
                   tuners=tuple(replace(tuner, pattern=names.get(tuner.pattern, tuner.pattern)) for tuner in layout.tuners))


def with_inch_blank(layout: Headstock) -> Headstock:
    """The layout with a blank that was made to fit in whole eighths, never smaller, and the nearest sixteenth of thickness."""
    def more(size: float) -> float:
        return round(math.ceil(size / EIGHTH - 1e-9) * EIGHTH, 6)
    blank = layout.blank
    return replace(layout, blank=replace(
        blank, bass=more(blank.bass), treble=more(blank.treble), tip=more(blank.tip), behind=more(blank.behind),
        thickness=round(round(blank.thickness / SIXTEENTH) * SIXTEENTH, 6)))


def in_sixteenths(asked: Numbers, cure: Numbers) -> Numbers:
    """A cure with each length that it changes taken on to the next sixteenth; the cure itself where that makes no layout."""
    lengths = {key: (getattr(asked, key), getattr(cure, key)) for key in LENGTHS}
    on = {key: round((math.ceil if new > old else math.floor)(new / SIXTEENTH) * SIXTEENTH, 6)
          for key, (old, new) in lengths.items() if new != old}
    try:
        begin(replace(cure, **on))
    except GeometryError:
        return cure
    return replace(cure, **on)
