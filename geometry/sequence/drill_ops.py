"""Every trip of a drill as an operation."""

from __future__ import annotations

import math
from collections.abc import Iterable

from geometry import vectors as v
from geometry.checks.words import first, listed
from geometry.layout import Drill, Headstock, Nut
from geometry.lengths import from_line
from geometry.saying import number, say
from geometry.sequence.operation import LEVEL, Kind, Operation, Setup, Table
from geometry.sequence.shadows import drilled
from geometry.sequence.wishes import Wishes
from geometry.solids.drilling import Drilling, drill_for, holes, misfit, point_ahead, point_length, to_drill
from geometry.solids.frames import frames
from geometry.solids.side import tilt_of
from geometry.solids.slot_area import slot_area
from geometry.strings.square_line import square_line
from geometry.terms import term
from geometry.tolerance import SAME_TILT, TOUCH
from geometry.units import format_angle, format_length
from geometry.vectors import Vec2

SAME_AXIS = 0.05
"""A pin and a bore nearer than this, in place and in diameter, are one hole (mm)."""
SMALL = ("screw", "pin")
WIDE = ("counterbore", "clearance")


def drill_operations(layout: Headstock, wishes: Wishes) -> list[Operation]:
    """All drillings of the layout, one operation each; a bore that is also a locating pin hole is drilled once."""
    every = [d for hole in to_drill(layout) for d in hole.drillings]
    pins = {pin.id: same_bore(pin, every) for pin in every if pin.role == "locating"}
    shared = {bore.id for bore in pins.values() if bore is not None}
    tables = side_tables(layout, [d for d in every if not d.upright])
    made = []
    for d in every:
        if d.role == "locating":
            made.append(_pin_hole(layout, d, pins[d.id], wishes))
        elif d.upright and d.id not in shared:
            made.append(_upright(layout, d, _narrow_pin(d, every), wishes))
        elif not d.upright and d.role in SMALL:
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
    also = "" if bore is None else say("; it is the {operation} of {of} too", operation=term(bore.operation), of=bore.of)
    words = say("With the template clamped on centreline and {line}, drill {of} through template and blank, {diameter} "
                "wide, on a spoil board; {start}{also}.",
                of=d.of, diameter=_dia(d, wishes), start=place(d.start[:2], layout.nut, wishes), also=also,
                line=square_line(layout.nut))
    both = (d,) if bore is None else (d, bore)
    title = first(", ".join(_called(one, "pin hole") for one in both))
    return _made(layout, d, "pin hole", words, Setup("drill press", _bit_name(d, drill, wishes), LEVEL, "face"), drill, wishes,
                 title=title, drillings=both, features=tuple(one.of for one in both), stop=d.stop + layout.template.thickness)


def _narrow_pin(d: Drilling, every: list[Drilling]) -> Drilling | None:
    """The narrower pin hole on the axis of a through bore."""
    return next((pin for pin in every if pin.role == "locating" and d.through and pin.diameter < d.diameter
                 and v.distance(d.start[:2], pin.start[:2]) <= SAME_AXIS), None)


def _upright(layout: Headstock, d: Drilling, pin: Drilling | None, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    kind: Kind = "pilot" if d.role in SMALL else "counterbore" if d.role in WIDE else "bore"
    how = say("through, on a spoil board") if d.through else say("{depth} deep", depth=wishes.told_down(d.depth))
    words = say("{diameter} wide, {how}; {start}.", diameter=_dia(d, wishes), how=how, start=place(d.start[:2], layout.nut, wishes))
    cautions = () if pin is None else (
        say("The hole of {of} leaves no wood for a centre point: open it up with a twist drill or a reamer, clamped.",
            of=pin.of),)
    return _made(layout, d, kind, words, Setup("drill press", _bit_name(d, drill, wishes), LEVEL, d.surface), drill, wishes,
                 cautions=(*cautions, *_over_a_hole(layout, d)))


def _over_a_hole(layout: Headstock, d: Drilling) -> tuple[str, ...]:
    """What to do first where the drill comes into a hole or a pocket that is there already."""
    found = [e.of for hole in holes(layout) for e in hole.drillings if e.there and not e.plugged
             and v.distance(e.start[:2], d.start[:2]) <= e.radius + d.radius]
    found += [slot.id for slot in layout.slots if slot.there and slot.floor(layout.blank.thickness) >= min(d.start[2], d.end[2])
              and (area := slot_area(slot)) is not None and area.intersects(drilled(d))]
    return () if not found else (
        say("It meets {hole}, which is there already: plug that first, for a drill wanders where its point or its rim finds "
            "no wood.", hole=listed(found)),)


def _sideways(layout: Headstock, d: Drilling, table: Table, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    kind: Kind = "side counterbore" if d.role in WIDE else "side bore"
    lies = "back" if d.surface == "treble edge" else "face"
    point = point_ahead(drill, d)
    words = say("The axis of {hole} has no mark on the square edge.", hole=d.hole)
    if d.mark is not None:
        words = say("In the vice with the {surface} up and the {lies} against the fence: {diameter} wide, at its mark {along} and "
                    "{below} below the face; stop at {stop}, {point} to the point.",
                    surface=term(d.surface), lies=term(lies), diameter=_dia(d, wishes),
                    along=from_line(d.mark[1], wishes.told(abs(d.mark[1])), square_line(layout.nut)), below=wishes.told(d.mark[2]), stop=wishes.told_down(d.stop),
                    point=wishes.told_down(d.stop + point))
    cautions = []
    tilt = math.degrees(abs(table.tilt))
    if tilt > layout.margins.skate_angle + TOUCH:
        cautions.append(say("The drill meets the edge at {tilt} and skates: use a guide block or start with a short, "
                            "stiff drill.",
                            tilt=format_angle(abs(table.tilt))))
    if d.stop + point > layout.rack.press.quill:
        cautions.append(say("The quill travels {quill}, less than this bore needs: drill, stop the machine, raise the "
                            "table and go on.",
                            quill=wishes.told(layout.rack.press.quill)))
    blocked = ""
    if d.mark is None:
        blocked = say("The axis never meets the {surface} of the blank: move the tuner to where the outline faces that edge.",
                      surface=term(d.surface))
    elif tilt > layout.rack.press.tilt + TOUCH:
        blocked = say("It needs a tilt of {tilt}, the table of the drill press tilts to {most}: move the tuner or make a wedge.",
                      tilt=format_angle(abs(table.tilt)),
                      most=format_angle(math.radians(layout.rack.press.tilt)))
    return _made(layout, d, kind, words, Setup("drill press", _bit_name(d, drill, wishes), table, d.surface), drill, wishes,
                 cautions=tuple(cautions), blocked=blocked)


def _by_hand(layout: Headstock, d: Drilling, wishes: Wishes) -> Operation:
    drill = drill_for(layout, d)
    words = say("Through the plate on its seat and square to it, the post in its bore: {diameter} wide, {depth} deep.",
                diameter=_dia(d, wishes), depth=wishes.told_down(d.depth))
    return _made(layout, d, "edge pilot", words, Setup("hand drill", _bit_name(d, drill, wishes), None, d.surface), drill, wishes,
                 stop=d.depth)


def _made(layout: Headstock, d: Drilling, kind: Kind, words: str, setup: Setup, drill: Drill | None, wishes: Wishes,
          **more: object) -> Operation:
    stop = more.pop("stop", d.stop)
    blocked = more.pop("blocked", "") or _out_of_reach(layout, d, drill, stop, wishes)
    given = {"title": first(_called(d, kind)), "features": (d.of,), "drillings": (d,)} | more
    given["cautions"] = (*given.get("cautions", ()), *_other_size(drill, d, wishes))
    return Operation(f"{kind} {d.id}", kind, words=words, setup=setup, stop=stop, blocked=blocked, **given)


def _called(d: Drilling, kind: Kind) -> str:
    name = d.hole if kind in ("pilot", "edge pilot") else d.of
    if _named_hole(d):
        return name
    return f"{term('side bore' if kind == 'side bore' else d.operation)} {name}"


def _other_size(drill: Drill | None, d: Drilling, wishes: Wishes) -> tuple[str, ...]:
    """What to mind where the drill is not quite of the size that is asked for."""
    wider = 0.0 if drill is None else misfit(drill, d)
    if not wider:
        return ()
    words = {"drill": drill.id, "by": wishes.told(abs(wider), 2), "diameter": _dia(d, wishes)}
    return ((say("The drill {drill} makes it {by} wider than the {diameter} asked for: try the part in scrap first.", **words) if wider > 0 else
             say("The drill {drill} makes it {by} narrower than the {diameter} asked for: try the part in scrap first.", **words)),)


def _named_hole(d: Drilling) -> bool:
    """Whether it is a single hole whose name says so already, as `hole 1`."""
    return d.role == "hole" and term(d.operation) in d.of.split()


def _out_of_reach(layout: Headstock, d: Drilling, drill: Drill | None, stop: float, wishes: Wishes) -> str:
    """Why the rack or the drill press cannot do it; empty when they can."""
    if drill is None:
        return say("The rack has no {diameter} drill: add one, or choose another size.", diameter=_dia(d, wishes))
    deep = stop + point_length(drill)
    if drill.length < deep - TOUCH:
        return say("It is {deep} deep to the drill's point, the drill {drill} is {length} long: find a longer one.",
                   deep=wishes.told(deep, 2), drill=drill.id, length=wishes.told(drill.length, 2))
    if d.upright:
        x, y = d.start[:2]
        blank = layout.blank
        nearest = min(x + blank.bass, blank.treble - x, blank.tip - y)
        if nearest > layout.rack.press.throat:
            return say("It lies {nearest} from the nearest edge of the blank, the drill press has a throat of "
                       "{throat}: drill it by hand with a guide.",
                       nearest=wishes.told(nearest), throat=wishes.told(layout.rack.press.throat))
    return ""


def _bit_name(d: Drilling, drill: Drill | None, wishes: Wishes) -> str:
    """The rack's name for the drill; when the rack has none its kind and its diameter, bare in mm, in inches with its sign."""
    if drill:
        return drill.id
    # Set-ups are told apart by this name: fine enough that two drills never share it.
    size = number(d.diameter, "g") if wishes.unit == "mm" else format_length(d.diameter, "in", decimals=4, mark=True)
    return f"{term(d.drill)} {size}"


def place(at: Vec2, nut: Nut, wishes: Wishes) -> str:
    """A point of the face in words: how far to which side of the centreline, and how far from the nut line or behind it, or the base line."""
    x, y = at
    across, along = wishes.told(abs(x)), from_line(y, wishes.told(abs(y)), square_line(nut))
    if abs(x) < 0.005:
        return say("on the centreline, {along}", along=along)
    return (say("{across} to the treble side, {along}", across=across, along=along) if x > 0 else
            say("{across} to the bass side, {along}", across=across, along=along))


def _dia(d: Drilling, wishes: Wishes) -> str:
    return wishes.told(d.diameter, 2)


SAME_DEPTH = 1e-3
"""Fence settings nearer than this are one setting, mm; of tilts see SAME_TILT."""


def side_tables(layout: Headstock, drillings: Iterable[Drilling]) -> dict[str, Table]:
    """The table setting of each side drilling by its id.

    With the treble edge up the back lies against the fence. Turned over about the
    centreline the face does, tip and tilt stay as they are: so opposite bores of
    equal tilt share a setting when their axes stand equally far from the fence.
    Tilts within SAME_TILT of the least of their group get the group's middle.
    """
    placed = frames(layout)
    thick = layout.blank.thickness
    wanted = []
    for d in drillings:
        frame = placed[d.of]
        wanted.append((tilt_of(frame), thick - d.start[2] if frame.side == "treble" else d.start[2], d.id))
    middle = _grouped([tilt for tilt, _, _ in wanted], SAME_TILT)
    depth = _grouped([fence for _, fence, _ in wanted], SAME_DEPTH)
    return {id: Table(middle[tilt], depth[fence], layout.rack.press.base) for tilt, fence, id in wanted}


def _grouped(values: list[float], within: float) -> dict[float, float]:
    """Each value to the middle of its group; a group spans at most `within`."""
    out: dict[float, float] = {}
    group: list[float] = []
    for value in [*sorted(set(values)), math.inf]:
        if group and value - group[0] > within:
            out |= dict.fromkeys(group, (group[0] + group[-1]) / 2)
            group = []
        group.append(value)
    return out
