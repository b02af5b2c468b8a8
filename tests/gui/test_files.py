"""Saving from the window: whatever the disk or another program does, the work is kept and another place is offered."""

import errno
import os

import pytest
from msgspec.structs import replace

from app.formats import headstock, saving
from app.formats.reading import known
from app.formats.saving import before
from app.window import ask
from app.window.demo import demo
from tests.app.formats.out.failing_disk import FailingDisk


def rename(bench, name):
    bench.window.document.apply("Rename", replace(bench.layout, name=name))


@pytest.fixture
def opened(bench, tmp_path):
    path = tmp_path / "head.headstock.json"
    headstock.write(replace(demo(), name="first"), path)
    assert bench.window.files.open(path)
    return path


def test_a_full_disk_keeps_the_work_and_offers_another_place(bench, opened, tmp_path, monkeypatch):
    rename(bench, "second")
    told, other = [], tmp_path / "elsewhere" / "head.headstock.json"
    other.parent.mkdir()

    def not_saved(_, text, certain):
        told.append(text)
        monkeypatch.setattr(saving, "os", os)
        return "elsewhere"

    monkeypatch.setattr(ask, "not_saved", not_saved)
    monkeypatch.setattr(ask, "save_file", lambda *_: other)
    monkeypatch.setattr(saving, "os", FailingDisk(3, errno.ENOSPC))
    assert bench.window.files.save()
    assert "the disk is full" in told[0]
    assert headstock.read(opened).name == "first"
    assert headstock.read(other).name == "second"
    assert bench.window.document.path == other and not bench.window.document.unsaved


@pytest.mark.parametrize(("mine", "theirs"), [("head", "link/head"), ("head", "HEAD"), ("h\u00e9ad", "he\u0301ad")])
def test_two_windows_do_not_save_under_one_new_name_at_once(mine, theirs, bench, tmp_path, monkeypatch):
    """While the first writes to a slow drive, the second asks for the same place, by another name of its folder, or by one that a disk may
    take for the same."""
    (tmp_path / "link").symlink_to(tmp_path)
    names, told, window = [tmp_path / mine, tmp_path / theirs], [], bench.window
    other = window.windows.new(replace(demo(), name="second"))
    monkeypatch.setattr(ask, "save_file", lambda *_: names.pop(0))
    monkeypatch.setattr(ask, "warn", lambda _, title, text: told.append((title, text)))
    beside, meanwhile = window.files._beside, []

    def slow(path, work):
        meanwhile.append(other.files.save_as())
        return beside(path, work)
    monkeypatch.setattr(window.files, "_beside", slow)
    rename(bench, "first")
    assert window.files.save_as() and meanwhile == [False]
    assert told[0][0] == "Not saved there" and other.document.unsaved is False and other.document.path is None
    assert headstock.read(tmp_path / f"{mine}.headstock.json").name == "first"
    assert not other.document.holds(known(tmp_path / f"{mine}.headstock.json"))
    other.close()


def test_not_now_leaves_the_work_unsaved_and_the_window_open(bench, opened, monkeypatch):
    rename(bench, "second")
    opened.unlink()
    opened.parent.joinpath("gone").mkdir()
    bench.window.document.path = opened.parent / "vanished" / "head.headstock.json"
    monkeypatch.setattr(ask, "not_saved", lambda _, text, certain: "later" if "folder is not there" in text else "?")
    monkeypatch.setattr(ask, "save_first", lambda *_: "save")
    assert not bench.window.files.save()
    assert not bench.window.close()
    assert bench.window.document.unsaved and bench.layout.name == "second"


@pytest.mark.skipif(os.name == "nt", reason="links of POSIX systems")
def test_other_names_of_the_file_keep_the_version_before_and_that_is_told_once(bench, opened, tmp_path):
    names = [tmp_path / "shared", tmp_path / "backup"]
    for name in names:
        os.link(opened, name)
    for step, told in (("second", "Saved: head.headstock.json. 2 other names of this file keep the version before."),
                       ("third", "Saved: head.headstock.json")):
        rename(bench, step)
        assert bench.window.files.save()
        assert bench.window.foot.said == told and headstock.read(opened).name == step
        assert [headstock.read(name).name for name in names] == ["first", "first"]


@pytest.mark.skipif(os.name == "nt", reason="links of POSIX systems")
def test_what_is_opened_by_a_link_is_saved_where_the_link_leads(bench, tmp_path):
    real, link = tmp_path / "disk" / "head.headstock.json", tmp_path / "link.headstock.json"
    real.parent.mkdir()
    headstock.write(replace(demo(), name="first"), real)
    link.symlink_to(os.path.join("disk", real.name))
    assert bench.window.files.open(link)
    rename(bench, "second")
    assert bench.window.files.save()
    assert link.is_symlink() and headstock.read(real).name == "second" and bench.window.foot.said == f"Saved: {link.name}"
    assert headstock.read(before(link)).name == "first" and before(link).parent == real.parent
    bench.window.files.open_before()
    assert bench.layout.name == "first"


@pytest.mark.parametrize("answer", ["mine", "theirs", "elsewhere", "cancel"])
def test_a_file_that_another_program_wrote_is_never_lost(bench, opened, tmp_path, monkeypatch, answer):
    rename(bench, "mine")
    headstock.write(replace(demo(), name="theirs"), opened)
    other = tmp_path / "other.headstock.json"
    monkeypatch.setattr(ask, "changed_elsewhere", lambda *_: answer)
    monkeypatch.setattr(ask, "save_file", lambda *_: other)
    saved = bench.window.files.save()
    assert saved == (answer in ("mine", "elsewhere"))
    if answer == "mine":
        assert headstock.read(opened).name == "mine"
        assert headstock.read(before(opened)).name == "theirs"
        assert bench.window.files.save(), "saving again asks nothing"
    else:
        assert headstock.read(opened).name == "theirs"
    if answer == "elsewhere":
        assert headstock.read(other).name == "mine"
    if answer == "theirs":
        assert bench.layout.name == "theirs" and not bench.window.document.unsaved
        assert bench.window.document.known == known(opened), "the number of the file before may be another file's by now"
        bench.window.commands.run("undo")
        assert bench.layout.name == "mine" and bench.window.document.unsaved
    if answer == "cancel":
        assert bench.layout.name == "mine" and bench.window.document.unsaved


def test_a_file_touched_but_not_changed_is_no_matter(bench, opened):
    rename(bench, "mine")
    os.utime(opened, (1, 1))
    assert bench.window.files.save()
    assert headstock.read(opened).name == "mine"


def test_the_version_before_comes_back_as_one_step(bench, opened, monkeypatch):
    said = []
    monkeypatch.setattr(ask, "tell", lambda *words: said.append(words))
    bench.window.commands.run("before")
    assert len(said) == 1 and bench.layout.name == "first"
    rename(bench, "second")
    bench.window.commands.run("save")
    bench.window.commands.run("before")
    assert bench.layout.name == "first" and bench.window.document.unsaved
    bench.window.commands.run("undo")
    assert bench.layout.name == "second" and not bench.window.document.unsaved


def test_a_name_completed_by_its_ending_is_not_written_over_unasked(bench, opened, tmp_path, monkeypatch):
    monkeypatch.setattr(ask, "save_file", lambda *_: tmp_path / "head")
    monkeypatch.setattr(ask, "write_over", lambda *_: False)
    rename(bench, "second")
    assert not bench.window.files.save_as()
    assert headstock.read(opened).name == "first"


@pytest.mark.parametrize("name", ["my head", "голова грифа", "頭", "🎸 head", "a'b\"c", "x" * 120, "50 % #1 & co", "two\nlines", "ends in a dot.", "-rf", "a\u202eb"])
def test_names_in_any_script_are_saved_opened_and_listed(bench, tmp_path, monkeypatch, name):
    rename(bench, name)
    path = tmp_path / f"{name} folder" / f"{name}.headstock.json"
    path.parent.mkdir()
    monkeypatch.setattr(ask, "save_file", lambda *_: path)
    assert bench.window.files.save_as()
    assert bench.window.files.open(path)
    assert bench.layout.name == name and bench.window.files.recent()[0] == path


def test_the_file_that_is_open_is_opened_again_as_it_was_just_saved(bench, opened, monkeypatch):
    """Asked whether to save before it is opened anew, the maker says yes: what is then on show is what was saved."""
    rename(bench, "second")
    monkeypatch.setattr(ask, "save_first", lambda *_: "save")
    assert bench.window.files.open(opened)
    assert headstock.read(opened).name == "second" and bench.layout.name == "second"
    assert not bench.window.document.unsaved and not bench.window.document.changed_elsewhere


def test_the_file_that_is_open_is_opened_again_without_what_is_given_up(bench, opened, monkeypatch):
    rename(bench, "second")
    monkeypatch.setattr(ask, "save_first", lambda *_: "discard")
    assert bench.window.files.open(opened)
    assert bench.layout.name == "first" and not bench.window.document.unsaved


def test_what_another_program_writes_while_a_slow_drive_takes_the_layout_is_not_replaced(bench, opened, monkeypatch):
    rename(bench, "mine")
    flush, asked = saving._flush, []

    def slow(handle):
        if not asked:
            theirs = headstock.encode(replace(demo(), name="theirs"))
            opened.write_bytes(theirs)
        flush(handle)
    monkeypatch.setattr(saving, "_flush", slow)
    monkeypatch.setattr(ask, "changed_elsewhere", lambda *_: asked.append(True) or "cancel")
    assert not bench.window.files.save() and asked == [True]
    assert headstock.read(opened).name == "theirs" and bench.window.document.unsaved
    assert sorted(os.listdir(opened.parent)) == [opened.name, "settings.ini"], "nothing half written is left"


@pytest.mark.parametrize("typed,written", [("HEAD.HEADSTOCK.JSON", "HEAD.HEADSTOCK.JSON"), ("Head.Json", "Head.headstock.json"),
                                           ("Head", "Head.headstock.json")])
def test_an_ending_typed_in_capitals_is_not_added_once_more(bench, tmp_path, monkeypatch, typed, written):
    monkeypatch.setattr(ask, "save_file", lambda *_: tmp_path / typed)
    assert bench.window.files.save_as()
    assert [name for name in os.listdir(tmp_path) if name.lower().startswith("head")] == [written]
    assert bench.window.document.path == tmp_path / written
