"""What the loops of a drawing become, where the maker chooses another outline or one role for many."""

from pathlib import Path

import ezdxf
import ezdxf.units
import pytest

from tests.gui.hands import choose
from tests.gui.test_importing import closed, opened, roles
from tests.waiting import press


@pytest.fixture
def two_heads(tmp_path) -> Path:
    """A drawing in mm with two heads, 80 x 180 with two holes and 60 x 150 with three and a slot beside them."""
    drawing = ezdxf.new(units=ezdxf.units.MM)
    space = drawing.modelspace()
    space.add_lwpolyline([(-22, 0), (22, 0), (40, 60), (40, 180), (-40, 180), (-40, 60)], close=True)
    space.add_lwpolyline([(78, 0), (122, 0), (130, 40), (130, 150), (70, 150), (70, 40)], close=True)
    space.add_lwpolyline([(93, 50, 1), (107, 50, 0), (107, 120, 1), (93, 120, 0)], format="xyb", close=True)
    for x, y in ((-25, 60), (25, 60), (80, 60), (80, 90), (80, 120)):
        space.add_circle((x, y), 4.5 if abs(x) == 25 else 4)
    drawing.saveas(tmp_path / "two.dxf")
    return tmp_path / "two.dxf"


def test_another_outline_brings_what_lies_inside_it(bench, two_heads):
    """The slot and the holes of the head that is chosen, and not those of the other, 100 mm beside it; its size is told."""
    dialog = opened(bench, str(two_heads))
    assert roles(dialog) == ["outline", "other", "other", "hole", "hole", "other", "other", "other"]
    assert "80.0 x 180.0 mm" in dialog._says.text()
    choose(dialog._table.cellWidget(1, 1), "outline")
    assert roles(dialog) == ["other", "outline", "slot", "other", "other", "hole", "hole", "hole"]
    assert "60.0 x 150.0 mm" in dialog._says.text() and "60 x 150 mm" in dialog._unit.currentText()
    dialog._accept()
    made = dialog.result_layout
    closed(dialog)
    assert sorted(hole.at for hole in made.holes) == [(-20, 60), (-20, 90), (-20, 120)]
    assert [(slot.shape.nut_end, slot.shape.tip_end, slot.shape.width) for slot in made.slots] == [((0, 50), (0, 120), 14)]


def test_the_outline_chosen_stays_so_with_what_lies_inside_it_in_another_unit(bench, two_heads):
    dialog = opened(bench, str(two_heads))
    choose(dialog._table.cellWidget(5, 1), "slot")
    choose(dialog._table.cellWidget(5, 1), "other")
    choose(dialog._table.cellWidget(1, 1), "outline")
    wanted = ["other", "outline", "slot", "other", "other", "other", "hole", "hole"]
    assert roles(dialog) == wanted, "what was left out by hand stays so"
    choose(dialog._unit, "cm")
    found, said = roles(dialog), dialog._says.text()
    choose(dialog._unit, "mm")
    choose(dialog._table.cellWidget(0, 1), "outline")
    back = roles(dialog)
    closed(dialog)
    assert found == ["other", "outline", "slot", "other", "other", "other", "slot", "slot"], "80 mm across is no hole"
    assert "600.0 x 1500 mm" in said
    assert back == ["outline", "other", "other", "hole", "hole", "other", "other", "other"]


def test_what_one_loop_becomes_all_alike_become_at_once(bench, tmp_path):
    """Twelve plates of tuners, six of them drawn lying, and a slot; a loop of their size on another layer is none of them."""
    drawing = ezdxf.new(units=ezdxf.units.MM)
    space = drawing.modelspace()
    space.add_lwpolyline([(-40, 0), (40, 0), (40, 190), (-40, 190)], close=True)
    space.add_lwpolyline([(-8, 40), (8, 40), (8, 160), (-8, 160)], close=True)
    for x, (w, h) in ((-28, (12, 20)), (28, (20, 12))):
        for i in range(6):
            y = 20 + 28 * i
            space.add_lwpolyline([(x - w / 2, y), (x + w / 2, y), (x + w / 2, y + h), (x - w / 2, y + h)], close=True)
    space.add_lwpolyline([(-6, 10), (6, 10), (6, 30), (-6, 30)], close=True, dxfattribs={"layer": "inlay"})
    drawing.saveas(tmp_path / "plates.dxf")
    dialog = opened(bench, str(tmp_path / "plates.dxf"))
    assert roles(dialog) == ["outline", *["slot"] * 14] and not dialog._all.isEnabled()
    plate = next(i for i, loop in enumerate(dialog._read.loops) if loop.layer != "inlay" and loop.path.area < 250)
    box = dialog._table.cellWidget(plate, 1)
    box.setFocus()
    choose(box, "other")
    dialog._table.setCurrentCell(plate, 1)
    press(dialog._all)
    left = [loop.layer for loop, role in zip(dialog._read.loops, dialog._made_of.of, strict=True) if role == "slot"]
    assert sorted(left) == ["0", "inlay"] and roles(dialog) == dialog._made_of.of
    dialog._table.setCurrentCell(0, 1)
    assert not dialog._all.isEnabled(), "one alone is the outline"
    closed(dialog)


def test_the_row_in_hand_can_be_read(bench):
    """Its words have the colours that go with the ground of what is chosen."""
    dialog = opened(bench, "head-with-slots-and-holes.dxf")
    dialog._pick(1)
    bench.pump()
    table = dialog._table
    place = table.visualRect(table.model().index(1, 0))
    shown = table.viewport().grab(place).toImage()
    tones = [shown.pixelColor(x, y).lightness() for x in range(shown.width()) for y in range(shown.height())]
    assert max(tones) - min(tones) > 150
    closed(dialog)
