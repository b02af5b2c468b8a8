"""Strings from the nut to their posts: places at the nut, tangents, side and break angles."""

from geometry.strings.nut import nut_places
from geometry.strings.runs import Run, break_angle, runs

__all__ = ["Run", "break_angle", "nut_places", "runs"]
