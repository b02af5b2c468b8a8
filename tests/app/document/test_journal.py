"""The journal: what a program that died had not saved comes back, what is safe is forgotten."""

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.window.demo import demo

ROOT = Path(__file__).parents[3]
DIES = """
import sys, time
from pathlib import Path
from PySide6.QtCore import QCoreApplication
from msgspec.structs import replace
from app.document.journal import Journal
from app.window.demo import demo
app = QCoreApplication([])
journal = Journal(Path(sys.argv[1]))
for i in range(10_000):
    journal.note(replace(demo(), name=f"step {i}"), Path("/somewhere/head.headstock.json"))
    journal.write()
    print(i, flush=True)
"""


def test_unsaved_work_is_written_within_its_delay(qtbot, tmp_path):
    journal = Journal(tmp_path / "new folder")
    journal.note(demo(), None)
    qtbot.waitUntil(journal.file.exists, timeout=3000)
    assert leftovers(tmp_path / "new folder") == [], "a running program's work is no leftover"
    journal.clear()
    assert not journal.file.exists()


@pytest.mark.skipif(os.name == "nt", reason="kill -9 is for POSIX")
@pytest.mark.parametrize("moment", [1, 7, 23])
def test_killed_at_any_moment_a_whole_layout_comes_back(qtbot, tmp_path, moment):
    process = subprocess.Popen([sys.executable, "-c", DIES, str(tmp_path)], cwd=ROOT, stdout=subprocess.PIPE, text=True)
    last = 0
    for line in process.stdout:
        last = int(line)
        if last >= moment:
            process.send_signal(signal.SIGKILL)
            break
    process.stdout.close()
    process.wait()
    found = leftovers(tmp_path)
    assert len(found) == 1
    # The kill may come a few steps after the line that was read.
    assert int(found[0].layout.name.removeprefix("step ")) >= last
    assert found[0].path == Path("/somewhere/head.headstock.json")
    found[0].forget()
    assert leftovers(tmp_path) == []


def test_a_broken_journal_is_passed_over(qtbot, tmp_path):
    (tmp_path / "x.journal.json").write_text('{"layout": "no"}')
    (tmp_path / "y.journal.json").write_bytes(b"\xff\x00")
    assert leftovers(tmp_path) == []


def test_a_place_that_cannot_be_written_is_told_and_the_work_goes_on(qtbot, tmp_path):
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    journal = Journal(blocked)
    journal.note(replace(demo(), name="kept in memory"), None)
    journal.write()
    assert journal.trouble
    journal.clear()
