"""A hard shadow beside dark wood is no wood; what else is paler along an edge is."""

import io

import numpy as np
import pytest
import shapely
from msgspec.structs import replace
from PIL import Image, ImageDraw

from app.window.tracing.trace import propose
from geometry.layout.picture import Picture
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.shadow import shadow_beside
from tests.geometry.tracing.test_colours import BLACK, HEAD, MAPLE, MAT, OUTLINE, PAPER, at, off, photo

EBONY, WALNUT, SAPWOOD = (30, 28, 27), (75, 50, 40), (150, 120, 85)


def traced(picture: Picture):
    return propose(picture, HEAD.nut, at(0.0, 70.0), None, 0.6, None)


@pytest.mark.parametrize(("wood", "behind"), [(WALNUT, PAPER), (EBONY, PAPER), (EBONY, MAT)])
def test_a_hard_shadow_beside_dark_wood_is_left_out_and_told(wood, behind):
    made = traced(photo(wood, behind, shadow=9.0))
    assert made.shadow and off(made.path) < 0.9  # followed with its shadow it strays by 9 mm


def test_where_no_shadow_falls_none_is_told():
    made = traced(photo(EBONY, PAPER))
    assert not made.shadow and off(made.path) < 0.8


def test_a_dark_binding_of_pale_wood_is_no_shadow():
    assert not traced(photo(MAPLE, PAPER, shadow=9.0, rim=BLACK)).shadow


@pytest.mark.parametrize(("shade", "inset", "wide", "side"), [
    (SAPWOOD, 1.0, 40.0, 30.0), ((120, 120, 118), 1.0, 3.0, -99.0), ((120, 118, 116), 0.0, 3.0, 0.0)],
    ids=["a stripe of pale wood", "a grey binding all round", "light on a chamfer"])
def test_what_is_paler_along_the_edge_of_the_wood_stays(shade, inset, wide, side):
    """`inset`, `wide`: mm from the edge to where it begins, and from there to where it ends; `side`: mm from the centreline from where on it is."""
    picture = photo(EBONY, PAPER)
    with Image.open(io.BytesIO(picture.jpeg)) as opened:
        image = opened.convert("RGB")
    face = shapely.Polygon(OUTLINE.flatten(0.01))
    draw = ImageDraw.Draw(image)
    for far, fill in ((inset, shade), (inset + wide, EBONY)):
        seen = face.buffer(-far).intersection(shapely.box(side, 10.0, 99.0, 999.0))
        for part in () if seen.is_empty else shapely.get_parts(seen):
            draw.polygon([at(x, y) for x, y in part.exterior.coords], fill=fill)
    kept = io.BytesIO()
    image.save(kept, "JPEG", quality=85)
    made = traced(replace(picture, jpeg=kept.getvalue()))
    assert not made.shadow and off(made.path) < 0.9


@pytest.mark.parametrize(("wood", "shade", "all_round", "found"), [
    (EBONY, (118, 118, 115), False, True), (EBONY, (118, 118, 115), True, False), (MAPLE, (118, 118, 115), False, False),
    (EBONY, (150, 118, 84), False, False), (EBONY, (228, 228, 223), False, False)],
    ids=["a shadow", "on all sides", "darker than the wood", "coloured", "as light as the paper"])
def test_a_shadow_is_paler_than_the_wood_of_no_colour_and_on_some_sides_alone(wood, shade, all_round, found):
    """Of a square of 80 mm in a picture of two points a mm, 8 mm of which within its edge are of that shade."""
    colours = np.full((240, 240, 3), PAPER, dtype=np.float32)
    colours[40:200, 40:200] = shade
    colours[56 if all_round else 40:200, 56 if all_round else 40:184] = wood
    place = PlaneMap((0.5, 0, -60, 0, -0.5, 100, 0, 0, 1))
    shadow = shadow_beside(colours, place, shapely.box(-40, 0, 40, 80), (0.0, 1.0), np.full((50, 3), wood, dtype=np.float32))
    assert (shadow is not None) == found and (shadow is None or (shadow == shade).all())
