"""What kind of file these bytes are, judged by themselves and not by the file's name."""

from __future__ import annotations

import re

from app.formats.errors import FormatError
from geometry.saying import say

_BINARY_DXF = re.compile(rb"[ -~]{7} Binary DXF\r\n\x1a\x00")
"""The signature of the binary form, from the published DXF reference; its first word is a trade name."""

_NOT_DRAWINGS = (
    (b"\x1f\x8b", say("The file is compressed (gzip); unpack it and import what is inside.")),
    (b"PK\x03\x04", say("The file is a zip archive; unpack it and import the drawing inside.")),
    (b"PK\x05\x06", say("The file is an empty zip archive.")),
    (b"BZh", say("The file is compressed (bzip2); unpack it and import what is inside.")),
    (b"\xfd7zXZ", say("The file is compressed (xz); unpack it and import what is inside.")),
    (b"7z\xbc\xaf", say("The file is a 7z archive; unpack it and import the drawing inside.")),
    (b"Rar!", say("The file is a rar archive; unpack it and import the drawing inside.")),
    (b"\x28\xb5\x2f\xfd", say("The file is compressed (zstd); unpack it and import what is inside.")),
    (b"\x89PNG", say("The file is a picture (PNG), not a drawing; export DXF or SVG from the program that drew it.")),
    (b"\xff\xd8\xff", say("The file is a picture (JPEG), not a drawing; export DXF or SVG from the program that drew it.")),
    (b"GIF8", say("The file is a picture (GIF), not a drawing; export DXF or SVG from the program that drew it.")),
    (b"BM", say("The file is a picture (BMP), not a drawing; export DXF or SVG from the program that drew it.")),
    (b"II*\x00", say("The file is a picture (TIFF), not a drawing; export DXF or SVG from the program that drew it.")),
    (b"MM\x00*", say("The file is a picture (TIFF), not a drawing; export DXF or SVG from the program that drew it.")),
    (b"%PDF", say("The file is a PDF; export DXF or SVG from the program that drew it.")),
    (b"%!PS", say("The file is a PostScript page; export DXF or SVG from the program that drew it.")),
    (b"\xd0\xcf\x11\xe0", say("The file is an office document, not a drawing.")),
    (b"\x7fELF", say("The file is a program, not a drawing.")),
    (b"solid ", say("The file is a solid model (STL); export the flat outline as DXF or SVG.")),
    (b"ISO-10303-21", say("The file is a solid model (STEP); export the flat outline as DXF or SVG.")),
)

_UTF16 = ((b"\xff\xfe", "utf-16-le"), (b"\xfe\xff", "utf-16-be"))


def kind_of(data: bytes) -> str:
    """'dxf', 'binary dxf' or 'svg'. Raises FormatError that says what it is instead."""
    if not data.strip(b"\x00 \t\r\n\xef\xbb\xbf"):
        raise FormatError(say("The file is empty: save the drawing again and import that."))
    if _BINARY_DXF.match(data):
        return "binary dxf"
    if re.match(rb"AC10\d\d[\x00-\x09]", data) or data.startswith((b"AC1.", b"MC0.0")):
        raise FormatError(say("The file is a DWG drawing, which cannot be read: save it as DXF and import that."))
    text = head_as_text(data)
    if text is None or not _looks_like(text):
        for start, what in _NOT_DRAWINGS:
            if data.startswith(start):
                raise FormatError(what)
    if text is None:
        raise FormatError(say("The file holds neither a DXF nor an SVG drawing, only binary data: export DXF or SVG "
                              "from the program that drew it."))
    found = _looks_like(text)
    if found is None:
        raise FormatError(say("The file holds neither a DXF nor an SVG drawing: export DXF or SVG from the program "
                              "that drew it."))
    return found


def _looks_like(text: str) -> str | None:
    if text.lstrip().startswith("<"):
        return "svg"
    # A DXF is group codes and values, a line each; it starts with a section, a comment, or (a fragment) a shape.
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    if re.match(r"\s*999[ \t]*\n", text) or re.search(r"(?m)^[ \t]*0[ \t]*\n[ \t]*SECTION[ \t]*$", text):
        return "dxf"
    if re.match(r"\s*0[ \t]*\n[ \t]*(LINE|ARC|CIRCLE|ELLIPSE|SPLINE|LWPOLYLINE|POLYLINE|INSERT|EOF)[ \t]*\n", text + "\n"):
        return "dxf"
    return None


def head_as_text(data: bytes) -> str | None:
    """The first part of the file as text, or None for binary data."""
    head = data[:65536]
    for mark, encoding in _UTF16:
        if head.startswith(mark):
            return head[2:].decode(encoding, "replace")
    if head[1:2] == b"\x00" and head[:1] in (b"<", b" ", b"0"):
        return head.decode("utf-16-le", "replace")
    control = sum(head.count(bytes([c])) for c in (*range(9), *range(14, 27)))
    if control > 0.01 * len(head) or b"\x00" in head[:2000]:
        return None
    return head.removeprefix(b"\xef\xbb\xbf").decode("latin-1")


def as_text(data: bytes) -> str:
    """The whole file as text: by its byte order mark, as UTF-8, else in code page 1252."""
    for mark, encoding in _UTF16:
        if data.startswith(mark):
            return data[2:].decode(encoding, "replace")
    if data[1:2] == b"\x00":
        return data.decode("utf-16-le", "replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", "replace")
