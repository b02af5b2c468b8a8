"""What the Router stage adds to the face: wood left to pare, waste holes, the template, the tightest place, grain and feed."""

from __future__ import annotations

import math
from collections.abc import Iterable

import shapely
from shapely.geometry import LineString, Polygon

from geometry import vectors as v
from geometry.cancellation import Ask, go_on
from geometry.curves.polygons import grown, parts, polygon
from geometry.drawing.grain import grain_marks
from geometry.drawing.marks import Area, Cross, Drawing, Label, Mark, Stroke
from geometry.drawing.offset_path import offset_path
from geometry.drawing.outside_template import outside_lines
from geometry.drawing.room import Room
from geometry.drawing.router_marks import waste_marks
from geometry.drawing.shapes import chain, ring_path, straight
from geometry.errors import GeometryError
from geometry.layout import Headstock, Slot, StraightSlot, slot_path
from geometry.lengths import at_most, mm
from geometry.routing import RoutingPlan, SlotPlan, Waste
from geometry.routing.board import BoardNote
from geometry.routing.fit import narrowest
from geometry.routing.grain import routed_edge
from geometry.routing.reached import Patch
from geometry.saying import say
from geometry.vectors import Vec2

LETTER = 1.6
"""Capital height of the words, mm."""
WORDS = "cross"
"""Style of the words beside wood: the strongest ink, because they stand on wood."""
THIN = {"thin web": say("template {wide}"), "openings meet": say("template {wide}"), "pin outside": say("pin outside, {wide}"),
        "pin near an edge": say("beside the pin {wide}")}
"""Kinds of notes on the board that have a place on the face, and the words there."""
HATCH = 0.8
"""Distance of hatching lines, mm."""
FEED = 24.0
"""Distance of feed arrows along the edge, mm."""
BESIDE = 4.0
"""From the edge to the feed arrows, mm."""
LONG = 7.0
"""Length of a feed arrow, mm."""


def face_groups(layout: Headstock, routing: RoutingPlan, ask: Ask = go_on) -> dict[str, Drawing]:
    """Marks by what they show: "left", "waste", "template", "tightest", "grain".

    Template lines are those of each thing's own first plan, exact where the layout is. `ask` is asked between them.
    """
    groups: dict[str, list[Mark]] = {"left": [], "waste": [], "template": [], "tightest": [], "grain": []}
    words = Room(())
    for plan in routing.all:
        ask(_at_marks)
        groups["left"] += _left_marks(plan, words)
        groups["waste"] += waste_marks(plan.waste) if isinstance(plan.waste, Waste) else ()
        groups["template"] += _template(layout, plan)
    for slot, plan in zip(layout.to_rout, routing.slots, strict=True):
        ask(_at_marks)
        groups["tightest"] += [] if plan.broken else tightest_marks(slot)
    ask(_at_marks)
    groups["grain"] += [] if any(plan.broken for plan in routing.all) else _grain_and_feed(layout, routing)
    return {name: tuple(marks) for name, marks in groups.items()}


def _at_marks() -> str:
    return say("Marks on the face")


def _left_marks(plan: SlotPlan, words: Room) -> list[Mark]:
    """Each piece of wood that the plan leaves, hatched, with its greatest depth; each corner of wood that it rounds, filled. The depth is
    left out where it has no room beside the `words` so far."""
    if plan.best is None:
        return []
    marks: list[Mark] = []
    for patch in plan.best.left:
        marks.append(Area(ring_path(patch.area.exterior), "left standing", plan.of))
        marks += [Stroke(straight(a, b), "left standing", plan.of) for a, b in hatching(patch.area)]
        marks += words.put(_depth(patch, plan.of, mm(patch.depth)))
    for patch in plan.best.reached.lost:
        marks.append(Area(ring_path(patch.area.exterior), "spoiled", plan.of))
        marks += words.put(_depth(patch, plan.of, say("rounded by {depth}", depth=mm(patch.depth))))
    return marks


def hatching(area: Polygon) -> list[tuple[Vec2, Vec2]]:
    """Lines at 45 degrees across an area, HATCH mm apart."""
    x0, y0, x1, y1 = area.bounds
    step = HATCH * math.sqrt(2)
    high = y1 - y0
    starts = [x0 - high + i * step for i in range(1, max(2, math.ceil((x1 - x0 + high) / step)))]
    lines = shapely.multilinestrings([[(x, y0), (x + high, y1)] for x in starts])
    found = []
    for piece in shapely.get_parts(lines.intersection(area)):
        if isinstance(piece, LineString) and piece.length > 0.05:
            (ax, ay), (bx, by) = piece.coords[0], piece.coords[-1]
            found.append(((ax, ay), (bx, by)))
    return found


def tightest_marks(slot: Slot) -> list[Mark]:
    """The width where a slot is narrowest, from wall to wall; for a straight slot across its middle."""
    found = tightest_place(slot)
    if found is None:
        return []
    a, b = found
    along = v.unit(v.sub(b, a)) if v.distance(a, b) > 1e-9 else (1.0, 0.0)
    side = v.right(along)
    marks: list[Mark] = [Stroke(straight(a, b), "dimension", slot.id)]
    marks += [Stroke(straight(v.along(p, side, -1.2), v.along(p, side, 1.2)), "dimension", slot.id) for p in (a, b)]
    right = max(a, b)
    marks.append(Label(at_most(narrowest(slot)), (right[0] + 1.2, right[1] - LETTER / 2), LETTER, WORDS, slot.id))
    return marks


def tightest_place(slot: Slot) -> tuple[Vec2, Vec2] | None:
    """Two points of the wall opposite each other where a disc passes with least room; None when no place stands out."""
    if isinstance(slot.shape, StraightSlot):
        shape = slot.shape
        along = v.unit(v.sub(shape.tip_end, shape.nut_end)) if v.distance(shape.tip_end, shape.nut_end) > 1e-9 else (0.0, 1.0)
        middle, out = v.middle(shape.nut_end, shape.tip_end), v.right(along)
        return v.along(middle, out, -shape.width / 2), v.along(middle, out, shape.width / 2)
    try:
        area = polygon(slot_path(slot))
    except GeometryError:
        return None
    room = parts(grown(area, -(narrowest(slot) / 2 + 0.05)), 1e-4)
    if len(room) < 2:
        whole = grown(area, -max(narrowest(slot) / 2 - 0.05, 0.0))
        if whole.is_empty:
            return None
        middle = whole.representative_point()
    else:
        middle = shapely.shortest_line(room[0], shapely.union_all(room[1:])).interpolate(0.5, normalized=True)
    wall = area.exterior
    near = wall.interpolate(wall.project(middle))
    at, one = (middle.x, middle.y), (near.x, near.y)
    if v.distance(at, one) < 1e-9:
        return None
    way = v.unit(v.sub(at, one))
    across = LineString([one, v.along(one, way, 4 * v.distance(at, one) + 1.0)]).intersection(area)
    pieces = [p for p in shapely.get_parts(across) if isinstance(p, LineString)]
    if not pieces:
        return None
    first = min(pieces, key=lambda p: p.distance(middle))
    return (first.coords[0][:2], first.coords[-1][:2])


def note_marks(notes: Iterable[BoardNote]) -> Drawing:
    """A cross and a word where the template board is thin, gone, or lets a pin go; the panel says the rest."""
    marks: list[Mark] = []
    for note in notes:
        if note.kind not in THIN:
            continue
        x, y = note.where
        marks += [Cross(note.where, 1.5, WORDS, note.of[0]),
                  Label(THIN[note.kind].format(wide=at_most(max(0.0, note.measured))), (x + 2.0, y - LETTER / 2), LETTER, WORDS, note.of[0])]
    return tuple(marks)


def _grain_and_feed(layout: Headstock, routing: RoutingPlan) -> list[Mark]:
    """Stretches of the outline against the grain for the first side routed, and the way to feed outside and inside."""
    best = routing.outline.best
    side = "face" if best is None else best.passes[0].side
    try:
        marks = list(grain_marks(layout, side))
        edge = routed_edge(layout)
    except GeometryError:
        return []
    count = max(1, round(edge.length / FEED))
    for i in range(count):
        along = (i + 0.5) * edge.length / count
        at, tangent = edge.point_at(along), edge.tangent_at(along)
        marks += arrow(v.along(at, v.right(tangent), BESIDE), tangent, "outline")
    for slot in layout.to_rout:
        try:
            wall = slot_path(slot)
        except GeometryError:
            continue
        for share in (0.25, 0.75):
            at, tangent = wall.point_at(share * wall.length), wall.tangent_at(share * wall.length)
            marks += arrow(v.along(at, v.right(tangent), -2.2), (-tangent[0], -tangent[1]), slot.id)
    return marks


def arrow(middle: Vec2, way: Vec2, owner: str) -> list[Mark]:
    """An arrow LONG mm long about a point."""
    start, tip = v.along(middle, way, -LONG / 2), v.along(middle, way, LONG / 2)
    out = v.right(way)
    barbs = [v.along(v.along(tip, way, -2.2), out, s) for s in (-1.1, 1.1)]
    return [Stroke(straight(start, tip), "feed", owner), Stroke(chain((barbs[0], tip, barbs[1])), "feed", owner)]


def _template(layout: Headstock, plan: SlotPlan) -> list[Mark]:
    if plan.best is None:
        return []
    if plan.of == "outline":
        lines = outside_lines(layout.outline, layout.nut, plan.best.offset)
    else:
        lines = offset_path(slot_path(next(slot for slot in layout.slots if slot.id == plan.of)), plan.best.offset).paths
    return [Stroke(line, "template", plan.of) for line in lines]


def _depth(patch: Patch, owner: str, words: str) -> list[list[Label]]:
    """Where the depth of a patch may stand: beside its deepest point, outwards from the patch or inwards; then above or below that."""
    x0, _, x1, _ = patch.area.bounds
    x, y = patch.at
    turn = -1 if x < (x0 + x1) / 2 else 1
    return [[Label(words, (x + way, y - LETTER / 2 + up), LETTER, WORDS, owner, anchor="left" if way > 0 else "right")]
            for up in (0.0, 1.8 * LETTER, -1.8 * LETTER) for way in (turn, -turn)]
