"""A style sheet taken apart once from its start to its end: no text makes that take longer than its length."""

from __future__ import annotations

import re
from collections.abc import Iterator

_SIGNS = re.compile(r"[{};]")


def rules_of(sheet: str) -> Iterator[tuple[str, str]]:
    """(selectors, declarations) of each rule, in their order; what begins with @ is left out with all that is in it."""
    sheet = _without_comments(sheet)
    depth, start, head = 0, 0, ""
    for found in _SIGNS.finditer(sheet):
        sign = found[0]
        if sign == "{":
            if depth == 0:
                head, start = sheet[start:found.start()].strip(), found.end()
            depth += 1
        elif sign == "}":
            if depth == 1 and head and not head.startswith("@"):
                yield head, sheet[start:found.start()]
            depth = max(0, depth - 1)
            start = found.end() if depth == 0 else start
        elif depth == 0:  # the end of a statement without a block, such as @import
            start = found.end()


def _without_comments(sheet: str) -> str:
    """The sheet with a space for each comment; one that is never closed goes on to the end (CSS 2.1, 4.2)."""
    parts, at = [], 0
    while (opens := sheet.find("/*", at)) >= 0:
        parts.append(sheet[at:opens])
        closes = sheet.find("*/", opens + 2)
        at = len(sheet) if closes < 0 else closes + 2
    return " ".join([*parts, sheet[at:]]).replace("<!--", " ").replace("-->", " ")
