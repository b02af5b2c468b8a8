"""DXF text written by hand, tag by tag, so that the writer is not the reader's twin."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

Point = tuple[float, float]


def tags(*pairs: object) -> str:
    """Group codes and values, one a line."""
    return "".join(f"{item}\n" for item in pairs)


def line(p: Point, q: Point, layer: str = "0") -> str:
    """A LINE."""
    return tags(0, "LINE", 8, layer, 10, p[0], 20, p[1], 30, 0, 11, q[0], 21, q[1], 31, 0)


def lines(points: Sequence[Point], layer: str = "0", closed: bool = True) -> str:
    """Loose LINEs through points."""
    ends = [*points[1:], points[0]] if closed else points[1:]
    return "".join(line(p, q, layer) for p, q in zip(points, ends, strict=False))


def arc(centre: Point, radius: float, start: float, end: float, layer: str = "0", extrusion_z: int = 1) -> str:
    """An ARC, degrees."""
    return tags(0, "ARC", 8, layer, 10, centre[0], 20, centre[1], 30, 0, 40, radius, 50, start, 51, end,
                210, 0, 220, 0, 230, extrusion_z)


def circle(centre: Point, radius: float, layer: str = "0") -> str:
    """A CIRCLE."""
    return tags(0, "CIRCLE", 8, layer, 10, centre[0], 20, centre[1], 30, 0, 40, radius)


def polyline(points: Iterable[tuple[float, float, float]], closed: bool = True, layer: str = "0", extrusion_z: int = 1,
             marked: bool = True) -> str:
    """An LWPOLYLINE of (x, y, bulge); without its markers when not `marked`."""
    points = list(points)
    marks = (tags(100, "AcDbEntity"), tags(100, "AcDbPolyline")) if marked else ("", "")
    return (tags(0, "LWPOLYLINE") + marks[0] + tags(8, layer) + marks[1] + tags(90, len(points), 70, int(closed))
            + "".join(tags(10, x, 20, y, 42, b) for x, y, b in points) + tags(210, 0, 220, 0, 230, extrusion_z))


def old_polyline(points: Iterable[tuple[float, float, float]], closed: bool = True, layer: str = "0") -> str:
    """A POLYLINE with its VERTEX entities, as in files of the eighties."""
    return (tags(0, "POLYLINE", 8, layer, 66, 1, 70, int(closed))
            + "".join(tags(0, "VERTEX", 8, layer, 10, x, 20, y, 42, b) for x, y, b in points) + tags(0, "SEQEND"))


def ellipse(centre: Point, major: Point, ratio: float, start: float = 0.0, end: float = 6.283185307179586,
            layer: str = "0") -> str:
    """An ELLIPSE, parameters in radians."""
    return tags(0, "ELLIPSE", 100, "AcDbEntity", 8, layer, 100, "AcDbEllipse", 10, centre[0], 20, centre[1], 30, 0,
                11, major[0], 21, major[1], 31, 0, 40, ratio, 41, start, 42, end)


def spline(degree: int, knots: Sequence[float], points: Sequence[Point], weights: Sequence[float] = (), flags: int = 8,
           layer: str = "0") -> str:
    """A SPLINE by its control points."""
    return (tags(0, "SPLINE", 100, "AcDbEntity", 8, layer, 100, "AcDbSpline", 70, flags, 71, degree, 72, len(knots),
                 73, len(points), 74, 0)
            + "".join(tags(40, k) for k in knots) + "".join(tags(41, w) for w in weights)
            + "".join(tags(10, x, 20, y, 30, 0) for x, y in points))


def fit_spline(points: Sequence[Point], closed: bool = False, layer: str = "0") -> str:
    """A SPLINE by its fit points only."""
    return (tags(0, "SPLINE", 100, "AcDbEntity", 8, layer, 100, "AcDbSpline", 70, 9 if closed else 8, 71, 3, 72, 0, 73, 0,
                 74, len(points)) + "".join(tags(11, x, 21, y, 31, 0) for x, y in points))


def insert(name: str, at: Point = (0, 0), scale: tuple[float, float, float] = (1, 1, 1), turn: float = 0.0,
           array: tuple[int, int, float, float] | None = None, layer: str = "0", extrusion_z: int = 1) -> str:
    """An INSERT; `array` is (columns, rows, column spacing, row spacing)."""
    grid = tags(70, array[0], 71, array[1], 44, array[2], 45, array[3]) if array else ""
    return (tags(0, "INSERT", 8, layer, 2, name, 10, at[0], 20, at[1], 30, 0, 41, scale[0], 42, scale[1], 43, scale[2],
                 50, turn) + grid + tags(210, 0, 220, 0, 230, extrusion_z))


def block(name: str, content: str, base: Point = (0, 0), flags: int = 0) -> str:
    """A BLOCK definition."""
    return (tags(0, "BLOCK", 8, "0", 2, name, 70, flags, 10, base[0], 20, base[1], 30, 0, 3, name)
            + content + tags(0, "ENDBLK", 8, "0"))


def layer_table(*layers: tuple[str, int, int]) -> str:
    """A TABLES section with layers of (name, flags, colour); a negative colour means off, flag 1 frozen."""
    rows = "".join(tags(0, "LAYER", 2, name, 70, flags, 62, colour, 6, "CONTINUOUS") for name, flags, colour in layers)
    return tags(0, "SECTION", 2, "TABLES", 0, "TABLE", 2, "LAYER", 70, len(layers)) + rows + tags(0, "ENDTAB", 0, "ENDSEC")


def drawing(entities: str, units: int | None = 4, version: str | None = "AC1015", blocks: str = "", tables: str = "",
            comment: str = "", more_header: str = "", end: bool = True) -> str:
    """A whole file. No header at all when both units and version are None."""
    text = tags(999, comment) if comment else ""
    if units is not None or version is not None or more_header:
        text += tags(0, "SECTION", 2, "HEADER")
        text += tags(9, "$ACADVER", 1, version) if version else ""
        text += tags(9, "$INSUNITS", 70, units) if units is not None else ""
        text += more_header + tags(0, "ENDSEC")
    text += tables
    if blocks:
        text += tags(0, "SECTION", 2, "BLOCKS") + blocks + tags(0, "ENDSEC")
    text += tags(0, "SECTION", 2, "ENTITIES") + entities + tags(0, "ENDSEC")
    return text + (tags(0, "EOF") if end else "")
