"""Left and right hardware: face tuners whose screws or pins lie off to one side come as mirror images of each other."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from msgspec.structs import replace

from geometry.edits.edge_places import nearest_on_edges
from geometry.edits.parts import settled
from geometry.edits.tuners import pattern_of, set_pattern, tuner_of
from geometry.errors import GeometryError
from geometry.layout import Headstock, Pattern, Side, Tuner
from geometry.layout.names import Names
from geometry.saying import say
from geometry.solids.frames import frame
from geometry.terms import mirrored_tool
from geometry.vectors import Vec2

STRAIGHT = 1e-9
"""How little of a button's direction may point aside for it to point along the centreline."""


def mirrored_pattern(pattern: Pattern) -> Pattern:
    """Face hardware seen in a mirror: v changes sign. Itself when that changes nothing.

    Side hardware keeps its own axes, as u runs to the tip on both sides.
    """
    bores = tuple(replace(bore, at=(bore.at[0], -bore.at[1])) for bore in pattern.bores)
    return pattern if pattern.mount == "side" or set(bores) == set(pattern.bores) else replace(pattern, bores=bores)


def is_handed(pattern: Pattern) -> bool:
    """Whether there is a left and a right one of a pattern."""
    return mirrored_pattern(pattern) is not pattern


def with_mirrored_patterns(layout: Headstock, tuners: Iterable[Tuner]) -> tuple[tuple[Pattern, ...], dict[str, str]]:
    """(all patterns, pattern of a tuner -> pattern of its mirror image); left and right hardware made as needed."""
    patterns = layout.patterns
    twin: dict[str, str] = {}
    for own in dict.fromkeys(tuner.pattern for tuner in tuners):
        patterns, image = _with_image(patterns, layout.pattern(own))
        if image != own:
            twin[own] = image
    return patterns, twin


def _with_image(patterns: tuple[Pattern, ...], own: Pattern) -> tuple[tuple[Pattern, ...], str]:
    """(patterns, the one among them that is the mirror image of `own`); added where there is none, `own` where it is that itself."""
    image = mirrored_pattern(own)
    if image is own:
        return patterns, own.id
    same = next((one for one in patterns if one.mount == own.mount and set(one.bores) == set(image.bores)
                 and (one.seat, one.post, one.button) == (own.seat, own.post, own.button)), None)
    if same is not None:
        return patterns, same.id
    same = replace(image, id=Names(one.id for one in patterns).alike(mirrored_tool(own.id[:49])))
    return (*patterns, same), same.id


def _button_side(layout: Headstock, tuner: Tuner) -> Side:
    """The side to which the button of a tuner points; bass where it points along the centreline."""
    at = frame(layout, tuner)
    return at.side if at.mount == "side" else "treble" if at.u[0] > STRAIGHT else "bass"


def hand_for_edge(layout: Headstock, pattern: str, at: Vec2) -> tuple[Headstock, str]:
    """(layout with it, hardware) for a new tuner at a point (mm), of hardware that comes as left and right: its button points
    to the edge nearest to it.

    The mirror image, where that very hand points to the other side already and none of it to this one: tuners of a head with both
    edges come as left and right. The hand that was chosen everywhere else: on the first edge, and where both hands were mixed.
    """
    own = pattern_of(layout, pattern)
    if not is_handed(own):
        return layout, pattern
    sides = {_button_side(layout, tuner) for tuner in layout.tuners if tuner.pattern == pattern}
    if not sides or nearest_on_edges(layout.outline, at)[0] in sides:
        return layout, pattern
    patterns, image = _with_image(layout.patterns, own)
    return replace(layout, patterns=patterns), image


def set_hand_by_side(layout: Headstock, ids: Sequence[str], pattern: str) -> Headstock:
    """Other hardware for tuners, its mirror image for those whose buttons point to the other side than that of the first."""
    tuners = [tuner_of(layout, id) for id in ids]
    patterns, image = _with_image(layout.patterns, pattern_of(layout, pattern))
    sides = [_button_side(layout, tuner) for tuner in tuners]
    layout = replace(layout, patterns=patterns) if len(set(sides)) > 1 else layout
    for tuner, side in zip(tuners, sides, strict=True):
        layout = set_pattern(layout, tuner.id, pattern if side == sides[0] else image)
    return layout


def take_other_hand(layout: Headstock, ids: Iterable[str]) -> Headstock:
    """The layout with the left hardware in place of the right, or the other way round, of these tuners; those without stay.

    The pattern of the mirror image is added when the layout has none. GeometryError when none of the tuners is left or right.
    """
    chosen = [tuner_of(layout, id) for id in ids]
    patterns, twin = with_mirrored_patterns(layout, chosen)
    if not twin:
        raise GeometryError(say("This hardware is its own mirror image: there is no left and right of it."))
    turned = {tuner.id for tuner in chosen}
    return settled(replace(layout, patterns=patterns, tuners=tuple(
        replace(tuner, pattern=twin.get(tuner.pattern, tuner.pattern)) if tuner.id in turned else tuner for tuner in layout.tuners)))
