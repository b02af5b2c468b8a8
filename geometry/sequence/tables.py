"""Table settings of the drill press for side bores, shared where they can be."""

from __future__ import annotations

import math
from collections.abc import Iterable

from geometry.layout import Headstock
from geometry.sequence.operation import Table
from geometry.solids.drilling import Drilling
from geometry.solids.frames import frames
from geometry.solids.side import tilt_of

SAME_DEPTH = 1e-3
"""Fence settings nearer than this are one setting, mm."""


def side_tables(layout: Headstock, drillings: Iterable[Drilling], same_tilt: float) -> dict[str, Table]:
    """The table setting of each side drilling by its id.

    With the treble edge up the back lies against the fence. Turned over about the
    centreline the face does, tip and tilt stay as they are: so opposite bores of
    equal tilt share a setting when their axes stand equally far from the fence.
    Tilts within `same_tilt` degrees of the least of their group get the group's middle.
    """
    placed = frames(layout)
    thick = layout.blank.thickness
    wanted = []
    for d in drillings:
        frame = placed[d.of]
        wanted.append((tilt_of(frame), thick - d.start[2] if frame.side == "treble" else d.start[2], d.id))
    middle = _grouped([tilt for tilt, _, _ in wanted], math.radians(same_tilt))
    depth = _grouped([fence for _, fence, _ in wanted], SAME_DEPTH)
    return {id: Table(middle[tilt], depth[fence], layout.rack.press.base) for tilt, fence, id in wanted}


def _grouped(values: list[float], within: float) -> dict[float, float]:
    """Each value to the middle of its group; a group spans at most `within`."""
    out: dict[float, float] = {}
    group: list[float] = []
    for value in [*sorted(set(values)), math.inf]:
        if group and value - group[0] > within:
            out |= dict.fromkeys(group, (group[0] + group[-1]) / 2)
            group = []
        group.append(value)
    return out
