"""Tuner hardware described by dimensions alone."""

from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.parts import Amount, Part, Point, Size, Text, ToolId

Mount = Literal["face", "side"]
DrillKind = Literal["twist", "brad", "forstner"]
BoreRole = Literal["post", "counterbore", "clearance", "screw", "pin"]
TAPERS = (20, 25, 30)
USUAL_TAPER = 30
"""Pegs of violins and violas narrow by 1 mm over 30 mm, of cellos over 25, older ones for gut over 20: encyclopaedia article on tuning
mechanisms for stringed instruments, section on tapered pegs. Those of ukuleles and flamenco guitars take the first (common practice, no
source)."""


class Bore(Part, kw_only=True):
    """One drilling that a tuner needs, in the tuner's own frame.

    `at` is (u, v) in mm from the post axis. Face mount: u runs out towards the
    button, v to the left of it, seen on the face. Side mount: u runs along the
    edge to the tip, v down towards the back. `surface` is where the drill goes
    in: the face, the back, or (side mount) the seat on the edge. Without a
    depth the bore goes through; a bore from the seat needs one. `reamed` is how
    wide it is opened by hand at that surface for a peg that its taper holds:
    from there on it narrows by 1 mm over `taper` mm. None: it stays as drilled.
    """

    role: BoreRole
    diameter: Size
    surface: Literal["face", "back", "seat"]
    at: Point = (0.0, 0.0)
    depth: Size | None = None
    drill: DrillKind = "brad"
    reamed: Size | None = None
    taper: Annotated[float, Meta(ge=5, le=200)] = USUAL_TAPER


class Footprint(Part, kw_only=True):
    """The plate or body where it lands, a rectangle about the post axis (mm).

    It reaches `before` and `behind` along u and half of `across` to either
    side along v. Face mount: on the back; side mount: on the edge.
    """

    before: Amount
    behind: Amount
    across: Size


class Post(Part, kw_only=True):
    """The turning post (mm).

    Side mount: `length` and `string_hole` are measured from the seat inwards, and
    the string hole has to lie inside a slot. Face mount: they and `winding` are
    measured upwards, from the face of a head that the tuner is fitted to, or from
    the `plate` of a loose one: then the thickness of the wood takes from what
    stands out. `winding` is where the string comes off the lowest turn of a face
    mount's post; None where it comes straight out of the hole.
    """

    diameter: Size
    length: Size
    string_hole: Size
    winding: Size | None = None
    measured: Literal["face", "plate"] = "face"

    def above(self, level: float, wood: float) -> float:
        """Of a face mount in wood of that thickness, how far above the face a level of the post is (mm); negative in the wood."""
        return level - wood if self.measured == "plate" else level

    def comes_off(self, wood: float) -> float:
        """Of a face mount in wood of that thickness, how far above the face the string comes off the post (mm)."""
        return self.above(self.string_hole if self.winding is None else self.winding, wood)


class Button(Part, kw_only=True):
    """What the fingers turn (mm), a box.

    Face mount: it lies behind the back and its far end is `reach` from the post
    axis along u. Side mount: it points to the back, its far end `reach` below
    the post axis. `stand` is from the seat to the middle of its thickness.
    A button of a face mount that lies across the post axis (`reach` less than
    `length`) turns about that axis, as a peg does.
    """

    reach: Size
    length: Size
    width: Size
    thickness: Size
    stand: Amount

    @property
    def straight(self) -> bool:
        """Whether it lies behind the post of a face mount and turns about its axis."""
        return self.reach < self.length


class Pattern(Part, kw_only=True):
    """A kind of tuner.

    `least_wood` and `most_wood` (mm): the thinnest and the thickest head that a face
    mount clamps, with its bushing and washer; None where there is no such limit.
    """

    id: ToolId
    about: Text = ""
    mount: Mount
    bores: Annotated[tuple[Bore, ...], Meta(min_length=1, max_length=40)]
    seat: Footprint
    post: Post
    button: Button
    least_wood: Size | None = None
    most_wood: Size | None = None
