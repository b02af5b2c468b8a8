"""A first layout from a few numbers: an outline of our own with tuners, slots, strings and pins in place."""

from geometry.beginning.begin import begin, mended
from geometry.beginning.numbers import FIELDS, Mount, Numbers, Refused

__all__ = ["FIELDS", "Mount", "Numbers", "Refused", "begin", "mended"]
