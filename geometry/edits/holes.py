"""Single holes: made into what they are for, there already, or for the screw of a string retainer."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry.edits.adding import add_tuner, remove_features
from geometry.edits.other_hand import hand_for_edge
from geometry.edits.parts import hole_of, with_feature
from geometry.edits.tuners import pattern_of
from geometry.errors import GeometryError
from geometry.layout import Headstock, Retainer
from geometry.saying import say


def tuners_for_holes(layout: Headstock, ids: Iterable[str], pattern: str) -> Headstock:
    """Tuners through the face in the places of single holes, numbered from the nut on; the pattern brings its own bores.

    Each button points squarely at the edge that is nearest; of hardware that comes as left and right the edge of the hole nearest
    to the nut takes the one that was chosen, the other edge its mirror image. GeometryError for what is no hole, or hardware for the side.
    """
    if pattern_of(layout, pattern).mount != "face":
        raise GeometryError(say("{hardware} goes through the side, so it has no place in a hole through the face.", hardware=pattern))
    holes = [hole_of(layout, id) for id in dict.fromkeys(ids)]
    layout = remove_features(layout, [hole.id for hole in holes])
    for hole in sorted(holes, key=lambda one: one.at[1]):
        layout, own = hand_for_edge(layout, pattern, hole.at)
        layout = add_tuner(layout, own, hole.at)
    return layout


def fitting_hardware(layout: Headstock, diameter: float) -> list[str]:
    """Hardware through the face; first that whose widest bore on the post's axis comes nearest to a diameter (mm)."""
    found = [(abs(max(b.diameter for b in pattern.bores if b.at == (0.0, 0.0)) - diameter), i, pattern.id)
             for i, pattern in enumerate(layout.patterns)
             if pattern.mount == "face" and any(b.at == (0.0, 0.0) for b in pattern.bores)]
    return [id for _, _, id in sorted(found)]


def set_there(layout: Headstock, ids: Iterable[str], there: bool, plugged: bool = False) -> Headstock:
    """The layout with single holes that are in the blank already, or that are to be drilled; those that are there may be `plugged` first,
    and carry no retainer then.

    GeometryError when one of them is no single hole.
    """
    plugged = there and plugged
    for id in dict.fromkeys(ids):
        hole = hole_of(layout, id)
        layout = with_feature(layout, replace(hole, there=there, plugged=plugged, retainer=None if plugged else hole.retainer))
    return layout


def set_retainer(layout: Headstock, ids: Iterable[str], carries: bool) -> Headstock:
    """The layout with single holes that carry a retainer, or none. GeometryError when one of them is no single hole, or not open at the face."""
    for id in dict.fromkeys(ids):
        hole = hole_of(layout, id)
        if carries and not hole.opens(layout.blank.thickness):
            raise GeometryError(say("A retainer is screwed to the face, and {id} is drilled from the back and does not come through: drill it from "
                                    "the face.", id=id))
        if carries and hole.plugged:
            raise GeometryError(say("{id} is plugged first: nothing is screwed into it.", id=id))
        retainer = (hole.retainer or Retainer(height=max(1.0, layout.nut.height / 2))) if carries else None
        layout = with_feature(layout, replace(hole, retainer=retainer))
    return layout
