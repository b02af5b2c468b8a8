"""Every sentence of the program, found in its source: the literals of say(), count() and clearance(), and the words of terms.py."""

from __future__ import annotations

import ast
import string
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import NamedTuple

from geometry.terms import ABOUT, FIELD, FIELDS, NAME, NAMES, TERMS, TOOLS

ROOT = Path(__file__).resolve().parent.parent.parent
ROOMS = ("app", "geometry")
THE_SAYING_ITSELF = ("geometry/saying.py", "geometry/terms.py")
CLEARANCES = "geometry.checks.words"
SAYING = "geometry.saying"
LITERALS = {"say": (0, 1, ()), "count": (1, 2, ("n",)), "clearance": (2, 2, ("measured", "a", "b"))}
"""Of each function: how many arguments stand before its texts, how many texts there are, and the fields that it fills in itself."""


class Message(NamedTuple):
    """An English text, and what it is about where that has to be told apart."""

    text: str
    about: str


class Call(NamedTuple):
    """One call of one of these: its messages (None where the text is no literal) and the fields that it gives."""

    where: str
    messages: tuple[Message, ...] | None
    given: frozenset[str]
    spread: bool
    """whether fields come by ** too, so that they cannot be known"""


def sources() -> list[Path]:
    """Every file of the program in which something may be said."""
    found = [file for room in ROOMS for file in sorted((ROOT / room).rglob("*.py"))]
    return [file for file in found if file.relative_to(ROOT).as_posix() not in THE_SAYING_ITSELF]


@cache
def calls() -> tuple[Call, ...]:
    """Every such call in the program, read once."""
    return tuple(_calls())


def _calls() -> Iterator[Call]:
    for file in sources():
        tree = ast.parse(file.read_text(encoding="utf-8"))
        ours = {name.name for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) and node.module in (SAYING, CLEARANCES)
                for name in node.names}
        made = [node for node in tree.body if isinstance(node, ast.FunctionDef) and node.name in LITERALS]
        ours |= {one.name for one in made}
        itself = {id(node) for one in made for node in ast.walk(one)}
        for node in ast.walk(tree):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ours & LITERALS.keys() and id(node) not in itself:
                yield _call(node, f"{file.relative_to(ROOT).as_posix()}:{node.lineno}")


def messages() -> set[Message]:
    """Everything that wants a translation."""
    found = {message for call in calls() for message in call.messages or ()}
    return found | {Message(word, ABOUT) for word in TERMS} | {Message(word, FIELD) for word in FIELDS.values()} | {Message(word, NAME) for word in NAMES | TOOLS}


def fields(text: str) -> set[str]:
    """Names of the {fields} of a text."""
    return {name.partition(".")[0].partition("[")[0] for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def _call(node: ast.Call, where: str) -> Call:
    before, many, filled = LITERALS[node.func.id]
    texts = node.args[before:]
    about = next((_text(word.value) for word in node.keywords if word.arg == "about"), "")
    given = {word.arg for word in node.keywords if word.arg not in (None, "about")} | set(filled)
    literal = [_text(text) for text in texts]
    whole = len(literal) == many and None not in literal and about is not None
    return Call(where, tuple(Message(text, about) for text in literal) if whole else None, frozenset(given),
                any(word.arg is None for word in node.keywords))


def _text(node: ast.expr) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None
