"""What has the keyboard is seen: in both sets of colours a frame appears that stands out from what was there before.

WCAG 2.2, success criterion 2.4.13: the pixels that change keep 3:1 between the two states and are at least as many
as a line of 2 pixels round the part would take; here at least one line of 1 pixel is asked for, since corners are round.
"""

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QAbstractButton, QApplication, QWidget

from app.look import walk
from app.look.theme import DAY, LAMP
from tests.gui.bench import at_rest


def picture(window: QWidget, area: QRect) -> np.ndarray:
    """Relative luminance of each pixel (WCAG 2.x)."""
    image = window.grab(area).toImage().convertToFormat(QImage.Format.Format_RGB32)
    raw = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine() // 4, 4)
    channels = raw[:, :image.width(), 2::-1].astype(float) / 255
    linear = np.where(channels <= 0.04045, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)
    return linear @ np.array([0.2126, 0.7152, 0.0722])


def changed(window: QWidget, widget: QWidget) -> tuple[int, int]:
    """(pixels that changed by 3:1 or more when the widget got the keyboard, pixels of a line round it)."""
    area = QRect(widget.mapTo(window, QPoint(0, 0)), widget.size()).adjusted(-3, -3, 3, 3).intersected(window.rect())
    other = window.stages if not window.stages.isAncestorOf(widget) else window.canvas.view
    other = walk.stops(window.stages)[0] if other is window.stages else other
    other.setFocus()
    QApplication.processEvents()
    before = picture(window, area)
    widget.setFocus()
    QApplication.processEvents()
    assert widget.hasFocus()
    after = picture(window, area)
    bright, dark = np.maximum(before, after) + 0.05, np.minimum(before, after) + 0.05
    seen = widget.visibleRegion().boundingRect()
    return int((bright / dark >= 3).sum()), seen.width() + seen.height()


def kind(widget: QWidget) -> tuple:
    checked = widget.isChecked() if isinstance(widget, QAbstractButton) else None
    return type(widget).__name__, widget.objectName(), checked, widget.property("bad")


@pytest.mark.parametrize("theme", [DAY, LAMP], ids=["day", "lamp"])
def test_focus_is_seen_on_every_kind_of_part(bench, theme):
    window = bench.window
    window.actions_[theme.name].trigger()
    window.activateWindow()
    done, faint = set(), []
    for stage in ("tuners", "router", "order", "sheets", "book") if theme is DAY else ("tuners", "book"):
        window.set_stage(stage)
        if stage == "tuners":
            window.show_solid(True)
            window.document.hold(("treble side 3",))
        at_rest(window)
        for widget in walk.stops(window):
            if kind(widget) in done or widget.visibleRegion().isEmpty():
                continue
            done.add(kind(widget))
            got, needed = changed(window, widget)
            if got < needed:
                faint.append((stage, kind(widget), got, needed))
        window.show_solid(False)
    assert not faint
    assert len(done) > 10
