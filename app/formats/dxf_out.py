"""A display list as DXF (R2010) in millimetres: true circles, arcs, lines and splines on layers with trade names; a loop of straight
lines and arcs is one closed polyline, which a receiver cuts in one go.

The coordinates are those of the layout: origin where nut line and centreline
cross, +x to the treble side, +y to the tip. The same drawing gives the same bytes.
"""

from __future__ import annotations

import io
import math
from collections.abc import Iterator
from contextlib import contextmanager

from app.formats.layer_names import LAYERS, Depths, layer_name, no_depth
from app.formats.mark_shapes import cross_arms
from app.formats.paper_look import HIDDEN, INKS, Ink
from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line
from geometry.curves import Path as Curve
from geometry.drawing import Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.vectors import Vec2

MANY = 24
"""An open chain of more straight pieces than this is one polyline instead of single lines."""
MOST_TURN = math.radians(300.0)
"""A loop with an arc that turns farther is left in pieces: its bulge in a polyline would tell it too coarsely."""


def dxf_bytes(drawing: Drawing, depths: Depths = no_depth) -> bytes:
    """The drawing as DXF text in UTF-8. An empty drawing gives a valid file without entities.

    `depths` tells how deep a mark is cut: the name of its layer says so (layer_names), for lines and circles lie flat.
    """
    import ezdxf
    with _fixed_metadata():
        doc = ezdxf.new("R2010", setup=False, units=4)
        doc.header["$INSUNITS"] = 4
        doc.header["$MEASUREMENT"] = 1
        doc.header["$LUNITS"] = 2
        _layers(doc, drawing, depths)
        writer = _Writer(doc.modelspace(), depths)
        for mark in drawing:
            writer.add(mark)
        _extents(doc, writer)
        text = io.StringIO(newline="")
        doc.write(text)
    return text.getvalue().encode(doc.output_encoding, errors="replace")


@contextmanager
def _fixed_metadata() -> Iterator[None]:
    """No time stamps and no fresh ids in the file, so that two exports of one layout are one file."""
    import ezdxf
    before = ezdxf.options.write_fixed_meta_data_for_testing
    ezdxf.options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        ezdxf.options.write_fixed_meta_data_for_testing = before


def _layers(doc, drawing: Drawing, depths: Depths) -> None:
    for style, depth in dict.fromkeys((mark.style, depths(mark)) for mark in drawing):
        look = INKS[style]
        linetype = "CONTINUOUS" if not look.dash else _linetype(doc, f"PEG {LAYERS[style]}", look)
        # Line weights in DXF are hundredths of a mm from a fixed list (ezdxf rounds to the nearest valid one).
        doc.layers.add(layer_name(style, depth), color=7, linetype=linetype, lineweight=_weight(look.width))
    if any(isinstance(mark, Disc) and mark.hidden for mark in drawing):
        _linetype(doc, "FAR SIDE", Ink(0.2, HIDDEN))


def _linetype(doc, name: str, look: Ink) -> str:
    """A pattern of dashes in mm: positive lengths are drawn, negative ones are gaps."""
    name = name.upper()
    dashes = [n if i % 2 == 0 else -n for i, n in enumerate(look.dash)]
    doc.linetypes.add(name, pattern=[sum(look.dash), *dashes], description=name.lower())
    return name


def _weight(width: float) -> int:
    valid = (5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70)
    return min(valid, key=lambda w: abs(w - width * 100))


class _Writer:
    """Turns marks into entities and keeps the box of what it wrote."""

    def __init__(self, space: object, depths: Depths) -> None:
        self.space = space
        self.depths = depths
        self.points: list[Vec2] = []

    def add(self, mark: Mark) -> None:
        attribs = {"layer": layer_name(mark.style, self.depths(mark))}
        match mark:
            case Stroke(path=path):
                self._chain(path, attribs)
            case Area(outer=outer, openings=openings):
                for path in (outer, *openings):
                    self._chain(path, attribs)
            case Disc(centre=centre, radius=radius, hidden=hidden):
                attribs["linetype"] = "FAR SIDE" if hidden else "CONTINUOUS"
                self._see((centre[0] - radius, centre[1] - radius), (centre[0] + radius, centre[1] + radius))
                self.space.add_circle(v.clean(centre), round(radius, 9), attribs)
            case Cross():
                for arm in cross_arms(mark):
                    self._chain(arm, attribs)
            case Label():
                self._text(mark, attribs)

    def _see(self, *points: Vec2) -> None:
        self.points.extend(points)

    def _chain(self, path: Curve, attribs: dict) -> None:
        box = path.box
        self._see(box[:2], box[2:])
        if len(path.segments) > (1 if path.closed else MANY) and all(
                isinstance(s, Line) or path.closed and isinstance(s, Arc) and abs(s.sweep) < MOST_TURN for s in path):
            points = [(*v.clean(s.start), round(math.tan(s.sweep / 4), 12) if isinstance(s, Arc) else 0.0) for s in path]
            points += [] if path.closed else [(*v.clean(path.end), 0.0)]
            self.space.add_lwpolyline(points, format="xyb", close=path.closed, dxfattribs=attribs)
            return
        for segment in path:
            if isinstance(segment, Line):
                self.space.add_line(v.clean(segment.p0), v.clean(segment.p1), attribs)
            elif isinstance(segment, Arc):
                self._arc(segment, attribs)
            else:
                self._spline(segment, attribs)

    def _arc(self, arc: Arc, attribs: dict) -> None:
        """DXF arcs run counter-clockwise; a full turn is a circle."""
        if abs(arc.sweep) > 2 * math.pi - 1e-9:
            self.space.add_circle(v.clean(arc.centre), round(arc.radius, 9), attribs)
            return
        first = arc.a0 if arc.sweep > 0 else arc.a0 + arc.sweep
        start = math.degrees(first) % 360
        self.space.add_arc(v.clean(arc.centre), round(arc.radius, 9), round(start, 10),
                           round((start + math.degrees(abs(arc.sweep))) % 360, 10), dxfattribs=attribs)

    def _spline(self, cubic: Cubic, attribs: dict) -> None:
        """A cubic is exactly a spline of degree 3 with four control points and knots 0 0 0 0 1 1 1 1."""
        points = [(*v.clean(p), 0.0) for p in (cubic.p0, cubic.c0, cubic.c1, cubic.p1)]
        spline = self.space.add_spline(degree=3, dxfattribs=attribs)
        spline.control_points = points
        spline.knots = [0.0] * 4 + [1.0] * 4

    def _text(self, mark: Label, attribs: dict) -> None:
        from ezdxf.enums import TextEntityAlignment as Align
        align = {"left": Align.LEFT, "middle": Align.CENTER, "right": Align.RIGHT}[mark.anchor]
        # A zero ends a string for many readers, and the sign that once ended files the whole drawing for some.
        text = " ".join("".join(char if char.isprintable() else " " for char in mark.text).split())
        self._see(mark.at)
        entity = self.space.add_text(text, height=mark.height, rotation=math.degrees(mark.angle), dxfattribs=attribs)
        entity.set_placement(v.clean(mark.at), align=align)


def _extents(doc, writer: _Writer) -> None:
    """Tell readers where the drawing lies, and how to show it at first: whole.

    The library copies extents and limits from the model space into the header when it writes: set there they would be lost.
    """
    if not writer.points:
        return
    xs, ys = [p[0] for p in writer.points], [p[1] for p in writer.points]
    low, high = v.clean((min(xs), min(ys))), v.clean((max(xs), max(ys)))
    writer.space.reset_extents((*low, 0.0), (*high, 0.0))
    writer.space.reset_limits(low, high)
    doc.set_modelspace_vport(1.05 * max(high[1] - low[1], high[0] - low[0], 1.0), ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2))
