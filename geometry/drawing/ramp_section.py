"""What an upright plane cuts out of ramps, and out of the flats under plates.

x runs along the section line, y is up: the face is y = 0, the back y = -thickness. Millimetres.
"""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.curves import Path
from geometry.curves.polygons import polygon
from geometry.drawing.section_cut import SectionLine
from geometry.drawing.shapes import chain, rectangle
from geometry.layout import Headstock, Slot, Tuner
from geometry.solids import frames
from geometry.solids.frames import Frame
from geometry.solids.ramps import ramp_cut
from geometry.vectors import Vec2

OUTSIDE = 3.0
"""How far a flat is taken to reach out of the wood, mm: more than any edge bellies over its plate."""


def ramp_sections(slot: Slot, line: SectionLine, thick: float, low: float = -math.inf, high: float = math.inf) -> list[Path]:
    """The slope of a slot's ramp where the line crosses it, between `low` and `high` along the line.

    Along the slot a wedge, across it a box as deep as the slope is there, never deeper than the wood or a blind
    slot's floor is. Empty for a slot without a ramp and where it is missed. GeometryError when the slot has no inside.
    """
    cut = ramp_cut(slot)
    if cut is None:
        return []
    floor = slot.floor(thick)
    found = []
    for a, b in line.spans(polygon(cut.path())):
        a, b = max(a, low), min(b, high)
        if b - a <= 1e-3:
            continue
        # The slope is linear along the line, so it bends only where it meets the floor.
        deep = [cut.slope * cut.along(v.along(line.origin, line.direction, at)) for at in (a, b)]
        points = [(a, 0.0), (a, -min(deep[0], floor)), (b, -min(deep[1], floor)), (b, 0.0)]
        if (deep[0] - floor) * (deep[1] - floor) < 0:
            points.insert(2, (a + (b - a) * (floor - deep[0]) / (deep[1] - deep[0]), -floor))
        shape = [p for i, p in enumerate(points) if v.distance(p, points[i - 1]) > 1e-9]
        if len(shape) > 2:
            found.append(chain(shape, closed=True))
    return found


def _flat_plan(frame: Frame, tuner: Tuner) -> Path:
    """What a flat takes off the edge in plan: from its bottom outwards, past the edge."""
    half, out = tuner.flat.size / 2, -(tuner.flat.depth + OUTSIDE)
    corners = [frame.at(u, 0.0, w)[:2] for u, w in ((-half, 0.0), (half, 0.0), (half, out), (-half, out))]
    return chain(corners, closed=True)


def _flat_heights(frame: Frame, tuner: Tuner, u: float, thick: float) -> tuple[float, float] | None:
    """(from, to) below the face that a flat takes `u` mm along the edge from its middle; None past its end."""
    half = tuner.flat.size / 2
    if abs(u) >= half:
        return None
    if tuner.flat.shape == "flat":
        return 0.0, thick
    reach = math.sqrt(half * half - u * u)
    return max(0.0, frame.origin[2] - reach), min(thick, frame.origin[2] + reach)


def flat_sections(layout: Headstock, line: SectionLine, done: set[str] | None = None) -> list[tuple[str, Path]]:
    """(tuner, shape) of every flat that the line crosses; `done` names the tuners whose flats are cut, None all.

    A round spot is taken as high as it is in the middle of the stretch that the line crosses.
    GeometryError when the outline has no edges.
    """
    wanted = _flattened(layout, done)
    placed = frames(layout) if wanted else {}
    found = []
    for tuner in wanted:
        frame = placed[tuner.id]
        for a, b in line.spans(polygon(_flat_plan(frame, tuner))):
            middle = v.along(line.origin, line.direction, (a + b) / 2)
            heights = _flat_heights(frame, tuner, _u(frame, middle), layout.blank.thickness)
            if heights is not None:
                found.append((tuner.id, rectangle(a, -heights[1], b, -heights[0])))
    return found


def _flattened(layout: Headstock, done: set[str] | None) -> list[Tuner]:
    return [tuner for tuner in layout.tuners if tuner.flat is not None and (done is None or tuner.id in done)
            and layout.pattern(tuner.pattern).mount == "side"]


def flat_plans(layout: Headstock, done: set[str]) -> list[tuple[str, Path]]:
    """(tuner, plan) of the flats of some tuners. GeometryError when the outline has no edges."""
    wanted = _flattened(layout, done)
    placed = frames(layout) if wanted else {}
    return [(tuner.id, _flat_plan(placed[tuner.id], tuner)) for tuner in wanted]


def _u(frame: Frame, p: Vec2) -> float:
    return v.dot(v.sub(p, frame.origin[:2]), frame.u[:2])
