"""Sentences for makers: short, concrete, in the trade's words. Lengths are marked, see said.py."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from geometry.checks.said import length, rounded_down
from geometry.saying import number, say
from geometry.solids.drilling import Drilling
from geometry.terms import term

SORTS = ("side bore", "bore", "counterbore", "hole", "screw", "pin hole", "locating pin")
"""What a drilling is to the checks, in the order in which a sentence names two of them."""


_SORT_OF = {"counterbore": "counterbore", "pin": "pin hole", "hole": "hole", "locating": "locating pin"}


def sort_of(drilling: Drilling) -> str:
    """Which of SORTS a drilling is. Screws and counterbores are called so on any side."""
    if drilling.role in ("post", "clearance"):
        return "bore" if drilling.upright else "side bore"
    return "screw" if drilling.pilot else _SORT_OF[drilling.role]


def is_small(drilling: Drilling) -> bool:
    """Whether a drilling holds a screw or a moulded pin, which want less wood about them than a bore."""
    return drilling.pilot or drilling.role == "pin"


def name(drilling: Drilling) -> str:
    """How a sentence calls a drilling: `side bore of treble side 3`, `hole peep`, `jig hole`, `locating pin nut pin`."""
    sort = sort_of(drilling)
    if sort == "hole" and term(sort) in drilling.of.split():
        return drilling.of
    if sort in ("hole", "locating pin"):
        return f"{term(sort)} {drilling.of}"
    if drilling.role == "post" and drilling.upright:
        sort = "post bore"
    elif drilling.role == "clearance":
        sort = "clearance bore"
    return say("{sort} of {name}", sort=term(sort), name=drilling.of)


def first(text: str) -> str:
    """The text with a capital letter."""
    return text[:1].upper() + text[1:]


def mm(value: float) -> str:
    """A length to a tenth, or to a hundredth below 1 mm: `3.0`, `0.25`."""
    return length(float(value), 2 if abs(value) < 0.995 else 1)


def into(measured: float) -> str:
    """How far two things are into each other, of a clearance in mm that is below nothing: never told as less than it is."""
    return length(-float(measured), 2 if abs(measured) < 0.995 else 1, up=True)


def size(value: float) -> str:
    """The size of a tool in mm with no more decimals than it has, three at most: `10`, `12.7`."""
    return length(float(value), min(3, len(f"{value:g}".partition(".")[2])))


def both(measured: float, needed: float) -> tuple[str, str]:
    """What there is and what is wanted, with enough decimals to differ; what there is, never as more than it is."""
    decimals = apart(measured, needed)
    return length(float(measured), decimals, down=True), length(float(needed), decimals)


def apart(measured: float, needed: float) -> int:
    """With how many decimals, 1 to 4, two lengths are told so that they differ; 2 at least below 1 mm."""
    for decimals in (1, 2, 3) if abs(measured) >= 0.995 else (2, 3):
        if number(needed, f".{decimals}f") not in (number(measured, f".{decimals}f"), rounded_down(measured, decimals)):
            return decimals
    return 4


def up(value: float) -> float:
    """A length rounded up to the next tenth of a millimetre, so that doing as told is enough."""
    return math.ceil(float(value) * 10 - 1e-6) / 10


def aslant(lacking: float, cosine: float) -> float:
    """mm to go on a way at an angle of that cosine (above 0) to the nearest one, to be `lacking` mm farther from a wall: enough of
    a straight one and of one that bulges."""
    return lacking / max(cosine, 0.1)


def tenths(value: float) -> str:
    """What has to be done, in tenths of a mm rounded up: `1.9`."""
    return length(up(value), 1, exact=True)


def clearance(measured: float, needed: float, cut: str, near: str, /, **fields: object) -> str:
    """What a clearance in mm is told as: below nothing by `cut`, a sentence with {measured}, how far in; else by `near`, with {a}, what
    there is, and {b}, what is wanted. Both are literals, as those of say."""
    if measured < 0:
        return say(cut, measured=into(measured), **fields)
    a, b = both(measured, needed)
    return say(near, a=a, b=b, **fields)


def gap_text(one: str, two: str, measured: float, needed: float) -> str:
    """`Side bore of a passes 1.4 mm from the counterbore of b; 3.0 mm wanted.` or how far it cuts in."""
    if abs(measured) < 0.005:
        return say("{one} touches the {two}; {needed} mm wanted.", one=first(one), two=two, needed=mm(needed))
    return clearance(measured, needed, "{one} cuts {measured} mm into the {two}; {needed} mm of wood wanted between them.",
                     "{one} passes {a} mm from the {two}; {b} mm wanted.", one=first(one), two=two, needed=mm(needed))


def listed(names: list[str] | tuple[str, ...]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    if len(names) == 1:
        return names[0]
    return say("{names} and {last}", names=", ".join(names[:-1]), last=names[-1])


def few(names: Sequence[str], most: int) -> str:
    """As listed; of more than `most` names the first of them, and how many more: `a, b and 7 more`."""
    if len(names) <= most:
        return listed(tuple(names))
    return say("{names} and {n} more", names=", ".join(names[:most]), n=len(names) - most)


def told_first(sentences: Sequence[str], most: int, more: Callable[[int], str]) -> list[str]:
    """The first `most` of some sentences; where there are others, then what `more` says of their number."""
    left = len(sentences) - most
    return [*sentences[:most], *([more(left)] if left > 0 else [])]
