"""One tuner in the opened-out view: bores, marks on a folded edge, seat, button, post and string."""

from __future__ import annotations

from collections.abc import Sequence

from geometry import vectors as v
from geometry.by_size import of_same, remembered_of_each
from geometry.curves import Path
from geometry.drawing.marks import Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.same import Same
from geometry.drawing.shapes import chain, straight
from geometry.errors import GeometryError
from geometry.layout import Blank, Headstock, Loop, Nut, Pattern, Row, RowPlace, Side, String, Tuner
from geometry.solids import Drilling, Frame, frames, holes
from geometry.solids.side import tilt_of
from geometry.strings import runs
from geometry.tilt_words import tilt_words
from geometry.vectors import Vec2, Vec3

OVERRUN = 1.0
"""How far a cross runs past the rim of its bore, mm."""
LETTER = 2.8
"""Capital height of the tilt beside a folded edge, mm."""


def tuner_marks(layout: Headstock, tuner: Tuner) -> Drawing:
    """The marks of one tuner, all owned by it; remembered until something that they depend on changes.

    Empty when the outline gives the tuner no place to be: the checks say why.
    """
    row = layout.row(tuner.place.row) if isinstance(tuner.place, RowPlace) else None
    return _marks(Same(layout.outline), tuner, Same(layout.pattern(tuner.pattern)), row, layout.blank, layout.nut,
                  Same(layout.strings))


def folded(blank: Blank, side: Side, y: float, z: float) -> Vec2:
    """Where a point of a square edge lies once the edge is folded flat beside the face (mm)."""
    x = blank.edge_x(side)
    return (x + z, y) if side == "treble" else (x - z, y)


@remembered_of_each(12, of_same, each=1024)
def _marks(outline: Same[Loop], tuner: Tuner, pattern: Same[Pattern], row: Row | None, blank: Blank, nut: Nut,
           strings: Same[tuple[String, ...]]) -> Drawing:
    alone = Headstock(name="", blank=blank, outline=outline.value, patterns=(pattern.value,),
                      rows=() if row is None else (row,), tuners=(tuner,), nut=nut, strings=strings.value)
    try:
        placed = frames(alone)
        drillings = [d for hole in holes(alone) for d in hole.drillings]
    except GeometryError:
        return ()
    frame = placed[tuner.id]
    body = _hardware(pattern.value, frame, tuner.id)
    if tuner.flat is not None and frame.mount == "side":
        half = tuner.flat.size / 2
        body.append(Stroke(straight(_plan(frame, -half, 0.0), _plan(frame, half, 0.0)), "flat", tuner.id))
    body += [Stroke(straight(run.nut, run.post), "string", tuner.id) for run in runs(alone, placed)]
    if frame.mount == "face":
        return (*body, *upright_marks(drillings, tuner.id))
    return (*body, *_sideways(blank, frame, drillings, tuner.id))


def upright_marks(drillings: Sequence[Drilling], owner: str) -> list[Mark]:
    """Discs in the given order, then one cross for each axis that is pricked, for bores square to the face."""
    discs: list[Mark] = [Disc(d.start[:2], d.radius, d.operation, owner, hidden=d.surface == "back")
                         for d in drillings]
    widest: dict[str, Drilling] = {}
    for d in drillings:
        widest.setdefault(d.hole, d)
    return discs + [Cross(d.start[:2], d.radius + OVERRUN, "cross", owner) for d in widest.values() if not d.there]


def _sideways(blank: Blank, frame: Frame, drillings: list[Drilling], owner: str) -> list[Mark]:
    marks: list[Mark] = []
    for d in drillings:
        if d.mark is not None:
            marks.append(Area(waste_strip(blank, frame.side, d), d.style, owner))
        marks.append(Area(strip(d), d.style, owner))
        marks.append(Stroke(straight((d.mark or d.start)[:2], d.end[:2]), "axis", owner))
    for d in drillings:
        if d.mark is None:
            continue
        at = folded(blank, frame.side, d.mark[1], d.mark[2])
        marks.append(Disc(at, d.radius, d.style, owner))
        marks.append(Cross(at, d.radius + OVERRUN, "cross", owner))
        if d.role == "post":
            marks += _tilt(blank, frame, d.mark, owner)
    return marks


def _tilt(blank: Blank, frame: Frame, mark: Vec3, owner: str) -> list[Mark]:
    """A line squared across the folded edge at the mark, and the tilt of the table beside it."""
    fold, outer = folded(blank, frame.side, mark[1], 0.0), folded(blank, frame.side, mark[1], blank.thickness)
    out = 1.0 if frame.side == "treble" else -1.0
    text = Label(tilt_words(tilt_of(frame)), (outer[0] + 2.5 * out, outer[1] - LETTER / 2), LETTER, "dimension",
                 owner, anchor="left" if out > 0 else "right")
    return [Stroke(straight(fold, outer), "axis", owner), text]


def strip(d: Drilling) -> Path:
    """A bore through the side, seen from the face: from the seat plane to its flat end (mm)."""
    along = d.direction[:2]
    a, b = _beside(d.start[:2], along, d.radius)
    return chain((a, v.along(a, along, d.depth), v.along(b, along, d.depth), b), closed=True)


def waste_strip(blank: Blank, side: Side, d: Drilling) -> Path:
    """The same bore through the waste, from the square edge to the seat plane; its axis must meet that edge."""
    along = d.direction[:2]
    edge_x = blank.edge_x(side)
    a, b = _beside(d.start[:2], along, d.radius)
    out_a, out_b = (v.along(p, along, (edge_x - p[0]) / along[0]) for p in (a, b))
    return chain((out_a, a, b, out_b), closed=True)


def _beside(p: Vec2, along: Vec2, radius: float) -> tuple[Vec2, Vec2]:
    across = v.left(along)
    return v.along(p, across, radius), v.along(p, across, -radius)


def _hardware(pattern: Pattern, frame: Frame, owner: str) -> list[Mark]:
    """Seat, button and post, seen from the face."""
    seat, button, post = pattern.seat, pattern.button, pattern.post
    if frame.mount == "face":
        return [
            Area(_box(frame, -seat.behind, seat.before, seat.across), "seat", owner),
            Area(_box(frame, button.reach - button.length, button.reach, button.width), "button", owner),
            Disc(frame.origin[:2], post.diameter / 2, "post", owner),
        ]
    out_near, out_far = button.stand - button.thickness / 2, button.stand + button.thickness / 2
    half = button.width / 2
    shaft = post.diameter / 2
    return [
        Area(_flat(frame, ((-half, -out_near), (half, -out_near), (half, -out_far), (-half, -out_far))),
             "button", owner),
        Stroke(straight(_plan(frame, -seat.behind, 0.0), _plan(frame, seat.before, 0.0)), "seat", owner),
        Area(_flat(frame, ((-shaft, 0.0), (shaft, 0.0), (shaft, post.length), (-shaft, post.length))), "post", owner),
        Stroke(straight(_plan(frame, -shaft, post.string_hole), _plan(frame, shaft, post.string_hole)), "post", owner),
    ]


def _box(frame: Frame, near: float, far: float, across: float) -> Path:
    corners = ((near, -across / 2), (far, -across / 2), (far, across / 2), (near, across / 2))
    return chain([frame.at(*corner)[:2] for corner in corners], closed=True)


def _plan(frame: Frame, u: float, w: float) -> Vec2:
    return frame.at(u, 0.0, w)[:2]


def _flat(frame: Frame, corners: tuple[Vec2, ...]) -> Path:
    """A closed shape of (u, w) corners of a side mount, in plan."""
    return chain([_plan(frame, u, w) for u, w in corners], closed=True)
