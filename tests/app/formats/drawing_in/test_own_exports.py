"""A drawing that Pegwright itself has written, read again: outline, slots and what is there already come back as what they were."""

import math

import ezdxf
import pytest
import shapely
from msgspec.structs import replace

from app.formats.drawing_in import read_drawing
from app.formats.drawing_in.command import require_outline
from app.formats.drawing_in.roles import is_upright, with_roles
from app.formats.dxf_out import dxf_bytes
from app.formats.errors import FormatError
from app.formats.layer_names import LAYERS, group_name, style_on
from app.formats.svg_out import svg_text
from app.sheets.parts import wrap_part
from app.window.demo import demo
from app.window.importing.roles import Roles
from geometry.curves import Matrix, Path, circle
from geometry.drawing import shapes
from geometry.drawing.template import template_drawing
from geometry.edits import add_drawn_slot, add_hole, add_truss_rod_pocket, remove_features
from geometry.edits.imported import layout_from, with_shape
from geometry.edits.imported_hardware import hardware_told
from geometry.edits.pockets import set_slots_there
from geometry.joining.placing import place
from geometry.layout import Headstock, loop_path, slot_path
from geometry.solids import holes
from geometry.terms import HOLE_THERE, POCKET

HEAD = shapes.chain(((-30.0, 0.0), (30.0, 0.0), (30.0, 150.0), (-30.0, 150.0)), closed=True)


@pytest.fixture(scope="module")
def layout() -> Headstock:
    """The demo with a pocket across the nut line, another of any shape, and a plugged hole as wide as a pocket."""
    made = add_truss_rod_pocket(remove_features(demo(), ["nut pin"]))
    bed = shapes.chain(((-3.0, 150.0), (4.0, 150.0), (0.0, 162.0)), closed=True)
    made = add_drawn_slot(made, bed)
    made = set_slots_there(made, [made.slots[-1].id], True)
    made = add_hole(made, (0.0, 176.0), 22.0)
    return replace(made, holes=(*made.holes[:-1], replace(made.holes[-1], there=True)))


def as_far(one: Path, other: Path) -> float:
    """mm by which two loops are apart at most."""
    return shapely.hausdorff_distance(*(shapely.linestrings(path.flatten(0.0005)) for path in (one, other)))


@pytest.mark.parametrize("kind", ["dxf", "svg"])
@pytest.mark.parametrize("what", ["template", "template with its lines", "wrap paper"])
def test_pockets_come_back_as_pockets_and_slots_as_slots(layout, tmp_path, what, kind):
    drawing = (wrap_part(layout, ()).drawing if what == "wrap paper" else
               template_drawing(layout, 1.5 if "lines" in what else None))
    path = tmp_path / f"own.{kind}"
    path.write_bytes(dxf_bytes(drawing) if kind == "dxf" else svg_text(drawing, "Own").encode())
    read = read_drawing(path)
    assert read.size_mm == pytest.approx((91.05010639, 190.0), abs=1e-3), "of the outline, not of the blank on the wrap paper"
    assert not read.open_chains and {loop.role for loop in read.loops} == {"outline", "slot", "hole", POCKET, HOLE_THERE}
    assert [text for text in read.warnings if "gap" in text or "open" in text] == [] and "has written this drawing" in read.warnings[-1]
    placing = place(read.outline.path)
    made = layout_from([(loop.path, loop.role) for loop in read.loops], placing.matrix, "Again", placing.nut_width)
    assert as_far(loop_path(made.outline), loop_path(layout.outline)) < 0.003
    for there in (False, True):
        before, after = ([slot_path(slot) for slot in one.slots if slot.there == there] for one in (layout, made))
        assert len(before) == len(after) == 2
        assert all(min(as_far(one, other) for other in after) < 0.003 for one in before)
    (plugged,) = [hole for hole in made.holes if hole.there]
    assert plugged.at == pytest.approx((0.0, 176.0), abs=1e-3) and plugged.diameter == pytest.approx(22.0, abs=1e-3)


def test_in_any_drawing_the_layer_of_pockets_makes_a_pocket_and_no_other_name_tells():
    """A loop on a layer called `slots` or `template` of some other drawing is what its place makes it, as is a pocket's layer there."""
    loops = [(HEAD, "waste"), (circle((0.0, 0.0), 8.0), "Pockets that are There"), (circle((0.0, 40.0), 12.0), "template"),
             (circle((0.0, 90.0), 4.0), "slots"), (circle((0.0, 150.0), 5.0), "slots"), (circle((0.0, 120.0), 3.0), "holes that are there")]
    found = {loop.layer: loop.role for loop in with_roles(loops, [layer for _, layer in loops])}
    roles = [(loop.path.box[3], loop.role) for loop in with_roles(loops, [layer for _, layer in loops])]
    assert found["waste"] == "outline" and found["template"] == "slot"
    assert (8.0, POCKET) in roles and (94.0, "hole") in roles and (155.0, "other") in roles and (123.0, HOLE_THERE) in roles


@pytest.mark.parametrize("kind", ["dxf", "svg"])
@pytest.mark.parametrize("what", ["template", "wrap paper"])
def test_taken_back_into_its_own_layout_a_drawing_changes_nothing(layout, tmp_path, what, kind):
    """Names, depths, ramps and hardware are those that were, and no bore of a tuner is set as a hole of its own as well."""
    path = tmp_path / f"own.{kind}"
    drawing = wrap_part(layout, ()).drawing if what == "wrap paper" else template_drawing(layout, 1.5)
    path.write_bytes(dxf_bytes(drawing) if kind == "dxf" else svg_text(drawing, "Own").encode())
    read = read_drawing(path)
    loops = [(loop.path, loop.role) for loop in read.loops]
    matrix = place(read.outline.path).matrix
    made = with_shape(layout, loops, matrix, openings=True)
    assert as_far(loop_path(made.outline), loop_path(layout.outline)) < 0.003
    assert replace(made, outline=layout.outline) == layout
    assert hardware_told(loops, matrix, layout) == ["Holes that tuners and pins of the layout have already are not set once more."]
    assert hardware_told(loops[:1], matrix, layout) == []


def test_a_slanted_nut_comes_back_slanted(layout, tmp_path):
    slanted = replace(layout, nut=replace(layout.nut, slant=6.0))
    half = layout.nut.width / 2
    nodes = tuple(replace(node, at=slanted.nut.at(node.at[0])) if node.at[1] == 0 and abs(node.at[0]) <= half + 5 else node
                  for node in layout.outline.nodes)
    slanted = replace(slanted, outline=replace(layout.outline, nodes=nodes))
    assert slanted.outline != layout.outline
    path = tmp_path / "own.dxf"
    path.write_bytes(dxf_bytes(template_drawing(slanted, 1.5)))
    read = read_drawing(path)
    roles = Roles(read)
    assert roles.slanted_as(slanted.nut) and roles.slanted_as(layout.nut)  # its nut line is drawn, whatever layout is open
    changed = Roles(replace(read, layers=read.layers[:1], up=None))
    assert changed.slanted_as(slanted.nut) and not changed.slanted_as(layout.nut) and not changed.slanted_as(replace(layout.nut, slant=-6.0))
    placing = place(read.outline.path, slanted=True)
    made = with_shape(slanted, [(loop.path, loop.role) for loop in read.loops], placing.matrix, openings=True, slant=placing.slant)
    assert as_far(loop_path(made.outline), loop_path(slanted.outline)) < 0.003
    assert made.nut.slant == pytest.approx(6.0, abs=0.001)
    assert replace(made, outline=slanted.outline, nut=slanted.nut) == slanted


@pytest.mark.parametrize("edit", ["copied beside", "nut line twice", "outline moved alone"])
def test_of_an_export_that_another_hand_has_changed_the_nut_line_at_the_wood_counts(layout, tmp_path, edit):
    path = tmp_path / "own.dxf"
    path.write_bytes(dxf_bytes(template_drawing(replace(layout, nut=replace(layout.nut, slant=6.0)), 1.5)))
    drawing = ezdxf.readfile(path)
    for one in list(drawing.modelspace()):
        style = style_on(one.dxf.layer)
        if edit == "copied beside" or edit == "nut line twice" and style == "nut line":
            drawing.modelspace().add_entity(copy := one.copy())
            copy.translate(400.0 if "beside" in edit else 0.0, 0.0, 0.0)
        elif edit == "outline moved alone" and style == "outline":
            one.translate(0.0, 12.0, 0.0)
    drawing.saveas(path)
    read = read_drawing(path)
    if edit == "outline moved alone":
        assert read.nut is None and read.outline.path.box[1] == pytest.approx(12.0)
    else:
        assert place(read.outline.path, slanted=is_upright(read), nut=read.nut, up=read.up).slant == pytest.approx(6.0, abs=0.001)


def test_a_hole_beside_or_wider_than_that_of_a_tuner_is_one_of_its_own(layout):
    post = next(hole for hole in holes(layout) if hole.of == "bass face 1").drillings[0]
    x, y, _ = post.start
    loops = [(loop_path(layout.outline), "outline"), *[(circle((x + aside, y), post.radius + wider), "hole")
                                                       for aside, wider in ((0.0, 0.0), (0.02, 0.0), (0.0, 0.02))]]
    made = with_shape(layout, loops, Matrix(), openings=True)
    assert [hole.id for hole in made.holes if not hole.there] == ["hole 2", "hole 3"]


def test_what_another_hand_adds_to_an_export_is_read_too(layout, tmp_path):
    """A hole and an open line on a layer of their own: the hole is one, and of the line is told that it stays open."""
    path = tmp_path / "own.dxf"
    path.write_bytes(dxf_bytes(template_drawing(layout, 1.5)))
    drawing = ezdxf.readfile(path)
    drawing.modelspace().add_circle((0.0, 100.0), 2.0, {"layer": "inlay"})
    drawing.modelspace().add_line((-5.0, 120.0), (5.0, 120.0), {"layer": "inlay"})
    drawing.saveas(path)
    read = read_drawing(path)
    assert [(loop.role, loop.path.area) for loop in read.loops if loop.layer == "inlay"] == [("hole", pytest.approx(4 * math.pi))]
    assert len(read.open_chains) == 1 and any("stays open" in text for text in read.warnings)


def test_no_hole_becomes_the_outline_where_that_of_an_export_was_cut_open(layout, tmp_path):
    path = tmp_path / "own.dxf"
    path.write_bytes(dxf_bytes(template_drawing(layout, None)))
    drawing = ezdxf.readfile(path)
    space = drawing.modelspace()
    space.delete_entity(space.query('*[layer=="outline"]')[0])
    drawing.saveas(path)
    read = read_drawing(path)
    assert read.outline is None and {loop.role for loop in read.loops} == {"slot", POCKET, HOLE_THERE, "other"}
    with pytest.raises(FormatError, match="no closed outline"):
        require_outline(read)


def test_a_drawing_of_nothing_but_pockets_has_no_outline():
    assert [loop.role for loop in with_roles([(HEAD, "pockets that are there")])] == [POCKET]
    shaped = shapes.chain(((0.0, 10.0), (6.0, 10.0), (0.0, 18.0)), closed=True)
    assert [loop.role for loop in with_roles([(HEAD, ""), (shaped, "holes that are there")])] == ["outline", POCKET], "no drill made it"


def test_every_layer_and_group_of_an_export_tells_its_style():
    assert all(style_on(layer) == style == style_on(group_name(style)) for style, layer in LAYERS.items())
    assert style_on("Layer 1") is None


CORNERS = {
    "a tip like the nut": ((-21.5, 0), (21.5, 0), (35, 30), (35, 150), (21, 180), (-21, 180), (-35, 150), (-35, 30)),
    "a nut like a ukulele's": ((-14, 0), (14, 0), (25, 20), (22, 110), (-22, 110), (-25, 20)),
    "wood behind the nut line": ((-21.5, -12), (21.5, -12), (21.5, 0), (36, 30), (36, 150), (-36, 150), (-36, 30), (-21.5, 0)),
    "a nut beside its edge": ((-20, 0), (23, 0), (36, 30), (36, 150), (-36, 150), (-36, 30)),
    "a slanted nut": ((-21.5, 21.5 * math.tan(math.radians(8))), (21.5, -21.5 * math.tan(math.radians(8))), (36, 30), (36, 150), (-36, 150), (-36, 30)),
}


@pytest.mark.parametrize("kind", ["dxf", "svg"])
@pytest.mark.parametrize("paper", ["template", "wrap paper"])
@pytest.mark.parametrize("head", CORNERS)
def test_a_head_lies_where_it_lay_whatever_its_ends_are_like(head, paper, kind, tmp_path):
    """Nut line and centreline are drawn: no edge of the outline has to be guessed for the nut."""
    outline = shapes.chain(tuple((float(x), float(y)) for x, y in CORNERS[head]), closed=True)
    made = layout_from([(outline, "outline", None)], Matrix(), head, 28.0 if "ukulele" in head else 43.0)
    made = replace(made, nut=replace(made.nut, slant=8.0)) if "slanted" in head else made
    drawing, path = template_drawing(made, None) if paper == "template" else wrap_part(made, ()).drawing, tmp_path / f"own.{kind}"
    path.write_bytes(dxf_bytes(drawing) if kind == "dxf" else svg_text(drawing, "Own").encode())
    read = read_drawing(path)
    laid = place(read.outline.path, slanted=is_upright(read), nut=read.nut, up=read.up)
    assert as_far(read.outline.path.mapped(laid.matrix), loop_path(made.outline)) < 1e-3
    assert laid.slant == pytest.approx(made.nut.slant, abs=1e-4) and laid.nut_width == pytest.approx(40 if "beside" in head else made.nut.width, abs=1e-4)
