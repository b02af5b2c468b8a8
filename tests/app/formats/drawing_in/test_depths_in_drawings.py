"""DXF and SVG of the sheets tell how deep everything is cut, by the names of layers and groups; an import takes it from there."""

import xml.etree.ElementTree as ElementTree
from pathlib import Path

import ezdxf
import pytest
from msgspec.structs import replace

from app.formats.drawing_in import read_drawing
from app.formats.dxf_out import dxf_bytes
from app.formats.layer_names import depth_on, group_name, layer_name, seen_from_behind, style_on
from app.formats.svg_out import svg_text
from app.sheets import pages, write_sheets
from app.sheets.parts import parts
from app.sheets.write import full_template
from app.window.demo import demo
from geometry.beginning import Numbers, begin
from geometry.curves import shift
from geometry.curves.polygons import polygon
from geometry.drawing.depths import depths_of
from geometry.edits import add_hole, add_truss_rod_pocket
from geometry.edits.imported import layout_from
from geometry.edits.imported_openings import there_told
from geometry.layout import Headstock, loop_path
from geometry.layout.generic import TAPERED
from geometry.solids import holes
from geometry.solids.depth import Depth
from geometry.terms import HOLE_THERE, POCKET


@pytest.fixture(scope="module")
def layout() -> Headstock:
    """The demo with one blind slot, a pocket 9.5 deep that is there, and a hole 4.25 deep from the back."""
    made = add_truss_rod_pocket(replace(demo(), pins=()))
    made = add_hole(made, (0.0, 176.0), 7.0)
    slots = [replace(slot, depth=9.5) if slot.there else replace(slot, depth=11.0) if slot.id == "bass slot" else slot for slot in made.slots]
    return replace(made, slots=tuple(slots), holes=(*made.holes[:-1], replace(made.holes[-1], depth=4.25, surface="back")))


def written(layout: Headstock, path: Path) -> Path:
    drawing, depths = full_template(layout, parts(layout)[0]), depths_of(layout)
    path.write_bytes(dxf_bytes(drawing, depths) if path.suffix == ".dxf" else svg_text(drawing, "t", depths).encode())
    return path


def test_an_independent_reader_finds_each_depth_in_the_name_of_the_layer(layout, tmp_path):
    space = ezdxf.readfile(written(layout, tmp_path / "t.dxf")).modelspace()
    circles = {}
    for entity in space.query("CIRCLE"):
        circles.setdefault(entity.dxf.layer, set()).add(round(2 * entity.dxf.radius, 6))
    assert {layer: sizes for layer, sizes in circles.items() if layer != "template"} == {
        "counterbores - 8 mm deep": {8.8}, "post bores - through": {6.5}, "screw pilots - 9 mm deep from the back": {1.6},
        "holes - 4.25 mm deep from the back": {7.0}}
    layers = {entity.dxf.layer for entity in space}
    assert {"slots - through", "slots - 11 mm deep", "pockets that are there - 9.5 mm deep"} <= layers
    assert "slots" not in layers and "outline" in layers and "pricking marks" in layers


def test_an_independent_parser_finds_each_depth_in_the_id_of_the_group(layout, tmp_path):
    groups = {group.get("id"): group for group in ElementTree.parse(written(layout, tmp_path / "t.svg")).iter() if group.tag.endswith("}g")}
    circles = {name: {2 * float(one.get("r")) for one in group if one.tag.endswith("circle")} for name, group in groups.items()}
    assert {name: sizes for name, sizes in circles.items() if sizes} == {
        "counterbore--8-mm-deep": {8.8}, "post-bore--through": {6.5}, "screw-pilot--9-mm-deep-from-the-back": {1.6},
        "hole--4.25-mm-deep-from-the-back": {7.0}}
    assert {"slot--through", "slot--11-mm-deep", "pocket-that-is-there--9.5-mm-deep", "outline", "cross"} <= set(groups)
    assert "slot" not in groups and all(len(group) for group in groups.values())


@pytest.mark.parametrize("kind", ["dxf", "svg"])
def test_an_import_takes_the_depths(layout, tmp_path, kind):
    read = read_drawing(written(layout, tmp_path / f"t.{kind}"))
    from geometry.curves import Matrix
    loops = [(loop.path, loop.role, depth_on(loop.layer)) for loop in read.loops]
    made = layout_from(loops, Matrix(), "again")
    assert sorted((slot.there, slot.depth) for slot in made.slots if slot.depth) == [(False, 11.0), (True, 9.5)]
    assert [slot.depth for slot in made.slots if not slot.there].count(None) == 1
    assert [(hole.depth, hole.surface) for hole in made.holes if hole.diameter == pytest.approx(7.0)] == [(4.25, "back")]
    assert there_told(loops, Matrix()) == [], "the depth of the pocket is known"
    assert there_told([(path, role) for path, role, _ in loops], Matrix())


def test_the_sheets_write_them(layout, tmp_path):
    for path in write_sheets(layout, tmp_path, snags=()):
        if path.suffix in (".dxf", ".svg") and not path.stem.endswith("-back"):  # a slot from the face is not seen there
            assert {".dxf": b"slots - 11 mm deep", ".svg": b'"slot--11-mm-deep"'}[path.suffix] in path.read_bytes()
    assert pages(layout, "A4", ())


@pytest.mark.parametrize(("depth", "layer"), [
    (None, "counterbores"), (Depth(None), "counterbores - through"), (Depth(8.0), "counterbores - 8 mm deep"),
    (Depth(8.1239999), "counterbores - 8.123 mm deep"), (Depth(12.5, True), "counterbores - 12.5 mm deep from the back"),
    (Depth(None, True), "counterbores - through from the back"),
    (Depth(None, True, (7.5, 30.0)), "counterbores - through from the back - reamed 1 in 30 to 7.5 mm"),
    (Depth(12.0, False, (7.9375, 20.0)), "counterbores - 12 mm deep - reamed 1 in 20 to 7.938 mm")])
def test_names_of_layers(depth, layer):
    assert layer_name("counterbore", depth) == layer
    assert style_on(layer) == style_on(layer.upper()) == "counterbore"
    assert style_on(group_name("counterbore", depth)) == "counterbore" and depth_on(group_name("counterbore", depth)) == depth_on(layer)
    again = depth_on(layer)
    assert again is None if depth is None else again.back == depth.back and (again.deep == pytest.approx(depth.deep, abs=1e-3) if depth.deep else again.deep is None)


def test_a_bore_for_a_tapered_peg_says_so(tmp_path):
    """Who has only the drawing would leave the hole as drilled."""
    head = begin(Numbers(face=TAPERED))
    layer = "post bores - through from the back - reamed 1 in 30 to 7.5 mm"
    found = ezdxf.readfile(written(head, tmp_path / "t.dxf")).modelspace().query("CIRCLE")
    assert sorted(circle.dxf.layer for circle in found) == ["locating pin holes - through"] * 2 + [layer] * 6
    assert f'"{group_name("post bore", Depth(None, True, (7.5, 30.0)))}"' in written(head, tmp_path / "t.svg").read_text()
    assert depth_on(layer) == Depth(None, True) and style_on(layer) == "post bore"


@pytest.mark.parametrize("layer", ["slots - 0 mm deep", "slots - 1e5 mm deep", "slots - 99999 mm deep", "slots - deep", "", "through", "walk-through", "slots-8-mm-deep"])
def test_what_is_no_depth(layer):
    assert depth_on(layer) is None


def test_pockets_and_holes_there_keep_their_styles():
    assert style_on("pockets that are there - 9.5 mm deep") == POCKET and style_on("holes that are there - through") == HOLE_THERE


@pytest.mark.parametrize("ending", [".dxf", ".svg"])
def test_a_drawing_of_the_back_is_read_as_it_lies_seen_from_the_face(layout, ending, tmp_path):
    """And not as a left-handed head: an outline that is not its own mirror image, and every bore from behind where it is."""
    nodes = layout.outline.nodes
    crooked = replace(layout, outline=replace(layout.outline, nodes=tuple(replace(one, at=(one.at[0] + 3.0, one.at[1])) if one.at[1] > 170.0 else one for one in nodes)))
    path = next(path for path in write_sheets(crooked, tmp_path, snags=()) if path.name.endswith(f"-back{ending}"))
    read = read_drawing(path)
    true = loop_path(crooked.outline)
    x, y = (read.outline.path.box[i] - true.box[i] for i in (0, 1))  # an SVG begins at its corner
    assert polygon(read.outline.path).symmetric_difference(polygon(true.mapped(shift(x, y)))).area < 1.0
    found = sorted(((loop.path.box[0] + loop.path.box[2]) / 2 - x, (loop.path.box[1] + loop.path.box[3]) / 2 - y) for loop in read.loops
                   if (deep := depth_on(loop.layer)) is not None and deep.back)
    wanted = sorted(d.start[:2] for hole in holes(crooked) for d in hole.drillings if d.surface == "back")
    assert len(wanted) == 13 and found == [pytest.approx(at, abs=1e-3) for at in wanted]
    assert not seen_from_behind("centreline") and not seen_from_behind("notes - seen from the back") and style_on("CENTRELINE - SEEN FROM THE BACK") == "centreline"
