"""What is left of the blank, and what has been made of it, after each step."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal

import shapely
from msgspec import Struct

from geometry.checks.words import listed
from geometry.layout import Headstock, Side, Slot
from geometry.saying import say
from geometry.sequence.derive import operations
from geometry.sequence.drill_ops import SAME_AXIS
from geometry.sequence.glue_ops import PLUG, VENEERS
from geometry.sequence.operation import Cut, Operation, WasteHoles, trips
from geometry.sequence.order import Order
from geometry.sequence.shadows import drilled, outline_area
from geometry.sequence.shape_ops import holds, pins_to_plug
from geometry.solids.drilling import Drilling, holes, to_drill
from geometry.solids.slot_area import slot_area
from geometry.terms import term
from geometry.units import LengthUnit, format_close

BOTH: tuple[Side, Side] = ("bass", "treble")


class SlotState(Struct, frozen=True):
    """How far a slot is."""

    slot: str
    depth: float
    """wanted, from the face, mm"""
    through: bool
    waste_holes: WasteHoles | None = None
    sawn: bool = False
    routed: tuple[Cut, ...] = ()
    """what the router has taken out of the whole slot, from the top, without overlaps"""
    there: bool = False
    """in the blank before the work begins"""

    @property
    def open(self) -> bool:
        """Whether the router has taken out all of it: its walls stand."""
        return sum(cut.end - cut.start for cut in self.routed) >= self.depth - 1e-6

    @property
    def touched(self) -> bool:
        return self.waste_holes is not None or self.sawn or bool(self.routed)


class WoodState(Struct, frozen=True):
    """The piece after some operations."""

    done: tuple[str, ...]
    drillings: tuple[Drilling, ...]
    """made so far"""
    to_drill: tuple[Drilling, ...]
    """still to be made"""
    trips: tuple[int, int]
    """of a drill, made and in all: one for a pin hole that is a bore as well"""
    slots: tuple[SlotState, ...]
    ears: tuple[str, ...]
    """glued on"""
    veneers: tuple[Literal["face", "back"], ...]
    """glued on"""
    papers: tuple[str, ...]
    """where marks can still be read: face, back, bass edge, treble edge"""
    square_edges: tuple[Side, ...]
    outline: Literal["square", "sawn", "routed"]
    pins: tuple[str, ...]
    """pin holes that are open and still have wood round them"""
    plugged: tuple[str, ...]
    """pin holes that were filled when the head was cleaned up"""
    clean: bool

    @property
    def to_be_seen(self) -> tuple[Drilling, ...]:
        """Drillings made and not plugged again."""
        return tuple(d for d in self.drillings if d.of not in self.plugged or d.role != "locating")

    def words(self, unit: LengthUnit = "mm") -> tuple[str, ...]:
        """The state in short sentences for the maker."""
        edges = say("Both square edges are there.") if self.outline == "square" else say("The square edges are gone.")
        shape = {"square": "", "sawn": say("The outline is sawn."), "routed": say("The outline is finished, seats stand.")}
        papers = listed([term(paper) for paper in self.papers]) if self.papers else ""
        marks = say("Marks on {papers}.", papers=papers) if papers else say("No marks.")
        made, total = self.trips
        drilled = say("{made} of {all} drillings made.", made=made, all=total) if total else ""
        slots = [f"{slot.slot}: {_slot(slot, unit)}." for slot in self.slots if slot.touched and not slot.there]
        pins = say("The template finds its place on {pins}.", pins=listed(self.pins)) if self.pins else ""
        glued = [*self.ears, *({"face": say("face veneer"), "back": say("back veneer")}[surface] for surface in self.veneers)]
        ears = say("Glued on: {ears}.", ears=listed(glued)) if glued else ""
        return tuple(text for text in (ears, edges, shape[self.outline], marks, drilled, *slots, pins) if text)


def wood_after(layout: Headstock, order: Order | Sequence[str], n: int,
               ops: Sequence[Operation] | None = None) -> WoodState:
    """The piece after the first `n` steps of an order (all of them when there are fewer), legal or not.

    `ops` are the operations that the order was made of; by default those of the
    layout without router plans. KeyError for a step that they do not have.
    """
    ops = operations(layout) if ops is None else ops
    by_id = {op.id: op for op in ops}
    steps = order.steps if isinstance(order, Order) else tuple(order)
    return state_of(layout, [by_id[id] for id in steps[:max(n, 0)]], ops)


def state_of(layout: Headstock, done: Sequence[Operation], ops: Sequence[Operation]) -> WoodState:
    """The piece after the operations `done`, out of all `ops`."""
    kinds = {op.kind for op in done}
    made = (*(d for hole in holes(layout) for d in hole.drillings if d.there and not (d.plugged and PLUG in kinds)), *_drillings(done))
    known = {d.id for d in made}
    outline: Literal["square", "sawn", "routed"] = "square"
    if "cut outline" in kinds or "rout outline" in kinds:
        wanted = [op.id for op in ops if op.kind == "rout outline"]
        outline = "routed" if set(wanted) <= {op.id for op in done} else "sawn"
    slots = tuple(_slot_state(layout, slot, done) for slot in layout.slots)
    clean = "clean up" in kinds
    return WoodState(
        tuple(op.id for op in done), made, tuple(d for d in _drillings(ops) if d.id not in known), (len(trips(done)), len(trips(ops))), slots,
        tuple(op.features[0] for op in done if op.kind == "glue ear"),
        tuple(surface for surface, kind in zip(("face", "back"), VENEERS, strict=True) if kind in kinds),
        _papers(layout, "mark" in kinds, outline == "square", clean),
        BOTH if outline == "square" else (), outline, _pins(layout, made, slots, outline, clean),
        tuple(pins_to_plug(layout)) if clean else (), clean)


def _drillings(ops: Iterable[Operation]) -> tuple[Drilling, ...]:
    found = {d.id: d for op in trips(ops) for d in op.drillings}
    return tuple(found.values())


def _papers(layout: Headstock, pasted: bool, square: bool, clean: bool) -> tuple[str, ...]:
    if not pasted or clean:
        return ()
    back = ("back",) if any(d.surface == "back" for hole in to_drill(layout) for d in hole.drillings) else ()
    return ("face", *back, *(f"{side} edge" for side in BOTH if square))


def _slot_state(layout: Headstock, slot: Slot, done: Sequence[Operation]) -> SlotState:
    thick = layout.blank.thickness
    if slot.there:
        return SlotState(slot.id, slot.floor(thick), slot.through(thick), routed=(Cut(0.0, slot.floor(thick)),), there=True)
    own = [op for op in done if slot.id in op.features and op.kind in ("waste holes", "saw", "rout")]
    return SlotState(
        slot.id, slot.floor(thick), slot.through(thick),
        next((op.waste_holes for op in own if op.waste_holes), None), any(op.kind == "saw" for op in own),
        _merged([op.cut for op in own if op.kind == "rout" and op.cut], thick))


def _merged(cuts: Sequence[Cut], thick: float) -> tuple[Cut, ...]:
    """Cuts from the top without overlaps, kept within the wood."""
    out: list[Cut] = []
    for cut in sorted(cuts, key=lambda c: c.start):
        start, end = max(cut.start, 0.0), min(cut.end, thick)
        if out and start <= out[-1].end:
            out[-1] = Cut(out[-1].start, max(out[-1].end, end))
        else:
            out.append(Cut(start, end))
    return tuple(out)


def _pins(layout: Headstock, made: Iterable[Drilling], slots: Iterable[SlotState], outline: str,
          clean: bool) -> tuple[str, ...]:
    """Pin holes that still hold a pin."""
    if clean:
        return ()
    areas = {slot.id: slot_area(slot) for slot in layout.slots}
    gone = shapely.union_all([areas[s.slot] for s in slots if s.touched and areas[s.slot] is not None])
    found = []
    for d in made:
        if d.role != "locating":
            continue
        round_hole = drilled(d)
        swallowed = any(e.role != "locating" and e.diameter > d.diameter + SAME_AXIS and holds(e, d.start[:2], d.diameter)
                        for e in made)
        cut_off = outline != "square" and not outline_area(layout.outline).contains(round_hole)
        if not swallowed and not cut_off and not gone.intersects(round_hole):
            found.append(d.of)
    return tuple(found)


def _slot(slot: SlotState, unit: LengthUnit) -> str:
    if slot.open:
        return say("open, its walls stand")
    if slot.routed:
        deep = sum(cut.end - cut.start for cut in slot.routed)
        return say("routed {deep} of {depth}", deep=format_close(deep, unit, 2, mark=True),
                   depth=format_close(slot.depth, unit, 2, mark=True))
    if slot.sawn:
        return say("waste sawn out")
    return say("{n} waste holes drilled", n=len(slot.waste_holes.centres)) if slot.waste_holes else say("full")
