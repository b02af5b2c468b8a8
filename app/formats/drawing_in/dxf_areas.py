"""The edges of a filled area of a DXF, as the lines that another hand would have drawn round it."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ezdxf.entities import Arc, DXFEntity, Ellipse, Hatch, Line, LWPolyline, MPolygon, Spline
from ezdxf.entities.boundary_paths import ArcEdge, EllipseEdge, LineEdge, PolylinePath, SplineEdge
from ezdxf.math import OCS, Matrix44, Vec3

KINDS = ("HATCH", "MPOLYGON")


def corners(area: Hatch | MPolygon) -> int:
    """How many points its edges have at the least."""
    return sum(len(path.vertices) if isinstance(path, PolylinePath) else 2 * len(path.edges) for path in area.paths)


def plane_of(area: Hatch | MPolygon) -> Matrix44:
    """The map of the plane in which its edges lie onto the space that it lies in."""
    own = OCS(area.dxf.get("extrusion", Vec3(0, 0, 1)))
    return Matrix44.translate(0, 0, area.dxf.get("elevation", Vec3()).z) * Matrix44.ucs(own.ux, own.uy, own.uz)


def edges_of(area: Hatch | MPolygon) -> Iterator[DXFEntity]:
    """Its edges in that plane; what the format may make of damaged numbers when they are asked for is raised."""
    for path in area.paths:
        if isinstance(path, PolylinePath):
            ring = LWPolyline.new()
            ring.append_points(path.vertices, format="xyb")
            ring.closed = True
            yield ring
            continue
        for edge in path.edges:
            if isinstance(edge, LineEdge):
                yield Line.new(dxfattribs={"start": edge.start, "end": edge.end})
            elif isinstance(edge, ArcEdge):
                yield Arc.new(dxfattribs={"center": edge.center, "radius": edge.radius, "start_angle": edge.start_angle, "end_angle": edge.end_angle})
            elif isinstance(edge, EllipseEdge):
                whole = abs(edge.end_angle - edge.start_angle) >= 360 - 1e-9
                yield Ellipse.new(dxfattribs={
                    "center": edge.center, "major_axis": edge.major_axis, "ratio": edge.ratio, "start_param": 0.0 if whole else edge.start_param,
                    "end_param": math.tau if whole else edge.end_param})
            elif isinstance(edge, SplineEdge):
                curve = Spline.new(dxfattribs={"degree": edge.degree})
                curve.control_points, curve.knots, curve.weights, curve.fit_points = edge.control_points, edge.knot_values, edge.weights, edge.fit_points
                yield curve
