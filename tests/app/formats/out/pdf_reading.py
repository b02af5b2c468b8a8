"""Reads drawn lines and words back out of a PDF with PDFium, a reader that shares nothing with the writer."""

import ctypes
from dataclasses import dataclass

import pypdfium2
import pypdfium2.raw as pdfium

MM = 25.4 / 72


@dataclass(frozen=True)
class Drawn:
    """One path on a page: its points in mm from the lower left corner, (x, y, kind) with kind move, line or curve."""

    points: tuple[tuple[float, float, str], ...]
    width: float
    closed: bool
    filled: bool

    @property
    def single_lines(self):
        """(end, end) of every piece that is one straight line; none when a piece is anything else."""
        kinds = [p[2] for p in self.points]
        if kinds != ["move", "line"] * (len(kinds) // 2):
            return []
        ends = [p[:2] for p in self.points]
        return list(zip(ends[::2], ends[1::2], strict=True))


KINDS = {pdfium.FPDF_SEGMENT_MOVETO: "move", pdfium.FPDF_SEGMENT_LINETO: "line", pdfium.FPDF_SEGMENT_BEZIERTO: "curve"}


def drawn(page) -> list[Drawn]:
    """All paths of a pypdfium2 page."""
    found = []
    for i in range(pdfium.FPDFPage_CountObjects(page)):
        thing = pdfium.FPDFPage_GetObject(page, i)
        if pdfium.FPDFPageObj_GetType(thing) == pdfium.FPDF_PAGEOBJ_PATH:
            fill, stroke = ctypes.c_int(), ctypes.c_int()
            pdfium.FPDFPath_GetDrawMode(thing, fill, stroke)
            last = pdfium.FPDFPath_GetPathSegment(thing, pdfium.FPDFPath_CountSegments(thing) - 1)
            found.append(Drawn(tuple(_points(thing)), _width(thing), bool(pdfium.FPDFPathSegment_GetClose(last)), fill.value != 0))
    return found


def lines(page) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    """All straight lines, ends in mm."""
    return [line for one in drawn(page) for line in one.single_lines]


def letters(page) -> list[tuple[str, float, float]]:
    """Every word of the page with its lower left corner in mm (words as the reader finds them in one run)."""
    text = page.get_textpage()
    out = []
    for i in range(text.count_rects()):
        left, bottom, right, top = text.get_rect(i)
        out.append((text.get_text_bounded(left, bottom, right, top).strip(), left * MM, bottom * MM))
    return out


def open_pdf(data: bytes):
    return pypdfium2.PdfDocument(data)


def _points(thing):
    matrix = pdfium.FS_MATRIX()
    pdfium.FPDFPageObj_GetMatrix(thing, matrix)
    for k in range(pdfium.FPDFPath_CountSegments(thing)):
        segment = pdfium.FPDFPath_GetPathSegment(thing, k)
        x, y = ctypes.c_float(), ctypes.c_float()
        pdfium.FPDFPathSegment_GetPoint(segment, x, y)
        px = matrix.a * x.value + matrix.c * y.value + matrix.e
        py = matrix.b * x.value + matrix.d * y.value + matrix.f
        yield px * MM, py * MM, KINDS[pdfium.FPDFPathSegment_GetType(segment)]


def _width(thing) -> float:
    width = ctypes.c_float()
    pdfium.FPDFPageObj_GetStrokeWidth(thing, width)
    return width.value * MM
