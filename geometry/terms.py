"""Words that are keys in code and files, as the maker reads them.

A side is `treble` in every file whatever language is spoken; `term("treble")`
is what a sentence shows. In English a term is its key. A key that is not listed
here is shown as it is: names that the maker gave pass unharmed.
"""

from __future__ import annotations

import re

from geometry.saying import say

ABOUT = "term"
"""What the catalogue says of each of these words."""

POCKET, HOLE_THERE = "pocket that is there", "hole that is there"
"""What the blank has already: a style of drawings, what a loop of a drawing becomes, and the name of it."""

TERMS = frozenset({
    # sides and faces
    "face", "back", "bass", "treble", "bass edge", "treble edge", "nut", "tip", "nut line", "base line", "centreline", "outline",
    "tip end", "nut end", "seat",
    # walls and edges of a slot
    "rail", "inner wall",
    # several of one sort
    "post bores", "counterbores", "clearance bores", "screw holes", "pin holes",
    # kinds of features, and the pieces that are built
    "ears", "slots", "tuners", "pins", "holes", "patterns", "rows", "practice", "real",
    # machines and tools
    "drill press", "hand drill", "band saw", "coping saw", "router", "bench", "twist", "brad", "forstner",
    # what the router follows, and the grain
    "template", "template below", "wall already cut", "end grain", "against the grain", "wrap paper", "back paper",
    # along a section
    "waste", "slot", "pocket", "web", "wood",
    # how a distance is measured
    "square edge", "over the wood", "over the walls", "over pins",
    # roles of bores, guides of the router, kinds of operations
    "post", "clearance", "pin", "side", "guide bush", "bare shank", "bearing on the shank", "bearing on the tip",
    "glue scarf", "plug", "glue ear", "glue face veneer", "glue back veneer", "mark", "pilot", "edge pilot", "side counterbore", "waste holes", "saw", "rout", "cut outline",
    "rout outline", "ramp", "flat", "clean up", "finish", "final diameter",
    # grades of snags
    "spoils the work", "tight", "note",
    # how bad a wrong place in the running order is
    "impossible", "unsafe", "unwise", "twice",
    # the check bars of a page
    "lying", "upright",
    # what can be typed while something is dragged
    "length", "angle", "radius", "width", "along", "diameter", "depth", "across", "behind", "thickness", "blank",
    # what is drilled
    "hole", "bore", "side bore", "counterbore", "screw", "pin hole", "locating pin", "post bore", "clearance bore",
    "screw pilot", "locating pin hole", HOLE_THERE, POCKET,
})


FIELD = "field of a record"
"""What the catalogue says of each of the words below."""

FIELDS = {
    "about": "description", "accuracy": "accuracy", "at": "place", "back_veneer": "back veneer", "base": "base", "base_rest": "rest of the base", "bass": "bass", "before": "before the post",
    "bearing_diameter": "bearing diameter", "bearing_height": "bearing height", "bit": "bit", "blank_edge": "outline to blank edge", "bore": "bore", "bulge": "bulge",
    "bore_bore": "bore to bore", "bore_outline": "bore to outline", "bore_slot": "bore to slot wall", "bush": "bush", "button": "button", "collets": "collets", "course": "course", "handles": "handles",
    "button_gap": "button to button", "core": "core", "cutter": "cutter", "cutting_length": "cutting length", "drill": "drill", "ear": "ear", "end": "end",
    "face_veneer": "face veneer", "factor": "everything times", "feather": "screw and bore to a feather edge", "first": "first", "heading": "heading",
    "height": "height", "id": "name", "inner": "inside diameter", "inset": "inset", "least_wood": "thinnest head", "margins": "margins",
    "marked_speed": "speed printed on it", "most_wood": "thickest head", "outer": "outside diameter", "pair": "strings of a course",
    "paper_percent": "printed paper", "pattern": "pattern", "pin_any": "pin to anything", "pitch": "pitch", "plunge": "plunge", "point_angle": "point angle",
    "post_wall": "post end to inner wall", "press": "press", "quill": "quill travel", "rates": "rates", "reach": "reach", "reamed": "reamed",
    "scale_length": "scale length", "scarf": "scarf", "screw_any": "screw to anything", "screw_outline": "screw to outline", "seat_gap": "plate to plate",
    "seat_overhang": "plate inside the edge", "shank": "shank", "side_cover": "wood above and below a side bore", "size": "size",
    "skate_angle": "angle at which a drill skates", "slant": "slant", "slot_nut": "slot to nut line", "spacing": "spacing", "speeds": "speeds", "spread": "first to last string",
    "spur": "spur", "stand": "distance of the button", "start": "start", "stick_out": "reach below the base", "stop": "depth stop", "string": "string",
    "string_air": "string to post, wall and ramp", "string_hole": "string hole", "taper": "taper", "template_contact": "follower in the template",
    "template_web": "board between openings", "throat": "throat", "tilt": "tilt", "tilt_degrees": "table tilt", "treble": "treble", "tuner": "tuner",
    "turn": "turn", "value": "value", "wander_per_50": "drill wander in 50 mm", "winding": "winding"
}
"""Fields and records as a sentence calls them that refuses a number."""

NAME = "name of a feature"
"""What the catalogue says of each of the names below."""

NAMES = frozenset({
    *(f"{side} {what}".rstrip() for side in ("bass", "treble")
      for what in ("", "face", "side", "row", "face row", "side row", "slot", "ear")),
    "slot", "pocket", "hole", "pin", "nut pin", "tip pin", "retainer", "truss rod pocket", "string",
    "new bit", "new bush", "new drill",
})


def given(name: str) -> str:
    """What the program calls a feature, row or string of its own accord, perhaps with a number behind it: the name in the language in use,
    which it keeps in the layout from then on. A name that is not of these comes back as it is."""
    stem, space, number = name.rpartition(" ") if name[-1:].isdecimal() else (name, "", "")
    return f"{say(stem, about=NAME)}{space}{number}" if stem in NAMES else name


TOOLS = frozenset({
    "face {size} bushing two screws", "face {size} bushing one screw", "face {size} bushing four screws", "face {size} stepped two pins",
    "face {size} plain one screw", "face {size} friction peg", "face {size} geared peg", "face {size} tapered peg",
    "side {size} post two screws", "side {size} post four screws", "side {size} short post", "side {size} roller two screws",
    "side {size} roller long post",
    "{size} straight", "{size} shank bearing", "{size} tip bearing", "bush {size}", "twist {size}", "brad {size}", "forstner {size}",
    "{size} in straight", "{size} in shank bearing", "{size} in tip bearing", "bush {size} in", "twist {size} in", "brad {size} in",
    "forstner {size} in", "{name} mirrored",
})
"""Generic hardware, bits, bushes and drills, as the catalogue says them (about NAME) for any size."""
_SIZE = re.compile(r"\d+(?:[./]\d+)?")
_MIRRORED = " mirrored"


def given_tool(name: str) -> str:
    """The same for generic hardware and what is in the starting racks: `12 shank bearing`. The size stays as it is written, with a point,
    since no name has a comma."""
    if name.endswith(_MIRRORED):
        return mirrored_tool(given_tool(name.removesuffix(_MIRRORED)))
    size = _SIZE.search(name)
    kind = name[:size.start()] + "{size}" + name[size.end():] if size else ""
    return say(kind, about=NAME, size=size[0]) if kind in TOOLS else name


def mirrored_tool(name: str) -> str:
    """What the mirror image of hardware is called that comes as left and right, at most eleven signs longer in any language."""
    return say("{name} mirrored", about=NAME, name=name)


def term(key: str) -> str:
    """The word that is shown for this key."""
    return say(key, about=ABOUT) if key in TERMS else key


def field(key: str) -> str:
    """What a field, or the record that it is in, is called where a number for it is refused. One that is not listed is taken for a term."""
    return say(FIELDS[key], about=FIELD) if key in FIELDS else term(key.replace("_", " "))
