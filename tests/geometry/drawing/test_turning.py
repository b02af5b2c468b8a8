"""The head in space: what is seen from each side, against what projection formulas promise."""

import math

import numpy as np
import pytest
import shapely

from app.window.demo import demo
from geometry.curves.polygons import polygon
from geometry.drawing.solid import Round, Solid, solid
from geometry.drawing.turning import BACK, BASS_EDGE, FACE, TIP, TREBLE_EDGE, View, project, spot, turned
from geometry.layout import loop_path, slot_path

EMPTY_BOX = (np.zeros(3), np.ones(3))


def area(points: np.ndarray) -> float:
    return shapely.polygons(points).area


def drawn(body: Solid, view: View, style: str, owner: str = "") -> list[np.ndarray]:
    return [p.points for p in turned(body, view) if p.style == style and (not owner or p.owner == owner)]


@pytest.mark.parametrize("view", [FACE, BACK, TREBLE_EDGE, BASS_EDGE, TIP, View(0.7, -0.4)])
def test_turning_keeps_every_length(view: View) -> None:
    assert np.allclose(view.matrix @ view.matrix.T, np.eye(3), atol=1e-12)
    assert math.isclose(np.linalg.det(view.matrix), 1.0)


def test_each_side_is_seen_as_a_maker_would_hold_it() -> None:
    tip_of_face = (0.0, 100.0, 0.0)
    assert spot((10.0, 100.0, 5.0), FACE) == pytest.approx((10.0, 100.0))
    assert spot((10.0, 100.0, 5.0), BACK) == pytest.approx((-10.0, 100.0))
    assert spot((10.0, 100.0, 5.0), TREBLE_EDGE) == pytest.approx((5.0, 100.0))
    assert spot((10.0, 100.0, 5.0), BASS_EDGE) == pytest.approx((-5.0, 100.0))
    assert spot((10.0, 100.0, 5.0), TIP) == pytest.approx((-10.0, -5.0)), "from the tip the face is up"
    near = project(np.array([tip_of_face, (0.0, 0.0, 0.0)]), TIP)[:, 2]
    assert near[0] < near[1], "the tip is nearer than the nut"


@pytest.mark.parametrize("angle", [0.0, 0.2, 0.9, math.pi / 2])
def test_a_bore_looks_as_large_as_a_cylinder_does(angle: float) -> None:
    """Seen at an angle t from its axis a cylinder covers 2 r L sin t + pi r^2 |cos t| (projection of a convex body)."""
    r, length = 5.0, 30.0
    body = Solid(None, (), (Round("a", "post bore", np.zeros(3), np.array([0.0, 0.0, length]), r),), (), (), EMPTY_BOX)
    (points,) = drawn(body, View(angle, 0.0), "post bore")
    exact = 2 * r * length * math.sin(angle) + math.pi * r * r * math.cos(angle)
    # 28 chords round an end lose at most 1 - sin(2 pi / 28) / (2 pi / 28), under 0.9 %.
    assert 0.99 * exact <= area(points) <= exact + 1e-9


def test_the_face_is_the_outline_with_its_slots_free() -> None:
    layout = demo()
    face = next(p for p in turned(solid(layout), FACE) if p.style == "solid face")
    outline = polygon(loop_path(layout.outline)).area
    slots = sum(polygon(slot_path(slot)).area for slot in layout.slots)
    seen = area(face.points) - sum(area(opening) for opening in face.openings)
    assert seen == pytest.approx(outline - slots, rel=1e-3)


def test_through_slots_are_seen_through_squarely_and_hidden_from_the_edge() -> None:
    layout = demo()
    body = solid(layout)
    free = sum(area(points) for points in drawn(body, FACE, "solid sky"))
    assert free == pytest.approx(sum(polygon(slot_path(s)).area for s in layout.slots), rel=1e-3)
    assert not drawn(body, TREBLE_EDGE, "solid sky")


def test_the_walls_seen_from_the_edge_are_as_high_as_the_wood_is_thick() -> None:
    layout = demo()
    walls = shapely.union_all([shapely.polygons(p).buffer(1e-6) for p in drawn(solid(layout), TREBLE_EDGE, "solid wall")])
    low, high = loop_path(layout.outline).box[1::2]
    assert walls.area == pytest.approx(layout.blank.thickness * (high - low), rel=1e-3)


def test_a_side_bore_is_continued_to_its_mark_on_the_square_edge() -> None:
    layout = demo()
    body = solid(layout)
    ends = [points for owner, points in body.axes if owner == "treble side 3"]
    assert ends and all(end[1][0] == pytest.approx(layout.blank.treble) for end in ends)


def test_a_head_without_anything_is_only_its_blank() -> None:
    layout = demo()
    from msgspec.structs import replace
    bare = replace(layout, slots=(), rows=(), tuners=(), pins=(), holes=())
    styles = {p.style for p in turned(solid(bare), View(0.3, 0.2))}
    assert styles <= {"fold", "solid wood", "solid wall", "solid face", "solid edge", "solid far edge"}
