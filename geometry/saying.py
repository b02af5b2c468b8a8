"""Every word that a maker reads is said here, in the language in use.

Rules for whoever writes a sentence:

- `say("Move {slot} {amount} mm away.", slot=id, amount=tenths(by))`: the English
  text is a literal and the key of the catalogue; what varies is a named field.
  No f-string inside, no `+`, no literal made up at run time.
- Whole sentences. A language turns the order of words round and bends them, so
  nothing is glued from pieces: write two sentences with an `if` between them.
- `count(n, "{n} hole", "{n} holes")` wherever a number decides the form; never an "s".
- One English word that wants two translations gets `about="what is meant"`.
- A word that is a key as well (`treble`, `counterbore`, a grade) stays English in
  code and files and is shown by `term(key)`, see terms.py.
- Keys, ids, kinds, names of files, layers and features are never said.

Without a catalogue everything is English, exactly as written. The language is
chosen before the rooms are loaded, so a constant of a module may be said too.
"""

from __future__ import annotations

import string
from collections.abc import Callable

Lookup = Callable[[str, str], str]
"""From the English text and what it is about to its translation; `""` where there is none."""

LANGUAGE = "PEGWRIGHT_LANGUAGE"
"""In the environment of a process that helps this one: the language that it is to answer in."""

GROUPED = ":,"
"""How a field asks for its thousands to be set apart: by a comma in English, elsewhere by a space, which nobody takes
for a decimal sign."""


class _Spaced(string.Formatter):
    def format_field(self, value: object, spec: str) -> str:
        if spec.startswith(","):
            return format(value, "_" + spec[1:]).replace("_", "\N{NO-BREAK SPACE}")
        return format(value, spec)


_SPACED = _Spaced()
_lookup: Lookup | None = None
_language = "en"
_known: dict[tuple[str, str], str] = {}


def use(lookup: Lookup | None, language: str = "en") -> None:
    """Say everything by this catalogue from now on; None for English. What was said before stays as it was."""
    global _lookup, _language
    _lookup, _language = lookup, language
    _known.clear()


def language() -> str:
    """The code of the language in use."""
    return _language


def say(text: str, /, *, about: str = "", **fields: object) -> str:
    """The sentence in the language in use, its `{fields}` filled in; English where no translation is known.

    Without fields braces stand for themselves. KeyError for a field that is not given.
    """
    if _lookup is not None:
        text = _translated(text, about)
        if fields and GROUPED in text:
            return _SPACED.vformat(text, (), fields)
    return text.format_map(fields) if fields else text


def count(n: int, one: str, many: str, /, *, about: str = "", **fields: object) -> str:
    """`one` for 1 and `many` for every other number, with `{n}` and the other fields filled in."""
    return say(one if n == 1 else many, about=about, n=n, **fields)


def within(sentence: str) -> str:
    """A sentence that goes on behind a colon: English begins it small, a translation stays as it is."""
    return sentence if _lookup is not None else sentence[:1].lower() + sentence[1:]


def _translated(text: str, about: str) -> str:
    key = (text, about)
    found = _known.get(key)
    if found is None:
        found = _known[key] = _lookup(text, about) or text
    return found
