"""The names that the program gives of its own accord, in the language in use."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.edits.fields import rename, renamed_tools
from geometry.edits.parts import FEATURE_GROUPS
from geometry.layout import Headstock, Rack
from geometry.terms import given, given_tool


def in_language(layout: Headstock) -> Headstock:
    """The layout with those of its features and rows that have such an English name under the name in the language in use, wherever it
    stands. The very same layout in English."""
    for group in (*FEATURE_GROUPS, "rows"):
        for one in getattr(layout, group):
            layout = rename(layout, group, one.id, given(one.id))
    return layout


def rack_in_language(rack: Rack) -> Rack:
    """The rack with what of it is in a starting rack under its name in the language in use; the very same in English."""
    shelves = {shelf: tuple(replace(one, id=given_tool(one.id)) for one in getattr(rack, shelf)) for shelf in ("bits", "bushes", "drills")}
    said = replace(rack, **shelves)
    return rack if said == rack else said


def tools_in_language(layout: Headstock) -> Headstock:
    """The layout with generic hardware and the tools of a starting rack so named, wherever they are chosen. The very same in English."""
    template, routes = layout.template, layout.routes
    for shelf in ("bits", "bushes"):
        for one in getattr(layout.rack, shelf):
            template, routes = renamed_tools(template, routes, shelf, one.id, given_tool(one.id))
    said = replace(layout, rack=rack_in_language(layout.rack), template=template, routes=routes,
                   patterns=tuple(replace(one, id=given_tool(one.id)) for one in layout.patterns),
                   tuners=tuple(replace(one, pattern=given_tool(one.pattern)) for one in layout.tuners))
    return layout if said == layout else said
