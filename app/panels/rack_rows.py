"""The rack as tables and fields: what is listed of each shelf, and what can be typed of an entry. Pure data."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from app.panels.field_help import pattern
from app.panels.rows import FieldRow
from geometry.edits.rack import Shelf, set_in_rack
from geometry.errors import GeometryError
from geometry.layout import Drill, GuideBush, Rack, RouterBit
from geometry.routing.follower import follower_of
from geometry.routing.speeds import highest_speed, rim_speed, speed_setting
from geometry.routing.words import rim, speaking
from geometry.solids.drilling import point_length
from geometry.units import LengthUnit, format_length, parse_length

SHELVES: tuple[tuple[Shelf, str], ...] = (("bits", "Router bits"), ("bushes", "Guide bushes"), ("drills", "Drills"))
MACHINES = "machines"
KINDS = (("twist", "twist drill"), ("brad", "brad point"), ("forstner", "Forstner bit"))
BEARINGS = (("none", "none"), ("shank", "on the shank"), ("tip", "on the tip"))

HEADS: dict[str, tuple[str, ...]] = {
    "bits": ("Name", "Cutter", "Edges", "Shank", "Stands out", "Bearing"),
    "bushes": ("Name", "Outside", "Bore", "Stands out"),
    "drills": ("Name", "Kind", "Diameter", "Length", "Point"),
}
"""Column heads of each shelf."""


def cells(rack: Rack, shelf: Shelf, unit: LengthUnit) -> list[tuple[str, ...]]:
    """One row of words for each entry of a shelf, under HEADS."""
    def show(mm: float | None) -> str:
        return "–" if mm is None else format_length(mm, unit)
    rows: list[tuple[str, ...]] = []
    for entry in getattr(rack, shelf):
        if isinstance(entry, RouterBit):
            bearing = "none" if entry.bearing == "none" else f"{entry.bearing}, {show(entry.bearing_diameter)}"
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
        FieldRow("Drill press", "heading"),
        _row(rack, "Table tilts to either side", "angle", ("press", "tilt"), press.tilt),
        _row(rack, "Quill travel", "length", ("press", "quill"), press.quill),
        _row(rack, "Throat", "length", ("press", "throat"), press.throat, help="From the column to the drill's axis."),
        _row(rack, "Base for block heights", "length", ("press", "base"), press.base,
             help="Length of the board whose one side is raised by blocks to tilt the work."),
        FieldRow("Router", "heading"),
        _row(rack, "Base diameter", "length", ("router", "base"), router.base),
        _row(rack, "Plunge", "length", ("router", "plunge"), router.plunge),
        FieldRow("Speeds, turns a minute", "text", ", ".join(f"{speed:g}" for speed in router.speeds),
                 lambda text: set_router("speeds", text, _number), help="Every setting, separated by commas."),
        FieldRow("Collets", "text", ", ".join(format_length(size, unit) for size in router.collets),
                 lambda text: set_router("collets", text, lambda word: parse_length(word, unit)),
                 help="Shanks that the router holds, separated by commas; empty for any.", empty="any"),
    ]


def _bit(rack: Rack, bit: RouterBit, unit: LengthUnit) -> list[FieldRow]:
    path = ("bits", bit.id)
    rows = [_name(rack, path), _row(rack, "In words", "text", (*path, "about"), bit.about),
            _row(rack, "Cutter diameter", "length", (*path, "cutter"), bit.cutter),
            _row(rack, "Cutting length", "length", (*path, "cutting_length"), bit.cutting_length,
                 help="Of the edges along the axis."),
            _row(rack, "Shank", "length", (*path, "shank"), bit.shank),
            _row(rack, "Stands out of the base", "length", (*path, "stick_out"), bit.stick_out,
                 help="From the router's base to the tip, bearing included, as far as it may be set."),
            FieldRow("Bearing", "choice", bit.bearing, partial(_set_bearing, rack, bit), choices=BEARINGS,
                     help="What follows the template: a bearing, or without one the bare shank or a guide bush.")]
    if bit.bearing != "none":
        rows += [_row(rack, "Bearing diameter", "length", (*path, "bearing_diameter"), bit.bearing_diameter, optional=True,
                      empty="not measured"),
                 _row(rack, "Bearing height", "length", (*path, "bearing_height"), bit.bearing_height, optional=True,
                      empty=format_length(5.0, unit, mark=True))]
    rows.append(FieldRow("Speed printed on it", "text", "" if bit.marked_speed is None else f"{bit.marked_speed:g}",
                         lambda text: set_in_rack(rack, (*path, "marked_speed"), _number(text) if text else None),
                         empty="not known", help="The highest number of turns a minute that is printed on the cutter."))
    return rows + _bit_facts(rack, bit, unit)


def _bit_facts(rack: Rack, bit: RouterBit, unit: LengthUnit) -> list[FieldRow]:
    try:
        guide = follower_of(bit, None)
    except GeometryError as error:
        return [FieldRow("Without a bush", "fact", str(error), warn=True)]
    offset = format_length(abs(guide.offset), unit, mark=True)
    words = "opening as large as the slot" if abs(guide.offset) < 5e-4 else (
        f"opening {offset} {'larger' if guide.offset > 0 else 'smaller'} all round")
    setting = speed_setting(bit, rack.router)
    speed = "slower than this router turns" if setting is None and rack.router.speeds else (
        f"up to {highest_speed(bit):,.0f} turns a minute" if setting is None else
        f"{setting:,.0f} turns a minute, rim {_rim(rim_speed(bit.cutter, setting), unit)}")
    return [FieldRow("Without a bush", "fact", f"{guide.kind}: {words}"),
            FieldRow("Fastest setting", "fact", speed, warn=setting is None and bool(rack.router.speeds))]


def _rim(speed: float, unit: LengthUnit) -> str:
    with speaking(unit):
        return rim(speed)


def _bush(rack: Rack, bush: GuideBush) -> list[FieldRow]:
    path = ("bushes", bush.id)
    rows = [_name(rack, path), _row(rack, "Outside diameter", "length", (*path, "outer"), bush.outer),
            _row(rack, "Bore", "length", (*path, "inner"), bush.inner),
            _row(rack, "Stands out of the base", "length", (*path, "length"), bush.length)]
    if bush.inner >= bush.outer:
        rows.append(FieldRow("Wall", "fact", "none: the bore is as wide as the outside", warn=True))
    return rows


def _drill(rack: Rack, drill: Drill, unit: LengthUnit) -> list[FieldRow]:
    path = ("drills", drill.id)
    rows = [_name(rack, path), _row(rack, "Kind", "choice", (*path, "kind"), drill.kind, choices=KINDS),
            _row(rack, "Diameter", "length", (*path, "diameter"), drill.diameter),
            _row(rack, "Length that drills", "length", (*path, "length"), drill.length)]
    if drill.kind == "twist":
        rows.append(_row(rack, "Point angle", "angle", (*path, "point_angle"), drill.point_angle, optional=True, empty="118°"))
    rows.append(_row(rack, "Point ahead of the rim", "length", (*path, "spur"), drill.spur, optional=True, empty="usual",
                     help="Measure your own: how far the centre stands ahead of the full diameter."))
    rows.append(FieldRow("Point counted with", "fact", format_length(point_length(drill), unit, mark=True)))
    return rows


def _name(rack: Rack, path: tuple[str, str]) -> FieldRow:
    return _row(rack, "Name", "text", (*path, "id"), path[1])


def _row(rack: Rack, label: str, kind: str, path: tuple, value: object, **more) -> FieldRow:
    return FieldRow(label, kind, value, partial(set_in_rack, rack, path), key=pattern(path, "rack"), **more)


def _set_bearing(rack: Rack, bit: RouterBit, bearing: str) -> Rack:
    """A bit that gets a bearing gets one as wide as its cutter, to be measured."""
    changed = set_in_rack(rack, ("bits", bit.id, "bearing"), bearing)
    if bearing != "none" and bit.bearing_diameter is None:
        changed = set_in_rack(changed, ("bits", bit.id, "bearing_diameter"), bit.cutter)
    return changed


def _listed(rack: Rack, field: str, text: str, read: Callable[[str], float]) -> Rack:
    values = [read(word) for word in text.replace(";", ",").split(",") if word.strip()]
    return set_in_rack(rack, ("router", field), tuple(sorted(set(values))))


def _number(text: str) -> float:
    try:
        return float(text.strip().replace(" ", ""))
    except ValueError as error:
        raise GeometryError(f'"{text.strip()}" is not a number of turns a minute: write for example 16000.') from error

