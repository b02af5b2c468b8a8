"""Disks that lie, and what a saved file keeps of the one before: owner, group, permissions, its other names."""

import errno
import os
import sys

import pytest

from app.formats import saving
from app.formats.errors import FormatError
from app.formats.saving import before, save_bytes
from tests.app.formats.out.failing_disk import FailingDisk

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="POSIX permissions")


class Disk:
    """`os` for app.formats.saving, with some of its functions exchanged."""

    def __init__(self, **others) -> None:
        self._others = others

    def __getattr__(self, name):
        return self._others[name] if name in self._others else getattr(os, name)


def test_a_stick_that_holds_less_than_it_says_is_found_out_while_the_earlier_file_is_there(tmp_path, monkeypatch):
    """Sold as larger than it is: what lies beyond its end is taken without a word and comes back as zeros."""
    target, ends = tmp_path / "a.txt", 5000
    save_bytes(target, b"one")

    def write(handle, data):
        at, data = os.lseek(handle, 0, os.SEEK_CUR), bytes(data)
        return os.write(handle, data[:max(0, ends - at)].ljust(len(data), b"\0"))
    monkeypatch.setattr(saving, "os", Disk(write=write))
    with pytest.raises(FormatError, match="what arrived there is not what was written"):
        save_bytes(target, bytes(range(1, 251)) * 40, keep_before=True)
    assert target.read_bytes() == b"one" and os.listdir(tmp_path) == ["a.txt"]
    save_bytes(target, bytes(range(1, 251)) * 20)


@pytest.mark.parametrize("spoiled", [b"tw", b"twos", b"", b"tWo"], ids=["short", "long", "empty", "another"])
def test_whatever_else_comes_back_is_not_taken_for_saved(tmp_path, monkeypatch, spoiled):
    pieces = [spoiled, b""] if spoiled else [b""]
    monkeypatch.setattr(saving, "os", Disk(read=lambda handle, most: pieces.pop(0)))
    with pytest.raises(FormatError, match="what arrived there"):
        save_bytes(tmp_path / "a.txt", b"two")
    assert os.listdir(tmp_path) == []


def test_what_is_read_back_is_asked_of_the_disk_and_not_of_the_memory(tmp_path, monkeypatch):
    if not hasattr(os, "posix_fadvise"):
        pytest.skip("this system cannot be asked")
    done = []
    monkeypatch.setattr(saving, "os", Disk(
        fsync=lambda handle: done.append("flush") or os.fsync(handle),
        posix_fadvise=lambda handle, start, count, how: done.append((start, count, how)),
        read=lambda handle, most: done.append("read") or os.read(handle, most)))
    save_bytes(tmp_path / "a.txt", b"two")
    assert done[:3] == ["flush", (0, 0, os.POSIX_FADV_DONTNEED), "read"]


def test_what_guards_a_disk_may_hold_the_new_file_for_a_moment(tmp_path, monkeypatch):
    """As under Windows, where a file that anybody has open is not renamed."""
    target, refusals = tmp_path / "a.txt", [PermissionError(errno.EACCES, "held")] * 3

    def replace(part, to):
        if refusals:
            raise refusals.pop()
        os.replace(part, to)
    monkeypatch.setattr(saving, "PAUSE", 0.0)
    monkeypatch.setattr(saving, "os", Disk(replace=replace, name="nt"))
    save_bytes(target, b"two")
    assert target.read_bytes() == b"two" and not refusals
    held = PermissionError(errno.EACCES, "held")
    held.winerror = 32
    refusals += [held] * 99
    with pytest.raises(FormatError, match="another program holds it"):
        save_bytes(target, b"three")
    assert target.read_bytes() == b"two" and os.listdir(tmp_path) == ["a.txt"]


def test_a_network_drive_may_say_that_it_did_not_do_what_it_did(tmp_path, monkeypatch):
    """Its answer was lost, the same was asked again, and the new file was there under its old name no more."""
    target = tmp_path / "a.txt"
    save_bytes(target, b"one")

    def replace(part, to):
        os.replace(part, to)
        if to == target:
            raise FileNotFoundError(errno.ENOENT, os.strerror(errno.ENOENT))
    monkeypatch.setattr(saving, "os", Disk(replace=replace))
    assert save_bytes(target, b"two", keep_before=True)
    assert target.read_bytes() == b"two" and before(target).read_bytes() == b"one"


def test_a_file_that_went_while_it_was_saved_over_is_a_refusal(tmp_path, monkeypatch):
    target = tmp_path / "there" / "a.txt"
    target.parent.mkdir()
    save_bytes(target, b"one")

    def replace(part, to):
        os.rename(target.parent, tmp_path / "gone")
        os.replace(part, to)
    monkeypatch.setattr(saving, "os", Disk(replace=replace))
    with pytest.raises(FormatError, match="its folder is not there"):
        save_bytes(target, b"two")
    assert (tmp_path / "gone" / "a.txt").read_bytes() == b"one"


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="only root gives files away")
def test_a_file_saved_over_keeps_its_owner_and_group(tmp_path):
    target = tmp_path / "a.txt"
    save_bytes(target, b"one")
    os.chown(target, 1234, 4321)
    target.chmod(0o664)
    save_bytes(target, b"two", keep_before=True)
    there = target.stat()
    assert (there.st_uid, there.st_gid, there.st_mode & 0o777) == (1234, 4321, 0o664)


def test_what_others_own_is_saved_all_the_same_and_keeps_the_group(tmp_path, monkeypatch):
    target, asked = tmp_path / "a.txt", []
    save_bytes(target, b"one")

    def chown(part, user, group):
        asked.append((user, group))
        if user != -1:
            raise PermissionError(errno.EPERM, os.strerror(errno.EPERM))
    monkeypatch.setattr(saving, "os", Disk(chown=chown))
    save_bytes(target, b"two")
    group = target.stat().st_gid
    assert asked == [(target.stat().st_uid, group), (-1, group)] and target.read_bytes() == b"two"


def test_a_drive_that_keeps_no_permissions_is_saved_to(tmp_path, monkeypatch):
    target = tmp_path / "a.txt"
    save_bytes(target, b"one")
    target.chmod(0o640)

    def refuse(*_):
        raise OSError(errno.ENOTSUP, os.strerror(errno.ENOTSUP))
    monkeypatch.setattr(saving, "os", Disk(chmod=refuse, chown=refuse))
    save_bytes(target, b"two")
    assert target.read_bytes() == b"two" and target.stat().st_mode & 0o777 & ~0o640 == 0, "never more than before"


def test_another_name_of_the_same_file_keeps_what_it_held(tmp_path):
    target, other = tmp_path / "a.txt", tmp_path / "other.txt"
    save_bytes(target, b"one")
    os.link(target, other)
    save_bytes(target, b"two", keep_before=True)
    assert (target.read_bytes(), other.read_bytes(), before(target).read_bytes()) == (b"two", b"one", b"one")


def test_a_folder_that_can_only_be_read_is_told(tmp_path, monkeypatch):
    failing = FailingDisk(1, errno.EROFS)  # after the look at what is there: the new file
    monkeypatch.setattr(saving, "os", failing)
    with pytest.raises(FormatError, match="the disk can only be read"):
        save_bytes(tmp_path / "a.txt", b"one")
    assert failing.calls[1] == "open" and os.listdir(tmp_path) == []
