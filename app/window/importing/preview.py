"""The drawing that is being imported, loop by loop, with the nut line and the centreline laid on it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen, QTransform
from PySide6.QtWidgets import QWidget

from app.look.paths import painter_path
from app.look.theme import theme
from app.look.turns import Steps, Turns
from geometry.curves import Matrix, Path
from geometry.edits.imported_openings import Role
from geometry.layout import Nut
from geometry.saying import say
from geometry.terms import HOLE_THERE, POCKET

AT_ONCE = 30
"""Loops that are there as soon as the drawing is; the paths of more are made while it stands."""
MOST_SMOOTH = 2000
"""Loops beyond which their edges are no longer smoothed."""
NECK = 45.0
"""mm of a neck that are shown behind the head that is cut off it."""
MOST_BESIDE = 1.6
"""times as long as the head that a view may be to show what is left out as well"""
MOST_CHAINS = 5000
"""Loose chains that are shown."""


class ImportPreview(QWidget):
    """Loops in the frame of the head: fills say what is what, the loop in hand is drawn thick."""

    picked = Signal(int)
    """number of the loop that was clicked"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._loops: list[Path] = []
        self._chains: list[Path] = []
        self._roles: list[str] = []
        self._paths: list[QPainterPath] = []
        """of the loops in the drawing's own frame, as far as they are made"""
        self._open = QPainterPath()
        self._whole = QPainterPath()
        self._by_role: dict[str, QPainterPath] | None = None
        self._current = -1
        self._nut = Nut()
        self._neck: QPainterPath | None = None
        self._place = QTransform()
        self._move = QTransform()
        self._making = Turns(self)
        self.setMinimumSize(300, 420)
        self.setAccessibleName(say("Preview of the drawing"))

    def sizeHint(self) -> QSize:
        return QSize(460, 560)

    def show_loops(self, loops: Sequence[Role], open_chains: Sequence[Path], place: Matrix, slant: float = 0.0,
                   neck: Path | None = None) -> None:
        """Show closed loops with their roles and loose chains, mapped by `place`, and a nut line slanted by so many degrees; also
        the beginning of the neck that the outline was cut from."""
        self._nut = Nut(slant=slant)
        self._neck = painter_path(neck) if neck is not None else None
        m = place
        self._place = QTransform(m.a, m.b, m.c, m.d, m.e, m.f)
        self._roles = [loop[1] for loop in loops]
        self._by_role = None
        paths = [loop[0] for loop in loops]
        if not _same(paths, self._loops) or not _same(open_chains, self._chains):
            self._loops, self._chains = paths, list(open_chains)
            self._paths, self._open = [], QPainterPath()
            for chain in self._chains[:MOST_CHAINS]:
                self._open.addPath(painter_path(chain))
            self._making.begin(self._make(), at_once=AT_ONCE)
        self.update()

    def _make(self) -> Steps:
        for loop in self._loops:
            self._paths.append(painter_path(loop))
            self._by_role = None
            self.update()
            yield

    def _summed(self) -> dict[str, QPainterPath]:
        """All loops of a role as one path, to be painted in one go. What is left out is in view where the head is not made small by it, as it
        is by the frame of a sheet or by a fretboard."""
        if self._by_role is None:
            self._by_role = {role: QPainterPath() for role in ("outline", "slot", POCKET, "hole", HOLE_THERE, "other")}
            for path, role in zip(self._paths, self._roles, strict=False):
                self._by_role[role].addPath(path)
            self._whole = QPainterPath(self._open)
            for path in self._by_role.values():
                self._whole.addPath(path)
            taken = QPainterPath()
            for role, path in self._by_role.items():
                if role != "other":
                    taken.addPath(path)
            if not taken.isEmpty() and _side(self._whole) > MOST_BESIDE * _side(taken):
                self._whole = taken
            for path in self._by_role.values():
                path.setFillRule(Qt.FillRule.WindingFill)
        return self._by_role

    def set_current(self, number: int) -> None:
        """Draw one loop thick."""
        self._current = number
        self.update()

    def paintEvent(self, event) -> None:
        t = theme()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(t.paper))
        by_role = self._summed()
        box = self._place.map(self._whole).boundingRect()
        if 0 <= self._current < len(self._paths):
            box = box.united(self._place.map(self._paths[self._current]).boundingRect())
        if box.isEmpty():
            return
        box = box.united(QRectF(0, 0, 0.01, 0.01)).adjusted(-8, -8 if self._neck is None else -NECK, 8, 8)
        scale = min(self.width() / box.width(), self.height() / box.height())
        self._move = QTransform()
        self._move.translate(self.width() / 2, self.height() / 2)
        self._move.scale(scale, -scale)
        self._move.translate(-box.center().x(), -box.center().y())
        fills = {"outline": t.wood, "slot": t.slot, "hole": t.slot}
        to_view = self._place * self._move
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, len(self._paths) < MOST_SMOOTH)
        if self._neck is not None:
            painter.setPen(QPen(QColor(t.dim), 1.2, Qt.PenStyle.DashLine))
            painter.drawPath(to_view.map(self._neck))
        for role, path in by_role.items():
            pen = QPen(QColor(t.dim if role == "other" else t.edge), 1.2)
            if role not in fills:
                pen.setStyle(Qt.PenStyle.DashLine)
            painter.setPen(pen)
            painter.setBrush(self._brush(role, fills))
            painter.drawPath(to_view.map(path))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(t.spoils), 1.6))
        painter.drawPath(to_view.map(self._open))
        if 0 <= self._current < len(self._paths):
            painter.setPen(QPen(QColor(t.focus), 2.6))
            painter.drawPath(to_view.map(self._paths[self._current]))
        self._axes(painter)

    def _brush(self, role: str, fills: dict[str, str]) -> QBrush:
        """What is cut has its colour; what is there already is lighter, as on the canvas, and what is left out has none."""
        if role in fills:
            return QBrush(QColor(fills[role]))
        if role == "other":
            return QBrush(Qt.BrushStyle.NoBrush)
        pale = QColor(theme().slot)
        pale.setAlphaF(0.5)
        return QBrush(pale)

    def _axes(self, painter: QPainter) -> None:
        t = theme()
        origin = self._move.map(QPointF(0, 0))
        pen = QPen(QColor(t.bore), 1)
        pen.setDashPattern([10, 4, 2, 4])
        painter.setPen(pen)
        painter.drawLine(QPointF(origin.x(), 0), QPointF(origin.x(), self.height()))
        painter.setPen(QPen(QColor(t.ink), 2))
        left, right = (self._nut_at(x) for x in (0, self.width()))
        painter.drawLine(left, right)
        painter.setPen(QColor(t.dim))
        painter.drawText(QPointF(8, min(left.y(), self._nut_at(8 + painter.fontMetrics().horizontalAdvance(say("nut line"))).y()) - 5),
                         say("nut line"))
        words = say("centreline, tip this way")
        longest = max(painter.fontMetrics().horizontalAdvance(word) for word in words.split())
        left, right = origin.x() - 10, self.width() - origin.x() - 10
        place = QRectF(origin.x() + 6, 2, right, self.height() / 2) if right > min(longest, left) else QRectF(4, 2, left, self.height() / 2)
        painter.drawText(place, Qt.TextFlag.TextWordWrap | (Qt.AlignmentFlag.AlignLeft if place.x() > origin.x() else
                                                            Qt.AlignmentFlag.AlignRight), words)

    def _nut_at(self, x: float) -> QPointF:
        """Where the nut line comes to an upright line of the view."""
        level = self._move.inverted()[0].map(QPointF(x, 0)).x()
        return self._move.map(QPointF(*self._nut.at(level)))

    def mousePressEvent(self, event) -> None:
        at = (self._place * self._move).inverted()[0].map(event.position())
        for i in reversed(range(len(self._paths))):
            if self._paths[i].contains(at):
                self.picked.emit(i)
                return


def _side(path: QPainterPath) -> float:
    """The longer side of the box about a path, mm."""
    box = path.boundingRect()
    return max(box.width(), box.height())


def _same(some: Sequence[Path], others: Sequence[Path]) -> bool:
    return len(some) == len(others) and all(a is b for a, b in zip(some, others, strict=True))
