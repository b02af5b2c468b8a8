"""Pairs of solids that are left out without being measured have the wood or air that is wanted: all are measured here."""

import random
from itertools import combinations

import numpy as np
import pytest

from geometry.checks import hole_pairs, string_posts
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.edits import free_from_row, move_features, slide_tuner
from geometry.errors import GeometryError
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.strings.past_posts import post_solids, string_solids
from geometry.strings.rubs import air_between
from geometry.tolerance import TOUCH
from tests.property.layouts import DEMO


def _astray(seed):
    """The demo with three features anywhere, and four tuners slid along their edges."""
    chance, layout = random.Random(seed), DEMO
    for id in chance.sample([one.id for group in (DEMO.tuners, DEMO.pins) for one in group], 7):
        try:
            if " side " in id:
                layout = slide_tuner(layout, id, chance.uniform(5, 190))
            else:
                layout = move_features(free_from_row(layout, id) if "face" in id else layout, [id],
                                       (chance.uniform(-45, 45), chance.uniform(-60, 60)))
        except GeometryError:
            pass
    return layout


@pytest.fixture(params=range(6))
def scene(request):
    return scene_of(_astray(request.param), Memo())


def test_drillings(scene):
    margins, items = scene.layout.margins, scene.items
    rows = [(one, two, margins) for i, one in enumerate(items) for two in items[i:]]
    asked = {(at, i, k): wish for at, i, k, wish, _ in hole_pairs._near(rows)}
    every = [(at, i, k) for at, (one, two, _) in enumerate(rows) for i in range(len(one.drillings)) for k in range(len(two.drillings))
             if (one is not two or one.hole_of[i] < one.hole_of[k]) and not hole_pairs.meant(one.drillings[i], two.drillings[k], (*one.drillings, *two.drillings))]
    measured = gaps(Cylinders.of([rows[at][0].drillings[i] for at, i, _ in every]),
                    Cylinders.of([rows[at][1].drillings[k] for at, _, k in every])).distance
    wishes = [hole_pairs.wanted(rows[at][0].drillings[i], rows[at][1].drillings[k], margins) for at, i, k in every]
    short = {key for key, distance, wish in zip(every, measured.tolist(), wishes, strict=True) if distance < wish - TOUCH}
    assert len(short) > 1 and len(asked) < len(every) / 5
    assert short <= asked.keys()
    assert all(asked[key] == wish for key, wish in zip(every, wishes, strict=True) if key in asked)


def test_strings_past_posts(scene):
    air = scene.layout.margins.string_air
    asked = string_posts.pairs(scene)
    strings = len(asked.items) - len(scene.items)
    kept = {(asked.items[i].tuner, asked.items[k].id) for i, k in asked.new if k >= strings}
    every = [(run, item) for run, _ in scene.runs for item in scene.items if item.frame is not None and item.id != run.tuner]
    measured = gaps(string_solids([run for run, _ in every]),
                    post_solids([(item.frame, item.pattern.post) for _, item in every])).distance
    short = {(run.tuner, item.id) for (run, item), distance in zip(every, measured.tolist(), strict=True) if distance < air - TOUCH}
    assert short <= kept and len(kept) < len(every) / 2
    assert np.isfinite(measured).all()


def test_strings_past_each_other(scene):
    air, found = scene.layout.margins.string_air, [run for run, _ in scene.runs]
    asked = string_posts.pairs(scene)
    kept = {(asked.items[i].tuner, asked.items[k].tuner) for i, k in asked.new if k < len(found)}
    every = [(one, two) for one, two in combinations(found, 2)]
    measured = gaps(string_solids([one for one, _ in every]), string_solids([two for _, two in every])).distance
    # The strings of the demo have their air at the nut: whatever is nearer was led there.
    short = {(one.tuner, two.tuner) for (one, two), distance in zip(every, measured.tolist(), strict=True) if distance < air_between(one, two, air) - TOUCH}
    assert short and short <= kept and len(kept) < len(every) / 2
