"""SVG read back by svgelements, and as XML."""

import math
import xml.etree.ElementTree as ET

import pytest
import svgelements
from hypothesis import given
from hypothesis import strategies as st

from app.formats.mark_shapes import drawing_box
from app.formats.svg_out import path_data, svg_text
from geometry.curves import Arc, Path
from geometry.drawing import Area, Disc, Label, Stroke
from tests.app.formats.out.specimens import DRAWING, OUTLINE

SVG = "{http://www.w3.org/2000/svg}"
PX_PER_MM = 96 / 25.4  # CSS Values 3, absolute lengths


def groups(text):
    return {g.get("id"): g for g in ET.fromstring(text.encode()).iter(f"{SVG}g")}


def test_one_unit_is_one_millimetre():
    root = ET.fromstring(svg_text(DRAWING, "t").encode())
    x, y, width, height = (float(n) for n in root.get("viewBox").split())
    assert root.get("width") == f"{width:.6f}".rstrip("0").rstrip(".") + "mm"
    assert root.get("height") == f"{height:.6f}".rstrip("0").rstrip(".") + "mm"
    box = drawing_box(DRAWING)
    assert (x, y, width, height) == pytest.approx((box[0] - 5.0, -box[3] - 5.0, box[2] - box[0] + 10.0, box[3] - box[1] + 10.0), abs=1e-5)


def test_a_group_for_each_style():
    found = groups(svg_text(DRAWING, "t"))
    assert set(found) == {"outline", "wood", "post-bore", "screw-pilot", "cross", "centreline", "axis", "note"}
    assert len(found["note"]) == 2


def test_shapes_are_read_back_at_full_size(tmp_path):
    (tmp_path / "a.svg").write_text(svg_text(DRAWING, "t"), encoding="utf-8")
    read = svgelements.SVG.parse(str(tmp_path / "a.svg"))
    box = drawing_box(DRAWING)
    (bore,) = [e for e in read.elements() if isinstance(e, svgelements.Circle) and abs(e.rx / PX_PER_MM - 3.25) < 1e-4]
    at = (bore.cx / PX_PER_MM + box[0] - 5.0, -(bore.cy / PX_PER_MM - box[3] - 5.0))
    assert at == pytest.approx((-10.0, 20.0), abs=1e-4)


def test_the_outline_has_the_same_area_for_an_independent_reader():
    path = svgelements.Path(path_data((OUTLINE,)))
    points = [path.point(i / 20000) for i in range(20000)]
    area = sum(a.x * b.y - b.x * a.y for a, b in zip(points, points[1:] + points[:1], strict=True)) / 2
    assert abs(area) == pytest.approx(OUTLINE.area, rel=1e-6)


@given(a0=st.floats(-6, 6), sweep=st.floats(0.05, 6.2), left=st.booleans())
def test_arcs_take_their_own_way_round(a0, sweep, left):
    arc = Arc.about((3.0, -2.0), 7.0, a0, sweep if left else -sweep)
    read = svgelements.Path(path_data((Path((arc,)),)))
    assert read.length() == pytest.approx(7.0 * sweep, rel=1e-3)
    middle = read.point(0.5)
    assert (middle.x, -middle.y) == pytest.approx(arc.point(0.5), abs=1e-3)


def test_words_stand_where_they_are_drawn_turned_and_as_large():
    """A capital is 1493 of 2048 parts of the font's size; a turn to the left with y up is one to the right with y down."""
    labels = (Label("a", (3.0, 4.0), 2.0, "note", angle=math.pi / 6), Label("b", (-1.0, -0.0), 5.0, "note", anchor="right"))
    turned, level = ET.fromstring(svg_text(labels, "t").encode()).iter(f"{SVG}text")
    assert (turned.get("x"), turned.get("y"), turned.get("transform")) == ("3", "-4", "rotate(-30 3 -4)")
    assert (level.get("x"), level.get("y"), level.get("transform"), level.get("text-anchor")) == ("-1", "0", None, "end")
    assert [float(one.get("font-size")) * 1493 / 2048 for one in (turned, level)] == pytest.approx([2.0, 5.0], abs=1e-6)


def test_lines_are_dashed_and_areas_grey_as_on_paper():
    drawing = (Stroke(OUTLINE, "centreline"), Stroke(OUTLINE, "outline"), *(Area(OUTLINE, style) for style in ("wood", "slot", "outline")))
    found = groups(svg_text(drawing, "t"))
    assert [found[id].get("stroke-dasharray") for id in ("centreline", "outline")] == ["9 1.4 1.4 1.4", None]
    areas = [next(path.get("fill") for path in found[id] if path.get("fill-rule")) for id in ("wood", "slot", "outline")]
    assert areas == ["#e6e6e6", "#ffffff", None], "a tenth of black, none, and no ground at all"
    (whole,) = [one for one in svg_text((Disc((0.0, 0.0), 3.0, "post bore"),), "t").splitlines() if "<circle" in one]
    assert "dash" not in whole


def test_words_are_escaped_and_control_characters_dropped():
    text = svg_text((Label("a<b>&\x07\x0b c\ufffe\ud834\udfff", (0.0, 0.0), 2.0, "note"),), "x & \x01 y")
    root = ET.fromstring(text.encode())
    assert next(root.iter(f"{SVG}text")).text == "a<b>&   c   "
    assert root.find(f"{SVG}title").text == "x &   y"


def test_bores_of_the_far_side_are_dashed_and_the_others_are_not():
    near, far = Disc((0.0, 0.0), 3.0, "side bore"), Disc((9.0, 0.0), 3.0, "side bore", hidden=True)
    group = groups(svg_text((near, far), "t"))["side-bore"]
    assert [c.get("stroke-dasharray") == "none" for c in group] == [True, False]


def test_an_empty_drawing_is_a_valid_sheet():
    root = ET.fromstring(svg_text((), "t").encode())
    assert root.get("width") == "10mm"


def test_two_exports_are_the_same_text():
    assert svg_text(DRAWING, "t") == svg_text(DRAWING, "t")


def test_a_full_circle_path_is_not_lost():
    """One arc element of a full turn has coinciding ends and would vanish (SVG 1.1, F.6.2)."""
    ring = Stroke(Path((Arc.about((0.0, 0.0), 5.0, 0.0, 2 * math.pi),), closed=True), "hole")
    read = svgelements.Path(path_data((ring.path,)))
    assert read.length() == pytest.approx(10 * math.pi, rel=1e-3)
