"""The piece of wood before it is shaped."""

from typing import Literal

from geometry.layout.parts import Amount, Coord, Id, Part, Size

Side = Literal["bass", "treble"]


class Blank(Part, kw_only=True):
    """A square-edged blank, measured from the centreline and the nut line (mm).

    The square edges lie at x = -bass and x = +treble, the far end at y = tip,
    the wood goes on behind the nut line to y = -behind. `hard_wood` asks for
    shallower passes with slim router bits, as in hard maple.
    """

    bass: Size
    treble: Size
    tip: Size
    behind: Amount = 0.0
    thickness: Size
    hard_wood: bool = False

    def edge_x(self, side: Side) -> float:
        """x of a square edge, mm."""
        return self.treble if side == "treble" else -self.bass


class Ear(Part, kw_only=True):
    """A piece glued to a side of the blank, already counted in the blank's width.

    Its glue line lies `width` inside the square edge and runs from y = start to y = end (mm).
    """

    id: Id
    side: Side
    width: Size
    start: Coord
    end: Coord
