"""Moving the picture behind the drawing: drag it, with Shift turn it about the middle of the nut."""

from __future__ import annotations

from app.tools import typed, words
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Pointer, Shown, Takes
from geometry import vectors as v
from geometry.edits.picture import move_picture, picture_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import format_angle
from geometry.vectors import Vec2


def shove_picture(layout: Headstock, options: Options) -> Gesture:
    """Press, drag, let go: one step. Nothing moves before the press. A value typed during the drag ends it.

    GeometryError when there is no picture, or it is locked or hidden.
    """
    picture = picture_of(layout)
    if picture.locked:
        raise GeometryError(say("The picture is locked: unlock it on the Outline stage to move it."))
    if picture.hidden:
        raise GeometryError(say("The picture is hidden: show it to move it."))
    hint = Shown(layout, readout=say("drag the picture, with Shift turn it about the middle of the nut"), follows=True)
    pointer: Pointer = yield hint
    while pointer.kind not in ("press", "double"):
        pointer = yield hint
    start, by, turn, said = pointer.at, (0.0, 0.0), 0.0, hint.readout
    while pointer.kind != "release":
        refused = False
        try:
            if pointer.kind == "key" and pointer.typed:
                by, turn = _typed(pointer.typed, options, by)
                break
            if pointer.kind == "move" and pointer.shift:
                by, turn = (0.0, 0.0), v.turn(start, pointer.at)
                said = format_angle(turn, 2)
            elif pointer.kind == "move":
                by, turn = v.sub(pointer.at, start), 0.0
                said = say("{x} across, {y} along", x=words.length(by[0], options.unit), y=words.length(by[1], options.unit))
        except GeometryError as error:
            said, refused = str(error), True
        pointer = yield Shown(move_picture(layout, by, turn), readout=said, takes=_takes(), refused=refused)
    if by == (0.0, 0.0) and turn == 0.0:
        return None
    return Done(move_picture(layout, by, turn), say("Turn the picture") if turn else say("Move the picture"))


def _takes() -> tuple[Takes, ...]:
    return (("across", say("moved across")), ("along", say("moved along")), ("angle", say("angle")))


def _typed(text: str, options: Options, by: Vec2) -> tuple[Vec2, float]:
    """How far the picture is moved (mm) and turned (rad) by what was typed: what is not given stays as it was dragged."""
    step = typed.point(text, options.unit)
    if step is not None:
        return step, 0.0
    values = typed.polar(text, options.unit)
    if not values.keys() <= {"across", "along", "angle"}:
        raise GeometryError(say("Type how far the picture is moved, across and along, or the angle by which it is turned."))
    if values.keys() == {"angle"}:
        return (0.0, 0.0), values["angle"]
    return (values.get("across", by[0]), values.get("along", by[1])), values.get("angle", 0.0)
