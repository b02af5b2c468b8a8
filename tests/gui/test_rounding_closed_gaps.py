"""Rounding a corner beside a gap that was closed as a drawing was read: why hardly any radius fits, and what helps."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.window.dialogs.round_dialog import RoundDialog
from geometry.drawing.shapes import chain
from geometry.edits import replace_outline
from tests.waiting import until


def test_a_hair_of_an_edge_beside_the_corner_is_named_and_its_node_removed(bench, qtbot):
    """A head of straight lines, one of which begins 0.02 mm beside the end of the line before: about 0.1 mm fits there."""
    corners = ((-22.0, 0.0), (22.0, 0.0), (35.0, 30.0), (35.0, 30.02), (35.0, 160.0), (-35.0, 160.0), (-35.0, 30.0))
    bench.window.document.apply("Outline", replace_outline(bench.layout, chain(corners, closed=True)))
    bench.window.set_stage("outline")

    def told(node: int) -> str:
        dialog = RoundDialog(bench.window, "outline", node)
        qtbot.addWidget(dialog)
        until(lambda: dialog.settled)
        said = dialog.says.text()
        dialog.reject()
        return said

    nodes = [node.at for node in bench.layout.outline.nodes]
    at = nodes.index((35.0, 30.0))
    assert "no more than 0.02 mm long" in told(at) and "remove the node" in told(at)
    bench.click((35.0, 160.0))
    bench.window.hold_nodes(at + 1, (at + 1,))
    QTest.keyClick(bench.view, Qt.Key.Key_Delete)
    assert (35.0, 30.02) not in [node.at for node in bench.layout.outline.nodes]
    assert told(at).startswith("The largest radius that fits here is")
