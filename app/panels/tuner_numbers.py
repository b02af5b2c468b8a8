"""What is read of a tuner in hand: the numbers that are set at the drill press."""

from __future__ import annotations

import math
from collections import Counter

from app.panels.forms.rows import FieldRow
from geometry.layout import Headstock, Tuner
from geometry.lengths import at_least, speaking
from geometry.saying import number, number_list, say
from geometry.solids import SideBore
from geometry.solids.frames import frame
from geometry.solids.side import block_height
from geometry.terms import term
from geometry.tilt_words import raised_end, tilt_words
from geometry.tolerance import TOUCH
from geometry.units import LengthUnit, format_close, format_down


def side_numbers(bore: SideBore, unit: LengthUnit, length: float, off: float | None) -> list[FieldRow]:
    """Of a side bore, with a board of that `length` for its tilt; its plate stands so far `off` the curved edge (mm)."""
    def show(mm: float, decimals: int = 1) -> str:
        """A length for reading off, in mm with its decimals kept, so that columns of numbers look alike."""
        return number(mm, f".{decimals}f") if unit == "mm" else format_close(mm, unit, 2, mark=True)

    def least(mm: float) -> str:
        """As show, but never more than it is: depths to stop at, and what is left."""
        return show(math.floor((mm + TOUCH) * 10) / 10) if unit == "mm" else format_down(mm, unit, mark=True)

    def enough(mm: float) -> str:
        """As show, but never less than it is."""
        with speaking(unit):
            return show(math.ceil((mm - TOUCH) * 10) / 10) if unit == "mm" else at_least(mm)

    block = show(block_height(bore.tilt, length))
    base = format_close(length, unit, 2, mark=True)
    rows = [FieldRow(say("Along the edge"), "fact", show(bore.along)),
            FieldRow(say("Tilt of the table"), "fact", tilt_words(bore.tilt))]
    if raised_end(bore.tilt) is not None:
        rows.append(FieldRow(say("Block for the tilt"), "fact", say("{block} over {base}", block=block, base=base),
                             help=say("The block under one side of a board {base} long.", base=base)))
    if bore.mark is None:
        rows.append(FieldRow(say("Mark on the edge"), "fact", say("none: the axis never meets that edge"), warn=True))
        return rows
    here, there = show(bore.mark[1]), show(bore.seat[1])
    rows += [
        FieldRow(say("Mark on the edge"), "fact", here if here == there else say("{here}, not {there}", here=here, there=there),
                 help=say("Squaring a line across from the seat would miss the axis by {miss}.",
                          miss=show(abs(bore.squared_miss), 2))),
        FieldRow(say("Mark below the face"), "fact", show(bore.mark[2])),
        FieldRow(say("Stop, to full diameter"), "fact", least(bore.stop_full)),
        FieldRow(say("Stop, to the point"), "fact", say("{stop}, point {point}", stop=least(bore.stop_point), point=show(bore.point))),
    ]
    if bore.crossing is None:
        rows.append(FieldRow(say("Slot"), "fact", say("the bore meets no slot"), warn=True))
    else:
        c = bore.crossing
        if bore.window is not None:
            low, high = bore.window
            rows.append(FieldRow(say("Stops that will do"), "fact", say("{low} to {high}", low=enough(low), high=least(high)),
                                 warn=not low - TOUCH <= bore.stop_full <= high + TOUCH,
                                 help=say("To full diameter. Shallower leaves wood of the rail standing, deeper brings the drill's "
                                          "point into the inner wall of the slot.")))
        elif bore.bears > 0:
            rows.append(FieldRow(say("End of the post"), "fact", say("{deep} deep in the inner wall", deep=least(bore.bears))))
        spare = say("{outer} and {inner} to spare", outer=least(bore.string_hole - c.enters), inner=least(c.leaves - bore.string_hole))
        rows.append(FieldRow(say("String hole in the slot"), "fact", spare, warn=not c.enters < bore.string_hole < c.leaves))
    if off is not None:
        rows.append(FieldRow(say("Plate on the curve"), "fact", say("stands off {gap}", gap=show(off, 2))))
    if bore.turns_with:
        rows.append(FieldRow(say("Shares its setting with"), "fact", ", ".join(bore.turns_with)))
    return rows


def face_numbers(layout: Headstock, tuner: Tuner, unit: LengthUnit) -> list[FieldRow]:
    """Where a face tuner stands, and its bores."""
    x, y, _ = frame(layout, tuner).origin
    inches = unit != "mm"
    centre = say("{x} across, {y} along", x=format_close(x, unit, 2, mark=inches), y=format_close(y, unit, 2, mark=inches))
    rows = [FieldRow(say("Centre"), "fact", centre)]
    for bore in layout.pattern(tuner.pattern).bores:
        if bore.role in ("screw", "pin"):
            continue
        depth = say("through") if bore.depth is None else say("{depth} deep", depth=format_down(bore.depth, unit, 2, mark=inches))
        if bore.reamed is not None:
            depth = say("{depth}, reamed 1:{taper:g} to {reamed}", depth=depth, taper=bore.taper,
                        reamed=format_close(bore.reamed, unit, 2, mark=inches))
        rows.append(FieldRow({"post": say("Post bore"), "counterbore": say("Counterbore")}.get(bore.role, say("Clearance bore")),
                             "fact", say("{diameter}, {depth}, from the {surface}",
                                         diameter=format_close(bore.diameter, unit, 2, mark=inches), depth=depth,
                                         surface=term(bore.surface))))
    screws = [b for b in layout.pattern(tuner.pattern).bores if b.role in ("screw", "pin")]
    if screws:
        sizes = Counter(bore.diameter for bore in screws)
        rows.append(FieldRow(say("Screws and pins"), "fact", number_list(
            say("{n} of {diameter}", n=n, diameter=format_close(diameter, unit, 2, mark=inches)) for diameter, n in sorted(sizes.items()))))
    return rows
