"""The rack in the Router stage: typed into, moved between layout and maker, and what the plan makes of it."""

import errno

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.formats import rack as racks
from app.formats.errors import FormatError
from app.formats.rack import load_rack, save_rack
from app.panels.forms.fields import LengthField
from app.window import ask
from app.window.rooms import rack_desk
from app.window.rooms.rack_desk import RackDesk
from geometry.edits.rack import add_entry, sort_shelf
from geometry.errors import GeometryError
from geometry.layout.generic import RACK
from geometry.layout.generic_inch import RACK_INCH
from tests.gui.hands import fill
from tests.waiting import press


@pytest.fixture
def path(tmp_path, monkeypatch):
    path = tmp_path / "settings" / "rack.json"
    for module in (racks, rack_desk):
        monkeypatch.setattr(module, "rack_path", lambda: path)
    return path


@pytest.fixture
def told(monkeypatch):
    said = []
    monkeypatch.setattr(ask, "warn", lambda parent, title, text: said.append((title, text)))
    return said


@pytest.fixture
def room(bench, path, told):
    bench.window.set_stage("router")
    room = bench.window.rooms["router"]
    bench.planned("router")
    press(room.shows.rack)
    assert bench.window.paper.currentWidget() is room.rack.view
    return room


def choose(view, id):
    """Walk down the table to an entry with the keyboard."""
    view.table.setFocus()
    for _ in range(40):
        if view.table.id == id:
            return
        QTest.keyClick(view.table, Qt.Key.Key_Down)
    raise AssertionError(f"{id} is not in the table")


def type_into(form, name, text):
    """Type a value and leave it with Enter."""
    field = next(w for w in form.widgets if w.accessibleName() == name)
    fill(field, text)
    return field


def whose(view, index):
    view._whose.setFocus()
    QTest.keyClick(view._whose, Qt.Key.Key_Down if index else Qt.Key.Key_Up)


def test_a_bits_length_changes_the_reason(bench, room):
    """Edges of 30 mm in 16 mm of wood stand 14 mm up into a template of 6 mm: no bearing is left to rub there."""
    def reason():
        return next((words for _, words, _ in room.panel.rejected.rows if words.startswith("12 shank bearing: ")), "")
    assert reason() == ""
    view = room.rack.view
    choose(view, "12 shank bearing")
    type_into(view.form, "Cutting length", "30")
    assert next(b for b in bench.layout.rack.bits if b.id == "12 shank bearing").cutting_length == 30
    bench.planned("router")
    assert "Its cutting edges are 30 mm long and a pass may take 16 mm" in reason()
    assert not room.panel.headline.text().startswith("bass slot: 12 shank bearing")
    bench.window.commands.run("undo")
    bench.planned("router")
    assert reason() == "" and view.rack == bench.layout.rack


def test_inches_are_taken_and_nonsense_is_refused_in_one_sentence(bench, room):
    view = room.rack.view
    choose(view, "6 straight")
    type_into(view.form, "Cutter diameter", '1/4"')
    assert bench.layout.rack.bits[0].cutter == pytest.approx(6.35)
    field = type_into(view.form, "Cutter diameter", "-3")
    assert isinstance(field, LengthField) and field.property("bad") is True
    assert bench.layout.rack.bits[0].cutter == pytest.approx(6.35)


def test_add_copy_rename_sort_and_remove(bench, room):
    view = room.rack.view
    press(view.buttons["add"])
    assert view.table.id == "new bit" and bench.layout.rack.bits[-1].id == "new bit"
    type_into(view.form, "Name", "plug cutter")
    assert bench.layout.rack.bits[-1].id == "plug cutter" and view.table.id == "plug cutter"
    type_into(view.form, "Name", "6 straight")
    assert bench.layout.rack.bits[-1].id == "plug cutter", "a name that is taken is refused"
    press(view.buttons["copy"])
    assert view.table.id == "plug cutter 2"
    press(view.buttons["sort"])
    cutters = [bit.cutter for bit in bench.layout.rack.bits]
    assert cutters == sorted(cutters) and view.table.id == "plug cutter 2"
    press(view.buttons["remove"])
    assert "plug cutter 2" not in [bit.id for bit in bench.layout.rack.bits]


def test_the_templates_bit_keeps_its_role_under_another_name(bench, room):
    view = room.rack.view
    assert bench.layout.template.bit == "12 shank bearing"
    choose(view, "12 shank bearing")
    type_into(view.form, "Name", "my twelve")
    assert bench.layout.template.bit == "my twelve"


def test_drills_and_machines(bench, room):
    view = room.rack.view
    press(view._tab["drills"])
    choose(view, "brad 6.4")
    type_into(view.form, "Length that drills", "80")
    assert next(d for d in bench.layout.rack.drills if d.id == "brad 6.4").length == 80
    press(view._tab["machines"])
    type_into(view.machines, "Base for block heights", "250")
    type_into(view.machines, "Speeds, turns a minute", "24000, 8000")
    type_into(view.machines, "Collets", '8, 1/4"')
    type_into(view.machines, "Template thickness", "9")
    rack = bench.layout.rack
    assert (rack.press.base, rack.router.speeds, rack.router.collets) == (250, (8000, 24000), (6.35, 8))
    assert bench.layout.template.thickness == 9
    type_into(view.machines, "Speeds, turns a minute", "fast")
    assert bench.layout.rack.router.speeds == (8000, 24000)


def test_my_own_rack_is_kept_beside_the_layouts(bench, room, path):
    view, before = room.rack.view, bench.layout.rack
    whose(view, 1)
    assert view.whose == "mine" and view.rack == RACK and not path.exists()
    choose(view, "8 straight")
    type_into(view.form, "Cutting length", "22")
    assert bench.layout.rack == before, "the layout's copy is another"
    assert load_rack(path).bits[1].cutting_length == 22
    press(view.buttons["back"])
    assert load_rack(path) == RACK
    type_into(view.form, "Cutting length", "21")
    whose(view, 0)
    press(view.buttons["take"])
    assert bench.layout.rack.bits[1].cutting_length == 21
    bench.window.commands.run("undo")
    assert bench.layout.rack == before


def test_while_none_is_kept_my_rack_is_the_starting_one_in_the_unit_in_use(bench, room, path):
    view = room.rack.view
    whose(view, 1)
    assert view.rack == RACK
    bench.window.set_unit("in64")
    assert view.rack == RACK_INCH
    choose(view, view.rack.bits[0].id)
    type_into(view.form, "Cutting length", "22 mm")
    bench.window.set_unit("mm")
    assert view.rack == load_rack(path) != RACK, "once one is kept it is that in any unit"
    press(view.buttons["back"])
    assert load_rack(path) == RACK_INCH, "and what was done to it can still be taken back"


def test_my_rack_that_another_window_has_changed_is_not_written_over(bench, room, path):
    view = room.rack.view
    whose(view, 1)
    choose(view, "8 straight")
    other = RackDesk(bench.window)
    save_rack(sort_shelf(add_entry(other.mine(), "bits"), "bits"), path)
    kept = path.read_bytes()
    type_into(view.form, "Cutting length", "22")
    assert path.read_bytes() == kept and "changed in another window" in bench.window.foot.said
    assert view.rack == load_rack(path), "it is shown as it is now"
    type_into(view.form, "Cutting length", "22")
    assert next(bit for bit in load_rack(path).bits if bit.id == "8 straight").cutting_length == 22
    assert len(load_rack(path).bits) == len(RACK.bits) + 1
    assert other.mine() == load_rack(path), "and there too"
    press(view.buttons["back"])
    assert path.read_bytes() == kept


def test_the_layouts_rack_becomes_mine_and_the_old_one_is_kept(bench, room, path):
    save_rack(RACK_INCH, path)
    press(room.rack.view.buttons["keep"])
    assert load_rack(path) == bench.layout.rack
    assert load_rack(path.with_name("rack-before.json")) == RACK_INCH


def test_a_broken_rack_file_is_set_aside_and_said_so(bench, room, path, told):
    path.parent.mkdir(parents=True)
    path.write_text('{"pegwright_rack": 1, "rack": {"bits": [{"id": "x", "cutter": "wide"}]}}')
    whose(room.rack.view, 1)
    (title, text), = told
    assert title == "Your rack could not be read" and "rack.bits[0].cutter" in text
    assert "set aside as rack-unreadable-1.json" in text and not path.exists()
    assert "wide" in path.with_name("rack-unreadable-1.json").read_text()
    assert room.rack.view.rack == RACK


def hidden(path, monkeypatch):
    """The disk does not give the file out, to nobody: what a missing right does to all but the superuser."""
    def refuse(*asked):
        raise PermissionError(errno.EACCES, "Permission denied")
    monkeypatch.setattr(racks, "read_bytes", refuse)


def newer(path, monkeypatch):
    path.write_text('{"pegwright_rack": 2}')


@pytest.mark.parametrize(("spoil", "why"), [(hidden, "cannot be read"), (newer, "Update Pegwright")])
def test_a_rack_file_that_may_be_sound_stays_and_nothing_is_kept_in_its_place(bench, room, path, told, monkeypatch, spoil, why):
    save_rack(RACK_INCH, path)
    with monkeypatch.context() as fault:
        spoil(path, fault)
        kept = path.read_bytes()
        view = room.rack.view
        whose(view, 1)
        assert len(told) == 1 and why in told[0][1] and "not kept" in told[0][1] and view.rack == RACK
        choose(view, "8 straight")
        type_into(view.form, "Cutting length", "22")
        whose(view, 0)
        press(view.buttons["keep"])
        assert [title for title, _ in told[1:]] == ["Your rack was not kept"] * 2
        assert path.read_bytes() == kept and list(path.parent.glob("*unreadable*")) == []


def test_export_and_import(bench, room, tmp_path, monkeypatch, told):
    file = tmp_path / "shared.json"
    monkeypatch.setattr(ask, "save_file", lambda *_: file)
    monkeypatch.setattr(ask, "open_file", lambda *_: file)
    view, before = room.rack.view, bench.layout.rack
    press(view.buttons["export"])
    press(view.buttons["start inch"])
    assert bench.layout.rack == RACK_INCH and bench.layout.template.bit is None
    press(view.buttons["import"])
    assert bench.layout.rack == before and told == []
    file.write_text("{}")
    press(view.buttons["import"])
    assert told[0][0] == "This rack was not imported" and bench.layout.rack == before


def test_a_new_layout_begins_with_my_own_rack(bench, path):
    from app.window.rooms.own_rack import with_own_rack
    window, layout = bench.window, bench.layout
    assert with_own_rack(window, layout) is layout, "none has been kept yet"
    save_rack(RACK_INCH, path)
    made = with_own_rack(window, layout)
    assert made.rack == RACK_INCH and made.template.bit == "3/8 in shank bearing"
    path.write_text("{")
    assert with_own_rack(window, layout) is layout


def test_a_new_layout_in_inches_begins_with_fractional_tools(bench, path):
    from app.window.rooms.own_rack import with_own_rack
    from geometry.layout.generic_inch import PATTERNS_INCH
    window, layout = bench.window, bench.layout
    window.set_unit("in64")
    made = with_own_rack(window, layout)
    assert made.rack == RACK_INCH and made.template.bit in {bit.id for bit in RACK_INCH.bits}
    assert {tuner.pattern for tuner in made.tuners} <= {pattern.id for pattern in PATTERNS_INCH}
    save_rack(RACK, path)
    assert with_own_rack(window, layout).rack == RACK, "whoever keeps a rack of his own has that"
    assert window.chooser.options.pin_diameter == 6.35
    window.set_unit("mm")
    assert window.chooser.options.pin_diameter == 6.0


def test_the_menu_lays_the_rack_on_the_bench(bench, path):
    QTest.keyClick(bench.window, Qt.Key.Key_K, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    room = bench.window.rooms["router"]
    assert bench.window.stage == "router" and bench.window.paper.currentWidget() is room.rack.view
    bench.planned("router")
    press(room.shows.rack)
    assert bench.window.paper.currentWidget() is bench.window.canvas
    assert "router template" in room.marks()


def test_an_emptied_shelf_and_an_empty_rack(bench, room):
    view = room.rack.view
    for _ in bench.layout.rack.bits:
        press(view.buttons["remove"])
    assert bench.layout.rack.bits == () and view.table.id == "" and not view.buttons["remove"].isEnabled()
    bench.planned("router")
    assert room.panel.headline.text() == "No bit of the rack can rout bass slot."
    assert "would" in room.panel.would.rows[0][1]
    press(view.buttons["add"])
    assert view.table.id == "new bit" and view.buttons["remove"].isEnabled()


@pytest.mark.parametrize("seed", range(3))
def test_whatever_the_hands_do_table_and_layout_agree(bench, room, seed):
    import random
    hand = random.Random(seed)
    view = room.rack.view
    for _ in range(25):
        deed = hand.choice(["add", "copy", "remove", "sort", "shelf", "walk", "type", "undo"])
        if deed == "shelf":
            press(view._tab[hand.choice(["bits", "bushes", "drills"])])
        elif deed == "walk":
            view.table.setFocus()
            QTest.keyClick(view.table, hand.choice([Qt.Key.Key_Down, Qt.Key.Key_Up, Qt.Key.Key_End]))
        elif deed == "type" and view.table.id:
            field = hand.choice([w for w in view.form.widgets if isinstance(w, LengthField)])
            type_into(view.form, field.accessibleName(), hand.choice(["5", "12.5", "-1", "", "x", '3/8"', "9000"]))
        elif deed == "undo":
            bench.window.commands.run("undo")
        elif deed in view.buttons and view.buttons[deed].isEnabled():
            press(view.buttons[deed])
        assert view.rack == bench.layout.rack
        names = [row[0] for row in view.table._words.rows]
        assert names == [entry.id for entry in getattr(bench.layout.rack, view._shelf)]
        assert view.table.id in names or (not names and view.table.id == "")
        if view.table.id:
            assert view.form.widgets[0].text() == view.table.id
    bench.planned("router")


def test_a_step_back_that_the_disk_refuses_can_be_made_again(room, path, told, monkeypatch):
    view = room.rack.view
    whose(view, 1)
    choose(view, "8 straight")
    type_into(view.form, "Cutting length", "22")

    def full(*asked) -> None:
        raise FormatError("The disk is full.")
    with monkeypatch.context() as fault:
        fault.setattr(rack_desk, "save_rack", full)
        press(view.buttons["back"])
    assert told == [("Your rack was not kept", "The disk is full.")] and load_rack(path).bits[1].cutting_length == 22
    press(view.buttons["back"])
    assert load_rack(path) == RACK


def test_a_rack_that_the_layout_does_not_take_is_not_said_to_be_taken(bench, room, monkeypatch):
    def refuse(*asked) -> None:
        raise GeometryError("It cannot be.")
    monkeypatch.setattr(rack_desk, "set_rack", refuse)
    press(room.rack.view.buttons["take"])
    assert bench.window.foot.said == "It cannot be."
