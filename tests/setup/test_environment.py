"""The sentences for what stands in the way, and the state of an environment, without making one."""

import errno
import os
from pathlib import Path

import pytest

from app.setup import environment, install, lock, places, stamps
from app.setup.trouble import SetupTrouble


@pytest.fixture
def whole(tmp_path: Path) -> Path:
    """An environment with the stamp of the part `app`, and something in place of its Python."""
    folder = tmp_path / ".venv"
    python = places.interpreter(folder)
    python.parent.mkdir(parents=True)
    python.touch()
    stamps.begin(folder)
    stamps.finish(folder, ["app"], "3.12")
    return folder


def test_a_finished_environment_is_ready_for_what_it_holds(whole: Path) -> None:
    assert stamps.ready(whole, ["app"])
    assert not stamps.ready(whole, ["app", "tests"])
    assert stamps.state(whole, "tests") == "outdated"


def test_an_environment_whose_python_has_gone_is_not_ready(whole: Path) -> None:
    places.interpreter(whole).unlink()
    assert not stamps.ready(whole, ["app"])


def test_states(whole: Path, tmp_path: Path) -> None:
    assert stamps.state(whole, "app", "3.12") == "ready"
    assert stamps.state(whole, "app", "3.13") == "broken"
    stamp = whole / "pegwright-app.txt"
    text = stamp.read_text(encoding="utf-8")
    stamp.write_text(text + "another==1\n", encoding="utf-8")
    assert stamps.state(whole, "app") == "outdated"
    stamp.write_text("cut", encoding="utf-8")
    assert stamps.state(whole, "app") == "broken"
    stamp.write_text(text, encoding="utf-8")
    stamps.begin(whole)
    assert stamps.state(whole, "app") == "broken"
    moved = tmp_path / "moved"
    moved.mkdir()
    (whole / stamps.UNFINISHED).unlink()
    whole.rename(moved / ".venv")
    assert stamps.state(moved / ".venv", "app") == "broken"
    assert stamps.state(tmp_path / "nowhere", "app") == "absent"


@pytest.mark.skipif(os.name == "nt", reason="links to folders want rights there")
def test_an_environment_that_another_checkout_links_to_is_used_as_it_stands(tmp_path: Path, whole: Path) -> None:
    other = tmp_path / "other"
    other.mkdir()
    (other / ".venv").symlink_to(whole, target_is_directory=True)
    assert stamps.state(other / ".venv", "app") == stamps.state(whole, "app") == "ready"


@pytest.mark.parametrize(
    ("number", "sentence"),
    [
        (errno.EROFS, "cannot be written to, and Pegwright keeps its parts in .venv inside it"),
        (errno.EACCES, "cannot be written to, and Pegwright keeps its parts in .venv inside it"),
        (errno.ENOSPC, "The disk is full"),
        (errno.EBUSY, "close every program that uses that folder"),
    ],
)
def test_what_the_disk_says_becomes_one_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int, sentence: str
) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise OSError(number, "said by the system")

    monkeypatch.setattr(lock, "held", refuse)
    with pytest.raises(SetupTrouble) as caught:
        environment.prepare(tmp_path / ".venv", ["app"])
    assert sentence in str(caught.value)
    assert "\n" not in str(caught.value)


def test_a_disk_without_room_is_told_before_anything_is_fetched(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(environment, "SPACE_NEEDED", 1 << 62)
    with pytest.raises(SetupTrouble, match="nearly full"):
        environment.prepare(tmp_path / ".venv", ["app"])


@pytest.mark.parametrize(
    ("said", "sentence"),
    [
        (
            "NewConnectionError: [Errno 111] Connection refused\nERROR: No matching distribution found for tiny==1",
            "could not be reached",
        ),
        ("Temporary failure in name resolution", "could not be reached"),
        (
            "SSLError(SSLCertVerificationError(1, '[SSL: CERTIFICATE_VERIFY_FAILED] ...'))",
            "certificate was not accepted",
        ),
        ("ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device", "The disk is full"),
        (
            "ERROR: Could not install packages due to an OSError: [Errno 13] Permission denied: 'x'",
            "may not write its parts",
        ),
        ("python: No module named pip", "has no pip"),
        ("ERROR: No matching distribution found for shapely==2.2.0", "No ready-made shapely was found"),
        ("ERROR: something nobody has seen yet", "what pip said is in"),
    ],
)
def test_what_pip_says_becomes_one_sentence(tmp_path: Path, said: str, sentence: str) -> None:
    told = install.explain(said.splitlines(), tmp_path / "log")
    assert sentence in told
    assert told.endswith(".")
    assert "\n" not in told


def test_the_lock_is_let_go_after_use_and_after_failure(tmp_path: Path) -> None:
    def must_not_wait() -> None:
        raise AssertionError("waited for nobody")

    with pytest.raises(ZeroDivisionError), lock.held(tmp_path, must_not_wait):
        raise ZeroDivisionError
    with lock.held(tmp_path, must_not_wait) as number:
        assert number > 0
