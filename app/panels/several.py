"""The page of several things that are held together: what they are, and how they can be set out."""

from __future__ import annotations

from collections.abc import Callable
from functools import reduce

from app.panels.describe import Page
from app.panels.forms.rows import FieldRow
from app.panels.hole_rows import there_row, tuner_rows
from app.panels.other_hand import other_hand_rows
from app.panels.pocket_rows import slot_there_row
from app.panels.straight_row import direction_rows, straight_edge_rows
from geometry.edits import align, align_nodes, free_from_row, make_row, plan_point, set_hand_by_side, spread
from geometry.errors import GeometryError
from geometry.layout import Headstock, RowPlace, StraightRun, Tuner
from geometry.saying import say
from geometry.units import LengthUnit, format_close

NO_BREAK = "\u00a0"


def several(layout: Headstock, ids: tuple[str, ...], unit: LengthUnit) -> Page:
    """The page of two or more held things; the one held first stays where it is when they are set out."""
    facts = [FieldRow(", ".join(id.replace(" ", NO_BREAK) for id in ids), "note")]
    points = _points(layout, ids)
    if len(points) > 1:
        across = max(x for x, _ in points) - min(x for x, _ in points)
        along = max(y for _, y in points) - min(y for _, y in points)
        facts += [FieldRow(say("Apart across, at most"), "fact", format_close(across, unit, 2, mark=True)),
                  FieldRow(say("Apart along, at most"), "fact", format_close(along, unit, 2, mark=True))]
    return Page(say("{n} things held", n=len(ids)), facts, _ways(layout, ids))


def several_nodes(layout: Headstock, ref: str, nodes: tuple[int, ...], mirrored: bool) -> Page:
    """The page of nodes of one loop that are held together; the one held first stays when they are set out."""
    def button(word: str, axis: str) -> FieldRow:
        return FieldRow(word, "button", None, lambda _: align_nodes(layout, ref, nodes, axis, mirrored))

    names = ", ".join(str(node + 1) for node in nodes)
    return Page(say("{n} nodes held", n=len(nodes)), [FieldRow(say("Held"), "fact", names)], [
        button(say("Bring to one height"), "y"), button(say("Bring into line"), "x"),
        FieldRow(say("Drag one of them to move all, arrow keys nudge them, Delete removes them."), "note")])


def _ways(layout: Headstock, held: tuple[str, ...]) -> list[FieldRow]:
    """A button for each way of setting them out that these things allow. A frame about tuners holds the slots between them too: these
    stay where they are."""
    slots = [slot.id for slot in layout.slots if slot.id in held]
    ids = tuple(id for id in held if id not in slots) if len(slots) < len(held) - 1 else held
    tuners = [tuner for tuner in layout.tuners if tuner.id in ids]
    mounts = {layout.pattern(tuner.pattern).mount for tuner in tuners}
    in_rows = [tuner.id for tuner in tuners if isinstance(tuner.place, RowPlace)]
    rows: list[FieldRow] = []
    if len(tuners) > 1 and len(mounts) == 1:
        rows += [_hardware(layout, tuners), *other_hand_rows(layout, tuners)]
    rows += _set_out(layout, ids, len(tuners), mounts, not in_rows)
    if len(tuners) == len(ids):
        rows += straight_edge_rows(layout, ids)
    rows += _directions(layout, tuners)
    if in_rows:
        rows.append(FieldRow(say("Free from the row"), "button", None, lambda _: reduce(free_from_row, in_rows, layout)))
        rows.append(FieldRow(say("What is placed by a row keeps its spacing; freed, each can be set out by itself."), "note"))
    elif any(row.kind == "button" for row in rows):
        rows.append(FieldRow(say("The thing held first stays when the others come to it. In a row one spacing holds for "
                                 "all; spread, each can be moved alone again."), "note"))
    if len(ids) < len(held) and any(row.kind == "button" for row in rows):
        rows.append(FieldRow(say("None of this moves the slots that are held with them."), "note"))
    if all(any(slot.id == id for slot in layout.slots) for id in held):
        rows += [slot_there_row(layout, held), _joined(layout, held)]
    if all(any(hole.id == id for hole in layout.holes) for id in held):
        rows += [there_row(layout, held), *tuner_rows(layout, held)]
    return rows


def _joined(layout: Headstock, held: tuple[str, ...]) -> FieldRow:
    def join(_: object) -> Headstock:
        from geometry.edits import join_slots  # here: a start needs nothing of what joins lines

        return join_slots(layout, held)

    return FieldRow(say("Join into one slot"), "button", None, join,
                    help=say("Slots that overlap become one drawn slot, under the name of the one held first: one opening in the template."))


def _set_out(layout: Headstock, ids: tuple[str, ...], tuners: int, mounts: set[str], free: bool) -> list[FieldRow]:
    """Buttons that bring things into line, spread them or make a row of them: so many of them are tuners, of these mounts; `free`, when
    none of these is in a row."""
    rows: list[FieldRow] = []

    def button(word: str, edit: Callable[[Headstock, tuple[str, ...], str], Headstock], how: str) -> None:
        rows.append(FieldRow(word, "button", None, lambda _: edit(layout, ids, how)))

    singles = sum(one.id in ids for one in (*layout.pins, *layout.holes))
    if free and tuners + singles == len(ids):
        button(say("Bring to one height"), align, "y")
        if "side" not in mounts:
            button(say("Bring into line"), align, "x")
    if tuners == len(ids) and len(mounts) == 1:
        face = "face" in mounts
        if free and tuners > 2:
            if face:
                button(say("Spread on a line"), spread, "line")
            button(say("Spread along the edge"), spread, "edge")
        if face:
            button(say("Make a row on a line"), make_row, "straight")
        button(say("Make a row along the edge"), make_row, "edge")
    return rows


def _directions(layout: Headstock, tuners: list[Tuner]) -> list[FieldRow]:
    """Where a straight row and its buttons point, when all of some tuners are in it."""
    places = [tuner.place for tuner in tuners]
    if not places or not all(isinstance(place, RowPlace) and place.row == places[0].row for place in places):
        return []
    row = layout.row(places[0].row)
    return direction_rows(layout, row, tuners[0].id) if isinstance(row.run, StraightRun) else []


def _hardware(layout: Headstock, tuners: list[Tuner]) -> FieldRow:
    """Other hardware for all of some tuners of one mount, in one step."""
    used = list(dict.fromkeys(tuner.pattern for tuner in tuners))
    mount = layout.pattern(used[0]).mount
    choices = tuple((pattern.id, pattern.id) for pattern in layout.patterns if pattern.mount == mount)
    alike = len(used) == 1

    def change(chosen: str) -> Headstock:
        return set_hand_by_side(layout, [tuner.id for tuner in tuners], chosen) if chosen else layout

    return FieldRow(say("Hardware of all"), "choice", used[0] if alike else "", change,
                    help=say("Where this hardware comes as left and right, tuners on the edge opposite the first take its mirror image."),
                    choices=choices if alike else (("", say("not alike")), *choices))


def _points(layout: Headstock, ids: tuple[str, ...]) -> list[tuple[float, float]]:
    found = []
    for id in ids:
        try:
            found.append(plan_point(layout, id))
        except GeometryError:
            continue  # the outline, the nut and the blank have no point of their own
    return found
