"""Broken files by chance: seeded mutations of sound ones, the same on every machine."""

from __future__ import annotations

import random
import re

NUMBERS = (b"0", b"-0", b"1e300", b"-1e300", b"1e-300", b"nan", b"inf", b"-inf", b"1e999", b"99999999999999999999",
           b"-1", b"0.5", b"1,5", b"null", b'""', b"[]", b"{}", b"true", b"3.0000000001")
JUNK = (b"\x00", b"\xff\xfe", b"\xef\xbb\xbf", b"\xed\xa0\x80", "\u202e".encode(), "🎸".encode(), b"\\ud800", b'"',
        b"<", b"&", b"]]>", b"<!ENTITY a \"b\">", b"\r", b"  0\nSECTION\n", b"  0\nEOF\n", b"{", b"[", b"}", b"]")
_NUMBER = re.compile(rb"-?\d+(?:\.\d+)?")


def mutated(data: bytes, chance: random.Random) -> bytes:
    """The data with one to four things done to it."""
    for _ in range(chance.choice((1, 1, 2, 4))):
        data = chance.choice(_WAYS)(data, chance)
    return data


def _spot(data: bytes, chance: random.Random) -> int:
    return chance.randrange(len(data) + 1)


def _number(data: bytes, chance: random.Random) -> bytes:
    found = list(_NUMBER.finditer(data))
    if not found:
        return data
    one = chance.choice(found)
    return data[:one.start()] + chance.choice(NUMBERS) + data[one.end():]


def _flip(data: bytes, chance: random.Random) -> bytes:
    if not data:
        return data
    at = chance.randrange(len(data))
    return data[:at] + bytes([chance.randrange(256)]) + data[at + 1:]


def _junk(data: bytes, chance: random.Random) -> bytes:
    at = _spot(data, chance)
    return data[:at] + chance.choice(JUNK) * chance.choice((1, 1, 3, 200)) + data[at:]


def _cut(data: bytes, chance: random.Random) -> bytes:
    a, b = sorted((_spot(data, chance), _spot(data, chance)))
    return data[:a] + data[b:] if chance.random() < 0.5 else data[:a]


def _lines(data: bytes, chance: random.Random) -> bytes:
    """A line dropped, doubled or moved: what a text tool does to a file."""
    lines = data.split(b"\n")
    i, j = chance.randrange(len(lines)), chance.randrange(len(lines))
    what = chance.random()
    if what < 0.35:
        del lines[i]
    elif what < 0.7:
        lines.insert(j, lines[i])
    else:
        lines[i], lines[j] = lines[j], lines[i]
    return b"\n".join(lines)


def _piece(data: bytes, chance: random.Random) -> bytes:
    """A piece of the file put in once more somewhere else."""
    a = _spot(data, chance)
    piece = data[a:a + chance.choice((1, 10, 100, 1000))]
    at = _spot(data, chance)
    return data[:at] + piece + data[at:]


_WAYS = (_number, _number, _number, _flip, _junk, _cut, _lines, _lines, _piece)
