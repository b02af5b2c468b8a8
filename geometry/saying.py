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
- Keys, ids, kinds, names of files, layers and features are never said; what the program calls a new feature is `given`, see terms.py.
- Numbers are given as numbers, `say("{hours:.1f} hours", hours=1.5)`, and one that
  stands alone is `number(1.5, ".1f")`: both have the decimal sign of the language.
  What a machine reads is written with `format` and keeps its point.

Without a catalogue everything is English, exactly as written. The language is
chosen before the rooms are loaded, so a constant of a module may be said too.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

Lookup = Callable[[str, str], str]
"""From the English text and what it is about to its translation; `""` where there is none."""

LANGUAGE = "PEGWRIGHT_LANGUAGE"
"""In the environment of a process that helps this one: the language that it is to answer in."""

POINT, COMMA = None, {ord("."): ",", ord(","): "\N{NO-BREAK SPACE}"}
"""What becomes of the signs in a number as Python writes it, `1,234.5`. Where a comma stands before the decimals, thousands are
set apart by a space, which nobody takes for a decimal sign."""

SIGNS = {"en": POINT}
"""Of each language that does not write a comma before the decimals, as most do."""


class _Float(float):
    def __format__(self, spec: str) -> str:
        return number(float(self), spec)


class _Int(int):
    def __format__(self, spec: str) -> str:
        return number(int(self), spec)


_lookup: Lookup | None = None
_language = "en"
_signs: dict[int, str] | None = POINT
_known: dict[tuple[str, str], str] = {}


def use(lookup: Lookup | None, language: str = "en") -> None:
    """Say everything by this catalogue from now on; None for English. What was said before stays as it was."""
    global _lookup, _language, _signs
    _lookup, _language, _signs = lookup, language, SIGNS.get(language, COMMA)
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
    if fields and _signs is not None:
        fields = {name: _with_signs(value) for name, value in fields.items()}
    return text.format_map(fields) if fields else text


def count(n: int, one: str, many: str, /, *, about: str = "", **fields: object) -> str:
    """`one` for 1 and `many` for every other number, with `{n}` and the other fields filled in."""
    return say(one if n == 1 else many, about=about, n=n, **fields)


def number(value: float, spec: str = "") -> str:
    """`format(value, spec)` with the decimal sign of the language in use: `12,5` in German.

    `,` in the spec sets thousands apart.
    """
    return written(format(value, spec))


def written(digits: str) -> str:
    """A number as Python writes it, with the signs of the language in use."""
    return digits if _signs is None else digits.translate(_signs)


def decimal_sign() -> str:
    """`.` or `,`."""
    return written(".")


def number_list(texts: Iterable[str]) -> str:
    """Numbers side by side, parted so that none reads as the decimals of the one before: `6, 12.7`, in German `6; 12,7`."""
    return ("; " if decimal_sign() == "," else ", ").join(texts)


def within(sentence: str) -> str:
    """A sentence that goes on behind a colon: English begins it small, a translation stays as it is."""
    return sentence if _lookup is not None else sentence[:1].lower() + sentence[1:]


def _with_signs(value: object) -> object:
    if isinstance(value, float):
        return _Float(value)
    return _Int(value) if type(value) is int else value


def _translated(text: str, about: str) -> str:
    key = (text, about)
    found = _known.get(key)
    if found is None:
        found = _known[key] = _lookup(text, about) or text
    return found
