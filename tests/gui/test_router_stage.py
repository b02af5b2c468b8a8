"""The Router stage: the plan on show, another one chosen, passes stepped through, marks on the face."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.threads.background import running
from app.window.stages import STAGES
from geometry.routing import plan_routing
from tests.gui.hands import pick
from tests.waiting import press


@pytest.fixture
def room(bench):
    QTest.keyClick(bench.window, _stage_key(), Qt.KeyboardModifier.AltModifier)
    assert bench.window.stage == "router"
    room = bench.window.rooms["router"]
    bench.planned("router")
    return room


def _stage_key() -> Qt.Key:
    """The key that goes with Alt to the Router stage."""
    return Qt.Key(Qt.Key.Key_1 + [stage.key for stage in STAGES].index("router"))


def test_the_plan_is_on_show(bench, room):
    panel = room.panel
    assert panel.of == "bass slot" and panel.headline.text() == "bass slot: 12 shank bearing, 1 pass."
    assert [panel.what.itemText(i) for i in range(panel.what.count())] == ["bass slot", "treble slot", "Outline"]
    assert panel.steps.rows[0][1].startswith("Template 6 mm thick: opening the same size")
    assert any("clockwise" in words for _, words, _ in panel.cautions.rows)
    assert any("12.7 tip bearing: " in words for _, words, _ in panel.rejected.rows)
    assert not panel.rejected.isVisible()
    press(panel.rejected_fold._button)
    assert panel.rejected.isVisible()


def test_another_plan_is_kept_in_the_layout_and_taken_back(bench, room):
    panel = room.panel
    words = [panel.plans.itemText(i) for i in range(panel.plans.count())]
    at = next(i for i, text in enumerate(words) if "9.5 shank bearing" in text)
    pick(panel.plans, at)
    assert [(r.of, r.tools[0].bit) for r in bench.layout.routes] == [("bass slot", "9.5 shank bearing")]
    bench.planned("router")
    assert panel.headline.text().startswith("bass slot: 9.5 shank bearing")
    assert panel.plans.itemText(0).startswith("Your choice: ")
    press(panel.best)
    bench.planned("router")
    assert bench.layout.routes == () and panel.headline.text() == "bass slot: 12 shank bearing, 1 pass."


def test_stepping_through_the_passes_with_the_arrow_keys(bench, room):
    panel = room.panel
    words = [panel.plans.itemText(i) for i in range(panel.plans.count())]
    pick(panel.plans, next(i for i, text in enumerate(words) if "2 passes" in text))
    bench.planned("router")
    stepper = panel.stepper
    assert stepper.index == 0 and stepper.says.startswith("Pass 1 of 2. Face up")
    stepper.slider.setFocus()
    QTest.keyClick(stepper.slider, Qt.Key.Key_Right)
    assert stepper.index == 1 and stepper.says.startswith("Pass 2 of 2.")
    assert not stepper._on.isEnabled()
    press(stepper._back)
    assert stepper.index == 0


def test_marks_come_and_go_with_the_strip(bench, room):
    assert set(room.marks()) == {"router left", "router waste", "router template"}
    press(room.shows.buttons["waste"])
    press(room.shows.buttons["grain"])
    assert set(room.marks()) == {"router left", "router template", "router grain"}
    assert {mark.style for mark in room.marks()["router grain"]} >= {"feed", "grain risk"}


def test_sentences_follow_the_unit(bench, room):
    bench.window.set_unit("in")
    bench.planned("router")
    assert '0.63" deep' in room.panel.stepper.says
    told = [words for rows in (room.panel.steps, room.panel.facts, room.panel.rejected) for _, words, _ in rows.rows]
    assert told and not any(" mm" in words for words in told)


def test_the_template_is_made_for_the_plan(bench, room):
    panel = room.panel
    assert not panel.make_template.isVisible() and "it is the one of this plan" in panel.template.text()
    words = [panel.plans.itemText(i) for i in range(panel.plans.count())]
    pick(panel.plans, next(i for i, text in enumerate(words) if " with bush" in text))
    bench.planned("router")
    assert panel.make_template.isVisible()
    panel._scroll.ensureWidgetVisible(panel.make_template)
    press(panel.make_template)
    bench.planned("router")
    tool = bench.layout.routes[0].tools[0]
    assert (bench.layout.template.bit, bench.layout.template.bush) == (tool.bit, tool.bush)
    assert not panel.make_template.isVisible()


def test_leaving_while_a_plan_is_made_waits(bench):
    bench.window.set_stage("router")
    room = bench.window.rooms["router"]
    assert room.errand.busy
    assert bench.window.close()
    bench.pump()
    bench.pump()
    assert not room.errand.busy and running(room.errand) == []


def test_a_slot_pressed_on_the_canvas_is_told_of(bench, room):
    assert room.panel.of == "bass slot"
    bench.click((17.0, 60.0))
    assert bench.window.document.held == ("treble slot",)
    assert room.panel.of == "treble slot" and room.panel.isVisible()
    bench.click((-60.0, -15.0))
    assert room.panel.isVisible()


def test_the_written_template_is_the_one_of_the_plan(bench, room, tmp_path, monkeypatch):
    """The opening in the file, read by ezdxf, is as wide as slot and plan say: 13 + 2 x offset."""
    import ezdxf

    from app.window import ask
    file = tmp_path / "board.dxf"
    monkeypatch.setattr(ask, "save_file", lambda *_: file)
    panel = room.panel
    words = [panel.plans.itemText(i) for i in range(panel.plans.count())]
    pick(panel.plans, next(i for i, text in enumerate(words) if " with bush" in text))
    bench.planned("router")
    offset = plan_routing(bench.layout).slots[0].best.offset
    assert offset > 1
    panel._scroll.ensureWidgetVisible(panel.write_template)
    press(panel.write_template)
    read = ezdxf.readfile(file)
    slot = bench.layout.slots[0].shape
    x = slot.nut_end[0]
    radii = {round(arc.dxf.radius, 4) for arc in read.modelspace().query("ARC") if abs(arc.dxf.center.x - x) < 0.01}
    bulges = [e for e in read.modelspace().query("LWPOLYLINE")]
    wide = slot.width + 2 * offset
    if radii:
        assert round(wide / 2, 4) in radii
    else:
        spans = {round(max(p[0] for p in e) - min(p[0] for p in e), 3) for e in bulges}
        assert round(wide, 3) in spans


def test_a_slot_that_crosses_itself_is_said_and_the_plan_comes_back(bench, room, qtbot):
    from msgspec.structs import replace

    from geometry.layout import DrawnSlot, Loop, Node
    bow = DrawnSlot(loop=Loop(nodes=tuple(Node(at=p) for p in ((-24.0, 30.0), (-12.0, 160.0), (-24.0, 160.0), (-12.0, 30.0)))))
    layout = bench.layout
    bench.window.document.apply("cross", replace(layout, slots=(replace(layout.slots[0], shape=bow), layout.slots[1])))
    qtbot.waitUntil(lambda: f"There is no plan for {layout.slots[0].id}: " in room.panel.headline.text())
    assert "crosses itself" in room.panel.headline.text() and room.panel.what.isVisible()
    assert {mark.owner for mark in room.marks()["router template"]} == {layout.slots[1].id, "outline"}
    bench.window.commands.run("undo")
    bench.planned("router")
    assert room.panel.headline.text().startswith("bass slot: ") and room.panel.what.isVisible()
