"""Left and right hardware: face tuners whose screws or pins lie off to one side come as mirror images of each other."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry.edits.parts import fresh_id, settled
from geometry.edits.tuners import tuner_of
from geometry.errors import GeometryError
from geometry.layout import Headstock, Pattern, Tuner
from geometry.saying import say


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
    patterns = list(layout.patterns)
    twin: dict[str, str] = {}
    for tuner in tuners:
        own = layout.pattern(tuner.pattern)
        image = mirrored_pattern(own)
        if image is own or own.id in twin:
            continue
        same = next((one for one in patterns if one.mount == own.mount and set(one.bores) == set(image.bores)
                     and (one.seat, one.post, one.button) == (own.seat, own.post, own.button)), None)
        if same is None:
            same = replace(image, id=fresh_id({one.id for one in patterns}, f"{own.id[:50]} mirrored"))
            patterns.append(same)
        twin[own.id] = same.id
    return tuple(patterns), twin


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
