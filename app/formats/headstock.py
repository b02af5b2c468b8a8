"""The layout file: strict, versioned JSON with a stable key order that diffs well.

Read and validated by msgspec against the model in geometry.layout; unknown
keys are refused with their place.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import msgspec
from msgspec import Struct

from app.formats.disk_words import why_unread
from app.formats.errors import FormatError
from app.formats.reading import Known, known, read_bytes
from app.formats.saving import save_bytes
from app.formats.tidy_json import tidy
from app.formats.versioned import Refusals, read_versioned
from geometry.layout import FORMAT, Headstock, validate
from geometry.saying import say

SUFFIX = ".headstock.json"
LARGEST_BYTES = 20_000_000


def decode(data: bytes, name: str = "") -> Headstock:
    """A validated layout from file bytes. FormatError with one sentence and the place otherwise."""
    name = name or say("the file")
    says = Refusals(
        name=name,
        empty=lambda: say("{name} is empty: it holds no layout.", name=name),
        large=lambda: say("{name} is {data:.0f} MB, far more than a layout needs: choose the right file.",
                          name=name, data=len(data) / 1e6),
        unmarked=lambda: say('{name} is not a headstock layout: it has no "pegwright" version at the top.', name=name),
        damaged=lambda: say("{name} is damaged: there has never been a layout of the version that it names.", name=name),
        newer=lambda version: say("{name} is a layout of version {version}; this program reads version {format}. Update "
                                  "Pegwright to open it; the file is left as it is.",
                                  name=name, version=version, format=FORMAT),
        foreign=lambda why: (
            say("{name} is a drawing, no layout yet: import it on the Outline stage, or make a layout of it with python3 -m app outline.", name=name)
            if name.lower().endswith((".dxf", ".svg")) else
            say("{name} is not a headstock layout: {sentence}", name=name, sentence=why)))
    return read_versioned(data, Headstock, "pegwright", FORMAT, LARGEST_BYTES, says, validate)


def read(path: Path) -> Headstock:
    """The layout in a file. FormatError when it cannot be read or is not a valid layout."""
    return read_marked(path)[0]


def read_marked(path: Path) -> tuple[Headstock, bytes]:
    """The layout in a file and the bytes it was read from, by which its document knows the file again. FormatError as for `read`."""
    path = Path(path)
    try:
        data = read_bytes(path, LARGEST_BYTES)
    except (OSError, ValueError) as error:
        raise FormatError(say("{path} cannot be read: {why}.",
                              path=path.name, why=why_unread(error))) from error
    return decode(data, path.name), data


class Opened(Struct, frozen=True):
    """A layout that was read from a file."""

    layout: Headstock
    seen: bytes
    """what was read: by it its document knows the file again"""
    known: Known


def opened(path: Path) -> Opened:
    """The layout in a file and what is known of that. FormatError as for `read`."""
    layout, seen = read_marked(path)
    return Opened(layout, seen, known(path))


def encode(layout: Headstock) -> bytes:
    """The layout as file bytes: UTF-8, two spaces of indent, short lists on one line, final newline."""
    return tidy(layout)


def compact(layout: Headstock) -> bytes:
    """The layout as bytes that `decode` reads, without the look of a file that people compare: sixty times as quick to make,
    for what is written down every second beside the hand."""
    try:
        return msgspec.json.encode(layout)
    except UnicodeEncodeError:  # half a character, which the file's own form knows what to do with
        return encode(layout)


def write(layout: Headstock, path: Path, go_on: Callable[[], None] = lambda: None) -> bool:
    """Save atomically and keep the version before; False when only that could not be kept. `go_on` as for `save_bytes`.

    FormatError when the place cannot be written or the layout is larger than what is read again; an earlier file is then
    untouched. Unconfirmed when the layout is there and the disk does not vouch for it.
    """
    data = encode(layout)
    if len(data) > LARGEST_BYTES:
        raise FormatError(say("The layout would take {size:.0f} MB, and no more than {most:.0f} can be opened again: take out what is "
                              "large, the picture or long notes. An earlier file is untouched.",
                              size=len(data) / 1e6, most=LARGEST_BYTES / 1e6))
    return save_bytes(Path(path), data, True, go_on)


def schema_text() -> str:
    """The JSON Schema (draft 2020-12) of the layout file, generated from the model."""
    schema = msgspec.json.schema(Headstock)
    head = {"$schema": "https://json-schema.org/draft/2020-12/schema", "title": "Headstock layout",
            "description": "Lengths in millimetres, angles in degrees. Origin: nut line x centreline, on the face; "
                           "+x treble, +y tip, +z into the wood."}
    return json.dumps(head | schema, indent=2) + "\n"
