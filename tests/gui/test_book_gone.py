"""What the job book tells of steps that have left the running order."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from geometry.book import put_reading, tick_off
from geometry.layout import Reading, Task
from geometry.layout.names import feature_names
from tests.gui.hands import type_on
from tests.waiting import press


def test_a_step_that_is_gone_is_struck_out_and_its_name_is_free_again(bench):
    """Only ticked off and never timed; while it is told of, no other feature is called so."""
    bench.window.set_stage("book")
    bench.planned("book")
    room = bench.window.rooms["book"]
    gone = Task(operation="bore post 9.1.1", title="Bore post 9", features=("post 9",))
    bench.window.document.record("done", lambda book: tick_off(book, gone, 3))
    table, row = room.view.hours, len(room.rows) - 1
    assert table.words.rows[row][:2] == ("✓ " + table.words.rows[row][0][2:], "Bore post 9") and "old" in table.words.rows[row][0]
    assert "post 9" in feature_names(bench.layout).taken
    table.setFocus()
    table.stand_at(row, 0)
    QTest.keyClick(table, Qt.Key.Key_Delete)
    assert not bench.layout.book.done and "Bore post 9" not in {words[1] for words in table.words.rows}
    assert "post 9" not in feature_names(bench.layout).taken


def test_a_reading_of_a_hole_that_is_gone_is_shown_and_struck_out(bench):
    room = bench.enter("book")
    press(room.view.tabs.button(3))
    page = room.readings.page
    for planned in (60.0, None):
        one = Reading(piece="practice", drilling="post 9.1", what=page.way.what, how=page.way.how, value=60.3, planned=planned)
        bench.window.document.record("read", lambda book, one=one: put_reading(book, one))
        bench.pump()
        row = len(page.table.words.rows) - 1
        assert page.table.words.rows[row] == ("post 9.1  old", "60 mm" if planned else "", "60.3", "+0.3" if planned else "")
        assert "post 9" in feature_names(bench.layout).taken
        page.table.setFocus()
        page.table.stand_at(row, 2)
        type_on(page.table, "61")
        assert bench.layout.book.readings == (one,) and "no longer in the layout" in bench.window.foot.said
        page.table.stand_at(row, 2)
        QTest.keyClick(page.table, Qt.Key.Key_Delete)
        bench.pump()
        assert not bench.layout.book.readings and "post 9.1  old" not in {words[0] for words in page.table.words.rows}
        assert "post 9" not in feature_names(bench.layout).taken
