"""A hard shadow beside dark wood is no wood; what else is paler along an edge is."""

import io

import pytest
import shapely
from msgspec.structs import replace
from PIL import Image, ImageDraw

from app.window.tracing.trace import propose
from geometry.layout.picture import Picture
from tests.geometry.tracing.test_colours import BLACK, HEAD, MAPLE, MAT, OUTLINE, PAPER, at, off, photo

EBONY, WALNUT, SAPWOOD = (30, 28, 27), (75, 50, 40), (150, 120, 85)


def traced(picture: Picture):
    return propose(picture, HEAD.nut, at(0.0, 70.0), None, 0.6, None)


@pytest.mark.parametrize(("wood", "behind"), [(WALNUT, PAPER), (EBONY, PAPER), (EBONY, MAT)])
def test_a_hard_shadow_beside_dark_wood_is_left_out_and_told(wood, behind):
    made = traced(photo(wood, behind, shadow=True))
    assert made.shadow and off(made.path) < 0.8  # followed with its shadow it strays by 5 mm


def test_where_no_shadow_falls_none_is_told():
    made = traced(photo(EBONY, PAPER))
    assert not made.shadow and off(made.path) < 0.8


def test_a_dark_binding_of_pale_wood_is_no_shadow():
    assert not traced(photo(MAPLE, PAPER, shadow=True, rim=BLACK)).shadow


@pytest.mark.parametrize("shade", [SAPWOOD, (120, 120, 118)], ids=["a stripe of pale wood", "a grey binding all round"])
def test_what_is_paler_along_the_edge_of_the_wood_stays(shade):
    picture = photo(EBONY, PAPER)
    with Image.open(io.BytesIO(picture.jpeg)) as opened:
        image = opened.convert("RGB")
    face = shapely.Polygon(OUTLINE.flatten(0.01))
    rim = face.buffer(-1.0).intersection(shapely.box(30.0, 10.0, 99.0, 999.0)) if shade == SAPWOOD else face.buffer(-1.0)
    draw = ImageDraw.Draw(image)
    for part in shapely.get_parts(rim):
        draw.polygon([at(x, y) for x, y in part.exterior.coords], fill=shade)
    if shade != SAPWOOD:
        draw.polygon([at(x, y) for x, y in face.buffer(-4.0).exterior.coords], fill=EBONY)
    kept = io.BytesIO()
    image.save(kept, "JPEG", quality=85)
    made = traced(replace(picture, jpeg=kept.getvalue()))
    assert not made.shadow and off(made.path) < 0.9
