"""Several things in hand: set out, copied, cut, pasted; offsets of outline and slots. By mouse and keyboard."""

import math

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QPushButton

from app.look.descendants import below
from app.panels.forms.fields import LengthField
from app.panels.several import several
from app.window.dialogs.offset_dialog import OffsetDialog
from geometry.curves import Arc
from geometry.edits import plan_point
from geometry.layout import FreePlace, StraightSlot, loop_path
from geometry.solids import frames
from tests.gui.hands import button, choose, fill, typed
from tests.symmetric import is_symmetric
from tests.waiting import press, until

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def holes(bench):
    """Three holes in waste beyond the tip, set down by hand."""
    bench.window.set_tool("hole")
    for at in ((-30.0, 184.0), (0.0, 188.0), (20.0, 185.0)):
        bench.move(at)
        bench.press(at)
        bench.release(at)
    bench.window.keyboard.escape()
    return tuple(hole.id for hole in bench.layout.holes)


def shortcut(bench, key: Qt.Key, keys=CTRL) -> None:
    """A key of the menus; the window has to be the active one."""
    QTest.keyClick(bench.view, key, keys)
    bench.pump()


def test_shift_press_holds_more_and_a_button_brings_them_to_one_height(bench, holes):
    for id in holes:
        bench.click(plan_point(bench.layout, id), SHIFT)
    assert bench.window.document.held == holes
    button = next(b for b in below(bench.window.side, QPushButton) if b.text() == "Bring to one height")
    press(button)
    heights = {plan_point(bench.layout, id)[1] for id in holes}
    assert heights == {plan_point(bench.layout, holes[0])[1]}
    assert bench.window.document.history.undo_name == "Bring to one height"
    assert bench.window.document.held == holes


def test_several_are_moved_nudged_and_removed_together(bench, holes):
    for id in holes:
        bench.click(plan_point(bench.layout, id), SHIFT)
    before = [plan_point(bench.layout, id) for id in holes]
    bench.key(Qt.Key.Key_Down)
    bench.key(Qt.Key.Key_Right, SHIFT)
    after = [plan_point(bench.layout, id) for id in holes]
    for (x, y), now in zip(before, after, strict=True):
        assert now == pytest.approx((x + 10, y - 1))
    bench.key(Qt.Key.Key_Delete)
    assert not bench.layout.holes
    bench.window.commands.run("undo")
    assert len(bench.layout.holes) == 3


def test_copy_hangs_at_the_pointer_and_a_press_sets_it_down(bench, holes):
    bench.click(plan_point(bench.layout, holes[0]))
    bench.window.commands.run("copy")
    bench.window.commands.run("paste")
    assert len(bench.window.document.shown.holes) == 4 and len(bench.layout.holes) == 3
    bench.move((-20.0, 10.0))
    assert bench.window.canvas.tag.said.lines
    bench.press((-20.0, 10.0))
    bench.release((-20.0, 10.0))
    assert math.dist(bench.layout.holes[-1].at, (-20.0, 10.0)) < 1.0
    assert bench.window.document.held == (bench.layout.holes[-1].id,)


def test_a_paste_takes_a_typed_place_and_escape_leaves_the_very_same_layout(bench, holes):
    bench.click(plan_point(bench.layout, holes[0]))
    bench.window.commands.run("cut")
    assert len(bench.layout.holes) == 2
    before = bench.layout
    bench.window.commands.run("paste")
    bench.move((10.0, 30.0))
    bench.key(Qt.Key.Key_Escape)
    assert bench.layout is before and bench.window.document.shown is before
    bench.window.commands.run("paste")
    bench.text("12")
    bench.key(Qt.Key.Key_Tab)
    bench.text("150")
    bench.key(Qt.Key.Key_Return)
    assert abs(bench.layout.holes[-1].at[0]) == 12.0 and bench.layout.holes[-1].at[1] == 150.0


def test_nothing_to_paste_and_nothing_held_are_said(bench):
    QApplication.clipboard().clear()
    bench.window.commands.run("paste")
    assert "nothing to paste" in bench.window.foot.said
    bench.window.document.hold(())
    bench.window.commands.run("copy")
    assert "Hold tuners" in bench.window.foot.said
    bench.window.commands.run("level")
    assert "at least 2" in bench.window.foot.said
    bench.window.commands.run("hold all")
    assert len(bench.window.document.held) == len(bench.layout.tuners)
    bench.window.commands.run("remove")
    bench.window.commands.run("hold all")
    assert "no tuner yet" in bench.window.foot.said and not bench.window.document.held


def offset(bench, text: str, copy: bool = False) -> None:
    def answer():
        dialog = QApplication.activeModalWidget()
        assert isinstance(dialog, OffsetDialog)
        fill(dialog.field, text, Qt.Key.Key_Tab)
        if copy:
            press(dialog.copy)
        until(lambda: dialog.settled)
        assert dialog.take.isEnabled(), dialog.says.text()
        press(dialog.take)

    QTimer.singleShot(0, answer)
    bench.window.commands.run("offset")


def test_an_outline_is_set_in_by_a_typed_distance(bench):
    bench.window.set_stage("outline")
    old = loop_path(bench.layout.outline)
    offset(bench, "-3 mm")
    new = loop_path(bench.layout.outline)
    for along in (60.0, 150.0, 240.0):
        assert old.nearest(new.point_at(along)).distance == pytest.approx(3.0, abs=0.01)
    assert new.box[1] == pytest.approx(0.0, abs=1e-6), "the nut line stays"
    assert bench.window.document.history.undo_name == "Offset"


def test_a_slot_beside_a_slot(bench):
    bench.window.document.hold(("bass slot",))
    offset(bench, '1/16"', copy=True)
    old, new = bench.layout.slots[0].shape, bench.layout.slots[-1].shape
    assert isinstance(new, StraightSlot) and new.width == pytest.approx(old.width + 3.175)
    assert (new.nut_end, new.tip_end) == (old.nut_end, old.tip_end)


def test_with_mirrored_on_what_is_typed_nudged_and_removed_happens_on_both_sides(bench):
    window = bench.window
    window.set_stage("outline")
    press(window.tools.mirrored)
    bench.click(bench.layout.outline.nodes[1].at)
    field = next(w for w in below(window.side, LengthField) if w.isVisible() and w.accessibleName().startswith("Across,"))
    fill(field, "42")
    assert is_symmetric(bench.layout.outline) and bench.layout.outline.nodes[1].at[0] == 42.0
    window.canvas.view.setFocus()
    bench.key(Qt.Key.Key_Delete)
    assert is_symmetric(bench.layout.outline) and len(bench.layout.outline.nodes) == 7
    window.set_stage("tuners")
    bench.click(bench.origin("treble face 2"))
    bench.key(Qt.Key.Key_Up)
    a, b = bench.origin("treble face 2"), bench.origin("bass face 2")
    assert (-a[0], a[1]) == pytest.approx(b)
    bench.key(Qt.Key.Key_Delete)
    assert not {"treble face 2", "bass face 2"} & {t.id for t in bench.layout.tuners}
    window.commands.run("undo")
    assert {"treble face 2", "bass face 2"} <= {t.id for t in bench.layout.tuners}


def test_nodes_in_a_frame_are_brought_to_one_height_nudged_and_removed(bench):
    window = bench.window
    window.set_stage("outline")
    nodes = bench.layout.outline.nodes
    bench.click(nodes[2].at)
    bench.click(nodes[3].at, SHIFT)
    assert window.nodes == (2, 3) and window.node == 3
    shortcut(bench, Qt.Key.Key_Up, SHIFT)
    moved = bench.layout.outline.nodes
    assert [moved[i].at[1] - nodes[i].at[1] for i in (2, 3)] == pytest.approx([10.0, 10.0])
    assert window.nodes == (2, 3)
    button = next(b for b in below(window.side, QPushButton) if b.isVisible() and b.text() == "Bring to one height")
    press(button)
    level = bench.layout.outline.nodes
    assert level[2].at[1] == level[3].at[1]
    count = len(level)
    bench.view.setFocus()
    bench.key(Qt.Key.Key_Delete)
    assert len(bench.layout.outline.nodes) == count - 2
    before = bench.layout
    for _ in range(3):
        window.commands.run("undo")
    assert bench.layout.outline.nodes == nodes and before is not bench.layout


def test_a_corner_is_rounded_with_the_largest_radius_told_and_a_larger_one_refused_in_place(bench):
    window = bench.window
    window.set_stage("outline")
    bench.click(bench.layout.outline.nodes[0].at)
    count, said = len(bench.layout.outline.nodes), []

    def answer():
        dialog = QApplication.activeModalWidget()
        until(lambda: dialog.settled)
        said.append(dialog.says.text())
        ghost = window.canvas._ghost._marks
        assert ghost, "the rounding is seen before it is taken"
        for text in ("400", "3"):
            typed(dialog.field, text)
            dialog.field.editingFinished.emit()
            until(lambda: dialog.settled)
            said.append(dialog.says.text())
            assert dialog.field.text() == f"{text} mm", "a number is told with its unit"
        press(dialog.take)

    QTimer.singleShot(0, answer)
    press(window.tools._actions["fillet"])
    assert "largest radius that fits here" in said[0] and "does not fit" in said[1] and "largest" in said[2]
    assert len(bench.layout.outline.nodes) == count + 1 and not window.canvas._ghost._marks
    path = loop_path(bench.layout.outline)
    assert any(isinstance(one, Arc) and one.radius == pytest.approx(3.0) for one in path)


def test_several_tuners_take_other_hardware_in_one_step(bench):
    before, ids = bench.layout, ("bass side 1", "bass side 2", "treble side 1")
    bench.window.document.hold(ids)
    bench.pump()
    row = next(row for row in several(before, ids, "mm").fields if row.label == "Hardware of all")
    assert row.value == before.tuner("bass side 1").pattern and "side 10 roller two screws" in dict(row.choices)
    assert all(before.pattern(id).mount == "side" for id, _ in row.choices)
    box = next(box for box in below(bench.window.side, QComboBox) if box.isVisible() and box.accessibleName() == "Hardware of all")
    choose(box, "side 10 roller two screws")
    after = bench.layout
    assert [tuner.id for tuner in after.tuners if tuner.pattern == "side 10 roller two screws"] == list(ids[:2]) + [ids[2]]
    mixed = several(after, (*ids, "treble side 2"), "mm").fields[0]
    assert mixed.value == "" and mixed.choices[0][1] == "not alike"
    face = several(after, ("bass side 1", "bass face 1"), "mm").fields
    assert not any(row.label == "Hardware of all" for row in face)


def test_slots_that_a_frame_held_too_leave_the_tuners_their_ways(bench):
    layout, ids = bench.layout, ("bass side 1", "bass side 2", "bass side 3")
    alone, framed = ([row.label for row in several(layout, held, "mm").fields if row.kind in ("button", "choice")]
                     for held in (ids, ("bass slot", "treble slot", *ids)))
    assert framed == alone and "Hardware of all" in alone
    row, = [row for row in several(layout, ("bass slot", *ids), "mm").fields if row.label == "Make a row along the edge" or row.label == "Free from the row"]
    made = row.change(None)
    assert made.slots == layout.slots and made != layout
    pinned = [row.label for row in several(layout, (*ids, layout.pins[0].id), "mm").fields]
    assert "Hardware of all" in pinned and "Make a row along the edge" not in pinned
    one = several(layout, ("bass slot", ids[0]), "mm").fields
    assert not any(row.kind in ("button", "choice") for row in one), "a slot and one tuner have nothing to be set out by"


@pytest.mark.parametrize("mirrored", [False, True])
def test_members_of_a_row_are_freed_together_in_one_step(bench, mirrored):
    window, ids = bench.window, ("treble face 1", "treble face 2", "treble face 3")
    window.set_stage("tuners")
    window.tools.mirrored.setChecked(mirrored)
    window.document.hold(ids)
    window.held_page.show()
    before = frames(bench.layout)
    press(button(window.side, "Free from the row"))
    bench.pump()
    freed = {tuner.id for tuner in bench.layout.tuners if isinstance(tuner.place, FreePlace)}
    assert freed == {*ids, *(id.replace("treble", "bass") for id in ids if mirrored)}
    for id, frame in frames(bench.layout).items():
        assert frame.origin == pytest.approx(before[id].origin)
    window.held_page.show()
    assert button(window.side, "Bring into line") is not None
    window.commands.run("undo")
    assert not any(isinstance(tuner.place, FreePlace) for tuner in bench.layout.tuners)


def test_a_row_on_a_line_is_set_square_from_the_page_of_its_members_and_its_twin_with_it(bench):
    """As tuners on one plate are: beside a curved edge they fan out until then."""
    window, ids = bench.window, [f"{side} face {k}" for side in ("treble", "bass") for k in (1, 2, 3)]
    window.set_stage("tuners")
    for held in (ids[:3], ids[3:]):
        window.document.hold(tuple(held))
        window.held_page.show()
        press(button(window.side, "Make a row on a line"))
        bench.pump()
    fanned = bench.layout

    def pointing(layout):
        placed = frames(layout)
        return [placed[id].u for id in ids]
    assert max(abs(pointing(fanned)[0][1] - u[1]) for u in pointing(fanned)[1:3]) > 0.02
    window.tools.mirrored.setChecked(True)
    window.held_page.show()
    press(button(window.side, "Point its buttons square to the row"))
    bench.pump()
    ways = pointing(bench.layout)
    for one, two in zip(ways[:3], ways[3:], strict=True):
        assert one == pytest.approx(ways[0], abs=1e-9) and two == pytest.approx((-one[0], one[1], 0.0), abs=1e-9)
    assert not any(row.label.startswith("Point its buttons") for row in several(bench.layout, tuple(ids[3:]), "mm").fields)
    window.commands.run("undo")
    assert bench.layout == fanned


def test_why_a_row_was_not_set_out_goes_with_the_row(bench):
    """What a menu was refused for stands in the foot until the panel has mended it: then there is nothing left to look for."""
    window = bench.window
    held = tuple(t.id for t in bench.layout.tuners if t.id.startswith("treble face"))
    window.document.hold(held)
    bench.pump()
    window.commands.run("in line")
    assert "free it first" in window.foot.said
    press(next(b for b in below(window.side, QPushButton) if b.text() == "Free from the row"))
    assert all(isinstance(bench.layout.tuner(id).place, FreePlace) for id in held)
    assert window.foot.said == ""
    window.commands.run("in line")
    assert len({plan_point(bench.layout, id)[0] for id in held}) == 1
