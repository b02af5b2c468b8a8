"""Long heads made of the demo over and over: many more tuners at the same density. Invented, to see how the checks grow."""

from msgspec.structs import replace

from geometry.layout import EdgePlace, Flat, FreePlace, Headstock, Loop, Node, Pin, Slot, StraightSlot
from geometry.layout.edges import edge
from tests.property.layouts import DEMO

PITCH = 150.0
"""mm from one dozen to the next"""
_HALF = 45.0
_SIDES = (("bass", -1.0), ("treble", 1.0))


def many(dozens: int) -> Headstock:
    """A head of so many dozens of tuners, with two slots a dozen. The strings lead to the first dozen alone."""
    long = PITCH * dozens
    ys = [PITCH * k for k in range(dozens + 1)]
    nodes = [Node(at=(_HALF, y), bulge=0.01) for y in ys[:-1]] + [Node(at=(_HALF, long)), Node(at=(-_HALF, long), bulge=0.01)]
    nodes += [Node(at=(-_HALF, y), bulge=0.01) for y in reversed(ys[1:-1])] + [Node(at=(-_HALF, 0.0))]
    outline = Loop(nodes=tuple(nodes))
    face, side = (next(p.id for p in DEMO.patterns if p.mount == mount) for mount in ("face", "side"))
    own = {tuner.id: tuner for tuner in DEMO.tuners}
    tuners, slots = [], []
    for k, y0 in enumerate(ys[:-1]):
        for name, sign in _SIDES:
            for i in range(3):
                id = f"{name} face {i + 1}"
                tuners.append(replace(own[id], id=id if k == 0 else f"{id} of {k}", pattern=face, string=own[id].string if k == 0 else None,
                                      place=FreePlace(at=(sign * 33.5, y0 + 25 + 43 * i))))
                id = f"{name} side {i + 1}"
                along = edge(outline, name).nearest((sign * _HALF, y0 + 46.5 + 43 * i)).along
                tuners.append(replace(own[id], id=id if k == 0 else f"{id} of {k}", pattern=side, string=own[id].string if k == 0 else None,
                                      place=EdgePlace(side=name, along=along)))
            slots.append(Slot(id=f"{name} slot {k}", shape=StraightSlot(
                nut_end=(sign * 14.9, y0 + 15), tip_end=(sign * 14.9, y0 + 138), width=13.0)))
    pins = (Pin(id="nut pin", at=(0.0, 26.0)), Pin(id="tip pin", at=(0.0, long - 20)))
    return replace(DEMO, outline=outline, tuners=tuple(tuners), slots=tuple(slots), rows=(), pins=pins,
                   blank=replace(DEMO.blank, tip=long + 10))


def many_flats(dozens: int) -> Headstock:
    """The same head with a flat cut for the plate of every side tuner."""
    head, flat = many(dozens), Flat(depth=1.0, size=20.0)
    return replace(head, tuners=tuple(replace(tuner, flat=flat) if isinstance(tuner.place, EdgePlace) else tuner for tuner in head.tuners))
