"""Everything that is written beside the layout onto a disk that is full, read-only or gone: told in a sentence, nothing half written."""

import errno
import os
import sys

import pytest
from msgspec.structs import replace

from app.formats import saving
from app.formats.errors import Unconfirmed
from app.printing import printers
from app.printing.measure import MeasureBars
from app.window import ask
from app.window.rooms import rack_desk
from app.window.rooms.router_template import write_template
from app.window.rooms.sheets import SheetWriter
from tests.app.formats.out.failing_disk import FailingDisk
from tests.waiting import until

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="steps of POSIX systems")


class Broken(FailingDisk):
    """A disk on which nothing can be written any more, whatever is tried."""

    def __init__(self, number: int) -> None:
        super().__init__(0, number)

    def _wrapped(self, name, real):
        if name not in ("write", "fsync", "replace"):
            return real

        def fails(*_):
            raise OSError(self._number, os.strerror(self._number))
        return fails


@pytest.fixture
def told(bench, monkeypatch):
    """What the maker is told, by a box or at the foot."""
    found = []
    monkeypatch.setattr(ask, "warn", lambda _, title, text: found.append(text))
    monkeypatch.setattr(ask, "tell", lambda _, title, text: found.append(text))
    return found


def sheets(bench, folder, monkeypatch):
    writer = SheetWriter(bench.window, folder)
    writer.start()
    bench.window.sheet_writer = writer
    until(lambda: not writer.busy)


def book(bench, folder, monkeypatch):
    bench.window.commands.run("write book")
    room = bench.window.rooms["book"]
    until(lambda: not room.errand.busy and not room._writes)


def template(bench, folder, monkeypatch):
    write_template(bench.window, next(one.id for one in bench.layout.rack.bits if one.bearing != "none"), None)


def desk(bench):
    bench.window.set_stage("router")
    return bench.window.rooms["router"].rack


def rack(bench, folder, monkeypatch):
    desk(bench)._export()


def own_rack(bench, folder, monkeypatch):
    desk(bench)._keep()


def edited_rack(bench, folder, monkeypatch):
    mine = desk(bench)
    box = mine.view._whose
    box.setCurrentIndex(box.findData("mine"))
    mine.show()
    was = mine.mine()
    mine._edited("Empty it", replace(was, bits=()), None)
    assert mine.mine() is was and not mine._before, "as it was, with nothing to go back to"


def correction(bench, folder, monkeypatch):
    monkeypatch.setattr(printers, "printers_path", lambda: folder / "printers.json")
    dialog = MeasureBars("A4", "mm", bench.window)
    dialog.printer.setEditText("front room")
    dialog.lying.setText("100.4")
    dialog.upright.setText("99.8")
    dialog.accept()
    assert not dialog.result(), "it stays open"
    ask.tell(bench.window, "", dialog.says.text())
    dialog.deleteLater()


WAYS = {"sheets": sheets, "job book": book, "template": template, "rack": rack, "own rack": own_rack, "a bit of mine": edited_rack, "correction": correction}
TROUBLES = {"full": errno.ENOSPC, "read-only": errno.EROFS, "gone": None}


@pytest.mark.parametrize("trouble", TROUBLES)
@pytest.mark.parametrize("way", WAYS)
def test_what_cannot_be_written_is_told_and_leaves_nothing(bench, told, tmp_path, monkeypatch, way, trouble):
    folder = tmp_path / "there"
    folder.mkdir()
    place = folder if TROUBLES[trouble] else folder / "file" / "drive"
    if not TROUBLES[trouble]:
        (folder / "file").write_bytes(b"")  # where a drive hung there is no folder any more, nor can one be made
    monkeypatch.setattr(ask, "save_file", lambda _, title, suggestion, kinds, *more: place / os.path.basename(suggestion))
    monkeypatch.setattr(rack_desk, "rack_path", lambda: place / "rack.json")
    layout = bench.layout
    if TROUBLES[trouble]:
        monkeypatch.setattr(saving, "os", Broken(TROUBLES[trouble]))
    WAYS[way](bench, place, monkeypatch)
    assert told and all(text.endswith(".") and "\n" not in text and "Errno" not in text and "Error" not in text for text in told), told
    assert trouble != "full" or "the disk is full" in told[-1]
    assert sorted(os.listdir(folder)) == ([] if TROUBLES[trouble] else ["file"]), "nothing is left half written"
    assert bench.layout is layout


def unkept(*_):
    raise OSError(errno.EIO, os.strerror(errno.EIO))


@pytest.mark.parametrize("certain", [False, True])
@pytest.mark.parametrize("way", ["sheets", "job book", "template"])
def test_of_what_is_there_and_may_last_no_title_says_that_it_is_not_written(bench, tmp_path, monkeypatch, way, certain):
    found, folder = [], tmp_path / "there"
    folder.mkdir()
    monkeypatch.setattr(ask, "warn", lambda _, title, text: found.append((title, text)))
    monkeypatch.setattr(ask, "save_file", lambda _, title, suggestion, kinds, *more: folder / os.path.basename(suggestion))
    monkeypatch.setattr(saving, "_write_part" if certain else "_flush_folder", unkept)
    WAYS[way](bench, folder, monkeypatch)
    [(title, text)] = found
    assert ("not written" in title, "cannot be written" in text) == (certain, certain)
    assert (title == "It is not certain that the disk keeps what was written", "is written, but" in text, any(folder.iterdir())) == (not certain,) * 3


def test_a_print_to_a_file_that_is_there_is_not_told_as_none(bench, monkeypatch):
    found = []

    def unconfirmed(*_):
        raise Unconfirmed("head.pdf is written, but the disk did not confirm that it will keep it.")
    monkeypatch.setattr(ask, "warn", lambda _, title, text: found.append(title))
    monkeypatch.setattr("app.printing.job.print_sheets", unconfirmed)
    bench.window.set_stage("sheets")
    room = bench.window.rooms["sheets"]
    until(lambda: room.planning.current and room.errand.free)
    room.print()
    assert found == ["It is not certain that the disk keeps what was written"]
