"""Where a window lies and how it is divided: kept from one run to the next, and mended when the screen has changed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QPoint, QRect, QSettings, QSize, Qt
from PySide6.QtGui import QGuiApplication

from app.look.sizes import FRAME
from app.window.stages import STAGES

if TYPE_CHECKING:
    from app.window.frame import Frame

USUAL = QSize(1360, 880)
GRIP = QSize(120, 40)
"""So much of the upper edge has to be on some screen, that the window can be taken by it, in points."""
FIRST_STAGE = "tuners"


def restore(window: Frame) -> None:
    """Put the window where it was last, or somewhere sound."""
    settings = window.settings
    window.resize(USUAL.boundedTo(QGuiApplication.primaryScreen().availableSize() - FRAME))
    kept = settings.value("geometry")
    if isinstance(kept, QByteArray) and window.restoreGeometry(kept):
        to_reach(window)
    for key, divide in (("splitter", window.splitter.restoreState), ("side splitter", window.side.divide)):
        state = settings.value(key)
        if isinstance(state, QByteArray):
            divide(state)


def keep(window: Frame) -> None:
    """Note where the window lies, how it is divided and which stage it shows."""
    settings = window.settings
    window.show_panel(True)  # a division without it is none to come back to
    settings.setValue("geometry", window.saveGeometry())
    settings.setValue("splitter", window.splitter.saveState())
    settings.setValue("side splitter", window.side.inside.state())
    settings.setValue("stage", window.stage)


def kept_stage(settings: QSettings) -> str:
    """The stage that was on show last, for going on with a layout."""
    stage = settings.value("stage", FIRST_STAGE)
    return stage if any(stage == known.key for known in STAGES) else FIRST_STAGE


def to_reach(window: Frame) -> None:
    """Bring back a window that lies outside every screen, or is larger than its own."""
    screens = [screen.availableGeometry() for screen in QGuiApplication.screens()]
    mended = reachable(window.geometry(), screens)
    if mended != window.geometry() and not window.windowState() & (
            Qt.WindowState.WindowMaximized | Qt.WindowState.WindowFullScreen):
        window.setGeometry(mended)


def reachable(place: QRect, screens: list[QRect]) -> QRect:
    """The place itself while its upper edge can be taken hold of on one of the screens and it is no larger than that
    screen; else the nearest such place on the screen that it covers most, the first if it covers none. No screens: as it is."""
    if not screens:
        return place
    best = max(screens, key=lambda screen: _area(screen.intersected(place)))
    upper = QRect(place.topLeft(), QSize(place.width(), GRIP.height()))
    held = best.intersected(upper)
    fits = place.width() <= best.width() and place.height() <= best.height()
    if fits and held.width() >= min(GRIP.width(), place.width()) and held.height() == GRIP.height():
        return place
    size = place.size().boundedTo(best.size())
    x = min(max(place.x(), best.left()), best.right() + 1 - size.width())
    y = min(max(place.y(), best.top()), best.bottom() + 1 - size.height())
    return QRect(QPoint(x, y), size)


def beside(window: Frame, other: Frame, step: int) -> None:
    """Lay a new window a step (points) to the right and down of another, as large as that, or at the upper left where no room is
    for it and the title that the desktop puts over it."""
    if other.isMaximized() or other.isFullScreen():
        return
    screen, title = other.screen().availableGeometry(), other.frameGeometry().size() - other.size()
    size = other.size().boundedTo(screen.size() - QSize(step, step) - title)
    at = other.pos() + QPoint(step, step)
    if not screen.contains(QRect(at, size + title)):
        at = screen.topLeft() + QPoint(step, step)
    window.resize(size)
    window.move(at)
    to_reach(window)


def _area(box: QRect) -> int:
    return max(0, box.width()) * max(0, box.height())
