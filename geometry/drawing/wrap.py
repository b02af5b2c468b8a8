"""The wrap paper: glued on the face of the square blank and folded down both edges, it puts every mark in place."""

from __future__ import annotations

import math

from geometry.drawing.glue_lines import joint_line
from geometry.drawing.heights import LEAST, READ
from geometry.drawing.hole_words import bore_words
from geometry.drawing.margin_labels import short_lines
from geometry.drawing.marks import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.nut_names import line_names
from geometry.drawing.opened_out import blank_box, opened_out_groups, strip_titles
from geometry.drawing.pocket_words import pocket_labels
from geometry.drawing.room import CLEAR, HANGING, Room, beside, words_width
from geometry.drawing.shapes import rectangle, straight
from geometry.drawing.slot_marks import SLOT_STYLES
from geometry.drawing.template import pin_labels
from geometry.drawing.tuner_plan import OVERRUN, folded
from geometry.layout import Headstock, Side
from geometry.lengths import told, told_down
from geometry.saying import say
from geometry.solids import Drilling, Hole, frames, holes, once_plugged
from geometry.solids.pins_along import in_bores
from geometry.solids.side import tilt_of
from geometry.terms import term
from geometry.tilt_words import tilt_words
from geometry.vectors import Vec2

LETTER = LEAST
"""Capital height of the words on the wrap, mm."""
LINE = 1.6 * LETTER
"""From one line of words to the next, mm."""
KEPT = {"outline", "side bore", "screw pilot", "pin hole", "post bore", "counterbore", "clearance bore", "hole", "hole that is there",
        "locating pin hole", "axis", "cross", "fold", "centreline", "nut line", "glue line"}
"""Styles of the opened-out view that are printed; plates, buttons and posts are no marks to work from."""

_SEAMS = ("blank", "glue line")
"""Those of veneers and of a scarf joint on the edges: beside a fold they would be taken for one, and nothing is marked from them."""


def wrap_drawing(layout: Headstock) -> Drawing:
    """The opened-out view as paper: cut line, fold lines, marks on face and edges, and what to set for each.

    Bores that start at the back are left out: nobody can prick them from this side. So are the screws and moulded
    pins of side tuners: they are drilled by hand through the plate once the wood that bears these marks is gone. So are old holes that are plugged before.
    """
    from_face, from_back = _sides_of(once_plugged(layout))
    edges = blank_box(layout.blank)
    marks: list[Mark] = [Stroke(rectangle(*edges), "blank", "blank"),
                         Stroke(straight((edges[0], 0.0), (edges[2], 0.0)), "centreline", "nut")]
    marks += [Stroke(mark.outer, mark.style, mark.owner) for group in opened_out_groups(layout).values()
              for mark in group if isinstance(mark, Area) and mark.style in SLOT_STYLES]
    plugged = [hole for hole in holes(layout) if hole.drillings[0].plugged]
    points = {(hole.of, d.start[:2]) for hole in (*from_back, *plugged) for d in hole.drillings}
    later = drilled_later(layout)
    for d in later:
        assert d.mark is not None
        points |= {(d.of, d.mark[:2]), (d.of, folded(layout.blank, "treble" if d.mark[0] > 0 else "bass", *d.mark[1:]))}
    left_out = {*((d.of, d.operation) for d in later), _SEAMS, ("nut", "centreline")}
    for group in opened_out_groups(layout).values():
        marks += [mark for mark in group if mark.style in KEPT and getattr(mark, "hidden", False) is False
                  and (mark.owner, mark.style) not in left_out and (mark.owner, _place(mark)) not in points]
    marks += joint_line(layout.blank, layout.nut, False, -layout.blank.bass, layout.blank.treble)
    marks += [*pocket_labels(layout, LETTER), *_edge_words(layout), *_titles(layout)]
    room = Room(marks)
    marks += room.put([line_names(layout.nut, 0.0, turn, narrow) for narrow in (False, True) for turn in (1, -1)])
    for choices in _back_names(layout):
        marks += room.put(choices)
    bored = in_bores(layout)
    for hole in sorted(from_face, key=lambda hole: hole.drillings[0].role == "locating"):
        for choices in (pin_labels(hole, bored.get(hole.of)),) if hole.drillings[0].role == "locating" else _face_labels(hole):
            if found := room.put(choices):
                marks += found
                break
    return tuple(marks)


def drilled_later(layout: Headstock) -> list[Drilling]:
    """The screws and moulded pins of side tuners that have a mark on the square edge."""
    return [d for hole in holes(layout) for d in hole.drillings if not d.upright and d.role in ("screw", "pin") and d.mark is not None]


def _place(mark: Mark) -> Vec2 | None:
    """The middle of a disc or cross, or where an axis begins."""
    return mark.path.start if isinstance(mark, Stroke) else getattr(mark, "centre", None)


def _sides_of(all_holes: tuple[Hole, ...]) -> tuple[list[Hole], list[Hole]]:
    """(holes square to the face with a bore from the face, holes drilled from the back alone)."""
    upright = [hole for hole in all_holes if hole.drillings[0].upright]
    front = [hole for hole in upright if any(d.surface == "face" for d in hole.drillings)]
    return front, [hole for hole in upright if hole not in front]


def _face_labels(hole: Hole) -> list[list[list[Label]]]:
    """Where the tuner's name and each bore on a line of its own may stand: the name over the bore and the others under it, all of
    them beside it, or up along the paper with the name on one side of it and the others on the other; where there is no room for all
    the name alone."""
    widest = hole.drillings[0]
    x, y = widest.start[:2]
    reach = widest.radius + OVERRUN
    name, bores = short_lines(hole.of), [line for d in hole.drillings if d.surface == "face" for line in short_lines(bore_words(d))]
    levels = [y + reach + 1.2 + LINE * i for i in reversed(range(len(name)))] + [y - reach - 1.0 - LETTER - LINE * i for i in range(len(bores))]
    about = [Label(words, (x, level), LETTER, "dimension", hole.of, anchor="middle") for words, level in zip([*name, *bores], levels, strict=True)]
    all_of_it, alone = (beside(lines, (x, y), reach, LETTER, LINE, "dimension", hole.of) for lines in ([*name, *bores], name))
    return [[about, *all_of_it, *_both_sides(name, bores, (x, y), reach, hole.of), *_both_sides(bores, name, (x, y), reach, hole.of)], alone]


def _both_sides(before: list[str], after: list[str], at: Vec2, reach: float, owner: str) -> list[list[Label]]:
    """Lines that run up the paper, some left of a hole and the others right of it: in the middle of it, or moved up or down along it."""
    x, y = at
    left, right = x - reach - 0.2 - HANGING * LETTER, x + reach + 0.2 + LETTER  # the letters' tops point to -x
    columns = [left - LINE * i for i in reversed(range(len(before)))] + [right + LINE * i for i in range(len(after))]
    return [[Label(words, (column, y + dy), LETTER, "dimension", owner, math.pi / 2, "middle") for words, column in zip([*before, *after], columns, strict=True)]
            for dy in (0.0, reach, -reach)]


def _edge_words(layout: Headstock) -> list[Mark]:
    """Along each folded edge beside the marks: whose bore it is, its tilt and its stop, in up to three lines where the next mark
    is near, so that no words run into its cross.

    What is drilled wider at the same mark stands in a line before it, with its stop. The name stands over the fold, on the face, where
    the edge is too low for one line more.
    """
    marks: list[Mark] = []
    placed = frames(layout)
    thick = layout.blank.thickness
    bores = [(post, hole) for hole in holes(layout) for post in hole.drillings
             if post.role == "post" and not post.upright and post.mark is not None]
    for d, hole in bores:
        assert d.mark is not None
        frame = placed[d.of]
        y = d.mark[1] + hole.drillings[0].radius + OVERRUN + 1.0
        ends = min((other.mark[1] - next_hole.drillings[0].radius - OVERRUN for other, next_hole in bores if other.mark is not None
                    and placed[other.of].side == frame.side and other.mark[1] > d.mark[1]), default=layout.blank.tip)
        lines = [say("{bit}, {stop}", bit=told(wide.diameter), stop=_stop(wide)) for wide in hole.drillings if wide is not d]
        lines += _settings(d, tilt_of(frame), ends - CLEAR - y)
        # The letters' tops point to -x: on the bass edge the outer line is read first.
        inwards = range(len(lines)) if frame.side == "bass" else reversed(range(len(lines)))
        over = 2 * (0.9 + LETTER) + LINE * (len(lines) - 1) + HANGING * LETTER > thick
        marks.append(_along_edge(layout, frame.side, y, -0.9 if over else 0.9, _cut(d.of, ends - CLEAR - y), d.of, outer=over))
        marks += [_along_edge(layout, frame.side, y, thick - 0.9 - LINE * i, words, d.of, outer=True)
                  for i, words in zip(inwards, lines, strict=True)]
    return marks


def _cut(name: str, room: float) -> str:
    """The name, cut off with three dots where it is longer than that (mm)."""
    most = max(int(room / words_width("n", LETTER)), 4)
    return name if len(name) <= most else f"{name[:most - 3].rstrip()}..."


def _settings(d: Drilling, tilt: float, room: float) -> list[str]:
    """Diameter, tilt and stop in as few lines as are no longer than that (mm); in the three shortest where none are."""
    wide, leans = told(d.diameter), tilt_words(tilt)
    angle, _, end = leans.partition(" ")
    lead = [say("{diameter}, {tilt}", diameter=wide, tilt=angle), end] if end else [wide, leans]
    bit = say("{diameter}, {tilt}", diameter=wide, tilt=leans)
    for lines in ([say("{bit}, {stop}", bit=bit, stop=_stop(d))], [bit, _stop(d)], [wide, leans, _stop(d)]):
        if all(words_width(line, LETTER) <= room for line in lines):
            return lines
    return [*lead, _stop(d)]


def _stop(d: Drilling) -> str:
    return say("stop {stop}", stop=told_down(d.stop))


def _along_edge(layout: Headstock, side: Side, y: float, z: float, words: str, owner: str, outer: bool) -> Label:
    """A line of words up the strip with its capitals clear of the strip's border at depth z."""
    x = folded(layout.blank, side, y, z)[0]
    # Turned a quarter, the letters' tops point to -x: keep them inside the strip on whichever side z lies.
    if (side == "treble") != outer:
        x += LETTER
    return Label(words, (x, y), LETTER, "dimension", owner, angle=math.pi / 2)


def _back_names(layout: Headstock) -> list[list[list[Label]]]:
    """Where the name of the back may stand beside either side of the paper: at the nut end, since the words of the bores run up from their
    marks, or before the nut line or at the tip where there is too little paper behind it."""
    x0, y0, x1, y1 = blank_box(layout.blank)
    return [[[Label(term("back"), (x, y), LETTER, "note", "blank", angle=math.pi / 2, anchor=anchor)]
             for y, anchor in ((y0 + 2.0, "left"), (2.0, "left"), (y1 - 2.0, "right"))] for x in (x0 + LETTER + 0.9, x1 - 0.9)]


def _titles(layout: Headstock) -> list[Mark]:
    blank = layout.blank
    _, y0, _, y1 = blank_box(blank)
    marks: list[Mark] = [*strip_titles(blank, READ)]
    for side in ("bass", "treble"):
        x = blank.edge_x(side)
        marks += [Stroke(straight((x, y), (x, y + turn * 3.0)), "fold", "blank") for y, turn in ((y0, -1), (y1, 1))]
        marks.append(Label(say("fold"), (x, y0 - 5.5), LETTER, "note", "blank", anchor="middle"))
    return marks
