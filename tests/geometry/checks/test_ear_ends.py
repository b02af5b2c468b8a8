"""Ears that end too soon, against points of the wood that is there: the core of the blank, and the boxes of the ears."""

import random

import numpy as np
import pytest
import shapely

from geometry.checks import check
from geometry.checks.snags import SPOILS
from geometry.edits import mirror_layout
from geometry.layout import Blank, Ear, Headstock
from geometry.solids import holes
from tests.geometry.checks.heads import SIDE, head, loop, side, slot

BLANK = Blank(bass=50.0, treble=50.0, tip=190.0, behind=20.0, thickness=16.0)


def at_random(seed: int) -> tuple[Headstock, shapely.Polygon]:
    """A head on a blank with one or two ears of one width on the treble side, and its outline."""
    chance = random.Random(seed)
    corners = [(-40.0, 0.0), (chance.uniform(25.0, 45.0), 0.0), *((chance.uniform(28.0, 46.0), float(y)) for y in range(30, 170, 35)), (20.0, 180.0), (-40.0, 180.0)]
    width, low, high = chance.uniform(4.0, 20.0), chance.uniform(-30.0, 60.0), chance.uniform(70.0, 200.0)
    ears = [(low, high)] if chance.random() < 0.6 else [(low, 80.0), (chance.choice((80.0, 95.0)), high + 30.0)]
    return head(outline=loop(*corners), blank=BLANK, slots=(slot(x=12.0),), patterns=(SIDE,), tuners=(side("a", chance.uniform(20.0, 160.0)),),
                ears=tuple(Ear(id=f"ear {k}", side="treble", width=width, start=a, end=b) for k, (a, b) in enumerate(ears))), shapely.Polygon(corners)


def wood(layout: Headstock, points: np.ndarray) -> np.ndarray:
    """Which points (x, y) lie in the core or in an ear."""
    x, y = points.T
    there = x <= layout.blank.treble - layout.ears[0].width
    for ear in layout.ears:
        there |= (y >= ear.start) & (y <= ear.end)
    return there & (x <= layout.blank.treble)


@pytest.mark.parametrize("mirrored", [False, True])
def test_what_has_no_wood_is_told_and_nothing_else(mirrored: bool) -> None:
    told, sound = 0, 0
    for seed in range(80):
        layout, outline = at_random(seed)
        found = [snag for snag in check(mirror_layout(layout) if mirrored else layout).snags if snag.kind == "ear-too-short"]
        points = np.stack(np.meshgrid(np.arange(25.05, 47.0, 0.1), np.arange(0.05, 180.0, 0.1)), axis=-1).reshape(-1, 2)
        bare = points[shapely.contains_xy(outline, *points.T) & ~wood(layout, points)]
        of_head = [snag for snag in found if "outline" in snag.between]
        assert bool(of_head) == bool(len(bare)) or len(bare) < 5
        if len(bare) > 5 and len(layout.ears) == 1:  # how far past the ear's ends the farthest point without wood lies
            ear, = layout.ears
            farthest = np.maximum(ear.start - bare[:, 1], bare[:, 1] - ear.end).max()
            assert farthest - 0.01 < max(-snag.measured for snag in of_head) < farthest + 1.5  # points miss what is slimmer than 0.1
        post = next(one for hole in holes(layout) for one in hole.drillings if one.role == "post")
        across = np.hypot(*post.direction[:2]) / abs(post.direction[0]) * post.radius
        mouth = np.column_stack([np.full(201, layout.blank.treble), post.mark[1] + np.linspace(-1.0, 1.0, 201) * across])
        spoilt = any(snag.between[0] == "a" and snag.grade == SPOILS for snag in found)
        assert spoilt == (not wood(layout, mouth).all())
        told, sound = told + bool(found), sound + (not found)
    assert told > 20 and sound > 8, (told, sound)
