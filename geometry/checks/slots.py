"""Slots: their own shape, the rail to the outline, the web between them, the wood to the nut and below a floor."""

from __future__ import annotations

import math
from collections.abc import Iterable
from itertools import combinations

import shapely

from geometry import vectors as v
from geometry.checks.memo import Memo, together
from geometry.checks.pockets import pocket_advice, snags_beside
from geometry.checks.scene import Opening, Scene, nut_line
from geometry.checks.snags import BACK, NUT, SPOILS, TIGHT, Snag, grade, short
from geometry.checks.words import both, clearance, first, into, mm, tenths
from geometry.curves import Line, Path
from geometry.curves.matrix import turn
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.layout.strings import Nut
from geometry.saying import say
from geometry.solids.per_thread import remembered_per_thread
from geometry.solids.slot_ways import into_outline, out_of_slot
from geometry.solids.walls import Wall
from geometry.tolerance import ALONG_NUT, FLAT
from geometry.vectors import Vec2


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every slot, alone, with the outline, and with every other."""
    return scene.memo.whole(_all, scene.openings, scene.to_rout, scene.outline, scene.layout.margins, scene.layout.blank.thickness,
                            scene.memo.of(nut_line, scene.layout.nut.slant))


def _all(memo: Memo, openings: tuple[Opening, ...], to_rout: tuple[Opening, ...], outline: Wall, margins: Margins, thickness: float,
         line: Nut) -> tuple[Snag, ...]:
    crossing = memo.each(_crosses, openings)
    found = [snag for snag in crossing if snag is not None]
    found += memo.snags(_nut, to_rout, margins, line)
    found += memo.snags(_floor, to_rout, thickness, margins)
    whole = openings
    if any(crossing):
        whole = memo.of(together, *[o for o, snag in zip(openings, crossing, strict=True) if snag is None])
    found += memo.snags(_rail, whole, outline, margins, line)
    for i, k in memo.of(_neighbours, whole, margins.web):
        found += memo.of(_web, whole[i], whole[k], margins)
    return tuple(found)


def _neighbours(whole: tuple[Opening, ...], web: float) -> list[tuple[int, int]]:
    """Slots that may have less than a web (mm) between them."""
    boxes = [opening.wall.path.box for opening in whole]
    return [(i, k) for (i, a), (k, b) in combinations(enumerate(boxes), 2)
            if max(a[0] - b[2], b[0] - a[2], a[1] - b[3], b[1] - a[3]) <= web]


def _crosses(opening: Opening) -> Snag | None:
    if not opening.crosses:
        return None
    x, y = opening.wall.crossing
    return Snag("slot-crosses", SPOILS, (opening.id,), (x, y, 0.0), None, None,
                say("The wall of {opening} crosses itself at {x}, {y}.", opening=opening.id, x=mm(x), y=mm(y)),
                say("Move the nodes beside that place apart."))


def before_nut(opening: Opening, nut: Nut) -> tuple[float, Vec2]:
    """(how far a slot's wall lies before the nut line where it is nearest, mm, and where that is)."""
    points = opening.wall.points
    low = points[(points @ nut.ahead).argmin()].tolist()
    measured = opening.wall.path.mapped(turn(math.radians(nut.slant))).box[1] if nut.slant else opening.wall.path.box[1]
    return measured, (low[0], low[1])


def _nut(opening: Opening, margins: Margins, nut: Nut) -> tuple[Snag, ...]:
    measured, low = before_nut(opening, nut)
    needed = margins.slot_nut
    if not short(measured, needed):
        return ()
    lacks = (needed - measured) / nut.ahead[1]
    text = clearance(measured, needed, "{opening} runs {measured} mm past the nut line.",
                     "{opening} ends {a} mm before the nut line; {b} mm wanted.", opening=first(opening.id))
    return (Snag("slot-to-nut", grade(measured), (opening.id, NUT), (*low, 0.0), measured, needed, text,
                 say("Start {opening} nearer the tip by {needed} mm.",
                     opening=opening.id, needed=tenths(lacks)), push=(0.0, lacks)),)


def _floor(opening: Opening, thickness: float, margins: Margins) -> tuple[Snag, ...]:
    """The wood below a blind slot."""
    measured, needed = thickness - opening.depth, margins.side_cover
    if opening.slot.depth is None or not short(measured, needed):
        return ()
    a, b = both(measured, needed)
    place = opening.wall.area.representative_point()
    return (Snag("slot-floor", grade(measured), (opening.id, BACK), (place.x, place.y, thickness), measured, needed,
                 say("{opening} leaves {a} mm of wood below its floor; {b} mm wanted.", opening=first(opening.id), a=a, b=b),
                 say("Rout {opening} less deep by {by} mm, or right through.", opening=opening.id, by=tenths(needed - measured))),)


def _rail(opening: Opening, outline: Wall, margins: Margins, nut: Nut) -> tuple[Snag, ...]:
    needed = margins.rail
    if opening.there:
        return snags_beside(opening, outline, without_nut(outline, nut), nut, needed)
    inside = shapely.covers(outline.area, opening.wall.area)
    if inside and not shapely.dwithin(outline.line, opening.wall.line, needed + 2 * FLAT):
        return ()
    measured, where = _rail_of(opening.wall, outline, inside)
    if not short(measured, needed):
        return ()
    beside = beside_nut(opening, outline, inside, margins, nut)
    if beside is not None:
        measured, p, q = beside
        where = v.middle(p, q)
        if not short(measured, needed):
            return ()
    if measured < 0:
        back = into_outline(opening.slot, opening.wall, outline)
        if back is not None and back[0] > -measured:
            measured = -back[0]
        push = (_inwards(opening, outline, where, needed - measured) if back is None else
                v.scale(back[1], needed - measured))
        return (Snag("slot-outside", SPOILS, (opening.id, OUTLINE), (*where, 0.0), measured, needed,
                     say("{opening} leaves the head by {measured} mm.",
                         opening=first(opening.id), measured=into(measured)),
                     say("Move {opening} inwards, or make it shorter or narrower.", opening=opening.id), push=push),)
    a, b = both(measured, needed)
    return (Snag("rail", TIGHT, (opening.id, OUTLINE), (*where, 0.0), measured, needed,
                 say("The rail beside {opening} is {a} mm; {b} mm wanted.", opening=opening.id, a=a, b=b),
                 say("Make {opening} narrower or shorter, or widen the outline there.", opening=opening.id),
                 push=_inwards(opening, outline, where, needed - measured)),)


def beside_nut(opening: Opening, outline: Wall, inside: bool, margins: Margins, nut: Nut) -> tuple[float, Vec2, Vec2] | None:
    """(rail in mm to the outline apart from the nut line, place on that, place of the slot) of a slot too close to the nut line.

    What such a slot leaves or lacks at the nut line is told there: as its rail counts the wood at the edges and the tip. None
    for a slot that keeps clear of the nut line or leaves the head elsewhere, and where the outline does not end along it.
    `inside`: whether the outline covers the slot.
    """
    if not short(before_nut(opening, nut)[0], margins.slot_nut):
        return None
    edges = without_nut(outline, nut)
    if edges is None:
        return None
    out = () if inside else shapely.get_coordinates(shapely.difference(opening.wall.area, outline.area)).tolist()
    if any(nut.before(p) > ALONG_NUT + FLAT for p in out):
        return None
    return edges.to(opening.wall)


@remembered_per_thread(maxsize=8)
def without_nut(outline: Wall, nut: Nut) -> Wall | None:
    """An outline without its straight end along the nut line, slanted or not; None where it has none, or one in several parts."""
    pieces = outline.path.segments
    along = [isinstance(piece, Line) and max(abs(nut.before(piece.p0)), abs(nut.before(piece.p1))) <= ALONG_NUT for piece in pieces]
    begins = [i for i, own in enumerate(along) if not own and along[i - 1]]
    if len(begins) != 1:
        return None
    rest = pieces[begins[0]:] + pieces[:begins[0]]
    return Wall(Path(rest[:along.count(False)]))


def _inwards(opening: Opening, outline: Wall, where: Vec2, amount: float) -> Vec2:
    """A shift of a slot of `amount` mm away from the place where it comes nearest to the outline."""
    if shapely.covers(outline.area, opening.wall.area):
        _, there, here = outline.to(opening.wall)
        return v.scale(v.unit(v.sub(here, there)), amount)
    foot = outline.foot(where)
    return v.scale(v.left(foot.tangent), amount)


def _rail_of(wall: Wall, outline: Wall, inside: bool) -> tuple[float, Vec2]:
    """(rail in mm, place); negative by how far the slot sticks out."""
    if inside:
        distance, p, q = outline.to(wall)
        return distance, v.middle(p, q)
    depth, i = outline.outermost(wall.points)
    return min(depth, -2e-6), (float(wall.points[i, 0]), float(wall.points[i, 1]))


def _shared(one: Wall, two: Wall) -> Vec2:
    """A place in both of two areas that overlap."""
    both_have = one.area if one.path == two.path else shapely.intersection(one.area, two.area)  # of copies: dear, and known
    if both_have.is_empty:  # one is so small that nothing of it counts as an area
        return tuple(min(one, two, key=lambda wall: wall.line.length).points[0].tolist())
    return both_have.representative_point().coords[0]


def _web(one: Opening, two: Opening, margins: Margins) -> tuple[Snag, ...]:
    needed = margins.web
    if one.there and two.there:
        return ()  # whatever is between them, nothing of it is cut
    pocket = one.id if one.there else two.id if two.there else ""
    if shapely.intersects(one.wall.area, two.wall.area):
        out = out_of_slot(one.slot, one.wall, two.slot, two.wall)
        push = None if out is None else v.scale(out[1], out[0] + needed)
        # Where no way out is known the deepest point of either tells.
        depth = (max(float(two.wall.about(one.wall.points).max()), float(one.wall.about(two.wall.points).max())) if out is None else
                 out[0])
        depth = max(depth, 2e-6)
        return (Snag("slots-overlap", SPOILS, (one.id, two.id), (*_shared(one.wall, two.wall), 0.0), -depth, needed,
                     say("{one} and {two} overlap.",
                         one=first(one.id), two=two.id), pocket_advice(pocket) if pocket else say("Move them apart, or hold both and join them into one slot."),
                     push=push),)
    if not shapely.dwithin(one.wall.line, two.wall.line, needed + 2 * FLAT):
        return ()
    measured, p, q = one.wall.to(two.wall)
    if not short(measured, needed):
        return ()
    a, b = both(measured, needed)
    return (Snag("web", grade(measured), (one.id, two.id), (*v.middle(p, q), 0.0), measured, needed,
                 say("The web between {one} and {two} is {a} mm; {b} mm wanted.", one=one.id, two=two.id, a=a, b=b),
                 pocket_advice(pocket) if pocket else say("Make one of them narrower."), push=v.scale(v.unit(v.sub(p, q)), needed - measured)),)
