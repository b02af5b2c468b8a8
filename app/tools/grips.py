"""What a feature does when it is dragged: tuners, pins, holes, slots, and several things at once.

A grip is made when something is taken hold of and asked with every pointer
where its point should go. It always starts from the layout as it was then, so
nothing drifts and Esc brings everything back.
"""

from __future__ import annotations

from typing import Protocol

from app.tools import guides, neighbours, typed, words
from app.tools.hit import Target, depth_at, strip_at
from app.tools.neighbours import PointNeighbours, SlotNeighbours
from app.tools.options import Options
from app.tools.pointer import Pointer, Shown, Takes
from app.tools.snap import LINE_REACH, POINT_REACH, Snapper, constrained
from app.tools.snap_along import AlongSnapper
from geometry import vectors as v
from geometry.drawing import Drawing
from geometry.edits.edge_places import along_for_mark, along_of, nearest_on_edges
from geometry.edits.moving import move_features, plan_point
from geometry.edits.slots import move_slot_end, set_slot_length, set_slot_width
from geometry.edits.tuners import along_edge, move_tuner, set_place, slide_tuner
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, Headstock, RowPlace, StraightSlot
from geometry.saying import say
from geometry.solids.frames import frame
from geometry.solids.side import tilt_of
from geometry.tilt_words import tilt_words
from geometry.vectors import Vec2


class Grip(Protocol):
    """Something taken hold of."""

    name: str
    """what undo calls the drag"""
    origin: Vec2
    """its own point in the view when it was taken, mm"""

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        """What to show with its point as near to `to` as it can go. GeometryError when it cannot be there."""
        ...

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        """The layout for a typed value. GeometryError when it makes no sense here."""
        ...


class _Base:
    now: Vec2 | None = None
    """where its point was shown last: what a typed value leaves open stays there"""

    def __init__(self, layout: Headstock, options: Options, ids: tuple[str, ...]) -> None:
        self.layout, self.options, self.ids = layout, options, ids

    def _shown(self, layout: Headstock, readout: str, snapped: str = "", marks: Drawing = (),
               takes: tuple[Takes, ...] = ()) -> Shown:
        return Shown(layout, marks, readout, snapped, self.ids, takes=takes)

    def _echoed(self, layout: Headstock) -> Headstock:
        """With Mirrored, what the twins do too; what stood on the centreline is back there."""
        if not self.options.mirrored:
            return layout
        from geometry.edits.twin_features import echo_features  # here, as it brings a third of all edits

        return echo_features(self.layout, layout, self.ids)


class PointGrip(_Base):
    """A face tuner, a pin or a single hole: it goes where the pointer goes. A row comes along."""

    def __init__(self, layout: Headstock, options: Options, id: str) -> None:
        super().__init__(layout, options, (id,))
        self.name = say("Move {id}", id=id)
        self.origin = plan_point(layout, id)
        self._id = id
        self._tuner = any(tuner.id == id for tuner in layout.tuners)
        mates = _row_mates(layout, id)
        self._snapper = Snapper(layout, options, ignore=mates)
        self._neighbours = PointNeighbours(layout, id, mates)

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        to, axis = constrained(self.origin, to, pointer.shift)
        snap = self._snapper.point(to, pointer.mm_per_pixel, pointer.alt, axis)
        layout = self._echoed(self._at(snap.point))
        at = plan_point(layout, self._id)
        readout = words.place(at, self.options.unit, layout.nut)
        row = along_edge(layout, self._id) if self._tuner else None
        if row is not None:
            readout = say("along {along}, {place}", along=words.length(row[1], self.options.unit), place=readout)
        self.now = at
        marks = (*snap.marks, *self._neighbours.marks(layout, self.options.unit, pointer.mm_per_pixel))
        return self._shown(layout, readout, snap.words if v.distance(at, snap.point) < 0.01 else "", marks,
                           words.place_takes(at, layout.nut))

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        layout = self._at(typed.placed(text, self.options.unit, self.origin, self.now or pointer))
        made = self._echoed(layout)
        typed.across(plan_point(layout, self._id)[0], plan_point(made, self._id)[0])
        return made

    def _at(self, to: Vec2) -> Headstock:
        if self._tuner:
            return move_tuner(self.layout, self._id, to)
        return move_features(self.layout, self.ids, v.sub(to, self.origin))


class SideGrip(_Base):
    """A side tuner: it slides along its edge, taken in plan or by its mark on the folded edge.

    In plan it changes to the other edge when that is nearer. By its mark it
    also takes its depth from how far out on the strip the pointer is, unless
    Shift keeps it; near half the thickness it catches there.
    """

    def __init__(self, layout: Headstock, options: Options, id: str, by_mark: bool, origin: Vec2) -> None:
        super().__init__(layout, options, (id,))
        self.name = say("Slide {id}", id=id)
        self.origin = origin
        self._id = id
        self._by_mark = by_mark
        self._last = layout
        self._single = isinstance(layout.tuner(id).place, EdgePlace)
        self._snapper = AlongSnapper(layout, options, ignore=_row_mates(layout, id))

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        side, now = along_edge(self.layout, self._id)
        if self._by_mark:
            along = along_for_mark(self.layout, side, to[1], now)
        elif self._single and strip_at(self.layout, to) is None:
            side, along = nearest_on_edges(self.layout.outline, to, side)
        else:
            along = along_of(self.layout.outline, side, to)
        stop = self._snapper.snap(side, along, pointer.mm_per_pixel, pointer.alt)
        layout = slide_tuner(self.layout, self._id, stop.along, side if self._single else None)
        if self._by_mark and self._single and not pointer.shift:
            layout = self._sunk(layout, to, pointer)
        layout = self._echoed(layout)
        self._last = layout
        marks = (*stop.marks, *neighbours.of_seat(layout, self._id, self.options.unit, pointer.mm_per_pixel))
        return self._shown(layout, self._readout(layout), stop.words, marks, (("along", say("along the edge")),))

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        """How far along the edge; which edge and how deep stay as they were shown last."""
        number = typed.number(text, self.options.unit) if typed.point(text, self.options.unit) is None else None
        if number is None:
            values = typed.named(text, self.options.unit)
            if values.keys() != {"along"}:
                raise GeometryError(say("Type how far along the edge {id} sits, for example 73.9.", id=self._id))
            number = values["along"]
        layout = slide_tuner(self._last, self._id, number)
        typed.held_to(number, along_edge(layout, self._id)[1])
        return self._echoed(layout)

    def _sunk(self, layout: Headstock, to: Vec2, pointer: Pointer) -> Headstock:
        side, _ = along_edge(layout, self._id)
        half = layout.blank.thickness / 2
        depth = min(max(depth_at(layout, side, to), 0.5), layout.blank.thickness - 0.5)
        free = pointer.alt or not self.options.snapping
        near = abs(depth - half) <= (0.005 if free else POINT_REACH * pointer.mm_per_pixel)
        tuner = layout.tuner(self._id)
        place = EdgePlace(side=tuner.place.side, along=tuner.place.along,
                          depth=None if near else round(depth, 2))
        return set_place(layout, self._id, place)

    def _readout(self, layout: Headstock) -> str:
        _, along = along_edge(layout, self._id)
        sits = frame(layout, layout.tuner(self._id))
        text = say("along {along}, tilt {tilt}", along=words.length(along, self.options.unit), tilt=tilt_words(tilt_of(sits)))
        depth = sits.origin[2]
        if abs(depth - layout.blank.thickness / 2) > 1e-9:
            text += say(", {depth} below the face", depth=words.length(depth, self.options.unit))
        return text


class SlotEndGrip(_Base):
    """One round end of a straight slot. Shift keeps the slot's direction."""

    def __init__(self, layout: Headstock, options: Options, target: Target) -> None:
        super().__init__(layout, options, (target.id,))
        self._end = target.part
        self._id = target.id
        self.name = (say("Move the nut end of {slot}", slot=target.id) if target.part == "nut" else
                     say("Move the tip end of {slot}", slot=target.id))
        self.origin = target.at
        self._snapper = Snapper(layout, options, ignore=self.ids)
        self._neighbours = SlotNeighbours(target.id)

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        shape = self._shape(self.layout)
        other = shape.tip_end if self._end == "nut" else shape.nut_end
        if pointer.shift and v.distance(self.origin, other) > 1e-9:
            way = v.unit(v.sub(self.origin, other))
            size = v.dot(v.sub(to, other), way)
            step = self.options.grid if self.options.snapping and not pointer.alt else None
            size = round(size / step) * step if step else round(size, 2)
            return self._result(v.along(other, way, size), say("direction of the slot"), (), pointer.mm_per_pixel)
        upright = abs(to[0] - other[0]) <= LINE_REACH * pointer.mm_per_pixel
        if upright and self.options.snapping and not pointer.alt:
            level = self._snapper.point((other[0], to[1]), pointer.mm_per_pixel, axis=1)
            at = (other[0], level.point[1])
            return self._result(at, say("in line with its other end"), (*guides.line(other, at), *level.marks),
                                pointer.mm_per_pixel)
        level = self._snapper.point(to, pointer.mm_per_pixel, pointer.alt)
        return self._result(level.point, level.words, level.marks, pointer.mm_per_pixel)

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        absolute = typed.point(text, self.options.unit)
        if absolute is not None:
            made = self._echoed(move_slot_end(self.layout, self._id, self._end, absolute))
            typed.across(absolute[0], self._end_of(made)[0])
            return made
        number = typed.number(text, self.options.unit)
        values = {"length": number} if number is not None else typed.named(text, self.options.unit)
        layout = self.layout
        if "width" in values:
            layout = set_slot_width(layout, self._id, values.pop("width"))
        if "length" in values:  # after the width, of which it holds half at either end
            layout = set_slot_length(layout, self._id, values.pop("length"), "tip" if self._end == "nut" else "nut")
        if values:
            raise GeometryError(say("Type the length of the slot over its ends, or its width, or the place of the end."))
        return self._echoed(layout)

    def _result(self, to: Vec2, snapped: str, marks: Drawing, mm_per_pixel: float) -> Shown:
        layout = self._echoed(move_slot_end(self.layout, self._id, self._end, to))
        shape = self._shape(layout)
        size = v.distance(shape.nut_end, shape.tip_end) + shape.width
        readout = say("length {length}, {place}", length=words.length(size, self.options.unit),
                      place=words.place(self._end_of(layout), self.options.unit, layout.nut))
        room = self._neighbours.marks(layout, self.options.unit, mm_per_pixel)
        return self._shown(layout, readout, snapped, (*marks, *room), (("length", say("length")), ("width", say("width"))))

    def _end_of(self, layout: Headstock) -> Vec2:
        shape = self._shape(layout)
        return shape.nut_end if self._end == "nut" else shape.tip_end

    def _shape(self, layout: Headstock) -> StraightSlot:
        return next(slot.shape for slot in layout.slots if slot.id == self._id)


class ManyGrip(_Base):
    """A slot as a whole, or several features together; all move by the same vector."""

    def __init__(self, layout: Headstock, options: Options, ids: tuple[str, ...], lead: str) -> None:
        super().__init__(layout, options, ids)
        self.name = say("Move {lead}", lead=lead) if len(ids) == 1 else say("Move {n} things", n=len(ids))
        self.origin = plan_point(layout, lead)
        self._lead = lead
        self._slot = lead if len(ids) == 1 and any(slot.id == lead for slot in layout.slots) else ""
        self._neighbours = SlotNeighbours(lead)
        moving = {mate for id in ids for mate in _row_mates(layout, id)}
        self._snapper = Snapper(layout, options, ignore=moving)

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        to, axis = constrained(self.origin, to, pointer.shift)
        snap = self._snapper.point(to, pointer.mm_per_pixel, pointer.alt, axis)
        by = v.sub(snap.point, self.origin)
        layout, kept = self._moved(by)
        by, marks = v.add(by, kept), snap.marks
        readout = say("moved {across} across, {along} along",
                      across=words.length(by[0], self.options.unit), along=words.length(by[1], self.options.unit))
        self.now = v.add(self.origin, by)
        if self._slot:
            marks += self._neighbours.marks(layout, self.options.unit, pointer.mm_per_pixel)
        return self._shown(layout, readout, snap.words, marks, (("across", say("moved across")), ("along", say("moved along"))))

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        """How far it is moved, across and along or as a length and an angle; or the place of its point."""
        unit, now = self.options.unit, self.now or pointer
        values = {} if typed.point(text, unit) is not None else typed.polar(text, unit)
        if values and values.keys() <= {"across", "along"}:
            by = v.sub(now, self.origin)
            by = (values.get("across", by[0]), values.get("along", by[1]))
        else:
            by = v.sub(typed.placed(text, unit, self.origin, now), self.origin)
        layout, kept = self._moved(by)
        typed.across(0.0, kept[0])
        return layout

    def _moved(self, by: Vec2) -> tuple[Headstock, Vec2]:
        """The layout with everything moved, and how far what leads was brought back to the centreline."""
        plain = move_features(self.layout, self.ids, by)
        made = self._echoed(plain)
        return made, (0.0, 0.0) if made is plain else v.sub(plan_point(made, self._lead), plan_point(plain, self._lead))


def _row_mates(layout: Headstock, id: str) -> set[str]:
    """The feature and, for a tuner in a row, all members of its row: they move together."""
    place = next((tuner.place for tuner in layout.tuners if tuner.id == id), None)
    if not isinstance(place, RowPlace):
        return {id}
    return {tuner.id for tuner in layout.tuners
            if isinstance(tuner.place, RowPlace) and tuner.place.row == place.row}
