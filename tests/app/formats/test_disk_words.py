"""What the system says of a disk is told in the program's words, whichever way the file was going."""

import builtins
import errno
import io
import os
from functools import partial

import pytest

from app.formats import headstock
from app.formats.disk_words import why, why_no_folder, why_unread
from app.formats.drawing_in.read import read_drawing
from app.formats.errors import FormatError
from app.formats.picture_in import read_picture
from app.formats.rack import load_rack, save_rack
from app.printing.printers import correction_for
from geometry.layout.generic import RACK


@pytest.mark.parametrize("number", sorted(errno.errorcode))
def test_a_reason_is_a_few_words_of_our_own_or_the_system_s(number):
    for words in (why, why_unread, why_no_folder):
        told = words(OSError(number, os.strerror(number)))
        assert told and not told.endswith(".") and "Errno" not in told


def test_a_missing_right_is_told_the_way_the_file_was_going():
    refused = PermissionError(errno.EACCES, "Permission denied")
    assert (why(refused), why_unread(refused)) == ("you have no right to write there", "you have no right to read it")
    there = FileExistsError(errno.EEXIST, "File exists")
    assert (why(there), why_no_folder(there)) == ("a folder of that name is there", "a file of that name is there")


@pytest.mark.parametrize("read", [
    headstock.read, read_drawing, load_rack, partial(correction_for, "printer", "A4"), partial(save_rack, RACK)],
    ids=["layout", "drawing", "rack", "printers", "own rack"])
def test_no_word_of_the_system_stands_in_a_sentence(read, tmp_path, monkeypatch):
    path = tmp_path / "file"
    path.write_bytes(b"{}")

    def refuse(*asked, **named):
        raise PermissionError(errno.EACCES, "Permission denied")
    monkeypatch.setattr(os, "open", refuse)
    monkeypatch.setattr(builtins, "open", refuse)
    monkeypatch.setattr(io, "open", refuse)
    with pytest.raises(FormatError, match="read: you have no right to read it"):
        read(path=path) if isinstance(read, partial) else read(path)


def test_a_picture_that_is_not_there_is_told_in_the_same_words(tmp_path):
    with pytest.raises(FormatError, match="gone.png cannot be read: it is not there"):
        read_picture(tmp_path / "gone.png")
