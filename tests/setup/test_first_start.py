"""Whole starts in a small checkout, in processes of their own."""

import os
import shutil
import signal
import sys
import time
import venv

import pytest

from app.setup import stamps
from app.setup.places import APP, base_python, interpreter
from tests.setup.checkout import Checkout, running_version


def test_a_bare_machine_is_set_up_once_and_changed_pins_are_followed(checkout: Checkout) -> None:
    code, out, err = checkout.start()
    assert (code, out) == (0, f"tiny 1.0 {checkout.environment}\n"), err
    assert "making the environment .venv" in err
    assert "part 1 of 1, tiny 1.0" in err

    code, out, err = checkout.start()
    assert (code, out, err) == (0, f"tiny 1.0 {checkout.environment}\n", ""), "nothing is made or fetched again"

    checkout.pin("app", "tiny==1.1")
    made = interpreter(checkout.environment).lstat().st_ctime_ns
    code, out, err = checkout.start()
    assert (code, out) == (0, f"tiny 1.1 {checkout.environment}\n"), err
    assert interpreter(checkout.environment).lstat().st_ctime_ns == made, (
        "changed pins were taken for a broken environment"
    )

    code, out, err = checkout.start("app", "tests")
    assert code == 0, err
    assert "tiny_extra 1.0" in err
    assert "making the environment" not in err
    assert checkout.start()[2] == ""


@pytest.mark.skipif(os.name == "nt", reason="sends a signal that only POSIX has")
def test_a_start_that_is_killed_is_taken_up_by_the_next(checkout: Checkout) -> None:
    first = checkout.begin()
    while not interpreter(checkout.environment).exists():
        time.sleep(0.01)
        assert first.poll() is None
    first.send_signal(signal.SIGKILL)
    first.communicate()
    assert stamps.state(checkout.environment, "app") == "broken"
    code, out, err = checkout.start()
    assert (code, out) == (0, f"tiny 1.0 {checkout.environment}\n"), err


def test_two_starts_at_once_share_one_set_up(checkout: Checkout) -> None:
    both = [checkout.begin(), checkout.begin()]
    ended = [process.communicate(timeout=900) for process in both]
    assert [process.returncode for process in both] == [0, 0], ended
    assert [out for out, _ in ended] == [f"tiny 1.0 {checkout.environment}\n"] * 2
    assert sorted("waiting for another start" in err for _, err in ended) == [False, True]
    assert sorted("making the environment" in err for _, err in ended) == [False, True]


def test_without_a_network_one_sentence_and_code_2(checkout: Checkout) -> None:
    code, out, err = checkout.start(
        PIP_NO_INDEX="0", PIP_FIND_LINKS="", PIP_RETRIES="1", PIP_INDEX_URL="http://127.0.0.1:9/simple"
    )
    assert (code, out) == (2, "")
    assert err.splitlines()[-1].startswith("The package index could not be reached")
    assert "Traceback" not in err
    assert stamps.state(checkout.environment, "app") == "broken", "a later start would take this for whole"


def test_a_file_in_the_way_is_named(checkout: Checkout) -> None:
    checkout.environment.write_text("not a folder", encoding="utf-8")
    code, out, err = checkout.start()
    assert (code, out) == (2, "")
    assert (
        err == f"{checkout.environment} is a file, and Pegwright keeps its parts in a folder of that name: "
        "move the file away and start again.\n"
    )


@pytest.mark.skipif(os.name == "nt", reason="Windows has no such permissions")
def test_a_folder_that_cannot_be_written_is_named(checkout: Checkout) -> None:
    if os.geteuid() == 0:
        pytest.skip("root may write everywhere; test_environment has the sentence without the file system")
    checkout.folder.chmod(0o555)
    try:
        code, out, err = checkout.start()
    finally:
        checkout.folder.chmod(0o755)
    assert (code, out) == (2, "")
    assert err.startswith(f"The folder {checkout.folder} cannot be written to")


def test_a_start_goes_on_inside_before_it_loads_anything_but_set_up(checkout: Checkout) -> None:
    """What the Python outside loads, the one inside loads again."""
    commands = checkout.folder / "app" / "commands"
    commands.mkdir()
    shutil.copy(APP / "__main__.py", checkout.folder / "app")
    (commands / "main.py").write_text(
        "import sys\nprint('loaded in', sys.prefix)\ndef main_with_setup(words):\n    print(*words)\n    return 3\n",
        encoding="utf-8",
    )
    code, out, err = checkout.start("a", "b c", module="app")
    assert (code, out) == (3, f"loaded in {sys.base_prefix}\na b c\n"), "without an environment it is for set-up to say"

    venv.create(checkout.environment, with_pip=False)
    pins = (checkout.folder / "app" / "setup" / "pins.txt").read_text(encoding="utf-8")
    stamp = stamps.text(checkout.environment, pins, running_version())
    (checkout.environment / "pegwright-app.txt").write_text(stamp, encoding="utf-8")
    code, out, err = checkout.start("a", "b c", module="app")
    assert (code, out) == (3, f"loaded in {checkout.environment}\na b c\n"), err


@pytest.mark.skipif(os.name == "nt", reason="links a Python, which Windows does not do unasked")
def test_an_environment_that_never_becomes_itself_is_not_tried_for_ever(checkout: Checkout) -> None:
    linked = interpreter(checkout.environment)
    linked.parent.mkdir(parents=True)
    linked.symlink_to(base_python())
    pins = (checkout.folder / "app" / "setup" / "pins.txt").read_text(encoding="utf-8")
    (checkout.environment / "pegwright-app.txt").write_text(
        stamps.text(checkout.environment, pins, running_version()), encoding="utf-8"
    )
    code, out, err = checkout.start()
    assert (code, out) == (2, "")
    assert (
        err
        == f"The Python in {checkout.environment} does not start as it should: delete that folder and start again.\n"
    )
