"""What the strict reader of records wants, in the words of the maker: it speaks English alone, and of types."""

from __future__ import annotations

import re
from collections.abc import Callable

from geometry.saying import count, number, say

LONGEST_NAME = 60
"""Letters that are told of a field or word nobody knows: a file may hold one that fills pages."""


def wanted(message: str) -> str:
    """What the reader objects to, as one sentence without its full stop. What it has never been heard to say comes as it is."""
    for pattern, sentence in _SENTENCES:
        found = re.match(pattern, message)
        if found:
            return sentence(found)
    return message


def perhaps_newer(message: str) -> bool:
    """Whether this may be new since this program: a field, or a word for one of a few choices."""
    return message.startswith(("Object contains unknown field", "Invalid enum value", "Invalid value"))


def _name(found: re.Match) -> str:
    if "/" in found[0]:
        return say("Expected a name: a letter or a digit, then only letters, digits, spaces and _ . - / signs")
    return say("Expected a name: a letter or a digit, then only letters, digits, spaces and _ . - signs")


def _letters(found: re.Match) -> str:
    return say("Expected a word") if found[1] == ">=" else say("Expected at most {n} letters", n=int(found[2]))


def _entries(found: re.Match) -> str:
    entries = int(found[3])
    if found[2].endswith((">= ", "at least length ")):
        return count(entries, "Expected a list of at least {n} entry", "Expected a list of at least {n} entries")
    if found[2].endswith(("<= ", "at most length ")):
        return say("Expected a list of at most {n} entries", n=entries)
    return say("Expected a list of {n} entries", n=entries)


def _bound(found: re.Match) -> str:
    value = float(found[2])
    told = number(value, ".0f" if value.is_integer() else ".6g")
    return {">=": say("Expected a number of at least {number}", number=told),
            "<=": say("Expected a number of at most {number}", number=told),
            ">": say("Expected a number above {number}", number=told),
            "<": say("Expected a number below {number}", number=told)}[found[1]]


def _kind(found: re.Match) -> str:
    kinds = {"float": say("Expected a number"), "int": say("Expected a whole number"), "str": say("Expected words"),
             "bool": say("Expected true or false"), "array": say("Expected a list"), "object": say("Expected a record in braces")}
    return kinds.get(found[1], found.string)


def _broken(found: re.Match) -> str:
    place = found[2]
    if found[1].startswith("trailing comma"):
        return say("It is not sound JSON: a comma too many {place}", place=place)
    if found[1] == "trailing characters":
        return say("It is not sound JSON: something stands behind its end {place}", place=place)
    return say("It is not sound JSON: something is wrong or missing {place}", place=place)


# The patterns of the records are those of names (geometry.layout.parts.Id, ToolId).
_SENTENCES: tuple[tuple[str, Callable[[re.Match], str]], ...] = (
    (r"Expected `str` matching regex '.*'$", _name),
    (r"Expected `str` of length (<=|>=) (\d+)$", _letters),
    (r"Expected `(array|object)` of ((?:at least |at most )?length (?:<= |>= )?)(\d+)", _entries),
    (r"Expected `(?:float|int)` (<=|>=|<|>) (\S+)$", _bound),
    (r"Expected `bytes` of length <= (\d+)$", lambda found: say("Expected a picture of at most {size} MB", size=number(int(found[1]) / 1e6, ".3g"))),
    (r"Expected `bytes|Invalid base64", lambda _found: say("Expected a picture (JPEG) in base64")),
    (r"Expected `decimal|Invalid decimal string", lambda _found: say("Expected an amount such as 12.50")),
    (r"Expected `(\w+)", _kind),
    (r"(?:Number|Integer value) out of range", lambda _found: say("Expected a number that is not as long as that")),
    (r"Object contains unknown field `(.*)`$", lambda found: say("Unknown field `{name}`", name=_short(found[1]))),
    (r"Object missing required field `(.*)`$", lambda found: say("Field `{name}` is missing", name=_short(found[1]))),
    (r"Invalid (?:enum )?value '?(.*?)'?$", lambda found: say("Unknown word `{name}`", name=_short(found[1]))),
    (r"JSON is malformed: (.*?) (\(.*\))$", _broken),
)


def _short(name: str) -> str:
    return name if len(name) <= LONGEST_NAME else name[:LONGEST_NAME] + "…"
