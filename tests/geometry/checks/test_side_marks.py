"""How much of the square edge a side bore leaves to the end of the blank, against points of the bore."""

import math

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.checks.snags import SPOILS, TIGHT
from geometry.layout import Blank, Headstock, Margins
from geometry.solids import holes
from tests.geometry.checks.heads import bore, head, leaning, pattern, side, slot

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
