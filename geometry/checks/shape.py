"""The outline itself, and whether the blank holds it."""

from __future__ import annotations

from collections.abc import Iterable

from geometry.checks.scene import Scene
from geometry.checks.snags import BLANK, OUTLINE, SPOILS, Snag, grade, short
from geometry.checks.words import both, first, mm, tenths
from geometry.layout.blank import Blank
from geometry.layout.shop import Margins
from geometry.solids.walls import Wall


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of the outline and the blank, and of features that the shapes leave nowhere to be."""
    for feature, sentence in scene.broken:
        yield Snag("no-place", SPOILS, (feature,), (0.0, 0.0, 0.0), None, None,
                   f"{first(feature)} has no place: {sentence[:1].lower()}{sentence[1:]}",
                   "Mend the shape it depends on.")
    yield from scene.memo.of(_crossing, scene.outline)
    yield from scene.memo.of(_blank, scene.outline, scene.layout.blank, scene.layout.margins)


def _crossing(outline: Wall) -> tuple[Snag, ...]:
    if outline.crossing is None:
        return ()
    x, y = outline.crossing
    return (Snag("outline-crosses", SPOILS, (OUTLINE,), (x, y, 0.0), None, None,
                 f"The outline crosses itself at {mm(x)}, {mm(y)}.", "Move the nodes beside that place apart."),)


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
        a, b = both(measured, needed)
        text = (f"The outline leaves the blank by {mm(-measured)} mm at the {side}." if measured < 0 else
                f"The blank is only {a} mm larger than the outline at the {side}; {b} mm wanted.")
        where = _extreme(outline, level)
        cure = f"Make the blank {tenths(needed - measured)} mm larger at the {side}"
        cure += ", or glue on an ear." if "edge" in side else "."
        found.append(Snag("blank-too-small", grade(measured), (OUTLINE, BLANK), (*where, 0.0), measured, needed, text,
                          cure))
    return tuple(found)


def _extreme(outline: Wall, level: tuple[float | None, float | None]) -> tuple[float, float]:
    """The point of the outline nearest to a side of the blank."""
    axis = 0 if level[0] is not None else 1
    point = min(outline.points.tolist(), key=lambda p: abs(p[axis] - level[axis]))
    return point[0], point[1]
