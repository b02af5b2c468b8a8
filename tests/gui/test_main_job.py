"""The main job by mouse and keyboard: hold, drag, see a snag come and go, type, undo, print."""

import math

from PySide6.QtCore import Qt

from app.look.theme import theme
from app.window import ask
from geometry.layout import FreePlace
from tests.gui.hands import fill

CTRL = Qt.KeyboardModifier.ControlModifier


def test_the_window_opens_on_the_demo_with_its_counts(bench):
    assert bench.window.stages.isVisible()
    assert "36 holes · 42 drilling operations" in bench.window.foot._counts.text()
    assert not bench.window.document.unsaved


def test_dragging_a_side_tuner_brings_a_snag_and_escape_puts_everything_back(bench, qtbot):
    before = bench.layout
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] - 20))
    spoiled = [s for s in bench.window.document.result.snags if s.grade == "spoils the work"]
    assert spoiled and any("treble side 2" in s.between for s in spoiled)
    snags, listed = bench.window.document.result.snags, bench.window.side.inside.snags.model()
    rings = [(item.x(), item.y()) for item in bench.window.canvas._snags._items]
    assert rings == [snag.where[:2] for snag in snags], "in every frame"
    qtbot.waitUntil(lambda: listed.rowCount() == len(snags))
    bench.key(Qt.Key.Key_Escape)
    assert bench.window.document.shown is before
    assert not bench.window.document.result.spoils
    assert bench.window.document.history.undo_name is None
    bench.release(start)


def test_a_drag_is_one_step_and_undo_takes_it_back(bench):
    before = bench.layout
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] + 6))
    assert bench.layout != before
    assert len(bench.window.document.history.past) == 1
    bench.window.actions_["undo"].trigger()
    assert bench.layout is before
    bench.window.actions_["redo"].trigger()
    assert bench.layout != before


def test_a_dragged_side_tuner_stays_square_to_the_edge_and_its_mark_moves(bench):
    start = bench.inside("treble side 3")
    bench.drag(start, (start[0], start[1] - 10))
    from geometry.solids import frames, side_bore
    frame = frames(bench.layout)["treble side 3"]
    assert abs(sum(a * b for a, b in zip(frame.u, frame.w, strict=True))) < 1e-12
    bore = side_bore(bench.layout, "treble side 3")
    mark = bore.mark
    # By the formula of the axis: mark = seat + lambda n with lambda = (W - x) / n_x.
    n = (-frame.w[0], -frame.w[1])
    lam = (bench.layout.blank.treble - bore.seat[0]) / n[0]
    assert math.isclose(mark[1], bore.seat[1] + lam * n[1], abs_tol=1e-9)


def test_what_is_held_shows_its_numbers_and_takes_typed_ones(bench, qtbot):
    bench.click(bench.inside("treble side 2"))
    assert bench.window.document.held == ("treble side 2",)
    form = bench.window.side.inside._fields
    field = next(w for row, w in zip(form.rows, form.widgets, strict=True) if row.label == "Along the edge")
    fill(field, '4 1/2"')
    assert bench.layout.tuner("treble side 2").place.along == 114.3
    assert bench.window.document.history.undo_name == "Along the edge"


def test_clicking_a_snag_holds_what_it_is_about_and_goes_there(bench):
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 20))
    bench.window.document.hold(())
    snags = bench.window.side.inside.snags
    snags.clicked.emit(snags.model().index(0))
    worst = bench.window.document.result.snags[0]
    assert bench.window.document.held == worst.between[:1]
    assert bench.view.shows(*worst.where[:2])


def test_arrow_keys_nudge_a_face_tuner(bench):
    bench.window.document.hold(("bass face 1",))
    bench.window.commands.run("duplicate")
    bench.click(bench.origin("bass face 1"))
    x, y = bench.origin("bass face 1")
    bench.key(Qt.Key.Key_Up)
    assert math.hypot(bench.origin("bass face 1")[0] - x, bench.origin("bass face 1")[1] - y) > 0.5


def test_placing_a_tuner_follows_the_pointer_until_pressed(bench):
    bench.window.set_tool("tuner")
    bench.window.tools.hardware.setCurrentText("face 6.4 plain one screw")
    bench.window.tools.option_changed.emit()
    count = len(bench.layout.tuners)
    bench.move((0.0, 100.0))
    assert len(bench.window.document.shown.tuners) == count + 1
    assert len(bench.layout.tuners) == count
    bench.press((0.0, 100.0))
    bench.release((0.0, 100.0))
    assert len(bench.layout.tuners) == count + 1
    new = bench.layout.tuners[-1]
    assert isinstance(new.place, FreePlace)
    assert math.dist(new.place.at, (0.0, 100.0)) < 1.5
    bench.window.keyboard.escape()


def test_a_new_slot_takes_two_presses(bench):
    bench.window.set_stage("slots")
    bench.window.set_tool("slot")
    bench.click((0.0, 60.0))
    bench.click((0.0, 120.0))
    assert len(bench.layout.slots) == 3
    shape = bench.layout.slots[-1].shape
    assert shape.width == 13.0
    assert math.isclose(math.dist(shape.nut_end, shape.tip_end), 60.0, abs_tol=1.5)
    assert "web" in bench.kinds(), "the webs to both slots beside it"


def test_drawing_an_outline_from_nothing(bench):
    bench.window.set_stage("outline")
    bench.window.set_tool("draw outline")
    corners = [(24.0, 0.0), (44.0, 40.0), (44.0, 170.0), (-44.0, 170.0), (-44.0, 40.0), (-24.0, 0.0)]
    for corner in [*corners, corners[0]]:
        bench.click(corner)
    nodes = bench.layout.outline.nodes
    assert len(nodes) == 6
    for node, corner in zip(sorted(n.at for n in nodes), sorted(corners), strict=True):
        assert math.dist(node, corner) < 1.0
    assert bench.window.tools.tool == "hold"
    bench.window.commands.run("undo")
    assert len(bench.layout.outline.nodes) == 9


def test_a_node_is_dragged_and_double_click_adds_one(bench):
    bench.window.set_stage("outline")
    before = bench.layout.outline.nodes[1].at
    bench.drag(before, (before[0] + 8, before[1]))
    assert math.isclose(bench.layout.outline.nodes[1].at[0], before[0] + 8, abs_tol=2.5)
    from geometry.layout.edges import edge
    seat = edge(bench.layout.outline, "treble").seat(100.0)
    from PySide6.QtTest import QTest
    count = len(bench.layout.outline.nodes)
    bench.click(seat.point)
    QTest.mouseDClick(bench.view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier,
                      bench.pixel(seat.point))
    bench.pump()
    assert len(bench.layout.outline.nodes) == count + 1


def test_writing_the_sheets(bench, tmp_path, monkeypatch, qtbot):
    out = tmp_path / "sheets"
    out.mkdir()
    monkeypatch.setattr(ask, "folder", lambda *_: out)
    monkeypatch.setattr("app.window.rooms.sheets.QDesktopServices.openUrl", lambda url: True)
    bench.window.set_stage("sheets")
    bench.window.commands.run("write sheets")
    qtbot.waitUntil(lambda: "files written" in bench.window.foot.said)
    bench.window.sheet_writer.wait()
    endings = {path.suffix for path in out.iterdir()}
    assert {".dxf", ".svg", ".pdf", ".csv"} <= endings


def test_the_sheets_are_written_once_at_a_time(bench, tmp_path, monkeypatch, qtbot):
    """By its key the action can be asked for while it runs: a second writing would meet the first in the same files."""
    asked: list[object] = []
    monkeypatch.setattr(ask, "folder", lambda *_: asked.append(1) or tmp_path)
    monkeypatch.setattr("app.window.rooms.sheets.QDesktopServices.openUrl", lambda url: True)
    bench.window.commands.run("write sheets")
    bench.window.commands.run("write sheets")
    assert len(asked) == 1 and bench.window.foot.said == "The sheets are being written already."
    qtbot.waitUntil(lambda: "files written" in bench.window.foot.said)
    bench.window.commands.run("write sheets")
    assert len(asked) == 2, "the moment it is told they are written the next writing may begin"
    qtbot.waitUntil(lambda: not bench.window.sheet_writer.busy)


def test_saving_and_opening_again(bench, tmp_path, monkeypatch):
    path = tmp_path / "my head.headstock.json"
    monkeypatch.setattr(ask, "save_file", lambda *_: path)
    bench.window.document.hold(("bass face 1",))
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] + 4))
    saved = bench.layout
    assert bench.window.document.unsaved
    assert bench.window.files.save()
    assert not bench.window.document.unsaved
    bench.window.commands.run("symmetric")
    answers = []
    monkeypatch.setattr(ask, "save_first", lambda *_: answers.append("asked") or "discard")
    assert bench.window.files.open(path)
    assert bench.layout == saved
    assert path in bench.window.files.recent()


def test_a_broken_file_is_said_and_the_layout_stays(bench, tmp_path, monkeypatch):
    path = tmp_path / "broken.headstock.json"
    path.write_text('{"pegwright": 1, "name": "x", "colour": 3}')
    said = []
    monkeypatch.setattr(ask, "warn", lambda _, title, text: said.append(text))
    before = bench.layout
    assert not bench.window.files.open(path)
    assert bench.layout is before
    assert len(said) == 1 and "broken.headstock.json" in said[0]


def test_leaving_with_unsaved_work_asks(bench, monkeypatch):
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] + 4))
    monkeypatch.setattr(ask, "save_first", lambda *_: "cancel")
    assert not bench.window.close()
    monkeypatch.setattr(ask, "save_first", lambda *_: "discard")
    assert bench.window.close()


def test_units_and_lamplight(bench):
    bench.click(bench.inside("treble side 2"))
    bench.window.actions_["in64"].trigger()
    assert '"' in bench.window.side.inside._facts.widgets[0].text()
    assert bench.layout.blank.treble == 50.0
    bench.window.actions_["mm"].trigger()
    bench.window.actions_["lamp"].trigger()
    assert theme().name == "lamp"


def test_every_stage_shows_a_page(bench):
    for stage in ("blank", "outline", "slots", "tuners", "strings", "router", "sheets"):
        bench.window.set_stage(stage)
        bench.pump()
        form = bench.window.side.inside
        assert form._title.text()
        assert form._facts.rows or form._fields.rows


def test_arrow_keys_nudge_the_node_that_is_held(bench):
    bench.window.set_stage("outline")
    before = bench.layout.outline.nodes[1].at
    bench.click(before)
    assert bench.window.node == 1
    bench.key(Qt.Key.Key_Right)
    after = bench.layout.outline.nodes[1].at
    assert math.isclose(after[0] - before[0], 1.0, abs_tol=1e-9) and after[1] == before[1]
    assert bench.window.node == 1


def test_a_typed_length_finishes_a_slot(bench):
    bench.window.set_stage("slots")
    bench.window.set_tool("slot")
    bench.click((0.0, 60.0))
    bench.move((0.0, 100.0))
    bench.text("70")
    bench.key(Qt.Key.Key_Return)
    shape = bench.layout.slots[-1].shape
    assert len(bench.layout.slots) == 3
    assert math.isclose(math.dist(shape.nut_end, shape.tip_end) + shape.width, 70.0, abs_tol=1e-6), "over all"


def test_going_through_the_stages_does_not_make_the_window_grow(bench):
    size = bench.window.size()
    for stage in ("blank", "outline", "slots", "tuners", "strings", "router", "outline", "tuners"):
        bench.window.set_stage(stage)
        bench.pump()
        assert bench.window.size() == size, stage


def test_a_long_sentence_does_not_make_the_window_grow(bench):
    size = bench.window.size()
    bench.window.say("a sentence that goes on and on " * 20)
    bench.pump()
    assert bench.window.size() == size
    assert bench.window.foot._says.toolTip().startswith("a sentence")


def test_every_snag_card_is_as_high_as_its_words(bench):
    from msgspec.structs import replace
    from PySide6.QtWidgets import QStyleOptionViewItem

    from app.panels.forms.card_list import FRAME, GAP, PAD
    snag = bench.window.document.result.snags[0]
    words = "abc de fghij klm " * 12
    snags = bench.window.side.inside.snags
    snags.show_snags(tuple(replace(snag, advice=words[:n].strip()) for n in range(20, 180)))
    bench.pump()
    for row in range(snags.model().rowCount()):
        index = snags.model().index(row)
        option = QStyleOptionViewItem()
        option.font = snags.font()
        card = snags.visualRect(index)
        painted = snags.itemDelegate()._lines(option, index, card.width() - FRAME)
        assert painted[-1][0].bottom() + PAD + GAP <= card.height() + 1, index.data(Qt.ItemDataRole.UserRole).cure


def test_a_card_whose_words_grow_grows_with_them(bench):
    from msgspec.structs import replace
    snag = bench.window.document.result.snags[0]
    snags = bench.window.side.inside.snags
    snags.show_snags((replace(snag, advice="Short."),))
    bench.pump()
    before = snags.visualRect(snags.model().index(0)).height()
    snags.show_snags((replace(snag, advice="A cure in many words. " * 8),))
    bench.pump()
    assert snags.visualRect(snags.model().index(0)).height() > before + 30
