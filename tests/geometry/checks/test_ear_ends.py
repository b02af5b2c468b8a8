"""Ears that end too soon, against points of the wood that is there: the core of the blank, and the boxes of the ears."""

import random

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from geometry.book import tick_off
from geometry.checks import check
from geometry.checks.moves import Change
from geometry.checks.snags import SPOILS
from geometry.cures import apply_cure, settle
from geometry.cures.tracks import tracks
from geometry.edits import mirror_layout
from geometry.layout import Blank, Book, Ear, Headstock, Pin, Task
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


EAR = (Ear(id="ear", side="treble", width=20.0, start=-20.0, end=100.0),)  # its glue line at x = 30


def past(*corners: tuple[float, float], **parts: object) -> list:
    """Snags of a head that is 30 wide on the treble side but for these corners between y = 110 and the tip."""
    shape = loop((-40.0, 0.0), (30.0, 0.0), (30.0, 110.0), *corners, (30.0, 180.0), (-40.0, 180.0))
    return [snag for snag in check(head(outline=shape, blank=BLANK, ears=EAR, **parts)).snags if snag.kind in ("ear-too-short", "pin-to-blank")]


def test_a_corner_past_an_ear_is_told_and_a_hair_is_not() -> None:
    assert not past((30.003, 111.0), (30.003, 170.0))
    snag, = past((30.5, 110.0), (30.5, 110.5), (30.0, 110.5))
    assert snag.measured == pytest.approx(-10.5) and 30.0 < snag.where[0] < 30.5 and 110.0 < snag.where[1] < 110.5


@pytest.mark.parametrize(("y", "words"), [(97.5, "leaves 0.50 mm of wood to where no ear is"), (98.5, "stands where no ear is")])
def test_a_pin_on_an_ear_has_its_wood_to_the_ears_end(y: float, words: str) -> None:
    snag, = past(pins=(Pin(id="p", at=(40.0, y), diameter=4.0),))
    assert words in snag.text and snag.measured == pytest.approx(98.0 - y, abs=1e-9)


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(("start", "end", "y", "words"), [
    (-20.0, 150.0, 60.0, "Lengthen ear by 30.0 mm at its tip end."), (25.5, 185.0, 90.0, "Lengthen ear by 25.5 mm at its nut end."),
    (-20.0, 178.0, 174.0, "Lengthen ear by 2.0 mm at its tip end.")])
def test_a_click_makes_an_ear_longer_that_ends_too_soon(start: float, end: float, y: float, words: str, turned: bool) -> None:
    if turned:
        start, end = end, start
    ear = Ear(id="ear", side="treble", width=20.0, start=start, end=end)
    layout = head(slots=(slot(nut=y - 6.0, tip=y + 6.0),), patterns=(SIDE,), tuners=(side("a", y),), ears=(ear,))
    before = check(layout)
    of_head = next(snag for snag in before.snags if snag.kind == "ear-too-short" and "outline" in snag.between)
    cured = settle(layout, before, of_head)
    assert cured.cure == words
    assert not [snag for snag in check(apply_cure(layout, cured)).snags if snag.kind == "ear-too-short" and "outline" in snag.between]


def test_a_bore_past_the_end_of_an_ear_stays_and_the_ear_becomes_longer() -> None:
    ear = Ear(id="ear", side="treble", width=9.0, start=-20.0, end=100.0)
    layout = head(slots=(slot(),), patterns=(SIDE,), tuners=(side("a", 99.0),), ears=(ear,))
    before = check(layout)
    snag = next(snag for snag in before.snags if snag.kind == "ear-too-short" and "a" in snag.between)
    cured = settle(layout, before, snag)
    assert cured.cure == "Lengthen ear by 4.0 mm at its tip end."
    assert not [left for left in check(apply_cure(layout, cured)).snags if left.kind == "ear-too-short" and "a" in left.between]
    done = replace(layout, book=tick_off(Book(piece="real"), Task(operation="glue ear ear", features=("ear",)), 1))
    moves = [way.make(1.0) for way in tracks(done, snag)]
    assert moves and not any(isinstance(move, Change) and move.path[0] == "ears" for move in moves)
