"""Heads drawn on paper: in pencil, on squares, across a lamp's light, with a centreline. The middle of the line is the edge."""

import math

import numpy as np
import pytest
import shapely
from PIL import Image, ImageDraw, ImageFilter

from geometry.curves import Arc, Line, Path
from geometry.tracing.in_lines import _line, drawn_about
from geometry.tracing.plane_map import PlaneMap

CORNERS = [(-21.5, 0.0), (21.5, 0.0), (38.0, 40.0), (42.0, 150.0), (-42.0, 150.0), (-38.0, 40.0)]
HEAD = Path(tuple(Line(p, q) if k != 3 else Arc.bulging(p, q, 0.15) for k, (p, q) in enumerate(zip(CORNERS, [*CORNERS[1:], CORNERS[0]], strict=True))), True)
PER_MM = 4.5
WIDE, HIGH = 150.0, 220.0
PLACE = PlaneMap((1 / PER_MM, 0, -WIDE / 2, 0, -1 / PER_MM, HIGH - 35, 0, 0, 1))
"""From the picture to mm: the nut line lies 35 mm above its lower border."""
AT = PLACE.inverse()((0.0, 60.0))


class Paper:
    """Drawn twice as fine, so that its lines have soft edges."""

    def __init__(self, paper: int = 240) -> None:
        self._image = Image.new("L", (int(2 * WIDE * PER_MM), int(2 * HIGH * PER_MM)), paper)

    def line(self, points, shade: int, width: float):
        seen = 2 * PLACE.inverse().many(np.array(points, dtype=float)) - 0.5
        ImageDraw.Draw(self._image).line([tuple(p) for p in seen.tolist()], fill=shade, width=round(2 * width * PER_MM), joint="curve")
        return self

    def squares(self, shade: int, size: int = 5):
        for x in range(-75, 76, size):
            self.line([(x, -35), (x, 185)], shade, 0.2)
        for y in range(-35, 186, size):
            self.line([(-75, y), (75, y)], shade, 0.2)
        return self

    def fill(self, shade: int):
        seen = 2 * PLACE.inverse().many(HEAD.flatten(0.01)) - 0.5
        ImageDraw.Draw(self._image).polygon([tuple(p) for p in seen.tolist()], fill=shade)
        return self

    def seen(self, darker: float = 0.0) -> np.ndarray:
        """In colours, with grain; on the left so much darker than on the right, as a part."""
        flat = np.asarray(self._image.resize((int(WIDE * PER_MM), int(HIGH * PER_MM)), Image.Resampling.BOX).filter(ImageFilter.GaussianBlur(0.7)), float)
        light = 1.0 - darker * np.linspace(1.0, 0.0, flat.shape[1])
        grey = flat * light + np.random.default_rng(2).normal(0.0, 4.0, flat.shape)
        return np.repeat(np.clip(grey, 0, 255).astype(np.uint8)[:, :, None], 3, axis=2)


def pencil(width: float = 0.5, shade: int = 110, on: Paper | None = None) -> Paper:
    outline = HEAD.flatten(0.01)
    return (on or Paper()).line([*outline, *outline[:2]], shade, width)


def found(picture: np.ndarray):
    return drawn_about(picture, PLACE, AT, (0.0, 1.0), 130.0, lambda levels, level: levels)


@pytest.mark.parametrize(("picture", "width"), [
    (lambda: pencil().seen(), 0.5), (lambda: pencil(1.2, 60).seen(), 1.2), (lambda: pencil(shade=170).seen(darker=0.4), 0.5),
    (lambda: pencil(on=Paper().squares(190)).seen(darker=0.2), 0.5),
    (lambda: pencil().line([(0, -20), (0, 180)], 110, 0.5).line([(-60, 0), (60, 0)], 110, 0.4).seen(), 0.5)],
    ids=["pencil", "a broad pen", "faint, the light to one side", "on squares", "with centreline and nut line"])
def test_the_middle_of_the_line_is_the_edge(picture, width):
    drawn = found(picture())
    assert drawn.width == pytest.approx(width, abs=0.35)
    border, true = shapely.Polygon(drawn.edge), shapely.Polygon(HEAD.flatten(0.01))
    assert abs(border.area - true.area) / true.length < 0.04
    assert shapely.hausdorff_distance(border.exterior, true.exterior) < 0.4


@pytest.mark.parametrize("picture", [
    lambda: pencil().line([(-38, 40), (38, 40)], 110, 0.5), lambda: pencil().line([(-46, -2), (46, -2), (46, 165), (-46, 165), (-46, -2)], 110, 0.3),
    lambda: pencil(on=Paper().squares(150, 10))], ids=["a line across", "a box round it", "large squares"])
def test_neither_a_line_across_before_the_place_pressed_nor_what_is_drawn_about_the_head_changes_it(picture):
    true = shapely.Polygon(HEAD.flatten(0.01))
    border = shapely.Polygon(found(picture().seen()).edge)
    assert abs(border.area - true.area) / true.length < 0.04
    assert shapely.hausdorff_distance(border.exterior, true.exterior) < 0.7


@pytest.mark.parametrize("picture", [
    lambda: Paper().seen(), lambda: Paper().squares(150).seen(), lambda: Paper().fill(120).seen(), lambda: pencil(1.2, 40, Paper().fill(205)).seen(),
    lambda: Paper().line([(38 * math.cos(k / 9), 60 + 38 * math.sin(k / 9)) for k in range(45)], 90, 0.5).seen()],
    ids=["bare", "squares", "wood", "pale wood with a dark binding", "a line that does not close"])
def test_what_is_no_head_drawn_in_lines_is_none(picture):
    assert found(picture()) is None


@pytest.mark.parametrize(("wide", "up_to", "again", "told"), [
    (0.5, 99.0, 9.0, 0.5), (2.9, 99.0, 9.0, 2.9), (3.1, 99.0, 9.0, 0.0), (0.5, 90.0, 9.0, 0.5), (0.5, 74.0, 9.0, 0.0),
    (0.5, 99.0, 0.7, 0.5), (0.5, 99.0, 0.5, 0.0)],
    ids=["a line", "as broad as any", "broader", "with a small gap", "with a large one", "another line beyond", "another beside it"])
def test_a_line_is_told_where_it_goes_round_and_paper_lies_beyond_it(wide, up_to, again, told):
    """About a box of 40 by 80 mm that begins at (10, 10): so wide, on the right so far along, and 0.5 wide again so far beyond. Of 240 mm a
    gap may take 24."""
    across, along = np.meshgrid((np.arange(1200) + 0.5) / 20, (np.arange(2000) + 0.5) / 20)
    out = np.maximum(np.maximum(10.0 - across, across - 50.0), np.maximum(10.0 - along, along - 90.0))
    dark = (out > 0) & (out < wide) & ((along < up_to) | (across < 30)) | (out > wide + again) & (out < wide + again + 0.5)
    place = PlaneMap((1 / 20, 0.0, 0.0, 0.0, 1 / 20, 0.0, 0.0, 0.0, 1.0))
    assert _line(np.where(dark, 0.0, 255.0), 128.0, place, shapely.box(10, 10, 50, 90), (0.0, 1.0)) == pytest.approx(told, abs=0.051)
