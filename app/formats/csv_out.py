"""Tables as CSV (RFC 4180: CRLF, quotes doubled) that a spreadsheet reads as data, never as formulas.

Their heads are words of the language in use, and so are their numbers: a
spreadsheet that writes a comma before the decimals takes `12.5` for a date and
a comma for part of a number, so there semicolons part the cells. What is to be
read by a program is `check --json` and the layout file, which know no language.
"""

from __future__ import annotations

import csv
import io
import unicodedata
from collections.abc import Iterable, Sequence
from decimal import Decimal
from pathlib import Path

from app.formats.saving import save_bytes
from geometry.saying import decimal_sign, written

Cell = str | float | int | Decimal | None

FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n")
"""Text that begins so would be run as a formula by a spreadsheet; it gets an apostrophe in front.

So does text that begins so once what is not seen is left out, or in the wide letters of East Asian scripts.
"""


def csv_text(head: Sequence[str], rows: Iterable[Sequence[Cell]]) -> str:
    """A table with one line of headings. Numbers are plain, with the language's decimal sign and at most 4 decimals,
    a Decimal with every digit that it has; None is an empty cell. Cells are parted by a comma, or by a semicolon
    where the decimal sign is one."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, delimiter=";" if decimal_sign() == "," else ",", lineterminator="\r\n")
    writer.writerow([_cell(name) for name in head])
    writer.writerows([_cell(value) for value in row] for row in rows)
    return out.getvalue()


def write_csv(head: Sequence[str], rows: Iterable[Sequence[Cell]], path: Path) -> None:
    """Save the table in UTF-8 with the mark that spreadsheets look for. FormatError when that fails."""
    save_bytes(path, csv_text(head, rows).encode("utf-8-sig"))


def _cell(value: Cell) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        return "'" + value if _starts_a_formula(value) else value
    if isinstance(value, Decimal):
        return written(format(value, "f"))
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else written(text)


def _starts_a_formula(text: str) -> bool:
    seen = next((char for char in text if char.isprintable() and not char.isspace()), "")
    return text.startswith(FORMULA_STARTS) or unicodedata.normalize("NFKC", seen).startswith(("=", "+", "-", "@", "\u2212"))
