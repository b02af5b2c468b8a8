"""A DXF's bytes as the library's document, by whichever of its two readers manages."""

from __future__ import annotations

import io
import logging
import re

from ezdxf import recover
from ezdxf.document import Drawing
from ezdxf.lldxf.tagger import binary_tags_loader
from msgspec import Struct, field

from app.formats.drawing_in.dxf_mend import binary_header_number, header_number, mended
from app.formats.drawing_in.sniff import as_text
from app.formats.errors import FormatError
from geometry.saying import count, say

logging.getLogger("ezdxf").setLevel(logging.CRITICAL)


class Loaded(Struct):
    """A document and what its header says in the file itself, not what the library assumes."""

    document: Drawing
    insunits: int | None
    measurement: int | None
    warnings: list[str] = field(default_factory=list)


def load(data: bytes, binary: bool) -> Loaded:
    """The document. Raises FormatError when neither reader can make one."""
    if binary:
        try:
            document = Drawing.load(binary_tags_loader(data, errors="surrogateescape"))
        except MemoryError:
            raise
        except Exception as error:  # any damage shows as some exception deep in the library
            raise _unreadable() from error
        return Loaded(document, binary_header_number(data, b"$INSUNITS"), binary_header_number(data, b"$MEASUREMENT"))
    text = mended(as_text(data))
    warnings = []
    if not re.search(r"(?m)^[ \t]*0[ \t]*\n[ \t]*EOF[ \t]*$", text[-20000:]):
        warnings.append(say("The file ends before its end mark: something may be missing, so compare the outline with "
                            "the drawing."))
    document = None
    try:
        document = Drawing.read(io.StringIO(text))
    except MemoryError:
        raise
    except Exception:  # the stricter and faster reader gave up: the mending one gets its turn
        document = None
    if document is None or not len(document.modelspace()):
        document = _recovered(text, document, warnings)
    return Loaded(document, header_number(text, "$INSUNITS"), header_number(text, "$MEASUREMENT"), warnings)


def _recovered(text: str, strict: Drawing | None, warnings: list[str]) -> Drawing:
    """What the mending reader makes of it; the strict reader's empty document when that gets no further."""
    try:
        document, auditor = recover.read(io.BytesIO(text.encode("utf-8", "surrogateescape")))
    except MemoryError:
        raise
    except Exception as error:  # as above
        if strict is not None:
            return strict
        raise _unreadable() from error
    if strict is not None and not len(document.modelspace()):
        return strict
    repairs = len(auditor.fixes) + len(auditor.errors)
    warnings.append(count(repairs, "The file was damaged and had to be mended in {n} place: compare the outline with the "
                          "drawing.",
                          "The file was damaged and had to be mended in {n} places: compare the outline with the drawing.")
                    if repairs else
                    say("The file was damaged and had to be mended: compare the outline with the drawing."))
    return document


def _unreadable() -> FormatError:
    return FormatError(say("The DXF file is damaged and cannot be read: open it in the program that drew it and save "
                           "it again as DXF."))
