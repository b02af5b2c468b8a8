"""A small picture of a layout: its face, painted from the display list that everything else is painted from."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPainterPath

from app.look.paths import add_mark, fitted
from app.look.styles import look_of, paint_paths, style_key
from app.look.theme import Theme
from geometry.drawing import Area, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.opened_out import opened_out_groups
from geometry.drawing.shapes import straight
from geometry.layout import Headstock, loop_path
from geometry.strings.runs import runs
from geometry.vectors import Box, box_of_all

ROOM = 3.0
"""mm shown about the outline and the buttons"""
LEFT_OUT = ("blank", "waste", "axis", "fold", "cross", "centreline", "screw pilot", "pin hole", "seat",
            "locating pin hole", "clearance bore")
"""Styles that a small picture has no room for."""


def _face_marks(layout: Headstock) -> Drawing:
    """The marks of the face that a small picture shows, with the strings. A second call is quick: parts are kept."""
    made = [mark for owner, marks in opened_out_groups(layout).items() if owner != "blank" for mark in marks
            if not isinstance(mark, Label) and mark.style not in LEFT_OUT and not _on_an_edge(mark)]
    return (*made, *(Stroke(straight(run.nut, run.post), "string") for run in runs(layout)))


def _on_an_edge(mark: Mark) -> bool:
    """Whether a mark belongs to the folded edges, which a small picture does not show: round bores from the side."""
    return isinstance(mark, Disc) and mark.style == "side bore"


class FacePicture:
    """Marks made ready for painting at any size."""

    def __init__(self, marks: Drawing, frame: Box) -> None:
        self._frame = QRectF(frame[0], frame[1], frame[2] - frame[0], frame[3] - frame[1])
        paths: dict[str, QPainterPath] = {}
        for mark in marks:
            add_mark(paths.setdefault(style_key(mark), QPainterPath()), mark)
        self._paths = sorted(((path, style) for style, path in paths.items()), key=lambda item: look_of(item[1]).z)

    def paint(self, painter: QPainter, area: QRectF, theme: Theme) -> None:
        """Paint into `area` (pixels), the tip up, at the largest scale that fits."""
        frame = self._frame
        if frame.isEmpty() or area.isEmpty():
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setClipRect(area)
        paint_paths(painter, self._paths, fitted(frame, area), theme)
        painter.restore()


def face_picture(layout: Headstock) -> tuple[Drawing, Box]:
    """(marks, frame in mm) of a layout, as FacePicture takes them; pure, so that it may be made beside the window.

    The frame is the outline and the buttons, with ROOM mm about them.
    """
    marks = _face_marks(layout)
    boxes = [loop_path(layout.outline).box, *(m.outer.box for m in marks if isinstance(m, Area) and m.style == "button")]
    x0, y0, x1, y1 = box_of_all(boxes)
    return marks, (x0 - ROOM, y0 - ROOM, x1 + ROOM, y1 + ROOM)
