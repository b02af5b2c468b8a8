"""One DXF entity as exact segments, seen from above (its z dropped) in the drawing's units.

Arcs and bulges live in the entity's own plane; the map of that plane onto the
drawing, mirrored extrusion and nested blocks included, is one affine map, so
a round shape stays an arc wherever the map keeps it round.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from ezdxf.entities import DXFEntity
from ezdxf.math import OCS, Matrix44, Vec3, fit_points_to_cad_cv, open_uniform_knot_vector, uniform_knot_vector

from app.formats.drawing_in.splines import spline_segments
from geometry.curves import Arc, Line, Matrix, Path, Segment, circle
from geometry.curves.path import mapped_segments
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.vectors import Vec2

Shape = tuple[list[Segment], bool]
"""Segments end to end, and whether they are closed."""

READABLE = frozenset({"LINE", "ARC", "CIRCLE", "ELLIPSE", "LWPOLYLINE", "POLYLINE", "SPLINE", "HELIX"})


def shape_of(entity: DXFEntity, to_world: Matrix44) -> Shape:
    """The segments of an entity of a READABLE type under `to_world`.

    No segments for what has no length from above. Raises GeometryError when
    the numbers make no curve.
    """
    kind = entity.dxftype()
    if kind == "LINE":
        return [Line(*_flat(to_world, (entity.dxf.start, entity.dxf.end)))], False
    if kind in ("SPLINE", "HELIX"):
        return _spline(entity, to_world)
    if kind == "ELLIPSE":
        return _ellipse(entity, to_world)
    if kind == "POLYLINE" and entity.is_3d_polyline:
        return _chain(_flat(to_world, [x.dxf.location for x in _vertices(entity)]), bool(entity.is_closed))
    return _in_plane(entity, to_world)


def width_of(entity: DXFEntity) -> float:
    """How wide a flat polyline is drawn, where it is widest, in the drawing's units; 0 for all else."""
    kind = entity.dxftype()
    if kind == "LWPOLYLINE":
        each = [float(width) for widths in entity.get_points("se") for width in widths]
        return max([entity.dxf.get("const_width", 0.0), *each])
    if kind == "POLYLINE" and entity.is_2d_polyline:
        each = [vertex.dxf.get(end, 0.0) for vertex in entity.vertices for end in ("start_width", "end_width")]
        return max([*each, *(entity.dxf.get(end, 0.0) for end in ("default_start_width", "default_end_width"))])
    return 0.0


def _is_ring(segments: Sequence[Segment]) -> bool:
    """Whether two arcs about one middle make a circle, as far as they are closed."""
    return len(segments) == 2 and all(isinstance(s, Arc) for s in segments) and math.isclose(segments[0].radius, segments[1].radius, rel_tol=1e-6) \
        and math.dist(segments[0].centre, segments[1].centre) <= 1e-6 * segments[0].radius


def tilted(entity: DXFEntity, to_world: Matrix44) -> bool:
    """Whether the plane of a flat entity is not parallel to the drawing's."""
    if not entity.dxf.is_supported("extrusion") or entity.dxftype() in ("LINE", "SPLINE", "HELIX"):
        return False
    ocs = OCS(entity.dxf.get("extrusion", Vec3(0, 0, 1)))
    across = to_world.transform_direction(ocs.ux).cross(to_world.transform_direction(ocs.uy))
    return across.magnitude == 0 or math.hypot(across.x, across.y) > 1e-6 * across.magnitude


def _flat(to_world: Matrix44, points: Sequence[Vec3]) -> list[Vec2]:
    return [(p.x, p.y) for p in to_world.transform_vertices(points)]


def _in_plane(entity: DXFEntity, to_world: Matrix44) -> Shape:
    """ARC, CIRCLE and flat polylines: drawn in their own plane, then mapped as a whole."""
    kind = entity.dxftype()
    if kind in ("ARC", "CIRCLE"):
        centre = entity.dxf.center
        height = centre.z
        segments, closed = _round(entity, (centre.x, centre.y))
    else:
        points, height = _flat_polyline(entity)
        segments, closed = _bulged(points, bool(entity.is_closed)), bool(entity.is_closed)
        if closed and _is_ring(segments) and width_of(entity) >= 2 * segments[0].radius * (1 - 1e-6):
            segments = list(circle(segments[0].centre, segments[0].radius + width_of(entity) / 2))  # a filled disc: its edge is meant
    if not segments:
        return [], False
    ocs = OCS(entity.dxf.get("extrusion", Vec3(0, 0, 1)))
    origin = to_world.transform(ocs.to_wcs(Vec3(0, 0, height)))
    x, y = to_world.transform_direction(ocs.ux), to_world.transform_direction(ocs.uy)
    plane = Matrix(x.x, x.y, y.x, y.y, origin.x, origin.y)
    if abs(plane.determinant) <= 1e-9 * x.magnitude * y.magnitude:
        return [], False
    return mapped_segments(segments, plane), closed


def _round(entity: DXFEntity, centre: Vec2) -> Shape:
    radius = abs(entity.dxf.radius)
    if radius == 0:
        return [], False
    if entity.dxftype() == "CIRCLE":
        return list(circle(centre, radius)), True
    start, end = entity.dxf.start_angle, entity.dxf.end_angle
    sweep = (end - start) % 360.0
    if sweep == 0 and start != end:
        return list(circle(centre, radius)), True
    if sweep == 0:
        return [], False
    return [Arc.about(centre, radius, math.radians(start), math.radians(sweep))], False


def _flat_polyline(entity: DXFEntity) -> tuple[list[tuple[float, float, float]], float]:
    """(x, y, bulge) of each vertex in the polyline's plane, and the plane's height."""
    if entity.dxftype() == "LWPOLYLINE":
        return [(float(x), float(y), float(b)) for x, y, b in entity.get_points("xyb")], entity.dxf.elevation
    vertices = _vertices(entity)
    if entity.dxf.hasattr("elevation"):
        height = entity.dxf.elevation.z
    else:
        height = vertices[0].dxf.location.z if vertices else 0.0
    return [(x.dxf.location.x, x.dxf.location.y, x.dxf.get("bulge", 0.0)) for x in vertices], height


def _vertices(entity: DXFEntity) -> list[DXFEntity]:
    """The vertices that lie on the line: control points kept for editing are left out."""
    return [x for x in entity.vertices if not x.dxf.flags & 16]


def _bulged(points: Sequence[tuple[float, float, float]], closed: bool) -> list[Segment]:
    segments: list[Segment] = []
    following = [*points[1:], points[0]] if closed and points else points[1:]
    for (x0, y0, bulge), (x1, y1, _) in zip(points, following, strict=False):
        p, q = (x0, y0), (x1, y1)
        if math.hypot(x1 - x0, y1 - y0) == 0:
            continue
        segments.append(Arc.bulging(p, q, bulge) if abs(bulge) > 1e-9 else Line(p, q))
    return segments


def _chain(points: Sequence[Vec2], closed: bool) -> Shape:
    return _bulged([(x, y, 0.0) for x, y in points], closed), closed


def _ellipse(entity: DXFEntity, to_world: Matrix44) -> Shape:
    dxf = entity.dxf
    major = dxf.major_axis
    minor = dxf.get("extrusion", Vec3(0, 0, 1)).normalize().cross(major) * dxf.ratio
    centre = to_world.transform(dxf.center)
    a, b = to_world.transform_direction(major), to_world.transform_direction(minor)
    plane = Matrix(a.x, a.y, b.x, b.y, centre.x, centre.y)
    if abs(plane.determinant) <= 1e-12 * a.magnitude * a.magnitude:
        return [], False
    start, end = dxf.get("start_param", 0.0), dxf.get("end_param", math.tau)
    sweep = (end - start) % math.tau
    if min(sweep, math.tau - sweep) < 1e-9:
        if start == end:
            return [], False
        return mapped_segments(circle((0.0, 0.0), 1.0), plane), True
    return mapped_segments([Arc.about((0.0, 0.0), 1.0, start, sweep)], plane), False


def _spline(entity: DXFEntity, to_world: Matrix44) -> Shape:
    """A spline by its control points; by its fit points only when it has no others."""
    points = list(entity.control_points)
    if len(points) == 0:
        return _through_fit_points(entity, to_world)
    degree = entity.dxf.get("degree", 3)
    flat = _flat(to_world, [Vec3(p) for p in points])
    knots, weights = [float(k) for k in entity.knots], [float(w) for w in entity.weights]
    periodic = bool(entity.dxf.get("flags", 0) & 3)
    flat, knots, weights = _completed(degree, flat, knots, weights, periodic)
    segments = spline_segments(degree, knots, flat, weights)
    return _closed_when_it_is(segments)


def _completed(degree: int, points: list[Vec2], knots: list[float], weights: list[float],
               periodic: bool) -> tuple[list[Vec2], list[float], list[float]]:
    """Missing knots supplied, and control points wrapped where a closed spline leaves that to the reader."""
    need = len(points) + degree + 1
    if len(weights) not in (0, len(points)):
        raise GeometryError(say("The number of weights does not match the control points of a spline."))
    if len(knots) == need:
        return points, knots, weights
    if periodic and len(knots) in (0, need + degree):
        points = points + points[:degree]
        weights = weights + weights[:degree] if weights else weights
        return points, knots or uniform_knot_vector(len(points), degree + 1), weights
    if len(knots) == need - 2:  # some writers leave out the first and last knot: they carry no shape
        return points, [knots[0], *knots, knots[-1]], weights
    if len(knots) == 0:
        return points, open_uniform_knot_vector(len(points), degree + 1), weights
    raise GeometryError(say("A spline has {knots} knots where {need} belong.", knots=len(knots), need=need))


def _through_fit_points(entity: DXFEntity, to_world: Matrix44) -> Shape:
    fit = [Vec3(p) for p in entity.fit_points]
    if entity.closed and len(fit) > 1 and not fit[0].isclose(fit[-1]):
        fit.append(fit[0])
    if len(fit) < 2:
        raise GeometryError(say("A spline has neither control points nor fit points."))
    tangents = None
    if entity.dxf.hasattr("start_tangent") and entity.dxf.hasattr("end_tangent"):
        tangents = [entity.dxf.start_tangent, entity.dxf.end_tangent]
    made = fit_points_to_cad_cv(fit, tangents)
    flat = _flat(to_world, list(made.control_points))
    return _closed_when_it_is(spline_segments(made.degree, list(made.knots()), flat))


def _closed_when_it_is(segments: list[Segment]) -> Shape:
    """Closed when the ends are one point to within 1e-9 of the curve's length."""
    if not segments:
        return [], False
    start, end = segments[0].start, segments[-1].end
    length = Path(tuple(segments)).length
    return segments, length > 0 and math.hypot(end[0] - start[0], end[1] - start[1]) <= 1e-9 * length
