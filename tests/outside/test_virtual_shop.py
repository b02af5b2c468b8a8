"""Whole running orders worked off on a cloud of points by their printed sentences: the head that comes out is the one drawn."""

import json
from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from app.formats.headstock import encode, read
from app.sheets.work import plan_work
from geometry.edits import mirror_layout
from geometry.layout import SingleHole
from geometry.solids import frames
from tests.outside.from_file import FromFile
from tests.outside.random_heads import at_random
from tests.outside.virtual_shop import Shop
from tests.outside.volumes import wanted

SLACK = 0.2
"""mm: sentences tell tenths, and tenths of a degree; stops are rounded down."""
HEADS = (("twelve-string-mixed", False), ("twelve-string-mixed", True), ("slotted-three-a-side", True), ("four-strings-small", False),
         ("eight-strings", False))


def cloud(head: FromFile, seed: int) -> np.ndarray:
    """Points all through the blank, more on its six sides, and most just inside and outside every hole that is wanted."""
    chance, blank = np.random.default_rng(seed), head.blank
    low, high = np.array((-blank["bass"], -blank.get("behind", 0.0), 0.0)), np.array((blank["treble"], blank["tip"], head.thick))
    everywhere = chance.uniform(low, high, (20_000, 3))
    sides = chance.uniform(low, high, (12_000, 3))
    for k in range(6):
        sides[k::6, k % 3] = chance.uniform(0.0, 0.8, 2000) + low[k % 3] if k < 3 else high[k % 3] - chance.uniform(0.0, 0.8, 2000)
    near = [everywhere, sides]
    for one in head.holes:
        across = np.cross(one.way, (0.0, 0.0, 1.0) if one.side else (1.0, 0.0, 0.0))
        up = np.cross(one.way, across)
        turn, along = chance.uniform(0, 2 * np.pi, 200), chance.uniform(-0.5, one.depth + 1.0, 200)
        out = one.radius + chance.choice((-1, 1), 200) * chance.uniform(SLACK, 0.6, 200)
        spokes = np.cos(turn)[:, None] * across + np.sin(turn)[:, None] * up
        bottom = one.start + (one.depth + chance.choice((-1, 1), 100) * chance.uniform(SLACK, 0.6, 100))[:, None] * one.way
        core = chance.uniform(0.0, one.depth, 30)
        near.append(one.start + core[:, None] * one.way + (1.0 * chance.uniform(-1, 1, 30))[:, None] * across)
        near += [one.start + along[:, None] * one.way + out[:, None] * spokes, bottom + 0.6 * one.radius * spokes[:100]]
    return np.concatenate(near)


@pytest.mark.parametrize(("name", "mirrored"), HEADS)
def test_the_running_order_makes_the_head_that_is_drawn(name, mirrored):
    layout = read(Path(f"samples/{name}.headstock.json"))
    layout = mirror_layout(layout) if mirrored else layout
    head = FromFile(json.loads(encode(layout)))
    work = plan_work(layout)
    shop = Shop(head, cloud(head, seed=3))
    plans = {plan.of: plan.best for plan in work.plans}
    for step in work.steps:
        shop.work(step, plans)
    assert shop.trouble == []
    most, least = (wanted(head, shop.points, slack) for slack in (-SLACK, SLACK))
    pins = [one for one in head.holes if one.role == "locating"]
    looked_at = (most == least) & (shop.points[:, 1] > SLACK)
    for pin in pins:  # plugged at the end
        looked_at &= np.hypot(*(shop.points[:, :2] - pin.start[:2]).T) > pin.radius + SLACK
    wrong = looked_at & (shop.wood != most)
    assert not wrong.any(), shop.points[wrong][:5]
    assert looked_at.sum() > 20_000 and (looked_at & ~most & shop.square).sum() > 3_000


def test_old_holes_are_filled_before_anything_is_drilled_into_them():
    layout = read(Path("samples/three-a-side.headstock.json"))
    posts = [frame.at(0.0, 0.0)[:2] for frame in frames(layout).values()]
    old = tuple(SingleHole(id=f"old {i}", at=(x + 3.0, y + 2.0), diameter=9.0, there=True, plugged=True) for i, (x, y) in enumerate(posts))
    shop, wrong = finished(replace(layout, holes=old, blank=replace(layout.blank, face_veneer=1.5)), 5)
    assert shop.trouble == [] and not wrong.any(), shop.points[wrong][:5]


def test_a_tilt_to_the_wrong_end_would_be_found():
    """Turned the other way, a bore of 6.8 degrees is some 4 mm off at its end."""
    layout = read(Path("samples/twelve-string-mixed.headstock.json"))
    head = FromFile(json.loads(encode(layout)))
    shop = Shop(head, cloud(head, seed=3))
    step = next(step for step in plan_work(layout).steps if step.id == "side bore treble side 3.1.1")
    words = step.setup.words()
    assert "tip end raised" in words
    shop.from_the_edge(step.id, step.words, words.replace("tip end", "nut end"))
    assert shop.trouble == []
    most, least = (wanted(head, shop.points, slack) for slack in (-SLACK, SLACK))
    assert (shop.bored & (most == least) & most & (shop.points[:, 1] > 1)).sum() > 30


@pytest.mark.parametrize(("first", "then", "missing"), [
    ("cut outline", "side bore bass side 2.1.1", "square edge is gone"),
    ("rout bass slot 1", "side bore bass side 2.1.1", "meets too little wood"),
    ("mark", "rout bass slot 1", "0 pins hold the template")])
def test_what_is_missing_in_a_wrong_order_would_be_found(first, then, missing):
    layout = read(Path("samples/twelve-string-mixed.headstock.json"))
    head, work = FromFile(json.loads(encode(layout))), plan_work(layout)
    shop, steps = Shop(head, cloud(head, seed=3)), {step.id: step for step in work.steps}
    plans = {plan.of: plan.best for plan in work.plans}
    shop.work(steps[first], plans)
    assert shop.trouble == [] or first.startswith("rout")  # its own pins are missing, too
    shop.work(steps[then], plans)
    assert any(missing in text for text in shop.trouble), shop.trouble


def finished(layout, seed: int) -> tuple[Shop, np.ndarray]:
    """The shop after all steps that can be done, and which points are not as drawn."""
    head = FromFile(json.loads(encode(layout)))
    work = plan_work(layout)
    shop = Shop(head, cloud(head, seed))
    plans = {plan.of: plan.best for plan in work.plans}
    most, least = (wanted(head, shop.points, slack) for slack in (-SLACK, SLACK))
    looked_at = (most == least) & shop.before_nut(SLACK)
    for step in work.steps:
        if step.blocked or step.setup.machine == "bench" and step.kind == "rout outline":
            if step.kind.startswith("rout"):  # no bit does it, and nothing else tells what becomes of it
                looked_at &= least
            continue
        shop.work(step, plans)
    for pin in (one for one in head.holes if one.role == "locating"):  # plugged at the end
        looked_at &= np.hypot(*(shop.points[:, :2] - pin.start[:2]).T) > pin.radius + SLACK
    return shop, looked_at & (shop.wood != most)


@pytest.mark.parametrize("seed", range(12))
def test_heads_at_random_come_out_as_drawn(seed):
    """With ears, veneers, flats, pegs, pockets, blind and drawn slots, slanted nuts, and racks in which bits are missing."""
    shop, wrong = finished(at_random(seed), seed)
    assert shop.trouble == []
    assert not wrong.any(), shop.points[wrong][:5]
