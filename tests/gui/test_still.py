"""What stays still in a drag is painted from pictures, and looks as it does when everything is painted anew."""

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QImage, QPixmapCache
from PySide6.QtWidgets import QApplication

from app.window.demo import demo
from geometry.edits import free_from_row
from geometry.edits.pockets import add_truss_rod_pocket
from tests.gui.bench import Bench

TUNER, SLOT = "treble face 2", "treble slot"
ROUNDING = 3
"""Of 255: what laying a picture with its own transparency over another may differ by from painting the shape there."""


@pytest.fixture
def bench(qtbot, tmp_path):
    return Bench(qtbot, tmp_path, free_from_row(demo(), TUNER))


def styles(bench: Bench, items) -> set[str]:
    """`owner/style` of items of the drawing."""
    names = {item: f"{owner}/{style}" for (owner, style), item in bench.window.canvas._marks._lines.items()}
    return {names[item] for item in items}


def under(bench: Bench) -> set[str]:
    return styles(bench, bench.window.canvas._scene.under.items)


def pictured(bench: Bench) -> set[str]:
    return styles(bench, bench.window.canvas._kept.items)


def seen(bench: Bench) -> QImage:
    """The drawing as it stands in the window, painted in whatever parts."""
    bench.pump()
    port, window = bench.view.viewport(), bench.window
    at = port.mapTo(window, QPoint(0, 0))
    return window.screen().grabWindow(window.winId(), at.x(), at.y(), port.width(), port.height()).toImage().convertToFormat(
        QImage.Format.Format_RGB32)


def anew(bench: Bench) -> QImage:
    """The same with every item painted by itself, no picture of anything."""
    canvas = bench.window.canvas
    canvas._kept.end()
    canvas._scene.under.lay((), set(), False)
    canvas._repaper()
    return seen(bench)


def apart(one: QImage, two: QImage) -> int:
    """The largest difference of any colour of any pixel, of 255."""
    assert one.size() == two.size()
    one, two = (np.frombuffer(picture.constBits(), np.uint8).astype(int) for picture in (one, two))
    return int(abs(one - two).max())


def test_wood_and_slots_are_painted_with_the_paper(bench):
    assert under(bench) == {"blank/blank", "blank/waste", "outline/wood", "bass slot/slot", "treble slot/slot"}
    assert not pictured(bench)


def test_a_tuner_is_dragged_over_pictures_of_all_that_stays(bench):
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move((x + 2, y + 7))
    assert {"blank/blank", "outline/wood"} <= under(bench)
    kept = pictured(bench)
    assert {"treble side 1/side bore", "bass face 1/counterbore", "treble face 1/post bore"} <= kept
    assert not [name for name in kept if name.startswith(TUNER)]
    bench.window.hand.cancel()
    bench.pump()
    assert not pictured(bench)
    assert "treble slot/slot" in under(bench)


def test_what_only_takes_another_colour_keeps_its_picture(bench):
    other = "treble side 2"
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    seen_as = set()
    for k in range(1, 13):
        bench.move((x - 0.8 * k, y + k))
        seen_as.add(bench.window.canvas._marks._states.get(other, ""))
        assert {f"{other}/side bore", f"{other}/screw pilot"} <= pictured(bench)
        assert not [name for name in pictured(bench) if name.startswith(TUNER)]
    assert len(seen_as) > 1, "it came into the way"
    assert apart(seen(bench), anew(bench)) <= ROUNDING
    bench.window.hand.cancel()
    bench.pump()


def test_a_slot_that_is_dragged_comes_out_of_the_paper_and_goes_back(bench):
    at = next(slot for slot in bench.layout.slots if slot.id == SLOT).shape
    middle = ((at.nut_end[0] + at.tip_end[0]) / 2, (at.nut_end[1] + at.tip_end[1]) / 2)
    bench.press(middle)
    bench.move_along(middle, (middle[0] + 1, middle[1] + 3), 3)
    assert bench.window.hand.busy and bench.window.document.shown is not bench.layout
    assert {"blank/blank", "blank/waste"} <= under(bench)
    assert not {"treble slot/slot", "outline/wood"} & under(bench), "the wood has the opening of the slot"
    bench.release((middle[0] + 1, middle[1] + 3))
    assert {"treble slot/slot", "outline/wood"} <= under(bench)


@pytest.mark.parametrize("by", [(0.0, 4.8), (-4.0, 6.0)], ids=["clear of others", "into others"])
def test_painted_in_parts_it_looks_as_painted_whole(bench, by):
    before = seen(bench)
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x + 2 * by[0], y + 2 * by[1]), 9)
    bench.move_along((x + 2 * by[0], y + 2 * by[1]), (x + by[0], y + by[1]), 4)
    parts = seen(bench)
    assert apart(parts, anew(bench)) <= ROUNDING
    bench.window.hand.cancel()
    bench.window.document.hold(())
    assert apart(seen(bench), before) == 0


def test_a_slot_that_is_held_and_zoomed_in_the_midst_of_a_drag(bench):
    bench.window.document.hold((SLOT,))
    assert apart(seen(bench), anew(bench)) <= ROUNDING
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x - 6, y + 3), 4)
    bench.view.zoom(1.7)
    bench.view.pan(QPoint(40, -30))
    bench.move((x - 4, y + 2))
    assert apart(seen(bench), anew(bench)) <= ROUNDING
    bench.window.hand.cancel()
    bench.pump()


def test_pictures_have_room(bench):
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move((x + 2, y + 7))
    QApplication.processEvents()
    assert QPixmapCache.cacheLimit() >= 32768
    bench.window.hand.cancel()
    bench.pump()


def test_wood_is_as_smooth_on_plain_paper_as_on_ruled(bench):
    bench.window.canvas.set_grid_visible(False)
    assert apart(seen(bench), anew(bench)) <= ROUNDING


def shown(bench: Bench) -> list[tuple[str, QRectF]]:
    """Words and boxes of the labels of the drawing that are seen, in pixels."""
    found = [item for items in bench.window.canvas._marks._labels.values() for item in items if item.isVisible()]
    return [(item.text(), item.deviceTransform(bench.view.viewportTransform()).mapRect(item.boundingRect())) for item in found]


def test_labels_that_come_to_lie_over_each_other_in_a_drag_are_put_away_and_come_back(bench):
    bench.view.zoom(0.5)
    before = sorted(words for words, _ in shown(bench))
    start, end = bench.inside("treble side 1"), bench.inside("treble side 2")
    bench.press(start)
    for k in range(1, 11):
        bench.move(((start[0] * (10 - k) + end[0] * k) / 10, (start[1] * (10 - k) + end[1] * k) / 10))
        boxes = [box for _, box in shown(bench)]
        assert not any(one.intersects(two) for i, one in enumerate(boxes) for two in boxes[i + 1:])
    assert len(boxes) < len(before), "two bores side by side"
    bench.key(Qt.Key.Key_Escape)
    bench.release(end)
    assert sorted(words for words, _ in shown(bench)) == before


def test_the_old_place_of_a_snag_is_cleared_though_the_paper_changes_in_the_same_step(qtbot, tmp_path):
    """The cards of the thin webs move with the end of the pocket, which is painted with the paper."""
    pocket = add_truss_rod_pocket(demo())
    bench = Bench(qtbot, tmp_path, pocket)
    seen(bench)
    slot = pocket.slots[-1]
    shorter = replace(slot, shape=replace(slot.shape, tip_end=(0.0, 17.0)))
    bench.window.document.apply("Shorten it", replace(pocket, slots=(*pocket.slots[:-1], shorter)))
    assert apart(seen(bench), anew(bench)) <= ROUNDING
    for step in ("undo", "redo"):
        bench.window.commands.run(step)
        assert apart(seen(bench), anew(bench)) <= ROUNDING
