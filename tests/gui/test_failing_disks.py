"""Saving from the window with every step failing in every way: told, the work kept, a whole layout on the disk."""

import errno
import os
import subprocess
import sys
from contextlib import suppress

import pytest
from msgspec.structs import replace

from app.formats import headstock, saving
from app.formats.saving import before
from app.window import ask
from app.window.demo import demo
from tests.app.formats.out.failing_disk import FailingDisk

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="steps of POSIX systems")
ERRORS = (errno.ENOSPC, errno.EIO, errno.EROFS)


def steps(folder) -> int:
    """How many calls one saving over an earlier file makes."""
    path = folder / "count.headstock.json"
    headstock.write(demo(), path)
    counting = FailingDisk(10_000, errno.EIO)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(saving, "os", counting)
        headstock.write(replace(demo(), name="other"), path)
    return len(counting.calls)


@pytest.mark.parametrize("number", ERRORS, ids=errno.errorcode.get)
def test_whichever_step_fails_the_maker_is_told_what_is_so_and_the_next_save_asks_nothing(bench, tmp_path, monkeypatch, number):
    path, window, told, asked = tmp_path / "head.headstock.json", bench.window, [], []
    headstock.write(replace(demo(), name="0"), path)
    assert window.files.open(path)
    monkeypatch.setattr(ask, "not_saved", lambda _, text, certain: told.append((text, certain)) or "later")
    monkeypatch.setattr(ask, "tell", lambda _, title, text: None)
    monkeypatch.setattr(ask, "changed_elsewhere", lambda _, name: asked.append(name) or "cancel")
    endings = set()
    for at in range(steps(tmp_path)):
        window.document.apply("Rename", replace(window.document.layout, name=f"{at} {number}"))
        mine, earlier = window.document.layout, headstock.read(path)
        told.clear()
        with monkeypatch.context() as patch:
            patch.setattr(saving, "os", FailingDisk(at, number))
            saved = window.files.save()
        assert window.document.layout is mine and window.document.unsaved != saved
        found = headstock.read(path)
        if saved:
            assert not told and found == mine
            endings.add("saved")
        else:
            [(text, certain)] = told
            assert text.endswith(".") and found == (earlier if certain else mine), "what is told is what is so"
            assert ("cannot be written" if certain else "is written, but") in text
            endings.add("refused" if certain else "unconfirmed")
        if before(path).exists():
            headstock.read(before(path))
        assert not window.document.changed_elsewhere, "nobody else wrote there"
        assert window.files.save(), "a moment later, when the disk is well again"
        assert headstock.read(path) == mine and not asked
    assert endings == {"saved", "refused", "unconfirmed"}


def test_what_another_program_wrote_after_an_unconfirmed_save_is_still_noticed(bench, tmp_path, monkeypatch):
    path, window, asked = tmp_path / "head.headstock.json", bench.window, []
    headstock.write(replace(demo(), name="first"), path)
    assert window.files.open(path)
    monkeypatch.setattr(ask, "not_saved", lambda _, text, certain: "later")
    monkeypatch.setattr(ask, "changed_elsewhere", lambda _, name: asked.append(name) or "cancel")
    window.document.apply("Rename", replace(window.document.layout, name="second"))
    with monkeypatch.context() as patch:
        patch.setattr(saving, "_flush_folder", lambda _: (_ for _ in ()).throw(OSError(errno.EIO, os.strerror(errno.EIO))))
        assert not window.files.save()
    headstock.write(replace(demo(), name="theirs"), path)
    assert not window.files.save() and asked == [path.name]
    assert headstock.read(path).name == "theirs"


def test_a_disk_that_is_really_full(bench, tmp_path, monkeypatch):
    """On a small file system of its own, where the machine lets one be made."""
    place = tmp_path / "small"
    place.mkdir()
    try:
        subprocess.run(["mount", "-t", "tmpfs", "-o", "size=64k", "none", place], check=True, capture_output=True)
    except (OSError, subprocess.SubprocessError):
        pytest.skip("no small file system can be made here")
    try:
        path, told = place / "head.headstock.json", []
        headstock.write(replace(demo(), name="first"), path)
        assert bench.window.files.open(path)
        with suppress(OSError), open(place / "rest", "wb", buffering=0) as rest:
            while rest.write(bytes(1024)):
                pass
        bench.window.document.apply("Rename", replace(demo(), name="second"))
        other = tmp_path / "elsewhere.headstock.json"
        monkeypatch.setattr(ask, "not_saved", lambda _, text, certain: told.append((text, certain)) or "elsewhere")
        monkeypatch.setattr(ask, "save_file", lambda *_: other)
        assert bench.window.files.save()
        [(text, certain)] = told
        assert "the disk is full" in text and certain
        assert headstock.read(path).name == "first" and headstock.read(other).name == "second"
        assert sorted(os.listdir(place)) == ["head.headstock.json", "rest"]
    finally:
        subprocess.run(["umount", "-l", place], check=True)
