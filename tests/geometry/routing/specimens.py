"""Heads, slots and racks for the router's tests; all invented."""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry.layout import (
    Blank,
    DrawnSlot,
    Drill,
    GuideBush,
    Headstock,
    Loop,
    Node,
    Pin,
    Rack,
    RouterBit,
    Slot,
    StraightSlot,
    Template,
)
from geometry.routing.depth import Job
from geometry.routing.passes import Pass
from geometry.routing.reached import Reached
from geometry.routing.search import plan_slot

WHOLE = Reached(True, (), ())
BRAD = Drill(id="brad 10", kind="brad", diameter=10.0, length=100.0, spur=3.0)
FORSTNER = Drill(id="forstner 10", kind="forstner", diameter=10.0, length=90.0, spur=2.0)
PINS = (Pin(id="low", at=(0.0, 20.0)), Pin(id="high", at=(0.0, 150.0)))


def loop(*points: tuple[float, float]) -> Loop:
    return Loop(nodes=tuple(Node(at=p) for p in points))


def drawn(*points: tuple[float, float], depth: float | None = None, id: str = "slot") -> Slot:
    return Slot(id=id, shape=DrawnSlot(loop=loop(*points)), depth=depth)


def straight(width: float = 13.0, length: float = 100.0, x: float = 0.0, depth: float | None = None,
             id: str = "slot") -> Slot:
    """A straight slot along the neck, its round ends' centres `length` apart."""
    return Slot(id=id, shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 40.0 + length), width=width), depth=depth)


def bit(id: str = "bit", cutter: float = 12.0, cutting: float = 16.0, shank: float = 8.0, out: float = 40.0,
        bearing: str = "none", ring: float | None = None, high: float | None = None) -> RouterBit:
    """A bit; the bearing as wide as the cutter unless `ring` says otherwise."""
    return RouterBit(id=id, cutter=cutter, cutting_length=cutting, shank=shank, stick_out=out, bearing=bearing,
                     bearing_diameter=None if bearing == "none" else (ring or cutter), bearing_height=high)


BUSH = GuideBush(id="bush", outer=17.0, inner=15.0, length=5.0)


def job(depth: float = 16.0, thickness: float = 16.0, template: float = 6.0, contact: float = 3.0, light: bool = False,
        entry: float = 0.0, hard: bool = False, width: float | None = 13.0) -> Job:
    return Job(of="slot", depth=depth, thickness=thickness, template=template, contact=contact, light=light, entry=entry,
               hard=hard, router=Rack().router, width=width, widest=width)


def head(*slots: Slot, outline: Loop | None = None, rack: Rack | None = None, thickness: float = 16.0,
         template: float = 6.0, pins: tuple[Pin, ...] = PINS, hard: bool = False) -> Headstock:
    """A plain head: a tall rectangle with its foot on the nut line."""
    shape = outline or loop((-40.0, 0.0), (40.0, 0.0), (40.0, 180.0), (-40.0, 180.0))
    return Headstock(name="invented", outline=shape, slots=slots, pins=pins, rack=rack or Rack(),
                     blank=Blank(bass=50.0, treble=50.0, tip=200.0, behind=20.0, thickness=thickness, hard_wood=hard),
                     template=Template(thickness=template))


def with_rack(layout: Headstock, *bits: RouterBit, bushes: tuple[GuideBush, ...] = (),
              drills: tuple[Drill, ...] = ()) -> Headstock:
    return replace(layout, rack=Rack(bits=bits, bushes=bushes, drills=drills))


def rubbing(one: Pass, template: float, high: float = 5.0) -> tuple[float, ...]:
    """What may be told to rub in a pass whose bearing is not on the tip, mm, on a template of that thickness.

    Heights above the wood: a shank goes on from where the edges end, a bearing is `high`, a bush comes down from the base. On the
    template the wall below it counts too; on the wall alone what rubs on the template besides need not be told.
    """
    tool = one.follower.bit
    if one.follower.bush is not None:
        return (min(one.follower.bush.length, template),)
    low = tool.cutting_length - one.ends
    top = low + high if tool.bearing == "shank" else math.inf
    beside, wall = (max(0.0, min(top, to) - max(low, foot)) for foot, to in ((0.0, template), (-one.ends, 0.0)))
    if abs(one.follower.diameter - tool.cutter) > 0.02:
        wall = 0.0
    return (beside + wall,) if one.rubs_on == "template" else (beside + wall, wall)


def plan(*bits, slot=None, bushes=(), drills=(BRAD,), **k):
    """What the search finds for the one slot of a head with these bits."""
    layout = with_rack(head(slot or straight(), **k), *bits, bushes=bushes, drills=drills)
    return plan_slot(layout.slots[0], layout)
