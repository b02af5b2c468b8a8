"""The nut and the strings, as the layout keeps them."""

from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.parts import Id, Part, Size


class Nut(Part, kw_only=True):
    """The nut (mm, degrees).

    `spread` is from the centre of the first string to the centre of the last.
    `spacing` sets strings (or courses) at equal centres or with equal gaps
    between them. `pair` is the centre distance within a course of two.
    """

    width: Size = 44.0
    spread: Size = 36.0
    spacing: Literal["centres", "gaps"] = "centres"
    pair: Size = 2.2
    height: Size = 6.0
    pitch: Annotated[float, Meta(ge=0, le=40)] = 13.0
    scale_length: Size = 648.0


class String(Part, kw_only=True):
    """One string, from the bass side on. `course` strings with one number share a course.

    `note` is what it is tuned to ("E2", "F#3"; anything else counts as a remark). `core` is the
    diameter of the steel core of a wound string (mm), None for a plain one. Without a
    `scale_length` of its own (mm) it takes the nut's.
    """

    id: Id
    diameter: Annotated[float, Meta(gt=0, le=10)]
    course: Annotated[int, Meta(ge=1, le=60)]
    note: str = ""
    core: Annotated[float, Meta(gt=0, le=10)] | None = None
    scale_length: Size | None = None
