"""A drawing with every kind of mark and segment, small enough to know by heart."""

import math

from geometry.curves import Arc, Cubic, Line, Path, circle
from geometry.drawing import Area, Cross, Disc, Label, Stroke
from geometry.drawing.shapes import rectangle, straight

OUTLINE = Path((
    Line((-20.0, 0.0), (20.0, 0.0)),
    Arc.bulging((20.0, 0.0), (20.0, 30.0), 0.5),
    Cubic((20.0, 30.0), (10.0, 45.0), (-10.0, 45.0), (-20.0, 30.0)),
    Arc.bulging((-20.0, 30.0), (-20.0, 0.0), -0.25),
), closed=True)
"""A line, an arc turning left, a cubic, an arc turning right."""

DRAWING = (
    Stroke(OUTLINE, "outline", "outline"),
    Area(rectangle(-8.0, 5.0, 8.0, 25.0), "wood", "x", (circle((0.0, 15.0), 4.0),)),
    Disc((-10.0, 20.0), 3.25, "post bore", "t"),
    Disc((10.0, 20.0), 0.8, "screw pilot", "t", hidden=True),
    Cross((-10.0, 20.0), 4.25, "cross", "t"),
    Stroke(straight((0.0, -5.0), (0.0, 50.0)), "centreline"),
    Stroke(Path((Arc.about((0.0, 60.0), 5.0, 0.3, 1.7 * math.pi),)), "axis"),
    Label("bass & <treble> 6.4°", (0.0, -9.0), 2.0, "note", anchor="middle"),
    Label("up", (30.0, 10.0), 2.0, "note", angle=math.pi / 2),
)
