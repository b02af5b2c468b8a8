"""Every trip of a drill as an operation."""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.layout import Drill, Headstock
from geometry.sequence.operation import LEVEL, Kind, Operation, Setup, Table
from geometry.sequence.tables import side_tables
from geometry.sequence.wishes import Wishes
from geometry.solids.drilling import Drilling, drill_for, holes, point_length
from geometry.units import format_angle, format_length
from geometry.vectors import Vec2

SAME_AXIS = 0.05
"""A pin and a bore nearer than this, in place and in diameter, are one hole (mm)."""
SMALL = ("screw", "pin")
WIDE = ("counterbore", "clearance")


def drill_operations(layout: Headstock, wishes: Wishes) -> list[Operation]:
    """All drillings of the layout, one operation each; a bore that is also a locating pin hole is drilled once."""
    every = [d for hole in holes(layout) for d in hole.drillings]
    pins = {pin.id: same_bore(pin, every) for pin in every if pin.role == "locating"}
    shared = {bore.id for bore in pins.values() if bore is not None}
    tables = side_tables(layout, [d for d in every if not d.upright], wishes.same_tilt)
    made = []
    for d in every:
        if d.role == "locating":
            made.append(_pin_hole(layout, d, pins[d.id], wishes))
        elif d.upright and d.id not in shared:
            made.append(_upright(layout, d, _narrow_pin(d, every), wishes))
        elif not d.upright and d.role in SMALL and not wishes.pilots_from_square_edge:
            made.append(_by_hand(layout, d, wishes))
        elif not d.upright:
            made.append(_sideways(layout, d, tables[d.id], wishes))
    return made


def same_bore(pin: Drilling, every: list[Drilling]) -> Drilling | None:
    """The through bore that a pin hole already is: same axis, same diameter."""
    return next((d for d in every if d.role != "locating" and d.upright and d.through
                 and v.distance(d.start[:2], pin.start[:2]) <= SAME_AXIS
                 and abs(d.diameter - pin.diameter) <= SAME_AXIS), None)


def _pin_hole(layout: Headstock, d: Drilling, bore: Drilling | None, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    also = "" if bore is None else f"; it is the {bore.operation} of {bore.of} too"
    words = (f"With the template clamped on centreline and nut line, drill {d.of} through template and blank, "
             f"{_dia(d, wishes)} wide, on a spoil board; {place(d.start[:2], wishes)}{also}.")
    both = (d,) if bore is None else (d, bore)
    return _made(layout, d, "pin hole", words, Setup("drill press", bit_name(d, drill), LEVEL, "face"), drill, wishes,
                 drillings=both, features=tuple(one.of for one in both))


def _narrow_pin(d: Drilling, every: list[Drilling]) -> Drilling | None:
    """The narrower pin hole on the axis of a through bore."""
    return next((pin for pin in every if pin.role == "locating" and d.through and pin.diameter < d.diameter
                 and v.distance(d.start[:2], pin.start[:2]) <= SAME_AXIS), None)


def _upright(layout: Headstock, d: Drilling, pin: Drilling | None, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    kind: Kind = "pilot" if d.role in SMALL else "counterbore" if d.role in WIDE else "bore"
    how = "through, on a spoil board" if d.through else f"{_mm(d.depth, wishes)} deep"
    words = (f"{d.surface.capitalize()} up: drill the {d.operation} {d.hole if kind == 'pilot' else 'of ' + d.of}, "
             f"{_dia(d, wishes)} wide, {how}; {place(d.start[:2], wishes)}.")
    cautions = () if pin is None else (
        f"The hole of {pin.of} leaves no wood for a centre point: open it up with a twist drill or a reamer, clamped.",)
    return _made(layout, d, kind, words, Setup("drill press", bit_name(d, drill), LEVEL, d.surface), drill, wishes,
                 cautions=cautions)


def _sideways(layout: Headstock, d: Drilling, table: Table, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    kind: Kind = "edge pilot" if d.role in SMALL else "side counterbore" if d.role in WIDE else "side bore"
    lies = "back" if d.surface == "treble edge" else "face"
    point = point_length(drill) if drill else 0.3 * d.diameter
    words = f"The axis of {d.hole} has no mark on the square edge."
    if d.mark is not None:
        words = (f"In the vice with the {d.surface} up and the {lies} against the fence: drill the "
                 f"{d.operation} {d.hole if d.role in SMALL else 'of ' + d.of}, {_dia(d, wishes)} wide, at its mark "
                 f"{_mm(d.mark[1], wishes)} from the nut line and {_mm(d.mark[2], wishes)} below the face; stop at "
                 f"{_mm(d.stop, wishes)}, {_mm(d.stop + point, wishes)} to the point.")
    cautions = []
    if math.degrees(abs(table.tilt)) > layout.margins.skate_angle:
        cautions.append(f"The drill meets the edge at {format_angle(abs(table.tilt))} and skates: use a guide block "
                        "or start with a short, stiff drill.")
    if d.stop + point > layout.rack.press.quill:
        cautions.append(f"The quill travels {_mm(layout.rack.press.quill, wishes)}, less than this bore needs: "
                        "drill, stop the machine, raise the table and go on.")
    blocked = ""
    if d.mark is None:
        blocked = (f"The axis of {d.hole} never meets the {d.surface} of the blank: move the tuner to where the outline "
                   "faces that edge.")
    elif math.degrees(abs(table.tilt)) > layout.rack.press.tilt:
        blocked = (f"{d.of} needs a tilt of {format_angle(abs(table.tilt))}, the table of the drill press tilts to "
                   f"{format_angle(math.radians(layout.rack.press.tilt))}: move the tuner or make a wedge.")
    return _made(layout, d, kind, words, Setup("drill press", bit_name(d, drill), table, d.surface), drill, wishes,
                 cautions=tuple(cautions), blocked=blocked)


def _by_hand(layout: Headstock, d: Drilling, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    words = (f"With the post of {d.of} in its bore and the plate down on its seat, drill {d.hole} through "
             f"the plate and square to it, {_dia(d, wishes)} wide, {_mm(d.depth, wishes)} deep.")
    return _made(layout, d, "edge pilot", words, Setup("hand drill", bit_name(d, drill), None, d.surface), drill, wishes,
                 stop=d.depth)


def _made(layout: Headstock, d: Drilling, kind: Kind, words: str, setup: Setup, drill: Drill | None, wishes: Wishes,
          **more: object) -> Operation:
    stop = more.pop("stop", d.stop)
    blocked = more.pop("blocked", "") or _out_of_reach(layout, d, drill, stop, wishes)
    given = {"features": (d.of,), "drillings": (d,)} | more
    return Operation(f"{kind} {d.id}", kind, _title(d, kind), words, setup, stop=stop, blocked=blocked, **given)


def _title(d: Drilling, kind: Kind) -> str:
    name = d.hole if kind in ("pilot", "edge pilot") else d.of
    return f"{'Side bore' if kind == 'side bore' else d.operation.capitalize()} {name}"


def _out_of_reach(layout: Headstock, d: Drilling, drill: Drill | None, stop: float, wishes: Wishes) -> str:
    """Why the rack or the drill press cannot do it; empty when they can."""
    if drill is None:
        return f"The rack has no {_dia(d, wishes)} drill for {d.hole}: add one, or change the pattern."
    if drill.length < stop:
        return (f"{d.hole} is {_mm(stop, wishes)} deep, the drill {drill.id} is {_mm(drill.length, wishes)} long: "
                "find a longer one.")
    if d.upright:
        x, y = d.start[:2]
        blank = layout.blank
        nearest = min(x + blank.bass, blank.treble - x, blank.tip - y)
        if nearest > layout.rack.press.throat:
            return (f"{d.hole} lies {_mm(nearest, wishes)} from the nearest edge of the blank, the drill press has a "
                    f"throat of {_mm(layout.rack.press.throat, wishes)}: drill it by hand with a guide.")
    return ""


def bit_name(d: Drilling, drill: Drill | None) -> str:
    """The rack's name for the drill, or its kind and diameter in mm when the rack has none."""
    return drill.id if drill else f"{d.drill} {d.diameter:g}"


def place(at: Vec2, wishes: Wishes) -> str:
    """A point of the face in words: how far to which side of the centreline, and how far from the nut line."""
    x, y = at
    side = "on the centreline" if abs(x) < 0.005 else (
        f"{_mm(abs(x), wishes)} to the {'treble' if x > 0 else 'bass'} side")
    return f"{side}, {_mm(y, wishes)} from the nut line"


def _dia(d: Drilling, wishes: Wishes) -> str:
    return format_length(d.diameter, wishes.unit, mark=True)


def _mm(length: float, wishes: Wishes) -> str:
    return format_length(length, wishes.unit, 1 if wishes.unit == "mm" else None, mark=True)
