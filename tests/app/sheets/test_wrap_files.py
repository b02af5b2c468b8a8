"""The wrap paper as DXF and SVG: read by others, folded round the blank, and held against the axes in space."""

import math
import re
import xml.etree.ElementTree as ET
from pathlib import Path

import pyogrio
import pytest
import shapely
from msgspec.structs import replace

from app.formats.headstock import read
from app.formats.mark_shapes import drawing_box
from app.sheets import plan_work, write_sheets
from app.sheets.block_table import lengths_for
from app.sheets.write import left_words
from geometry.beginning.begin import mended
from geometry.beginning.numbers import Numbers
from geometry.drawing import Disc, Label
from geometry.drawing.wrap import wrap_drawing
from geometry.lengths import speaking
from geometry.solids import holes
from tests.app.sheets.printed import layout

NUMBER = re.compile(r"-?\d+\.?\d*(?:e-?\d+)?")


@pytest.fixture(scope="module")
def head():
    return layout("demo")


@pytest.fixture(scope="module")
def written(head, tmp_path_factory):
    files = write_sheets(head, tmp_path_factory.mktemp("wrap"), "A4", "w", snags=(), work=plan_work(head))
    return {path.name: path for path in files}


def folded_back(head, p):
    """A point of the paper on the blank, mm."""
    blank = head.blank
    if p[0] > blank.treble:
        return (blank.treble, p[1], p[0] - blank.treble)
    if p[0] < -blank.bass:
        return (-blank.bass, p[1], -blank.bass - p[0])
    return (p[0], p[1], 0.0)


def off_axis(d, p):
    """Distance of a point from a drilling's axis in space, mm."""
    v = [p[i] - d.start[i] for i in range(3)]
    along = sum(v[i] * d.direction[i] for i in range(3))
    return math.dist(v, [along * d.direction[i] for i in range(3)])


def hold(head, centres):
    """Every drilling that the wrap marks has a cross on its axis, where the drill goes in."""
    marked = [folded_back(head, c) for c in centres]
    wanted = [d for hole in holes(head) for d in hole.drillings if d.surface != "back"
              and not (d.surface != "face" and d.role == "screw")]
    assert len(wanted) == 20  # 6 side bores, 12 from the face, two pins; 12 screws of side tuners are drilled by hand
    for d in wanted:
        near = min(marked, key=lambda m: math.dist(m, d.mark))
        assert math.dist(near, d.mark) < 1e-4 and off_axis(d, near) < 1e-4, d.id


def test_the_dxf_folds_onto_the_axes(head, written):
    _, _, shapes, columns = pyogrio.raw.read(written["w-wrap.dxf"], columns=["Layer"])
    arms = [shapely.from_wkb(s) for layer, s in zip(columns[0], shapes, strict=True) if layer == "pricking marks"]
    hold(head, [arm.interpolate(0.5, normalized=True).coords[0] for arm in arms])


def test_the_dxf_has_fold_lines_at_the_square_edges(head, written):
    _, _, shapes, columns = pyogrio.raw.read(written["w-wrap.dxf"], columns=["Layer"])
    folds = [shapely.from_wkb(s) for layer, s in zip(columns[0], shapes, strict=True) if layer == "fold lines"]
    xs = {round(x, 6) for fold in folds for x, *_ in fold.coords}
    assert {-head.blank.bass, head.blank.treble} <= xs


def test_the_svg_folds_onto_the_axes(head, written):
    root = ET.parse(written["w-wrap.svg"]).getroot()
    x0, y0, width, height = (float(n) for n in root.get("viewBox").split())
    assert root.get("width").endswith("mm") and float(root.get("width").removesuffix("mm")) == pytest.approx(width)
    centres = []
    for path in root.iter("{http://www.w3.org/2000/svg}path"):
        numbers = [float(n) for n in NUMBER.findall(path.get("d"))]
        letters = re.findall("[A-Za-z]", path.get("d"))
        if letters in (["M", "L"], ["M", "L", "M", "L"]):
            for ax, ay, bx, by in zip(*[iter(numbers)] * 4, strict=True):
                centres.append(((ax + bx) / 2, -(ay + by) / 2))
    hold(head, centres)


def test_the_dxf_of_the_back_lies_on_the_bores_as_they_are_seen_from_behind(head, written):
    """Circles of what is drilled from there on layers that tell how deep; nothing without a depth but what is a line."""
    _, _, shapes, columns = pyogrio.raw.read(written["w-back.dxf"], columns=["Layer"])
    found = [(layer, shapely.from_wkb(shape)) for layer, shape in zip(columns[0], shapes, strict=True)]
    circles = [shape.bounds for layer, shape in found if layer == "screw pilots - 9 mm deep from the back"]
    wanted = [d for hole in holes(head) for d in hole.drillings if d.surface == "back"]
    assert sorted(((x0 + x1) / 2, (y0 + y1) / 2) for x0, y0, x1, y1 in circles) == [
        pytest.approx(at, abs=2e-3) for at in sorted((-d.start[0], d.start[1]) for d in wanted)]
    assert len(circles) == 12 and {layer for layer, _ in found if layer.startswith(("post", "locating"))} == {"post bores - through", "locating pin holes - through"}


def test_a_head_with_nothing_to_drill_from_behind_has_no_files_of_the_back(head, tmp_path):
    plain = replace(head, tuners=(), rows=(), strings=())
    found = write_sheets(plain, tmp_path, "A4", "w/b", snags=())
    assert not [path.name for path in found if "back" in path.name] and left_words(tmp_path, "w/b", found) == ""


def test_a_back_paper_of_an_earlier_plan_is_told_of_and_left_alone(head, tmp_path):
    """In the same folder under the same name; one of another name is another head's."""
    first = write_sheets(head, tmp_path, stem="w/b", snags=())
    assert left_words(tmp_path, "w/b", first) == ""
    stood = {path: path.read_bytes() for path in first if "back" in path.name}
    now = write_sheets(replace(head, tuners=(), rows=(), strings=()), tmp_path, stem="w/b", snags=())
    assert all(f"{path.name}" in left_words(tmp_path, "w/b", now) and path.read_bytes() == data for path, data in stood.items()) and len(stood) == 2
    assert left_words(tmp_path, "other", now) == ""


@pytest.mark.parametrize(("base", "lengths"), [(100.0, (100, 150, 200, 250, 300)), (127.0, (100, 127, 150, 200, 250)),
                                               (400.0, (100, 150, 200, 250, 400))])
def test_the_block_table_has_the_board_of_the_rack(base, lengths):
    assert lengths_for(base) == lengths


# ---- words beside the marks ---------------------------------------------------
@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
def test_no_words_on_an_edge_run_into_the_mark_of_the_next_bore(unit):
    """Four tuners through each side, as near as their plates allow: in inches the words are longest."""
    layout = mended(Numbers(bass=4, treble=4, bass_mount="side", treble_mount="side", pitch=23.0))[1]
    with speaking(unit):
        drawing = wrap_drawing(layout)
    marks = [mark for mark in drawing if isinstance(mark, Disc) and mark.style == "side bore"]
    words = [label for label in drawing if isinstance(label, Label) and label.angle and label.owner.split()[0] in ("bass", "treble")]
    assert len(marks) == 8 and len(words) > 16
    for label in words:
        x0, y0, x1, y1 = drawing_box((label,))
        for disc in marks:
            (x, y), arm = disc.centre, disc.radius + 1.0
            assert y1 < y - arm or y0 > y + arm or x1 < x - arm or x0 > x + arm, (label.text, disc.owner)


def test_what_is_said_of_a_pin_keeps_off_what_is_said_of_the_holes_beside_it():
    """The pins of the bass stand in two of its bores, as wide as these, which tell their diameter."""
    drawing = wrap_drawing(read(Path("samples/four-string-bass.headstock.json")))
    words = [(label, shapely.box(*drawing_box((label,)))) for label in drawing if isinstance(label, Label)]
    pins = [(label, room) for label, room in words if label.text.endswith(" pin")]
    assert len(pins) == 2
    assert [other.text for label, room in pins for other, taken in words if other is not label and room.intersects(taken)] == []
