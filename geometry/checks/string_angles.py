"""Strings that bend sideways at the nut."""

from __future__ import annotations

import math
from collections.abc import Iterable

from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, NUT, Snag
from geometry.saying import say

TOLERABLE = 10.0
"""degrees at the nut: up to 6 is good, up to 10 tolerable (common practice, no source)"""
_TOLERABLE = math.radians(TOLERABLE + 1e-9)


def snags(scene: Scene) -> Iterable[Snag]:
    """A note for every string whose side angle at the nut is more than tolerable."""
    for run, _ in scene.runs:
        if abs(run.side_angle) > _TOLERABLE:
            angle = abs(math.degrees(run.side_angle))
            yield Snag("side-angle", NOTE, (run.tuner, NUT), (*run.nut, 0.0), angle, TOLERABLE,
                       say("String {string} leaves the nut {angle:.1f} degrees sideways to {tuner}; up to "
                           "{tolerable:g} is tolerable.",
                           string=run.string, angle=angle, tuner=run.tuner, tolerable=TOLERABLE),
                       say("Give {tuner} a string nearer its side, or move it farther from the nut.",
                           tuner=run.tuner), "deg")
