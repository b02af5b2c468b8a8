"""Tables as CSV (RFC 4180: CRLF, quotes doubled) that a spreadsheet reads as data, never as formulas.

Their heads are words of the language in use, and so are their numbers: a
spreadsheet that writes a comma before the decimals takes `12.5` for a date and
a comma for part of a number, so there semicolons part the cells. What is to be
read by a program is `check --json` and the layout file, which know no language.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence
from decimal import Decimal

from geometry.saying import decimal_sign, written

Cell = str | float | int | Decimal | None

FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n")
"""Text that begins so would be run as a formula by a spreadsheet; it gets an apostrophe in front.

So does text that begins so once what is not seen is left out, or in the wide letters of East Asian scripts. And so does
what stands so behind another sign that parts cells: a spreadsheet of another country parts them there and knows no quotes
in the middle of what is a cell to it.
"""
PARTING = re.compile(r"([,;\t\r\n]+)")
"""Signs at which one spreadsheet or another begins a new cell; text that holds one is put in quotes."""


def csv_text(head: Sequence[str], rows: Iterable[Sequence[Cell]]) -> str:
    """A table with one line of headings. Numbers are plain, with the language's decimal sign and at most 4 decimals,
    a Decimal with every digit that it has; None is an empty cell. Cells are parted by a comma, or by a semicolon
    where the decimal sign is one."""
    parting = ";" if decimal_sign() == "," else ","
    return "".join(parting.join(_cell(value, parting) for value in row) + "\r\n" for row in (head, *rows))


def csv_bytes(head: Sequence[str], rows: Iterable[Sequence[Cell]]) -> bytes:
    """The table in UTF-8 with the mark that spreadsheets look for."""
    return csv_text(head, rows).encode("utf-8-sig")


def _cell(value: Cell, parting: str) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        return _quoted(_harmless(value, parting))
    if isinstance(value, Decimal):
        return written(format(value, "f"))
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else written(text)


def _harmless(text: str, parting: str) -> str:
    """The text with an apostrophe wherever a spreadsheet could begin a formula."""
    parts = PARTING.split(text)
    for at in range(0, len(parts), 2):
        if _starts_a_formula(parts[at]) and (at == 0 or parts[at - 1].strip(parting)):
            parts[at] = "'" + parts[at]
    return ("'" if text.startswith(("\t", "\r", "\n")) else "") + "".join(parts)


def _quoted(text: str) -> str:
    return '"' + text.replace('"', '""') + '"' if '"' in text or PARTING.search(text) else text


def _starts_a_formula(text: str) -> bool:
    seen = next((char for char in text if char.isprintable() and not char.isspace()), "")
    return text.startswith(FORMULA_STARTS) or unicodedata.normalize("NFKC", seen).startswith(("=", "+", "-", "@", "\u2212"))
