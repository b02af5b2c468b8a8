"""The opened-out view: the face in the middle, both square edges folded flat beside it.

The face keeps its own coordinates. A point (W, y, z) of the treble square edge
is drawn at (W + z, y), a point (-W, y, z) of the bass edge at (-W - z, y), so
paper printed from it wraps round the blank with its marks in place.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from operator import is_

from geometry.by_size import of_same, of_slot, remembered_by_size, remembered_of_each
from geometry.curves import Path
from geometry.drawing.marks import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.same import Same
from geometry.drawing.shapes import chain, nut_lines, rectangle, straight
from geometry.drawing.slot_marks import ramp_marks, slot_style
from geometry.drawing.tuner_plan import folded, tuner_marks, upright_marks
from geometry.errors import GeometryError
from geometry.layout import Blank, Ear, Headstock, Loop, Nut, Pin, SingleHole, Slot, Tuner, loop_path, slot_path
from geometry.solids import holes
from geometry.strings.retainers import BAR
from geometry.terms import term
from geometry.vectors import Box

TITLE = 3.2
"""Capital height of the names over the face and the edges, mm."""
ABOVE = 4.0
"""From the tip end of the blank up to these names, mm."""
SIDES = ("bass", "treble")
_LEVEL = Nut()
"""Stands for any nut where nothing of the blank goes by it."""


def opened_out(layout: Headstock) -> Drawing:
    """The whole view as one display list, in the order in which it is painted."""
    return tuple(mark for group in opened_out_groups(layout).values() for mark in group)


def opened_out_groups(layout: Headstock) -> dict[str, Drawing]:
    """The view by owner, in the order in which it is painted.

    Keys: "blank", "outline", the ids of slots, ears, tuners, holes and pins,
    and "nut". A group whose inputs did not change since an earlier call is the
    same object, so a consumer need only rebuild what `is not` what it holds.
    A feature that makes no shape yet has an empty group: the checks say why.
    """
    return OpenedOut().groups(layout)


class OpenedOut:
    """The view of one layout after another, as `opened_out_groups` gives it: tuners that are the same objects on the same ground are
    not even looked up. Belongs to one thread."""

    def __init__(self) -> None:
        self._ground: tuple = ()
        """what the marks of a tuner depend on beside the tuner itself"""
        self._tuners: dict[int, tuple[Tuner, Drawing]] = {}

    def groups(self, layout: Headstock) -> dict[str, Drawing]:
        """The view by owner."""
        groups: dict[str, Drawing] = {}

        def put(owner: str, marks: Drawing) -> None:
            groups[owner] = groups[owner] + marks if owner in groups else marks

        put("blank", _blank(layout.blank, layout.nut if layout.blank.scarf or layout.blank.veneers else _LEVEL))
        put("outline", _wood(Same(layout.outline), tuple(slot for slot in layout.to_rout if slot.through(layout.blank.thickness))))
        for slot in layout.slots:
            put(slot.id, _slot(slot))
        for ear in layout.ears:
            put(ear.id, _ear(ear, layout.blank))
        put("nut", _nut(layout.nut))
        for tuner, marks in self._of_tuners(layout):
            put(tuner.id, marks)
        for single in (*layout.holes, *layout.pins):
            put(single.id, _single(Same(layout.outline), single, layout.blank))
        return groups

    def _of_tuners(self, layout: Headstock) -> Iterable[tuple[Tuner, Drawing]]:
        ground = (layout.outline, layout.patterns, layout.rows, layout.blank, layout.nut, layout.strings)
        known = self._tuners if len(ground) == len(self._ground) and all(map(is_, ground, self._ground)) else {}
        self._ground = ground
        self._tuners = {id(tuner): known.get(id(tuner)) or (tuner, tuner_marks(layout, tuner)) for tuner in layout.tuners}
        return self._tuners.values()


def feature_marks(layout: Headstock, feature_id: str) -> Drawing:
    """The marks of one owner; empty for an id that the layout does not have."""
    return opened_out_groups(layout).get(feature_id, ())


def blank_box(blank: Blank) -> Box:
    """(min x, min y, max x, max y) of the face with both edges folded out, mm."""
    return (-blank.bass - blank.thickness, -blank.behind, blank.treble + blank.thickness, blank.tip)


def strip_titles(blank: Blank, height: float) -> list[Label]:
    """What face and folded edges are called, in letters of `height` mm, beyond the tip."""
    x0, _, x1, y1 = blank_box(blank)
    names = (((x0 - blank.bass) / 2, term("bass edge")), ((blank.treble - blank.bass) / 2, term("face")),
             ((x1 + blank.treble) / 2, term("treble edge")))
    return [Label(text, (x, y1 + ABOVE), height, "note", "blank", anchor="middle") for x, text in names]


@lru_cache(maxsize=16)
def _blank(blank: Blank, nut: Nut) -> Drawing:
    low, high = -blank.behind, blank.tip
    x0, _, x1, _ = blank_box(blank)
    marks: list[Mark] = [
        Area(rectangle(x0, low, -blank.bass, high), "blank", "blank"),
        Area(rectangle(blank.treble, low, x1, high), "blank", "blank"),
        Area(rectangle(-blank.bass, low, blank.treble, high), "waste", "blank"),
    ]
    marks += [Stroke(straight((blank.edge_x(side), low), (blank.edge_x(side), high)), "fold", "blank")
              for side in SIDES]
    marks.append(Stroke(straight((0.0, low), (0.0, high)), "centreline", "blank"))
    if blank.veneers or blank.scarf:
        from geometry.drawing.glue_lines import glue_lines  # few heads have any, and a start goes without them
        marks += glue_lines(blank, nut)
    return (*marks, *strip_titles(blank, TITLE))


@remembered_by_size(64, of_same)
def _wood(outline: Same[Loop], slots: tuple[Slot, ...]) -> Drawing:
    """The head and its outline; `slots` go through and are openings in it, which a pocket that runs out of it could not be."""
    try:
        path = loop_path(outline.value)
    except GeometryError:
        return ()
    openings = tuple(wall for slot in slots if (wall := _wall(slot)) is not None)
    return (Area(path, "wood", "outline", openings), Stroke(path, "outline", "outline"))


@remembered_by_size(64, of_slot)
def _slot(slot: Slot) -> Drawing:
    wall = _wall(slot)
    return () if wall is None else (*ramp_marks(slot), Area(wall, slot_style(slot), slot.id))


def _wall(slot: Slot) -> Path | None:
    try:
        return slot_path(slot)
    except GeometryError:
        return None


@lru_cache(maxsize=16)
def _ear(ear: Ear, blank: Blank) -> Drawing:
    edge, glue = blank.edge_x(ear.side), blank.glue_x(ear)
    ends = [chain((folded(blank, ear.side, y, blank.thickness), (edge, y), (glue, y))) for y in (ear.start, ear.end)]
    line = straight((glue, ear.start), (glue, ear.end))
    return tuple(Stroke(path, "glue line", ear.id) for path in (line, *ends))


@lru_cache(maxsize=16)
def _nut(nut: Nut) -> Drawing:
    return nut_lines(nut)


@remembered_of_each(12, of_same, each=128)
def _single(outline: Same[Loop], single: SingleHole | Pin, blank: Blank) -> Drawing:
    only = {"pins": (single,)} if isinstance(single, Pin) else {"holes": (single,)}
    alone = Headstock(name="", blank=blank, outline=outline.value, **only)
    return (*_retainer(single), *upright_marks([d for hole in holes(alone) for d in hole.drillings], single.id))


def _retainer(single: SingleHole | Pin) -> Drawing:
    """The bar of a string retainer, across the head about its screw."""
    if isinstance(single, Pin) or single.retainer is None:
        return ()
    (x, y), half = single.at, single.retainer.width / 2
    return (Area(rectangle(x - half, y - BAR / 2, x + half, y + BAR / 2), "button", single.id),)
