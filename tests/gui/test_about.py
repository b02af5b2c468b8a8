"""What the program tells of itself: its version, that no licence has been chosen, and what it is built on."""

import importlib.metadata
import tomllib
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QLabel

from app import __version__
from app.look.descendants import below
from app.setup.places import CHECKOUT
from app.window.dialogs.about import AboutDialog
from app.window.dialogs.libraries import ROOTS, libraries, licence_of, versions
from tests.waiting import press


def test_the_roots_are_what_the_project_asks_for():
    project = tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert set(ROOTS) == {Requirement(line).name for line in project["dependencies"]}


def test_every_library_is_told_with_the_version_and_a_licence():
    found = {canonicalize_name(library.name): library for library in libraries()}
    assert {canonicalize_name(name) for name in ROOTS} <= found.keys()
    assert {"shiboken6", "pyparsing"} <= found.keys(), "what is needed in turn is told too"
    assert "pytest" not in found
    for library in found.values():
        assert library.version == importlib.metadata.version(library.name) and library.licence, library
    assert "LGPL-3.0" in found["pyside6-essentials"].licence
    assert found["shapely"].licence == "BSD-3-Clause"


def test_a_whole_text_in_the_place_of_a_licence_is_told_by_its_kind():
    from email.message import Message
    record = Message()
    record["License"] = "First line of a long text\n" + "words " * 500
    assert licence_of(record) == "First line of a long text"
    record["Classifier"] = "License :: OSI Approved :: BSD License"
    assert licence_of(record) == "BSD License"
    assert licence_of(Message()) == ""


def test_the_dialog_says_whose_the_program_is(bench, monkeypatch):
    shown = []

    def by_hand(dialog):
        dialog.show()
        words = " ".join(label.text() for label in below(dialog, QLabel))
        press(dialog.copy_button)
        shown.append((words, dialog.table.rowCount(), QGuiApplication.clipboard().text()))
        QTest.keyClick(dialog, Qt.Key.Key_Escape)
        return QDialog.DialogCode.Rejected

    monkeypatch.setattr(AboutDialog, "exec", by_hand)
    bench.window.actions_["about"].trigger()
    words, rows, copied = shown[0]
    assert f"Pegwright {__version__}" in words
    assert "The owners have not chosen a licence yet: all rights reserved." in words
    assert "GNU Lesser General Public License" in words and "https://download.qt.io/" in words
    assert rows == len(libraries())
    assert copied == "\n".join(versions()) + "\n"
    assert copied.startswith(f"Pegwright {__version__}\nPython 3.") and "numpy " in copied
    assert str(Path.home()) not in copied and str(CHECKOUT) not in copied
