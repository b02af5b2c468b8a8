"""Strings from the nut to their posts: places at the nut, tangents, side and break angles, dives into slots, ramps."""

from geometry.strings.dive import Clearance, Dive
from geometry.strings.nut import nut_places
from geometry.strings.ramps import dives, freeing_ramp
from geometry.strings.runs import Run, break_angle, run_to, runs

__all__ = ["Clearance", "Dive", "Run", "break_angle", "dives", "freeing_ramp", "nut_places", "run_to", "runs"]
