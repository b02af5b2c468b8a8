"""Every kind of snag as a word of the glossary: what it is called, why it matters, and a drawing where words fail."""

from __future__ import annotations

from app.help.glossary import Word
from geometry.checks.kinds import KINDS

DRAWN: dict[str, str] = {
    "rail": "rail and web", "web": "rail and web", "slots-overlap": "rail and web", "slot-outside": "rail and web",
    "slot-to-nut": "ramp", "hole-to-ramp": "ramp", "ramp-to-outline": "ramp", "ramp-to-nut": "ramp", "ramp-to-pocket": "pocket", "ramp-to-slot": "ramp", "ramp-too-deep": "ramp",
    "string-to-nut-end": "ramp", "string-to-ramp": "ramp",
    "string-to-floor": "ramp", "string-to-wall": "inner wall", "string-hole": "inner wall", "post-to-wall": "inner wall", "post-to-post": "inner wall",
    "point-to-wall": "inner wall", "post-too-long": "inner wall", "slot-not-reached": "inner wall",
    "no-slot": "inner wall", "cover": "cover", "misses-wood": "to the outline", "slot-floor": "cover", "too-deep": "stop depth", "drill-point": "stop depth", "no-mark": "entry mark", "ways-meet": "two bores", "way-through-head": "entry mark", "skate": "skate",
    "table-tilt": "entry mark", "shared-tilt": "entry mark", "seat-overhang": "seat", "seat-over-slot": "seat",
    "seats-overlap": "seat", "plate-rocks": "seat", "flat-too-small": "seat", "flat-rail": "seat", "hole-to-flat": "to the outline", "plate-over-flat": "seat", "buttons": "buttons",
    "button-to-wood": "buttons", "pin-to-blank": "two pins", "hole-in-the-way": "two pins", "few-pins": "two pins", "pins-askew": "two pins",
    "glue-line": "glue line", "glue-line-crossed": "glue line", "ear-too-short": "glue line", "feather-screw": "scarf joint", "feather-edge": "scarf joint", "side-angle": "side angle", "break-angle": "break angle",
    "break-angle-steep": "break angle", "retainer-idle": "break angle", "string-past-post": "break angle", "post-too-low": "break angle", "bush-too-narrow": "offset",
    "no-bit": "offset", "bit-unguided": "offset", "drill-short": "stop depth", "quill": "stop depth"}
"""Kind -> drawing."""


def drawing_of(kind: str) -> str:
    """Name of the drawing for a kind of snag; "" where its sentence is enough."""
    if kind in DRAWN:
        return DRAWN[kind]
    if kind.endswith("-to-outline"):
        return "to the outline"
    return "two bores" if "-to-" in kind and kind in KINDS and not kind.startswith(("post", "string")) else ""


def snag_words() -> tuple[Word, ...]:
    """All kinds, sorted by their titles."""
    return tuple(sorted((Word(kind.title, kind.why, drawing_of(key)) for key, kind in KINDS.items()),
                        key=lambda word: word.word.casefold()))
