"""Where the outline runs against the grain, as marks beside the finished edge."""

from __future__ import annotations

from geometry import vectors as v
from geometry.drawing.marks import Drawing, Label, Mark, Stroke
from geometry.layout import Headstock
from geometry.routing.grain import GrainRisk, grain_risks
from geometry.routing.passes import Side
from geometry.terms import term

LETTER = 1.6
"""Capital height of the words, mm."""
BESIDE = 3.0
"""From the edge to the words, mm."""


def grain_marks(layout: Headstock, side: Side = "face") -> Drawing:
    """A heavy line along each stretch and its name outside it, for the side that is up.

    Drawn on the face as the layout is, whichever side is up. GeometryError when the outline has no edges.
    """
    return tuple(mark for risk in grain_risks(layout, side) for mark in _marks(risk))


def _marks(risk: GrainRisk) -> list[Mark]:
    middle = risk.path.length / 2
    at, tangent = risk.path.point_at(middle), risk.path.tangent_at(middle)
    out = v.right(tangent)
    anchor = "middle" if abs(out[0]) < 0.4 else ("left" if out[0] > 0 else "right")
    drop = LETTER / 2 if abs(out[0]) >= 0.4 or out[1] < 0 else 0.0
    x, y = v.along(at, out, BESIDE)
    return [Stroke(risk.path, "grain risk", "outline"), Label(term(risk.kind), (x, y - drop), LETTER, "note", "outline",
                                                             anchor=anchor)]
