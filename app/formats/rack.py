"""The maker's rack, kept once per maker in the platform's settings folder and copied into a layout when it is used there.

The file holds the rack's own version before the records of geometry.layout.shop;
unknown keys are refused with their place.
"""

from __future__ import annotations

import os
from pathlib import Path
from typing import Literal

import msgspec
import platformdirs

from app.formats.disk_words import why, why_no_folder, why_unread
from app.formats.errors import FormatError, StaysAsItIs
from app.formats.reading import read_bytes
from app.formats.saving import save_bytes
from app.formats.tidy_json import tidy
from app.formats.versioned import Refusals, read_versioned
from geometry.beginning.given_names import rack_in_language
from geometry.errors import GeometryError
from geometry.layout import Rack
from geometry.layout.generic import RACK
from geometry.layout.validate import validate_rack
from geometry.saying import say

VERSION = 1
LARGEST_BYTES = 2_000_000
FILE = "rack.json"


class RackFile(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """What the file holds."""

    pegwright_rack: Literal[1] = VERSION
    rack: Rack


def rack_path() -> Path:
    """Where the maker's rack is kept on this platform. Nothing is created."""
    return platformdirs.user_config_path("pegwright", appauthor=False) / FILE


def starting_rack(unit: Literal["mm", "inch"] = "mm") -> Rack:
    """An invented rack to begin with, in the sizes sold in mm or in inches (kept in mm), named in the language in use."""
    if unit == "mm":
        return rack_in_language(RACK)
    from geometry.layout.generic_inch import RACK_INCH
    return rack_in_language(RACK_INCH)


def load_rack(path: Path, unit: Literal["mm", "inch"] = "mm") -> Rack:
    """The maker's rack, or the starting rack of that unit while none has been saved.

    FormatError when a file is there and cannot be used: it is never replaced silently.
    """
    kept = kept_rack(path)
    return starting_rack(unit) if kept is None else kept


def kept_rack(path: Path) -> Rack | None:
    """The maker's rack, None while none has been saved. FormatError when a file is there and cannot be used; StaysAsItIs when it
    may well be another time, or by a newer program."""
    try:
        data = read_bytes(path, LARGEST_BYTES)
    except (FileNotFoundError, NotADirectoryError):
        return None
    except OSError as error:
        raise StaysAsItIs(say("Your rack in {path} cannot be read: {why}.", path=path, why=why_unread(error))) from error
    return decode_rack(data, str(path))


def save_rack(rack: Rack, path: Path) -> None:
    """Keep the rack for this maker, whole or not at all; the settings folder is made when it is missing.

    FormatError when the rack has an id twice, the place cannot be written, or a file is there that cannot be used: it is
    never replaced.
    """
    data = encode_rack(rack)
    kept_rack(path)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise FormatError(say("The folder {parent} for your rack cannot be made: {why}.",
                              parent=path.parent, why=why_no_folder(error))) from error
    save_bytes(path, data)


def set_aside(path: Path) -> Path:
    """Give an unusable rack file another name beside its place, so that nothing is lost; the new path.

    FormatError when it cannot be renamed.
    """
    number = 1
    while os.path.lexists(aside := path.with_name(f"{path.stem}-unreadable-{number}{path.suffix}")):
        number += 1
    try:
        path.rename(aside)
    except OSError as error:
        raise FormatError(say("{path} cannot be renamed: {why}. Move it yourself.", path=path, why=why(error))) from error
    return aside


def keep_before(path: Path) -> Path | None:
    """Copy the rack file that is about to be replaced as a whole; the copy's path, None when there is no file.

    FormatError when it cannot be read, is far larger than a rack, or the copy cannot be written.
    """
    before = path.with_name(f"{path.stem}-before{path.suffix}")
    try:
        data = read_bytes(path, LARGEST_BYTES)
    except FileNotFoundError:
        return None
    except OSError as error:
        raise FormatError(say("{path} cannot be read: {why}.", path=path, why=why_unread(error))) from error
    if len(data) > LARGEST_BYTES:
        raise FormatError(_refusals(str(path)).large())
    save_bytes(before, data)
    return before


def encode_rack(rack: Rack) -> bytes:
    """The rack as file bytes. FormatError when an id is used twice."""
    try:
        return tidy(RackFile(rack=validate_rack(rack)))
    except GeometryError as error:
        raise FormatError(say("The rack cannot be saved: {error}", error=error)) from error


def decode_rack(data: bytes, name: str = "") -> Rack:
    """A rack from file bytes. FormatError with one sentence and the place otherwise."""
    return read_versioned(data, RackFile, "pegwright_rack", VERSION, LARGEST_BYTES, _refusals(name or say("the file")),
                          lambda file: validate_rack(file.rack))


def _refusals(name: str) -> Refusals:
    return Refusals(
        name=name,
        empty=lambda: say("{name} is empty: it holds no rack. Delete it to begin with the starting rack.", name=name),
        large=lambda: say("{name} is far larger than a rack needs: choose the right file.", name=name),
        unmarked=lambda: say('{name} is not a rack: it has no "pegwright_rack" version at the top.', name=name),
        damaged=lambda: say("{name} is damaged: there has never been a rack of the version that it names.", name=name),
        newer=lambda version: say("{name} is a rack of version {version}; this program reads version {known}. "
                                  "Update Pegwright to open it; the file is left as it is.",
                                  name=name, version=version, known=VERSION))
