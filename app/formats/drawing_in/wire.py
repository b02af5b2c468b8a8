"""A drawing read, as JSON and back: what the worker process sends. Numbers survive to the last bit."""

from __future__ import annotations

import msgspec

from app.formats.drawing_in.result import DrawingRead
from app.formats.errors import FormatError

MARK = b"%"
"""Before a line that tells how much is done, 0..1; no answer begins with it."""


class _Answer(msgspec.Struct):
    """Either a drawing or the one sentence of a FormatError."""

    read: DrawingRead | None = None
    refusal: str | None = None


def encode(read: DrawingRead) -> bytes:
    """The drawing as JSON."""
    return msgspec.json.encode(_Answer(read=read))


def encode_refusal(sentence: str) -> bytes:
    """A refusal as JSON."""
    return msgspec.json.encode(_Answer(refusal=sentence))


def decode(data: bytes) -> DrawingRead:
    """The drawing. Raises FormatError with the worker's sentence, or ValueError for anything else than an answer."""
    try:
        answer = msgspec.json.decode(data, type=_Answer)
    except msgspec.MsgspecError as error:
        raise ValueError("not an answer of the import worker") from error
    if answer.refusal is not None:
        raise FormatError(answer.refusal)
    if answer.read is None:
        raise ValueError("an empty answer of the import worker")
    return answer.read
