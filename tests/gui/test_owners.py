"""Whatever is asked of the parts of a window, each stays its parent's in the binding's book of owners: else it is given up with garbage."""

import gc
import re
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QActionGroup
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QButtonGroup, QScrollArea, QVBoxLayout, QWidget
from shiboken6 import dump, isValid

from app.look.descendants import below
from app.look.walk import passes_on
from app.window.stages import STAGES
from tests.gui.bench import at_rest
from tests.gui.dialogs import DIALOGS
from tests.waiting import on_screen, until

OWNER = re.compile(r"^parent\.+ <.* at 0x([0-9a-f]+)>", re.MULTILINE)
"""How the binding tells of the owner that it has written down, at the end its place in Python's memory."""


def noted(root: QWidget) -> list[tuple[QObject, set[int]]]:
    """Every part below a widget with the places of all that it is a part of; to walk there puts the book of owners right."""
    def walk(part: QObject, above: set[int]) -> Iterator[tuple[QObject, set[int]]]:
        for child in part.children():
            yield child, above
            yield from walk(child, above | {id(child)})
    return list(walk(root, {id(root)}))


def strays(parts: list[tuple[QObject, set[int]]]) -> list[str]:
    """What belongs to a stranger by the book. An action or a button belongs to its group there, which is its window's."""
    found = []
    for part, above in parts:
        owner = OWNER.search(dump(part)) if isValid(part) else None
        if owner and int(owner[1], 16) not in above:
            by = next((one for one, _ in parts if id(one) == int(owner[1], 16)), None)
            if not isinstance(by, QActionGroup | QButtonGroup):
                found.append(f"{part} belongs to {by}")
    return found


def tabs(root: QWidget, times: int = 30) -> None:
    for _ in range(times):
        QTest.keyClick(QApplication.focusWidget() or root, Qt.Key.Key_Tab)


@pytest.mark.parametrize("stage", [stage.key for stage in STAGES])
def test_tab_and_commands_take_no_part_of_a_stage_from_its_owner(bench, stage):
    window = bench.window
    window.activateWindow()
    window.set_stage(stage)
    at_rest(window)
    parts = noted(window)
    assert len(parts) > 200
    tabs(window)
    window.keyboard.part(1)
    for key in ("fit", "zoom in", "undo"):
        window.commands.run(key)
    bench.pump()
    assert not strays(parts)


@pytest.mark.parametrize("name", DIALOGS)
def test_tab_takes_no_part_of_a_dialog_from_its_owner(bench, name):
    dialog = DIALOGS[name](bench.window)
    dialog.open_for(None) if name == "hold" else dialog.show()
    on_screen(dialog)
    dialog.activateWindow()
    parts = noted(dialog)
    tabs(dialog)
    assert not strays(parts)
    gc.collect()
    assert all(isValid(part) for part, _ in parts)
    dialog.reject()
    dialog.deleteLater()


def test_the_front_page_is_whole_after_tab_and_a_collection(bench):
    window = bench.window
    window.front.show()
    page = window.front.page
    until(lambda: not window.front.errand.busy)
    window.activateWindow()
    tabs(page.ways["numbers"])
    gc.collect()
    assert all(isValid(way) for way in (*page.ways.values(), page.back))
    window.front.leave()


def test_the_binding_takes_what_is_answered_for_a_part_of_whom_was_asked(qtbot):
    """Why no part is asked so. When this fails, the binding has learned better, and `app/look/walk.py` may ask again."""
    whole = QWidget()
    qtbot.addWidget(whole)
    column, area = QVBoxLayout(whole), QScrollArea(whole)
    column.addWidget(area)
    parts = noted(whole)
    assert not strays(parts)
    assert area.viewport().focusProxy() is area and strays(parts)


def test_what_passes_the_keyboard_on_is_known_without_being_asked(bench):
    """What a part is, and not what the toolkit answers, tells; last, as the question takes parts from their owners."""
    window = bench.window
    dialogs = [make(window) for make in DIALOGS.values()]
    for stage in ("strings", "router", "book"):
        window.set_stage(stage)
    at_rest(window)
    pairs = [(part, widget) for root in (window, *dialogs) for widget in [root, *below(root)] for part in widget.children()
             if isinstance(part, QWidget) and not part.isWindow() and part.focusPolicy() & Qt.FocusPolicy.TabFocus]
    assert {passes_on(part, widget) for part, widget in pairs} == {True, False}
    held = [part.focusProxy() for part, _ in pairs]
    assert [(part, widget) for (part, widget), proxy in zip(pairs, held, strict=True) if passes_on(part, widget) != (proxy is not None)] == []
    for dialog in dialogs:
        dialog.deleteLater()
