"""The outline itself, and whether the blank holds it."""

from __future__ import annotations

from collections.abc import Iterable

from geometry.checks.scene import Scene
from geometry.checks.snags import BLANK, SPOILS, Snag, grade, short
from geometry.checks.words import clearance, first, mm, size, tenths
from geometry.layout.blank import Blank
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.saying import say, within
from geometry.solids.walls import Wall
from geometry.terms import term

THICKEST = 60.0
"""mm: no head is thicker; most are 12 to 20 (common practice, no source)"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of the outline and the blank, and of features that the shapes leave nowhere to be."""
    for feature, trouble in scene.broken:
        yield scene.memo.of(_no_place, feature, trouble)
    yield from scene.memo.of(_crossing, scene.outline)
    yield from scene.memo.of(_blank, scene.outline, scene.layout.blank, scene.layout.margins)
    yield from scene.memo.of(_thick, scene.layout.blank.thickness)


def _no_place(feature: str, trouble: str) -> Snag:
    return Snag("no-place", SPOILS, (feature,), (0.0, 0.0, 0.0), None, None,
                say("{feature} has no place: {why}", feature=first(feature), why=within(trouble)),
                say("Mend the shape it depends on."))


def _crossing(outline: Wall) -> tuple[Snag, ...]:
    if outline.crossing is None:
        return ()
    x, y = outline.crossing
    return (Snag("outline-crosses", SPOILS, (OUTLINE,), (x, y, 0.0), None, None,
                 say("The outline crosses itself at {x}, {y}.",
                     x=mm(x), y=mm(y)), say("Move the nodes beside that place apart.")),)


def _blank(outline: Wall, blank: Blank, margins: Margins) -> tuple[Snag, ...]:
    """Each side of the blank on which the outline comes too near; behind the nut line the neck goes on."""
    x0, y0, x1, y1 = outline.path.box
    found = []
    for side, measured, needed, level in (
            ("bass edge", x0 + blank.bass, margins.blank_edge, (-blank.bass, None)),
            ("treble edge", blank.treble - x1, margins.blank_edge, (blank.treble, None)),
            ("tip end", blank.tip - y1, margins.blank_edge, (None, blank.tip)),
            ("nut end", y0 + blank.behind, 0.0, (None, -blank.behind))):
        if not short(measured, needed):
            continue
        text = clearance(measured, needed, "The outline leaves the blank by {measured} mm at the {side}.",
                         "The blank is only {a} mm larger than the outline at the {side}; {b} mm wanted.", side=term(side))
        where = _extreme(outline, level)
        by = tenths(needed - measured)
        cure = (say("Make the blank {by} mm larger at the {side}, or glue on an ear.", by=by, side=term(side))
                if "edge" in side else say("Make the blank {by} mm larger at the {side}.", by=by, side=term(side)))
        found.append(Snag("blank-too-small", grade(measured), (OUTLINE, BLANK), (*where, 0.0), measured, needed, text,
                          cure))
    return tuple(found)


def _thick(thickness: float) -> tuple[Snag, ...]:
    """A thickness that was typed in another unit, or without its point: of all that comes of it this is the cause."""
    room = THICKEST - thickness
    if not short(room, 0.0):
        return ()
    return (Snag("blank-too-thick", SPOILS, (BLANK,), (0.0, 0.0, 0.0), room, 0.0,
                 say("The blank is {thickness} mm thick, which no head is: most are {least} to {most} mm.",
                     thickness=mm(thickness), least=size(12.0), most=size(20.0)),
                 say("Type its thickness again, with its unit behind it.")),)


def _extreme(outline: Wall, level: tuple[float | None, float | None]) -> tuple[float, float]:
    """The point of the outline nearest to a side of the blank."""
    axis = 0 if level[0] is not None else 1
    point = min(outline.points.tolist(), key=lambda p: abs(p[axis] - level[axis]))
    return point[0], point[1]
