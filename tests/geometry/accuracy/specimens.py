"""Layouts for the tests of shop accuracy: small heads with round numbers, and the invented samples."""

from functools import cache
from pathlib import Path
from unittest.mock import patch

import msgspec
import numpy as np
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.accuracy.bench import Trials, bench_of
from geometry.accuracy.simulation import Simulation, simulate
from geometry.accuracy.spec import Reach
from geometry.layout import (
    Accuracy,
    Blank,
    EdgePlace,
    FreePlace,
    Headstock,
    Loop,
    Margins,
    Node,
    SingleHole,
    Slot,
    StraightSlot,
    Tuner,
    validate,
)
from geometry.layout.generic import PATTERNS, RACK

SAMPLES = Path(__file__).parents[3] / "samples"
FACE, SIDE = "face 8.8 bushing two screws", "side 6.4 post two screws"
PERFECT = Accuracy(mark=0, wander_per_50=0, tilt_degrees=0, stop=0, template=0, paper_percent=0)
WIDE = Margins(bore_outline=12, screw_outline=12, bore_bore=8, screw_any=8, bore_slot=9, rail=20, web=30, side_cover=9,
               slot_nut=60, pin_any=9, post_wall=9, string_hole=9)
"""Margins so wide that the checks tell the measure of nearly everything."""


def only(**errors: float) -> Accuracy:
    """A shop that errs in the named ways alone."""
    return replace(PERFECT, **errors)


def head(**parts: object) -> Headstock:
    """A rectangular head of 80 x 180 x 16 mm in a blank 10 mm wider on each side; nothing in it unless given."""
    box = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 180.0), (-40.0, 180.0))))
    made = Headstock(name="Test head, invented", blank=Blank(bass=50.0, treble=50.0, tip=190.0, behind=10.0,
                                                             thickness=16.0),
                     outline=box, patterns=PATTERNS, rack=RACK)
    return validate(msgspec.structs.replace(made, **parts))


def holes(*places: tuple[float, float, float], depth: float | None = None) -> tuple[SingleHole, ...]:
    """Single holes from (x, y, diameter)."""
    return tuple(SingleHole(id=f"hole {i}", at=(x, y), diameter=d, depth=depth)
                 for i, (x, y, d) in enumerate(places, 1))


def side_head(accuracy: Accuracy, along: float = 90.0, slot_x: float = 17.0, **parts: object) -> Headstock:
    """The rectangular head with one side tuner on the treble edge and a slot 13 wide from y 40 to 150."""
    slot = Slot(id="slot", shape=StraightSlot(nut_end=(slot_x, 40.0), tip_end=(slot_x, 150.0), width=13.0))
    tuner = Tuner(id="side", pattern=SIDE, place=EdgePlace(side="treble", along=along))
    return head(**({"slots": (slot,), "tuners": (tuner,), "accuracy": accuracy} | parts))


def face_head(accuracy: Accuracy, at: tuple[float, float] = (25.0, 60.0), **parts: object) -> Headstock:
    """The rectangular head with one face tuner."""
    return head(tuners=(Tuner(id="face", pattern=FACE, place=FreePlace(at=at)),), accuracy=accuracy, **parts)


@cache
def sample(name: str) -> Headstock:
    """One of the invented samples."""
    return read(SAMPLES / f"{name}.headstock.json")


def demo() -> Headstock:
    """The invented twelve-string layout."""
    return sample("twelve-string-mixed")


@cache
def crowded() -> Headstock:
    """The demo with a side tuner slid so near a face tuner's screw that margins fail often."""
    layout = demo()
    tuners = tuple(replace(t, place=replace(t.place, along=t.place.along - 4.5)) if t.id == "treble side 2" else t
                   for t in layout.tuners)
    return replace(layout, tuners=tuners)


def rough(layout: Headstock, by: float = 2.0) -> Headstock:
    """The layout in a shop that errs `by` times as much."""
    old = layout.accuracy
    return replace(layout, accuracy=Accuracy(**{f: getattr(old, f) * by for f in old.__struct_fields__}))


def brute(layout: Headstock, trials: int, seed: int) -> Simulation:
    """Every pair of holes and every chord of every wall, in every trial."""
    far = endless(len(bench_of(layout).model.recipes))
    with patch.object(Trials, "reach", lambda lot: far):
        return simulate(layout, trials, seed)


def endless(count: int) -> Reach:
    """A reach of so many drillings by which nothing is left out: farther than any headstock is large."""
    return Reach(np.full(count, 1e6), np.full(count, 1e6), 1e6, 1e6, 1e6)
