"""Marks of a drawing: frozen values that tests can compare, in mm, y up.

A mark carries the name of a style (what it is, not how it looks), the id of
the feature that owns it ("" for none), and exact curves. Each consumer decides
how a style looks: colours on the screen, layers in DXF, line weights on paper.
"""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from geometry.curves import Path
from geometry.vectors import Vec2

STYLES = (
    "blank", "waste", "wood", "outline", "slot", "pocket that is there", "template", "post bore", "counterbore", "clearance bore",
    "screw pilot", "pin hole", "hole", "hole that is there", "locating pin hole", "side bore", "axis", "seat", "button", "post",
    "centreline", "nut line", "fold", "string", "glue line", "glued on", "cross", "dimension", "note", "check bar", "tile", "section line",
    "template board", "router base", "shank", "cutter", "follower", "left standing", "grain risk", "ramp", "flat", "feed",
    "waste hole", "margin kept", "margin short", "spoiled", "removed", "proposed", "measured",
)
"""Every style a mark may have."""


class Stroke(Struct, frozen=True):
    """A line along a path."""

    path: Path
    style: str
    owner: str = ""


class Area(Struct, frozen=True):
    """A filled area with openings, outlined too."""

    outer: Path
    style: str
    owner: str = ""
    openings: tuple[Path, ...] = ()


class Disc(Struct, frozen=True):
    """A true circle. `hidden` says that it lies on the far side of what is looked at: dashed, never pricked."""

    centre: Vec2
    radius: float
    style: str
    owner: str = ""
    hidden: bool = False


class Cross(Struct, frozen=True):
    """Two hairlines that mark a point: half arms of `arm` mm, turned by `angle` rad."""

    centre: Vec2
    arm: float
    style: str = "cross"
    owner: str = ""
    angle: float = 0.0


class Label(Struct, frozen=True):
    """Text of `height` mm (capital height), turned by `angle` rad about its anchor."""

    text: str
    at: Vec2
    height: float
    style: str = "note"
    owner: str = ""
    angle: float = 0.0
    anchor: Literal["left", "middle", "right"] = "left"


Mark = Stroke | Area | Disc | Cross | Label
Drawing = tuple[Mark, ...]
