"""The journal: what a program that died had not saved comes back, what is safe is forgotten."""

import json
import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.formats import headstock
from app.window.demo import demo
from geometry.layout.book import Remark
from tests.endurance.whole import whole
from tests.spent import within

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
    qtbot.waitUntil(journal.file.exists)
    assert leftovers(tmp_path / "new folder") == [], "a running program's work is no leftover"
    journal.clear()
    qtbot.waitUntil(lambda: not journal.file.exists())
    journal.end()


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


def test_every_field_of_a_layout_comes_back(qtbot, tmp_path):
    for layout in (whole(), replace(demo(), name="half a character: \ud800")):
        journal = Journal(tmp_path)
        journal.note(layout, tmp_path / "head.headstock.json", "seen")
        journal.write()
        journal._lock.unlock()
        one, = leftovers(tmp_path)
        assert headstock.encode(one.layout) == headstock.encode(layout) and one.seen == "seen"
        one.forget()


@pytest.mark.skipif(os.name == "nt", reason="names are bytes on POSIX")
def test_a_path_whose_bytes_are_no_letters_comes_back(qtbot, tmp_path):
    path = Path(os.fsdecode(b"/head \xff.headstock.json"))
    journal = Journal(tmp_path)
    journal.note(demo(), path)
    journal.write()
    assert not journal.trouble
    journal._lock.unlock()
    assert leftovers(tmp_path)[0].path == path


def test_many_megabytes_of_notes_are_written_down_in_a_moment(qtbot, tmp_path):
    """What is written each second beside the hand must not hold it up."""
    notes = tuple(Remark(piece="real", text=f"{number} " + 20 * "a note ") for number in range(50_000))
    journal = Journal(tmp_path)
    journal.note(replace(demo(), book=replace(demo().book, remarks=notes)), None)
    with within(0.7):
        journal.write()
    assert not journal.trouble and journal.file.stat().st_size > 7e6
    journal._lock.unlock()
    assert leftovers(tmp_path)[0].layout.book.remarks == notes


def test_a_broken_journal_is_passed_over(qtbot, tmp_path):
    (tmp_path / "x.journal.json").write_text('{"layout": "no"}')
    (tmp_path / "y.journal.json").write_bytes(b"\xff\x00")
    assert leftovers(tmp_path) == []


def left(folder: Path) -> Path:
    """A journal as a program that died leaves it; its lock, long made and held by nobody."""
    journal = Journal(folder)
    journal.note(demo(), None)
    journal.write()
    journal._lock.unlock()
    lock = journal.file.with_suffix(".lock")
    lock.touch()
    os.utime(lock, (1, 1))
    return lock


@pytest.mark.parametrize("words", [
    b"", bytes(64), b"no lock at all", b"1\ninit\nhere\n", f"{os.getpid()}\npython3\n{os.uname().nodename if os.name != 'nt' else ''}\n".encode()],
    ids=["nothing", "zeroes", "rubbish", "a program that runs", "this program"])
@pytest.mark.parametrize("when", [1, 4e9], ids=["long ago", "by a clock that has jumped back"])
def test_a_lock_that_nobody_holds_never_keeps_work_from_being_offered(qtbot, tmp_path, words, when):
    """As after a loss of power: the journal is on the disk, the lock is empty, or its number is another program's now."""
    lock = left(tmp_path)
    lock.write_bytes(words)
    os.utime(lock, (when, when))
    assert len(leftovers(tmp_path)) == 1
    lock.write_bytes(words)
    os.utime(lock, (when, when))
    one, = leftovers(tmp_path)
    assert one.claim()
    one.release()


def test_a_lock_that_is_held_is_kept_however_old_it_looks(qtbot, tmp_path):
    journal = Journal(tmp_path)
    journal.note(demo(), None)
    journal.write()
    for when in (1, 4e9):
        os.utime(journal.file.with_suffix(".lock"), (when, when))
        look = "from pathlib import Path; from app.document.leftovers import leftovers; print(len(leftovers(Path({!r}))))"
        other = subprocess.run([sys.executable, "-c", look.format(str(tmp_path))], cwd=ROOT, capture_output=True, text=True)
        assert other.stdout == "0\n", other.stderr
        assert leftovers(tmp_path) == []
    journal.end()


@pytest.mark.parametrize("spoil", [
    lambda r: r | {"layout": {}}, lambda r: [r], lambda r: None,
    lambda r: {"layout": "x" * 50_000_000}, lambda r: r | {"layout": r["layout"].replace('"pegwright":1', '"pegwright":2')}])
def test_a_spoiled_journal_is_left_where_it_is(qtbot, tmp_path, spoil):
    lock = left(tmp_path)
    file = lock.with_suffix(".json")
    data = json.dumps(spoil(json.loads(file.read_bytes()))).encode()
    file.write_bytes(data)
    assert leftovers(tmp_path) == [] and file.read_bytes() == data


@pytest.mark.parametrize("when", [-1e10, 0, 1e13], ids=["before all clocks", "the first second", "far ahead"])
def test_work_from_any_moment_is_offered(qtbot, tmp_path, when):
    file = left(tmp_path).with_suffix(".json")
    os.utime(file, (when, when))
    assert leftovers(tmp_path)[0].when.year in range(1900, 9999)


@pytest.mark.skipif(os.name == "nt", reason="kinds of files that POSIX systems have")
def test_what_is_no_file_in_the_journal_folder_holds_nothing_up(qtbot, tmp_path):
    left(tmp_path)
    os.mkfifo(tmp_path / "a.journal.json")
    (tmp_path / "b.journal.json").mkdir()
    (tmp_path / "c.journal.json").symlink_to("/dev/zero")
    (tmp_path / "d.journal.json").symlink_to("d.journal.json")
    assert len(leftovers(tmp_path)) == 1
    assert leftovers(tmp_path / "a.journal.json") == []


def test_a_place_that_cannot_be_written_is_told_and_the_work_goes_on(qtbot, tmp_path):
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    journal = Journal(blocked)
    journal.note(replace(demo(), name="kept in memory"), None)
    journal.write()
    assert journal.trouble
    journal.end()
