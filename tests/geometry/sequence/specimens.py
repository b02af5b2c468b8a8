"""Heads and made-up operations for the running order."""

from __future__ import annotations

from pathlib import Path

import msgspec
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.layout import Headstock
from geometry.layout.generic import RACK
from geometry.routing import drill_waste
from geometry.sequence import Before, Operation, Routing, Setup, Table, Trip
from tests.geometry.drawing.specimens import leaning_head, plain_head

SAMPLES = Path(__file__).parents[3] / "samples"
DRILLS = tuple(msgspec.structs.replace(drill, diameter=5.0, id="brad 5") if drill.diameter == 8.2 else drill
               for drill in RACK.drills)
"""The generic drills, one of them ground to the plain head's blind hole of 5."""
STOCKED = msgspec.structs.replace(RACK, drills=DRILLS)
THROUGH = Routing((Trip("face", "12 shank bearing", None, 0.0, 16.0),))
TURNED = Routing((Trip("face", "12 shank bearing", None, 0.0, 9.0), Trip("face", "12 shank bearing", None, 9.0, 10.0),
                  Trip("back", "12 shank bearing", None, 0.0, 7.0)))


def finished(layout: Headstock) -> Headstock:
    """The same with a finish on it."""
    return msgspec.structs.replace(layout, blank=msgspec.structs.replace(layout.blank, finish=True))


def demo() -> Headstock:
    """The invented twelve-string of the samples."""
    return read(SAMPLES / "twelve-string-mixed.headstock.json")


def stocked(**changes: object) -> Headstock:
    """The plain head with a rack that holds every drill it needs."""
    return plain_head(**({"rack": STOCKED} | changes))


def with_waste(routing: Routing) -> Routing:
    """The same routing of the plain head's slot, its waste drilled first."""
    return replace(routing, waste=drill_waste(stocked().slots[0], stocked().blank, stocked().rack))


def leaning(**changes: object) -> Headstock:
    """The head with leaning edges, with a rack."""
    return msgspec.structs.replace(leaning_head(), **({"rack": STOCKED} | changes))


def work(id: str, machine: str = "drill press", bit: str | None = "a", table: float | None = 0.0,
         side: str | None = "face") -> Operation:
    """A made-up operation."""
    return Operation(id, "bore", id.capitalize(), "Do it.",
                     Setup(machine, bit, None if table is None else Table(table, 8.0), side))


def before(first: str, then: str, grade: str = "unsafe") -> Before:
    """A made-up edge."""
    return Before(first, then, f"{first} first.", "the wood", grade, "then")
