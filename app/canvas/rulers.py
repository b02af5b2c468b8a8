"""Rulers along the canvas, in mm or inches, with a tick at the pointer."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QWidget

from app.canvas.view import CanvasView
from app.look.sizes import keep, lettered, px
from app.look.theme import theme
from geometry.saying import number
from geometry.units import MM_PER_INCH, LengthUnit

THICK = 22
LETTERS = 40
"""At 100 %: pixels across a ruler, and what a figure may take beside its tick."""
FIGURES = 10
"""Letters of the figures at 100 %, pixels."""
APART = 46
"""Pixels that figures stand apart at 100 %."""


class Ruler(QWidget):
    """One ruler; it follows the view that it is laid against."""

    def __init__(self, view: CanvasView, upright: bool, parent: QWidget) -> None:
        super().__init__(parent)
        self._view = view
        self._upright = upright
        self._unit: LengthUnit = "mm"
        self._tick: float | None = None
        """pixel at which the pointer is: there it stays while the paper moves under it"""
        self._ruled: QPixmap | None = None
        # Its picture covers all of it: what lies behind, up to the window, need not be painted for each step of the hand.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        keep(self, **{"fixed_width" if upright else "fixed_height": THICK})
        view.looked.connect(self.follow_theme)
        view.hovered.connect(self._follow)

    def set_unit(self, unit: LengthUnit) -> None:
        """Rule in mm or in inches."""
        self._unit = unit
        self.follow_theme()

    def _follow(self, at: tuple[float, float] | None) -> None:
        before, self._tick = self._tick, None if at is None else self._pixel(at[1 if self._upright else 0])
        for p in (before, self._tick):
            if p is not None:
                p = round(p)
                self.update(0, p - 3, self.width(), 6) if self._upright else self.update(p - 3, 0, 6, self.height())

    def _pixel(self, mm: float) -> float:
        scale, zero = self._run()
        return round(scale * mm + zero, 3)  # the hand's own pixel: a line a billionth before it is painted in the one before

    def _run(self) -> tuple[float, float]:
        """(pixels per mm along this ruler, the pixel of 0 mm)."""
        seen = self._view.viewportTransform()
        return (seen.m22(), seen.dy()) if self._upright else (seen.m11(), seen.dx())

    def _steps(self) -> tuple[float, int]:
        """(mm between figures, ticks between figures), so that figures stand APART."""
        scale, apart = self._view.pixels_per_mm, px(APART)
        if self._unit == "mm":
            choices = ((1, 10), (2, 10), (5, 5), (10, 10), (20, 4), (50, 5), (100, 10), (200, 4), (500, 5), (1000, 10), (2000, 4))
            return next(((float(s), n) for s, n in choices if s * scale >= apart), (5000.0, 5))
        choices = ((1 / 8, 4), (1 / 4, 4), (1 / 2, 8), (1, 8), (2, 4), (5, 5), (10, 10), (20, 4), (50, 5), (100, 10))
        return next(((s * MM_PER_INCH, n) for s, n in choices if s * MM_PER_INCH * scale >= apart), (200 * MM_PER_INCH, 4))

    def _figure(self, mm: float) -> str:
        if self._unit == "mm":
            return number(mm, "g")
        from geometry.units import format_length
        return format_length(mm, "in64" if self._unit == "in64" else "in")

    def paintEvent(self, event) -> None:
        if self._ruled is None or self._ruled.size() != self.size() * self.devicePixelRatioF():
            self._ruled = self._rule()
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._ruled)
        if self._tick is not None:
            p = self._tick
            painter.setPen(QPen(QColor(theme().spoils), 1))
            painter.drawLine(*((QPointF(0, p), QPointF(self.width(), p)) if self._upright else
                               (QPointF(p, 0), QPointF(p, self.height()))))

    def _rule(self) -> QPixmap:
        """The ruler without the tick at the pointer: a hand on the canvas changes no more than that tick."""
        ratio = self.devicePixelRatioF()
        ruled = QPixmap(self.size() * ratio)
        ruled.setDevicePixelRatio(ratio)
        ruled.fill(QColor(theme().bar))
        painter = QPainter(ruled)
        font, thick, away = lettered(self.font(), FIGURES), px(THICK), px(LETTERS)
        scale, zero = self._run()
        ends = sorted((end - zero) / scale for end in (-away, (self.height() if self._upright else self.width()) + away))
        step, ticks = self._steps()
        font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
        painter.setFont(font)
        painter.setPen(QPen(QColor(theme().dim), 1))
        small = step / ticks
        short, middle, long, room = px(3), px(6), px(9), QRectF(0, 0, px(60), px(12))
        metrics, lines = painter.fontMetrics(), []
        for i in range(int(ends[0] // small) - 1, int(ends[1] // small) + 2):
            p = scale * (i * small) + zero
            whole = i % ticks == 0
            size = long if whole else middle if 2 * i % ticks == 0 else short
            lines.append(QLineF(thick - size, p, thick, p) if self._upright else QLineF(p, thick - size, p, thick))
            if whole:
                figure = self._figure(round(i * small, 6))
                self._write(painter, p, figure, metrics.horizontalAdvance(figure), room)
        painter.drawLines(lines)
        painter.setPen(QPen(QColor(theme().line), 1))
        if self._upright:
            painter.drawLine(thick - 1, 0, thick - 1, self.height())
        else:
            painter.drawLine(0, thick - 1, self.width(), thick - 1)
        painter.end()
        return ruled

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.PaletteChange):
            self.follow_theme()

    def follow_theme(self) -> None:
        """Rule anew, in the colours in use."""
        self._ruled = None
        self.update()

    def _write(self, painter: QPainter, p: float, text: str, long: int, room: QRectF) -> None:
        """A figure that is so long beside its tick; none that the end of the ruler would cut: the rest of -180 reads 0."""
        first, last = (p - 2 - long, p - 2) if self._upright else (p + 2, p + 2 + long)
        if first < 0 or last > (self.height() if self._upright else self.width()):
            return
        if not self._upright:
            painter.drawText(room.translated(p + 2, 0), Qt.AlignmentFlag.AlignLeft, text)
            return
        painter.save()
        painter.translate(1, p - 2)
        painter.rotate(-90)
        painter.drawText(room, Qt.AlignmentFlag.AlignLeft, text)
        painter.restore()
