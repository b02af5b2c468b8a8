"""A scale that stands in a drawing is told and offered, and never applied."""

import io

import ezdxf
import pytest

from app.formats.drawing_in.scale_text import stated_scale
from tests.app.formats.drawing_in.reading import read, read_svg

HEAD = [(11, 0), (20, 20), (20, 90), (-20, 90), (-20, 20), (-11, 0)]


@pytest.mark.parametrize(("texts", "factor"), [
    (["SCALE 1:2"], 2.0), (["Scale: 1 : 2"], 2.0), (["M 1:2"], 2.0), (["Maßstab 2:1"], 0.5), (["scale = 1/4"], 4.0), (["Scale", " 1 : 2 "], 2.0),
    (["drawn by nobody, scale 1:2,5, sheet 1 of 2"], 2.5), (["Detail", "SCALE 1:1", "SCALE 5:1"], 0.2), (["1:4", "SCALE 1:2"], 2.0),
    (["SCALE 1:1"], None), (["1/2"], None), (["M4:1"], None), (["gear 14:1 tuners"], None), (["12:30:05"], None), (["12:30"], None), (["10:1"], 0.1), (["scale 1:0"], None),
    (["scale 1:200"], None), ([], None), (["scale " * 60], None)])
def test_what_is_a_scale(texts, factor):
    found = stated_scale(texts)
    assert (found and found.factor) == factor


def drawn(write) -> ezdxf.document.Drawing:
    drawing = ezdxf.new("R2010", units=4)
    drawing.modelspace().add_lwpolyline(HEAD, close=True)
    write(drawing, drawing.modelspace())
    out = io.StringIO()
    drawing.write(out)
    return read(out.getvalue())


def in_a_title(drawing, space) -> None:
    title = drawing.blocks.new("TITLE")
    title.add_attdef("SCALE", (0, 0))
    space.add_blockref("TITLE", (50, 0)).add_attrib("SCALE", "1:2", (50, 0))


@pytest.mark.parametrize("write", [
    lambda drawing, space: space.add_text("SCALE 1:2"), lambda drawing, space: space.add_mtext("Head\\P{\\fArial;Scale} 1:2"), in_a_title])
def test_it_is_found_in_a_dxf_and_the_size_stays_as_it_is_drawn(write):
    found = drawn(write)
    assert (found.scale.words, found.scale.factor) == ("1:2", 2.0)
    assert found.size_mm == pytest.approx((40, 90)) and found.unit_mm == 1.0


def test_what_is_hidden_or_on_a_paper_page_tells_no_scale():
    def write(drawing, space) -> None:
        drawing.layers.add("OFF").off()
        space.add_text("SCALE 1:2", dxfattribs={"layer": "OFF"})
        drawing.layout("Layout1").add_text("SCALE 1:2")
    assert drawn(write).scale is None


def test_it_is_found_in_an_svg():
    found = read_svg('<path d="M30 95 L70 95 L80 5 L20 5 Z"/><text x="5" y="5">Scale <tspan>1:2</tspan></text>')
    assert found.scale.factor == 2.0 and found.size_mm == pytest.approx((60, 90))
