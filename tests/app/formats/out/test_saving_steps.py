"""Saving with every step made to fail, one after the other: the name holds the old layout or the new one, whole."""

import errno
import os
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats import headstock, saving
from app.formats.errors import FormatError, Unconfirmed
from app.formats.saving import BEFORE, before, save_bytes, sweep
from app.window.demo import demo
from tests.app.formats.out.failing_disk import ERRORS, Died, FailingDisk

OLDEST, OLD, NEW = (replace(demo(), name=name) for name in ("oldest", "old", "a new name"))
pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="steps of POSIX systems")


def calls(folder: Path, monkeypatch, failing: FailingDisk, old: bool) -> tuple[Path, str]:
    """Save NEW over OLD (over nothing without `old`) on a failing disk; how it ended."""
    path = folder / "head.headstock.json"
    if old:
        headstock.write(OLDEST, path)
        headstock.write(OLD, path)
    with monkeypatch.context() as patch:
        patch.setattr(saving, "os", failing)
        try:
            return path, "saved" if headstock.write(NEW, path) else "saved without the version before"
        except FormatError as error:
            placed = isinstance(error, Unconfirmed)
            assert ("is written, but the disk did not confirm" if placed else "cannot be written") in str(error)
            assert (headstock.read(path) == NEW if placed else not path.exists() or headstock.read(path) == OLD)
            return path, "refused"
        except Died:
            return path, "died"


def count(folder: Path, monkeypatch, old: bool) -> list[str]:
    folder.mkdir()
    counting = FailingDisk(10_000, errno.EIO)
    assert calls(folder, monkeypatch, counting, old)[1] == "saved"
    return counting.calls


@pytest.mark.parametrize("old", [True, False], ids=["over an earlier file", "a new file"])
@pytest.mark.parametrize("number", ERRORS, ids=lambda e: errno.errorcode.get(e, e))
def test_whichever_step_fails_a_whole_layout_is_there(tmp_path, monkeypatch, number, old):
    steps = count(tmp_path / "count", monkeypatch, old)
    assert {"write", "fsync", "read", "replace"} <= set(steps) and len(steps) >= 9
    endings = set()
    for at in range(len(steps)):
        folder = tmp_path / str(at)
        folder.mkdir()
        path, ending = calls(folder, monkeypatch, FailingDisk(at, number), old)
        endings.add(ending)
        if ending.startswith("saved"):
            assert headstock.read(path) == NEW, steps[at]
        elif old:
            assert headstock.read(path) in (OLD, NEW), steps[at]
        elif path.exists():
            assert headstock.read(path) == NEW, steps[at]
        if ending == "saved" and old:
            assert headstock.read(before(path)) == OLD
        elif old:
            # The version before is never newer than the file, and never half a file.
            assert headstock.read(before(path)) in (OLDEST, OLD)
        if number not in ("dies", errno.EACCES):
            tidy = {path.name, before(path).name}
            left = set(os.listdir(folder)) - tidy
            assert not left or steps[at] == "unlink"
    if number in ("short", "dies"):
        assert endings == {"saved" if number == "short" else "died"}
    else:
        assert "refused" in endings and "died" not in endings


def test_a_full_disk_is_full_at_every_write_and_says_so(tmp_path, monkeypatch):
    path = tmp_path / "head.headstock.json"
    headstock.write(OLD, path)
    real = os.write
    monkeypatch.setattr(os, "write", lambda handle, data: real(handle, data[:7000]) if os.fstat(handle).st_size < 7000
                        else (_ for _ in ()).throw(OSError(errno.ENOSPC, "No space left on device")))
    with pytest.raises(FormatError, match="the disk is full"):
        headstock.write(NEW, path)
    assert headstock.read(path) == OLD
    assert os.listdir(tmp_path) == [path.name]


def test_the_version_before_is_the_one_before_and_the_same_bytes_make_none(tmp_path):
    path = tmp_path / "head.headstock.json"
    headstock.write(OLDEST, path)
    assert not before(path).exists()
    headstock.write(OLD, path)
    assert headstock.read(before(path)) == OLDEST
    headstock.write(OLD, path)
    assert headstock.read(before(path)) == OLDEST, "saving twice keeps what differs"
    headstock.write(NEW, path)
    assert headstock.read(before(path)) == OLD


def test_without_second_names_the_version_before_is_copied(tmp_path, monkeypatch):
    path = tmp_path / "head.headstock.json"
    headstock.write(OLD, path)
    monkeypatch.delattr(os, "link")
    assert headstock.write(NEW, path)
    assert headstock.read(before(path)) == OLD


def test_a_name_so_long_that_no_ending_fits_is_saved_all_the_same(tmp_path):
    for last, one, other in (("é", OLD, NEW), ("è", NEW, OLD)):  # names that begin alike keep their versions apart
        path = tmp_path / ("x" * (253 - len(".headstock.json")) + f"{last}.headstock.json")
        headstock.write(one, path)
        assert headstock.write(other, path)
        assert headstock.read(path) == other and headstock.read(before(path)) == one
        assert before(path).name.startswith("xxx") and before(path).name.endswith(BEFORE)
    assert len(os.listdir(tmp_path)) == 4
    with pytest.raises(FormatError, match="its name is too long"):
        headstock.write(NEW, tmp_path / ("x" * 300))


def test_a_link_stays_a_link(tmp_path):
    (tmp_path / "real").mkdir()
    target, link = tmp_path / "real" / "a.txt", tmp_path / "a.txt"
    target.write_bytes(b"one")
    link.symlink_to(target)
    save_bytes(link, b"two", keep_before=True)
    assert link.is_symlink() and target.read_bytes() == b"two"
    assert (tmp_path / "real" / f"a.txt{BEFORE}").read_bytes() == b"one"


@pytest.mark.parametrize("make,words", [
    (lambda f: (f / "a").mkdir(), "folder"), (lambda f: ((f / "a").write_text("x"), (f / "a").chmod(0o444)), "protected against writing"),
    (lambda f: os.mkfifo(f / "a"), "device"), (lambda f: (f / "a").symlink_to(f / "a"), "circle|not there")])
def test_what_is_not_to_be_replaced_stays(tmp_path, make, words):
    make(tmp_path)
    was = (tmp_path / "a").lstat()
    with pytest.raises(FormatError, match=words):
        save_bytes(tmp_path / "a", b"one")
    assert (tmp_path / "a").lstat().st_ino == was.st_ino
    assert os.listdir(tmp_path) == ["a"]


@pytest.mark.parametrize("name", ["no/folder/here", "a\0b", "\ud800"])
def test_names_that_no_system_takes_end_in_a_sentence(tmp_path, name):
    with pytest.raises(FormatError, match="cannot be written"):
        save_bytes(tmp_path / name, b"one")


def test_what_a_killed_program_left_half_written_is_swept_away_later(tmp_path):
    old, young = tmp_path / ".pegwright-0123.part", tmp_path / ".pegwright-4567.part"
    for part in (old, young, tmp_path / "mine.part"):
        part.write_bytes(b"half")
    os.utime(old, (1, 1))
    os.utime(tmp_path / "mine.part", (1, 1))
    sweep(tmp_path)
    assert sorted(os.listdir(tmp_path)) == [young.name, "mine.part"]


@pytest.mark.parametrize("hours", [-9, 9])
def test_a_drive_whose_clock_is_hours_off_loses_nothing_that_is_being_written(tmp_path, hours):
    """As on a memory card that keeps the time of another zone, or after the clock here was set."""
    there = tmp_path.stat().st_mtime + 3600 * hours
    writing, old, saved = tmp_path / ".pegwright-0123.part", tmp_path / ".pegwright-4567.part", tmp_path / "head"
    for path, stamp in ((writing, there - 60), (saved, there), (old, there - 48 * 3600)):
        path.write_bytes(b"half")
        os.utime(path, (stamp, stamp))
    (tmp_path / "leads nowhere").symlink_to(tmp_path / "gone")
    os.utime(tmp_path / "leads nowhere", (there, there), follow_symlinks=False)
    sweep(tmp_path)
    assert writing.exists() and saved.exists() and not old.exists()


def test_of_files_that_belong_together_all_are_new_or_none(tmp_path, monkeypatch):
    files = {tmp_path / f"{name}.txt": name.encode() * 9 for name in "abc"}
    for path in files:
        path.write_bytes(b"earlier")
    real, taken = os.write, []

    def full(handle, data):
        if len(taken) == 2:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        taken.append(handle)
        return real(handle, data)

    with monkeypatch.context() as patch:
        patch.setattr(saving.os, "write", full)
        with pytest.raises(FormatError, match="c.txt cannot be written: the disk is full"):
            saving.save_files(files)
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == dict.fromkeys(files, b"earlier")
    saving.save_files(files)
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == files


def test_where_another_program_holds_one_of_them_those_before_it_are_put_back(tmp_path, monkeypatch):
    earlier = {tmp_path / f"{name}.txt": b"earlier" for name in "bcd"} | {tmp_path / "same.txt": b"same"}
    for path, data in earlier.items():
        path.write_bytes(data)
    files = {tmp_path / f"{name}.txt": data for name, data in (("new", b"n"), ("b", b"bb"), ("same", b"same"), ("c", b"cc"), ("d", b"dd"))}
    real = os.replace

    def held(part, target):
        if os.path.basename(target) == "c.txt":
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
        real(part, target)

    with monkeypatch.context() as patch:
        patch.setattr(saving.os, "replace", held)
        patch.setattr(saving, "PAUSE", 0.0)
        with pytest.raises(FormatError, match="c.txt cannot be written"):
            saving.save_files(files)
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == earlier
