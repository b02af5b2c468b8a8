"""Files are saved whole or not at all."""

import os
import sys

import pytest

from app.formats.errors import FormatError
from app.formats.saving import save_bytes


def test_a_file_is_replaced_and_nothing_else_is_left(tmp_path):
    target = tmp_path / "a.txt"
    save_bytes(target, b"one")
    save_bytes(target, b"two")
    assert target.read_bytes() == b"two"
    assert os.listdir(tmp_path) == ["a.txt"]


@pytest.mark.skipif(sys.platform == "win32", reason="POSIX permissions")
def test_permissions_are_the_usual_ones_and_are_kept(tmp_path):
    target = tmp_path / "a.txt"
    save_bytes(target, b"one")
    mask = os.umask(0)
    os.umask(mask)
    assert target.stat().st_mode & 0o777 == 0o666 & ~mask
    target.chmod(0o600)
    save_bytes(target, b"two")
    assert target.stat().st_mode & 0o777 == 0o600


def test_a_folder_in_the_way_is_said_in_a_sentence(tmp_path):
    (tmp_path / "a.txt").mkdir()
    with pytest.raises(FormatError, match="cannot be written"):
        save_bytes(tmp_path / "a.txt", b"one")
    assert os.listdir(tmp_path) == ["a.txt"]
