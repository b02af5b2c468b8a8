"""A hole in a few words, the same on every sheet."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.lengths import told, told_down
from geometry.saying import say
from geometry.solids import Drilling
from geometry.terms import term


def bore_words(d: Drilling) -> str:
    """Diameter and depth in the unit of `speaking`: "8.8 x 8 deep", "6.5 through"; in inches with their signs; a depth is never told as more than it is."""
    if d.there:
        return (say("{diameter} through, is there", diameter=told(d.diameter)) if d.through else
                say("{diameter} x {depth} deep, is there", diameter=told(d.diameter), depth=told_down(d.depth, 2)))
    if d.reamed:
        sizes = {"diameter": told(d.diameter), "reamed": told(d.reamed), "taper": d.taper, "surface": term(d.surface)}
        return (say("{diameter} through, reamed 1:{taper:g} to {reamed} at the {surface}", **sizes) if d.through else
                say("{diameter} x {depth} deep, reamed 1:{taper:g} to {reamed} at the {surface}", depth=told_down(d.depth, 2), **sizes))
    if d.through:
        return say("{diameter} through", diameter=told(d.diameter))
    return say("{diameter} x {depth} deep", diameter=told(d.diameter), depth=told_down(d.depth, 2))


def bores_words(id: str, drillings: Sequence[Drilling]) -> list[str]:
    """The name of a hole and its bores, a line each; what is blind from the back says so, at the name where all of it is."""
    behind = [d.surface == "back" and not d.through for d in drillings]
    if all(behind):
        return [id + say(", back"), *map(bore_words, drillings)]
    return [id, *(bore_words(d) + (say(", back") if back else "") for d, back in zip(drillings, behind, strict=True))]
