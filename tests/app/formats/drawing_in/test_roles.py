"""Roles of loops: also of those that are nowhere wider than the chords of them stray."""

import pytest

from app.formats.drawing_in.roles import with_roles
from geometry.curves import Cubic, Line, Path
from geometry.drawing.shapes import chain

HEAD = chain(((0.0, 0.0), (50.0, 0.0), (50.0, 90.0), (0.0, 90.0)), closed=True)


def there_and_back(bulge: float) -> Path:
    """Straight there and back along a curve that is bent by so many mm, about (23, 40)."""
    p, q = (20.0, 40.0), (26.0, 40.0)
    return Path((Line(p, q), Cubic(q, (24.0, 40.0 + bulge), (22.0, 40.0 + bulge), p)), closed=True)


@pytest.mark.parametrize("bulge", [0.0, 1e-6, 1e-4, 0.1])
def test_a_loop_without_width_has_a_role_too(bulge):
    thin = there_and_back(bulge)
    assert [loop.role for loop in with_roles([(thin, "a"), (HEAD, "b")])] == ["outline", "slot"]
    assert [loop.role for loop in with_roles([(thin, "a")])] == ["outline"]


@pytest.mark.parametrize("line", [Line((0.0, 0.0), (1e-17, 1e-17)), Cubic((0.0, 0.0), (1e-17, 0.0), (0.0, 1e-17), (1e-17, 1e-17))])
def test_a_loop_that_is_no_more_than_a_point_breaks_nothing(line):
    dot, head = Path((line,), closed=True), chain(((-25.0, -5.0), (25.0, -5.0), (25.0, 90.0), (-25.0, 90.0)), closed=True)
    loops = with_roles([(dot, "a"), (head, "b")])
    assert [loop.path for loop in loops] == [head, dot] and loops[0].role == "outline"
    assert [loop.role for loop in with_roles([(dot, "a")])] == ["outline"]
