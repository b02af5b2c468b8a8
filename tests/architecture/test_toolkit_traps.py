"""Faults of the toolkit that came with some of its releases and must not come back unseen."""

import os
import re
import subprocess
import sys
from pathlib import Path

COUNT_NONE = """
import sys
from PySide6.QtWidgets import QApplication, QLabel
app = QApplication([])
label = QLabel()
before = sys.getrefcount(None)
for number in range(2000):
    label.setText("text")
    label.update()
print(before - sys.getrefcount(None))
"""

COUNT_METHOD = """
import sys
from PySide6.QtWidgets import QApplication, QWidget
class Breaks(QWidget):
    def paintEvent(self, event):
        raise ValueError("planted")
    closeEvent = showEvent = paintEvent
sys.excepthook = lambda kind, error, trace: None
app = QApplication([])
counts = []
for number in range(20):
    widget = Breaks()
    for act in (widget.show, widget.repaint, widget.close, app.processEvents):
        try:
            act()
        except ValueError:
            pass
    counts.append(sys.getrefcount(Breaks.paintEvent))
print(counts[0] - counts[-1])
"""


def test_a_call_without_a_result_keeps_the_references_to_none() -> None:
    """PySide6 6.12.0 lost one at each call under Python 3.10 and 3.11 and aborted after some thousands (measured)."""
    done = subprocess.run([sys.executable, "-c", COUNT_NONE], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert int(done.stdout) < 100


def test_a_method_that_raises_while_it_is_called_from_python_keeps_its_references() -> None:
    """One that lost a reference at each such call was freed under its class, and the next call ended the program."""
    done = subprocess.run([sys.executable, "-c", COUNT_METHOD], capture_output=True, text=True,
                          env={**os.environ, "QT_QPA_PLATFORM": "offscreen"})
    assert done.returncode == 0, done.stderr
    assert int(done.stdout.split()[-1]) <= 0


def test_no_part_connects_to_a_method_of_the_window() -> None:
    """The binding makes a slot of it and gives the window another table of slots; where a fault then runs through the painting
    of a part, PySide6 6.11 jumps to nowhere (measured). A part connects to a signal of `Frame`, or to a method of its own."""
    from PySide6.QtCore import Signal

    from app.window.frame import Frame
    window = Path(__file__).parents[2] / "app" / "window"
    found = [(file.name, name) for file in window.rglob("*.py")
             for name in re.findall(r"connect\((?:self\.)?_?w(?:indow)?\.(\w+)\)", file.read_text(encoding="utf-8"))]
    assert found and [one for one in found if not isinstance(vars(Frame).get(one[1]), Signal)] == []
