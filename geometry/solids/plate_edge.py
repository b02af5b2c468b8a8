"""How far an edge falls away and rises under a plate, in closed form where it is made of lines and cubics, or one arc.

Heights are taken square to the edge at the seat, which is where the tangent touches:
on an arc R - sqrt(R^2 - u^2) at u mm along the tangent; on a cubic both coordinates
are cubics of the parameter, whose greatest and least values lie at the plate's
ends, where two segments meet, or where a quadratic is zero.
"""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Segment
from geometry.layout.edges import Edge, Seat
from geometry.vectors import Vec2

_ROUNDS = 30
_AMPLE = 1.1
"""how many times the parameter's step that would do at full speed is looked at"""
_Rising = tuple[float, float, float, float]
"""a cubic a + b d + c d^2 + e d^3"""


def fall_and_rise(side: Edge, seat: Seat, before: float, behind: float) -> tuple[float, float] | None:
    """(fall, rise) in mm under a plate that reaches `before` to the tip and `behind` to the nut.

    None where an arc is not all that the plate reaches over, or the edge turns back beneath it.
    """
    own = side.path.segments[seat.segment]
    if isinstance(own, Arc):
        return _on_arc(own, seat, before, behind)
    # Both ways begin on the segment that the seat is on.
    shape = _in_frame(own, seat.t, seat)
    ahead, back = _walked(side, seat, 1, before, shape), _walked(side, seat, -1, behind, shape)
    if ahead is None or back is None:
        return None
    heights = (0.0, *ahead, *back)
    return max(0.0, -min(heights)), max(heights)


def strays_within(side: Edge, seat: Seat, before: float, behind: float, most: float) -> bool:
    """Whether the edge surely falls away and rises by no more than `most` mm: told in a moment for the cubic that the seat is on.

    False says nothing.
    """
    own = side.path.segments[seat.segment]
    if not isinstance(own, Cubic):
        return False
    d, dd, (third_x, third_y) = own.derivative(seat.t), own.second(seat.t), _third(own)
    speed = v.norm(d)
    bend, more = abs(v.dot(dd, seat.normal)) / 2, math.hypot(third_x, third_y) / 6
    # Along the tangent the cubic gets on by its speed less what its other terms can take away from it.
    slow = abs(v.dot(dd, seat.tangent)) / 2
    for reach, room in ((before, 1 - seat.t), (behind, seat.t)):
        step = _AMPLE * reach / speed if speed > 0 else math.inf
        if step > room or step * (speed - step * (slow + step * more)) < reach or step * step * (bend + step * more) > most:
            return False
    return True


def _third(cubic: Cubic) -> Vec2:
    """Its third derivative, the same everywhere."""
    a, b, c, d = cubic.p0, cubic.c0, cubic.c1, cubic.p1
    return 6 * (d[0] - a[0] + 3 * (b[0] - c[0])), 6 * (d[1] - a[1] + 3 * (b[1] - c[1]))


def _on_arc(arc: Arc, seat: Seat, before: float, behind: float) -> tuple[float, float] | None:
    most, turn = max(before, behind), abs(arc.sweep)
    if most >= arc.radius:
        return None
    if math.asin(behind / arc.radius) > seat.t * turn or math.asin(before / arc.radius) > (1 - seat.t) * turn:
        return None
    strays = arc.radius - math.sqrt(arc.radius * arc.radius - most * most)
    return (strays, 0.0) if seat.curvature > 0 else (0.0, strays)


def _walked(side: Edge, seat: Seat, way: int, reach: float, shape: tuple[_Rising, _Rising]) -> list[float] | None:
    """The heights that count between the seat and `reach` mm along its tangent, to the tip (way 1) or to the nut (-1).

    `shape` is the seat's own segment from there, as _in_frame.
    """
    heights: list[float] = []
    i, t = seat.segment, seat.t
    while 0 <= i < len(side.path.segments):
        if isinstance(side.path.segments[i], Arc):
            return None
        if i != seat.segment:
            shape = _in_frame(side.path.segments[i], t, seat)
        x, y = shape if way > 0 else _backwards(*shape)
        last = 1 - t if way > 0 else t
        if any(0 <= d <= last for d in _turns(x)) or not x[1] > 0:
            return None
        over = _at(x, last) >= reach
        end = _reached(x, reach, last) if over else last
        heights += [_at(y, d) for d in (end, *_turns(y)) if 0 < d <= end]
        if over:
            break
        i, t = i + way, 0.0 if way > 0 else 1.0
    return heights


def _in_frame(segment: Segment, t: float, seat: Seat) -> tuple[_Rising, _Rising]:
    """How far a line or cubic runs along the seat's tangent, towards the tip, and its height, by the step from t."""
    p = v.sub(segment.point(t), seat.point)
    if isinstance(segment, Cubic):
        first, second, third = segment.derivative(t), segment.second(t), _third(segment)
    else:
        first, second, third = v.sub(segment.p1, segment.p0), (0.0, 0.0), (0.0, 0.0)
    x, y = ((v.dot(p, axis), v.dot(first, axis), v.dot(second, axis) / 2, v.dot(third, axis) / 6) for axis in (seat.tangent, seat.normal))
    return x, y


def _backwards(x: _Rising, y: _Rising) -> tuple[_Rising, _Rising]:
    """The same by the step towards the nut: every odd power changes its sign, and the direction of travel itself."""
    return (-x[0], x[1], -x[2], x[3]), (y[0], -y[1], y[2], -y[3])


def _at(curve: _Rising, d: float) -> float:
    return curve[0] + d * (curve[1] + d * (curve[2] + d * curve[3]))


def _reached(x: _Rising, reach: float, last: float) -> float:
    """Where between 0 and `last` a curve that rises all the way comes to `reach`: Newton's method, held in between."""
    low, high = 0.0, last
    d = min(last, (reach - x[0]) / x[1])
    for _ in range(_ROUNDS):
        miss = _at(x, d) - reach
        low, high = (low, d) if miss > 0 else (d, high)
        slope = x[1] + d * (2 * x[2] + 3 * x[3] * d)
        step = d - miss / slope if slope > 0 else low
        step = step if low <= step <= high else (low + high) / 2
        if abs(step - d) < 1e-15:
            return step
        d = step
    return d


def _turns(curve: _Rising) -> list[float]:
    """Where a cubic turns round: the real roots of its slope."""
    a, b, c = 3 * curve[3], 2 * curve[2], curve[1]
    if abs(a) < 1e-12 * (abs(b) + abs(c) + 1e-300):
        return [-c / b] if b else []
    inside = b * b - 4 * a * c
    if inside < 0:
        return []
    root = -(b + math.copysign(math.sqrt(inside), b)) / 2
    return [root / a] + ([c / root] if root else [])
