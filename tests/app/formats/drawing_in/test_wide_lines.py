"""Polylines that are drawn with a width: filled discs and rings, and lines that are only thick."""

import io

import ezdxf
import pytest

from tests.app.formats.drawing_in.reading import read

HEAD = [(22, 0), (40, 40), (40, 180), (-40, 180), (-40, 40), (-22, 0)]
RING = [(-1.0, 0.0), (1.0, 0.0)]


def drawn(radius: float, width: float, old: bool, scale: float = 1.0):
    """A head with a ring about (20, 60) whose middle line has that radius (mm), in a block `scale` times as large."""
    drawing = ezdxf.new("R2010", units=4)
    drawing.modelspace().add_lwpolyline(HEAD, close=True)
    block = drawing.blocks.new("RING")
    points = [(x * radius / scale, 0.0, width / scale, width / scale, 1.0) for x, _ in RING]
    (block.add_polyline2d if old else block.add_lwpolyline)(points, format="xyseb", close=True)
    drawing.modelspace().add_blockref("RING", (20, 60), dxfattribs={"xscale": scale, "yscale": scale})
    out = io.StringIO()
    drawing.write(out)
    return read(out.getvalue())


@pytest.mark.parametrize("old", [False, True], ids=["lwpolyline", "polyline"])
@pytest.mark.parametrize("scale", [1.0, 2.0])
@pytest.mark.parametrize(("radius", "width", "across"), [(2.5, 5.0, 10.0), (4.0, 1.0, 8.0), (5.0, 0.0, 10.0)], ids=["disc", "ring", "thin"])
def test_the_edge_of_a_filled_disc_is_meant_and_the_middle_of_all_else(radius, width, across, scale, old):
    found = drawn(radius, width, old, scale)
    hole = next(loop.path.box for loop in found.loops if loop.role == "hole")
    assert {type(side) for side in hole} == {float}, "which goes over the wire"
    assert hole == pytest.approx((20 - across / 2, 60 - across / 2, 20 + across / 2, 60 + across / 2))
    assert any("drawn with a width" in text for text in found.warnings) is (width > 0)


def test_a_thick_outline_is_taken_by_its_middle():
    drawing = ezdxf.new("R2010", units=4)
    drawing.modelspace().add_lwpolyline(HEAD, close=True, dxfattribs={"const_width": 1.5})
    out = io.StringIO()
    drawing.write(out)
    found = read(out.getvalue())
    assert found.loops[0].path.box == pytest.approx((-40, 0, 40, 180)) and any("drawn with a width" in text for text in found.warnings)
