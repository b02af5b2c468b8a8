"""A photo taken askew in poor light: laid, straightened by the sheet, traced, and held against the outline it was made of."""

import io
from pathlib import Path as File

import numpy as np
import pytest
import shapely
from msgspec.structs import replace
from PIL import Image, ImageDraw

from app.formats import headstock
from app.formats.picture_in import grey_of, read_picture
from app.window.tracing.trace import propose
from geometry.errors import GeometryError
from geometry.layout import Nut, loop_path
from geometry.layout.picture import Picture
from geometry.tracing.catching import caught, corner_near
from geometry.tracing.edges_of import edge_about
from geometry.tracing.plane_map import laid, straightened
from tests.geometry.tracing.photos import SHEET, Photo

SAMPLES = File(__file__).parents[3] / "samples"
NUT = Nut(width=43.0)
CLOSE = 0.3
"""mm within which the traced outline has to lie."""


@pytest.fixture(scope="module")
def outline():
    return loop_path(headstock.read(SAMPLES / "three-a-side.headstock.json").outline)


@pytest.fixture(scope="module")
def photo(outline) -> Photo:
    return Photo(outline)


@pytest.fixture(scope="module")
def read(photo, tmp_path_factory):
    file = tmp_path_factory.mktemp("photo") / "head.jpg"
    file.write_bytes(photo.jpeg)
    return read_picture(file)


def placed(photo, read, hand: float = 0.0):
    """The map that a maker gets whose marks stray by so many points and are then caught by the corners."""
    rng = np.random.default_rng(5)
    k, grey = read.width / photo.size[0], grey_of(read.jpeg)

    def mark(at):
        there = tuple(np.array(at) * k + rng.uniform(-hand, hand, 2))
        return caught(grey, there, hand) if hand else there

    flat = straightened([mark(photo.corner(c)) for c in "1234"], *SHEET)
    return laid(flat, mark(photo.at(-21.5, 0.0)), mark(photo.at(21.5, 0.0)))


def test_a_picture_of_twelve_million_points_is_read_reduced(photo, read):
    assert photo.size[0] * photo.size[1] == 12_000_000
    assert read.width * read.height < photo.size[0] * photo.size[1]
    assert read.width / read.height == pytest.approx(0.75, abs=0.001)


def test_the_sheet_sets_the_picture_straight(photo, read):
    place, k = placed(photo, read), read.width / photo.size[0]
    for at in ((0.0, 0.0), (-40.0, 150.0), (40.0, 150.0), (0.0, 168.0), (35.0, 29.0)):
        u, v = photo.at(*at)
        assert place((u * k, v * k)) == pytest.approx(at, abs=0.02)


def test_marks_are_caught_by_the_corners_of_sheet_and_nut(photo, read):
    k, grey = read.width / photo.size[0], grey_of(read.jpeg)
    for at in (*(photo.corner(c) for c in "1234"), photo.at(-21.5, 0.0), photo.at(21.5, 0.0)):
        true = np.array(at) * k
        for stray in ((5.0, -4.0), (-6.0, 2.0)):
            found = corner_near(grey, tuple(true + stray))
            assert found is not None and np.hypot(*(np.array(found) - true)) < 0.5, "half a point of the picture"
    assert corner_near(grey, (600.0, 1000.0)) is None, "bare paper"
    assert corner_near(grey, tuple(np.array(photo.at(-36.5, 90.0)) * k)) is None, "one straight edge"
    assert corner_near(grey, (2.0, 2.0)) is None, "the border of the picture"


def test_the_outline_comes_back_within_three_tenths(photo, read, outline):
    place, k = placed(photo, read, 9.0), read.width / photo.size[0]
    picture = Picture(name="head.jpg", jpeg=read.jpeg, width=read.width, height=read.height, place=place.rows)
    inside = tuple(c * k for c in photo.at(0.0, 90.0))
    made = propose(picture, NUT, inside, None, 0.15, None)
    traced, true = (shapely.segmentize(shapely.LineString(path.flatten(0.01)), 0.5) for path in (made.path, outline))
    apart = shapely.hausdorff_distance(traced, true)
    assert apart < CLOSE, f"{apart:.3f} mm"
    assert made.deviation < CLOSE
    # The two corners at the nut are kept, and nothing else became one.
    corners = made.path.corners(np.radians(25))
    assert len(corners) == 2
    for index, _ in corners:
        assert min(np.hypot(*(np.array(made.path.segments[index].start) - p)) for p in ((-21.5, 0.0), (21.5, 0.0))) < 0.5
    assert len(made.path.segments) <= 24
    assert made.path.box[1] == 0.0, "its straight end lies on the nut line"


@pytest.mark.parametrize("behind", [24, 200], ids=["on the sheet", "out of the picture"])
@pytest.mark.parametrize(("wood", "paper"), [(90, 240), (230, 60)], ids=["dark wood", "pale wood"])
def test_a_neck_that_goes_on_behind_the_nut_is_cut_there(behind, wood, paper):
    """A head 60 wide and 120 long with shoulders that hang 12 below the nut line, on a neck of 43; half a mm to a point."""
    drawn = Image.new("L", (500, 640), paper)
    pen = ImageDraw.Draw(drawn)
    head = [(-21.5, 0), (-21.5, 14), (-32, 14), (-36, -12), (-60, 40), (-30, 120), (30, 120), (60, 40), (36, -12), (32, 14), (21.5, 14), (21.5, 0)]
    for shape in (head, [(-21.5, 2), (21.5, 2), (21.5, -behind), (-21.5, -behind)]):
        pen.polygon([(250 + 2 * x, 400 - 2 * y) for x, y in shape], fill=wood)
    kept = io.BytesIO()
    drawn.save(kept, "JPEG", quality=95)
    picture = Picture(name="neck.jpg", jpeg=kept.getvalue(), width=500, height=640, place=(0.5, 0.0, -125.0, 0.0, -0.5, 200.0, 0.0, 0.0, 1.0))
    made = propose(picture, NUT, (250.0, 250.0), None, 0.3, None)
    assert abs(made.path.area) == pytest.approx(shapely.Polygon(head).area, rel=0.02)
    assert made.path.box[1] == pytest.approx(-12, abs=1.0), "the shoulders stay"
    line = [one for one in made.path.segments if abs(one.start[1]) < 1e-9 and abs(one.end[1]) < 1e-9]
    assert [abs(one.end[0] - one.start[0]) for one in line] == [pytest.approx(43, abs=0.7)]


def test_the_head_is_followed_and_not_the_sheet_that_it_lies_on():
    grey = np.full((120, 100), 110.0)
    grey[10:110, 10:90] = 225.0
    grey[30:90, 35:65] = 90.0
    grey[55:65, 45:55] = 230.0
    head = edge_about(grey, 160.0, (40.0, 40.0))
    assert (np.ptp(head[:, 0]), np.ptp(head[:, 1])) == pytest.approx((30, 60), abs=1.5)
    light_on_dark = edge_about(255.0 - grey, 95.0, (40.0, 40.0))
    assert np.ptp(light_on_dark[:, 0]) == pytest.approx(30, abs=1.5)
    # On the paper itself the sheet is meant.
    assert np.ptp(edge_about(grey, 160.0, (20.0, 100.0))[:, 0]) == pytest.approx(80, abs=1.5)


@pytest.mark.parametrize("turned", [0, 45])
@pytest.mark.parametrize("at", [(200, 200), (230, 200)], ids=["inside", "in a hole"])
def test_a_head_drawn_in_lines_on_a_sheet_whose_edges_are_seen_is_followed(turned, at):
    """A light sheet, 210 mm wide, on a dark table, half a mm to a point; the line round the head is 4 points thick."""
    drawn = Image.new("L", (700, 900), 60)
    pen = ImageDraw.Draw(drawn)
    c, s = np.cos(np.radians(turned)), np.sin(np.radians(turned))

    def lie(*corners):
        return [(200 + c * (x - 200) - s * (y - 200) + 150, 200 + s * (x - 200) + c * (y - 200) + 250) for x, y in corners]
    pen.polygon(lie((0, -50), (420, -50), (420, 544), (0, 544)), fill=235)
    head = lie((156, 380), (120, 300), (120, 60), (280, 60), (280, 300), (244, 380))
    pen.line([*head, *head[:2]], fill=50, width=4)
    (x, y), = lie((230, 200))
    pen.ellipse((x - 10, y - 10, x + 10, y + 10), outline=50, width=2)
    kept = io.BytesIO()
    drawn.save(kept, "JPEG", quality=95)
    picture = Picture(name="sketch.jpg", jpeg=kept.getvalue(), width=700, height=900, place=(0.5, 0.0, 0.0, 0.0, -0.5, 0.0, 0.0, 0.0, 1.0))
    made = propose(picture, NUT, lie(at)[0], None, 0.3, None)
    whole = shapely.Polygon(head).area / 4
    assert abs(made.path.area) == pytest.approx(whole, rel=0.04)


def test_pale_wood_on_a_sheet_on_a_dark_table_is_followed():
    """What parts the table from sheet and wood leaves no edge between these."""
    drawn = Image.new("L", (700, 900), 90)
    pen = ImageDraw.Draw(drawn)
    pen.rectangle((100, 100, 520, 694), fill=240)
    head = [(256, 530), (220, 450), (220, 210), (380, 210), (380, 450), (344, 530)]
    pen.polygon(head, fill=180)
    kept = io.BytesIO()
    drawn.save(kept, "JPEG", quality=95)
    picture = Picture(name="pale.jpg", jpeg=kept.getvalue(), width=700, height=900, place=(0.5, 0.0, 0.0, 0.0, -0.5, 0.0, 0.0, 0.0, 1.0))
    made = propose(picture, NUT, (300.0, 350.0), None, 0.3, None)
    assert 185 < made.level < 235
    assert abs(made.path.area) == pytest.approx(shapely.Polygon(head).area / 4, rel=0.02)
    with pytest.raises(GeometryError, match="shift the level of grey"):
        propose(picture, NUT, (300.0, 350.0), 130.0, 0.3, None)
    with pytest.raises(GeometryError, match="laid larger than it is"):
        propose(replace(picture, place=(1.0, 0.0, 0.0, 0.0, -1.0, 0.0, 0.0, 0.0, 1.0)), NUT, (300.0, 350.0), None, 0.3, None)
    with pytest.raises(GeometryError, match="No closed edge runs round"):
        propose(picture, NUT, (20.0, 20.0), None, 0.3, None)
