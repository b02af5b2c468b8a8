"""Which strings have too little air on their way to their posts: to posts, to the wood beside a slot, to the screws of retainers, to each other.

Each is told by two words: whether the string has less than its air there, and whether it runs into what is there.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import combinations

import numpy as np

from geometry import vectors as v
from geometry.layout.headstock import Headstock
from geometry.layout.slots import SingleHole, StraightSlot, slot_path
from geometry.solids.distance import clear
from geometry.solids.frames import Frame
from geometry.solids.walls import Wall
from geometry.strings.dive import dives_into
from geometry.strings.past_posts import string_solids, too_near
from geometry.strings.runs import Run, carriers
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

Rub = tuple[bool, bool]
"""(less than the air that is wanted, less than none)"""


def air_between(one: Run, two: Run, air: float) -> float:
    """The air (mm) that two strings want between them of the `air` that strings want: those of one course lie as close as the maker sets
    them in the nut, are tuned together and sound together, and want no more than not to touch."""
    return 0.0 if one.course and one.course == two.course else air


def surely_apart(one: Run, two: Run, air: float) -> bool:
    """Whether two strings need not be measured: as seen on the face they have so much air (mm), or only draw apart from the nut.

    How far apart they are at one level changes evenly, so between the lower of the two places at the nut and the end of the
    shorter one it is least at one of these; square to the longer one it is no less than its share of that. Strings that
    draw apart are as near at the nut as anywhere, and what they have there is the nut's concern. False says nothing.
    """
    air = air_between(one, two, air)
    near, far = min(one.nut[1], two.nut[1]), min(one.post[1], two.post[1])
    rise, other_rise = one.post[1] - one.nut[1], two.post[1] - two.nut[1]
    if far <= max(one.nut[1], two.nut[1]):
        return False
    a, b = (one.post[0] - one.nut[0]) / rise, (two.post[0] - two.nut[0]) / other_rise
    at_nut = two.nut[0] + b * (near - two.nut[1]) - one.nut[0] - a * (near - one.nut[1])
    at_end = at_nut + (b - a) * (far - near)
    if at_nut * at_end <= 0:
        return False
    start, end = abs(at_nut), abs(at_end)
    if end >= start - TOUCH:
        return True
    steepest = max(abs(a), abs(b))
    return end / math.sqrt(1 + steepest * steepest) - (one.diameter + two.diameter) / 2 >= air


def screw_air(hole: SingleHole, run: Run) -> tuple[float, Vec2, float] | None:
    """(air between a string and the screw of a retainer as seen on the face in mm, where on the string, how high it is there in mm); None
    where it passes below the face. The screw is taken to be no thinner than its pilot."""
    near = v.nearest_between(run.nut, run.post, hole.at)
    height = run.level(v.distance(run.nut, near))
    return None if height < -run.diameter / 2 else (v.distance(near, hole.at) - (hole.diameter + run.diameter) / 2, near, height)


def rubs_alone(layout: Headstock, placed: dict[str, Frame], runs: Sequence[Run]) -> list[tuple[Rub, float]]:
    """Of each string by itself: to the posts of other tuners, over the end of the slot that it dives into and beside it, to screws.
    With each how much of its air lacks over the end, mm: another ramp frees it, so that is tight, never in the way."""
    air = layout.margins.string_air
    posts = {tuner.id: (placed[tuner.id], layout.pattern(tuner.pattern).post) for tuner in layout.tuners if tuner.id in placed}
    found = too_near(runs, posts, air)
    gaps: list[list[float]] = [[] for _ in runs]
    lacking = [0.0] * len(runs)
    for slot in layout.to_rout:
        wall = Wall(slot_path(slot))
        if isinstance(slot.shape, StraightSlot) or wall.crossing is None:
            for i, one in enumerate(dives_into(runs, slot, wall)):
                if one is not None:
                    gaps[i].append(one.beside(air + TOUCH).air)
                    lacking[i] = max(lacking[i], air - one.end(air + TOUCH).air)
    screws = carriers(layout)
    for own, run in zip(gaps, runs, strict=True):
        own += [told[0] for hole in screws if (told := screw_air(hole, run)) is not None]
    return [((near or lacks > TOUCH or least < air - TOUCH, into or least < -TOUCH), lacks)
            for (near, into), lacks, least in zip(found, lacking, (min(own, default=math.inf) for own in gaps), strict=True)]


def rubs_between(pairs: Sequence[tuple[Run, Run]], air: float) -> list[Rub]:
    """Of each pair of strings; `air` is what strings of two courses want. Those that only draw apart from the nut have what the nut gives them."""
    found = np.zeros((len(pairs), 2), dtype=bool)
    legs = [(i, a, b) for i, (one, two) in enumerate(pairs) if not surely_apart(one, two, air) for a in one.legs for b in two.legs]
    wanted = np.array([air_between(one, two, air) for _, one, two in legs])
    if legs:
        whose, ones, twos = zip(*legs, strict=True)
        solids = string_solids(ones), string_solids(twos)
        for k, needed in enumerate((wanted, np.zeros(len(legs)))):
            found[np.array(whose)[~clear(*solids, needed)], k] = True
    return [(bool(near), bool(into)) for near, into in found]


def rubbing(layout: Headstock, placed: dict[str, Frame], runs: Sequence[Run]) -> int:
    """How many of some strings have less than their air anywhere."""
    pairs = list(combinations(range(len(runs)), 2))
    between = rubs_between([(runs[i], runs[k]) for i, k in pairs], layout.margins.string_air)
    near = {i for i, ((less, _), _) in enumerate(rubs_alone(layout, placed, runs)) if less}
    return len(near.union(*(pair for pair, (less, _) in zip(pairs, between, strict=True) if less)))
