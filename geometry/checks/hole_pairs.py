"""Every two drillings that can meet: true distance in space between flat-ended cylinders.

Drillings of one hole share an axis and are meant to meet. A locating pin may
stand inside a through bore that is drilled later, counterbored or not, and a single
hole may share the axis of another bore. Of two holes only the worst pair of drillings is told.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import partial
from itertools import chain, combinations

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import remembered_by_size
from geometry.checks import drill_points
from geometry.checks.asked import Asked
from geometry.checks.items import Item, apart, plan
from geometry.checks.kinds import pair_kind
from geometry.checks.memo import Pairs
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag, grade, short
from geometry.checks.words import first, gap_text, name, sort_of
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders, crosses, norms
from geometry.solids.distance import Gaps
from geometry.solids.drilling import Drilling
from geometry.solids.nearby import Rows
from geometry.solids.pointed import Pointed, drawn_back, pointed_gaps
from geometry.tolerance import TOUCH

_ALONG = 1e-9
"""Sine of an angle below which two directions are one."""


def wanted(one: Drilling, two: Drilling, margins: Margins) -> float:
    """Wood wanted between two drillings, mm."""
    sorts = {sort_of(one), sort_of(two)}
    if "locating pin" in sorts:
        return margins.pin_any
    return margins.screw_any if sorts & {"screw", "pin hole"} else margins.bore_bore


def pairs(scene: Scene) -> Pairs:
    """Items that come near each other, and each with itself."""
    margins = scene.layout.margins
    return scene.memo.pairs(_boxes, scene.items, max(margins.bore_bore, margins.screw_any, margins.pin_any), margins)


def _boxes(items: Sequence[Item]) -> Rows:
    return [item.box for item in items]


def asked(rows: Sequence[tuple[Item, Item, Margins]]) -> Asked | None:
    """The pairs of drillings of each (item, item, margins) that have to keep clear of each other and may not."""
    near = _near(rows)
    if not near:
        return None
    solids: list[Cylinders] = []
    starts: dict[int, int] = {}
    count = 0
    for item in chain.from_iterable(rows[at][:2] for at in dict.fromkeys(at for at, *_ in near)):
        if id(item) not in starts:
            starts[id(item)] = count
            solids.append(item.solids)
            count += len(item.drillings)
    together = Cylinders.joined(solids)
    first, second = (np.array([starts[id(rows[pair[0]][side])] + pair[side + 1] for pair in near]) for side in (0, 1))
    row, i, k, wish, ahead = (np.array(of) for of in zip(*near, strict=True))
    # What is farther apart than that has its wood, drills' points counted too.
    return Asked(together.pick(first), together.pick(second), wish + ahead, partial(_told, rows, (row, i, k), wish, ahead))


def _near(rows: Sequence[tuple[Item, Item, Margins]]) -> list[tuple[int, int, int, float, float]]:
    """(row, places of the two drillings, wood wanted between them, how far drills' points run ahead) of those that may be nearer
    than that: most boxes are not."""
    margins = rows[0][2]
    wishes = margins.bore_bore, margins.screw_any, margins.pin_any  # by the higher of two ranks
    near = []
    for at, (one, two, _) in enumerate(rows):
        first, second = one.boxes, two.boxes
        for i, k, rank in _within(one.ranks, one.hole_of) if one is two else _between(one.ranks, two.ranks):
            (x0, y0, z0), (x1, y1, z1), wish = *first[i], wishes[rank]
            (u0, v0, w0), (u1, v1, w1) = second[k]
            if (x0 - u1 < wish and u0 - x1 < wish and y0 - v1 < wish and v0 - y1 < wish and z0 - w1 < wish and w0 - z1 < wish
                    and not _side_by_side(one.drillings[i], two.drillings[k], one.ahead[i], two.ahead[k], wish)
                    and (one.what == two.what == "tuner" or not meant(one.drillings[i], two.drillings[k], (*one.drillings, *two.drillings)))):
                near.append((at, i, k, wish, one.ahead[i] + two.ahead[k]))
    return near


def _side_by_side(a: Drilling, b: Drilling, ahead_a: float, ahead_b: float, wish: float) -> bool:
    """Whether an upright drilling has so much wood (mm) beside another one and its drill's point, which runs `ahead_b` mm ahead, as seen
    on the face, and so in space. False says nothing."""
    if b.upright:
        a, b, ahead_b = b, a, ahead_a
    if not a.upright:
        return False
    # Half a ball about the flat end holds a point that is no longer than the end is wide; one about a place ahead of it the rest.
    end = b.end if ahead_b <= b.radius else drill_points.at_point(b, ahead_b - b.radius)
    centre = plan(a.start)
    return v.distance(centre, v.nearest_between(plan(b.start), plan(end), centre)) - a.radius - b.radius >= wish


_Ranked = tuple[tuple[int, int, int], ...]
"""Pairs of drillings by the places of the one and of the other, and the rank of each pair: the higher of its two."""


@remembered_by_size(1024, lambda one, two: len(one) * len(two))
def _between(one: tuple[int, ...], two: tuple[int, ...]) -> _Ranked:
    """Every drilling of one feature with every one of another, from their ranks: of one pattern they are the same each time."""
    return tuple((i, k, max(a, b)) for i, a in enumerate(one) for k, b in enumerate(two))


@remembered_by_size(256, lambda ranks, hole_of: len(ranks) ** 2)
def _within(ranks: tuple[int, ...], hole_of: tuple[int, ...]) -> _Ranked:
    """The drillings of one feature that are not of one hole."""
    return tuple((i, k, max(ranks[i], ranks[k])) for i, k in combinations(range(len(ranks)), 2) if hole_of[i] != hole_of[k])


def _told(rows: Sequence[tuple[Item, Item, Margins]], pairs: tuple[np.ndarray, ...], wish: np.ndarray, ahead: np.ndarray,
          measured: Gaps) -> list[tuple[Snag, ...]]:
    """Of each two holes only the worst pair of drillings; `pairs`: the row of each pair, and the places of its drillings.

    Then every drill's point that comes nearer than its drilling does.
    """
    out: list[list[Snag]] = [[] for _ in rows]
    worst: dict[tuple[int, int, int], tuple[float, int]] = {}
    short = np.flatnonzero(measured.exact & (measured.distance < wish - TOUCH))
    for at, row, i, k in zip(short.tolist(), *(of[short].tolist() for of in pairs), strict=True):
        holes = (row, rows[row][0].hole_of[i], rows[row][1].hole_of[k])
        lacks = float(wish[at] - measured.distance[at])
        if holes not in worst or lacks > worst[holes][0]:
            worst[holes] = lacks, at
    row, i, k = pairs
    for _, at in sorted(worst.values(), key=lambda one: (row[one[1]], -one[0])):
        one, two, _ = rows[row[at]]
        out[row[at]].append(_snag(one, two, int(i[at]), int(k[at]), float(measured.distance[at]), float(wish[at]),
                                  measured.on_a[at], measured.on_b[at]))
    points = []
    for at in np.flatnonzero(measured.exact & (ahead > 0) & (measured.distance >= 0)).tolist():
        one, two, _ = rows[row[at]]
        point = _by_point(one, two, int(i[at]), int(k[at]), float(measured.distance[at]), float(wish[at]))
        if point is not None:
            points.append((int(row[at]), point))
    for at, snag in _points_told(points):
        out[at].append(snag)
    return [tuple(found) for found in out]


class _Point(Struct, frozen=True):
    """A drill's point, of drilling i of `one`, nearer than it may be to drilling k of `two`: `measured` mm, 0 where it meets that."""

    one: Item
    two: Item
    i: int
    k: int
    needed: float
    wood: float
    measured: float
    solids: tuple[Pointed, Pointed]


def _by_point(one: Item, two: Item, i: int, k: int, bare: float, wish: float) -> _Point | None:
    """The drill's point that comes too near, of two drillings that are `bare` mm apart; None where neither does."""
    drillings, aheads = (one.drillings[i], two.drillings[k]), (one.ahead[i], two.ahead[k])
    needed = max(drill_points.wanted(drilling, wish, bare) if ahead else 0.0 for drilling, ahead in zip(drillings, aheads, strict=True))
    # No part of a cone is farther from its drilling than it is long.
    if bare - sum(aheads) >= needed:
        return None
    bits = Pointed.with_points(drillings, aheads)
    way, beside, radii = bits.axis, bits.start[1:] - bits.start[:1], float(bits.radius.sum())
    # Beside each other along one way, a point is no nearer than its drilling.
    if norms(crosses(way[:1], way[1:])) < _ALONG and norms(crosses(way[:1], beside)) - radii >= needed:
        return None
    first, second = bits.pick(np.array([0])), bits.pick(np.array([1]))
    # To tell that they have their wood takes a few rounds, to measure it dozens.
    gap = float(pointed_gaps(first, second, max(needed, TOUCH))[0])
    if gap > TOUCH and not short(gap, needed):
        return None
    measured, without_first, without_second = pointed_gaps(
        first.repeated(3).pointed((True, False, True)), second.repeated(3).pointed((True, True, False))).tolist()
    if without_first < without_second:  # it is the other one's point
        one, two, i, k, first, second = two, one, k, i, second, first
    needed = drill_points.wanted(one.drillings[i], wish, bare)
    measured = measured if measured > TOUCH else 0.0
    return _Point(one, two, i, k, needed, wish, measured, (first, second)) if measured == 0.0 or short(measured, needed) else None


def _points_told(points: list[tuple[int, _Point]]) -> Iterator[tuple[int, Snag]]:
    """(number, snag) of each numbered point; how far those come in that meet something is asked of all at once."""
    met = [point for _, point in points if not point.measured]
    backs = iter(drawn_back(*(Pointed.together([point.solids[side] for point in met]) for side in (0, 1))).tolist() if met else ())
    for at, point in points:
        one, two = point.one, point.two
        measured = point.measured or -next(backs)
        if short(measured, point.needed):
            here, ahead, there = one.drillings[point.i], one.ahead[point.i], point.solids[1]
            least = drill_points.wanted_then(here, point.needed, point.wood) - TOUCH

            def gap(less: Drilling, ahead: float = ahead, there: Pointed = there, least: float = least) -> float:
                return float(pointed_gaps(Pointed.with_points([less], [ahead]), there, decide=least)[0])
            yield at, drill_points.snag(one, here, ahead, name(two.drillings[point.k]), (one.id,) if one is two else (one.id, two.id),
                                        measured, point.needed, point.wood, gap)


def meant(a: Drilling, b: Drilling, every: Iterable[Drilling]) -> bool:
    """Whether two upright drillings may share wood: a pin in a later bore, its counterbore with it, a hole stacked on another, two
    that are there already. `every` has the drillings of both their holes."""
    if not (a.upright and b.upright) or a.of == b.of:
        return False
    if a.there and b.there:
        return True
    apart = v.distance(plan(a.start), plan(b.start))
    for one, two in ((a, b), (b, a)):
        if one.role == "locating" and any(d.hole == two.hole and d.through and apart + one.radius <= d.radius + TOUCH for d in every):
            return True
        if one.role == "hole" and apart <= TOUCH:
            return True
    return False


def _snag(one: Item, two: Item, i: int, k: int, measured: float, needed: float,
          on_a: np.ndarray, on_b: np.ndarray) -> Snag:
    a, b = one.drillings[i], two.drillings[k]
    where = tuple(float(c) for c in (on_a + on_b) / 2)
    between = (one.id,) if one is two else (one.id, two.id)
    text = gap_text(name(a), name(b), measured, needed)
    if a.there != b.there and measured < 0:
        text += " " + say("{hole} is there already: it may be plugged first, and is wood then.", hole=first(a.of if a.there else b.of))
    kind = pair_kind(sort_of(a), sort_of(b))
    if one is two:
        return Snag(kind, grade(measured), between, where, measured, needed, text,
                    say("Set these two farther apart in the pattern {pattern}, or choose hardware with room between "
                        "them.",
                        pattern=one.pattern.id))
    cure = (say("Move the pin, or have the pins proposed anew.") if "locating" in (a.role, b.role) else
            say("Move both, or choose smaller hardware."))
    return Snag(kind, grade(measured), between, where, measured, needed, text, cure,
                push=apart(one, two, on_a - on_b, needed - measured))
