"""A drawing that holds filled areas and no lines."""

import io
import math

import ezdxf
import pytest

from tests.app.formats.drawing_in.reading import read

HEAD = [(22.0, 0.0), (40.0, 40.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 40.0), (-22.0, 0.0)]


def drawn(lines: bool = False, **place):
    """A head as a filled area with a round hole, an oval one and one of bulges left out, inserted as a block; with lines a circle too."""
    drawing = ezdxf.new("R2010", units=4)
    block = drawing.blocks.new("HEAD")
    area = block.add_hatch()
    outer = area.paths.add_edge_path()
    for p, q in zip(HEAD, [*HEAD[1:], HEAD[0]], strict=True):
        outer.add_line(p, q)
    area.paths.add_edge_path(flags=16).add_arc((25, 60), 5, 0, 360)
    area.paths.add_edge_path(flags=16).add_ellipse((-25, 60), (0, 20), 0.4, 0, 360)
    area.paths.add_polyline_path([(20, 120, 1), (30, 120, 1)], is_closed=True, flags=16)
    drawing.modelspace().add_blockref("HEAD", (0, 0), dxfattribs=place)
    if lines:
        drawing.modelspace().add_circle((0, 0), 60)
    out = io.StringIO()
    drawing.write(out)
    return read(out.getvalue())


@pytest.mark.parametrize("place", [{}, {"xscale": 2.0, "yscale": 2.0}, {"xscale": -1.0}, {"extrusion": (0, 0, -1)}])
def test_the_edges_of_filled_areas_are_taken(place):
    found, scale = drawn(**place), place.get("yscale", 1.0)
    assert [(loop.role, pytest.approx(abs(loop.path.area) / scale**2)) for loop in found.loops] == [
        ("outline", 80 * 140 + 62 * 40), ("slot", math.pi * 20 * 8), ("hole", math.pi * 25), ("hole", math.pi * 25)]
    x0, *_ = found.loops[1].path.box
    assert x0 == pytest.approx((17 if place in ({"xscale": -1.0}, {"extrusion": (0, 0, -1)}) else -33) * scale)
    assert any("only filled areas: their edges were taken" in text for text in found.warnings) and not any("hatch" in text for text in found.warnings)


def test_they_are_left_out_where_there_are_lines():
    found = drawn(lines=True)
    assert len(found.loops) == 1 and found.warnings[-1] == "Left out: 1 hatch."
