"""Edits of the picture behind the drawing."""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry.errors import GeometryError
from geometry.layout import Headstock, validate
from geometry.layout.picture import Picture
from geometry.saying import say
from geometry.tracing.plane_map import PlaneMap, moved
from geometry.vectors import Vec2


def lay_picture(layout: Headstock, picture: Picture | None) -> Headstock:
    """The layout with a picture behind it, in place of any other; None takes it away."""
    return validate(replace(layout, picture=picture))


def move_picture(layout: Headstock, shift: Vec2 = (0.0, 0.0), turn: float = 0.0) -> Headstock:
    """The picture turned about the origin (rad) and then shifted (mm). GeometryError when it is locked."""
    picture = picture_of(layout)
    if picture.locked:
        raise GeometryError(say("The picture is locked: unlock it on the Outline stage to move it."))
    if not all(math.isfinite(v) for v in (*shift, turn)):
        raise GeometryError(say("A picture is moved by finite numbers."))
    return lay_picture(layout, replace(picture, place=moved(PlaneMap(picture.place), shift, turn).rows))


def set_picture(layout: Headstock, **fields: object) -> Headstock:
    """Opacity (0 to 1), hidden or locked changed. GeometryError without a picture or out of range."""
    picture = picture_of(layout)
    opacity = fields.get("opacity", picture.opacity)
    if not 0 <= opacity <= 1:
        raise GeometryError(say("A picture is shown between 0 and 100 %."))
    return lay_picture(layout, replace(picture, **fields))


def mirrored_picture(picture: Picture | None) -> Picture | None:
    """The picture mirrored about the centreline; twice gives the same place."""
    if picture is None:
        return None
    a, b, c, *rest = picture.place
    return replace(picture, place=(-a, -b, -c, *rest))


def picture_of(layout: Headstock) -> Picture:
    """The layout's picture; GeometryError when it has none."""
    if layout.picture is None:
        raise GeometryError(say("No picture lies behind the drawing: lay one there first."))
    return layout.picture
