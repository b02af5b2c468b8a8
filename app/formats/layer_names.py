"""Layers of an exported drawing by the style of what lies on them; the names are those of the trade, in English in every language."""

from __future__ import annotations

LAYERS = {
    "blank": "blank", "waste": "waste", "wood": "wood", "outline": "outline", "slot": "slots",
    "pocket that is there": "pockets that are there", "template": "template",
    "post bore": "post bores", "counterbore": "counterbores", "clearance bore": "clearance bores",
    "screw pilot": "screw pilots", "pin hole": "pin holes", "hole": "holes", "hole that is there": "holes that are there",
    "locating pin hole": "locating pin holes", "side bore": "side bores", "axis": "axes", "seat": "seats",
    "button": "buttons", "post": "posts", "centreline": "centreline", "nut line": "nut line", "fold": "fold lines",
    "string": "strings", "glue line": "glue lines", "cross": "pricking marks", "dimension": "dimensions",
    "note": "notes", "check bar": "check bars", "tile": "tiles", "section line": "section lines",
    "template board": "template board", "router base": "router base", "shank": "shanks", "cutter": "cutters",
    "follower": "followers", "left standing": "left standing", "grain risk": "grain risks", "ramp": "ramps",
    "flat": "flats", "feed": "feed",
    "waste hole": "waste holes", "margin kept": "margins kept", "margin short": "margins short", "spoiled": "spoiled", "removed": "removed",
    "proposed": "proposed", "measured": "measured",
}
"""Layer of each style in DXF."""


def group_name(style: str) -> str:
    """The id of the group of a style in SVG."""
    return style.replace(" ", "-")


_STYLES = {name.casefold(): style for style, layer in LAYERS.items() for name in (layer, group_name(style))}


def style_on(layer: str) -> str | None:
    """The style that an export puts on this layer or in this group, in capitals or not; None for any other name."""
    return _STYLES.get(layer.casefold())
