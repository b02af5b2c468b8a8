"""What stays in memory: bounded caches, histories of layouts alone, no gigabytes on the way to one number."""

import gc
import math
import random
import tracemalloc
import weakref
from functools import _lru_cache_wrapper

import numpy as np
import pytest
import shapely

from geometry.by_size import FEW, HUGE, remembered_by_size, remembered_of_each
from geometry.checks import LiveCheck
from geometry.curves import Path
from geometry.edits import move_features
from geometry.layout.outline import Loop, Node, loop_path
from geometry.solids.sums import _swept, area_sum, united
from geometry.solids.walls import Wall
from tests.collector import call_back
from tests.property.layouts import DEMO


class Thing:
    def __init__(self, size):
        self.size = size


def forget():
    """Empty all that is remembered; the caches themselves were made before any test began."""
    call_back()
    for one in [one for one in gc.get_objects() if isinstance(one, _lru_cache_wrapper)]:
        one.cache_clear()
    gc.collect()


def alive(kind):
    return sum(type(one) is kind for one in gc.get_objects())


def test_few_huge_things_and_many_ordinary_ones_are_remembered():
    made = []

    @remembered_by_size(100, lambda thing: thing.size)
    def shape(thing):
        made.append(thing)
        return Thing(thing.size)

    things = [Thing(HUGE if i % 2 else HUGE + 1) for i in range(100)]
    kept = [weakref.ref(shape(thing)) for thing in things]
    gc.collect()
    assert [sum(one() is not None for one in kept[start::2]) for start in (0, 1)] == [FEW, 50]
    assert shape(things[-1]) is kept[-1]() and shape(things[-2]) is kept[-2]() and len(made) == 100


def test_small_results_of_a_huge_thing_stay_and_keep_few_huge_things():
    made = []

    @remembered_of_each(100, lambda thing: thing.size, each=50)
    def part(thing, number):
        made.append(number)
        return thing.size + number

    things = [Thing(HUGE + 1) for _ in range(20)]
    kept = [weakref.ref(thing) for thing in things]
    for thing in things:
        assert [part(thing, number) for _ in range(2) for number in range(50)] == 2 * [HUGE + 1 + number for number in range(50)]
    assert len(made) == 20 * 50, "each once, although there are more results than FEW of a huge thing"
    del thing, things
    gc.collect()
    assert sum(one() is not None for one in kept) == FEW


def test_dragging_a_node_of_a_huge_outline_keeps_a_few_paths():
    count = 2000
    nodes = tuple(Node(at=(50 * math.cos(2 * math.pi * i / count), 50 * math.sin(2 * math.pi * i / count))) for i in range(count))
    kept = []
    for step in range(40):
        loop = Loop(nodes=(Node(at=(50.0 + step / 10, 0.0)), *nodes[1:]))
        kept.append(weakref.ref(loop_path(loop)))
        assert loop_path(loop) is kept[-1]()
    del loop
    gc.collect()
    assert sum(one() is not None for one in kept) == FEW


def test_a_hundred_edits_keep_layouts_but_not_what_was_derived():
    """Without what is remembered, which is bounded, a long history holds no more of it than a short one."""
    chance, layout, live = random.Random(4), DEMO, LiveCheck()
    history, counts, derived = [layout], [], []
    ids = [one.id for one in (*DEMO.slots, *DEMO.tuners, *DEMO.pins)]
    forget()
    before = weakref.WeakSet(one for one in gc.get_objects() if type(one) is Wall)
    for number in range(1, 101):
        moved = move_features(layout, [chance.choice(ids)], (chance.uniform(-0.2, 0.2), chance.uniform(-0.2, 0.2)))
        live.check(moved)
        history.append(moved)
        layout = moved
        if number in (10, 100):
            derived = [weakref.ref(one) for one in gc.get_objects() if type(one) is Wall and one not in before]
            forget()
            counts.append({kind: alive(kind) for kind in (Path, Wall, shapely.Polygon, shapely.LineString)})
    assert len(history) == 101 and counts[0] == counts[1]
    assert len(derived) > len(DEMO.slots)
    del live
    forget()
    assert not any(one() for one in derived), "a history of layouts keeps what was derived of them alive"


@pytest.mark.parametrize(("corners", "chords"), [(720, 700), (12, 40)])
def test_a_round_shape_along_a_bow_takes_little_memory(corners, chords):
    """Against the ring that a disc sweeps along an arc, which is known in closed form."""
    turn = np.linspace(0, 2 * math.pi, corners, endpoint=False)
    disc = 5 * np.stack([np.cos(turn), np.sin(turn)], axis=1)
    along = np.linspace(0, math.pi, chords + 1)
    bow = 60 * np.stack([np.cos(along), np.sin(along)], axis=1)
    tracemalloc.start()
    found = united(_swept(bow, disc))
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    # Half a ring between 55 and 65 mm, and half a disc at either end.
    assert found.area == pytest.approx(math.pi / 2 * (65**2 - 55**2) + math.pi * 25, rel=0.06 if corners < 20 else 1e-4)
    assert most < 8e6
    assert area_sum(shapely.Polygon(bow), np.vstack([bow, bow[:1]]), disc).area > found.area
