"""Pages as PDF: vector lines at full size, page boxes exact, the same bytes on every run.

One PDF unit is 1/72 inch (ISO 32000-1, 8.3.2.3, default user space). The file
asks viewers not to scale and to choose the tray by the page size; not every
viewer obeys, so each page carries bars to measure as well.
"""

from __future__ import annotations

import io
import math
from collections.abc import Sequence
from functools import cache

from app.formats.letters import font_name, printable
from app.formats.mark_shapes import cross_arms, mark_box, touches
from app.formats.paper import Page, Placed
from app.formats.paper_look import Ink, hidden_dashes, ink
from app.formats.pdf_words import Words
from geometry.curves import Arc, Cubic, Line, Matrix, circle
from geometry.curves import Path as Curve
from geometry.drawing import Area, Cross, Disc, Label, Mark, Stroke
from geometry.saying import say
from geometry.vectors import Vec2

POINTS_PER_MM = 72 / 25.4
SMALL = 9.0
"""Arcs up to this radius on the paper (mm) are true within one figure of the file (0.00004 mm) with eight cubics a turn:
a cubic over pi/4 strays 4.2e-6 of the radius (see published drift figures in the tests)."""
MOST_SWEEP = math.pi / 8
"""Sixteen cubics a turn: a 100 mm circle stays true within 0.00001 mm (see published drift figures in the tests)."""


def pdf_bytes(pages: Sequence[Page], title: str) -> bytes:
    """The pages as one PDF file. At least one page; boxes in the order given, a bookmark for each new title."""
    from reportlab import rl_config
    from reportlab.pdfgen.canvas import Canvas
    rl_config.useA85 = 0  # binary streams: a fifth smaller, and quicker to write
    buffer = io.BytesIO()
    canvas = Canvas(buffer, invariant=1, pageCompression=1, pdfVersion=(1, 7), initialFontName=font_name())  # no other face is named
    canvas.setTitle(printable(title))
    canvas.setCreator("Pegwright")
    canvas.setProducer("Pegwright")
    canvas.setAuthor("")
    canvas.setSubject(say("Full-size sheets: print at 100 %"))
    _ask_for_full_size(canvas)
    before, words = "", Words(canvas)
    for number, page in enumerate(pages, 1):
        if page.title != before:
            canvas.bookmarkPage(f"page {number}")
            canvas.addOutlineEntry(printable(page.title), f"page {number}")
            before = page.title
        canvas.setPageSize((page.width * POINTS_PER_MM, page.height * POINTS_PER_MM))
        for placed in page.content:
            _Sheet(canvas, placed, words).draw()
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _ask_for_full_size(canvas) -> None:
    """Viewer preferences of ISO 32000-1 table 150; the library's own class lacks the tray entry."""
    from reportlab.pdfbase.pdfdoc import PDFDictionary, PDFName
    canvas._doc.Catalog.ViewerPreferences = PDFDictionary(
        {"PrintScaling": PDFName("None"), "PickTrayByPDFSize": "true", "DisplayDocTitle": "true"})


class _Sheet:
    """Draws one placed display list on the canvas of the PDF library."""

    def __init__(self, canvas, placed: Placed, words: Words) -> None:
        self._canvas = canvas
        self._words = words
        self._placed = placed
        self._matrix = Matrix(a=POINTS_PER_MM, d=POINTS_PER_MM).after(placed.matrix)
        self._scale = placed.matrix.similarity() or 1.0
        self._now: dict[str, object] = {}
        """what the pen is set to: said anew only where it changes, for that is half of a page's bytes"""
        self._pen: Ink | None = None
        """the ink that lines are drawn in now"""

    def draw(self) -> None:
        """Draw every mark inside the clip."""
        canvas, clip = self._canvas, self._placed.clip
        canvas.saveState()
        canvas.setLineCap(0)
        canvas.setLineJoin(1)
        if clip is not None:
            window = canvas.beginPath()
            x0, y0, x1, y1 = (n * POINTS_PER_MM for n in clip)
            window.rect(x0, y0, x1 - x0, y1 - y0)
            canvas.clipPath(window, stroke=0, fill=0)
        for mark in self._placed.drawing:
            if clip is None or touches(mark_box(mark, self._placed.matrix), clip):
                self._mark(mark)
        canvas.restoreState()

    def _mark(self, mark: Mark) -> None:
        look = ink(mark.style)
        match mark:
            case Stroke(path=path):
                self._curves((path,), look)
            case Area(outer=outer, openings=openings):
                self._curves((outer, *openings), look, filled=True)
            case Disc(centre=centre, radius=radius, hidden=hidden):
                dashes = hidden_dashes(radius) if hidden else ()
                self._circle(centre, radius, Ink(look.width, dashes))
            case Cross():
                self._curves(cross_arms(mark), look)
            case Label():
                self._text(mark)

    def _curves(self, curves: Sequence[Curve], look: Ink, filled: bool = False) -> None:
        path = self._canvas.beginPath()
        for curve in curves:
            self._trace(path, curve)
        self._finish(path, look, filled)

    def _finish(self, path, look: Ink, filled: bool) -> None:
        """Draw a path in its ink; nothing for one that has neither line nor filling."""
        fill = filled and look.fill is not None
        if look.width <= 0 and not fill:
            return
        if look.width > 0 and look is not self._pen:
            self._pen = look
            self._set("setLineWidth", look.width * POINTS_PER_MM)
            self._set("setDash", tuple(n * POINTS_PER_MM for n in look.dash))
        if fill:
            self._set("setFillGray", 1 - look.fill)
        self._canvas.drawPath(path, stroke=1 if look.width > 0 else 0, fill=1 if fill else 0, fillMode=0)

    def _trace(self, path, curve: Curve) -> None:
        """Write a curve into a path of the library: by far the most of a file, so the map is written out."""
        m = self._matrix
        a, b, c, d, e, f = m.a, m.b, m.c, m.d, m.e, m.f
        x, y = curve.start
        path._code_append(f"{a * x + c * y + e:.4f} {b * x + d * y + f:.4f} m")
        out = path._code_append  # the library changes it with the first point
        for segment in curve:
            for piece in segment.cubics(self._sweep(segment.radius)) if isinstance(segment, Arc) else (segment,):
                x, y = piece.p1
                end = f"{a * x + c * y + e:.4f} {b * x + d * y + f:.4f}"
                if isinstance(piece, Line):
                    out(end + " l")
                elif isinstance(piece, Cubic):
                    (x, y), (z, w) = piece.c0, piece.c1
                    out(f"{a * x + c * y + e:.4f} {b * x + d * y + f:.4f} {a * z + c * w + e:.4f} {b * z + d * w + f:.4f} {end} c")
        if curve.closed:
            path.close()

    def _circle(self, centre: Vec2, radius: float, look: Ink) -> None:
        """A circle as the same cubics that its arcs would give, turned out of one table."""
        m = self._matrix
        a, b, c, d = m.a * radius, m.b * radius, m.c * radius, m.d * radius
        e, f = m(centre)
        path = self._canvas.beginPath()
        path._code_append(f"{a + e:.4f} {b + f:.4f} m")
        out = path._code_append
        for (ux, uy), (wx, wy), (px, py) in _unit_circle(self._sweep(radius)):
            out(f"{a * ux + c * uy + e:.4f} {b * ux + d * uy + f:.4f} {a * wx + c * wy + e:.4f} {b * wx + d * wy + f:.4f} "
                f"{a * px + c * py + e:.4f} {b * px + d * py + f:.4f} c")
        path.close()
        self._finish(path, look, False)

    def _sweep(self, radius: float) -> float:
        return 2 * MOST_SWEEP if radius * self._scale <= SMALL else MOST_SWEEP

    def _set(self, what: str, value: object) -> None:
        """Set the pen where it is not so already."""
        if self._now.get(what) != value:
            self._now[what] = value
            getattr(self._canvas, what)(list(value) if isinstance(value, tuple) else value)

    def _text(self, mark: Label) -> None:
        self._set("setFillGray", 0.0)
        self._words.write(mark.text, self._matrix(mark.at), mark.height * self._scale * POINTS_PER_MM, mark.anchor, mark.angle)


@cache
def _unit_circle(most_sweep: float) -> tuple[tuple[Vec2, Vec2, Vec2], ...]:
    """The cubics of a circle of radius 1 about the origin, from (1, 0) on: two handles and an end each.

    Four decimals of a point, as they are written, are 0.00004 mm.
    """
    return tuple((piece.c0, piece.c1, piece.p1) for arc in circle((0.0, 0.0), 1.0) for piece in arc.cubics(most_sweep))
