"""Rows for each kind of feature: what can be read and typed of it. Pure data, no widgets."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

from msgspec import Struct
from msgspec.structs import replace

from app.panels.blank_rows import blank_rows
from app.panels.forms.field_help import pattern
from app.panels.forms.rows import FieldRow
from app.panels.hole_rows import becomes_of, retainer_rows, there_row, tuner_rows
from app.panels.other_hand import other_hand_rows
from app.panels.pocket_rows import pocket_facts, slot_there_row
from app.panels.router.fit_rows import fit_rows
from app.panels.straight_row import direction_rows, straight_edge_rows
from app.panels.strings.string_way_rows import flat_rows, ramp_rows
from app.panels.tuner_numbers import face_numbers, side_numbers
from geometry.checks.in_wood import by_the_wood, strays
from geometry.edits import (
    free_from_row,
    loop_at,
    move_handle,
    move_node,
    rename,
    set_edge,
    set_edge_length,
    set_field,
    set_pattern,
    set_radius,
    set_row_spacing,
    set_slot_length,
    set_smooth,
    set_turn,
    to_drawn,
)
from geometry.edits.parts import FEATURE_GROUPS, shaped_loop
from geometry.edits.tuners import members
from geometry.layout import (
    Ear,
    EdgePlace,
    EdgeRun,
    Headstock,
    Pin,
    RowPlace,
    Side,
    SingleHole,
    Slot,
    StraightSlot,
    Tuner,
    loop_path,
    slot_path,
    worked,
)
from geometry.layout.edges import edge
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids import side_bore
from geometry.solids.flats import stands_off
from geometry.solids.side import board_for
from geometry.strings.square_line import square_line
from geometry.terms import term
from geometry.tolerance import ALONG_NUT, TOUCH
from geometry.units import LengthUnit, format_close, format_size
from geometry.vectors import Vec2

SIDES = (("bass", term("bass")), ("treble", term("treble")))
HANDLES = ((say("First handle, across"), say("First handle, along")), (say("Second handle, across"), say("Second handle, along")))
SHAPING = say("Double-click the edge to add a node, a node to make it smooth or a corner. Hold a node to type its place.")
"""What an outline takes from the hand."""


class Page(Struct, frozen=True):
    """What the panel shows: a title, what follows from the layout, and what can be typed."""

    title: str
    facts: list[FieldRow]
    fields: list[FieldRow]
    of: str = ""
    """what the fields are of, where the title does not tell"""


def describe(layout: Headstock, id: str, unit: LengthUnit, node: int | None = None) -> Page:
    """The page of a feature; of one of its nodes when `node` is given and it has one."""
    loop = shaped_loop(layout, id)
    of_node = loop is not None and node is not None and 0 <= node < len(loop.nodes)
    if id == "blank":
        return Page(say("Blank"), [], blank_rows(layout, unit))
    if id == "nut":
        return Page(say("Nut and strings"), [], nut_rows(layout))
    page = _node(layout, id, node) if of_node else _outline(layout, unit) if id == OUTLINE else _feature(layout, id, unit)
    made = worked(by_the_wood(layout).book)
    if id in made.cut:
        told = say("cut otherwise than it is drawn") if strays(layout, id) else say("cut: a change here changes the plan alone")
    elif id in made.glued:
        told = say("glued on otherwise than it is drawn") if strays(layout, id) else say("glued on: a change here changes the plan alone")
    elif id in made.drilled:
        told = say("drilled otherwise than it is drawn") if strays(layout, id) else say("drilled: a move here moves the plan alone")
    else:
        return page
    return replace(page, facts=[FieldRow(say("In the real piece"), "fact", told, warn=True), *page.facts])


def _outline(layout: Headstock, unit: LengthUnit) -> Page:
    return Page(say("Outline"), [FieldRow(SHAPING, "note"), FieldRow(say("Nodes"), "fact", str(len(layout.outline.nodes))),
                                 *outline_size(layout, unit)], [])


def _feature(layout: Headstock, id: str, unit: LengthUnit) -> Page:
    part = next((one for group in FEATURE_GROUPS for one in getattr(layout, group) if one.id == id), None)
    match part:
        case Tuner():
            return _tuner(layout, part, unit)
        case Slot():
            return _slot(layout, part, unit)
        case Pin():
            return _pin(layout, part)
        case SingleHole():
            return _hole(layout, part)
        case Ear():
            return Page(say("Ear, {id}", id=id), [], [_name(layout, "ears", id), *ear_rows(layout, part)])
    return Page("", [], [])


# ---- helpers ------------------------------------------------------------
def field(layout: Headstock, label: str, kind: str, path: tuple, value: object, **more) -> FieldRow:
    """A row that edits one field of the layout by its path."""
    return FieldRow(label, kind, value, partial(set_field, layout, path), key=pattern(path), **more)


def _name(layout: Headstock, group: str, id: str) -> FieldRow:
    return FieldRow(say("Name"), "text", id, partial(rename, layout, group, id))


def _point(layout: Headstock, at: Vec2, words: tuple[str, str], put: Callable[[Vec2], Headstock]) -> list[FieldRow]:
    """Both numbers of a point of the face."""
    return pair_rows(at, words, put, (say("From the centreline, positive to the treble side."),
                                 say("From the {line}, positive to the tip.", line=square_line(layout.nut))))


def pair_rows(at: Vec2, words: tuple[str, str], put: Callable[[Vec2], Headstock], help: tuple[str, str] = ("", "")) -> list[FieldRow]:
    """Both numbers of a place; `put` takes it to another."""
    return [FieldRow(words[0], "length", at[0], lambda x: put((x, at[1])), help=help[0]),
            FieldRow(words[1], "length", at[1], lambda y: put((at[0], y)), help=help[1])]


def _point_at(layout: Headstock, path: tuple, at: Vec2, words: tuple[str, str]) -> list[FieldRow]:
    """Both numbers of a point that is a field of the layout."""
    return _point(layout, at, words, partial(set_field, layout, path))


def _slot_end(layout: Headstock, path: tuple, at: Vec2, words: tuple[str, str]) -> list[FieldRow]:
    """Both numbers of an end of a straight slot."""
    return pair_rows(at, words, partial(set_field, layout, path), (
        say("From the centreline to the middle of the round end, positive to the treble side."),
        say("From the {line} to the middle of the round end, positive to the tip: the slot goes on beyond it by half of its width.",
            line=square_line(layout.nut))))


def _across(layout: Headstock) -> tuple[str, str]:
    return say("Across, from the centreline"), say("Along, from the {line}", line=square_line(layout.nut))


def _edge_begins(layout: Headstock, side: Side) -> str:
    """Where an edge begins, from which lengths along it are told."""
    if not layout.nut.slant:
        return term("nut line")
    x, y = edge(layout.outline, side).path.start
    return term("base line") if abs(y) <= TOUCH and abs(layout.nut.before((x, y))) > ALONG_NUT else term("nut line")


# ---- features -----------------------------------------------------------
def _tuner(layout: Headstock, tuner: Tuner, unit: LengthUnit) -> Page:
    pattern = layout.pattern(tuner.pattern)
    path = ("tuners", tuner.id)
    rows = [_name(layout, "tuners", tuner.id),
            FieldRow(say("Hardware"), "choice", tuner.pattern, partial(set_pattern, layout, tuner.id),
                     choices=tuple((p.id, p.id) for p in layout.patterns)),
            *other_hand_rows(layout, [tuner])]
    place = tuner.place
    if isinstance(place, RowPlace):
        row = layout.row(place.row)
        rows.append(FieldRow(say("In the row"), "fact", say("{row}, number {number}", row=row.id, number=place.index + 1)))
        rows.append(FieldRow(say("Spacing of the row"), "length", row.spacing,
                             lambda spacing: set_row_spacing(layout, row.id, spacing)))
        if isinstance(row.run, EdgeRun):
            rows.append(field(layout, say("Row begins, along the edge"), "length", ("rows", row.id, "run", "first"),
                              row.run.first,
                              help=say("Arc length from the {line} to the first of the row.", line=_edge_begins(layout, row.run.side))))
            if pattern.mount == "face":
                rows.append(field(layout, say("Row stands in from the edge"), "length", ("rows", row.id, "run", "inset"),
                                  row.run.inset))
            rows += straight_edge_rows(layout, [one.id for one in members(layout, row.id)])
        else:
            rows += _point_at(layout, ("rows", row.id, "run", "start"), row.run.start,
                           (say("Row begins, across"), say("Row begins, along")))
            rows += direction_rows(layout, row, tuner.id)
        rows.append(FieldRow(say("Free it from the row"), "button", None, lambda _: free_from_row(layout, tuner.id)))
    elif isinstance(place, EdgePlace):
        rows.append(field(layout, say("Edge"), "choice", (*path, "place", "side"), place.side, choices=SIDES))
        rows.append(field(layout, say("Along the edge"), "length", (*path, "place", "along"), place.along,
                          help=say("Arc length from the {line}.", line=_edge_begins(layout, place.side))))
        rows.append(field(layout, say("Axis below the face"), "length", (*path, "place", "depth"), place.depth,
                          optional=True, empty=say("half the thickness")))
    else:
        rows += _point_at(layout, (*path, "place", "at"), place.at, _across(layout))
        rows.append(FieldRow(say("Button points"), "angle", place.turn, partial(set_turn, layout, tuner.id),
                             optional=True, empty=say("to the edge"),
                             help=say("Counter-clockwise from straight across to the treble side.")))
    rows += _string_rows(layout, tuner, pattern.mount == "side")
    rows.append(field(layout, say("Leave it where it is"), "flag", (*path, "held"), tuner.held,
                      help=say("Keeps proposals from moving it and from giving it another string.")))
    if pattern.mount == "side":
        rows += flat_rows(layout, tuner, unit)
    numbers = side_bore(layout, tuner.id) if pattern.mount == "side" else None
    facts = (side_numbers(numbers, unit, board_for(layout.rack.press.base, unit), None if tuner.flat else stands_off(layout, tuner.id)) if numbers else
             face_numbers(layout, tuner, unit))
    title = (say("Side tuner, {tuner}", tuner=tuner.id) if pattern.mount == "side" else
             say("Face tuner, {tuner}", tuner=tuner.id))
    return Page(title, facts, rows)


def _string_rows(layout: Headstock, tuner: Tuner, over: bool) -> list[FieldRow]:
    """Which string is wound on the post, and on which side of it that runs; what has no string has no side."""
    path = ("tuners", tuner.id)
    if not layout.strings:
        return []
    rows = [field(layout, say("String"), "choice", (*path, "string"), tuner.string, choices=(
        (None, say("none")), *((s.id, f"{s.id} {s.note}".strip()) for s in layout.strings)))]
    if tuner.string is not None:
        rows.append(field(layout, say("String runs") if over else say("String runs on the"), "choice", (*path, "winds"), tuner.winds,
                          choices=(("bass", say("over the post")), ("treble", say("under the post"))) if over else SIDES,
                          help=say("Which side of the post the string comes to.")))
    return rows


def _slot(layout: Headstock, slot: Slot, unit: LengthUnit) -> Page:
    id, path = slot.id, ("slots", slot.id)
    rows = [_name(layout, "slots", id)]
    if isinstance(slot.shape, StraightSlot):
        shape = slot.shape
        rows.append(field(layout, say("Width"), "length", (*path, "shape", "width"), shape.width))
        rows += _slot_end(layout, (*path, "shape", "nut_end"), shape.nut_end, (say("Nut end, across"), say("Nut end, along")))
        rows += _slot_end(layout, (*path, "shape", "tip_end"), shape.tip_end, (say("Tip end, across"), say("Tip end, along")))
        over_all = math.dist(shape.nut_end, shape.tip_end) + shape.width
        if slot.there:  # so it is measured in the wood; the end at the nut stays
            rows.insert(2, FieldRow(say("Length over all"), "length", over_all, lambda value: set_slot_length(layout, id, value)))
        else:
            rows.append(FieldRow(say("Length over all"), "fact", format_close(over_all, unit, 2, mark=True)))
        rows.append(FieldRow(say("Shape its wall freely"), "button", None, lambda _: to_drawn(layout, id)))
    else:
        box = slot_path(slot).box
        rows.append(FieldRow(say("Size"), "fact", format_size(box[2] - box[0], box[3] - box[1], unit, 2)))
    depth = [field(layout, say("Depth"), "length", (*path, "depth"), slot.depth, optional=True, empty=say("through")),
             slot_there_row(layout, (id,))]
    if slot.there:
        rows[3 if isinstance(slot.shape, StraightSlot) else 1:0] = depth
        return Page(say("Pocket, {id}", id=id), pocket_facts(slot, layout.blank.thickness, unit), rows)
    rows += [*depth, *ramp_rows(layout, slot)]
    return Page(say("Slot, {id}", id=id), fit_rows(layout, id, unit), rows)


def _pin(layout: Headstock, pin: Pin) -> Page:
    path = ("pins", pin.id)
    return Page(say("Locating pin, {id}", id=pin.id), [], [
        _name(layout, *path), *_point_at(layout, (*path, "at"), pin.at, _across(layout)),
        field(layout, say("Diameter"), "length", (*path, "diameter"), pin.diameter),
        FieldRow(say("Its hole"), "fact", becomes_of(layout, pin.id))])


def _hole(layout: Headstock, hole: SingleHole) -> Page:
    id, path = hole.id, ("holes", hole.id)
    return Page(say("Hole, {id}", id=id), [], [
        _name(layout, *path), *_point_at(layout, (*path, "at"), hole.at, _across(layout)),
        field(layout, say("Diameter"), "length", (*path, "diameter"), hole.diameter),
        field(layout, say("Depth"), "length", (*path, "depth"), hole.depth, optional=True, empty=say("through")),
        field(layout, say("Drilled from the"), "choice", (*path, "surface"), hole.surface,
              choices=(("face", term("face")), ("back", term("back")))), there_row(layout, (id,)), *retainer_rows(layout, hole),
        *(() if hole.retainer else tuner_rows(layout, (id,)))])


def ear_rows(layout: Headstock, ear: Ear) -> list[FieldRow]:
    """The dimensions of an ear."""
    path, line = ("ears", ear.id), square_line(layout.nut)
    return [field(layout, say("Side"), "choice", (*path, "side"), ear.side, choices=SIDES),
            field(layout, say("Width"), "length", (*path, "width"), ear.width),
            field(layout, say("Begins, from the {line}", line=line), "length", (*path, "start"), ear.start),
            field(layout, say("Ends, from the {line}", line=line), "length", (*path, "end"), ear.end)]


def nut_rows(layout: Headstock) -> list[FieldRow]:
    """The nut's dimensions."""
    nut = layout.nut
    rows = [field(layout, label, "length", ("nut", key), getattr(nut, key), help=help) for label, key, help in (
        (say("Width"), "width", ""), (say("First to last string"), "spread", say("Between the centres of the outer strings.")),
        (say("Between strings of a course"), "pair", say("Centre to centre.")), (say("Height above the face"), "height", ""),
        (say("Scale length"), "scale_length", ""))]
    rows.insert(2, field(layout, say("Spacing"), "choice", ("nut", "spacing"), nut.spacing,
                         choices=(("centres", say("equal centres")), ("gaps", say("equal gaps between strings")))))
    rows += [field(layout, say("Pitch of the head"), "angle", ("nut", "pitch"), nut.pitch),
             field(layout, say("Slant of the nut"), "angle", ("nut", "slant"), nut.slant)]
    return rows


def _node(layout: Headstock, ref: str, node: int) -> Page:
    """A node of the outline or of a drawn slot, and the edge that leaves it."""
    nodes = loop_at(layout, ref).nodes
    this, following = nodes[node], nodes[(node + 1) % len(nodes)].at
    rows = _point(layout, this.at, _across(layout), partial(move_node, layout, ref, node))
    kind = "curve" if this.handles is not None else ("arc" if this.bulge else "straight")
    rows.append(FieldRow(say("Node"), "choice", this.smooth, partial(set_smooth, layout, ref, node),
                         choices=((False, say("corner")), (True, say("smooth")))))
    rows.append(FieldRow(say("Edge to the next node"), "choice", kind, partial(set_edge, layout, ref, node),
                         choices=(("straight", say("straight")), ("arc", say("arc")), ("curve", say("curve")))))
    if kind == "arc":
        radius = math.dist(this.at, following) * (1 + this.bulge ** 2) / (4 * abs(this.bulge))
        rows.append(FieldRow(say("Radius"), "length", radius, partial(set_radius, layout, ref, node)))
    if kind == "straight":
        rows.append(FieldRow(say("Length"), "length", math.dist(this.at, following),
                             partial(set_edge_length, layout, ref, node)))
    for i, handle in enumerate(this.handles or ()):
        rows += pair_rows(handle, HANDLES[i], partial(move_handle, layout, ref, node, i))
    return Page(say("Node {node} of the {ref}", node=node + 1, ref=term(ref)), [], rows)


def outline_size(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """Size of the outline."""
    path = loop_path(layout.outline)
    x0, y0, x1, y1 = path.box
    return [FieldRow(say("Size"), "fact", format_size(x1 - x0, y1 - y0, unit)),
            FieldRow(say("Length of the edge"), "fact", format_close(path.length, unit, mark=True))]
