"""The letters by which pages and cards of one plan are told from those of another."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Iterable

from msgspec import Struct
from msgspec.structs import fields, replace

from app.formats.tidy_json import tidy
from geometry.layout import Accuracy, Book, Headstock, Rates


def plan_letters(layout: Headstock, steps: Iterable[str]) -> str:
    """Four letters and digits for a layout and its steps in their order.

    The same plan has the same ones in every language and unit, on every system, from the layout in the window and from its
    file, and in a version of the program whose layouts have more fields. What the layout is called, minutes, the shop's errors
    and what is noted move no mark and no step: they do not count.
    """
    told = replace(layout, name="", about="", accuracy=Accuracy(), rates=Rates(), notes=(), order=(), book=Book(), picture=None)
    data = tidy([_told(told), list(steps)])
    return base64.b32encode(hashlib.blake2b(data, digest_size=5).digest()).decode()[:4]


def _told(value: object) -> object:
    """What of a record differs from its defaults, with the kind of a record that has several."""
    if isinstance(value, Struct):
        own = {field.name: _told(found) for field in fields(value) if (found := getattr(value, field.name)) != field.default}
        return own if value.__struct_config__.tag is None else {"kind": value.__struct_config__.tag} | own
    return [_told(one) for one in value] if isinstance(value, tuple | list) else value
