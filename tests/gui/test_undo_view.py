"""Undo and redo change the layout and what shows it, and nothing else: the view, the stage, the book; held is what is there.

What a window shows after any steps there and back is what another window shows that never saw anything else.
"""

import random

import numpy as np
import pytest
from PySide6.QtGui import QImage

from geometry.book import add_remark
from geometry.edits import add_hole, move_features, remove_features
from geometry.errors import GeometryError
from geometry.layout import Remark
from tests.endurance.edits import EDITS
from tests.gui.bench import Bench
from tests.waiting import until

NAMES = ("move_features", "remove_features", "lay_picture", "add_hole", "move_node", "set_slot_width", "mirror_layout", "remove_string",
         "add_tuner", "duplicate", "hand cuts", "bend_edge", "set_pattern", "add_ear", "offset_copy", "to_drawn", "picture", "rename")


def view(bench: Bench):
    """Where the paper lies and what is held beside the layout."""
    port = bench.view
    return (bench.window.stage, port.transform(), port.horizontalScrollBar().value(), port.verticalScrollBar().value(), bench.window.tools.tool)


def seen(bench: Bench) -> np.ndarray:
    """The drawing as it is painted."""
    picture = bench.view.viewport().grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    return np.frombuffer(picture.constBits(), np.uint8).astype(int)


def told(bench: Bench) -> list:
    """What else tells of the layout."""
    return [snag.text for snag in bench.window.document.result.snags]


def test_a_step_there_and_back_leaves_the_view_and_the_stage_and_the_book(bench):
    document, window = bench.window.document, bench.window
    window.set_stage("slots")
    window.commands.run("zoom in")
    bench.view.horizontalScrollBar().setValue(bench.view.horizontalScrollBar().value() + 7)
    document.hold(("bass slot",))
    was, start = view(bench), document.layout
    document.apply("Move", move_features(start, ["bass slot"], (1.0, 0.0)))
    document.record("A note", lambda book: add_remark(book, Remark(piece="real", text="meanwhile")))
    for command, x in (("undo", 0.0), ("redo", 1.0), ("undo", 0.0)):
        window.commands.run(command)
        bench.pump()
        assert view(bench) == was and document.held == ("bass slot",)
        assert document.layout.slots[0].shape.nut_end[0] == start.slots[0].shape.nut_end[0] + x
        assert [one.text for one in document.book.remarks] == ["meanwhile"]


def test_what_is_held_is_there_whatever_is_undone(bench):
    document, window = bench.window.document, bench.window
    document.apply("Add", add_hole(document.layout, (0.0, 100.0), 5.0))
    made = document.layout.holes[0].id
    document.hold((made, "bass slot"))
    window.commands.run("undo")
    assert document.held == ("bass slot",)
    document.apply("Remove", remove_features(document.layout, ["bass slot"]))
    assert document.held == ()
    window.commands.run("undo")
    assert document.held == () and "bass slot" in [one.id for one in document.layout.slots]


@pytest.mark.parametrize("seed", range(3))
def test_any_steps_there_and_back_show_what_a_window_shows_that_saw_no_others(qtbot, tmp_path, seed):
    chance, bench = random.Random(seed), Bench(qtbot, tmp_path)
    document = bench.window.document
    for _ in range(24):
        what = chance.random()
        if what < 0.6:
            try:
                document.apply("Step", EDITS[chance.choice(NAMES)](document.layout, chance))
            except GeometryError:
                continue
        else:
            document.go(chance.randrange(len(document.history.names) + 1))
        bench.pump()
    document.hold(())
    (tmp_path / "other").mkdir()
    other = Bench(qtbot, tmp_path / "other", document.layout)
    for one in (bench, other):
        one.window.set_stage("tuners")
        one.window.canvas.fit(document.layout)
    assert told(bench) == told(other)
    until(lambda: seen(bench).shape == seen(other).shape and abs(seen(bench) - seen(other)).max() <= 3, "it is painted otherwise")
