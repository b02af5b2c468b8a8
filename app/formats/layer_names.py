"""Layers of an exported drawing by the style of what lies on them; the names are those of the trade, in English in every language.

What is cut has its depth in the name, in mm from the surface that it is cut from: `slots - through`, `counterbores - 8 mm deep`,
`screw pilots - 9 mm deep from the back`, and of a bore that is reamed to a taper how wide at that surface: `post bores - through from
the back - reamed 1 in 30 to 7.5 mm`; in SVG, where a name has no spaces, `slot--through` and `screw-pilot--9-mm-deep-from-the-back`.
The centreline of a drawing of the back is on `centreline - seen from the back`, so that the drawing is not taken for its mirror image.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable

from geometry.drawing import Mark
from geometry.solids.depth import Depth

LAYERS = {
    "blank": "blank", "waste": "waste", "wood": "wood", "outline": "outline", "slot": "slots",
    "pocket that is there": "pockets that are there", "template": "template",
    "post bore": "post bores", "counterbore": "counterbores", "clearance bore": "clearance bores",
    "screw pilot": "screw pilots", "pin hole": "pin holes", "hole": "holes", "hole that is there": "holes that are there",
    "locating pin hole": "locating pin holes", "side bore": "side bores", "axis": "axes", "seat": "seats",
    "button": "buttons", "post": "posts", "centreline": "centreline", "nut line": "nut line", "fold": "fold lines",
    "string": "strings", "glue line": "glue lines", "glued on": "glued on", "cross": "pricking marks", "dimension": "dimensions",
    "note": "notes", "check bar": "check bars", "tile": "tiles", "section line": "section lines",
    "template board": "template board", "router base": "router base", "shank": "shanks", "cutter": "cutters",
    "follower": "followers", "left standing": "left standing", "grain risk": "grain risks", "ramp": "ramps",
    "flat": "flats", "feed": "feed",
    "waste hole": "waste holes", "margin kept": "margins kept", "margin short": "margins short", "spoiled": "spoiled", "removed": "removed",
    "proposed": "proposed", "measured": "measured",
}
"""Layer of each style in DXF."""

Depths = Callable[[Mark], Depth | None]
"""What tells how deep a mark of a drawing is cut."""


def no_depth(_mark: Mark) -> None:
    """Of drawings in which nothing is cut."""
    return None


def group_name(style: str, depth: Depth | None = None) -> str:
    """The id of the group in SVG of what has that style and, if it is known, that depth."""
    return "--".join([style, *_depth_words(depth)]).replace(" ", "-")


def layer_name(style: str, depth: Depth | None = None) -> str:
    """The layer in DXF of what has that style and, if it is known, that depth."""
    return " - ".join([LAYERS[style], *_depth_words(depth)])


def _depth_words(depth: Depth | None) -> list[str]:
    """How deep, never told as more than it is; nothing where it is not known."""
    if depth is None:
        return []
    if depth.seen:
        return ["seen from the back"]
    deep = "through" if depth.deep is None else f"{math.floor(depth.deep * 1000 + 1e-6) / 1000:g} mm deep"
    said = [f"{deep}{' from the back' if depth.back else ''}"]
    if depth.reamed is not None:
        wide, taper = depth.reamed
        said.append(f"reamed 1 in {taper:g} to {round(wide, 3):g} mm")
    return said


_DEPTH = re.compile(r"(?: - |--)(?:through|(?P<deep>\d{1,3}(?:\.\d{1,3})?)[ -]mm[ -]deep)(?P<back>[ -]from[ -]the[ -]back)?"
                    r"(?:(?: - |--)reamed[ -]1[ -]in[ -][\d.]{1,9}[ -]to[ -][\d.]{1,9}[ -]mm)?$", re.IGNORECASE)

_SEEN = re.compile(r"(?: - |--)seen[ -]from[ -]the[ -]back$", re.IGNORECASE)


def depth_on(layer: str) -> Depth | None:
    """The depth that an export has put into the name of a layer or group; None for any other name. What is reamed is read as drilled."""
    found = _DEPTH.search(layer)
    if found is None or found["deep"] is not None and not float(found["deep"]):
        return None
    return Depth(None if found["deep"] is None else float(found["deep"]), found["back"] is not None)


_STYLES = {name.casefold(): style for style, layer in LAYERS.items() for name in (layer, group_name(style))}


def style_on(layer: str) -> str | None:
    """The style that an export puts on this layer or in this group, in capitals or not, whatever its depth; None for any other name."""
    return _STYLES.get(_SEEN.sub("", _DEPTH.sub("", layer)).casefold())


def seen_from_behind(layer: str) -> bool:
    """Whether an export has put the centreline of a drawing of the back on it."""
    return _SEEN.search(layer) is not None and style_on(layer) == "centreline"
