"""What the job book tells of steps that have left the running order."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from geometry.book import tick_off
from geometry.layout import Task
from geometry.layout.names import feature_names


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
