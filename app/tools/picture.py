"""Moving the picture behind the drawing: drag it, with Shift turn it about the middle of the nut."""

from __future__ import annotations

import math

from app.tools import words
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Pointer, Shown
from geometry import vectors as v
from geometry.edits.picture import move_picture, picture_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say


def shove_picture(layout: Headstock, options: Options) -> Gesture:
    """Press, drag, let go: one step. GeometryError when there is no picture or it is locked."""
    if picture_of(layout).locked:
        raise GeometryError(say("The picture is locked: unlock it on the Outline stage to move it."))
    pointer: Pointer = yield Shown(layout, readout=say("drag the picture, with Shift turn it about the middle of the nut"))
    start = pointer.at
    shown, said, name = layout, "", say("Move the picture")
    while pointer.kind != "release":
        if pointer.kind == "key" and pointer.key == "escape":
            return None
        if pointer.kind == "move":
            if pointer.shift:
                turn = math.atan2(v.cross(start, pointer.at), v.dot(start, pointer.at))
                shown, said, name = move_picture(layout, turn=turn), f"{math.degrees(turn):.2f}°", say("Turn the picture")
            else:
                by = v.sub(pointer.at, start)
                shown, name = move_picture(layout, by), say("Move the picture")
                said = say("{x} across, {y} along", x=words.length(by[0], options.unit), y=words.length(by[1], options.unit))
        pointer = yield Shown(shown, readout=said)
    return None if shown is layout else Done(shown, name)
