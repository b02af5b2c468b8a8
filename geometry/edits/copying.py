"""Copying one side to the other, and mirroring a whole layout for the other hand."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.adding import remove_features
from geometry.edits.in_book import renamed_in_book
from geometry.edits.loops import flipped
from geometry.edits.moving import plan_point
from geometry.edits.other_hand import mirrored_pattern, with_mirrored_patterns
from geometry.edits.parts import group_of, settled
from geometry.edits.picture import mirrored_picture
from geometry.edits.slots import flipped_slot, swapped_sides
from geometry.edits.steps import renamed_steps
from geometry.errors import GeometryError
from geometry.layout import (
    OTHER,
    EdgePlace,
    EdgeRun,
    FreePlace,
    Headstock,
    Loop,
    Pattern,
    Place,
    Row,
    RowPlace,
    Side,
    Tuner,
    feature_ids,
)
from geometry.layout.names import Names, feature_names
from geometry.saying import say
from geometry.terms import term
from geometry.tolerance import TOUCH

ON_CENTRELINE = 0.5
"""A slot, pin or hole whose middle lies within this many mm of the centreline belongs to no side."""


def side_features(layout: Headstock, side: Side) -> list[str]:
    """Ids of the tuners, slots, pins and holes that lie on one side of the centreline."""
    sign = 1.0 if side == "treble" else -1.0
    return [one.id for group in (layout.slots, layout.tuners, layout.pins, layout.holes) for one in group
            if plan_point(layout, one.id)[0] * sign > (TOUCH if isinstance(one, Tuner) else ON_CENTRELINE)]


def copy_side(layout: Headstock, source: Side, target: Side) -> Headstock:
    """Mirrored copies of one side's tuners, rows, slots, pins and holes in place of those of the other (see mirror_copies).

    The outline stays as it is: make it symmetric first if the copies are to sit in the same places.
    """
    if source == target:
        raise GeometryError(say("A side is copied to the other side."))
    ids = side_features(layout, source)
    if not ids:
        raise GeometryError(say("There is nothing on the {source} side to copy.", source=term(source)))
    return mirror_copies(remove_features(layout, side_features(layout, target)), ids)


def mirror_copies(layout: Headstock, ids: Iterable[str]) -> Headstock:
    """The layout with a mirrored copy of each of these tuners, slots, pins and holes; rows are copied with members.

    Names swap the words bass and treble, or take the next free number. A copied
    tuner takes the string that mirrors its own (the first and the last, the
    second and the last but one) when no tuner has it yet. Hardware whose bores
    lie off to one side is copied as its left or right counterpart, a pattern
    that is added when the layout has none.
    """
    wanted, features, lines = set(ids), feature_names(layout), Names(row.id for row in layout.rows)
    for id in wanted:
        if group_of(layout, id) == "ears":
            raise GeometryError(say("Ear {id} belongs to the blank and is not copied.", id=id))
    chosen = [tuner for tuner in layout.tuners if tuner.id in wanted]
    row_names: dict[str, str] = {}
    rows: list[Row] = []
    for row in layout.rows:
        if any(isinstance(tuner.place, RowPlace) and tuner.place.row == row.id for tuner in chosen):
            row_names[row.id] = lines.alike(swapped_sides(row.id))
            rows.append(replace(flipped_row(row), id=row_names[row.id]))

    def name(id: str) -> str:
        return features.alike(swapped_sides(id))

    patterns, twin = with_mirrored_patterns(layout, chosen)
    held = {tuner.string for tuner in layout.tuners}
    strings = [string.id for string in layout.strings]
    opposite = dict(zip(strings, reversed(strings), strict=True))
    tuners: list[Tuner] = []
    for tuner in chosen:
        string = opposite.get(tuner.string)
        string = None if string in held else string
        held.add(string)
        copy = flipped_tuner(tuner, layout.pattern(tuner.pattern))
        place = copy.place
        if isinstance(place, RowPlace):
            place = replace(place, row=row_names[place.row])
        tuners.append(replace(copy, id=name(tuner.id), string=string, place=place,
                              pattern=twin.get(tuner.pattern, tuner.pattern)))
    slots = [replace(flipped_slot(slot), id=name(slot.id)) for slot in layout.slots if slot.id in wanted]
    pins = [replace(pin, id=name(pin.id), at=v.mirrored(pin.at)) for pin in layout.pins if pin.id in wanted]
    holes = [replace(hole, id=name(hole.id), at=v.mirrored(hole.at)) for hole in layout.holes if hole.id in wanted]
    return settled(replace(
        layout, patterns=patterns, rows=(*layout.rows, *rows), tuners=(*layout.tuners, *tuners),
        slots=(*layout.slots, *slots), pins=(*layout.pins, *pins), holes=(*layout.holes, *holes)))


def mirror_layout(layout: Headstock) -> Headstock:
    """The whole layout mirrored about the centreline, for a left-handed instrument. Twice gives the same layout.

    The frame stays: the side at +x is called treble whatever strings cross
    it. So every tuner keeps its string, and strings and courses keep what they
    are named, while the strings change their order and the words bass and
    treble change places in names of features. Patterns whose bores lie off to
    one side are mirrored with them.
    """
    blank = replace(layout.blank, bass=layout.blank.treble, treble=layout.blank.bass)
    rename = swapped_sides
    names = {id: rename(id) for id in feature_ids(layout)}
    return settled(replace(
        layout, blank=blank, nut=replace(layout.nut, slant=-layout.nut.slant if layout.nut.slant else 0.0),
        ears=tuple(replace(ear, id=rename(ear.id), side=OTHER[ear.side]) for ear in layout.ears),
        outline=Loop(nodes=tuple(flipped(list(layout.outline.nodes)))),
        strings=layout.strings[::-1],
        slots=tuple(replace(flipped_slot(slot), id=rename(slot.id)) for slot in layout.slots),
        routes=tuple(replace(route, of=rename(route.of)) for route in layout.routes),
        patterns=tuple(mirrored_pattern(pattern) for pattern in layout.patterns),
        rows=tuple(replace(flipped_row(row), id=rename(row.id)) for row in layout.rows),
        tuners=tuple(_renamed_row(replace(flipped_tuner(tuner, layout.pattern(tuner.pattern)), id=rename(tuner.id)))
                     for tuner in layout.tuners),
        pins=tuple(replace(pin, id=rename(pin.id), at=v.mirrored(pin.at)) for pin in layout.pins),
        holes=tuple(replace(hole, id=rename(hole.id), at=v.mirrored(hole.at)) for hole in layout.holes),
        picture=mirrored_picture(layout.picture),
        notes=tuple(note if note.on is None else replace(note, on=rename(note.on)) for note in layout.notes),
        order=renamed_steps(layout.order, names),
        book=renamed_in_book(layout.book, swapped_sides)))


def _flipped_angle(degrees: float) -> float:
    """A direction mirrored about the centreline, to 1e-9 degrees so that twice gives the same number (360 for -360)."""
    turned = round(180.0 - degrees, 9)
    # Two turns back: one turn would lead to what another direction becomes.
    return turned - 720.0 if turned > 360 else turned


def _flipped_turn(turn: float | None) -> float | None:
    """Where a button points, mirrored; what points to the nearest edge goes on doing so."""
    return None if turn is None else _flipped_angle(turn)


def flipped_row(row: Row) -> Row:
    """A row mirrored about the centreline, nothing checked."""
    run = row.run
    if isinstance(run, EdgeRun):
        return replace(row, run=replace(run, side=OTHER[run.side]))
    return replace(row, run=replace(run, start=v.mirrored(run.start), heading=_flipped_angle(run.heading), turn=_flipped_turn(run.turn)))


def flipped_tuner(tuner: Tuner, pattern: Pattern) -> Tuner:
    """A tuner mirrored about the centreline; it still names its pattern and its row, nothing is checked."""
    place: Place = tuner.place
    if isinstance(place, FreePlace):
        place = replace(place, at=v.mirrored(place.at), turn=_flipped_turn(place.turn))
    elif isinstance(place, EdgePlace):
        place = replace(place, side=OTHER[place.side])
    # Over or under a side post is the same seen in a mirror; left and right of a face post change places.
    return replace(tuner, place=place, winds=OTHER[tuner.winds] if pattern.mount == "face" else tuner.winds)


def _renamed_row(tuner: Tuner) -> Tuner:
    place = tuner.place
    if not isinstance(place, RowPlace):
        return tuner
    return replace(tuner, place=replace(place, row=swapped_sides(place.row)))
