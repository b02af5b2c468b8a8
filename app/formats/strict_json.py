"""JSON held to its record: what a text tool, a merge or a bad disk did to a file is named with its place."""

from __future__ import annotations

import codecs
import json
import re
from typing import TypeVar

import msgspec

from geometry.errors import GeometryError
from geometry.saying import say

Record = TypeVar("Record")

LONGEST = 400
"""Characters of a sentence: a file may hold names that fill pages."""
LATEST = 1_000_000
"""Versions beyond this are no versions."""


class Unsound(ValueError):
    """Bytes that no strict reader takes; the message is the sentence for the maker."""


UNREADABLE = (msgspec.DecodeError, UnicodeDecodeError, RecursionError, Unsound)
"""What the strict reader raises for bytes that it does not take."""

_OTHER_WIDTHS = ((codecs.BOM_UTF32_LE, "UTF-32"), (codecs.BOM_UTF32_BE, "UTF-32"), (codecs.BOM_UTF16_LE, "UTF-16"),
                 (codecs.BOM_UTF16_BE, "UTF-16"))


def plain(data: bytes) -> bytes:
    """The bytes without the mark that some editors put before UTF-8. Unsound when the text is of another width."""
    for mark, name in _OTHER_WIDTHS:
        if data.startswith(mark):
            raise Unsound(say("It was saved as {name}: save it again as UTF-8.", name=name))
    data = data.removeprefix(codecs.BOM_UTF8)
    if b"\x00" in data[:4]:
        raise Unsound(say("It is not text in UTF-8."))
    return data


def read_strict(data: bytes, kind: type[Record]) -> Record:
    """A record from plain JSON. One of UNREADABLE when it is not sound, or names a field twice in one record."""
    record = msgspec.json.decode(data, type=kind)
    found = _first_twice(json.loads(data, object_pairs_hook=_pairs), "$")
    if found:
        raise Unsound(say("It names a field twice, at {found}: keep the one that is right.", found=found))
    return record


def sentence(error: Exception, data: bytes = b"") -> str:
    """What a strict reader, or the model, objects to, as one line for the maker. With `data` places are given as line and column."""
    from geometry.wanted import perhaps_newer, wanted

    if isinstance(error, RecursionError):
        return say("it is nested too deeply.")
    if isinstance(error, UnicodeDecodeError):
        return say("Not all of it is text in UTF-8: some bytes were spoiled or it was saved by something else.")
    text = "".join(c if c.isprintable() else "?" for c in " ".join(str(error).split())).rstrip(".")
    if text == "Input data was truncated":
        return say("It breaks off before its end: use the version before it, if there is one.")
    place, newer = "", False
    if isinstance(error, GeometryError):
        place = error.place
    elif isinstance(error, msgspec.DecodeError):
        message, _, rest = text.rpartition(" - at `$") if text.endswith("`") and " - at `$" in text else (text, "", "")
        place = f"${rest.removesuffix('`')}" if rest else ""
        if data:
            message = re.sub(r"\(byte (\d+)\)$", lambda found: _place(data, int(found[1])), message)
        text, newer = wanted(message), perhaps_newer(message)
    if place:
        text = say("{told} (at {place})", told=text, place=place)
    if len(text) > LONGEST:
        text = f"{text[:LONGEST]}…"
    if not text:
        return say("it cannot be read.")
    text = text[0].upper() + text[1:] + "."
    if newer:
        text += " " + say("If a newer Pegwright wrote it, update Pegwright to open it; the file is left as it is.")
    return text


def _place(data: bytes, byte: int) -> str:
    before = data[:byte]
    return say("(line {line}, column {column})", line=before.count(b"\n") + 1, column=byte - before.rfind(b"\n"))


class _Twice(dict):
    """A record in which a field stood twice; `field` is its name."""

    field = ""


def _pairs(pairs: list[tuple[str, object]]) -> dict:
    record = dict(pairs)
    if len(record) == len(pairs):
        return record
    twice, seen = _Twice(record), set()
    twice.field = next(key for key, _ in pairs if key in seen or seen.add(key))
    return twice


def _first_twice(value: object, path: str) -> str:
    """The place of the first field named twice, "" without any."""
    if isinstance(value, _Twice):
        return f"{path}.{value.field}"
    if isinstance(value, dict):
        return next(filter(None, (_first_twice(item, f"{path}.{key}") for key, item in value.items()
                                  if isinstance(item, dict | list))), "")
    if isinstance(value, list):
        return next(filter(None, (_first_twice(item, f"{path}[{i}]") for i, item in enumerate(value)
                                  if isinstance(item, dict | list))), "")
    return ""
