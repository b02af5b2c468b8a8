"""The ground of the layout model: strict frozen records and the numbers that they allow.

msgspec records were chosen because they are at once the immutable model, the
strict reader with the place of every error, and the source of the JSON Schema,
at a tenth of the import time of the other validating libraries.

The files with records do not put off their annotations (`from __future__ import annotations`): to read the first layout
msgspec would have to compile and work out each of them again from its text, which took twice as long as the reading.
"""

from typing import Annotated

from msgspec import Meta, Struct

Coord = Annotated[float, Meta(ge=-5000, le=5000)]
"""A coordinate in mm."""
Size = Annotated[float, Meta(gt=0, le=5000)]
"""A length in mm above zero."""
Amount = Annotated[float, Meta(ge=0, le=5000)]
"""A length in mm, zero allowed."""
Degrees = Annotated[float, Meta(ge=-360, le=360)]
"""An angle in degrees: the file is read by people."""
LETTERS = "A-Za-zÀ-ÖØ-öø-ĥĨ-ıĴ-ķĹ-ľŁ-ňŌ-ťŨ-žȘ-ț"
"""Letters of names: those of the European languages in Latin letters that the face of the sheets has, at worst without the
accent. Written out, as `\\w` means other letters to other readers of the schema. Each is one character (NFC)."""
Id = Annotated[str, Meta(min_length=1, max_length=60, pattern=rf"^[{LETTERS}0-9][{LETTERS}0-9 _.-]*$(?!\n)")]
"""A short name on one line, unique within its kind. The end is written so that Python and the readers of the schema agree on it."""
ToolId = Annotated[str, Meta(min_length=1, max_length=60, pattern=rf"^[{LETTERS}0-9][{LETTERS}0-9 _./-]*$(?!\n)")]
"""A name of hardware or of a tool in the rack: as Id, and with the stroke of a fraction."""
Text = Annotated[str, Meta(max_length=4000)]
Point = tuple[Coord, Coord]
"""(x, y) in mm: +x to the treble side, +y to the tip."""


class Part(Struct, frozen=True, forbid_unknown_fields=True):
    """Base of every record in a layout. Subclasses repeat kw_only=True: msgspec does not pass it down."""
