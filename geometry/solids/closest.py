"""The nearest points of two exact curves, found from a good guess by Newton's method.

The guess comes from flattened curves and lies within their sagitta of the
truth; the answer is a distance between two real points of the curves, so apart
from rounding it never lies below the true distance, and it is the true one when
the guess lies in its valley.
"""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Path, Segment
from geometry.vectors import Vec2

_ROUNDS = 40
_NEARER = 1e-13
"""mm: nearer by less is told apart from rounding by nothing"""


def settle(one: Path, i: int, s: float, two: Path, k: int, t: float) -> tuple[float, Vec2, Vec2]:
    """(distance in mm, point of `one`, point of `two`) near parameter s of segment i and t of segment k.

    Where the nearest point runs off the end of a segment its neighbour is tried too.
    """
    best = _settle(one.segments[i], s, two.segments[k], t)
    seen = {(i, k)}
    for _ in range(4):
        i, k, s, t = _over_the_end(one, i, best[3], two, k, best[4])
        if (i, k) in seen:
            break
        seen.add((i, k))
        found = _settle(one.segments[i], s, two.segments[k], t)
        if found[0] >= best[0]:
            break
        best = found
    return best[0], best[1], best[2]


def settle_point(path: Path, i: int, t: float, p: Vec2) -> tuple[float, Vec2, int, float]:
    """(distance in mm, point, segment index, parameter) of the path nearest to p, starting from segment i at t."""
    spot = Line(p, p)
    best = None
    for _ in range(4):
        d, q, _, t, _ = _settle(path.segments[i], t, spot, 0.0)
        if best is not None and d >= best[0]:
            break
        best = (d, q, i, t)
        k, start = _next(path, i, t)
        if k == i:
            break
        i, t = k, start
    return best


def ray_hit(segment: Segment, t: float, start: Vec2, way: Vec2, rough: float) -> float:
    """How far in mm from `start` along the unit vector `way` a ray meets a segment, from a guess at parameter t.

    `rough` is returned where the ray only grazes the segment or meets it beyond its ends.
    """
    if isinstance(segment, Line):
        return rough
    for _ in range(12):
        p, d = _moving(segment, t)
        aside, slope = v.cross(way, v.sub(p, start)), v.cross(way, d)
        if slope == 0:
            return rough
        step = aside / slope
        t -= step
        if abs(step) < 1e-14:
            break
    return v.dot(way, v.sub(segment.point(t), start)) if -1e-9 <= t <= 1 + 1e-9 else rough


def _settle(a: Segment, s: float, b: Segment, t: float) -> tuple[float, Vec2, Vec2, float, float]:
    """Least |a(s) - b(t)| on 0..1 x 0..1 from a start: damped Newton steps, held at the ends by their sign."""
    p, dp, ddp = _jet(a, s)
    q, dq, ddq = _jet(b, t)
    w = v.sub(p, q)
    value = v.dot(w, w)
    for _ in range(_ROUNDS):
        slope_s, slope_t = v.dot(w, dp), -v.dot(w, dq)
        free_s = not (s <= 0 and slope_s >= 0 or s >= 1 and slope_s <= 0)
        free_t = not (t <= 0 and slope_t >= 0 or t >= 1 and slope_t <= 0)
        bend_s, bend_t, both = v.dot(dp, dp) + v.dot(w, ddp), v.dot(dq, dq) - v.dot(w, ddq), -v.dot(dp, dq)
        step_s, step_t = _step(slope_s, slope_t, bend_s, bend_t, both, free_s, free_t, v.dot(dp, dp), v.dot(dq, dq))
        size = 1.0
        # A step that hardly comes nearer is taken by itself: whether it, or a shorter one, does come nearer nobody could tell.
        least = _NEARER * math.sqrt(value)
        hardly = -slope_s * step_s - slope_t * step_t <= least
        for _ in range(1 if hardly else 24):
            s1, t1 = min(1.0, max(0.0, s + step_s * size)), min(1.0, max(0.0, t + step_t * size))
            p1, dp1, ddp1 = _jet(a, s1)
            q1, dq1, ddq1 = _jet(b, t1)
            w1 = v.sub(p1, q1)
            value1 = v.dot(w1, w1)
            if value1 <= value + least * hardly:
                break
            size /= 3
        else:
            break
        still = abs(s1 - s) + abs(t1 - t) < 1e-15
        gained = value - value1
        s, t, p, dp, ddp, q, dq, ddq, w, value = s1, t1, p1, dp1, ddp1, q1, dq1, ddq1, w1, value1
        if still or gained < 1e-18 * (1 + value):
            break
    return math.sqrt(value), p, q, s, t


def _step(slope_s: float, slope_t: float, bend_s: float, bend_t: float, both: float, free_s: bool, free_t: bool,
          speed_s: float, speed_t: float) -> tuple[float, float]:
    """The Newton step of the free parameters; steepest descent where the surface is not bowl-shaped."""
    if free_s and free_t:
        bowl = bend_s * bend_t - both * both
        if bend_s > 0 and bowl > 1e-12 * bend_s * max(bend_t, 1e-300):
            return (both * slope_t - bend_t * slope_s) / bowl, (both * slope_s - bend_s * slope_t) / bowl
    step_s = -slope_s / (bend_s if bend_s > 0 else max(speed_s, 1e-12)) if free_s else 0.0
    step_t = -slope_t / (bend_t if bend_t > 0 else max(speed_t, 1e-12)) if free_t else 0.0
    if free_s and free_t:
        return (step_s, 0.0) if abs(step_s) * math.sqrt(speed_s) >= abs(step_t) * math.sqrt(speed_t) else (0.0, step_t)
    return step_s, step_t


def _moving(segment: Segment, t: float) -> tuple[Vec2, Vec2]:
    """Point and first derivative at t of what is no line."""
    p = segment.point(t)
    if isinstance(segment, Arc):
        out, k = v.sub(p, segment.centre), segment.sweep
        return p, (-out[1] * k, out[0] * k)
    return p, segment.derivative(t)


def _jet(segment: Segment, t: float) -> tuple[Vec2, Vec2, Vec2]:
    """Point, first and second derivative at t."""
    if isinstance(segment, Line):
        return segment.point(t), v.sub(segment.p1, segment.p0), (0.0, 0.0)
    if isinstance(segment, Arc):
        p = segment.point(t)
        out = v.sub(p, segment.centre)
        k = segment.sweep
        return p, (-out[1] * k, out[0] * k), (-out[0] * k * k, -out[1] * k * k)
    assert isinstance(segment, Cubic)
    return segment.point(t), segment.derivative(t), segment.second(t)


def _over_the_end(one: Path, i: int, s: float, two: Path, k: int, t: float) -> tuple[int, int, float, float]:
    i, s = _next(one, i, s)
    k, t = _next(two, k, t)
    return i, k, s, t


def _next(path: Path, i: int, t: float) -> tuple[int, float]:
    """The neighbouring segment and where it begins, when t stands at an end; else the same place."""
    count = len(path.segments)
    if t <= 0 and (path.closed or i > 0):
        return (i - 1) % count, 1.0
    if t >= 1 and (path.closed or i < count - 1):
        return (i + 1) % count, 0.0
    return i, t
