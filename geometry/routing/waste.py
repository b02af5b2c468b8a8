"""Getting the waste out of a slot first: a chain of drilled holes along its middle line.

Holes stay 1 mm inside the slot's wall. Brad points need whole wood under their
centre and rim, so their holes stand 1 mm apart and a saw joins them; Forstner
bits run on their rim and may overlap. Common practice, no source.
"""

from __future__ import annotations

import math
from itertools import combinations

import numpy as np
import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_slot, remembered_by_size
from geometry.curves.polygons import grown, polygon, widest_circle
from geometry.layout import Blank, Drill, Rack, Slot, StraightSlot, slot_path
from geometry.layout.slots import at_home
from geometry.lengths import at_least, at_most, mm
from geometry.routing.depth import LIGHT
from geometry.routing.fit import narrowest
from geometry.routing.refusal import Refusal
from geometry.saying import count, say
from geometry.solids.drilling import point_length
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

CLEAR = 1.0
"""Wood kept between a hole and the slot's wall, mm."""
BETWEEN = 1.0
"""Wood kept between two holes of a brad point bit, mm."""
LAP = 0.75
"""Distance of two holes of a Forstner bit, in diameters, at most."""
FLOOR = 0.5
"""Wood kept between a drill's point and the floor of a blind slot, mm."""

LONG = 20.0
"""A middle line, mm, on which holes surely find room."""
DRAWN = 0.1
"""Taken off the diameter in drawn slots, mm, where the middle line is found by points."""


class Waste(Struct, frozen=True):
    """Holes that take the waste out of a slot (mm)."""

    slot: str
    drill: Drill
    centres: tuple[Vec2, ...]
    """in the order along the slot, side branches last"""
    spacing: float
    """of two neighbours, centre to centre; 0 for a single hole"""
    stop: float
    """depth from the face: of the full diameter in a blind slot, of the point in a through one, where all of it comes out"""
    through: bool
    left_most: float
    """most wood between the finished wall and the nearest hole, or the tip of what stands between two, before any saw"""

    @property
    def saw(self) -> bool:
        """Whether the holes leave more than a light pass takes."""
        return self.left_most > LIGHT + TOUCH

    @property
    def light(self) -> bool:
        """Whether the router finds no more than 2 mm to take: after the saw in a through slot, else at once."""
        return self.through or not self.saw

    @property
    def words(self) -> str:
        """One or two sentences for the bench."""
        how = (say("through, {stop} with the point", stop=at_least(self.stop)) if self.through else
               say("{stop} deep", stop=at_most(self.stop)))
        if len(self.centres) > 1:
            how += say(", {spacing} from centre to centre", spacing=at_most(self.spacing))
        first = count(len(self.centres), "Drill the waste out of {slot}: {n} hole with {drill}, {how}.",
                      "Drill the waste out of {slot}: {n} holes with {drill}, {how}.",
                      slot=self.slot, drill=self.drill.id, how=how)
        if not self.saw:
            return first
        if self.through:
            return first + " " + say("Then saw it out to within {light} of the line.", light=mm(LIGHT))
        return first + " " + say("Chop out what stands between the holes as far as it comes easily.")


def drill_waste(slot: Slot, blank: Blank, rack: Rack) -> Waste | Refusal:
    """The chain of holes with the widest drill of the rack that fits, or why there is none.

    Deterministic. GeometryError when the slot crosses itself.
    """
    through = slot.through(blank.thickness)
    width = narrowest(slot)
    widest = _widest_drill(slot, width)
    refused: Refusal | None = None
    for drill in _slim_enough(rack, widest):
        depth = _depth(drill, slot, blank, rack, through)
        if isinstance(depth, Refusal):
            refused = refused or depth
            continue
        made = _holes(slot, drill, width, depth, through)
        if made is not None:
            return made
    if refused is not None:
        return refused
    if not _slim_enough(rack, math.inf):
        return Refusal(0, say("The rack holds no brad point or Forstner bit to drill the waste out with: add one."))
    if widest <= 0:
        return Refusal(1, say("{slot} is too narrow to drill the waste out: {width}.", slot=slot.id, width=mm(width)))
    return Refusal(1, say("No brad point or Forstner bit of the rack is slim enough for {slot}: up to {widest} would "
                          "do.",
                          slot=slot.id, widest=at_most(widest)))


def drilled(slot: Slot, blank: Blank, rack: Rack) -> tuple[bool, float]:
    """(whether the router finds it light, mm of room that a cutter has where it first goes down), as drill_waste() leaves a slot.

    Of a long through slot that is drawn it is known without setting out its holes. GeometryError when the slot crosses itself.
    """
    if slot.through(blank.thickness) and not isinstance(slot.shape, StraightSlot):
        able = (drill for drill in _slim_enough(rack, _widest_drill(slot, narrowest(slot)))
                if not isinstance(_depth(drill, slot, blank, rack, True), Refusal))
        widest = next(able, None)
        if widest is not None and _long(at_home(slot)[0], widest.diameter / 2 + CLEAR):
            return True, widest.diameter
    waste = drill_waste(slot, blank, rack)
    return (waste.light, waste.drill.diameter if waste.through else 0.0) if isinstance(waste, Waste) else (False, 0.0)


def _long(slot: Slot, needed: float) -> bool:
    """Whether the middle line of a drawn slot, where the wall is at least so far away (mm), is surely LONG or longer."""
    room = max(shapely.get_parts(grown(polygon(slot_path(slot)), -needed)), key=shapely.area, default=None)
    if room is None or room.is_empty:
        return False
    x0, y0, x1, y1 = room.bounds
    # From no place of a room it is farther to the middle line than the radius of its widest disc.
    return max(x1 - x0, y1 - y0) - 2 * math.sqrt(room.area / math.pi) >= LONG


def _widest_drill(slot: Slot, width: float) -> float:
    """Diameter in mm of the widest drill for a slot that is so wide where it is narrowest."""
    return width - 2 * CLEAR - (0.0 if isinstance(slot.shape, StraightSlot) else DRAWN)


def _slim_enough(rack: Rack, widest: float) -> list[Drill]:
    """Drills for waste up to a diameter (mm), the widest first."""
    return sorted((d for d in rack.drills if d.kind != "twist" and d.diameter <= widest + TOUCH),
                  key=lambda d: (-d.diameter, d.kind != "forstner", d.id))


def _depth(drill: Drill, slot: Slot, blank: Blank, rack: Rack, through: bool) -> float | Refusal:
    """How deep the full diameter goes in mm, or why this drill cannot."""
    point = point_length(drill)
    press = rack.press
    if through:
        stop = blank.thickness + point
        has = min(drill.length, press.quill)
        if has < stop - TOUCH:
            if drill.length < press.quill:
                return Refusal(2, say("The waste needs {stop} of drilling to come through, and {drill} is {length} long.",
                                      stop=at_least(stop), drill=drill.id, length=mm(drill.length)))
            return Refusal(2, say("The waste needs {stop} of drilling to come through, and the quill of the drill press "
                                  "travels {quill}.",
                                  stop=at_least(stop), quill=mm(press.quill)))
        return stop
    stop = slot.depth - point - FLOOR
    if stop < 1.0:
        return Refusal(2, say("The point of {drill} would mark the floor of {slot}, which is {depth} deep.",
                              drill=drill.id, slot=slot.id, depth=mm(slot.depth)))
    return stop


def _holes(slot: Slot, drill: Drill, width: float, stop: float, through: bool) -> Waste | None:
    radius = drill.diameter / 2
    most = _most_spacing(drill, width, through)
    if isinstance(slot.shape, StraightSlot):
        centres, spacing = _straight(slot.shape, radius, most)
        half = width / 2
        beside = half - radius
        # One hole alone stands in the middle: there may be more wood before the ends than beside it.
        before_ends = 0.0 if spacing else v.distance(slot.shape.nut_end, slot.shape.tip_end) / 2
        left = max(beside + before_ends, _cusp(half, radius, spacing))
    else:
        home, begins = at_home(slot)
        centres, spacing, left = _drawn(home, radius, most, drill.kind != "forstner")
        if not centres:
            return None
        centres = tuple([v.add(centre, begins) for centre in centres])
    return Waste(slot.id, drill, centres, spacing, stop, through, left)


def _most_spacing(drill: Drill, width: float, through: bool) -> float:
    """Greatest distance of two holes, mm. Forstner holes in a blind slot, where no saw goes, lap until 2 mm are left."""
    if drill.kind != "forstner":
        return drill.diameter + BETWEEN
    lap = LAP * drill.diameter
    radius, rest = drill.diameter / 2, width / 2 - LIGHT
    if through or rest >= radius or rest <= 0:
        return lap
    return min(lap, 2 * math.sqrt(radius * radius - rest * rest))


def _cusp(half: float, radius: float, spacing: float) -> float:
    """Wood in mm between the wall and where two neighbouring holes meet; all of it when they do not meet."""
    if spacing >= 2 * radius:
        return half
    return half - math.sqrt(radius * radius - spacing * spacing / 4)


def _straight(shape: StraightSlot, radius: float, most: float) -> tuple[tuple[Vec2, ...], float]:
    """Evenly spaced holes, the first and the last CLEAR mm from the round ends."""
    apart = v.sub(shape.tip_end, shape.nut_end)
    along = v.unit(apart) if v.norm(apart) > TOUCH else (0.0, 1.0)
    over = shape.width / 2 - radius - CLEAR
    start = v.along(shape.nut_end, along, -over)
    length = v.distance(shape.nut_end, shape.tip_end) + 2 * over
    if length <= TOUCH:
        return (shape.nut_end,), 0.0
    count = _count(length, most, round_up=most < 2 * radius)
    if count == 0:
        return (v.middle(shape.nut_end, shape.tip_end),), 0.0
    gap = length / count
    return tuple(v.along(start, along, i * gap) for i in range(count + 1)), gap


def _count(length: float, spacing: float, round_up: bool) -> int:
    """Number of gaps: holes that may overlap come no farther apart than asked, others no nearer."""
    return math.ceil(length / spacing - 1e-9) if round_up else math.floor(length / spacing + 1e-9)


@remembered_by_size(64, of_slot)
def _drawn(slot: Slot, radius: float, most: float, apart: bool) -> tuple[tuple[Vec2, ...], float, float]:
    """Holes along the middle line, evenly on its longest branch, then wherever a side branch leaves room; their spacing; Waste.left_most."""
    from geometry.routing.medial import middle_lines  # here: the checks read a waste and seldom drill one

    branches = middle_lines(slot, radius + CLEAR)
    if not branches:
        return (), 0.0, 0.0
    wall, needed = Wall(slot_path(slot)), radius + CLEAR
    found: list[Vec2] = []
    spacing = 0.0
    for number, branch in enumerate(branches):
        points = np.array(branch)
        run = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))])
        if number == 0:
            count = _count(run[-1], most, not apart) if run[-1] > TOUCH else 0
            spacing = run[-1] / count if count else 0.0
            at = np.arange(count + 1) * spacing if count else np.array([run[-1] / 2])
        else:
            at = np.arange(most, run[-1] + 1e-9, most) if run[-1] >= most else np.array([run[-1]])
        places = np.stack([np.interp(at, run, points[:, 0]), np.interp(at, run, points[:, 1])], axis=1)
        for centre, about in zip(map(tuple, places.tolist()), wall.about(places).tolist(), strict=True):
            free = all(v.distance(centre, other) >= 0.9 * most for other in found) if number or apart else True
            if free and about >= needed - 2 * FLAT and (about >= needed + 2 * FLAT or wall.inside(centre) >= needed):
                found.append(centre)
    return tuple(found), float(spacing), _measured(wall, tuple(found), radius) if found else 0.0


def _measured(wall: Wall, centres: tuple[Vec2, ...], radius: float) -> float:
    """Waste.left_most of holes in a drawn slot, mm."""
    points = wall.path.flatten()
    steps = np.hypot(*np.diff(points, axis=0).T)
    run = np.concatenate([[0.0], np.cumsum(steps)])
    at = np.linspace(0.0, run[-1], max(200, int(run[-1])))
    rim = np.stack([np.interp(at, run, points[:, 0]), np.interp(at, run, points[:, 1])], axis=1)
    rim = np.vstack([rim, [segment.start for segment in wall.path]])  # a sharp corner is farthest from every hole
    far = np.hypot(rim[:, None, 0] - np.array(centres)[None, :, 0], rim[:, None, 1] - np.array(centres)[None, :, 1])
    tips = _tips(centres, radius)
    between = float(wall.about(np.array(tips)).max()) if tips else 0.0
    return max(float((far.min(axis=1) - radius).max()), between)


def _tips(centres: tuple[Vec2, ...], radius: float) -> list[Vec2]:
    """Where the wood between two neighbouring holes ends: both crossings of their rims, or the middle of a web that stands."""
    found = []
    for one, two in combinations(centres, 2):
        apart = v.distance(one, two)
        if apart > 2 * (radius + BETWEEN):
            continue
        middle, across = v.middle(one, two), v.left(v.unit(v.sub(two, one)))
        reach = math.sqrt(max(radius * radius - apart * apart / 4, 0.0))
        found += [tip for tip in (v.along(middle, across, reach), v.along(middle, across, -reach))
                  if all(v.distance(tip, other) >= radius - TOUCH for other in centres)]
    return found


def widest(slot: Slot) -> float:
    """Diameter in mm of the largest disc inside a slot, to 0.01 mm; exact for a straight slot."""
    return slot.shape.width if isinstance(slot.shape, StraightSlot) else _widest(at_home(slot)[0])


@remembered_by_size(64, of_slot)
def _widest(slot: Slot) -> float:
    return 2 * shapely.length(widest_circle(polygon(slot_path(slot)), 0.005))
