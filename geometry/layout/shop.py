"""The maker's shop: margins wanted, accuracy reached, and the rack of tools.

Every default is common practice, no source: the maker may change it.
"""

from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.hardware import DrillKind
from geometry.layout.parts import Amount, Id, Part, Size, Text, ToolId


class Margins(Part, kw_only=True):
    """Least wood or air wanted between features, mm. Touching the margin exactly passes."""

    bore_outline: Amount = 4.0
    screw_outline: Amount = 2.5
    bore_bore: Amount = 3.0
    screw_any: Amount = 2.0
    bore_slot: Amount = 3.0
    rail: Amount = 8.0
    web: Amount = 10.0
    side_cover: Amount = 3.0
    slot_nut: Amount = 10.0
    pin_any: Amount = 3.0
    post_wall: Amount = 1.0
    string_hole: Amount = 1.5
    string_air: Amount = 0.5
    seat_overhang: Amount = 0.5
    seat_gap: Amount = 0.5
    button_gap: Amount = 3.0
    blank_edge: Amount = 2.0
    feather: Amount = 3.0
    template_contact: Amount = 3.0
    template_web: Amount = 6.0
    base_rest: Amount = 10.0
    skate_angle: Annotated[float, Meta(ge=0, le=90)] = 8.0


class Accuracy(Part, kw_only=True):
    """How far the shop strays (half-widths; standard deviations are half of these)."""

    mark: Amount = 0.3
    wander_per_50: Amount = 0.5
    tilt_degrees: Amount = 0.5
    stop: Amount = 0.3
    template: Amount = 0.15
    paper_percent: Amount = 0.2


Speed = Annotated[float, Meta(gt=0, le=100000)]
"""Turns a minute."""


class RouterBit(Part, kw_only=True):
    """A router bit (mm).

    `stick_out` is from the router's base to the tip, bearing included, at full reach.
    `bearing_height` is how high the bearing is; None takes 5 mm. `marked_speed` is
    the highest speed printed on the cutter, turns a minute.
    """

    id: ToolId
    about: Text = ""
    cutter: Size
    cutting_length: Size
    shank: Size
    stick_out: Size
    bearing: Literal["none", "tip", "shank"] = "none"
    bearing_diameter: Size | None = None
    bearing_height: Size | None = None
    marked_speed: Speed | None = None


class GuideBush(Part, kw_only=True):
    """A guide bush in the router base (mm): outer and inner diameter, and how far it stands out."""

    id: ToolId
    outer: Size
    inner: Size
    length: Size


class Drill(Part, kw_only=True):
    """A drill (mm). `spur` is how far its centre point stands ahead of the full diameter."""

    id: ToolId
    kind: DrillKind
    diameter: Size
    length: Size
    point_angle: Annotated[float, Meta(gt=10, le=180)] | None = None
    spur: Amount | None = None


class DrillPress(Part, kw_only=True):
    """The drill press: table tilt to either side in degrees, quill travel and throat in mm.

    `base` is the length in mm of the board whose one side is raised by blocks to tilt the work.
    """

    tilt: Annotated[float, Meta(ge=0, le=90)] = 45.0
    quill: Size = 50.0
    throat: Size = 105.0
    base: Size = 100.0


class Router(Part, kw_only=True):
    """The router: base diameter and plunge (mm), speed settings (turns a minute), collets (shanks in mm).

    No collets listed means that any shank is held.
    """

    base: Size = 150.0
    plunge: Size = 60.0
    speeds: tuple[Speed, ...] = (10000.0, 13000.0, 16000.0, 19000.0, 22000.0, 24000.0)
    collets: tuple[Size, ...] = ()


class Rack(Part, kw_only=True):
    """The maker's bits, bushes, drills and machines."""

    bits: tuple[RouterBit, ...] = ()
    bushes: tuple[GuideBush, ...] = ()
    drills: tuple[Drill, ...] = ()
    press: DrillPress = DrillPress()
    router: Router = Router()


class Template(Part, kw_only=True):
    """What follows the template: a bit of the rack, with a guide bush or with its own bearing or shank.

    `board` says what the template for the slots is cut from: a board with the
    shape of the head, which serves for the outline too, or a board as large as
    the blank, so that pins may stand in the waste.
    """

    bit: ToolId | None = None
    bush: ToolId | None = None
    thickness: Size = 6.0
    board: Literal["outline", "blank"] = "outline"


class Tool(Part, kw_only=True):
    """A router bit of the rack, with a guide bush or without."""

    bit: ToolId
    bush: ToolId | None = None


class Route(Part, kw_only=True):
    """The maker's own choice of bits for a slot (its id) or for the "outline", in the order of their use.

    Without one the planner's best is taken; so it is when the rack no longer allows the choice.
    """

    of: Id
    tools: Annotated[tuple[Tool, ...], Meta(min_length=1, max_length=4)]
