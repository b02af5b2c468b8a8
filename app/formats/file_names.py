"""Names for files that every system takes, made of names that makers give."""

from __future__ import annotations

import re
import unicodedata

MOST_BYTES = 120
"""Of a name without its endings: file systems hold 255 bytes, some encrypted ones 143."""
_RESERVED = re.compile(r"(?:CON|PRN|AUX|NUL|COM[0-9]|LPT[0-9])(?: *\.|$)", re.IGNORECASE)
"""Names of devices on Windows, whatever ending follows (its documentation on naming files); superscript digits count."""


def stem_of(name: str, otherwise: str) -> str:
    """The beginning of a file's name from the name of a layout: letters and digits of any script, small, with `-` between.

    `otherwise` when nothing is left of it.
    """
    plain = "".join(c if c.isalnum() or c in "-_" else " " for c in name.lower())
    return fitting("-".join(plain.split()).strip("-_")) if plain.strip(" -_") else otherwise


def fitting(stem: str) -> str:
    """The same name, if need be cut to what fits, without what leads elsewhere, and none of the names kept for devices."""
    stem = "".join("-" if c in '/\\:*?"<>|' or not c.isprintable() else c for c in stem)
    stem = stem.encode("utf-8", "replace")[:MOST_BYTES].decode("utf-8", "ignore").strip(" .")
    if not stem:
        return "headstock"
    return f"{stem}-" if _RESERVED.match(unicodedata.normalize("NFKC", stem)) else stem
