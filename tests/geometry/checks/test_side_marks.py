"""How much of the square edge a side bore leaves to the end of the blank, and what of the head is in its way, against points of the bore."""

import math
import random

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from geometry.checks import check
from geometry.checks.snags import SPOILS, TIGHT
from geometry.layout import Blank, Headstock, Margins
from geometry.solids import holes
from tests.geometry.checks.heads import bore, head, leaning, loop, pattern, side, slot

OF = pattern("of", "side", bore(diameter=12.0, surface="seat", depth=30.0))


def tilted(degrees: float, tip: float) -> Headstock:
    """A bore of 12 mm tilted by so much, near the tip end of a long blank."""
    return head(outline=leaning(degrees), slots=(slot(),), patterns=(OF,), tuners=(side("a", 150.0, OF),),
                blank=Blank(bass=50.0, treble=50.0, tip=tip, behind=20.0, thickness=16.0), margins=Margins(blank_edge=6.0))


def farthest_on_edge(layout: Headstock) -> float:
    """The farthest to the tip of a bore's lines, each led on to the square edge."""
    post = next(one for hole in holes(layout) for one in hole.drillings if one.role == "post")
    (x, y, _), (dx, dy, _) = post.start, post.direction
    along = math.hypot(dx, dy)
    return max(py + dy / dx * (layout.blank.treble - px)
               for aside in (k / 500 - 1 for k in range(1001))
               for px, py in [(x - dy / along * aside * post.radius, y + dx / along * aside * post.radius)])


@pytest.mark.parametrize("degrees", [0.0, 5.0, 10.0, 14.0])
@pytest.mark.parametrize(("over", "severity"), [(3.0, TIGHT), (-1.5, SPOILS)])
def test_what_a_tilted_bore_leaves_of_the_square_edge(degrees: float, over: float, severity: str) -> None:
    tip = farthest_on_edge(tilted(degrees, 400.0)) + over
    snag, = [s for s in check(tilted(degrees, tip)).snags if s.kind == "no-mark"]
    assert snag.grade == severity
    assert snag.measured == pytest.approx(over, abs=1e-6)
    assert snag.text == ("The bore for a leaves 3.0 mm of the square edge to the tip end of the blank; 6.0 mm wanted." if over > 0
                         else "The bore for a runs 1.5 mm past the tip end of the square edge.")


def test_a_counterbore_at_the_same_mark_leaves_less() -> None:
    of = pattern("of", "side", bore("counterbore", 16.0, "seat", depth=4.0), *OF.bores)
    end = farthest_on_edge(tilted(0.0, 400.0)) + 5.0
    snag, = [s for s in check(replace(tilted(0.0, end), patterns=(of,))).snags if s.kind == "no-mark"]
    assert snag.measured == pytest.approx(5.0 - (16.0 - 12.0) / 2)


def in_the_way(layout: Headstock, corners: list[tuple[float, float]], begins: float, over: float) -> bool:
    """Whether points of the bore lie in wood, from so many radii off its seat to so many past the square edge."""
    post = next(one for hole in holes(layout) for one in hole.drillings if one.role == "post")
    (x, y, _), (dx, dy, _), radius = post.start, post.direction, post.radius
    along = np.linspace(begins * radius, post.stop - post.depth + over * radius, 600)[:, None]
    across = np.linspace(-1.0, 1.0, 161) * radius
    return bool(shapely.contains_xy(shapely.Polygon(corners), x - dx * along - dy * across, y - dy * along + dx * across).any())


def test_a_way_through_the_head_is_told_where_points_of_the_bore_lie_in_wood() -> None:
    """Heads with notches and hooks at random. What lies less than a radius off the seat is the bore's mouth, and told of by other checks."""
    chance, told, free = random.Random(5), 0, 0
    thin = pattern("thin", "side", bore(diameter=6.0, surface="seat", depth=30.0))
    for _ in range(200):
        corners = [(-40.0, 0.0), (40.0, 0.0), *((chance.uniform(8.0, 47.0), y + chance.uniform(-9.5, 9.5)) for y in range(20, 160, 20)),
                   (40.0, 180.0), (-40.0, 180.0)]
        layout = head(outline=loop(*corners), slots=(slot(),), patterns=(thin,), tuners=(side("a", chance.uniform(20.0, 220.0), thin),))
        if next(one for hole in holes(layout) for one in hole.drillings if one.role == "post").mark is None:
            continue
        if any(snag.kind == "way-through-head" for snag in check(layout).snags):
            told += 1
            assert in_the_way(layout, corners, 1.0, 3.0)
        else:
            free += 1
            assert not in_the_way(layout, corners, 2.0, 0.0)
    assert told > 15 and free > 15, (told, free)


def test_a_seat_outside_the_square_edge_has_no_way_through_the_head() -> None:
    thin = pattern("thin", "side", bore(diameter=6.0, surface="seat", depth=30.0))
    layout = head(slots=(slot(),), patterns=(thin,), tuners=(side("a", 90.0, thin),))
    narrow = replace(layout, blank=replace(layout.blank, treble=24.0))
    kinds = [snag.kind for snag in check(narrow).snags if "a" in snag.between]
    assert "no-mark" in kinds and "way-through-head" not in kinds
