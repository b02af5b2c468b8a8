"""A pocket beside an outline that lies wholly below the nut line: there is no head to take wood from."""

from types import SimpleNamespace

import pytest
import shapely

from geometry.checks.pockets import beside_outline
from geometry.layout import Nut


@pytest.mark.parametrize("top", [-30.0, -1.0, -0.5])
def test_an_outline_below_the_nut_line_has_no_wood_beside_a_pocket(top):
    area = shapely.box(-20.0, top - 50.0, 20.0, top)
    outline = SimpleNamespace(area=area, line=area.exterior, path=SimpleNamespace(box=area.bounds))
    opening = SimpleNamespace(wall=SimpleNamespace(area=shapely.box(-5.0, top - 20.0, 5.0, top - 10.0)))
    assert beside_outline(opening, outline, None, Nut(), 3.0) is None
