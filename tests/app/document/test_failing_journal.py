"""The journal on a disk that fails at each of its steps: said once, and tried again."""

import errno
import sys

import pytest
from msgspec.structs import replace

from app.document.journal import Journal
from app.formats import saving
from app.window.demo import demo
from tests.app.formats.out.failing_disk import FailingDisk

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="steps of POSIX systems")
ERRORS = (errno.ENOSPC, errno.EIO, errno.EROFS, errno.EACCES, errno.EDQUOT, errno.ENOENT, errno.ESTALE)


@pytest.mark.parametrize("number", ERRORS, ids=errno.errorcode.get)
def test_a_journal_that_cannot_be_written_says_so_once_and_tries_again(qapp, tmp_path, monkeypatch, number):
    journal, told = Journal(tmp_path / "journal"), []
    journal.troubled.connect(told.append)
    journal.note(replace(demo(), name="first"), None)
    journal.write()
    assert not told
    for at in range(6):
        journal.note(replace(demo(), name=f"step {at}"), None)
        with monkeypatch.context() as patch:
            patch.setattr(saving, "os", FailingDisk(at, number))
            journal.write()
            troubled = bool(journal.trouble)
        if troubled:
            assert journal.trouble in told[-1]
            assert f"in {tmp_path / 'journal'}: " in told[-1] and "Choose another place" not in told[-1] and "Save once" not in told[-1]
            assert journal._timer.isActive(), "what could not be written waits on"
        journal.write()
        assert not journal.trouble and f"step {at}" in journal.file.read_text(encoding="utf-8")
    assert told
    journal.end()


def test_a_folder_that_cannot_be_made_is_told_in_words(qapp, tmp_path):
    (tmp_path / "file").write_text("")
    journal, told = Journal(tmp_path / "file" / "journal"), []
    journal.troubled.connect(told.append)
    journal.note(demo(), None)
    assert not journal.write()
    assert told == [f"Unsaved work cannot be kept safe: Nothing can be written in {tmp_path / 'file' / 'journal'}: its folder is not there."]
    journal.end()
