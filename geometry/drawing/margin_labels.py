"""Words beside a drawing: a column on each side, hairline leaders to what they name, none on top of another."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import accumulate, pairwise
from textwrap import wrap

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.drawing.marks import Cross, Disc, Label, Mark, Stroke
from geometry.drawing.shapes import straight
from geometry.units import UNPARTED, unparted
from geometry.vectors import Vec2

PITCH = 2.0
"""Distance of two labels' neighbouring lines in capital heights."""
LINE = 1.6
"""Distance of lines within a label in capital heights."""
FREE, BESIDE = 2.0, 0.6
"""mm about the middle of another's cross, and about another's hole, in which a leader is interrupted."""
LONGEST = 24
"""Most letters in a line: longer words go on in the next, so that no name alone costs a page."""


class Named(Struct, frozen=True):
    """Something to name: the point it is at (mm), how far from there the leader stops, its lines of words."""

    at: Vec2
    clear: float
    words: tuple[str, ...]
    owner: str


def margin_labels(things: Sequence[Named], left: float, right: float, height: float, low: float, high: float,
                  marks: Sequence[Mark] = ()) -> list[Mark]:
    """Labels of `height` mm in columns ending at x = left and starting at x = right, each thing on its nearer side.

    Labels stand as near to their things as their neighbours allow, in the order of these along y but for neighbours whose leaders
    would cross; none below y = low or above y = high where they all fit between. Of a column that would be higher than that so much
    goes to the other side as is needed, half at most. A leader is interrupted at a hole of the `marks` that is another's, and at the
    middle of its cross: where hairlines meet is pricked.
    """
    made: list[Mark] = []
    others = [(mark.centre, FREE) for mark in marks if isinstance(mark, Cross)]
    others += [(mark.centre, mark.radius + BESIDE) for mark in marks if isinstance(mark, Disc)]
    things = [replace(thing, words=tuple(part for line in thing.words for part in short_lines(line))) for thing in things]
    things.sort(key=lambda thing: (*thing.at, thing.words))
    to_left = _to_left(things, (left + right) / 2, height, high - low)
    for x, anchor, group in ((left, "right", things[:to_left]), (right, "left", things[to_left:])):
        start = x - 0.8 if anchor == "left" else x + 0.8
        for thing, y in _levelled(group, start, height, low, high):
            foot = (start, y)
            rim = v.along(thing.at, v.unit(v.sub(foot, thing.at)), thing.clear)
            made += [Stroke(straight(*ends), "dimension", thing.owner)
                     for ends in _pieces(foot, rim, [(centre, free) for centre, free in others if v.distance(centre, thing.at) > free])]
            first = y - height / 2 + height * LINE * (len(thing.words) - 1) / 2
            made += [Label(line, (x, first - i * height * LINE), height, "dimension", thing.owner, anchor=anchor)
                     for i, line in enumerate(thing.words)]
    return made


def _pieces(a: Vec2, b: Vec2, others: Sequence[tuple[Vec2, float]]) -> list[tuple[Vec2, Vec2]]:
    """What is left of the line from a to b outside circles about each of the others (middle, radius)."""
    along, pieces = v.unit(v.sub(b, a)), [(0.0, v.distance(a, b))]
    for middle, free in others:
        off = v.cross(along, v.sub(middle, a))
        if abs(off) < free:
            at, half = v.dot(along, v.sub(middle, a)), math.sqrt(free * free - off * off)
            pieces = [piece for low, high in pieces for piece in ((low, min(high, at - half)), (max(low, at + half), high)) if piece[0] < piece[1]]
    return [(v.along(a, along, low), v.along(a, along, high)) for low, high in pieces]


def _levelled(group: list[Named], start: float, height: float, low: float, high: float) -> list[tuple[Named, float]]:
    """The things of a column from below with the y of their labels; the leaders begin at x = start."""
    order = sorted(group, key=lambda thing: (thing.at[1], thing.words))
    for _ in order:
        levels = spread([thing.at[1] for thing in order], [_size(thing, height) for thing in order], low, high)
        crossed = [i for i in range(len(order) - 1)
                   if _cross((start, levels[i]), order[i].at, (start, levels[i + 1]), order[i + 1].at)]
        if not crossed:
            break
        for i in crossed:
            order[i], order[i + 1] = order[i + 1], order[i]
    return list(zip(order, levels, strict=True)) if order else []


def _cross(a: Vec2, b: Vec2, c: Vec2, d: Vec2) -> bool:
    """Whether the lines from a to b and from c to d cross between their ends."""
    return _side(a, b, c) * _side(a, b, d) < 0 and _side(c, d, a) * _side(c, d, b) < 0


def _side(a: Vec2, b: Vec2, p: Vec2) -> float:
    """On which side of the line from a to b a point lies, positive on the left."""
    return v.cross(v.sub(b, a), v.sub(p, a))


def _to_left(things: Sequence[Named], middle: float, height: float, tall: float) -> int:
    """How many of the things, sorted along x, are named on the left."""
    sizes = list(accumulate((_size(thing, height) for thing in things), initial=0.0))
    higher = [max(size, sizes[-1] - size) for size in sizes]
    wanted = sum(thing.at[0] < middle for thing in things)
    fit = [n for n, most in enumerate(higher) if most <= tall] or [higher.index(min(higher))]
    return min(fit, key=lambda n: abs(n - wanted))


def _size(thing: Named, height: float) -> float:
    """How much of a column its label takes, mm."""
    return height * (PITCH + LINE * (len(thing.words) - 1))


def short_lines(words: str) -> list[str]:
    """The words in lines of at most LONGEST letters, none of which ends within a number."""
    return [line.replace(UNPARTED, " ") for line in wrap(unparted(words), LONGEST)] or [""]


def spread(wanted: Sequence[float], sizes: Sequence[float], low: float = -math.inf, high: float = math.inf) -> list[float]:
    """Middles of things of those sizes (mm), one clear of the next, in the order of the wanted ones, moved as little as may be.

    The least-squares answer: those that would touch merge into a block at their mean (pooled neighbours). None reaches below `low`
    or above `high` where all of them fit between.
    """
    least = list(accumulate(((a + b) / 2 for a, b in pairwise(sizes)), initial=0.0))
    blocks: list[list[float]] = []  # [sum of (wanted - least), count]
    for level, up in zip(wanted, least, strict=False):
        blocks.append([level - up, 1])
        while len(blocks) > 1 and blocks[-2][0] / blocks[-2][1] >= blocks[-1][0] / blocks[-1][1]:
            total, count = blocks.pop()
            blocks[-1][0] += total
            blocks[-1][1] += count
    bases = [total / count for total, count in blocks for _ in range(int(count))]
    if bases:
        lowest, highest = low + sizes[0] / 2, high - sizes[-1] / 2 - least[-1]
        bases = [min(max(base, lowest), highest) for base in bases] if lowest <= highest else bases
    return [base + up for base, up in zip(bases, least, strict=False)]
