"""Layouts for the sheets: the demo, and one so large that every drawing takes several pages each way."""

from pathlib import Path

import msgspec

from app.formats.headstock import read
from geometry.layout import Headstock, SingleHole

DEMO = Path("samples/twelve-string-mixed.headstock.json")


def demo() -> Headstock:
    return read(DEMO)


def large() -> Headstock:
    """The demo with its outline, slots and pins 2.4 times as large and holes all over it."""
    small = demo()
    k = 2.4

    def big(p):
        return (p[0] * k, p[1] * k)

    change = msgspec.structs.replace
    nodes = tuple(change(n, at=big(n.at), handles=None if n.handles is None else (big(n.handles[0]), big(n.handles[1])))
                  for n in small.outline.nodes)
    slots = tuple(change(s, shape=change(s.shape, nut_end=big(s.shape.nut_end), tip_end=big(s.shape.tip_end)))
                  for s in small.slots)
    spots = [(-80.0, 130.0), (-30.0, 330.0), (60.0, 200.0), (90.0, 390.0), (0.0, 60.0), (-95.0, 260.0)]
    return change(small, name="Large head, invented", outline=change(small.outline, nodes=nodes), slots=slots,
                  pins=tuple(change(pin, at=big(pin.at)) for pin in small.pins),
                  holes=tuple(SingleHole(id=f"hole {i}", at=at, diameter=5.0) for i, at in enumerate(spots)),
                  blank=change(small.blank, bass=118.0, treble=118.0, tip=480.0))
