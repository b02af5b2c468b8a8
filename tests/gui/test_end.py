"""The program ends when its last window is closed, in order: windows first, then the toolkit, with exit code 0 and not a word."""

import os
import subprocess
import sys

import pytest

from app.setup.places import CHECKOUT
from app.window.demo import DEMO, samples

CODE = """
import faulthandler, sys
from pathlib import Path
faulthandler.enable()
from PySide6.QtCore import QTimer
from app import window as program
from app.window import windows as known
found = []
def opened(self, window, own=known.Windows.add):
    own(self, window)
    found.append(self)
known.Windows.add = opened
def work():
    first = found[0].all[0]
    WORK
    for window in found[0].all:
        window.asked = True
        window.close()
from PySide6.QtWidgets import QApplication
def run_until_closed(self=None, own=QApplication.exec):
    QTimer.singleShot(WAIT, work)
    return own()
QApplication.exec = run_until_closed
code = program.run(Path(FILE))
left = [type(one).__name__ for one in QApplication.topLevelWidgets() if one.isWindow() and "MainWindow" in type(one).__name__]
print("left", *left)
sys.exit(code)
"""
STAGES = """
    from app.window.stages import STAGES
    for stage in STAGES:
        first.set_stage(stage.key)
        QApplication.processEvents()
"""
TWO = """
    found[0].empty()
    QApplication.processEvents()
"""


GONE = """
    import os, time
    real = os.stat
    os.stat = lambda path, *more, **named: time.sleep(9999) if str(path).startswith("/gone") else real(path, *more, **named)
    first.recent_menu.there.look([Path("/gone/head.headstock.json")])
"""


@pytest.mark.parametrize(("work", "wait"), [("pass", 0), ("pass", 1700), (STAGES, 100), (TWO, 100)],
                         ids=["at once", "while rooms are loaded", "after every stage", "two windows"])
def test_the_program_ends_in_order(tmp_path, work, wait):
    done = ended(tmp_path, work, wait)
    said = [line for line in done.stderr.splitlines() if "plugin does not support" not in line]
    assert done.returncode == 0 and not said, (done.returncode, said[-20:])
    assert done.stdout.split() == ["left"]


def test_the_program_ends_while_a_drive_that_has_gone_is_asked(tmp_path):
    """Its thread cannot be ended, and the toolkit would end the program with an error when it is destroyed."""
    done = ended(tmp_path, GONE, 100)
    said = [line for line in done.stderr.splitlines() if "plugin does not support" not in line]
    assert done.returncode == 0 and not said, (done.returncode, said[-20:])


def ended(folder, work: str, wait: int) -> subprocess.CompletedProcess:
    """The program run with something done in it before its windows are closed."""
    places = {name: str(folder) for name in ("XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "APPDATA", "LOCALAPPDATA")}
    code = CODE.replace("WORK", work.strip()).replace("WAIT", str(wait)).replace("FILE", repr(str(samples() / DEMO)))
    # Freed memory is filled, so that whoever still looks at it falls over it.
    return subprocess.run([sys.executable, "-c", code], cwd=CHECKOUT, capture_output=True, text=True, timeout=900,
                          env=os.environ | places | {"MALLOC_PERTURB_": "165", "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"})
