"""Edits of the rack, alone or as the copy in a layout, and the maker's own choice of bits."""

from __future__ import annotations

import unicodedata
from typing import Literal

from msgspec.structs import replace

from geometry.edits.fields import renamed_tools, set_part
from geometry.edits.parts import checked, settled
from geometry.errors import GeometryError
from geometry.layout import Drill, GuideBush, Headstock, Rack, Route, RouterBit, Tool
from geometry.layout.names import Names
from geometry.layout.validate import validate_rack
from geometry.saying import say
from geometry.terms import given

Shelf = Literal["bits", "bushes", "drills"]
"""The lists of a rack."""

NEW: dict[str, RouterBit | GuideBush | Drill] = {
    "bits": RouterBit(id="new bit", cutter=8.0, cutting_length=20.0, shank=8.0, stick_out=35.0),
    "bushes": GuideBush(id="new bush", outer=17.0, inner=14.0, length=6.0),
    "drills": Drill(id="new drill", kind="brad", diameter=8.0, length=80.0, spur=2.4),
}
"""What is added, to be changed (mm; common practice, no source)."""


def add_entry(rack: Rack, shelf: Shelf) -> Rack:
    """The rack with one more bit, bush or drill to be changed, last on its shelf."""
    new = NEW[shelf]
    return _with(rack, shelf, (*getattr(rack, shelf), replace(new, id=Names(_ids(rack, shelf)).alike(given(new.id)))))


def copy_entry(rack: Rack, shelf: Shelf, id: str) -> Rack:
    """The rack with a copy of an entry right behind it, under a fresh name."""
    entries = list(getattr(rack, shelf))
    at = _at(rack, shelf, id)
    entries.insert(at + 1, replace(entries[at], id=Names(_ids(rack, shelf)).alike(id)))
    return _with(rack, shelf, tuple(entries))


def remove_entry(rack: Rack, shelf: Shelf, id: str) -> Rack:
    """The rack without an entry."""
    at = _at(rack, shelf, id)
    entries = getattr(rack, shelf)
    return _with(rack, shelf, (*entries[:at], *entries[at + 1:]))


def sort_shelf(rack: Rack, shelf: Shelf) -> Rack:
    """The shelf from the slimmest to the widest; drills by kind first, equal sizes by length, then by name."""
    def size(entry: RouterBit | GuideBush | Drill) -> tuple:
        if isinstance(entry, RouterBit):
            return ("", entry.cutter, entry.cutting_length, entry.id)
        if isinstance(entry, GuideBush):
            return ("", entry.outer, entry.length, entry.id)
        return (entry.kind, entry.diameter, entry.length, entry.id)
    return _with(rack, shelf, tuple(sorted(getattr(rack, shelf), key=size)))


def set_in_rack(rack: Rack, path: tuple[str | int, ...], value: object) -> Rack:
    """The rack with one field set, for example ("bits", "6 straight", "cutter"); setting an id renames.

    GeometryError says what is wrong with the value, or that the name is taken.
    """
    if path[-1] == "id":
        value = unicodedata.normalize("NFC", str(value).strip())
        if value != path[1] and value in _ids(rack, path[0]):
            raise GeometryError(say("The name {value} is taken: choose another.", value=value))
    return validate_rack(set_part(rack, path, value))


def set_rack(layout: Headstock, rack: Rack, renamed: tuple[str, str, str] | None = None) -> Headstock:
    """The layout with another rack; choices of bits that it no longer holds are dropped.

    `renamed` is (shelf, old name, new name) when the racks differ by that alone, so that choices follow.
    """
    rack = checked(validate_rack(rack), say("The rack"))
    template, routes = layout.template, layout.routes
    if renamed is not None:
        shelf, old, new = renamed
        if shelf in ("bits", "bushes"):
            template, routes = renamed_tools(template, routes, shelf, old, new)
    bits, bushes = {bit.id for bit in rack.bits}, {None, *(bush.id for bush in rack.bushes)}
    if template.bit not in bits:
        template = replace(template, bit=None, bush=None)
    elif template.bush not in bushes:
        template = replace(template, bush=None)
    routes = tuple(route for route in routes if all(tool.bit in bits and tool.bush in bushes for tool in route.tools))
    return settled(replace(layout, rack=rack, template=template, routes=routes))


def choose_route(layout: Headstock, of: str, tools: tuple[tuple[str, str | None], ...]) -> Headstock:
    """The layout with the maker's choice of (bit, bush) for a slot or the "outline"; none takes the choice back."""
    kept = tuple(route for route in layout.routes if route.of != of)
    if tools:
        kept += (checked(Route(of=of, tools=tuple(Tool(bit=bit, bush=bush) for bit, bush in tools)), say("The choice")),)
    return settled(replace(layout, routes=kept))


def set_template_tool(layout: Headstock, bit: str | None, bush: str | None) -> Headstock:
    """The layout whose template is made for this bit and guide bush."""
    return settled(replace(layout, template=replace(layout.template, bit=bit, bush=bush)))


def _with(rack: Rack, shelf: Shelf, entries: tuple) -> Rack:
    return validate_rack(replace(rack, **{shelf: entries}))


def _ids(rack: Rack, shelf: str | int) -> set[str]:
    return {entry.id for entry in getattr(rack, str(shelf))}


def _at(rack: Rack, shelf: Shelf, id: str) -> int:
    for at, entry in enumerate(getattr(rack, shelf)):
        if entry.id == id:
            return at
    raise GeometryError(say("The rack holds nothing named {id}.", id=id))
