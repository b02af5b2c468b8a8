"""Wood at the nut line: strings that start beside it, where an outline is narrower than they lie apart, and the step between it and the nut."""

from __future__ import annotations

from collections.abc import Iterable

import shapely

from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, NUT, Snag, grade, short
from geometry.checks.string_runs import places_of
from geometry.checks.words import into, mm, size, tenths
from geometry.layout.names import OUTLINE
from geometry.layout.strings import Nut, String
from geometry.saying import say
from geometry.solids.walls import Wall
from geometry.terms import term
from geometry.vectors import Vec2

_ROUNDED = 3.0
"""mm towards the tip within which wood still counts as wood at the nut line: corners there may be rounded, and an outline may begin
with a curve or a little beyond the line, as behind it the neck goes on."""
_AT = 0.01
"""mm towards the tip within which the wood is as wide as at the nut line itself."""
_ALIKE = 0.1
"""mm by which the steps at both ends may differ and are told as one; an end that has less has none."""
_FLUSH = 0.5
"""mm that nut and wood may stand beyond each other at an end: what is filed flush when the nut is fitted (common practice, no source)."""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of the first string beyond the bass edge and the last beyond the treble edge; where both start on wood, a note of the step
    between nut and outline."""
    layout, memo = scene.layout, scene.memo
    if not layout.strings:
        return ()
    slant = layout.nut.slant
    near = memo.of(wood_at_nut, scene.outline, slant, _ROUNDED)
    return (memo.of(_beside, near, memo.of(places_of, layout.nut, layout.strings))
            or memo.of(_step, memo.of(wood_at_nut, scene.outline, slant, _AT), near, layout.nut.width, slant))


def wood_at_nut(outline: Wall, slant: float, within: float) -> tuple[float, float] | None:
    """x in mm of the bass edge and the treble edge at the nut line: the farthest out `within` mm of it.

    An outline may go on behind the nut line, and narrow beyond it. It may also end square where a slanted line lies behind y = 0, as the
    neck goes on: then the wood counts where it ends. None where it begins farther up, or ends before it.
    """
    x0, y0, x1, y1 = outline.path.box
    if y0 > within or y1 < 0:
        return None
    if slant:
        line = _to_the_end(outline, slant)
        near = outline.area & shapely.Polygon([*line, *((x, y + within) for x, y in reversed(line))])
    else:
        near = shapely.clip_by_rect(outline.area, x0 - 1.0, 0.0, x1 + 1.0, within)
    return None if near.is_empty else (near.bounds[0], near.bounds[2])


def _to_the_end(outline: Wall, slant: float) -> list[Vec2]:
    """The nut line across the outline, from the bass side on: level from where it comes below the end of the wood on that side."""
    x0, y0, x1, y1 = outline.path.box
    line = [Nut(slant=slant).at(x) for x in (min(x0, 0.0) - 1.0, 0.0, max(x1, 0.0) + 1.0)]
    out, behind = min(line, key=lambda at: at[1])
    wood = shapely.clip_by_rect(outline.area, min(out, 0.0), y0 - 1.0, max(out, 0.0), y1 + 1.0)
    end = 0.0 if wood.is_empty else min(0.0, wood.bounds[1])
    if behind < end:
        at = line.index((out, behind))
        line[at:at + 1] = sorted([(out, end), (out * end / behind, end)])
    return line


def _beside(wood: tuple[float, float] | None, places: dict[str, tuple[String, Vec2]]) -> tuple[Snag, ...]:
    if wood is None:
        return ()
    found = []
    for side, sign, edge in (("bass edge", -1.0, wood[0]), ("treble edge", 1.0, wood[1])):
        out, at, string = max((sign * at[0] + string.diameter / 2, at, string.id) for string, at in places.values())
        measured = sign * edge - out
        if short(measured, 0.0):
            found.append(Snag(
                "string-off-wood", grade(measured), (OUTLINE, NUT), (*at, 0.0), measured, 0.0,
                say("String {string} starts {measured} mm beyond the {side} at the nut line.",
                    string=string, measured=into(measured), side=term(side)),
                say("Draw the outline {by} mm wider to that side at the nut line, or set the strings closer together in the nut.",
                    by=tenths(-measured))))
    return tuple(found)


def _step(at: tuple[float, float] | None, far: tuple[float, float] | None, width: float, slant: float) -> tuple[Snag, ...]:
    """One note where nut and wood stand beyond each other at either end of the nut by more than _FLUSH mm."""
    if at is None or far is None:
        return ()
    half = width / 2
    steps = (_wood_beyond(half, -at[0], -far[0]), _wood_beyond(half, at[1], far[1]))
    worst = max(steps, key=abs)
    if not short(_FLUSH, abs(worst)):
        return ()
    text = say("The nut is {nut} mm wide, the outline {wood} mm at the nut line.", nut=size(width), wood=mm(at[1] - at[0]))
    if abs(steps[0] - steps[1]) <= _ALIKE:
        text += " " + (say("The wood stands {by} mm beyond it at either end.", by=mm(worst)) if worst > 0 else
                       say("It stands {by} mm beyond the wood at either end.", by=mm(-worst)))
        cure = say("Type {wood} mm as the width of the nut (Strings stage), or draw the outline {nut} mm wide at the nut line.",
                   wood=mm(at[1] - at[0]), nut=size(width))
    else:
        for step, side in zip(steps, ("bass edge", "treble edge"), strict=True):
            if abs(step) > _ALIKE:
                text += " " + (say("At the {side} the wood stands {by} mm beyond it.", side=term(side), by=mm(step)) if step > 0 else
                               say("At the {side} it stands {by} mm beyond the wood.", side=term(side), by=mm(-step)))
        cure = say("Draw the outline at the nut line {half} mm to either side of the centreline, on which the middle of the nut lies.",
                   half=size(half))
    where = Nut(slant=slant).at(half if worst == steps[1] else -half)
    return (Snag("nut-step", NOTE, (OUTLINE, NUT), (*where, 0.0), abs(worst), 0.0, text, cure),)


def _wood_beyond(half: float, at: float, far: float) -> float:
    """mm of wood beyond the end of a nut of that half width, negative where the nut stands beyond it; all outwards from the centreline. Between
    the wood `at` the line and `far`, where a corner is rounded, neither stands beyond the other."""
    return at - half if at >= half or far - at <= 1.0 else min(far - half, 0.0)
