"""Which loop is the outline, and what the others are: by where they lie, and by the names of layers that an export of ours has."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

import shapely
from msgspec.structs import replace
from shapely.geometry.base import BaseGeometry

from app.formats.drawing_in.likeliest import ROUND, area_of, is_rectangle, is_round, is_wide, likeliest, reach_of, sides_of
from app.formats.drawing_in.result import DrawingRead, Loop
from app.formats.layer_names import depth_on, style_on
from geometry.curves import Path
from geometry.joining.ends import Groups
from geometry.joining.on_edge import lies_on, nut_edges
from geometry.saying import say
from geometry.terms import HOLE_THERE, POCKET
from geometry.tolerance import JOIN
from geometry.vectors import Vec2

LARGEST_HOLE = 20.0
"""Diameter in mm up to which a round loop is taken for a hole (common practice, no source)."""

SMALLEST_BORE = 5.0
"""Diameter in mm of the smallest bore that a post goes through (common practice, no source)."""

SAME_MIDDLE = 0.1
"""mm between the middles of round loops that are about one hole"""

LONGEST_PLATE = 45.0
"""mm: of one tuner (common practice, no source)."""

THIN = 2.0
"""mm of the narrowest slot that is cut in a head (common practice, no source)."""

LARGEST_LETTER = 30.0
"""mm: of one letter on a face (common practice, no source)."""

MOST_HEADS = 24
"""Loops of one size beyond which they are no heads"""

ALIKE = 0.02
"""Part by which heads on one sheet differ in size at the most, as front and back of one do when they are drawn by hand"""

MOST_CUT = 0.6
"""Part of the outline's area beyond which a loop in it is no slot: it goes round beside the edge, as a binding does (common practice, no source)."""

_FRAME = ("outline", "nut line", "centreline")
"""A drawing with all of these layers is an export of ours: its other names mean what they say too."""

_BY_PLACE = ("hole", "post bore", "counterbore", "clearance bore", "screw pilot", "pin hole", "locating pin hole")
"""Layers of an export whose loops are what they would be in any drawing: they may lie on a folded edge too."""


def is_ours(layers: Iterable[str]) -> bool:
    """Whether a drawing with these layers is an export of ours."""
    return set(_FRAME) <= {style_on(layer) for layer in layers}


def is_upright(read: DrawingRead) -> bool:
    """Whether nut line and centreline are drawn in it as they are, so that a nut that is askew is a slanted one: in an export of ours."""
    return read.up is not None and is_ours(read.layers)


def is_work(layer: str) -> bool:
    """Whether what an export of ours has on a layer is cut or drilled, or there already; also what another hand has added on its own."""
    style = style_on(layer)
    return style is None or style in ("outline", "slot", POCKET, HOLE_THERE, *_BY_PLACE)


def with_roles(paths: Sequence[tuple[Path, str]], layers: Iterable[str] = (), outline: Path | None = None) -> tuple[Loop, ...]:
    """Loops from (closed path, layer), largest first; `layers` are those of everything in the drawing, open lines too.

    What lies on a layer that an export of ours has for pockets or holes that are there is one, wherever it lies: a
    pocket may cross the outline. In such an export the other layers are taken by their names as well. Of the rest
    the largest is the outline, unless another is named as such or it is a fretboard, a body or the frame of the sheet (`likeliest`); of heads of
    one size (`heads`) that which has the most loops in it, and of these the one farthest left. Inside it, round loops up to LARGEST_HOLE are holes and the
    others slots; loops inside a slot that are not holes, loops outside and loops across the outline are 'other', and so is what is
    shaped like the plate of a tuner about its hole, or thin as letters are: that is drawn to see its place, and nobody means to rout it.
    What ends on a straight edge as wide as a nut is a pocket, as of a truss rod or of the nut.
    """
    ordered = sorted(paths, key=lambda item: -abs(item[0].area))
    ours = is_ours(layers)
    given = [_given(path, layer, ours) for path, layer in ordered]
    areas = [area_of(path) for path, _ in ordered]
    about = shapely.STRtree(areas)
    slots: dict[int, BaseGeometry] = {}
    named = [i for i, (path, _) in enumerate(ordered) if path is outline]
    stated = [i for i, role in enumerate(given) if role == "outline"]
    # Where the outline of an export does not close, none of its holes is one.
    free = [i for i, role in enumerate(given) if role is None and not (ours and style_on(ordered[i][1]) in _BY_PLACE)]
    at = next(iter((*named, *stated, *likeliest(free, [path for path, _ in ordered], areas))), None)
    if at is not None and not named and not stated:
        at = _fullest(_alike(at, free, areas), areas)
    within = None if at is None else reach_of(areas[at])
    loops: list[Loop] = []
    for number, ((path, layer), area) in enumerate(zip(ordered, areas, strict=True)):
        if number == at:
            role = "outline"
        elif given[number] is not None:
            role = "other" if given[number] == "outline" else given[number]
        elif within is None or not within.covers(area):
            role = "other"
        elif is_hole(path):
            role = "hole"
        elif area.area > MOST_CUT * areas[at].area or any(slots[i].covers(area) for i in about.query(area, "dwithin", 2 * JOIN).tolist() if i in slots):
            role = "other"
        else:
            role = "slot"
        if role == "slot":
            slots[number] = reach_of(area)
        loops.append(Loop(path, role, layer))
    holes = shapely.STRtree([area for loop, area in zip(loops, areas, strict=True) if loop.role == "hole"])
    loops = [replace(loop, role="other") if i in slots and given[i] is None and _is_plate(loop.path) and len(holes.query(slots[i], "covers")) else loop
             for i, loop in enumerate(loops)]
    about = set() if ours else {*_rings(loops), *(i for i in thin(loops) if given[i] is None)}
    edges = [] if ours or at is None else nut_edges(ordered[at][0])
    return tuple([replace(loop, role="other") if i in about else
                  replace(loop, role=POCKET) if loop.role == "slot" and given[i] is None and lies_on(loop.path, edges) else loop for i, loop in enumerate(loops)])


def thin(loops: Sequence[Loop]) -> list[int]:
    """The numbers of loops in the outline that are narrower than any slot, as letters and the lines of an inlay are; an O or an R
    among them is no longer than they are and than a letter is, and narrow with what lies in it cut out."""
    outline = next((loop.path for loop in loops if loop.role == "outline"), None)
    small = [i for i, loop in enumerate(loops) if loop.role in ("slot", "other")
             and abs(loop.path.area) <= MOST_CUT * abs(outline.area) and not is_round(loop.path)] if outline is not None else []
    areas = [area_of(loops[i].path) for i in small]
    tree = shapely.STRtree(areas)
    within = tree.query(area_of(outline), "contains").tolist() if areas else []
    found = {k for k in within if _is_thin(areas[k])}
    longest = min(LARGEST_LETTER, max((max(sides_of(loops[small[k]].path)) for k in found), default=0.0))
    for k in within:
        if k not in found and max(sides_of(loops[small[k]].path)) <= longest:
            inner = [areas[j] for j in tree.query(areas[k], "contains_properly").tolist() if j != k]
            if inner and _is_thin(areas[k].difference(shapely.union_all(inner))):
                found.add(k)
    return [small[k] for k in sorted(found)]


def _is_thin(area: BaseGeometry) -> bool:
    return 2 * area.area <= THIN * area.length


def _rings(loops: Sequence[Loop]) -> Iterator[int]:
    """The numbers of round loops that lie within or about a hole with the same middle, as bushings, washers and posts are drawn: the
    hole is the smallest that a post goes through, or the smallest of all. Those whose layers tell a depth are drillings of one hole."""
    for stack in stacks([(i, loop) for i, loop in enumerate(loops) if loop.role == "hole" and depth_on(loop.layer) is None]):
        bore = next((i for i in reversed(stack) if max(sides_of(loops[i].path)) >= SMALLEST_BORE), stack[-1])
        yield from (i for i in stack if i != bore)


def stacks(round_ones: Sequence[tuple[int, Loop]]) -> list[list[int]]:
    """The numbers of round loops, largest first, that share their middles."""
    if not round_ones:
        return []
    middles = [shapely.Point(_middle(loop.path)) for _, loop in round_ones]
    groups = Groups(len(middles))
    for i, j in shapely.STRtree(middles).query(middles, predicate="dwithin", distance=SAME_MIDDLE).T.tolist():
        groups.merge(i, j)
    return [[round_ones[i][0] for i in group] for group in groups.sets()]


def beside_edge(loops: Sequence[Loop]) -> bool:
    """Whether a loop was left out since it goes round within the outline beside its edge."""
    outline = next((loop.path for loop in loops if loop.role == "outline"), None)
    if outline is None:
        return False
    wood = area_of(outline)
    reach = reach_of(wood)
    return any(loop.role == "other" and abs(loop.path.area) > MOST_CUT * wood.area and reach.covers(area_of(loop.path)) for loop in loops)


def frames(loops: Sequence[Loop]) -> tuple[Path, ...]:
    """The rectangles round the outline, taken for the frame of the sheet or the edge of the blank."""
    outline = next((loop.path for loop in loops if loop.role == "outline"), None)
    if outline is None:
        return ()
    inner = area_of(outline)
    return tuple([loop.path for loop in loops if loop.role == "other" and is_rectangle(loop.path) and reach_of(area_of(loop.path)).covers(inner)])


def bodies(loops: Sequence[Loop]) -> tuple[Path, ...]:
    """Loops larger than the outline that are no rectangles and wider than any head, taken for bodies and boards."""
    outline = next((loop.path for loop in loops if loop.role == "outline"), None)
    return tuple([loop.path for loop in loops if loop.role == "other" and outline is not None and abs(loop.path.area) > abs(outline.area)
                  and is_wide(loop.path) and not is_rectangle(loop.path)])


def heads(loops: Sequence[Loop]) -> list[int]:
    """The numbers of the loops that may be the outline as well as that which was taken, it among them, from left to right: apart from
    each other and of one size, as where a sheet shows a head from both sides."""
    at = next((i for i, loop in enumerate(loops) if loop.role == "outline"), None)
    if at is None:
        return []
    free = [i for i, loop in enumerate(loops) if i == at or loop.role == "other"]
    return _alike(at, free, [area_of(loop.path) for loop in loops])


def heads_told(loops: Sequence[Loop]) -> str | None:
    """Which of several heads of one size is taken; None where there is but one."""
    found = heads(loops)
    if len(found) < 2:
        return None
    k = 1 + next(k for k, i in enumerate(found) if loops[i].role == "outline")
    return say("The drawing has {n} heads of one size, as from face and back: number {k} from the left is taken.", n=len(found), k=k)


def _alike(at: int, candidates: Sequence[int], areas: Sequence[BaseGeometry]) -> list[int]:
    """Candidates of the size of one of them that lie apart from it and from each other, from left to right, then from the top down; that
    one alone where they are more than MOST_HEADS."""
    def size(i: int) -> list[float]:
        x0, y0, x1, y1 = areas[i].bounds
        return sorted((x1 - x0, y1 - y0))
    found = [at]
    for i in candidates:
        if i != at and abs(areas[i].area - areas[at].area) <= ALIKE * areas[at].area and \
                all(abs(a - b) <= ALIKE * b for a, b in zip(size(i), size(at), strict=True)) and not any(areas[i].intersects(areas[k]) and not areas[i].touches(areas[k]) for k in found):
            found.append(i)
        if len(found) > MOST_HEADS:
            return [at]
    return sorted(found, key=lambda i: (round(areas[i].bounds[0], 1), -areas[i].bounds[3]))


def _fullest(those: Sequence[int], areas: Sequence[BaseGeometry]) -> int:
    """The first of those in which most other areas lie."""
    if len(those) == 1:
        return those[0]
    inside = shapely.STRtree(areas)
    return max(those, key=lambda i: len(inside.query(areas[i], "contains")))


def _middle(path: Path) -> Vec2:
    x0, y0, x1, y1 = path.box
    return (x0 + x1) / 2, (y0 + y1) / 2


def _is_plate(path: Path) -> bool:
    """Whether a closed path is as short and as wide as the plate of a tuner."""
    short, long = sorted(sides_of(path))
    return long <= LONGEST_PLATE and long < 2 * short


def _given(path: Path, layer: str, ours: bool) -> str | None:
    """What the name of its layer makes of a loop, or None where that goes by its place."""
    style = style_on(layer)
    if style == HOLE_THERE:
        return HOLE_THERE if is_round(path) else POCKET
    if style == POCKET:
        return POCKET
    if style is None or not ours or style in _BY_PLACE:
        return None
    return style if style in ("outline", "slot") else "other"


def is_hole(path: Path) -> bool:
    """Whether a closed path is round and at most LARGEST_HOLE across."""
    x0, y0, x1, y1 = path.box
    return max(x1 - x0, y1 - y0) <= LARGEST_HOLE * (1 + ROUND) and is_round(path)
