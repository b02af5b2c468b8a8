"""Faults of the toolkit that came with some of its releases and must not come back unseen."""

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


def test_a_call_without_a_result_keeps_the_references_to_none() -> None:
    """PySide6 6.12.0 lost one at each call under Python 3.10 and 3.11 and aborted after some thousands (measured)."""
    done = subprocess.run([sys.executable, "-c", COUNT_NONE], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert int(done.stdout) < 100


def test_no_part_connects_to_a_method_of_the_window() -> None:
    """The binding makes a slot of it and gives the window another table of slots; where a fault then runs through the painting
    of a part, PySide6 6.11 jumps to nowhere (measured). A part connects to a signal of `Frame`, or to a method of its own."""
    from PySide6.QtCore import Signal

    from app.window.frame import Frame
    window = Path(__file__).parents[2] / "app" / "window"
    found = [(file.name, name) for file in window.rglob("*.py")
             for name in re.findall(r"connect\((?:self\.)?_?w(?:indow)?\.(\w+)\)", file.read_text(encoding="utf-8"))]
    assert found and [one for one in found if not isinstance(vars(Frame).get(one[1]), Signal)] == []
