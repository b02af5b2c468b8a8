"""Pasting: what was copied hangs at the pointer until a press sets it down."""

from __future__ import annotations

from msgspec.structs import replace

from app.tools.grips import Grip, ManyGrip, PointGrip, SideGrip
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Pointer, Shown
from geometry import vectors as v
from geometry.edits.clipping import Clip, lead, paste
from geometry.edits.moving import plan_point
from geometry.edits.parts import new_ids
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say

ASIDE = (5.0, 5.0)
"""mm by which a copy lies beside what it was copied from before the pointer takes it along."""


def paste_down(layout: Headstock, held: Clip, options: Options) -> Gesture:
    """The copies follow the pointer as they would in a drag; a press or Enter sets them down, Esc leaves nothing.

    A side tuner slides along the edge nearest to the pointer. Where they cannot be is said. Typed: what a drag of them takes.
    """
    made = paste(layout, held)
    ids = new_ids(layout, made)
    grip = _grip(made, replace(options, mirrored=False), ids)  # a copy has no twin: at its place lies what it was copied from
    name = say("Paste {name}", name=ids[0]) if len(ids) == 1 else say("Paste {n} things", n=len(ids))
    last: Shown | None = None
    to = v.add(grip.origin, ASIDE)
    pointer = Pointer(to, "move", alt=True)
    while True:
        try:
            if pointer.kind == "key" and pointer.typed:
                return Done(grip.typed(pointer.typed, to), name, ids)
            if pointer.kind != "key":
                to = pointer.at
                last = grip.move(to, pointer)
            shown = last or Shown(layout)
            if last is not None and (pointer.kind in ("press", "double") or pointer.key == "enter"):
                return Done(last.layout, name, ids)
        except GeometryError as error:
            shown = (last or Shown(layout)).refusing(str(error)) if pointer.typed else Shown(layout, readout=str(error))
        pointer = yield replace(shown, held=ids)


def _grip(made: Headstock, options: Options, ids: tuple[str, ...]) -> Grip:
    id = min(ids, key=lambda one: v.distance(plan_point(made, one), lead(made, ids)))
    if len(ids) > 1 or any(slot.id == id for slot in made.slots):
        return ManyGrip(made, options, ids, id)
    if any(tuner.id == id and made.pattern(tuner.pattern).mount == "side" for tuner in made.tuners):
        return SideGrip(made, options, id, False, plan_point(made, id))
    return PointGrip(made, options, id)
