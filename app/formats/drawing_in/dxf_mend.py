"""What a DXF's text lacks, supplied before the library reads it.

Left alone, the library takes a file without a version for one of 1992 and
silently loses the closed flag of its polylines and the degree of its splines,
and takes a file without a unit for one in metres (import notes of this
project, reproduced by the tests).
"""

from __future__ import annotations

import re

_NEW_KINDS = {"LWPOLYLINE": "AcDbPolyline", "SPLINE": "AcDbSpline", "ELLIPSE": "AcDbEllipse"}
"""Entities that only exist since the version of 1997/2000, with the marker their data must follow."""

_ENTITY = re.compile(r"(?m)^[ \t]*0[ \t]*\r?\n[ \t]*(LWPOLYLINE|SPLINE|ELLIPSE)[ \t]*$")
_VERSION = re.compile(r"(\$ACADVER[ \t]*\n[ \t]*1[ \t]*\n[ \t]*)(AC\d+)")
_END = re.compile(r"(?m)^[ \t]*0[ \t]*\n[ \t]*EOF[ \t]*\n?\Z")
_HEADER = re.compile(r"(?m)^[ \t]*2[ \t]*\n[ \t]*HEADER[ \t]*\n")


def header_number(text: str, name: str) -> int | None:
    """A whole number of the header, such as $INSUNITS, read from the raw text; None when absent."""
    found = re.search(re.escape(name) + r"[ \t]*\r?\n[ \t]*70[ \t]*\r?\n[ \t]*(-?\d+)", text)
    return int(found.group(1)) if found else None


def binary_header_number(data: bytes, name: bytes) -> int | None:
    """The same from a binary DXF (two-byte group codes)."""
    found = re.search(re.escape(name) + rb"\x00F\x00(..)", data, re.DOTALL)
    return int.from_bytes(found.group(1), "little", signed=True) if found else None


def mended(text: str) -> str:
    """The text with line ends unified, decimal commas turned to points, and sections, version and markers supplied."""
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    if re.search(r"(?m)^[ \t]*(10|20|11|21|40)[ \t]*\n[ \t]*-?\d+,\d+[ \t]*$", text):
        text = re.sub(r"(?m)^([ \t]*\d+[ \t]*\n[ \t]*-?\d*),(\d+(?:[eE][-+]?\d+)?[ \t]*)$", r"\1.\2", text)
    if not re.search(r"(?m)^[ \t]*0[ \t]*\n[ \t]*SECTION[ \t]*$", text):
        text = f"0\nSECTION\n2\nENTITIES\n{re.sub(_END, '', text)}0\nENDSEC\n0\nEOF\n"
    present = set(_ENTITY.findall(text))
    if not present:
        return text
    text = _with_version(text)
    if any(len(re.findall(rf"(?m)^{_NEW_KINDS[kind]}[ \t]*$", text)) < len(re.findall(rf"(?m)^[ \t]*0[ \t]*\n[ \t]*{kind}[ \t]*$", text))
           for kind in present):
        text = _with_markers(text)
    return text


def _with_version(text: str) -> str:
    """A version new enough for the entities, where none or an older one is stated."""
    stated = _VERSION.search(text)
    if stated:
        return text if stated.group(2) >= "AC1012" else text[:stated.start(2)] + "AC1015" + text[stated.end(2):]
    tag = "9\n$ACADVER\n1\nAC1015\n"
    header = _HEADER.search(text)
    if header:
        return text[:header.end()] + "  " + tag + text[header.end():]
    return "0\nSECTION\n2\nHEADER\n" + tag + "0\nENDSEC\n" + text


def _with_markers(text: str) -> str:
    """Each entity of the new kinds gets its markers, placed after the tags common to all entities."""
    lines = text.split("\n")
    out: list[str] = []
    i = 0
    while i + 1 < len(lines):
        code, value = lines[i].strip(), lines[i + 1].strip()
        if code == "0" and value in _NEW_KINDS:
            end = i + 2
            while end + 1 < len(lines) and lines[end].strip() != "0":
                end += 2
            out.extend(_marked(lines[i:end], _NEW_KINDS[value]))
            i = end
        else:
            out.extend(lines[i:i + 2])
            i += 2
    out.extend(lines[i:])
    return "\n".join(out)


_COMMON = {"5", "330", "67", "8", "6", "62", "370", "48", "60", "420", "102", "360", "410"}
"""Group codes of the tags that every entity may carry before its own data."""


def _marked(tags: list[str], marker: str) -> list[str]:
    if marker in (t.strip() for t in tags[3::2]):
        return tags
    pairs = [(tags[k], tags[k + 1]) for k in range(2, len(tags) - 1, 2) if tags[k].strip() != "100"]
    common = [p for p in pairs if p[0].strip() in _COMMON]
    own = [p for p in pairs if p[0].strip() not in _COMMON]
    handle = [p for p in common if p[0].strip() == "5"]
    rest = [p for p in common if p[0].strip() != "5"]
    ordered = [*handle, ("100", "AcDbEntity"), *rest, ("100", marker), *own]
    return [*tags[:2], *(item for pair in ordered for item in pair)]
