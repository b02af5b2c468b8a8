"""A small sheet with a folded corner at each feature that a note of the job book is pinned to."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from geometry.drawing.marks import Area, Cross, Disc, Drawing, Label, Stroke
from geometry.drawing.shapes import straight
from geometry.layout import Remark
from geometry.vectors import Vec2

WIDE, HIGH, FOLD = 4.0, 5.0, 1.4
"""mm on the drawing."""


def pinned_notes(remarks: Iterable[Remark], groups: Mapping[str, Drawing]) -> dict[str, Drawing]:
    """Marks by feature, for notes that are still open. `groups` is the drawing by owner: a note on a feature that is no
    longer there, or has no shape, is left out."""
    count: dict[str, int] = {}
    for remark in remarks:
        for id in ((remark.on,) if remark.on else remark.task.features if remark.task else ()):
            if not remark.done:
                count[id] = count.get(id, 0) + 1
    found: dict[str, Drawing] = {}
    for id, number in count.items():
        corner = _corner(groups.get(id, ()))
        if corner is not None:
            found[f"note {id}"] = _sheet(corner, number, id)
    return found


def _corner(marks: Drawing) -> Vec2 | None:
    """Beside the first circle that is seen, else the upper right corner of the box about the marks."""
    round_ones = [mark for mark in marks if isinstance(mark, Disc) and not mark.hidden]
    if round_ones:
        (x, y), radius = round_ones[0].centre, round_ones[0].radius
        return x + radius, y + radius
    xs, ys = [], []
    for mark in marks:
        if isinstance(mark, Disc):
            xs.append(mark.centre[0] + mark.radius)
            ys.append(mark.centre[1] + mark.radius)
        elif isinstance(mark, Cross):
            xs.append(mark.centre[0])
            ys.append(mark.centre[1])
        elif isinstance(mark, Stroke | Area):
            box = (mark.path if isinstance(mark, Stroke) else mark.outer).box
            xs.append(box[2])
            ys.append(box[3])
    return (max(xs), max(ys)) if xs else None


def _sheet(at: Vec2, number: int, owner: str) -> Drawing:
    x, y = at[0] + 0.5, at[1] + 0.5
    corners = ((x, y), (x + WIDE, y), (x + WIDE, y + HIGH - FOLD), (x + WIDE - FOLD, y + HIGH), (x, y + HIGH), (x, y))
    lines = [(a, b) for a, b in zip(corners, corners[1:], strict=False)]
    lines += [((x + WIDE - FOLD, y + HIGH), (x + WIDE - FOLD, y + HIGH - FOLD)), ((x + WIDE - FOLD, y + HIGH - FOLD), (x + WIDE, y + HIGH - FOLD))]
    lines += [((x + 0.8, y + k), (x + WIDE - 0.8, y + k)) for k in (1.1, 2.3)]
    marks: tuple = tuple(Stroke(straight(a, b), "feed", owner) for a, b in lines)
    return (*marks, Label(str(number), (x + WIDE + 0.6, y + HIGH / 2), 2.0, "feed", owner)) if number > 1 else marks
