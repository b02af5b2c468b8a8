"""Layouts that the benchmarks work on, each a little another so that nothing is remembered."""

from __future__ import annotations

from itertools import count

from msgspec.structs import replace

from app.window.demo import demo
from geometry.layout import DrawnSlot, Headstock, Loop, Node, RouterBit, Slot

_turn = count(1)
WAISTED = ((-8.0, 40.0, 0.3, None), (8.0, 40.0, 0.0, ((8.0, 70.0), (5.3, 80.0))),
           (5.3, 90.0, 0.0, ((5.3, 100.0), (8.0, 110.0))), (8.0, 140.0, 0.3, None),
           (-8.0, 140.0, 0.0, ((-8.0, 110.0), (-5.3, 100.0))), (-5.3, 90.0, 0.0, ((-5.3, 80.0), (-8.0, 70.0))))
"""x, y, bulge and handles of the nodes of a slot with round ends and a waist."""
_TIP = 140.0
"""where the nodes of its tip end stand"""


def waisted() -> Slot:
    """A drawn slot that no call has seen before: its tip end a micrometre further on each time, for where it stands is no news."""
    by = next(_turn) * 1e-3
    nodes = tuple(Node(at=(x, y + by if y == _TIP else y), bulge=bulge, handles=handles) for x, y, bulge, handles in WAISTED)
    return Slot(id="slot", shape=DrawnSlot(loop=Loop(nodes=nodes)))


def sixty_bits() -> Headstock:
    """The demo with sixty invented bits in the rack."""
    bits = []
    for i in range(60):
        bearing = ("none", "shank", "tip")[i % 3]
        bits.append(RouterBit(id=f"bit {i}", cutter=6 + i * 0.11, cutting_length=8 + i % 17, shank=6.0 if i % 2 else 8.0,
                              stick_out=25 + i % 20, bearing=bearing,
                              bearing_diameter=None if bearing == "none" else 6 + i * 0.11))
    layout = demo()
    return replace(layout, rack=replace(layout.rack, bits=tuple(bits)))
