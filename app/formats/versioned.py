"""Files of the maker that begin with the version of their own format: what they can be refused for, in one order.

The version is read before the fields are judged, so that a newer file is named as such.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

import msgspec

from app.formats.errors import FormatError, StaysAsItIs
from app.formats.strict_json import LATEST, UNREADABLE, plain, read_strict, sentence
from geometry.errors import GeometryError
from geometry.saying import say

Record = TypeVar("Record")
Made = TypeVar("Made")


class Refusals(msgspec.Struct, frozen=True, kw_only=True):
    """The sentences of one kind of file: whole ones, as each language bends its name."""

    name: str
    """the file's own"""
    empty: Callable[[], str]
    large: Callable[[], str]
    unmarked: Callable[[], str]
    """the version is missing, so that it is another kind of file"""
    damaged: Callable[[], str]
    """there has never been such a version"""
    newer: Callable[[int], str]
    """from the version of the file"""
    foreign: Callable[[str], str] | None = None
    """from what keeps even the version from being read, where that is told otherwise than what is wrong with the rest"""

    def unusable(self, why: str) -> str:
        """What is wrong with the rest."""
        return say("{name} cannot be used: {sentence}", name=self.name, sentence=why)


def read_versioned(data: bytes, kind: type[Record], field: str, newest: int, largest: int, says: Refusals,
                   made: Callable[[Record], Made]) -> Made:
    """What `made` makes of the record in a file's bytes, of which `field` holds the version.

    FormatError with one sentence otherwise, a GeometryError of `made` among them; StaysAsItIs for a newer version.
    """
    if not data.strip():
        raise FormatError(says.empty())
    if len(data) > largest:
        raise FormatError(says.large())
    try:
        data = plain(data)
        version = getattr(msgspec.json.decode(data, type=_head(field)), field)
    except UNREADABLE as error:
        raise FormatError((says.foreign or says.unusable)(sentence(error, data))) from error
    if version is None:
        raise FormatError(says.unmarked())
    if not 1 <= version < LATEST:
        raise FormatError(says.damaged())
    if version > newest:
        raise StaysAsItIs(says.newer(version))
    try:
        return made(read_strict(data, kind))
    except UNREADABLE as error:
        raise FormatError(says.unusable(sentence(error, data))) from error
    except GeometryError as error:
        raise FormatError(says.unusable(sentence(error))) from error


def _head(field: str) -> type[msgspec.Struct]:
    """Only the version, whatever else is in the file."""
    return msgspec.defstruct("Head", [(field, int | None, None)])
