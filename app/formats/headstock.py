"""The layout file: strict, versioned JSON with a stable key order that diffs well.

Read and validated by msgspec against the model in geometry.layout; unknown
keys are refused with their place.
"""

from __future__ import annotations

import json
from pathlib import Path

import msgspec

from app.formats.errors import FormatError
from app.formats.reading import read_bytes
from app.formats.saving import fingerprint, save_bytes
from app.formats.strict_json import LATEST, UNREADABLE, plain, read_strict, sentence
from app.formats.tidy_json import tidy
from geometry.errors import GeometryError
from geometry.layout import FORMAT, Headstock, validate
from geometry.saying import say

SUFFIX = ".headstock.json"
LARGEST_BYTES = 20_000_000


def decode(data: bytes, name: str = "") -> Headstock:
    """A validated layout from file bytes. FormatError with one sentence and the place otherwise."""
    name = name or say("the file")
    if not data.strip():
        raise FormatError(say("{name} is empty: it holds no layout.", name=name))
    if len(data) > LARGEST_BYTES:
        raise FormatError(say("{name} is {data:.0f} MB, far more than a layout needs: choose the right file.",
                              name=name, data=len(data) / 1e6))
    try:
        data = plain(data)
        version = msgspec.json.decode(data, type=_Head).pegwright
    except UNREADABLE as error:
        raise FormatError(say("{name} is not a headstock layout: {sentence}",
                              name=name, sentence=sentence(error, data))) from error
    if version is None:
        raise FormatError(say('{name} is not a headstock layout: it has no "pegwright" version at the top.', name=name))
    if not 1 <= version < LATEST:
        raise FormatError(say("{name} is damaged: there has never been a layout of the version that it names.",
                              name=name))
    if version > FORMAT:
        raise FormatError(say("{name} is a layout of version {version}; this program reads version {format}. Update "
                              "Pegwright to open it; the file is left as it is.",
                              name=name, version=version, format=FORMAT))
    try:
        return validate(read_strict(data, Headstock))
    except UNREADABLE as error:
        raise FormatError(say("{name} cannot be used: {sentence}",
                              name=name, sentence=sentence(error, data))) from error
    except GeometryError as error:
        raise FormatError(say("{name} cannot be used: {sentence}", name=name, sentence=sentence(error))) from error


def read(path: Path) -> Headstock:
    """The layout in a file. FormatError when it cannot be read or is not a valid layout."""
    return read_marked(path)[0]


def read_marked(path: Path) -> tuple[Headstock, str]:
    """The layout in a file and the fingerprint of the bytes it was read from. FormatError as for `read`."""
    path = Path(path)
    try:
        data = read_bytes(path, LARGEST_BYTES)
    except (OSError, ValueError) as error:
        raise FormatError(say("{path} cannot be read: {why}.",
                              path=path.name, why=getattr(error, 'strerror', None) or error)) from error
    return decode(data, path.name), fingerprint(data)


def encode(layout: Headstock) -> bytes:
    """The layout as file bytes: UTF-8, two spaces of indent, short lists on one line, final newline."""
    return tidy(layout)


def write(layout: Headstock, path: Path) -> bool:
    """Save atomically and keep the version before; False when only that could not be kept.

    FormatError when the place cannot be written; an earlier file is then untouched. Unconfirmed when the layout is
    there and the disk does not vouch for it.
    """
    return save_bytes(Path(path), encode(layout), keep_before=True)


def schema_text() -> str:
    """The JSON Schema (draft 2020-12) of the layout file, generated from the model."""
    schema = msgspec.json.schema(Headstock)
    head = {"$schema": "https://json-schema.org/draft/2020-12/schema", "title": "Headstock layout",
            "description": "Lengths in millimetres, angles in degrees. Origin: nut line x centreline, on the face; "
                           "+x treble, +y tip, +z into the wood."}
    return json.dumps(head | schema, indent=2) + "\n"


class _Head(msgspec.Struct):
    """Only the version, so that a newer file is named as such before its fields are judged."""

    pegwright: int | None = None
