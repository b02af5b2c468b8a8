"""The letters by which pages and cards of one plan are told from those of another."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Collection, Iterable
from operator import attrgetter

from msgspec import Struct
from msgspec.structs import fields, replace

from app.formats.tidy_json import tidy
from geometry.layout import Accuracy, Book, Drill, GuideBush, Headstock, Rack, Rates, RouterBit
from geometry.routing import SlotPlan, Waste
from geometry.solids.drilling import drill_for, to_drill

Tools = tuple[RouterBit, ...] | tuple[GuideBush, ...] | tuple[Drill, ...]


def plan_letters(layout: Headstock, steps: Iterable[str], plans: Iterable[SlotPlan]) -> str:
    """Four letters and digits for a layout, its steps in their order and how its slots and its outline are routed.

    The same plan has the same ones in every language and unit, on every system, from the layout in the window and from its
    file, and in a version of the program whose layouts have more fields. What the layout is called, minutes, the shop's errors
    and what is noted move no mark and no step: they do not count. Of the rack and the hardware counts what the plan uses.
    """
    drills = {d.id: drill.id for hole in to_drill(layout) for d in hole.drillings if (drill := drill_for(layout, d)) is not None}
    routed = {plan.of: plan.best for plan in plans if plan.best is not None}
    waste = {of: plan.waste.drill.id for of, plan in routed.items() if isinstance(plan.waste, Waste)}
    trips = {of: [[p.side, p.bit, p.bush, round(p.begins, 2), round(p.ends, 2)] for p in plan.passes] for of, plan in routed.items()}
    template = layout.template
    bits = {template.bit, *(trip[1] for passes in trips.values() for trip in passes)}
    bushes = {template.bush, *(trip[2] for passes in trips.values() for trip in passes)}
    rack = replace(layout.rack, bits=_used(layout.rack.bits, bits), bushes=_used(layout.rack.bushes, bushes),
                   drills=_used(layout.rack.drills, {*drills.values(), *waste.values()}))
    hardware = {tuner.pattern for tuner in layout.tuners}
    patterns = tuple(replace(one, about="") for one in layout.patterns if one.id in hardware)
    told = replace(layout, name="", about="", accuracy=Accuracy(), rates=Rates(), notes=(), order=(), book=Book(), picture=None,
                   rack=Rack(), routes=(), patterns=patterns)
    data = tidy([_told(told), _told(rack), list(steps), drills, waste, trips])
    return base64.b32encode(hashlib.blake2b(data, digest_size=5).digest()).decode()[:4]


def _used(tools: Tools, ids: Collection[str | None]) -> Tools:
    """Those of a shelf that are used, wherever they lie on it and whatever words they have."""
    return tuple(replace(one, about="") if hasattr(one, "about") else one for one in sorted(tools, key=attrgetter("id")) if one.id in ids)


def _told(value: object) -> object:
    """What of a record differs from its defaults, with the kind of a record that has several."""
    if isinstance(value, Struct):
        own = {field.name: _told(found) for field in fields(value) if (found := getattr(value, field.name)) != field.default}
        return own if value.__struct_config__.tag is None else {"kind": value.__struct_config__.tag} | own
    return [_told(one) for one in value] if isinstance(value, tuple | list) else value
