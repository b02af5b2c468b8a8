"""Where a side bore starts on the square edge of the blank, how the table is set for it, and what lies on its way through the waste."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import shapely

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.items import Item, plan
from geometry.checks.scene import Scene
from geometry.checks.snags import BLANK, NOTE, SPOILS, TIGHT, Snag, grade, short
from geometry.checks.words import apart, clearance, first, into, listed, name, tenths
from geometry.layout.blank import Blank
from geometry.layout.names import OUTLINE
from geometry.layout.shop import DrillPress, Margins
from geometry.saying import number, say
from geometry.solids.nearby import NOTHING, Rows
from geometry.solids.side import tilt_of
from geometry.solids.walls import Wall
from geometry.terms import term
from geometry.tilt_words import tilt_words
from geometry.tolerance import SAME_TILT, TOUCH
from geometry.vectors import Vec2

_SAME_DEPTH = 1e-6


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of bores that come near each other in the waste or to wood of the head there, and notes of the tilts that opposite bores share."""
    sides, margins = scene.sides, scene.layout.margins
    level = scene.memo.snags(_level, sides, scene.layout.blank.thickness)
    near = scene.memo.pairs(_boxes, sides, margins.bore_bore, margins).of_two()
    near.keep([_meet(sides[i], sides[k], margins) for i, k in near.new])
    return (*near.flat, *scene.memo.snags(_through_the_head, sides, scene.outline), *scene.memo.of(_notes, level))


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Snags and notes of a side bore's mark and tilt."""
    if not _has_bore(item):
        return ()
    return (*_mark(item, around.blank, around.margins), *_tilt(item, around.margins.skate_angle, around.press))


def _has_bore(item: Item) -> bool:
    return item.mount == "side" and item.post is not None


def _mark(item: Item, blank: Blank, margins: Margins) -> tuple[Snag, ...]:
    """The mark has to lie on the square edge, with wood to either side of the drill.

    Where the drill enters at a tilt it takes more of the edge than it is wide; a counterbore is drilled at the same mark.
    """
    bore = item.post
    if bore.mark is None:
        return (Snag("no-mark", SPOILS, (item.id, BLANK), bore.start, None, None,
                     say("The axis of {item} never meets the {side} square edge.", item=item.id, side=term(item.frame.side)),
                     say("Slide {item} to where the outline runs along the blank.", item=item.id)),)
    widest = max(drilling.radius for drilling in item.drillings if drilling.hole == bore.hole)
    measured = min(blank.tip - bore.mark[1], bore.mark[1] + blank.behind) - widest / math.cos(tilt_of(item.frame))
    found = []
    if short(measured, margins.blank_edge):
        end = "tip" if blank.tip - bore.mark[1] < bore.mark[1] + blank.behind else "nut"
        text = clearance(measured, margins.blank_edge, "The bore for {item} runs {measured} mm past the {end} end of the square edge.",
                         "The bore for {item} leaves {a} mm of the square edge to the {end} end of the blank; {b} mm wanted.",
                         item=item.id, end=term(end))
        found.append(Snag("no-mark", grade(measured), (item.id, BLANK), bore.mark, measured, margins.blank_edge, text,
                          say("Leave the blank {by} mm longer at the {end} end.",
                              by=tenths(margins.blank_edge - measured), end=term(end))))
    waste = bore.stop - bore.depth
    if waste < -1e-6:
        found.append(Snag("no-mark", SPOILS, (item.id, BLANK), bore.start, waste, 0.0,
                          say("The seat of {item} lies {waste} mm outside the square edge.",
                              item=item.id, waste=into(waste)),
                          say("Widen the blank, or glue on an ear.")))
    return tuple(found)


def _tilt(item: Item, skate: float, press: DrillPress) -> tuple[Snag, ...]:
    """A caution where the drill enters at an angle; a snag where the table does not tilt that far."""
    tilt = math.degrees(tilt_of(item.frame))
    where = item.post.mark or item.post.start
    if abs(tilt) > press.tilt + 1e-9:
        return (Snag("table-tilt", TIGHT, (item.id,), where, abs(tilt), press.tilt,
                     say("{item} needs a tilt of {tilt} degrees; the table goes to {most:g}.",
                         item=first(item.id), tilt=number(abs(tilt), f".{apart(abs(tilt), press.tilt)}f"), most=press.tilt),
                     say("Make a wedge for the rest of the angle."), "deg"),)
    if abs(tilt) > skate + 1e-9:
        return (Snag("skate", NOTE, (item.id,), where, abs(tilt), skate,
                     say("The drill for {item} enters the square edge at {tilt:.1f} degrees and would skate.",
                         item=item.id, tilt=abs(tilt)),
                     say("Make a deep centre mark, use a guide block, or start with a short stiff drill."), "deg"),)
    return ()


def _way(item: Item) -> tuple[float, Vec2, Vec2, Vec2] | None:
    """(radius, where its rim leaves the square edge, seat, end) of all that is drilled at the mark of a side bore, in plan; None where there is none."""
    bore = item.post
    if not _has_bore(item) or bore.mark is None:
        return None
    radius = max(drilling.radius for drilling in item.drillings if drilling.hole == bore.hole)
    out = v.along(plan(bore.mark), plan(bore.direction), -radius * math.tan(abs(tilt_of(item.frame))))
    return radius, out, plan(bore.start), plan(bore.end)


def _through_the_head(item: Item, outline: Wall) -> tuple[Snag, ...]:
    """A side bore whose way from the square edge to its seat goes through wood of the head that stands out beyond the seat.

    What lies within its own width of the seat is its mouth: a hollow edge rises beside it there.
    """
    way = _way(item)
    if way is None or outline.crossing is not None:
        return ()
    radius, out, seat, _ = way
    into_wood = plan(item.post.direction)
    if v.dot(v.sub(seat, out), into_wood) <= 2 * radius:
        return ()  # so it is, too, where the seat lies outside the square edge
    line = shapely.LineString((v.along(seat, into_wood, -2 * radius), out))
    if shapely.distance(line, outline.area) >= radius - TOUCH:
        return ()
    x, y = shapely.get_coordinates(shapely.shortest_line(line, outline.area))[0].tolist()
    return (Snag("way-through-head", SPOILS, (item.id, OUTLINE), (x, y, item.post.start[2]), None, None,
                 say("On its way from the square edge the {bore} goes through wood of the head.", bore=name(item.post)),
                 say("Slide {item} to where nothing of the head stands between its seat and the square edge.", item=item.id)),)


def _boxes(items: Sequence[Item]) -> Rows:
    """About each side bore from the square edge to its end; boxes that hold nothing for what has none."""
    found = []
    for item in items:
        way = _way(item)
        if way is None:
            found.append(NOTHING)
            continue
        radius, *points = way
        (xs, ys), z = zip(*points, strict=True), item.post.start[2]
        found.append(((min(xs) - radius, min(ys) - radius, z - radius), (max(xs) + radius, max(ys) + radius, z + radius)))
    return found


def _meet(one: Item, two: Item, margins: Margins) -> tuple[Snag, ...]:
    """Two bores that come near each other before one has come to its seat; what is nearer beyond both seats is told of the drillings."""
    ways, found = (_way(one), _way(two)), []
    apart_down = one.post.start[2] - two.post.start[2]
    for waste, whole in (ways, ways[::-1]):
        ends = shapely.shortest_line(shapely.LineString(waste[1:3]), shapely.LineString((whole[1], whole[3])))
        here, there = map(tuple, shapely.get_coordinates(ends).tolist())
        if v.distance(here, waste[2]) > TOUCH:
            found.append((math.hypot(v.distance(here, there), apart_down) - waste[0] - whole[0], here, there))
    if not found:
        return ()
    measured, here, there = min(found)
    needed = margins.bore_bore
    if not short(measured, needed):
        return ()
    words = {"one": name(one.post), "two": name(two.post)}
    text = clearance(measured, needed, "Between square edge and seat the {one} and the {two} cut {measured} mm into each other.",
                     "Between square edge and seat the {one} and the {two} pass {a} mm apart; {b} mm wanted.", **words)
    along = v.sub(plan(one.post.start), plan(two.post.start))
    return (Snag("ways-meet", TIGHT, (one.id, two.id), (*v.middle(here, there), one.post.start[2]), measured, needed, text,
                 say("Plug the first of the two in the waste before the other is drilled, or move the two farther apart."),
                 push=v.scale(v.unit(along), needed - measured) if v.norm(along) > TOUCH else None),)


def _level(item: Item, thickness: float) -> tuple[tuple[float, Item], ...]:
    """(tilt in rad, item) of a side bore at half the thickness."""
    level = _has_bore(item) and abs(item.frame.origin[2] - thickness / 2) <= _SAME_DEPTH
    return ((tilt_of(item.frame), item),) if level else ()


def _shared(tilts: tuple[tuple[float, Item], ...]) -> list[list[tuple[float, Item]]]:
    """For each table setting that bores of both sides share: the least tilted of them, then all, in the order of the tuners."""
    level = sorted(enumerate(tilts), key=lambda entry: (entry[1][0], entry[0]))
    found, at = [], 0
    while at < len(level):
        end = at
        while end < len(level) and level[end][1][0] - level[at][1][0] <= SAME_TILT:
            end += 1
        if len({item.frame.side for _, (_, item) in level[at:end]}) == 2:
            found.append([level[at][1], *(entry for _, entry in sorted(level[at:end], key=lambda entry: entry[0]))])
        at = end
    return found


def _notes(tilts: tuple[tuple[float, Item], ...]) -> tuple[Snag, ...]:
    return tuple([_note(*group) for group in _shared(tilts)])


def _note(least: tuple[float, Item], *bores: tuple[float, Item]) -> Snag:
    """One note for a table setting that bores of both sides share; exact only at half the thickness."""
    ids = tuple(item.id for _, item in bores)
    return Snag("shared-tilt", NOTE, ids, bores[0][1].frame.origin, math.degrees(least[0]), None,
                say("{ids} share a tilt: {tilt}.", ids=first(listed(ids)), tilt=tilt_words(least[0])),
                say("Keep the table set and turn the blank over about the centreline."), "deg")
