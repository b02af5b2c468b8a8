"""The piece of wood before it is shaped."""

from typing import Literal

from geometry.layout.parts import Amount, Coord, Id, Part, Size

Side = Literal["bass", "treble"]
OTHER: dict[Side, Side] = {"bass": "treble", "treble": "bass"}


class Blank(Part, kw_only=True):
    """A square-edged blank, measured from the centreline and the nut line (mm).

    The square edges lie at x = -bass and x = +treble, the far end at y = tip,
    the wood goes on behind the nut line to y = -behind. `hard_wood` asks for
    shallower passes with slim router bits, as in hard maple. `finish` says whether the head gets lacquer or oil when it has its shape.

    `thickness` is from face to back as it is drilled: `face_veneer` and `back_veneer`, glued over it from the nut line to the tip, are counted
    in. `scarf` says where the glue line of a scarf joint comes out on the face of the core (under the veneer), from the nut line
    along the centreline; 0 for a joint that lies behind the nut line, None for a head without one.
    """

    bass: Size
    treble: Size
    tip: Size
    behind: Amount = 0.0
    thickness: Size
    hard_wood: bool = False
    finish: bool = False
    face_veneer: Amount = 0.0
    back_veneer: Amount = 0.0
    scarf: Amount | None = None

    @property
    def core(self) -> float:
        """How thick the wood between the veneers is, mm."""
        return self.thickness - self.face_veneer - self.back_veneer

    @property
    def veneers(self) -> tuple[tuple[Literal["face", "back"], float, float], ...]:
        """(surface, from, to below the face) of each veneer, mm."""
        found = []
        if self.face_veneer:
            found.append(("face", 0.0, self.face_veneer))
        if self.back_veneer:
            found.append(("back", self.thickness - self.back_veneer, self.thickness))
        return tuple(found)

    def edge_x(self, side: Side) -> float:
        """x of a square edge, mm."""
        return self.treble if side == "treble" else -self.bass

    def glue_x(self, ear: "Ear") -> float:
        """x of the glue line of an ear, mm."""
        return self.treble - ear.width if ear.side == "treble" else ear.width - self.bass


class Ear(Part, kw_only=True):
    """A piece glued to a side of the blank, already counted in the blank's width.

    Its glue line lies `width` inside the square edge and runs from y = start to y = end (mm).
    """

    id: Id
    side: Side
    width: Size
    start: Coord
    end: Coord
