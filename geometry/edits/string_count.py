"""Edits of how many strings there are, and which of them share a course."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from msgspec.structs import replace

from geometry.edits.parts import settled
from geometry.errors import GeometryError
from geometry.layout import Headstock, Side, String
from geometry.layout.names import Names
from geometry.saying import say
from geometry.strings.hands import counted_from, courses_from
from geometry.terms import given

MOST_STRINGS = 24
"""More are no headstock: the limit is there so that one wrong number cannot make thousands."""
FIRST_DIAMETER = 1.0
"""mm: of the only string of a layout that has none."""
THICKEST, THINNEST = 1.2, 0.25
"""Diameters of the first and the last string of several new ones, mm (invented; the maker types his own)."""


def graded(number: int, courses: bool = False, thickest: float = THICKEST, thinnest: float = THINNEST) -> tuple[String, ...]:
    """Two or more strings from the bass side on, each thinner than the last in the same ratio (mm); with `courses` in pairs.

    Strings and courses are named as the trade counts them (common practice, no source): the first is the thinnest, at the treble side.
    """
    return tuple(String(id=str(number - i), diameter=round(thickest * (thinnest / thickest) ** (i / (number - 1)), 2),
                        course=(number - i + 1) // 2 if courses else number - i) for i in range(number))


def strings_for_posts(layout: Headstock) -> Headstock:
    """A layout without strings with as many as it has posts, on none of them yet. GeometryError when it has some, or too few posts."""
    number = len(layout.tuners)
    if layout.strings:
        raise GeometryError(say("The layout has strings already."))
    if not 2 <= number <= MOST_STRINGS:
        raise GeometryError(say("Strings are made for 2 to {most} posts.", most=MOST_STRINGS))
    return settled(replace(layout, strings=graded(number)))


def add_string(layout: Headstock, side: Side) -> Headstock:
    """One more string outside the others on that side, as thick as its neighbour and wound as it, a course of its own, on no post yet.

    Strings that are numbered from 1 on stay so, from the side from which they are, and keep their posts. GeometryError at MOST_STRINGS.
    """
    old = layout.strings
    if len(old) >= MOST_STRINGS:
        raise GeometryError(say("There are {most} strings already: no more can be added.", most=MOST_STRINGS))
    beside = (old[0] if side == "bass" else old[-1]) if old else None
    new = String(id=Names(string.id for string in old).numbered(given("string")), course=1,
                 diameter=FIRST_DIAMETER if beside is None else beside.diameter, core=None if beside is None else beside.core)
    strings, joined = ((new, *old), (False, *_joined(old))) if side == "bass" else ((*old, new), (*_joined(old), False))
    return _with(layout, strings, joined, counted_from(old))


def remove_string(layout: Headstock, id: str) -> Headstock:
    """The layout without a string; its post stays, with none. GeometryError for an unknown string."""
    at = _index(layout, id)
    old, joined = layout.strings, list(_joined(layout.strings))
    if at + 1 < len(old) and not joined[at]:
        joined[at + 1] = False  # the next one now begins the course
    del joined[at]
    tuners = tuple(replace(tuner, string=None) if tuner.string == id else tuner for tuner in layout.tuners)
    return _with(replace(layout, tuners=tuners), (*old[:at], *old[at + 1:]), joined, counted_from(old))


def pair_string(layout: Headstock, id: str, paired: bool) -> Headstock:
    """A string in one course with the one before it, on its bass side, or in a course of its own again.

    GeometryError for an unknown string, and for the outermost one there.
    """
    at = _index(layout, id)
    if at == 0:
        raise GeometryError(say("String {id} is the outermost on the bass side: none lies before it to share a course with.", id=id))
    joined = list(_joined(layout.strings))
    joined[at] = bool(paired)
    return _with(layout, layout.strings, joined)


def pair_all(layout: Headstock, paired: bool) -> Headstock:
    """All strings two by two in courses, from the bass side on, or each in one of its own. GeometryError where one would be left over."""
    if paired and len(layout.strings) % 2:
        raise GeometryError(say("{strings} strings cannot all stand in pairs: add one, or pair those that do.", strings=len(layout.strings)))
    return _with(layout, layout.strings, [paired and i % 2 == 1 for i in range(len(layout.strings))])


def all_paired(layout: Headstock) -> bool:
    """Whether all strings stand two by two in courses."""
    return len(layout.strings) % 2 == 0 < len(layout.strings) and _joined(layout.strings) == tuple(i % 2 == 1 for i in range(len(layout.strings)))


def shares_course(layout: Headstock, at: int) -> bool:
    """Whether the string at that index is in one course with the one before it."""
    return _joined(layout.strings)[at]


def _index(layout: Headstock, id: str) -> int:
    for i, string in enumerate(layout.strings):
        if string.id == id:
            return i
    raise GeometryError(say("There is no string named {id}.", id=id))


def _joined(strings: Sequence[String]) -> tuple[bool, ...]:
    """Of each string, whether it is in one course with the one before it."""
    return (False, *(a.course == b.course for a, b in pairwise(strings)))[:len(strings)]


def _with(layout: Headstock, strings: Sequence[String], joined: Sequence[bool], numbered: Side | None = None) -> Headstock:
    """The layout with these strings, courses counted anew from the side from which they are, ids from the one in `numbered`, if any;
    posts follow their strings."""
    count, last = len(strings), len(joined) - sum(joined)
    first = courses_from(layout.strings)
    made, names, course = [], {}, 0
    for i, (string, with_last) in enumerate(zip(strings, joined, strict=True), 1):
        course += 0 if with_last else 1
        names[string.id] = string.id if numbered is None else str(i if numbered == "bass" else count + 1 - i)
        made.append(replace(string, id=names[string.id], course=course if first == "bass" else last + 1 - course))
    tuners = tuple(tuner if tuner.string is None else replace(tuner, string=names[tuner.string]) for tuner in layout.tuners)
    return settled(replace(layout, strings=tuple(made), tuners=tuners))
