"""From nothing to a written template by mouse and keyboard, and the paper measured with a reader of its own."""

import math

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton

from app.look.descendants import below
from app.window import ask
from geometry.layout import EdgePlace, slot_path
from geometry.layout.edges import edge
from tests.app.formats.out.pdf_reading import drawn, open_pdf
from tests.gui.hands import field, fill
from tests.waiting import press

SIDE = "side 6.4 post two screws"


def typed(bench, *values: str) -> None:
    """Values with Tab between them, Enter behind the last."""
    for i, value in enumerate(values):
        if i:
            bench.key(Qt.Key.Key_Tab)
        bench.text(value)
    bench.key(Qt.Key.Key_Return)


def tool(bench, key: str) -> None:
    press(bench.window.tools._tools[key])
    bench.pump()


def stage(bench, key: str) -> None:
    button = next(b for b in below(bench.window.stages, QAbstractButton) if b.property("stage") == key)
    press(button)
    bench.pump()
    assert bench.window.stage == key


@pytest.fixture
def head(bench):
    """A slotted head, drawn from a bare blank."""
    window = bench.window
    window.front.show()
    press(window.front.page.ways["draw"])
    bench.pump()
    assert window.stage == "outline" and window.tools.tool == "draw outline" and not bench.layout.tuners

    # Half an outline: typed nodes, then an arc by its end and a point on it; the bass side follows.
    bench.move((24.0, 4.0))
    typed(bench, "23", "0")
    bench.move((40.0, 30.0))
    typed(bench, "30", "62")
    bench.move((40.0, 120.0))
    typed(bench, '5"', "89")
    bench.text("a")
    bench.click((0.0, 172.0))
    bench.click((24.0, 167.0))
    outline = bench.layout.outline
    assert window.tools.tool == "hold" and len(outline.nodes) == 7
    bend = (23 + 30 * math.cos(math.radians(62)), 30 * math.sin(math.radians(62)))
    assert min(math.dist(node.at, bend) for node in outline.nodes) < 1e-9
    assert min(math.dist(node.at, (-bend[0], bend[1])) for node in outline.nodes) < 1e-9

    stage(bench, "strings")
    fill(field(bench.window.side, "Width"), "46")
    assert bench.layout.nut.width == 46.0

    # One slot by a press and a typed length; its twin comes too.
    stage(bench, "slots")
    tool(bench, "slot")
    fill(window.tools.slot_width_field, '9/16"')
    bench.click((15.0, 40.0))
    bench.move((15.0, 120.0))
    typed(bench, "112", "90")
    assert [slot.shape.width for slot in bench.layout.slots] == pytest.approx([14.2875] * 2)
    assert sum(x for slot in bench.layout.slots for x in (slot.shape.nut_end[0],)) == pytest.approx(0.0)

    # Three tuners through the side, each with its twin.
    stage(bench, "tuners")
    window.tools.hardware.setCurrentText(SIDE)
    window.tools.option_changed.emit()
    tool(bench, "tuner")
    for along in ("58", "98", "138"):
        bench.move(edge(bench.layout.outline, "treble").seat(float(along)).point)
        typed(bench, along)
        if window.tools.tool != "tuner":
            tool(bench, "tuner")
    window.keyboard.escape()
    return bench


def test_a_slotted_head_is_drawn_from_a_bare_blank(head):
    places = [tuner.place for tuner in head.layout.tuners]
    assert len(places) == 6 and all(isinstance(place, EdgePlace) for place in places)
    assert sorted(place.along for place in places) == [58.0, 58.0, 98.0, 98.0, 138.0, 138.0]
    # One undo a step: outline, nut, slots (their twin with them), three pairs of tuners.
    assert len(head.window.document.history.past) == 6
    for _ in range(6):
        head.window.commands.run("undo")
    assert not head.layout.tuners and not head.layout.slots and not head.window.document.unsaved


def test_the_printed_template_has_the_lengths_that_were_typed(head, tmp_path, monkeypatch, qtbot):
    out = tmp_path / "sheets"
    out.mkdir()
    monkeypatch.setattr(ask, "folder", lambda *_: out)
    monkeypatch.setattr("app.window.rooms.sheets.QDesktopServices.openUrl", lambda url: True)
    stage(head, "sheets")
    head.window.commands.run("write sheets")
    qtbot.waitUntil(lambda: "files written" in head.window.foot.said)
    head.window.sheet_writer.wait()
    assert {path.name for path in out.iterdir()} >= {"drawn-by-hand-template.dxf", "drawn-by-hand-sheets.pdf"}
    x0, y0, x1, y1 = slot_path(head.layout.slots[0]).box
    assert (x1 - x0, y1 - y0) == pytest.approx((14.2875, 112.0)), "9/16 inch by 112 mm"
    document = open_pdf((out / "drawn-by-hand-sheets.pdf").read_bytes())
    found = {n: middles for n in range(len(document)) if len(middles := slots_on(document[n])) == 2}
    assert found, "no page shows both slots whole"
    for bass, treble in found.values():
        assert treble[0] - bass[0] == pytest.approx(30.0, abs=0.02) and treble[1] == pytest.approx(bass[1], abs=0.02)


def slots_on(page) -> list[tuple[float, float]]:
    """Middles (mm on the paper) of all closed lines 14.29 mm wide and 112 mm long."""
    middles = set()
    for one in drawn(page):
        xs, ys = [p[0] for p in one.points], [p[1] for p in one.points]
        if abs(max(xs) - min(xs) - 14.2875) < 0.02 and abs(max(ys) - min(ys) - 112.0) < 0.02:
            middles.add((round((max(xs) + min(xs)) / 2, 2), round((max(ys) + min(ys)) / 2, 2)))
    return sorted(middles)
