"""Followers on a wall into which side bores open: what is left to rub on, and how far they sink in, by hand and by trying depths."""

import math
from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.layout import Router, RouterBit
from geometry.routing import plan_routing
from geometry.routing.depth import Job
from geometry.routing.follower import follower_of
from geometry.routing.mouths import Mouth, mouths, sunk, sunk_words
from geometry.routing.passes import Pass
from geometry.sequence import operations

SLOTTED = read(Path("samples/slotted-three-a-side.headstock.json"))
JOB = Job(of="slot", depth=20.0, thickness=20.0, template=6.0, contact=3.0, light=True, entry=14.0, hard=False, router=Router(), width=16.0,
          widest=16.0)
SHORT = RouterBit(id="short", cutter=12.0, cutting_length=8.0, shank=8.0, stick_out=40.0, bearing="shank", bearing_diameter=12.0, bearing_height=5.0)
TIP = RouterBit(id="tip", cutter=12.7, cutting_length=25.0, shank=6.35, stick_out=45.0, bearing="tip", bearing_diameter=12.7, bearing_height=5.0)
MOUTH = Mouth("tuner", 10.0, 5.0)


def on_wall(bit, side, ends, contact=5.0):
    return Pass(side, follower_of(bit, None), 0.0, ends, "wall already cut", contact, True)


def tried(radius, low, high, mouth):
    """How far a disc gets into the gap of a bore that stays open at every depth that it rubs on, in steps of 0.001 mm."""
    gap = min(math.sqrt(max(0.0, mouth.radius ** 2 - (z - mouth.depth) ** 2)) for z in np.linspace(low, high, 501))
    turn = np.linspace(0.0, math.pi / 2, 4001)
    for deep in np.arange(0.0, radius, 0.001):
        inside = radius * np.sin(turn) - (radius - deep) > 0  # parts of the disc past the wall's surface
        if (radius * np.cos(turn[inside]) > gap + 1e-9).any():
            return deep
    return radius


@pytest.mark.parametrize(("bit", "side", "ends", "zone"), [
    (SHORT, "face", 20.0, (7.0, 12.0)),  # right above the cutting edges: from 20 - 8 - 5 to 20 - 8
    (SHORT, "face", 19.0, (6.0, 11.0)),
    (TIP, "back", 9.0, (6.0, 11.0))])  # ahead of them: 9 to 14 from the back
def test_a_follower_sinks_into_a_mouth_that_is_open_all_along_it(bit, side, ends, zone):
    found = sunk(on_wall(bit, side, ends), JOB, [MOUTH])
    assert found.wall == 0.0 and found.of == ("tuner",)
    half = math.sqrt(25.0 - max(abs(z - 10.0) for z in zone) ** 2)
    radius = bit.cutter / 2
    assert found.deep == pytest.approx(radius - math.sqrt(radius ** 2 - half ** 2), abs=1e-9)
    assert found.deep == pytest.approx(tried(radius, *zone, MOUTH), abs=0.005)


def test_a_follower_slimmer_than_the_mouth_goes_right_in():
    """Two millimetres off its axis a bore of 10 is 9.16 wide: a bearing of 9 finds no wall to either side, one of 9.2 does."""
    slim, wide = (replace(SHORT, cutter=size, bearing_diameter=size, bearing_height=4.0) for size in (9.0, 9.2))
    found = sunk(on_wall(slim, "face", 20.0, contact=4.0), JOB, [MOUTH])
    assert math.isinf(found.deep) and found.wall == 0.0
    assert "wider than the follower. It goes right into them" in sunk_words(found, on_wall(slim, "face", 20.0, contact=4.0), JOB)
    stays = sunk(on_wall(wide, "face", 20.0, contact=4.0), JOB, [MOUTH])
    assert stays.deep == pytest.approx(4.6 - math.sqrt(4.6 ** 2 - 21.0), abs=1e-9)


def test_wall_above_the_mouth_carries_it_as_far_as_the_margin_asks():
    """From 3 to 8 below the face; the bore begins at 5: 2 mm are left of the 3 that are wanted. From 1 to 6: 4 mm, enough."""
    found = sunk(on_wall(SHORT, "face", 16.0), JOB, [MOUTH])
    assert found.wall == pytest.approx(2.0) and found.deep == 0.0
    assert sunk_words(found, on_wall(SHORT, "face", 16.0), JOB) == (
        "Face up, from 0 mm to 16 mm deep: at the mouths of the side bores of tuner only 2 mm of wall are left to rub on, and 3 mm are wanted. "
        "Plug these bores flush with dowels before.")
    assert sunk(on_wall(SHORT, "face", 14.0), JOB, [MOUTH]) is None


def test_a_template_guides_past_every_mouth():
    assert sunk(replace(on_wall(SHORT, "face", 20.0), rubs_on="template"), JOB, [MOUTH]) is None


def test_a_bore_narrower_than_the_bearing_is_high_leaves_wall_on_either_side():
    assert sunk(on_wall(SHORT, "face", 20.0), JOB, [Mouth("screw", 10.0, 1.0)]) is None


def test_side_bores_open_into_both_the_slot_that_they_reach_and_the_outline():
    """Each of the six bores opens into the slot on its own side alone."""
    there = {of: {mouth.of for mouth in mouths(SLOTTED, of)} for of in ("bass slot", "treble slot", "outline")}
    assert len(there["bass slot"]) == len(there["treble slot"]) == 3 and not there["bass slot"] & there["treble slot"]
    assert there["outline"] == there["bass slot"] | there["treble slot"]


def test_plan_and_running_order_say_what_to_do_about_it():
    layout = replace(SLOTTED, rack=replace(SLOTTED.rack, bits=(SHORT,)), template=replace(SLOTTED.template, bit="short", bush=None))
    routing = plan_routing(layout)
    for plan in routing.all:
        assert any("there is no wall to rub on" in text and "up to 1.53 mm" in text and "dowels" in text for text in plan.best.cautions), plan.of
    told = [op for op in operations(layout, routing) if any("no wall to rub on" in text for text in op.cautions)]
    assert [op.id for op in told] == ["rout bass slot 2", "rout treble slot 2", "rout outline 2"]


def test_bits_that_are_guided_above_the_bores_say_nothing():
    for plan in plan_routing(SLOTTED).all:
        assert not any("mouths" in text for text in plan.best.cautions)
