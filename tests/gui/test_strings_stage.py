"""The Strings stage: the table, a proposal taken as one step, posts changed over, a set by gauge."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QPushButton

from app.look.choice import Choice
from app.look.descendants import below
from app.tools.pointer import Pointer, Running
from app.tools.wind import NOT_A_POST, wind
from app.window.stages import STAGES
from geometry.drawing import Label
from geometry.edits import move_features
from geometry.edits.strings import set_post
from geometry.routing.nut_end import nut_end
from geometry.solids.frames import frames
from geometry.strings import runs
from geometry.strings.sets import SETS
from tests.gui.hands import button, choose, field, fill, space
from tests.waiting import press, until


@pytest.fixture
def room(bench):
    key = Qt.Key(Qt.Key.Key_1 + [stage.key for stage in STAGES].index("strings"))
    QTest.keyClick(bench.window, key, Qt.KeyboardModifier.AltModifier)
    made = bench.window.rooms["strings"]
    assert bench.window.stage == "strings"
    until(lambda: made.panel.table.complete and made.panel.strings.complete, "rows come in some turns of the event loop")
    return made


def post_of(bench, string):
    return next(tuner.id for tuner in bench.layout.tuners if tuner.string == string)


def test_every_string_stands_in_the_table(bench, room):
    rows = room.panel.table._made
    assert len(rows) == len(bench.layout.strings)
    post, winds, labels = rows[0]
    assert post.currentText() == post_of(bench, bench.layout.strings[0].id)
    assert post.accessibleName() == "Post of string 12"
    assert labels[0].text().endswith("°") and float(labels[2].text()) > 1
    assert sum(isinstance(m, Label) for m in room.marks()["string angles"]) == len(bench.layout.strings)


def test_a_string_is_added_and_removed_as_steps_of_their_own(bench, room):
    before = bench.layout
    press(button(room.panel, "Add a string on the treble side"))
    assert [string.id for string in bench.layout.strings] == [str(n) for n in range(13, 0, -1)]
    assert len(room.panel.table._made) == 13 and room.panel.table._made[-1][0].currentText() == "none"
    press(button(room.panel, "Remove string 1"))
    assert bench.layout == before
    assert bench.window.document.history.undo_name == "Remove string 1"


def test_a_button_whose_work_is_done_leaves_the_keyboard_to_a_value_beside_it(bench, room):
    """Its row goes; a button in its place might be pressed by who presses twice."""
    bench.window.document.apply("no strings", replace(bench.layout, strings=(), tuners=tuple(
        replace(tuner, string=None) for tuner in bench.layout.tuners)))
    space(button(room.panel, f"Add a string for each of the {len(bench.layout.tuners)} posts"))
    assert len(bench.layout.strings) == len(bench.layout.tuners)
    until(lambda: room.panel.nut.complete, "rows come in some turns of the event loop")
    now = QApplication.focusWidget()
    assert now in room.panel.nut.widgets and not isinstance(now, QPushButton)
    assert room.panel.nut.rows[room.panel.nut.widgets.index(now)].change is not None


def test_a_post_chosen_with_the_keyboard_changes_two_strings_over(bench, room):
    before = bench.layout
    here, there = post_of(bench, "12"), post_of(bench, "11")
    box = room.panel.table._made[0][0]
    choose(box, there)
    bench.pump()
    assert bench.layout.tuner(there).string == "12"
    assert sorted(t.string for t in bench.layout.tuners) == sorted(t.string for t in before.tuners)
    assert here != there


def test_a_proposal_shows_ghosts_and_is_taken_as_one_step(bench, room, qtbot):
    sound = bench.layout
    bench.window.document.apply("cross two", set_post(sound, "1", post_of(bench, "12")))
    crossed = bench.layout
    press(room.panel.propose)
    qtbot.waitUntil(lambda: room.proposal is not None)
    assert "crossings" in room.panel.gain.text() and "to 0." in room.panel.gain.text()
    assert bench.layout is crossed and room.marks()["string proposal"]
    press(room.panel.leave)
    assert room.proposal is None and "string proposal" not in room.marks() and bench.layout is crossed
    press(room.panel.propose)
    qtbot.waitUntil(lambda: room.proposal is not None)
    room.panel.take.setFocus()
    QTest.keyClick(room.panel.take, Qt.Key.Key_Space)
    assert QApplication.focusWidget() is room.panel.propose, "not Undo, which Space would press next"
    assert [t.string for t in bench.layout.tuners] == [t.string for t in sound.tuners]
    assert not room.panel.take.isVisible()
    bench.window.document.undo()
    assert bench.layout == crossed


def test_a_proposal_that_comes_of_its_own_accord_is_seen_where_the_panel_was_scrolled_down(bench, room, qtbot):
    panel, bar = room.panel, room.panel._scroll.verticalScrollBar()
    bench.window.canvas.setFocus()
    bar.setValue(bar.maximum())
    bench.window.document.apply("No posts", replace(bench.layout, tuners=tuple(replace(one, string=None) for one in bench.layout.tuners)))
    qtbot.waitUntil(lambda: room.proposal is not None)
    for part in (panel.gain, panel.take):
        assert panel._scroll.viewport().rect().contains(part.mapTo(panel._scroll.viewport(), part.rect().center()))


def test_a_proposal_is_there_again_after_another_stage_while_the_layout_stays(bench, room, qtbot):
    bench.window.document.apply("cross two", set_post(bench.layout, "1", post_of(bench, "12")))
    press(room.panel.propose)
    qtbot.waitUntil(lambda: room.proposal is not None)
    found, gain = room.proposal, room.panel.gain.text()
    bench.window.set_stage("slots")
    assert "string proposal" not in bench.window.canvas._more._marks
    bench.window.set_stage("strings")
    assert room.proposal is found and room.panel.gain.text() == gain and room.panel.take.isVisible()
    assert bench.window.canvas._more._marks["string proposal"]
    bench.window.set_stage("slots")
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    bench.window.set_stage("strings")
    assert room.proposal is None and not room.panel.take.isVisible(), "it was of another layout"


def test_strings_made_for_bare_posts_are_offered_a_post_each(bench, room, qtbot):
    bare = replace(bench.layout, strings=(), tuners=tuple(replace(tuner, string=None) for tuner in bench.layout.tuners))
    bench.window.document.apply("No strings", bare)
    bench.pump()
    told = [label.text() for label in below(room.panel.table, QLabel) if label.isVisible()]
    assert told == [] and not room.panel.note.isVisible(), "no heads over nothing"
    press(button(room.panel, "Add a string for each of the 12 posts"))
    qtbot.waitUntil(lambda: room.proposal is not None)
    assert len(room.proposal.runs) == 12 and room.proposal.rubbing == 0 and not any(t.string for t in bench.layout.tuners)
    room._leave()
    room.refresh()
    assert room.errand.free and room.proposal is None, "left once, it is not offered again"


def test_that_no_string_needs_a_retainer_is_not_said_of_another_layout(bench, room):
    press(button(room.panel, "Add a string retainer"))
    assert "wants a retainer" in bench.window.foot.said
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    assert bench.window.foot.said == ""


@pytest.mark.qt_log_ignore("This plugin does not support grabbing the keyboard", extend=True)
def test_a_set_by_gauge_takes_every_string(bench, room):
    box = room.panel.sets
    twelve = next(one for one in SETS if len(one) == 12)
    assert box.itemData(1) is twelve and box.currentIndex() == 0
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Down)
    QTest.keyClick(box.view(), Qt.Key.Key_Down)
    QTest.keyClick(box.view(), Qt.Key.Key_Return)
    assert tuple(s.diameter for s in bench.layout.strings) == twelve.diameters


@pytest.mark.qt_log_ignore("This plugin does not support grabbing the keyboard", extend=True)
def test_instruments_that_are_walked_past_are_not_taken(bench, room):
    before = bench.layout
    row = next(one for one in below(room.panel.nut, Choice) if one.findData("mandolin") >= 0)
    row.setFocus()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_End, Qt.Key.Key_M):
        QTest.keyClick(row, key)
        assert row.view().isVisible() and bench.layout is before
        for _ in range(3):
            QTest.keyClick(row.view(), Qt.Key.Key_Down)
        QTest.keyClick(row.view(), Qt.Key.Key_Escape)
        assert bench.layout is before and row.currentIndex() == 0
    QTest.keyClick(row, Qt.Key.Key_Down)
    QTest.keyClick(row.view(), Qt.Key.Key_Return)
    bench.pump()
    assert bench.layout is before and not row.view().isVisible(), "the question is no answer"
    QTest.keyClick(row, Qt.Key.Key_Down)
    for _ in range(row.findData("mandolin")):
        QTest.keyClick(row.view(), Qt.Key.Key_Down)
    QTest.keyClick(row.view(), Qt.Key.Key_Return)
    bench.pump()
    assert bench.layout.nut.scale_length == 352.0 and len(bench.window.document.history.names) == 1


def test_nut_and_strings_are_set_as_usual_for_an_instrument_in_one_step(bench, room):
    before = bench.layout
    row = next(one for one in below(room.panel.nut, Choice) if one.findData("mandolin") >= 0)
    at = row.findData("mandolin")
    row.setCurrentIndex(at)
    row.activated.emit(at)
    bench.pump()
    assert (bench.layout.nut.scale_length, bench.layout.nut.width) == (352.0, before.nut.width)
    assert bench.window.foot.said == f"As usual now: Mandolin. The nut stays {before.nut.width:g} mm wide, where 41 mm is usual."
    row = next(one for one in below(room.panel.nut, Choice) if one.findData("mandolin") >= 0)
    row.setCurrentIndex(at)
    row.activated.emit(at)
    assert len(bench.window.document.history.names) == 1 and row.currentIndex() == 0, "nothing comes of it, and nothing is chosen"
    assert bench.window.foot.said.startswith("As usual already: Mandolin. The nut stays")
    bench.window.commands.run("undo")
    assert bench.layout == before and "usual for an instrument" in bench.window.foot.said


def test_where_a_string_runs_is_chosen_in_its_row(bench, room):
    tuner = bench.layout.tuner(post_of(bench, "12"))
    box = room.panel.table._made[0][1]
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Up if tuner.winds == "treble" else Qt.Key.Key_Down)
    assert bench.layout.tuner(tuner.id).winds != tuner.winds


def test_a_click_on_a_post_leads_its_string_past_the_other_side(bench, room):
    """The new run by hand: it touches the post on the other side of the line from the nut to the post."""
    press(next(b for b in bench.window.tools._tools.values() if b.text() == "Other side"))
    tuner = next(t for t in bench.layout.tuners if bench.layout.pattern(t.pattern).mount == "face" and t.string)
    before, at = bench.layout, bench.origin(tuner.id)

    def side():
        run = next(run for run in runs(bench.layout) if run.tuner == tuner.id)
        return (at[0] - run.nut[0]) * (run.post[1] - run.nut[1]) - (at[1] - run.nut[1]) * (run.post[0] - run.nut[0])
    first = side()
    shown = Running(wind(before), before).send(Pointer(at, "move"))
    assert shown.layout is before and len(shown.marks) == 2
    other = "bass" if tuner.winds == "treble" else "treble"
    assert shown.readout == f"String {tuner.string}: {other} side"
    bench.click(at)
    assert bench.layout.tuner(tuner.id).winds != tuner.winds and side() * first < 0
    assert side() == pytest.approx(-first, rel=1e-6)
    bench.click(at)
    assert bench.layout.tuner(tuner.id).winds == tuner.winds
    bench.window.document.undo()
    bench.window.document.undo()
    assert bench.layout == before


def test_over_a_side_post_it_says_over_or_under(bench, room):
    layout = bench.layout
    tuner = next(t for t in layout.tuners if layout.pattern(t.pattern).mount == "side" and t.string)
    shown = Running(wind(layout), layout).send(Pointer(bench.inside(tuner.id), "move"))
    assert tuner.winds == "bass" and shown.readout == f"String {tuner.string}: under the post"
    assert room.panel.table._made[[s.id for s in layout.strings].index(tuner.string)][1].currentText() == "over"


def test_a_click_beside_the_posts_says_so(bench, room):
    bench.window.set_tool("wind")
    before = bench.layout
    bench.click((0.0, bench.layout.blank.tip - 4.0))
    assert bench.layout is before
    assert any(NOT_A_POST == label.text() for label in below(bench.window.foot, type(room.panel.gain)))


def test_angles_behind_the_nut_are_shown_where_none_lies_over_another(bench, room):
    """Twelve strings: close by each has its line; from afar they would be one blot, and the table has them all."""
    def shown():
        return {item.isVisible() for item in bench.window.canvas._more._labels["string angles"]}

    far = bench.view.pixels_per_mm
    for _ in range(8):
        bench.window.actions_["zoom in"].trigger()
    assert bench.view.pixels_per_mm > far and shown() == {True}
    for _ in range(20):
        bench.window.actions_["zoom out"].trigger()
    assert bench.view.pixels_per_mm < far / 4 and shown() == {False}


def test_a_left_handed_mirror_says_which_edge_is_still_called_bass(bench, room):
    assert not room.panel.hands.isVisible()
    bench.window.commands.run("turn over")
    bench.pump()
    assert "The left edge is still called bass" in bench.window.foot.said and room.panel.hands.isVisible()
    bench.window.commands.run("turn over")
    bench.pump()
    assert not room.panel.hands.isVisible()


def test_the_button_for_one_more_string_stays_under_the_pointer(bench, room):
    def more() -> QAbstractButton:
        return button(room.panel, "Add a string on the treble side")
    at = more().mapToGlobal(QPoint(5, 5))
    for n in range(13, 17):
        press(more())
        assert len(bench.layout.strings) == n
        until(lambda: room.panel.strings.complete, "rows come in some turns of the event loop")
        assert more().mapToGlobal(QPoint(5, 5)) == at


def test_a_refusal_goes_from_the_foot_with_what_was_refused(bench, room):
    foot = bench.window.foot
    until(lambda: room.panel.nut.complete, "rows come in some turns of the event loop")
    pitch = next(w for row, w in zip(room.panel.nut.rows, room.panel.nut.widgets, strict=True) if row.label == "Pitch of the head")

    def refused() -> None:
        fill(pitch, "48")
        assert foot.said == "Nut: pitch must be at most 40°."
    refused()
    QTest.keyClick(pitch, Qt.Key.Key_Escape)
    assert foot.said == "" and not pitch.bad
    refused()
    QTest.keyClick(pitch, Qt.Key.Key_Backspace)
    assert foot.said == "", "it is being mended"
    QTest.keyClick(pitch, Qt.Key.Key_Backspace)
    QTest.keyClicks(pitch, "14")
    QTest.keyClick(pitch, Qt.Key.Key_Return)
    assert bench.layout.nut.pitch == 14.0
    refused()
    bench.window.say("something newer")
    QTest.keyClick(pitch, Qt.Key.Key_Escape)
    assert foot.said == "something newer"


def test_lines_to_the_words_behind_the_nut_go_with_the_words(bench, room):
    more = bench.window.canvas._more
    lines = [line for (of, _), line in more._lines.items() if of == "string angles"]
    words = more._labels["string angles"]
    for factor in (0.1, 40.0):
        bench.view.zoom(factor)
        shown = {item.isVisible() for item in (*lines, *words)}
        assert shown == {factor > 1}, "a line that leads to nothing is a ray"


def test_a_slant_that_is_typed_is_followed_by_the_end_of_the_outline(bench, room):
    before, words = bench.layout, "End the outline along the nut line"
    assert not [one for one in below(room.panel, QAbstractButton) if one.text() == words]
    fill(field(room.panel, "Slant of the nut"), "8")
    places = {id: frame.origin for id, frame in frames(bench.layout).items()}
    press(button(room.panel, words))
    assert nut_end(bench.layout.outline, bench.layout.nut) is not None and bench.layout.nut.slant == 8.0
    assert {id: frame.origin for id, frame in frames(bench.layout).items()} == {id: pytest.approx(at) for id, at in places.items()}
    until(lambda: not [one for one in below(room.panel, QAbstractButton) if one.text() == words and one.isVisible()], "its work is done")
    bench.window.document.undo()
    bench.window.document.undo()
    assert bench.layout == before


def test_what_is_told_behind_the_nut_is_seen_in_a_low_window(bench, room):
    bench.window.resize(1350, 725)
    bench.pump()
    bench.window.commands.run("fit")
    bench.pump()
    view, marks = bench.view, bench.window.canvas._more
    turned = [item for owner, items in marks._labels.items() for item, label in zip(items, marks._said[owner], strict=True) if label.angle]
    assert len(turned) == 12
    for item in turned:
        seen = item.deviceTransform(view.viewportTransform()).mapRect(item.boundingRect())
        assert item.isVisible() and view.viewport().rect().contains(seen.toAlignedRect())
