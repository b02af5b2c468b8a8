"""Slots, pockets and single holes of a drawing, put in the place of those that a layout has."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Arc, Line, Matrix, Path, turn
from geometry.edits.loops import with_smooth
from geometry.edits.parts import checked
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Headstock, Loop, SingleHole, Slot, StraightSlot, feature_ids, loop_of, slot_path, validate
from geometry.layout.names import feature_names
from geometry.saying import count, say
from geometry.solids.depth import Depth
from geometry.terms import HOLE_THERE, POCKET, given
from geometry.tolerance import JOIN

Role = tuple[Path, str] | tuple[Path, str, Depth | None]
"""A closed path and what it is: outline, slot, hole, POCKET, HOLE_THERE or other; and how deep, where the drawing tells that."""

_OPENINGS = ("slot", POCKET, "hole", HOLE_THERE)

SAME = 0.01
"""mm: a loop of the drawing that keeps this near to what the layout has is that very slot, pocket or hole."""


def without_replaced(layout: Headstock, loops: Sequence[Role]) -> Headstock:
    """The layout without the slots and holes that such a drawing replaces.

    Pockets and holes that are there are a matter of the wood: they stay, unless the drawing brings any of their own.
    """
    pockets, there = _brings(loops, POCKET), _brings(loops, HOLE_THERE)
    return replace(layout, slots=tuple([slot for slot in layout.slots if slot.there and not pockets]),
                   holes=tuple([hole for hole in layout.holes if hole.there and not there]))


def with_openings(layout: Headstock, loops: Sequence[Role], place: Matrix, known: Headstock | None = None) -> Headstock:
    """The layout with the slots, pockets and holes among these loops, mapped by `place`.

    What `known` has in the same place and size keeps its name, its depth and its ramp; so does what lies on the larger part of
    it and is to be cut, which is the same one drawn anew: what was noted, chosen and written down of it goes by its name. A pocket
    or hole without one goes through, unless the drawing tells its depth. GeometryError where one is farther away than a file may say.
    """
    taken = set(feature_ids(layout))
    left = [] if known is None else [one for one in (*known.slots, *known.holes) if one.id not in taken]
    drawn = [_drawn(loop, place) for loop in loops if loop[1] in _OPENINGS]
    again = _known_again(left, drawn)
    names = feature_names(layout)
    names.taken |= {one.id for one in again if one is not None}
    made: list[Slot | SingleHole] = []
    for old, new in zip(again, drawn, strict=True):
        if old is None:
            made.append(replace(new, id=names.numbered(given(new.id))))
        elif _same(old, new):
            made.append(old)
        elif isinstance(old, Slot):
            made.append(replace(old, shape=new.shape))
        else:
            made.append(replace(old, at=new.at, diameter=new.diameter))
    before = () if known is None else (*known.slots, *known.holes)
    rank = {one.id: i for i, one in enumerate(before)}  # what was known keeps its place in the lists, and what is new comes last
    made = sorted((*layout.slots, *layout.holes, *made), key=lambda one: rank.get(one.id, len(rank)))
    slots, holes = ([one for one in made if isinstance(one, kind)] for kind in (Slot, SingleHole))
    # What is farther away than a file may say could be saved, and never be read again.
    checked(layout.outline, say("The outline"))
    return validate(replace(layout, slots=tuple([checked(one, one.id) for one in slots]), holes=tuple([checked(one, one.id) for one in holes])))


def with_more(layout: Headstock, loops: Sequence[Role]) -> Headstock:
    """The layout with these slots and holes besides its own; one of its own that lies there, as `with_openings` has it, goes to that place.

    What is there in the wood already and lies there is what was seen: it stays as it was measured.
    """
    drawn, own = [_drawn(loop, Matrix()) for loop in loops], [*layout.slots, *layout.holes]
    there = _known_again([replace(one, there=False) for one in own if one.there], drawn)
    loops = [loop for loop, one in zip(loops, there, strict=True) if one is None]
    again = _known_again(own, [new for new, one in zip(drawn, there, strict=True) if one is None])
    gone = {one.id for one in again if one is not None}
    kept = replace(layout, slots=tuple([slot for slot in layout.slots if slot.id not in gone]),
                   holes=tuple([hole for hole in layout.holes if hole.id not in gone]))
    return with_openings(kept, loops, Matrix(), layout)


def there_again(loops: Sequence[Role], place: Matrix, layout: Headstock) -> dict[int, str]:
    """Which of these loops, by number, are pockets or holes that are there in the layout, drawn in the same place and size; and which."""
    there = [one for one in (*layout.slots, *layout.holes) if one.there]
    found = {}
    for number, (path, role, *_) in enumerate(loops if there else ()):
        for one in there if role != "outline" else ():
            kind = POCKET if isinstance(one, Slot) else HOLE_THERE
            if abs(abs(path.area) - _covered(one)) <= SAME * path.length and _same(one, _drawn((path, kind), place)):
                found[number] = kind
    return found


def _covered(one: Slot | SingleHole) -> float:
    """What a slot or a hole covers, mm2; none of a slot without an inside."""
    if isinstance(one, SingleHole):
        return math.pi * one.diameter**2 / 4
    try:
        return abs(slot_path(one).area)
    except GeometryError:
        return 0.0


def there_told(loops: Sequence[Role], place: Matrix, layout: Headstock | None = None) -> list[str]:
    """What becomes of pockets and holes that are there when a drawing is taken, one sentence each.

    `layout` is the one whose slots and holes it replaces; None where a new one is made of it.
    """
    told = []
    there = [] if layout is None else [one for one in (*layout.slots, *layout.holes) if one.there]
    kept = [one.id for one in there if not _brings(loops, POCKET if isinstance(one, Slot) else HOLE_THERE)]
    if kept:
        told.append(count(len(kept), "{names} is there already and stays as it is: the drawing has nothing in its place.",
                          "{names} are there already and stay as they are: the drawing has nothing in their place.",
                          names=", ".join(kept)))
    brought = [_drawn(loop, place) for loop in loops if loop[1] in (POCKET, HOLE_THERE) and _depth(loop) is None]
    if any(not any(_same(one, new) for one in there) for new in brought):
        told.append(say("The drawing tells no depth of it: what is there already counts as through until you give the depth that you measured."))
    return told


def tidy(loop: Loop) -> Loop:
    """The loop with the dust of turned coordinates rounded away (1e-9 mm)."""
    return Loop(nodes=tuple(replace(node, at=v.clean(node.at), bulge=round(node.bulge, 12),
                                    handles=node.handles and (v.clean(node.handles[0]), v.clean(node.handles[1])))
                            for node in loop.nodes))


def _brings(loops: Sequence[Role], role: str) -> bool:
    return any(loop[1] == role for loop in loops)


def _depth(loop: Role) -> Depth | None:
    """How deep a loop is by the drawing; None where it does not tell."""
    return loop[2] if len(loop) > 2 else None


def _drawn(loop: Role, place: Matrix) -> Slot | SingleHole:
    """What a loop of the drawing becomes, named after its kind."""
    path, role, depth = loop[0], loop[1], _depth(loop) or Depth(None)
    there = role in (POCKET, HOLE_THERE)
    if role in ("slot", POCKET):
        laid = path.mapped(place).counter_clockwise()
        return Slot(id="pocket" if there else "slot", shape=slot_shape(laid, tidy(with_smooth(loop_of(laid)))), depth=depth.deep, there=there)
    centre, diameter = round_of(path.mapped(place))
    return SingleHole(id="hole", at=v.clean(centre), diameter=round(diameter, 9), depth=depth.deep,
                      surface="back" if depth.back else "face", there=there)


def _same(one: Slot | SingleHole, new: Slot | SingleHole) -> bool:
    """Whether what a layout has is what was drawn: of one kind, and nowhere more than SAME from it."""
    if type(one) is not type(new) or one.there != new.there:
        return False
    if isinstance(one, SingleHole):
        return v.distance(one.at, new.at) <= SAME and abs(one.diameter - new.diameter) <= SAME
    try:
        own, wall = slot_path(one), slot_path(new)
    except GeometryError:
        return False
    if max(abs(a - b) for a, b in zip(own.box, wall.box, strict=True)) > SAME:
        return False
    return bool(shapely.hausdorff_distance(*(shapely.linestrings(path.flatten(SAME / 4)) for path in (own, wall))) <= SAME)


def _known_again(known: Sequence[Slot | SingleHole], drawn: Sequence[Slot | SingleHole]) -> list[Slot | SingleHole | None]:
    """Of each thing drawn the known one that it is, each known one once: first what is as it was, then what covers most of one."""
    left, again = list(known), [None] * len(drawn)
    for same in (_same, _mostly):
        for i, new in enumerate(drawn):
            if again[i] is None:
                again[i] = next((one for one in left if same(one, new)), None)
                left = [one for one in left if one is not again[i]]
    return again


def _mostly(one: Slot | SingleHole, new: Slot | SingleHole) -> bool:
    """Whether what was drawn is to be cut as what a layout has is, and they share more than half of what either covers.

    Not so what is there already: its depth was measured of that one, and counts as through until the maker says so of another.
    """
    if type(one) is not type(new) or one.there or new.there:
        return False
    if isinstance(one, SingleHole):
        return v.distance(one.at, new.at) < min(one.diameter, new.diameter) / 2 and max(one.diameter, new.diameter) < 2 * min(
            one.diameter, new.diameter)
    try:
        own, wall = slot_path(one), slot_path(new)
    except GeometryError:
        return False
    if own.box[0] > wall.box[2] or own.box[2] < wall.box[0] or own.box[1] > wall.box[3] or own.box[3] < wall.box[1]:
        return False
    areas = [shapely.make_valid(shapely.polygons(path.flatten(0.1))) for path in (own, wall)]
    return 2 * shapely.area(shapely.intersection(*areas)) > max(shapely.area(areas))


def round_of(path: Path) -> tuple[tuple[float, float], float]:
    """Centre and diameter of a round loop, exact for arcs about one centre."""
    arcs = [s for s in path if isinstance(s, Arc)]
    if len(arcs) == len(path.segments) and all(v.distance(a.centre, arcs[0].centre) < 1e-6 for a in arcs):
        return arcs[0].centre, 2 * arcs[0].radius
    x0, y0, x1, y1 = path.box
    return ((x0 + x1) / 2, (y0 + y1) / 2), 2 * math.sqrt(abs(path.area) / math.pi)


def slot_shape(path: Path, tidy: Loop | None = None) -> StraightSlot | DrawnSlot:
    """A straight slot where the line runs nowhere farther than JOIN from one, else a drawn one of `tidy` or the line itself.

    Other programs write the round ends as half circles, quarter circles or cubics near them, and walls in several pieces. Width and
    ends are those of the walls and of the farthest points along them, so that they are the numbers that were drawn.
    """
    return _straight(path) or DrawnSlot(loop=tidy or loop_of(path))


def _straight(path: Path) -> StraightSlot | None:
    """The straight slot that a closed path runs along, if there is one."""
    lines = sorted((s for s in path if isinstance(s, Line)), key=lambda line: -line.length())
    if len(lines) < 2 or lines[0].length() == 0:
        return None
    along = v.unit(v.sub(lines[0].end, lines[0].start))
    angle = math.atan2(along[1], along[0])
    laid = path.mapped(turn(-angle))
    walls = [turn(-angle)(line.start)[1] for line in lines]
    x0, _, x1, _ = laid.box
    width = max(abs(y - walls[0]) for y in walls)
    middle, half = (walls[0] + max(walls, key=lambda y: abs(y - walls[0]))) / 2, width / 2
    if width <= JOIN or x1 - x0 - width <= JOIN:
        return None
    straight = width * (x1 - x0 - width) + math.pi * half**2
    points = laid.flatten(JOIN / 10)
    aside = np.maximum(np.maximum(x0 + half - points[:, 0], points[:, 0] - (x1 - half)), 0.0)
    stray = np.abs(np.hypot(aside, points[:, 1] - middle) - half).max()
    if stray > JOIN or abs(abs(path.area) - straight) > JOIN * path.length:
        return None
    ends = (v.clean(turn(angle)((x, middle))) for x in (x0 + half, x1 - half))
    low, high = sorted(ends, key=lambda c: (c[1], c[0]))
    return StraightSlot(nut_end=low, tip_end=high, width=round(width, 9))
