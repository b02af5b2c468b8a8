"""The template as a piece of board: what is left of it between its openings, and whether the router stands on it.

Distances on the flattened outlines, within 0.005 mm.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import partial
from typing import Literal

import shapely
from msgspec import Struct
from shapely.geometry import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.cancellation import Ask, go_on
from geometry.curves.polygons import grown, parts, polygon
from geometry.layout import Headstock, slot_path
from geometry.layout.edges import end_line
from geometry.lengths import at_most, mm, place
from geometry.routing.follower import Follower, template_opening, template_outline
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

STRIDE = 6.0
"""Distance of the places, mm, at which the router is put on the template."""

Kind = Literal["closed opening", "opening in pieces", "openings meet", "thin web", "pin outside", "pin near an edge",
               "base cannot stand", "base overhangs"]


class BoardNote(Struct, frozen=True):
    """Something about the template itself."""

    kind: Kind
    of: tuple[str, ...]
    """ids of slots and pins, "outline" for the board's outer edge"""
    where: Vec2
    measured: float
    """mm; a share of the base for "base overhangs" """
    needed: float
    words: str


class Board(Struct, frozen=True):
    """The compensated template in plan (mm), in the layout's coordinates."""

    outside: BaseGeometry
    """outline shrunk by the offset, or the blank"""
    openings: tuple[tuple[str, BaseGeometry], ...]
    """slot id and opening: the slot grown by the offset; may be empty or in pieces when the offset is negative"""
    pins: tuple[tuple[str, Polygon], ...]
    area: BaseGeometry
    """what is left of the board"""


def template_board(layout: Headstock, offset: float) -> Board:
    """The template for an offset in mm (geometry.routing.follower), pin holes and all.

    A board with the shape of the head is shrunk by the offset; one as large as the blank keeps its edges.
    GeometryError when the outline or a slot crosses itself.
    """
    blank = layout.blank
    if layout.template.board == "outline":
        outside = template_outline(layout, offset)
    else:
        outside = box(-blank.bass, -blank.behind, blank.treble, blank.tip)
    openings = tuple((slot.id, template_opening(slot, offset)) for slot in layout.to_rout)
    pins = tuple((pin.id, grown(Point(pin.at), pin.diameter / 2)) for pin in layout.pins)
    cut = shapely.union_all([opening for _, opening in openings] + [hole for _, hole in pins])
    return Board(outside, openings, pins, outside.difference(cut))


def board_notes(layout: Headstock, follower: Follower, ask: Ask = go_on) -> tuple[BoardNote, ...]:
    """What is wrong with the template for a follower, or worth knowing, worst kinds first. Empty when all is well.

    `ask` is asked between the places at which the router is put on the template.
    """
    board = template_board(layout, follower.offset)
    notes = _closed(board, layout, follower) + _webs(board, layout) + _pins(board, layout)
    if not any(note.kind == "closed opening" for note in notes):
        notes += _inside_base(board, layout, follower, ask)
    if layout.template.board == "outline":
        notes += _outside_base(board, layout, follower, ask)
    return tuple(notes)


def _closed(board: Board, layout: Headstock, follower: Follower) -> list[BoardNote]:
    notes = []
    for (id, opening), slot in zip(board.openings, layout.to_rout, strict=True):
        found = parts(opening)
        at = polygon(slot_path(slot)).representative_point()
        where = (at.x, at.y)
        if not found:
            notes.append(BoardNote("closed opening", (id,), where, 0.0, 2 * -follower.offset,
                                   say("The template opening for {id} closes up: the cutter is {offset} wider than "
                                       "what follows the template. Choose another bit or a wider slot.",
                                       id=id, offset=mm(-2 * follower.offset))))
        elif len(found) > 1:
            notes.append(BoardNote("opening in pieces", (id,), where, float(len(found)), 1.0,
                                   say("The template opening for {id} falls into {found} pieces where the slot is "
                                       "narrow: choose a slimmer cutter.",
                                       id=id, found=len(found))))
    return notes


def _webs(board: Board, layout: Headstock) -> list[BoardNote]:
    """Board between two openings, and between an opening and the board's outer edge."""
    needed = layout.margins.template_web
    notes = []
    edge = board.outside.boundary
    shapes = [(id, area) for id, area in board.openings if not area.is_empty]
    for i, (id, area) in enumerate(shapes):
        pairs = [(other, shape) for other, shape in shapes[i + 1:]] + [("outline", edge)]
        for other, shape in pairs:
            wide = area.distance(shape)
            if wide >= needed - TOUCH:
                continue
            joint = shapely.shortest_line(area, shape)
            middle = joint.interpolate(0.5, normalized=True)
            beside = say("the edge of the template") if other == "outline" else other
            if wide <= TOUCH:
                notes.append(BoardNote("openings meet", (id, other), (middle.x, middle.y), 0.0, needed,
                                       say("In the template nothing is left between {id} and {beside} at {place}: "
                                           "choose a follower nearer to the size of the cutter.",
                                           id=id, beside=beside, place=place((middle.x, middle.y)))))
                continue
            notes.append(BoardNote("thin web", (id, other), (middle.x, middle.y), wide, needed,
                                   say("Only {wide} of template is left between {id} and {beside} at {place}, "
                                       "{needed} are wanted: choose a follower nearer to the size of the cutter, or "
                                       "back the template with a second board.",
                                       wide=at_most(wide), id=id, beside=beside, place=place((middle.x, middle.y)),
                                       needed=mm(needed))))
    return notes


def _pins(board: Board, layout: Headstock) -> list[BoardNote]:
    needed = layout.margins.pin_any
    whole = board.outside.difference(shapely.union_all([area for _, area in board.openings])) if board.openings else board.outside
    notes = []
    for pin in layout.pins:
        middle = Point(pin.at)
        inside = whole.distance(middle) <= TOUCH
        wood = whole.boundary.distance(middle) - pin.diameter / 2 if inside else -whole.distance(middle)
        if not inside:
            notes.append(BoardNote("pin outside", (pin.id,), pin.at, wood, needed,
                                   say("{pin} lies outside the template, so it cannot hold it: cut the template from "
                                       "a board as large as the blank, or move the pin.",
                                       pin=pin.id)))
        elif wood < needed - TOUCH:
            notes.append(BoardNote("pin near an edge", (pin.id,), pin.at, wood, needed,
                                   say("Only {wood} of template is left beside {pin}, {needed} are wanted: move the "
                                       "pin.",
                                       wood=at_most(max(0.0, wood)), pin=pin.id, needed=mm(needed))))
    return notes


def stands(area: BaseGeometry, at: Vec2, base: float) -> float:
    """How far inside its support the router's axis stands, mm: negative when it tips.

    The support is the convex hull of what the base (diameter, mm) covers of the template. Minus half the
    base when it covers nothing.
    """
    covered = grown(Point(at), base / 2).intersection(area)
    if covered.is_empty:
        return -base / 2
    hull = covered.convex_hull
    middle = Point(at)
    far = hull.boundary.distance(middle) if hull.geom_type == "Polygon" else hull.distance(middle)
    return far if hull.geom_type == "Polygon" and hull.covers(middle) else -far


def _places(line: BaseGeometry) -> list[Vec2]:
    """Points along rings, STRIDE mm apart."""
    found = []
    for ring in shapely.get_parts(line):
        count = max(4, math.ceil(ring.length / STRIDE))
        points = shapely.line_interpolate_point(ring, [i * ring.length / count for i in range(count)])
        found += [(p.x, p.y) for p in points]
    return found


def _each(places: Sequence[Vec2], ask: Ask) -> Iterator[Vec2]:
    """One place after the other, asking before each whether to go on."""
    for number, at in enumerate(places, 1):
        ask(partial(_at_place, number, len(places)))
        yield at


def _at_place(number: int, places: int) -> str:
    return say("How the router stands on the template: place {number} of {places}", number=number, places=places)


def _inside_base(board: Board, layout: Headstock, follower: Follower, ask: Ask) -> list[BoardNote]:
    """For each slot the place where the router stands worst on the template."""
    base, needed = layout.rack.router.base, layout.margins.base_rest
    notes = []
    for (id, opening), slot in zip(board.openings, layout.to_rout, strict=True):
        room = grown(polygon(slot_path(slot)), -max(follower.bit.cutter / 2 - 0.01, 0.0))
        if opening.is_empty or room.is_empty:
            continue
        spots = [(stands(board.area, at, base), at) for at in _each(_places(room.boundary), ask)]
        worst, at = min(spots)
        if worst < needed - TOUCH:
            words = {"slot": id, "at": place(at), "base": mm(base)}
            notes.append(BoardNote(
                "base cannot stand", (id,), at, worst, needed,
                say("Over {slot} at {at} the router's base of {base} tips into the opening: fit a wider base, or cut the "
                    "template from a larger board.", **words) if worst < 0 else
                say("Over {slot} at {at} the router's base of {base} stands only {inside} inside its support: fit a wider "
                    "base, or cut the template from a larger board.", inside=at_most(worst), **words)))
    return notes


def _outside_base(board: Board, layout: Headstock, follower: Follower, ask: Ask) -> list[BoardNote]:
    """The place on the outside of the template where least of the base stands on it."""
    if board.outside.is_empty:
        return []
    base = layout.rack.router.base
    way = grown(board.outside, follower.diameter / 2).boundary
    whole = math.pi * base * base / 4
    foot, ahead = end_line(layout.outline)
    shares = [(grown(Point(at), base / 2).intersection(board.area).area / whole, at)
              for at in _each(_places(way), ask) if v.dot(v.sub(at, foot), ahead) >= 0.0]
    if not shares:
        return []
    share, at = min(shares)
    return [BoardNote("base overhangs", ("outline",), at, share, 0.5,
                      say("Round the outside less than half of the base stands on the template, at {at} only "
                          "{share:.0f} %: keep your weight on the template's side, or lay a piece of the same "
                          "thickness beside the work.",
                          at=place(at), share=100 * share))]
