"""Unsaved work that cannot be read, or lies where no lock can be made, is neither passed over in silence nor touched."""

import json
import os
import subprocess
from contextlib import contextmanager, suppress
from datetime import datetime

import pytest

from app.document.journal import Journal
from app.document.leftovers import found_in, lock_of
from app.formats import headstock
from app.window.demo import demo

DEAD = "999999999\npython3.11\nhere\n\n\n"
"""A lock as a program leaves it that was killed; no system counts its programs so far."""


@pytest.fixture
def journal(qapp, tmp_path):
    """A journal as a program that died leaves it."""
    made = Journal(tmp_path / "journal")
    made.note(demo(), tmp_path / "größe “a”.headstock.json")
    made.write()
    made._lock.unlock()
    return made.file


@contextmanager
def small_disk(place, size):
    place.mkdir(exist_ok=True)
    try:
        subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={size}", "none", place], check=True, capture_output=True)
    except (OSError, subprocess.SubprocessError):
        pytest.skip("no small file system can be made here")
    try:
        yield place
    finally:
        subprocess.run(["umount", place], check=True)


def only_unreadable(folder):
    found = found_in(folder)
    assert not found.left
    one, = found.unreadable
    return one


def test_of_half_a_journal_it_is_told_whose_it_was(journal, tmp_path):
    whole = journal.read_bytes()
    for share in (0.3, 0.7, 0.999):
        half = whole[:int(len(whole) * share)]
        journal.write_bytes(half)
        one = only_unreadable(journal.parent)
        assert one.file == journal and "breaks off or is damaged" in one.why
        assert one.path == str(tmp_path / "größe “a”.headstock.json") and one.when.year == datetime.now().year
        assert journal.read_bytes() == half
    for bits in (b"", whole[:12], bytes(len(whole)), b"\xff" * 50):
        journal.write_bytes(bits)
        one = only_unreadable(journal.parent)
        assert one.why and one.path == "" and journal.read_bytes() == bits


def test_a_journal_of_a_newer_version_says_to_update(journal):
    record = json.loads(journal.read_bytes())
    record["layout"] = record["layout"].replace('"pegwright":1', '"pegwright":7')
    journal.write_text(json.dumps(record))
    one = only_unreadable(journal.parent)
    assert "version 7" in one.why and "Update Pegwright" in one.why and journal.exists()


@pytest.mark.parametrize("record", [{}, [1], None, "words", 5, {"layout": None}, {"path": 5, "layout": ["a"]}])
def test_what_holds_no_layout_is_told_as_that(journal, record):
    journal.write_text(json.dumps(record))
    assert only_unreadable(journal.parent).why == "It holds no layout."


@pytest.mark.parametrize("other", [{"path": 5}, {"path": ["a"]}, {"path": "a\0b"}, {"path": ""}, {"seen": 7}, {"more": {}}])
def test_a_whole_layout_is_offered_whatever_else_is_spoiled(journal, other):
    record = json.loads(journal.read_bytes()) | other
    journal.write_text(json.dumps(record))
    found = found_in(journal.parent)
    one, = found.left
    assert one.layout == demo() and not found.unreadable and (one.path is None) == ("path" in other)
    assert one.seen is None


@pytest.mark.skipif(os.name == "nt", reason="times of POSIX systems")
def test_a_time_that_no_calendar_has_hides_nothing(journal, monkeypatch):
    from app.document import leftovers
    monkeypatch.setattr(leftovers, "_written", lambda file: 1e300)
    one, = found_in(journal.parent).left
    assert one.layout == demo() and one.when == datetime.min


def test_a_name_that_leads_nowhere_and_a_folder_of_that_name(journal):
    journal.unlink()
    journal.symlink_to("gone")
    assert "leads to no file" in only_unreadable(journal.parent).why
    journal.unlink()
    journal.mkdir()
    assert "cannot be opened" in only_unreadable(journal.parent).why


def test_a_folder_that_cannot_be_opened_is_told(qapp, tmp_path, monkeypatch):
    from app.document import leftovers

    def refused(folder):
        raise PermissionError(13, "Permission denied")
    monkeypatch.setattr(leftovers.os, "listdir", refused)
    one = only_unreadable(tmp_path)
    assert one.file == one.folder == tmp_path and "you have no right" in one.why
    assert found_in(tmp_path).left == []


def test_a_folder_that_was_never_made_is_nothing_to_tell(qapp, tmp_path):
    assert found_in(tmp_path / "none") == found_in(tmp_path / "none" / "deeper")
    assert not found_in(tmp_path / "none").unreadable


@pytest.mark.parametrize("lock", [None, "", DEAD], ids=["no lock", "an empty lock", "of a program that died"])
def test_on_a_full_disk_work_is_offered(qapp, tmp_path, lock):
    with small_disk(tmp_path / "small", "128k") as place:
        file = place / "one.journal.json"
        file.write_text(json.dumps({"path": None, "seen": None, "layout": headstock.encode(demo()).decode()}))
        if lock is not None:
            file.with_suffix(".lock").write_text(lock)
            os.utime(file.with_suffix(".lock"), (1, 1))
        with suppress(OSError), open(place / "rest", "wb", buffering=0) as rest:
            while rest.write(bytes(4096)):
                pass
        if lock is None:
            assert not lock_of(file).tryLock(0), "no lock can be made"
        one, = found_in(place).left
        assert one.claim() and one.layout == demo()
        one.release()


@pytest.mark.parametrize("lock", [None, "", DEAD], ids=["no lock", "an empty lock", "of a program that died"])
def test_on_a_disk_that_can_only_be_read_work_is_offered(qapp, tmp_path, lock):
    with small_disk(tmp_path / "small", "256k") as place:
        file = place / "one.journal.json"
        file.write_text(json.dumps({"path": None, "seen": None, "layout": headstock.encode(demo()).decode()}))
        if lock is not None:
            file.with_suffix(".lock").write_text(lock)
        held = place / "held.journal.json"
        held.write_bytes(file.read_bytes())
        held.with_suffix(".lock").write_text(DEAD.replace("999999999", str(os.getpid())))
        subprocess.run(["mount", "-o", "remount,ro", place], check=True)
        one, = found_in(place).left
        assert one.file == file, "and not the work of a program that runs"
        assert one.claim()
        one.release()


def test_a_journal_whose_lock_could_not_be_made_at_first_is_locked_as_soon_as_it_can_be(qapp, tmp_path):
    with small_disk(tmp_path / "small", "128k") as place:
        journal = Journal(place)
        with suppress(OSError), open(place / "rest", "wb", buffering=0) as rest:
            while rest.write(bytes(4096)):
                pass
        journal.note(demo(), None)
        told = []
        journal.troubled.connect(told.append)
        journal.write()
        assert "the disk is full" in told[-1] and not journal._lock.isLocked()
        (place / "rest").unlink()
        journal.write()
        assert told[-1] == "" and len(told) == 2 and journal._lock.isLocked() and journal.file.exists()
        journal.end()
