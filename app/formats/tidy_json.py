"""JSON that people can read and compare: stable key order, two spaces of indent, short lists on one line."""

from __future__ import annotations

import json

import msgspec


def tidy(record: object) -> bytes:
    """A record as file bytes: UTF-8, whole numbers without a decimal point, final newline.

    Half a character, which no file can hold, becomes a question mark: it must not cost the maker the rest.
    """
    return (_lines(_plain(msgspec.to_builtins(record)), 0) + "\n").encode("utf-8", "replace")


def _plain(value: object) -> object:
    """Lists for tuples, and whole numbers without a decimal point, so that a second save gives the same bytes."""
    if isinstance(value, dict):
        return {key: _plain(item) for key, item in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _lines(value: object, depth: int) -> str:
    """JSON text in which a list or record without nested records stays on one line while it is short."""
    flat = json.dumps(value, ensure_ascii=False)
    if not isinstance(value, dict | list) or not value:
        return flat
    nested = isinstance(value, dict) and depth == 0
    if not nested and len(flat) + 2 * depth <= 110 and not _holds_records(value):
        return flat
    pad, end = "  " * (depth + 1), "  " * depth
    if isinstance(value, dict):
        body = [f"{json.dumps(key, ensure_ascii=False)}: {_lines(item, depth + 1)}" for key, item in value.items()]
        return "{\n" + ",\n".join(pad + line for line in body) + "\n" + end + "}"
    return "[\n" + ",\n".join(pad + _lines(item, depth + 1) for item in value) + "\n" + end + "]"


def _holds_records(value: dict | list) -> bool:
    items = value.values() if isinstance(value, dict) else value
    return any(isinstance(item, dict) and item or isinstance(item, list) and _holds_records(item) for item in items)
