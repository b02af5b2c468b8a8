"""What goes into the one-file program. Making it takes minutes: set PEGWRIGHT_BUNDLE to have that done here too."""

import importlib.util
import os
import plistlib
import sys
from pathlib import Path

import pytest

from app.formats.drawing_in import job
from app.formats.drawing_in.worker import ALONE
from app.setup.places import CHECKOUT
from tests.bundle import parts
from tests.bundle.parts import PLIST, data_files, left_out, records
from tests.setup.wheel import wanted


def test_it_holds_every_file_that_the_wheel_holds_but_for_python_and_pictures_of_the_readme():
    there = {f"{folder}/{Path(file).name}" for file, folder in data_files()}
    assert there == {name for name in wanted() if not name.endswith(".py") and not name.startswith("app/samples/pictures")}
    assert all(Path(file).is_file() and CHECKOUT in Path(file).parents for file, _ in data_files())


def test_it_holds_nothing_that_python_keeps_beside_the_program(tmp_path, monkeypatch):
    for name in ("app/kept.svg", "app/__pycache__/start.cpython-311.pycs", "app/__pycache__/start.cpython-311.pyc", "samples/one.json"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).touch()
    monkeypatch.setattr(parts, "ROOT", tmp_path)
    assert [(Path(file).name, folder) for file, folder in data_files()] == [("kept.svg", "app"), ("one.json", "app/samples")]


@pytest.mark.parametrize(("name", "out"), [
    ("PySide6/Qt/lib/libQt6Quick.so.6", True), ("PySide6/Qt/lib/libQt6QmlModels.so.6", True),
    ("PySide6/Qt/plugins/platforms/libqeglfs.so", True), ("PySide6/Qt/translations/qtbase_fr.qm", True),
    ("PySide6\\Qt6Quick.dll", True), ("PySide6/Qt/lib/libQt6Widgets.so.6", False),
    ("PySide6/Qt/lib/libQt6Network.so.6", False), ("PySide6/Qt/lib/libQt6PrintSupport.so.6", False),
    ("PySide6/Qt/lib/libQt6OpenGL.so.6", False), ("PySide6/Qt/lib/libQt6Svg.so.6", False),
    ("PySide6/Qt/plugins/platforms/libqxcb.so", False), ("PySide6/Qt/plugins/platforms/libqwayland-generic.so", False),
    ("PySide6/Qt/plugins/platforms/libqoffscreen.so", False), ("PySide6/Qt/translations/qtbase_de.qm", False),
    ("PySide6/Qt/plugins/imageformats/libqjpeg.so", False), ("numpy/plugins/tls", False),
])
def test_what_the_window_needs_of_the_toolkit_stays(name, out):
    assert left_out(name) is out


def test_its_records_are_those_of_the_libraries():
    assert {"numpy", "shapely", "reportlab"} <= set(records())


def test_macos_is_told_of_layouts():
    """Keys as in Apple's Information Property List Key Reference, from memory."""
    told = plistlib.loads(plistlib.dumps(PLIST))
    assert told["CFBundleDocumentTypes"][0]["CFBundleTypeRole"] == "Editor"
    kinds = {kind["UTTypeIdentifier"] for kind in told["UTExportedTypeDeclarations"]}
    assert kinds <= set(told["CFBundleDocumentTypes"][0]["LSItemContentTypes"])


def test_a_drawing_is_read_by_the_program_itself_when_it_is_its_own_python(monkeypatch):
    assert job._worker() == ["-m", "app.formats.drawing_in.worker"]
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    assert job._worker() == [ALONE]


@pytest.mark.skipif(importlib.util.find_spec("PyInstaller") is None, reason='PyInstaller is not here: pip install -e ".[bundle]"')
@pytest.mark.skipif("PEGWRIGHT_BUNDLE" not in os.environ, reason="takes minutes: set PEGWRIGHT_BUNDLE")
def test_it_is_made_and_works(tmp_path):
    from tests.bundle.__main__ import make
    from tests.bundle.look import look

    assert [what for what, good, _ in look(make(tmp_path), tmp_path) if not good] == []
