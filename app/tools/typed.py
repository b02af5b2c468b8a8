"""Values typed while a gesture runs: a place, a bare number, or words with numbers."""

from __future__ import annotations

import math
import re

from geometry.edits.twins import stays
from geometry.errors import GeometryError, quoted
from geometry.lengths import mm
from geometry.saying import say
from geometry.terms import term
from geometry.tolerance import TOUCH
from geometry.units import LengthUnit, parse_angle, parse_length
from geometry.vectors import Vec2

WORDS = ("length", "angle", "radius", "width", "along", "diameter", "depth", "treble", "bass", "across", "behind")
"""What a number can be called."""
TO_SIDE = {"treble": ("across", 1.0), "bass": ("across", -1.0), "behind": ("along", -1.0)}
"""How far a place lies to a side or behind the nut line: the measure that it is, and its sign there."""
PLACE = {"across", "along"}
"""Of these a place is made."""


def point(text: str, unit: LengthUnit) -> Vec2 | None:
    """Two lengths as a place in mm: `12.5, 40`, `12,5; 40`, `1/2"; 3 1/4"`; None when it is not two lengths.

    A semicolon, or a comma with a space behind it, parts the two; a single
    comma does too, but between two digits (`12,5`) it stands before decimals
    unless points do so already (`12.5,40`). The first counts to the treble
    side, the second to the tip.
    """
    for mark in (";", ", "):
        if mark in text:
            parts = text.split(mark)
            break
    else:
        parts = text.split(",") if "." in text or not re.search(r"\d,\d", text) else [text]
    if len(parts) != 2 or any(re.match(r"\s*[^\W\d_]{3,}", part) for part in parts):
        return None
    return (parse_length(parts[0], unit), parse_length(parts[1], unit))


def number(text: str, unit: LengthUnit) -> float | None:
    """A single length in mm, None when the text begins with a word."""
    if re.match(r"\s*[^\W\d_]", text):
        return None
    return parse_length(text, unit)


def named(text: str, unit: LengthUnit) -> dict[str, float]:
    """Words with their numbers: `length 40`, `length 40 angle 30`; lengths in mm, the angle in rad; `bass 5` is across, -5.

    GeometryError when a word is not known, its number cannot be read or is given twice.
    """
    found: dict[str, float] = {}
    own = {term(word).lower(): word for word in WORDS}
    plain = re.sub(r"\b(deg(rees)?|grad)\b", "°", re.sub(r"\b(inch(es)?|zoll)\b", '"', text.strip(), flags=re.I), flags=re.I)
    pieces = re.split(r"([^\W\d_]{3,})", plain)
    if len(pieces) < 3 or pieces[0].strip():
        raise GeometryError(say('{text} is not understood here: type a length, or two with a semicolon between them.',
                                text=quoted(text)))
    for word, value in zip(pieces[1::2], pieces[2::2], strict=True):
        word = own.get(word.lower(), word.lower())
        if word not in WORDS:
            raise GeometryError(say('"{word}" is not understood here: use {words} or {last}.', word=word,
                                    words=", ".join(term(one) for one in WORDS[:-1]), last=term(WORDS[-1])))
        value = value.strip(" ,;:=")
        measure, sign = TO_SIDE.get(word, (word, 1.0))
        if measure in found:
            raise GeometryError(say('"{word}" and what is typed before it are one measure: type it once.', word=term(word)))
        found[measure] = sign * (parse_angle(value) if word == "angle" else parse_length(value, unit))
    return found


def polar(text: str, unit: LengthUnit) -> dict[str, float]:
    """A length, an angle, or both: `40`, `30°`, `40 30°`, or in words; lengths in mm, the angle in rad."""
    match = re.fullmatch(r"(?P<length>.*?)\s*(?P<angle>[+-]?\d[\d.,]*\s*(?:°|deg|degrees|grad))\s*", text, re.IGNORECASE)
    if match is not None and not re.match(r"\s*[^\W\d_]", text):
        found = {"angle": parse_angle(match["angle"])}
        return {"length": parse_length(match["length"], unit), **found} if match["length"].strip() else found
    bare = number(text, unit)
    return named(text, unit) if bare is None else {"length": bare}


def held_to(along: float, reached: float) -> None:
    """GeometryError when a tuner that was sent `along` mm on its edge came to another place: its edge or its row holds it back."""
    if abs(along - reached) > TOUCH:
        raise GeometryError(say("No tuner can sit there: on its way along the edge it stops at {reached}.", reached=mm(reached)))


def across(wanted: float, reached: float) -> None:
    """GeometryError when what was sent to `wanted` mm across came elsewhere: it stays on the centreline, for both sides do alike."""
    if abs(wanted - reached) > TOUCH:
        raise stays()


def placed(text: str, unit: LengthUnit, start: Vec2 | None, pointer: Vec2) -> Vec2:
    """A place typed absolutely, or as a length and an angle from `start`; what is not given follows the pointer.

    The angle counts counter-clockwise from the treble side. In words a place
    is `treble 12 along 40` or `bass 12 along 40`.
    """
    absolute = point(text, unit)
    if absolute is not None:
        return absolute
    values = polar(text, unit)
    if values and values.keys() <= PLACE:
        return (values.get("across", pointer[0]), values.get("along", pointer[1]))
    if start is None:
        raise GeometryError(say("Type a place as two lengths with a semicolon between them, for example 12.5; 40."))
    if not values.keys() <= {"length", "angle"}:
        raise GeometryError(say("Type a place, a length, an angle, or a length and an angle here."))
    d = (pointer[0] - start[0], pointer[1] - start[1])
    size = values.get("length", math.hypot(*d))
    angle = values.get("angle", math.atan2(d[1], d[0]))
    return (start[0] + size * math.cos(angle), start[1] + size * math.sin(angle))
