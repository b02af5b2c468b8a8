"""A display list as SVG at full size: width and height in mm, one user unit is one mm.

SVG measures y downwards, so y is written negated; x and -y are the
coordinates of the layout. Arcs stay arcs, circles stay circles.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from xml.sax.saxutils import escape

from app.formats.layer_names import Depths, group_name, no_depth
from app.formats.letters import CAPITAL
from app.formats.mark_shapes import cross_arms, drawing_box
from app.formats.paper_look import Ink, hidden_dashes, ink
from geometry.curves import Arc, Cubic, Segment
from geometry.curves import Path as Curve
from geometry.drawing import Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.solids.depth import Depth
from geometry.vectors import Vec2

MARGIN = 5.0
"""White space round the drawing, mm."""


def svg_text(drawing: Drawing, title: str, depths: Depths = no_depth) -> str:
    """The drawing as an SVG document: a group for each style and depth, in the order of first use.

    `depths` tells how deep a mark is cut: the id of its group says so (layer_names). An empty drawing gives a small empty sheet.
    """
    low_x, low_y, high_x, high_y = drawing_box(drawing)
    x0, y0, x1, y1 = low_x - MARGIN, low_y - MARGIN, high_x + MARGIN, high_y + MARGIN
    width, height = _n(x1 - x0), _n(y1 - y0)
    lines = ['<?xml version="1.0" encoding="UTF-8"?>',
             f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" '
             f'viewBox="{_n(x0)} {_n(-y1)} {width} {height}">',
             f"<title>{_words(title)}</title>"]
    groups: dict[tuple[str, Depth | None], list[Mark]] = {}
    for mark in drawing:
        groups.setdefault((mark.style, depths(mark)), []).append(mark)
    for (style, depth), marks in groups.items():
        look = ink(style)
        lines.append(f'<g id="{group_name(style, depth)}" {_stroke(look)}>')
        lines += [_element(mark, look) for mark in marks]
        lines.append("</g>")
    return "\n".join([*lines, "</svg>", ""])


def path_data(curves: Iterable[Curve]) -> str:
    """Path data (SVG 1.1, chapter 8) of curves with y negated."""
    out = []
    for curve in curves:
        out.append(f"M{_xy(curve.start)}")
        out += [_command(segment) for segment in curve]
        if curve.closed:
            out.append("Z")
    return " ".join(out)


def _command(segment: Segment) -> str:
    if isinstance(segment, Cubic):
        return f"C{_xy(segment.c0)} {_xy(segment.c1)} {_xy(segment.p1)}"
    if not isinstance(segment, Arc):
        return f"L{_xy(segment.p1)}"
    # Arcs over a half turn are cut in two: near a full turn the two ends alone do not fix the arc.
    pieces = segment.split(0.5) if abs(segment.sweep) > math.pi else (segment,)
    # Counter-clockwise with y up is the negative angle direction with y down: sweep flag 0.
    flag = 0 if segment.sweep > 0 else 1
    return " ".join(f"A{_n(p.radius)} {_n(p.radius)} 0 0 {flag} {_xy(p.p1)}" for p in pieces)


def _element(mark: Mark, look: Ink) -> str:
    match mark:
        case Stroke(path=path):
            return f'<path d="{path_data((path,))}"/>'
        case Area(outer=outer, openings=openings):
            return f'<path fill-rule="evenodd"{_fill(look)} d="{path_data((outer, *openings))}"/>'
        case Disc(centre=(x, y), radius=radius, hidden=hidden):
            dash = f' stroke-dasharray="{_dashes(hidden_dashes(radius))}"' if hidden else ""
            dash = dash or (' stroke-dasharray="none"' if look.dash else "")
            return f'<circle cx="{_n(x)}" cy="{_n(-y)}" r="{_n(radius)}"{dash}/>'
        case Cross():
            return f'<path d="{path_data(cross_arms(mark))}"/>'
        case Label():
            return _text(mark)
    raise TypeError(f"not a mark: {mark!r}")


def _text(mark: Label) -> str:
    anchor = {"left": "start", "middle": "middle", "right": "end"}[mark.anchor]
    x, y = _n(mark.at[0]), _n(-mark.at[1])
    turn = f' transform="rotate({_n(-math.degrees(mark.angle))} {x} {y})"' if mark.angle else ""
    return (f'<text x="{x}" y="{y}" font-family="sans-serif" font-size="{_n(mark.height / CAPITAL)}" '
            f'text-anchor="{anchor}" fill="#000000" stroke="none"{turn}>{_words(mark.text)}</text>')


def _stroke(look: Ink) -> str:
    dashes = f' stroke-dasharray="{_dashes(look.dash)}"' if look.dash else ""
    return f'fill="none" stroke="#000000" stroke-width="{_n(look.width)}"{dashes}'


def _fill(look: Ink) -> str:
    return "" if look.fill is None else f' fill="{_grey(look.fill)}"'


def _grey(black: float) -> str:
    level = round(255 * (1 - black))
    return f"#{level:02x}{level:02x}{level:02x}"


def _dashes(dash: tuple[float, ...]) -> str:
    return " ".join(_n(n) for n in dash)


def _xy(p: Vec2) -> str:
    return f"{_n(p[0])} {_n(-p[1])}"


def _n(value: float) -> str:
    """A number to a millionth of a mm, without trailing zeros, never -0."""
    text = f"{value:.6f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _words(text: str) -> str:
    """Text that XML 1.0 can hold: control characters become spaces."""
    return escape("".join(char if char >= " " and char not in "\ufffe\uffff" and not "\ud800" <= char <= "\udfff"
                          else " " for char in text))
