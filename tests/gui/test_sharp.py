"""Screens with more pixels to a point: everything painted at their grain, hit where it is shown, hairlines seen.

Each factor is a program of its own, as Qt reads it at the start.
"""

import json
import os
import subprocess
import sys

import pytest

from app.setup.places import CHECKOUT

PROGRAM = '''
import json, sys, tempfile
from pathlib import Path
import numpy as np
from PySide6.QtCore import QEventLoop, QPoint, QPointF, QSettings, QSize, Qt, QTimer
from PySide6.QtGui import QColor, QImage, QPixmap
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from app.look.icons import button_icon
from app.look.picture import picture
from app.look.theme import DAY

from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows
from geometry.drawing import Stroke
from geometry.drawing.shapes import straight
from geometry.solids import frames

application = QApplication([])
application.setStyle("Fusion")
folder = tempfile.TemporaryDirectory()
window = MainWindow(demo(), None, Windows(QSettings(folder.name + "/s.ini", QSettings.Format.IniFormat)))
window.resize(1100, 700)
window.show()

def rest(ms):
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()

rest(100)
ratio = window.devicePixelRatioF()
told = {"ratio": ratio}

def grey(pixmap):
    image = pixmap.toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    return np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())[:, :image.width()].astype(int)

shot = window.grab()
told["size"] = [shot.width(), shot.height(), shot.devicePixelRatio()]

# Sharp: a picture painted at half the grain and blown up has pairs of pixels alike; one at its own grain has not.
def doubled(area):
    a = grey(area)
    h, w = a.shape[0] // 2 * 2, a.shape[1] // 2 * 2
    a = a[:h, :w]
    there = np.abs(np.diff(a, axis=1)).max(axis=1) > 0
    inner = np.abs(a[:, 1:-1:2] - a[:, 2::2][:, :a[:, 1:-1:2].shape[1]])
    across = np.abs(a[:, 0:-1:2] - a[:, 1::2])
    return float(across[there].sum()) / max(1.0, float(inner[there].sum()))

told["ruler"] = doubled(window.canvas._top.grab())
told["canvas"] = doubled(window.canvas.view.viewport().grab())
small = picture((Stroke(straight((0, 0), (37, 53)), "outline"),), DAY, 120, 90, ratio)
told["small picture"] = [small.width(), small.devicePixelRatio()]
icon = button_icon("hold").pixmap(QSize(18, 18), ratio)
told["icon"] = [icon.width(), icon.devicePixelRatio()]

# Hit: a press where a tuner is shown holds that tuner.
view = window.canvas.view
found = {}
for tuner in ("treble face 2", "bass face 1", "treble side 2"):
    at = frames(window.document.layout)[tuner].at(0, 0, 8 if "side" in tuner else 0)[:2]
    point = view.mapFromScene(QPointF(*at))
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, point)
    found[tuner] = list(window.document.held)
told["held"] = found
window.document.hold(())
rest(60)

# Hairlines: in a row through the fold and the outline the lines are darker than what they lie on.
edge = window.canvas.view.viewport().grab().toImage()
def darkest(mm):
    point = view.mapFromScene(QPointF(*mm))
    x, y, reach = point.x() * ratio, point.y() * ratio, round(3 * ratio)
    around = [QColor(edge.pixel(round(x) + i, round(y) + j)).lightness()
              for i in range(-reach, reach + 1) for j in range(-reach, reach + 1)]
    return max(around) - min(around)
blank = window.document.layout.blank
told["lines"] = {"outline": darkest((0.0, 190.0)), "blank": darkest((blank.treble + blank.thickness, 100.0)),
                 "centreline": max(darkest((0.0, y)) for y in range(60, 150, 2))}
print(json.dumps(told))
window.document.replace(window.document.layout, None)
window.close()
window.windows.end()  # as the program does: else everything is destroyed in any order
'''


def started(factor: str, tmp_path) -> dict:
    env = {**os.environ, "QT_SCALE_FACTOR": factor, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(CHECKOUT)}
    done = subprocess.run([sys.executable, "-c", PROGRAM], env=env, cwd=tmp_path, capture_output=True, text=True, timeout=900)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout.splitlines()[-1])


@pytest.mark.parametrize("factor", ["1", "1.5", "2"])
def test_the_window_is_sharp_and_hit_where_it_is_shown(factor, tmp_path):
    told, ratio = started(factor, tmp_path), float(factor)
    assert told["ratio"] == ratio
    assert told["size"] == [round(1100 * ratio), round(700 * ratio), ratio]
    assert told["small picture"] == [round(120 * ratio), ratio]
    assert told["icon"][0] == pytest.approx(18 * ratio, abs=1)
    assert told["held"] == {name: [name] for name in told["held"]}
    for line, step in told["lines"].items():
        assert step > 40, (line, step)
    if ratio == 2:
        assert told["ruler"] > 0.3 and told["canvas"] > 0.3, told
