"""The rack as tables and fields: what is listed of each shelf, and what can be typed of an entry. Pure data."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import partial

from app.panels.forms.field_help import pattern
from app.panels.forms.rows import FieldRow
from geometry.edits.rack import Shelf, set_in_rack
from geometry.errors import GeometryError, quoted
from geometry.layout import Drill, GuideBush, Rack, RouterBit
from geometry.lengths import speaking
from geometry.routing.follower import follower_of
from geometry.routing.speeds import highest_speed, rim_speed, speed_setting
from geometry.routing.words import rim
from geometry.saying import number, number_list, say
from geometry.solids.drilling import point_length
from geometry.terms import term
from geometry.units import LengthUnit, format_close, parse_length

SHELVES: tuple[tuple[Shelf, str], ...] = (("bits", say("Router bits")), ("bushes", say("Guide bushes")), ("drills", say("Drills")))
MACHINES = "machines"
KINDS = (("twist", say("twist drill")), ("brad", say("brad point")), ("forstner", say("Forstner bit")))
BEARINGS_SHORT = (("shank", say("shank")), ("tip", say("tip", about="of a bit")))
BEARINGS = (("none", say("none")), ("shank", say("on the shank")), ("tip", say("on the tip")))

HEADS: dict[str, tuple[str, ...]] = {
    "bits": (say("Name"), say("Cutter"), say("Edges"), say("Shank"), say("Stands out"), say("Bearing")),
    "bushes": (say("Name"), say("Outside"), say("Bore"), say("Stands out")),
    "drills": (say("Name"), say("Kind"), say("Diameter"), say("Length"), say("Point")),
}
"""Column heads of each shelf."""


def cells(rack: Rack, shelf: Shelf, unit: LengthUnit) -> list[tuple[str, ...]]:
    """One row of words for each entry of a shelf, under HEADS."""
    def show(mm: float | None) -> str:
        return "–" if mm is None else format_close(mm, unit, 2, mark=unit != "mm")
    rows: list[tuple[str, ...]] = []
    for entry in getattr(rack, shelf):
        if isinstance(entry, RouterBit):
            bearing = say("none") if entry.bearing == "none" else f"{dict(BEARINGS_SHORT)[entry.bearing]}, {show(entry.bearing_diameter)}"
            rows.append((entry.id, show(entry.cutter), show(entry.cutting_length), show(entry.shank), show(entry.stick_out),
                         bearing))
        elif isinstance(entry, GuideBush):
            rows.append((entry.id, show(entry.outer), show(entry.inner), show(entry.length)))
        else:
            rows.append((entry.id, dict(KINDS)[entry.kind], show(entry.diameter), show(entry.length),
                         show(point_length(entry))))
    return rows


def entry_rows(rack: Rack, shelf: Shelf, id: str, unit: LengthUnit) -> list[FieldRow]:
    """Every number of one entry; a change returns the rack. [] when there is no such entry."""
    entry = next((one for one in getattr(rack, shelf) if one.id == id), None)
    if entry is None:
        return []
    if isinstance(entry, RouterBit):
        return _bit(rack, entry, unit)
    if isinstance(entry, GuideBush):
        return _bush(rack, entry)
    return _drill(rack, entry, unit)


def machine_rows(rack: Rack, unit: LengthUnit) -> list[FieldRow]:
    """The drill press and the router."""
    press, router = rack.press, rack.router
    set_router = partial(_listed, rack)
    return [
        FieldRow(say("Drill press"), "heading"),
        _row(rack, say("Table tilts to either side"), "angle", ("press", "tilt"), press.tilt),
        _row(rack, say("Quill travel"), "length", ("press", "quill"), press.quill),
        _row(rack, say("Throat"), "length", ("press", "throat"), press.throat, help=say("From the column to the drill's axis.")),
        _row(rack, say("Base for block heights"), "length", ("press", "base"), press.base,
             help=say("Length of the board whose one side is raised by blocks to tilt the work.")),
        FieldRow(say("Router"), "heading"),
        _row(rack, say("Base diameter"), "length", ("router", "base"), router.base),
        _row(rack, say("Plunge"), "length", ("router", "plunge"), router.plunge),
        FieldRow(say("Speeds, turns a minute"), "text", number_list(number(speed, "g") for speed in router.speeds),
                 lambda text: set_router("speeds", text, _number), help=say("Every setting, a semicolon between them, or a comma and a space.")),
        FieldRow(say("Collets"), "text", number_list(format_close(size, unit, 2, mark=unit != "mm") for size in router.collets),
                 lambda text: set_router("collets", text, lambda word: parse_length(word, unit)),
                 help=say("Shanks that the router holds, a semicolon between them, or a comma and a space; empty for any."), empty=say("any")),
    ]


def _bit(rack: Rack, bit: RouterBit, unit: LengthUnit) -> list[FieldRow]:
    path = ("bits", bit.id)
    rows = [_name(rack, path), _row(rack, say("In words"), "words", (*path, "about"), bit.about),
            _row(rack, say("Cutter diameter"), "length", (*path, "cutter"), bit.cutter),
            _row(rack, say("Cutting length"), "length", (*path, "cutting_length"), bit.cutting_length,
                 help=say("Of the edges along the axis.")),
            _row(rack, say("Shank"), "length", (*path, "shank"), bit.shank),
            _row(rack, say("Stands out of the base"), "length", (*path, "stick_out"), bit.stick_out,
                 help=say("From the router's base to the tip, bearing included, as far as it may be set.")),
            FieldRow(say("Bearing"), "choice", bit.bearing, partial(_set_bearing, rack, bit), choices=BEARINGS,
                     help=say("What follows the template: a bearing, or without one the bare shank or a guide bush."))]
    if bit.bearing != "none":
        rows += [_row(rack, say("Bearing diameter"), "length", (*path, "bearing_diameter"), bit.bearing_diameter, optional=True,
                      empty=say("not measured")),
                 _row(rack, say("Bearing height"), "length", (*path, "bearing_height"), bit.bearing_height, optional=True,
                      empty=format_close(5.0, unit, 2, mark=True))]
    rows.append(FieldRow(say("Speed printed on it"), "text", "" if bit.marked_speed is None else number(bit.marked_speed, "g"),
                         lambda text: set_in_rack(rack, (*path, "marked_speed"), _number(text) if text else None),
                         empty=say("not known"), help=say("The highest number of turns a minute that is printed on the cutter.")))
    return rows + _bit_facts(rack, bit, unit)


def _bit_facts(rack: Rack, bit: RouterBit, unit: LengthUnit) -> list[FieldRow]:
    try:
        guide = follower_of(bit, None)
    except GeometryError as error:
        return [FieldRow(say("Without a bush"), "fact", str(error), warn=True)]
    offset = format_close(abs(guide.offset), unit, 2, mark=True)
    if abs(guide.offset) < 5e-4:
        words = say("opening as large as the slot")
    else:
        words = (say("opening {by} larger all round", by=offset) if guide.offset > 0 else
                 say("opening {by} smaller all round", by=offset))
    setting = speed_setting(bit, rack.router)
    speed = say("slower than this router turns") if setting is None and rack.router.speeds else (
        say("up to {turns:,.0f} turns a minute", turns=highest_speed(bit)) if setting is None else
        say("{setting:,.0f} turns a minute, rim {rim}",
            setting=setting, rim=_rim(rim_speed(bit.cutter, setting), unit)))
    return [FieldRow(say("Without a bush"), "fact", f"{term(guide.kind)}: {words}"),
            FieldRow(say("Fastest setting"), "fact", speed, warn=setting is None and bool(rack.router.speeds))]


def _rim(speed: float, unit: LengthUnit) -> str:
    with speaking(unit):
        return rim(speed)


def _bush(rack: Rack, bush: GuideBush) -> list[FieldRow]:
    path = ("bushes", bush.id)
    rows = [_name(rack, path), _row(rack, say("Outside diameter"), "length", (*path, "outer"), bush.outer),
            _row(rack, say("Bore"), "length", (*path, "inner"), bush.inner),
            _row(rack, say("Stands out of the base"), "length", (*path, "length"), bush.length)]
    if bush.inner >= bush.outer:
        rows.append(FieldRow(say("Wall"), "fact", say("none: the bore is as wide as the outside"), warn=True))
    return rows


def _drill(rack: Rack, drill: Drill, unit: LengthUnit) -> list[FieldRow]:
    path = ("drills", drill.id)
    rows = [_name(rack, path), _row(rack, say("Kind"), "choice", (*path, "kind"), drill.kind, choices=KINDS),
            _row(rack, say("Diameter"), "length", (*path, "diameter"), drill.diameter),
            _row(rack, say("Length that drills"), "length", (*path, "length"), drill.length)]
    if drill.kind == "twist":
        rows.append(_row(rack, say("Point angle"), "angle", (*path, "point_angle"), drill.point_angle, optional=True, empty="118°"))
    rows.append(_row(rack, say("Point ahead of the rim"), "length", (*path, "spur"), drill.spur, optional=True, empty=say("usual"),
                     help=say("Measure your own: how far the centre stands ahead of the full diameter.")))
    rows.append(FieldRow(say("Point counted with"), "fact", format_close(point_length(drill), unit, 2, mark=True)))
    return rows


def _name(rack: Rack, path: tuple[str, str]) -> FieldRow:
    return _row(rack, say("Name"), "text", (*path, "id"), path[1])


def _row(rack: Rack, label: str, kind: str, path: tuple, value: object, **more) -> FieldRow:
    return FieldRow(label, kind, value, partial(set_in_rack, rack, path), key=pattern(path, "rack"), **more)


def _set_bearing(rack: Rack, bit: RouterBit, bearing: str) -> Rack:
    """A bit that gets a bearing gets one as wide as its cutter, to be measured."""
    changed = set_in_rack(rack, ("bits", bit.id, "bearing"), bearing)
    if bearing != "none" and bit.bearing_diameter is None:
        changed = set_in_rack(changed, ("bits", bit.id, "bearing_diameter"), bit.cutter)
    return changed


def _listed(rack: Rack, field: str, text: str, read: Callable[[str], float]) -> Rack:
    """The router with another list, its numbers parted by semicolons or by commas.

    Without a semicolon a comma between two digits is refused: it may part two numbers or thousands, or be a decimal sign.
    """
    parted = ";" in text
    two_ways = re.search(r"[\d.]+,\d+", text)
    if two_ways is not None and not parted:
        raise GeometryError(say("{text} may be one number or two: part two by a semicolon, and write one with a point, as 12.7, "
                                "or without thousands set apart, as 16000.",
                                text=quoted(two_ways[0])))
    values = [read(word) for word in text.split(";" if parted else ",") if word.strip()]
    return set_in_rack(rack, ("router", field), tuple(sorted(set(values))))


def _number(text: str) -> float:
    """Turns a minute: nobody sets a thousandth of a turn, so a sign before three digits sets thousands apart, `16.000`, `16,000`."""
    bare = re.sub(r"[\s'’]", "", text)
    if re.fullmatch(r"\d{1,3}(?:[.,]\d{3})+", bare):
        bare = re.sub("[.,]", "", bare)
    try:
        return float(bare.replace(",", "."))
    except ValueError as error:
        raise GeometryError(say("{text} is not a number of turns a minute: write for example 16000.",
                                text=quoted(text))) from error
