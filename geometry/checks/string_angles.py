"""Strings that bend sideways at the nut."""

from __future__ import annotations

import math
from collections.abc import Iterable

from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, NUT, Snag
from geometry.checks.string_runs import scene_runs

TOLERABLE = 10.0
"""degrees at the nut: up to 6 is good, up to 10 tolerable (common practice, no source)"""


def snags(scene: Scene) -> Iterable[Snag]:
    """A note for every string whose side angle at the nut is more than tolerable."""
    for run, _ in scene_runs(scene):
        angle = abs(math.degrees(run.side_angle))
        if angle > TOLERABLE + 1e-9:
            yield Snag("side-angle", NOTE, (run.tuner, NUT), (*run.nut, 0.0), angle, TOLERABLE,
                       f"String {run.string} leaves the nut {angle:.1f} degrees sideways to {run.tuner}; "
                       f"up to {TOLERABLE:g} is tolerable.",
                       f"Give {run.tuner} a string nearer its side, or move it farther from the nut.", "deg")
