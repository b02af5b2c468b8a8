"""Pages painted by Qt, line for line as the PDF has them: for the printer and for the preview.

The letters are drawn as outlines of the same font at the same advances, so that
no hinting or substitute font moves a word.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache

from msgspec import Struct
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPainterPath, QPen, QRawFont, QTransform

from app.formats.letters import font_file, printable, size_for, text_width
from app.formats.mark_shapes import cross_arms, mark_box, touches
from app.formats.paper import Page, Placed
from app.formats.paper_look import Ink, hidden_dashes, ink
from app.look.paths import painter_path
from geometry.curves import Matrix, circle
from geometry.curves import Path as Curve
from geometry.drawing import Area, Cross, Disc, Label, Mark, Stroke
from geometry.solids.per_thread import remembered_per_thread

SLICE = 12
"""Shapes that are painted in one go where somebody waits beside: some milliseconds."""
EM = 2048.0
"""Size at which the outlines of the letters are taken: that of the font's own grid."""


class Shape(Struct, frozen=True):
    """One thing to paint in page coordinates: mm from the lower left corner, y up."""

    path: QPainterPath
    pen: QPen
    brush: QBrush
    clip: QRectF | None


def shapes_of(page: Page) -> Iterator[Shape]:
    """Everything on a page in the order in which it is painted, one by one for a page that is painted in slices."""
    return (shape for placed in page.content for shape in _shapes(placed))


def paint_shapes(painter: QPainter, shapes: Iterable[Shape], page: Page, scale: float) -> None:
    """Paint a page with its upper left corner at the painter's origin, `scale` units to the mm."""
    for _ in painted(painter, shapes, page, scale):
        pass


def painted(painter: QPainter, shapes: Iterable[Shape], page: Page, scale: float) -> Iterator[None]:
    """The same in slices of SLICE shapes: between two of them the caller may do other things, but not with the painter."""
    painter.save()
    painter.scale(scale, -scale)
    painter.translate(0.0, -page.height)
    pixels = abs(painter.deviceTransform().determinant()) ** 0.5
    clip: QRectF | None = None
    painter.save()
    try:
        for number, shape in enumerate(shapes, 1):
            if number % SLICE == 0:
                yield
            if shape.clip != clip:
                painter.restore()
                painter.save()
                clip = shape.clip
                if clip is not None:
                    painter.setClipRect(clip, Qt.ClipOperation.IntersectClip)
            painter.setPen(_thin(shape.pen, pixels))
            painter.setBrush(shape.brush)
            painter.drawPath(shape.path)
    finally:
        painter.restore()
        painter.restore()


def _shapes(placed: Placed) -> Iterator[Shape]:
    m = placed.matrix
    to_page = QTransform(m.a, m.b, m.c, m.d, m.e, m.f)
    clip = None
    if placed.clip is not None:
        x0, y0, x1, y1 = placed.clip
        clip = QRectF(x0, y0, x1 - x0, y1 - y0)
    for mark in placed.drawing:
        if placed.clip is not None and not touches(mark_box(mark, m), placed.clip):
            continue
        look = ink(mark.style)
        if isinstance(mark, Label):
            yield Shape(_words(mark, m), QPen(Qt.PenStyle.NoPen), QBrush(Qt.GlobalColor.black), clip)
            continue
        curves, look, filled = _curves(mark, look)
        path = QPainterPath()
        path.setFillRule(Qt.FillRule.OddEvenFill)
        for curve in curves:
            path.addPath(to_page.map(painter_path(curve)))
        brush = QBrush(_grey(look.fill)) if filled and look.fill is not None else QBrush(Qt.BrushStyle.NoBrush)
        yield Shape(path, _pen(look), brush, clip)


def _curves(mark: Mark, look: Ink) -> tuple[Sequence[Curve], Ink, bool]:
    """The lines of a mark, their ink, and whether they bound a filled area."""
    match mark:
        case Stroke(path=path):
            return (path,), look, False
        case Area(outer=outer, openings=openings):
            return (outer, *openings), look, True
        case Disc(centre=centre, radius=radius, hidden=hidden):
            return (circle(centre, radius),), Ink(look.width, hidden_dashes(radius) if hidden else ()), False
        case Cross():
            return cross_arms(mark), look, False
    raise TypeError(f"not a mark with lines: {mark!r}")


def _pen(look: Ink) -> QPen:
    if look.width <= 0:
        return QPen(Qt.PenStyle.NoPen)
    pen = QPen(Qt.GlobalColor.black, look.width)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    if look.dash:
        pen.setDashPattern([length / look.width for length in look.dash])
    return pen


def _thin(pen: QPen, pixels: float) -> QPen:
    """The pen with its dashes as long as they should be: Qt counts them in pixels where a line is thinner than one."""
    wide = pen.widthF() * pixels
    if wide >= 1.0 or pen.style() != Qt.PenStyle.CustomDashLine:
        return pen
    thin = QPen(pen)
    thin.setDashPattern([part * wide for part in pen.dashPattern()])
    return thin


def _grey(black: float) -> QColor:
    return QColor.fromRgbF(1.0 - black, 1.0 - black, 1.0 - black)


def _words(label: Label, matrix: Matrix) -> QPainterPath:
    """A label's letters as outlines on the page; words keep their shape under a map that stretches unevenly."""
    scale = matrix.similarity() or math.sqrt(abs(matrix.determinant)) or 1.0
    text, height = printable(label.text), label.height * scale
    wide = text_width(text, height)
    x = {"left": 0.0, "middle": -wide / 2, "right": -wide}[label.anchor]
    size = size_for(height) / EM
    at = matrix(label.at)
    turned = QTransform().translate(*at).rotateRadians(label.angle).translate(x, 0.0).scale(size, -size)
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    along = 0.0
    for char in text:
        outline, advance = _letter(char)
        path.addPath(outline.translated(along, 0.0))
        along += advance
    return turned.map(path)


@lru_cache(maxsize=4096)
def _letter(char: str) -> tuple[QPainterPath, float]:
    """Outline (y down) and advance of a letter on the font's own grid."""
    font = _font()
    glyph = font.glyphIndexesForString(char)[0]
    advance: QPointF = font.advancesForGlyphIndexes([glyph])[0]
    return font.pathForGlyph(glyph), advance.x()


@remembered_per_thread(maxsize=1)
def _font() -> QRawFont:
    """The toolkit's font ends with the thread that made it, and serves no two at once: pages are painted in the window and printed beside."""
    return QRawFont(str(font_file()), EM, QFont.HintingPreference.PreferNoHinting)
