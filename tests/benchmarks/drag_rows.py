"""The hand on the canvas: from the mouse event to the painted frame, every snag current."""

from __future__ import annotations

import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.threads.collector import Collector
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.running.process import give_back, paint_alone
from app.window.windows import Windows
from geometry import vectors as v
from geometry.edits import free_from_row
from geometry.solids import frames
from geometry.vectors import Vec2
from tests.benchmarks.lines import Line, part

MOST = {1: 8.3, 2: 16.7}
"""What a frame of a drag may take (p95, ms) by the screen's pixels to a point."""
MOST_LOOK = 16.7
TUNER = "treble face 2"
CLEAR, TIGHT = ((-5.0, -3.0), (-1.0, 3.0)), ((-4.1, 5.1), (-9.6, 12.0))
"""Between which two places the tuner is dragged to and fro, mm from where it stands: clear of all others in every frame
(the widest such way that the demo has), and into one to four others in every frame. The note of a row tells in how many
frames it had a snag with another.
"""
STEPS = 5
"""Frames from one place to the other: each is more than a step of the grid."""


IDLE = 0.2
"""s: when nothing is painted for so long, there was nothing to paint: the tuner snapped to where it was."""
TURNS = 20
"""of the event loop that go by meanwhile at least, however long the machine takes for one"""
Spent = tuple[float, float]
"""ms by the clock on the wall, and of the processor in the window's thread."""


class Painted(QObject):
    """Counts the paints of the canvas, so that a frame ends when it is painted and not before."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self.count = 0
        window.canvas.view.viewport().installEventFilter(self)

    def eventFilter(self, thing: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            self.count += 1
        return False

    def frame(self, act: Callable[[], object]) -> Spent | None:
        """ms from the act to the end of all that it brought about, at least one paint of the canvas; None when nothing was painted."""
        before = self.count
        began, worked = time.perf_counter(), time.thread_time()
        act()
        QApplication.processEvents()
        turns = 0
        while self.count == before:
            if turns >= TURNS and time.perf_counter() - began > IDLE:
                return None
            QApplication.processEvents()
            turns += 1
        return (time.perf_counter() - began) * 1000, (time.thread_time() - worked) * 1000


def lines(rounds: int) -> Iterator[Line]:
    """One window, one drag after the other; the reference moves the same items and paints them, nothing else."""
    paint_alone()  # as a start of the program does
    give_back()
    application = QApplication.instance() or QApplication(["benchmarks"])
    application.setStyle("Fusion")
    Collector(application)
    with tempfile.TemporaryDirectory(prefix="pegwright-drag-") as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = MainWindow(free_from_row(demo(), TUNER), None, Windows(settings))
        window.resize(1360, 880)
        window.show()
        _settle(0.5)
        painted = Painted(window)
        scale = round(window.devicePixelRatioF())
        for words, way in (("drag of a tuner clear of others", CLEAR), ("drag of a tuner into others", TIGHT)):
            walls, alone, met = _drag(window, painted, way, max(2 * STEPS, rounds))
            yield _line(words, (walls, alone), MOST[scale], f"; snags with others in {met} frames")
            _settle(0.3)
        view = window.canvas.view
        most = MOST_LOOK if scale == 1 else None
        steps = range(max(1, rounds // 2))
        yield _line("a step of zooming", ([painted.frame(lambda k=k: view.zoom(1.1 if k % 12 < 6 else 1 / 1.1))
                                           for k in steps], []), most)
        yield _line("a step of panning", ([painted.frame(lambda k=k: view.pan(QPoint(9 if k % 20 < 10 else -9, 5)))
                                           for k in steps], []), most)
        window.document.replace(window.document.layout, None)
        window.close()
        window.deleteLater()
        _settle(0.1)


def _line(name: str, spent: tuple[list[Spent], list[Spent]], most: float | None, more: str = "") -> Line:
    walls, alone = ([wall for wall, _ in times] for times in spent)
    busy = [worked for _, worked in spent[0]]
    note = f"processor {part(busy, 0.5):.2f}, p95 {part(busy, 0.95):.2f}"
    if not alone:
        return Line(name, walls, most, note=note)
    bare = [worked for _, worked in spent[1]]
    return Line(name, walls, most, "its items moved and painted alone", alone, 2.0,
                f"{note}, ratio {part(busy, 0.5) / part(bare, 0.5):.2f}{more}")


def _drag(window: MainWindow, painted: Painted, way: tuple[Vec2, Vec2],
          rounds: int) -> tuple[list[Spent], list[Spent], int]:
    """Frames of a drag to and fro, and in between the same items pushed to and fro with nothing worked out.

    Also in how many of these frames the tuner had a snag with another feature."""
    view = window.canvas.view
    x, y = frames(window.document.layout)[TUNER].origin[:2]
    step = v.scale(v.sub(way[1], way[0]), 1 / STEPS)
    items = [item for item in window.canvas.items_of(TUNER)]
    place, left = view.viewport(), Qt.MouseButton.LeftButton
    QTest.mousePress(place, left, pos=view.mapFromScene(QPointF(x, y)))
    times: tuple[list[Spent], list[Spent]] = [], []
    met = 0
    for k in range(rounds + 2 * STEPS):
        at = v.add(way[0], v.scale(step, abs(k % (2 * STEPS) - STEPS)))
        pixel = view.mapFromScene(QPointF(x + at[0], y + at[1]))
        sign = 1 if k % 2 else -1

        def push(sign: int = sign) -> None:
            for item in items:
                item.moveBy(sign * step[0], sign * step[1])

        spent = painted.frame(lambda pixel=pixel: QTest.mouseMove(place, pixel)), painted.frame(push)
        if k >= 2 * STEPS and None not in spent:
            for one, kept in zip(spent, times, strict=True):
                kept.append(one)
            met += any(TUNER in snag.between and snag.grade != "note" for snag in window.document.result.snags)
    if (rounds + 2 * STEPS) % 2:
        push(-sign)
    QTest.mouseRelease(place, left, pos=view.mapFromScene(QPointF(x, y)))
    QApplication.processEvents()
    return *times, met


def _settle(seconds: float) -> None:
    ends = time.perf_counter() + seconds
    while time.perf_counter() < ends:
        QApplication.processEvents()
        time.sleep(0.005)
