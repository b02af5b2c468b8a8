"""Where a side bore goes: through the rail, into its slot, and how its post lies there.

Depths are measured from the seat along the axis. The slot is looked at on the
axis and on both flanks of the post, because its walls may run askew to the bore,
and what is told of the post is never more than its true distance to the wall.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from msgspec import Struct

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.drill_points import before_inner_wall, far_before_inner_wall
from geometry.checks.drills import Drills
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening
from geometry.checks.side_walls import first_on_the_way
from geometry.checks.slot_room import FACING, before_end, wall_beside
from geometry.checks.snags import SPOILS, TIGHT, Snag, grade, short
from geometry.checks.words import aslant, both, clearance, first, into, tenths
from geometry.layout import StraightSlot
from geometry.layout.hardware import Post
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.terms import term
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2, Vec3

_SIGHT = 400.0
"""mm: how far a side bore could possibly reach"""
_SHARES = tuple(1 + step / 20 for step in range(61))
"""What sliding along the edge may take, in times of what lacks"""
_BESIDE = tuple(step / 4 for step in (4, 3, 2, 1, -1, -2, -3, -4))
"""Where across a post it is looked how far the rail goes, in halves of its width"""
_SIDEWAYS = 0.7
"""Cosine to the edge of the way to a wall from which a string hole lies beside the end of its slot, not beside rail or inner wall"""


class Span(Struct, frozen=True):
    """Where a level line runs inside a slot, mm from the seat."""

    enters: float
    leaves: float


def alone(item: Item, openings: tuple[Opening, ...], around: Around) -> tuple[Snag, ...]:
    """Snags of a side tuner's post with the slot that it should lie across."""
    if item.mount != "side" or item.post is None:
        return ()
    bore, post, drills, margins = item.post, item.pattern.post, around.drills, around.margins
    own = first_on_the_way(bore, _SIGHT, openings)
    if own is None:
        return (Snag("no-slot", SPOILS, (item.id,), bore.end, None, None,
                     say("The side bore of {item} meets no slot at its height.", item=item.id),
                     say("Lay a slot across its way, or slide {item} to where a slot lies ahead.", item=item.id)),)
    axis = span(item, bore, own, 0.0)
    found = _reaches(item, bore, own, axis)
    if short(bore.depth, axis.enters):
        return tuple(found)
    about = _about_hole(post, margins)
    beside = wall_beside(own, plan(_on(bore, post.string_hole)), about)
    found += [*_post(item, bore, own, axis, margins, beside[0] < about), *_string(item, bore, own, axis, margins, beside)]
    found += _point(item, bore, own, axis, drills)
    if short(own.depth, bore.start[2] + post.diameter / 2 + margins.post_wall):
        measured = own.depth - bore.start[2] - post.diameter / 2
        a, b = both(measured, margins.post_wall)
        found.append(Snag("slot-too-shallow", grade(measured), (item.id, own.id), _on(bore, post.string_hole), measured,
                          margins.post_wall,
                          say("{own} leaves {a} mm below the post of {item}; {b} mm wanted.",
                              own=first(own.id), a=a, item=item.id, b=b),
                          say("Rout {slot} deeper by {by} mm.",
                              slot=own.id, by=tenths(margins.post_wall - measured))))
    return tuple(found)


def _reaches(item: Item, bore: Drilling, own: Opening, axis: Span) -> list[Snag]:
    """A bore that ends in the rail, or leaves some of it in the post's way."""
    through = _through(item, bore, own, axis)
    if not short(bore.depth, through):
        return []
    lacking = through - bore.depth
    text = (say("The side bore of {item} ends {lacking} mm before {own}.", item=item.id, lacking=into(bore.depth - axis.enters), own=own.id)
            if short(bore.depth, axis.enters) else
            say("The side bore of {item} has to go {lacking} mm deeper to let all of the post through to {own}.",
                item=item.id, lacking=into(-lacking), own=own.id))
    return [Snag("slot-not-reached", SPOILS, (item.id, own.id), bore.end, bore.depth, through, text,
                 say("Drill it {lacking} mm deeper, or move {own} that much nearer.", lacking=tenths(lacking), own=own.id))]


def _through(item: Item, bore: Drilling, own: Opening, axis: Span) -> float:
    """How deep a bore has to be until nothing of the rail stands in its post's way, mm: where the slot's wall leans, a flank comes last."""
    half = item.pattern.post.diameter / 2
    # Into a straight slot, which is convex, one of the two flanks comes last.
    beside = (1.0, -1.0) if isinstance(own.slot.shape, StraightSlot) else _BESIDE
    found = [span(item, bore, own, half * share) for share in beside]
    # Beside the end of a slot nothing of it lies ahead of a flank: that the post is too near to that end is told there.
    return max([axis.enters, *(one.enters for one in found if one is not None)])


def _about_hole(post: Post, margins: Margins) -> float:
    """mm about a string hole within which a wall may be too near to it, to the post's flank beside it or to the post's end."""
    return max(margins.string_hole, math.hypot(post.diameter / 2, post.length - post.string_hole) + margins.post_wall)


def span(item: Item, bore: Drilling, opening: Opening, offset: float) -> Span | None:
    """The first stretch in a slot of the line `offset` mm beside a bore's axis (towards the tip), or None."""
    start = v.along(plan(bore.start), plan(item.frame.u), offset)
    stretches = opening.wall.stretches(start, plan(bore.direction))
    return Span(*stretches[0]) if stretches else None


def _post(item: Item, bore: Drilling, own: Opening, axis: Span, margins: Margins, near: bool) -> list[Snag]:
    """The post's end: inside the bore where the bore ends in wood, clear of the inner wall where it ends in air.

    `near` is False where no wall can be too near to the end but one that its rays meet. One that ends in its bore before the slot
    has no inner wall ahead: that its string hole lies in the rail, or beyond its end, is told there.
    """
    post = item.pattern.post
    if bore.depth >= axis.leaves - TOUCH:
        if post.length <= bore.depth + TOUCH:
            return []
        lacking = post.length - bore.depth
        return [Snag("post-too-long", SPOILS, (item.id,), bore.end, bore.depth, post.length,
                     say("The post of {item} is {lacking} mm longer than its bore, which ends in wood.",
                         item=item.id, lacking=into(-lacking)),
                     say("Drill it {lacking} mm deeper.", lacking=tenths(lacking)))]
    if post.length <= axis.enters:
        return []
    flanks = [span(item, bore, own, offset) for offset in (post.diameter / 2, -post.diameter / 2)]
    leaves = min([axis.leaves] + [flank.leaves for flank in flanks if flank is not None])
    measured = leaves - post.length
    if near:
        end, flank = plan(_on(bore, post.length)), v.scale(plan(item.frame.u), post.diameter / 2)
        measured = min(measured, before_end(own, (v.sub(end, flank), v.add(end, flank)), plan(bore.direction),
                                            post.length - post.string_hole, margins.post_wall))
    if not short(measured, margins.post_wall):
        return []
    text = clearance(measured, margins.post_wall, "The post of {item} runs {measured} mm into the inner wall of {own}.",
                     "The post of {item} ends {a} mm before the inner wall of {own}; {b} mm wanted.", item=item.id, own=own.id)
    lacking = margins.post_wall - measured
    return [Snag("post-to-wall", grade(measured), (item.id, own.id), _on(bore, leaves), measured, margins.post_wall,
                 text, say("Move the inner wall of {own} away by {lacking} mm, or drill {length} mm deeper, into that wall: there the bore "
                           "gives the post's end its room.",
                           own=own.id, lacking=tenths(lacking), length=tenths(max(post.length, axis.leaves) - bore.depth)))]


def _point(item: Item, bore: Drilling, own: Opening, axis: Span, drills: Drills) -> list[Snag]:
    """The drill's point against the inner wall, for a bore that is meant to end in the slot."""
    ahead = drills.point(bore)
    if bore.depth >= axis.leaves - TOUCH or far_before_inner_wall(bore, ahead, own, axis.leaves):
        return []
    measured = before_inner_wall(bore, ahead, own, axis.enters, axis.leaves)
    if not short(measured, 0.0):
        return []
    return [Snag("point-to-wall", TIGHT, (item.id, own.id), _on(bore, axis.leaves), measured, 0.0,
                 say("The drill's point for {item} goes {measured} mm into the inner wall of {own}.",
                     item=item.id, measured=into(measured), own=own.id),
                 say("Stop {measured} mm earlier, or use a drill with a shorter point.", measured=tenths(-measured)))]


def _string(item: Item, bore: Drilling, own: Opening, axis: Span, margins: Margins,
            beside: tuple[float, Vec2]) -> list[Snag]:
    """The string hole between the walls of the slot, and the post between the slot's ends.

    `beside` is the wall nearest to the hole: how far it is, and the way to it.
    """
    post = item.pattern.post
    found = []
    hole = post.string_hole
    spot = plan(_on(bore, hole))
    measured = min(hole - axis.enters, axis.leaves - hole)
    in_round = False
    if measured >= 0:
        nearest, way = beside
        in_round = nearest < measured - TOUCH and abs(v.dot(way, plan(item.frame.u))) > _SIDEWAYS
        measured = min(measured, nearest)
    if in_round and short(measured, margins.string_hole):
        found.append(_hole_by_end(item, own, _on(bore, hole), measured, v.dot(way, plan(item.frame.u)), margins))
    elif short(measured, margins.string_hole):
        outer = hole - axis.enters < axis.leaves - hole
        wall = "rail" if outer else "inner wall"
        text = clearance(measured, margins.string_hole, "The string hole of {item} lies {measured} mm inside the {wall} of {own}.",
                         "The string hole of {item} lies {a} mm from the {wall} of {own}; {b} mm wanted.",
                         item=item.id, wall=term(wall), own=own.id)
        squarely = abs(v.dot(beside[1], plan(bore.direction))) if measured >= 0 else 1.0
        lacking = tenths(aslant(margins.string_hole - measured, squarely))
        found.append(Snag("string-hole", grade(measured), (item.id, own.id), _on(bore, hole), measured,
                          margins.string_hole, text,
                          say("Move {own} by {lacking} mm outwards, or choose a post with its hole {lacking} mm deeper.",
                              own=own.id, lacking=lacking) if outer else
                          say("Move {own} by {lacking} mm inwards, or choose a post with its hole {lacking} mm nearer the "
                              "seat.",
                              own=own.id, lacking=lacking)))
    if measured < 0:
        return found
    tip, nut = (_room(item, spot, own, way, margins, beside[0]) for way in (1.0, -1.0))
    room = min(tip, nut)
    if short(room, margins.post_wall):
        text = clearance(room, margins.post_wall, "The post of {item} runs {measured} mm into the end of {own}.",
                         "The post of {item} lies {a} mm from the end of {own}; {b} mm wanted.", item=item.id, own=own.id)
        end = 1.0 if tip < nut else -1.0

        def clear(by: float) -> bool:
            there = v.along(spot, plan(item.frame.u), -end * by)
            around = wall_beside(own, there, post.diameter / 2 + margins.post_wall)[0]
            return not short(_room(item, there, own, end, margins, around), margins.post_wall)
        lacking = tenths(_slide(margins.post_wall - room, clear))
        found.append(Snag("post-to-slot-end", grade(room), (item.id, own.id), _on(bore, hole), room, margins.post_wall,
                          text, say("Slide {item} by {lacking} mm to the {end}, or lengthen {own} by that.", item=item.id,
                                    lacking=lacking, end=term("nut" if tip < nut else "tip"), own=own.id)))
    return found


def _hole_by_end(item: Item, own: Opening, where: Vec3, measured: float, to_tip: float, margins: Margins) -> Snag:
    """The string hole too near to an end of the slot."""
    a, b = both(measured, margins.string_hole)
    back = v.scale(plan(item.frame.u), -math.copysign(1.0, to_tip))
    lacking = _slide(margins.string_hole - measured, lambda by: not short(
        wall_beside(own, v.along(plan(where), back, by), margins.string_hole)[0], margins.string_hole))
    return Snag("string-hole", grade(measured), (item.id, own.id), where, measured, margins.string_hole,
                say("The string hole of {item} lies {a} mm from the end of {own}; {b} mm wanted.",
                    item=item.id, a=a, own=own.id, b=b),
                say("Slide {item} by {lacking} mm to the {end}, or lengthen {own} by that.", item=item.id,
                    lacking=tenths(lacking), end=term("nut" if to_tip > 0 else "tip"), own=own.id))


def _slide(least: float, enough: Callable[[float], bool]) -> float:
    """How far to slide along the edge, mm: in a round end the wall gives way less than one slides. As far as it helps at all."""
    return next((by for by in (least * share for share in _SHARES) if enough(by)), least)


def _room(item: Item, spot: Vec2, own: Opening, way: float, margins: Margins, around: float) -> float:
    """How far the flank of a post at a spot inside its slot is from the slot's end, mm: along the edge, or less.

    `around` is the distance from the spot to any wall.
    """
    half, aside = item.pattern.post.diameter / 2, v.scale(plan(item.frame.u), way)
    stretches = own.wall.stretches(spot, aside)
    room = (stretches[0][1] if stretches and stretches[0][0] == 0 else 0.0) - half
    if around - half >= margins.post_wall:
        return room
    nearest, out = wall_beside(own, v.along(spot, aside, half), margins.post_wall)
    return min(room, nearest) if v.dot(out, aside) > FACING else room


def _on(bore: Drilling, depth: float) -> Vec3:
    (x, y, z), (dx, dy, dz) = bore.start, bore.direction
    return x + dx * depth, y + dy * depth, z + dz * depth
