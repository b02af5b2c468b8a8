"""Pasting: what was copied hangs at the pointer until a press sets it down."""

from __future__ import annotations

from app.tools import typed, words
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Shown
from app.tools.snap import Snapper
from geometry import vectors as v
from geometry.edits.clipping import Clip, lead, paste
from geometry.edits.moving import move_features
from geometry.edits.parts import new_ids
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say

ASIDE = (5.0, 5.0)
"""mm by which a copy lies beside what it was copied from before the pointer takes it along."""


def paste_down(layout: Headstock, held: Clip, options: Options) -> Gesture:
    """The copies follow the pointer; a press or Enter sets them down, Esc leaves nothing. Where they cannot be is said.

    Side tuners slide along their edge meanwhile. Typed: the place of the middle, or a step from where they were.
    """
    made = paste(layout, held)
    ids = new_ids(layout, made)
    origin = lead(made, ids)
    snapper = Snapper(made, options, ignore=ids)
    name = say("Paste {name}", name=ids[0]) if len(ids) == 1 else say("Paste {n} things", n=len(ids))
    by, snapped, marks, refused = ASIDE, "", (), ""
    while True:
        try:
            now = v.add(origin, by)
            shown = Shown(move_features(made, ids, by), marks, refused or words.place(now, options.unit, layout.nut), snapped, ids,
                          takes=words.place_takes(now, layout.nut), refused=bool(refused))
        except GeometryError as error:
            shown = Shown(layout, marks, str(error))
        pointer = yield shown
        if pointer.kind == "key" and pointer.key == "escape":
            return None
        refused = ""
        try:
            if pointer.kind == "key" and pointer.typed:
                to = typed.placed(pointer.typed, options.unit, origin, v.add(origin, by))
                return Done(move_features(made, ids, v.sub(to, origin)), name, ids)
            if pointer.kind != "key":
                snap = snapper.point(pointer.at, pointer.mm_per_pixel, pointer.alt)
                by, snapped, marks = v.sub(snap.point, origin), snap.words, snap.marks
            if pointer.kind in ("press", "double") or (pointer.kind == "key" and pointer.key == "enter"):
                return Done(move_features(made, ids, by), name, ids)
        except GeometryError as error:
            refused = str(error)
