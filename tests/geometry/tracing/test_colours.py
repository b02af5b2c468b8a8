"""A head on a cutting mat, on a cloth as dark as it is, and beside its own shadow: parted by its colour and not by its grey; with a binding in another one."""

import io
from pathlib import Path as File

import numpy as np
import pytest
import shapely
from PIL import Image, ImageDraw, ImageFilter

from app.formats import headstock
from app.formats.picture_in import colours_of
from app.window.tracing.trace import _with_rim, propose
from geometry.layout import loop_path
from geometry.layout.picture import Picture
from geometry.tracing.colours import GREY, alike, parted
from geometry.tracing.plane_map import PlaneMap, laid, scaled
from geometry.tracing.rim import rim_about

HEAD = headstock.read(File(__file__).parents[3] / "samples" / "three-a-side.headstock.json")
OUTLINE = loop_path(HEAD.outline)
POINTS = 3.0
"""Points of the picture a mm: 150 mm across and 230 along."""
RIM = 1.8
"""mm: a binding of 1.5 with a line beside it"""
MAPLE, AMBER, BLACK, WHITE = (222, 190, 140), (205, 140, 60), (22, 22, 22), (238, 234, 222)
MAHOGANY, MAT, PAPER = (140, 85, 60), (60, 125, 95), (235, 235, 230)


def at(x: float, y: float) -> tuple[float, float]:
    """Where a place of the head is in the picture."""
    return (x + 75.0) * POINTS, (205.0 - y) * POINTS


def photo(wood, behind, grid: bool = False, shadow: float = 0.0, rim=None, blur: float = 0.8, fading: bool = False) -> Picture:
    picture = Image.new("RGB", (int(150 * POINTS), int(230 * POINTS)), behind)
    draw = ImageDraw.Draw(picture)
    if grid:
        for k in range(-7, 22):
            draw.line([at(10 * k, -30), at(10 * k, 210)], fill=(150, 190, 160), width=2)
            draw.line([at(-80, 10 * k), at(80, 10 * k)], fill=(150, 190, 160), width=2)
    if shadow:
        draw.polygon([at(x + 0.8 * shadow, y - 0.6 * shadow) for x, y in OUTLINE.flatten(0.05)], fill=tuple(c // 2 for c in behind))
    shape = shapely.Polygon(OUTLINE.flatten(0.01))
    for k in range(10 if fading else 0, 0, -1):  # under the edge, where light comes from everywhere
        draw.polygon([at(x, y) for x, y in shape.buffer(0.4 * k).exterior.coords], fill=tuple(int(c * (0.5 + 0.05 * k)) for c in behind))
    draw.polygon([at(x, y) for x, y in shape.exterior.coords], fill=rim or wood)
    if rim:
        draw.polygon([at(x, y) for x, y in shape.buffer(-RIM).exterior.coords], fill=wood)
        draw.polygon([at(-21.5 + RIM, 0), at(21.5 - RIM, 0), at(21.5 - RIM, 3), at(-21.5 + RIM, 3)], fill=wood)
    draw.polygon([at(-21.5, 0), at(21.5, 0), at(22.5, -30), at(-22.5, -30)], fill=wood)
    for x, y in ((-26, 88), (26, 88)):
        draw.ellipse([*at(x - 5, y + 5), *at(x + 5, y - 5)], fill=(20, 18, 15))
    grained = np.asarray(picture.filter(ImageFilter.GaussianBlur(blur)), np.float32)
    grained = np.clip(grained + np.random.default_rng(1).normal(0, 4, grained.shape), 0, 255).astype(np.uint8)
    kept = io.BytesIO()
    Image.fromarray(grained).save(kept, "JPEG", quality=85)
    place = laid(scaled(at(-50, 0), at(50, 0), 100.0), at(-21.5, 0), at(21.5, 0))
    return Picture(name="head", jpeg=kept.getvalue(), width=picture.width, height=picture.height, place=place.rows)


def off(path) -> float:
    """mm between a path and the outline where they are farthest apart."""
    return shapely.hausdorff_distance(*(shapely.linestrings(line.flatten(0.01)) for line in (path, OUTLINE)))


@pytest.mark.parametrize(("wood", "behind", "about"), [(MAHOGANY, MAT, {"grid": True}), (MAHOGANY, PAPER, {"shadow": 5.0})])
def test_the_head_is_followed_and_neither_the_lines_of_a_mat_nor_a_hard_shadow(wood, behind, about):
    """Also where a bore is pressed on."""
    press = (-26.0, 88.0) if about.get("shadow") else (0.0, 70.0)
    made = propose(photo(wood, behind, **about), HEAD.nut, at(*press), None, 0.6, None)
    assert off(made.path) < 0.8


@pytest.mark.parametrize(("wood", "behind", "about"), [
    (AMBER, PAPER, {"rim": BLACK}), (AMBER, MAT, {"rim": WHITE}), (MAHOGANY, MAT, {"rim": WHITE})])
def test_a_binding_in_another_colour_is_taken_along(wood, behind, about):
    made = propose(photo(wood, behind, **about), HEAD.nut, at(0.0, 70.0), None, 0.6, None)
    assert made.rim and off(made.path) < 0.8


@pytest.mark.parametrize(("wood", "behind", "about"), [
    (MAPLE, PAPER, {"shadow": 5.0}), (MAPLE, PAPER, {"fading": True}), (MAPLE, MAT, {"blur": 2.0})])
def test_a_shadow_and_an_edge_out_of_focus_are_no_binding(wood, behind, about):
    made = propose(photo(wood, behind, **about), HEAD.nut, at(0.0, 70.0), None, 0.6, None)
    assert not made.rim and off(made.path) < 1.0


def test_where_the_level_is_set_the_face_alone_is_followed():
    picture = photo(AMBER, PAPER, rim=BLACK)
    best = propose(picture, HEAD.nut, at(0.0, 70.0), None, 0.6, None)
    made = propose(picture, HEAD.nut, at(0.0, 70.0), best.level, 0.6, None)
    assert not made.rim and made.path.area < best.path.area - 200


def test_a_stray_line_of_the_edge_that_was_followed_is_no_part_of_the_head_within_its_binding():
    picture = photo(AMBER, PAPER, rim=BLACK)
    face = shapely.Polygon(OUTLINE.flatten(0.05)).buffer(-RIM)
    stray = face.union(shapely.box(0.0, 60.0, face.bounds[2] + 8.0, 60.8))
    edge = PlaneMap(picture.place).inverse().many(shapely.get_coordinates(stray.exterior))
    found, rim = _with_rim(edge, colours_of(picture.jpeg), PlaneMap(picture.place), HEAD.nut, at(0.0, 70.0))
    assert rim and PlaneMap(picture.place).many(found)[:, 0].max() == pytest.approx(OUTLINE.box[2], abs=0.4)


def test_of_an_edge_too_small_or_out_of_the_picture_no_binding_is_told():
    picture = photo(AMBER, PAPER, rim=BLACK)
    for edge in (shapely.box(-0.5, 20.0, 0.5, 21.0), shapely.box(-500.0, 20.0, 500.0, 90.0), shapely.box(-2.0, -90.0, 2.0, -50.0)):
        assert rim_about(colours_of(picture.jpeg), PlaneMap(picture.place), edge, (0.0, 1.0)) is None


def test_a_picture_without_colours_is_parted_by_its_greys():
    chance = np.random.default_rng(2)
    wood, behind = (np.repeat(chance.normal(level, 5, (80, 1)), 3, axis=1) for level in (60, 220))
    assert parted(np.zeros((4, 4, 3)), wood, behind) is None


def test_what_is_one_colour_is_not_parted_and_of_two_as_grey_as_each_other_each_has_its_level():
    chance = np.random.default_rng(3)
    red, green = (np.array(c) + chance.normal(0, 3, (80, 3)) for c in ((140, 85, 60), (60, 120, 94)))
    assert abs(GREY @ (red.mean(axis=0) - green.mean(axis=0))) < 5
    assert parted(np.zeros((4, 4, 3)), red, red) is None and parted(np.zeros((4, 4, 3)), red[:5], green) is None
    levels = parted(np.array([[(140, 85, 60), (60, 120, 94), (30, 60, 47)]]), red, green)
    assert levels[0, :2] == pytest.approx([192, 64], abs=3) and levels[0, 2] < 100  # in shadow it stays what it is


def test_a_bore_among_the_wood_does_not_count():
    wood = np.vstack([np.full((40, 3), 150.0), np.full((20, 3), 20.0)])
    assert len(alike(wood)) == 40 and len(alike(wood[:0])) == 0
