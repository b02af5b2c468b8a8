"""A window on the bench, and a hand on its canvas."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.look.descendants import below
from app.panels.forms.fields import Field
from app.panels.forms.form import Form
from app.panels.strings.string_table import StringTable
from app.threads.background import running
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.rooms.room import StageRoom
from app.window.windows import Windows
from geometry.layout import Headstock
from geometry.solids import frames
from geometry.vectors import Vec2
from tests.waiting import on_screen, rest, until

NONE = Qt.KeyboardModifier.NoModifier


class Bench:
    """Drives a MainWindow with real mouse and key events at places given in mm."""

    def __init__(self, qtbot, tmp_path, layout: Headstock | None = None) -> None:
        settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
        self.window = MainWindow(layout or demo(), None, Windows(settings))
        qtbot.addWidget(self.window, before_close_func=_forget)
        self.window.resize(1360, 880)
        self.window.show()
        on_screen(self.window)
        self.view = self.window.canvas.view
        self.pump()

    @property
    def layout(self) -> Headstock:
        return self.window.document.layout

    def enter(self, stage: str) -> StageRoom:
        """Go to a stage; its room, as soon as it has planned what it tells."""
        self.window.set_stage(stage)
        self.planned(stage)
        return self.window.rooms[stage]

    def planned(self, stage: str) -> None:
        """Wait until the room of a stage shows the plan of the layout as it is."""
        room = self.window.rooms[stage]
        until(lambda: room.planning.current and room.errand.free, f"{stage} plans without end")
        self.pump()

    def pump(self) -> None:
        QApplication.processEvents()

    def pixel(self, at: Vec2) -> QPoint:
        return self.view.mapFromScene(QPointF(*at))

    def press(self, at: Vec2, keys: Qt.KeyboardModifier = NONE) -> None:
        QTest.mousePress(self.view.viewport(), Qt.MouseButton.LeftButton, keys, self.pixel(at))

    def move(self, at: Vec2) -> None:
        QTest.mouseMove(self.view.viewport(), self.pixel(at))
        self.pump()

    def release(self, at: Vec2, keys: Qt.KeyboardModifier = NONE) -> None:
        QTest.mouseRelease(self.view.viewport(), Qt.MouseButton.LeftButton, keys, self.pixel(at))
        self.pump()

    def click(self, at: Vec2, keys: Qt.KeyboardModifier = NONE) -> None:
        self.move(at)
        self.press(at, keys)
        self.release(at, keys)

    def drag(self, start: Vec2, end: Vec2, steps: int = 8) -> None:
        self.press(start)
        self.move_along(start, end, steps)
        self.release(end)

    def move_along(self, start: Vec2, end: Vec2, steps: int = 8) -> None:
        for i in range(1, steps + 1):
            self.move((start[0] + (end[0] - start[0]) * i / steps, start[1] + (end[1] - start[1]) * i / steps))

    def key(self, key: Qt.Key, keys: Qt.KeyboardModifier = NONE) -> None:
        QTest.keyClick(self.view, key, keys)
        self.pump()

    def text(self, text: str) -> None:
        QTest.keyClicks(self.view, text)
        self.pump()

    def origin(self, tuner: str) -> Vec2:
        """Seat or centre of a tuner in plan, mm."""
        return frames(self.layout)[tuner].origin[:2]

    def inside(self, tuner: str) -> Vec2:
        """A point on a side bore, 8 mm in from its seat."""
        frame = frames(self.layout)[tuner]
        return frame.at(0, 0, 8)[:2]

    def kinds(self) -> set[str]:
        return {snag.kind for snag in self.window.document.result.snags}


def at_rest(window: MainWindow) -> None:
    """Wait until what runs beside the window has come to an end and all rows are laid."""
    calm = 0

    def rests() -> bool:
        nonlocal calm
        rest(0.02)
        laid = all(part.complete for kind in (Form, StringTable) for part in below(window, kind) if part.isVisible())
        calm = calm + 1 if laid and not any(running(room) for room in window.rooms.made) else 0
        return calm == 4
    until(rests, "something never comes to an end")


def _forget(window: MainWindow) -> None:
    """Nobody is there to answer whether the test's work should be saved."""
    if isinstance(now := window.focusWidget(), Field):
        now.put_back()
    window.document.replace(window.document.layout, None)
