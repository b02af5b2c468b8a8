"""The wheel holds all that the program needs, and runs without its source tree and without setting anything up."""

import email
import os
import subprocess
import sys
import tomllib
import zipfile

import pytest
from packaging.requirements import Requirement

from app import __version__
from app.setup import places
from app.setup.places import CHECKOUT
from tests.setup.wheel import build, unpack, wanted

pytest.importorskip("hatchling", reason="hatchling builds the wheel: python3 -m tests brings it")

SEE = """
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from app.window import run

def look():
    window = next((w for w in QApplication.topLevelWidgets() if hasattr(w, "front")), None)
    if window is None or not window.isVisible() or not window.front.shown or len(window.front.page.cards) < int(sys.argv[2]):
        QTimer.singleShot(50, look)
        return
    window.grab().save(sys.argv[1])
    print(window.front.shown, len(window.front.page.cards), QApplication.windowIcon().isNull(), window.windowTitle())
    QApplication.quit()

application = QApplication([])
QTimer.singleShot(50, look)
sys.exit(run(None, "de"))
"""


@pytest.fixture(scope="module")
def wheel(tmp_path_factory):
    return build(tmp_path_factory.mktemp("wheel"))


@pytest.fixture(scope="module")
def installed(wheel, tmp_path_factory):
    """A folder on the search path of Python with nothing in it but the wheel's files."""
    folder = tmp_path_factory.mktemp("site-packages")
    unpack(wheel, folder)
    return folder


def call(installed, *words, **environ):
    """Run Python on the installed files alone."""
    clean = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "PEGWRIGHT"))}
    return subprocess.run(
        [sys.executable, "-P", *map(str, words)],
        cwd=installed.parent,
        env={**clean, "PYTHONPATH": str(installed), **environ},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=900,
    )


def test_every_file_of_the_program_is_in_it_and_nothing_else(wheel):
    with zipfile.ZipFile(wheel) as archive:
        names = {name for name in archive.namelist() if ".dist-info/" not in name}
    assert wanted() - names == set(), "missing"
    assert names - wanted() == set(), "too much"
    for name in ("app/languages/pegwright_de.qm", "app/look/program/pegwright-256.png", "app/setup/pins.txt",
                 "app/samples/twelve-string-mixed.headstock.json"):
        assert name in names


def test_its_record_says_what_it_needs_and_how_it_is_started(wheel):
    project = tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    info = f"pegwright-{__version__}.dist-info"
    with zipfile.ZipFile(wheel) as archive:
        record = email.message_from_bytes(archive.read(f"{info}/METADATA"))
        points = archive.read(f"{info}/entry_points.txt").decode()
    needed = {str(Requirement(line)).lower() for line in record.get_all("Requires-Dist") if "extra ==" not in line}
    assert needed == {str(Requirement(line)).lower() for line in project["dependencies"]}
    assert record["Requires-Python"] and record["Version"] == __version__
    assert "pegwright = app.__main__:main" in points
    assert "License-Expression" not in record, "no licence has been chosen"


def test_it_checks_a_sample_without_setting_anything_up(installed):
    sample = installed / "app" / "samples" / "twelve-string-mixed.headstock.json"
    before = {file.name for file in installed.iterdir()}
    done = call(installed, "-m", "app", "check", sample)
    assert done.returncode == 0, done.stderr
    assert "36 holes" in done.stdout and "set-up" not in done.stderr
    assert {file.name for file in installed.iterdir()} == before
    assert "app" not in sys.path and str(CHECKOUT) not in done.stderr


def test_a_drawing_is_imported_by_the_installed_program(installed, tmp_path):
    """The import runs in a process of its own, which has to find the installed program too."""
    drawing = installed / "app" / "samples" / "outlines" / "head-in-millimetres.svg"
    done = call(installed, "-m", "app", "outline", drawing, "--out", tmp_path / "new.headstock.json")
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "new.headstock.json").is_file()


def test_its_window_has_its_samples_its_words_and_its_picture(installed, tmp_path):
    seen = tmp_path / "window.png"
    samples = len(list((CHECKOUT / "samples").glob("*.json")))
    done = call(installed, "-c", SEE, seen, samples, QT_QPA_PLATFORM="offscreen")
    assert done.returncode == 0, done.stderr
    shown, cards, without_picture, _ = done.stdout.split(maxsplit=3)
    assert (shown, without_picture) == ("True", "False") and int(cards) == samples
    assert seen.stat().st_size > 10_000


def test_a_stray_project_file_beside_an_installed_copy_is_no_checkout(tmp_path, monkeypatch):
    """Some packages leave a pyproject.toml among all that is installed."""
    monkeypatch.setattr(places, "CHECKOUT", tmp_path)
    monkeypatch.setattr(places, "APP", tmp_path / "app")
    (tmp_path / "app" / "samples").mkdir(parents=True)
    (tmp_path / "pyproject.toml").write_text("[project]\n", encoding="utf-8")
    assert not places.in_checkout()
    (tmp_path / "app" / "samples").rmdir()
    assert places.in_checkout()
