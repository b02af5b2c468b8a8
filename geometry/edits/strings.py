"""Edits of strings: which post serves which, and whole sets by gauge."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from geometry.edits.parts import checked, settled
from geometry.errors import GeometryError
from geometry.layout import Headstock, Side
from geometry.saying import say
from geometry.strings.hands import thick_on_treble
from geometry.strings.runs import Run
from geometry.strings.sets import StringSet


def serve(layout: Headstock, runs: Sequence[Run], winds: Sequence[Side] = ()) -> Headstock:
    """The layout with every string on the post of its run, on the side that `winds` gives for it, if any are given; other posts lose
    their strings."""
    of = {run.tuner: run.string for run in runs}
    sides = {run.tuner: side for run, side in zip(runs, winds, strict=False)}
    served = [replace(t, string=of.get(t.id), winds=sides.get(t.id, t.winds)) for t in layout.tuners]
    tuners = tuple(t if t == new else new for t, new in zip(layout.tuners, served, strict=True))
    return settled(replace(layout, tuners=tuners))


def set_post(layout: Headstock, string: str, tuner: str | None) -> Headstock:
    """A string led to another post; the string that was there takes the post that becomes free. None frees its post."""
    if tuner is not None and tuner not in {t.id for t in layout.tuners}:
        raise GeometryError(say("There is no tuner named {tuner}.", tuner=tuner))
    there = None if tuner is None else layout.tuner(tuner).string
    changed = []
    for one in layout.tuners:
        if one.id == tuner:
            changed.append(replace(one, string=string))
        elif one.string == string:
            changed.append(replace(one, string=there))
        else:
            changed.append(one)
    return settled(replace(layout, tuners=tuple(changed)))


def string_set(layout: Headstock, chosen: StringSet) -> Headstock:
    """Every string as a set has it: diameter, core and note, its thick strings on the side where they are. GeometryError when the
    numbers of strings differ."""
    if len(chosen) != len(layout.strings):
        raise GeometryError(say("That set has {chosen} strings, the layout has {strings}.",
                                chosen=len(chosen), strings=len(layout.strings)))
    turn = -1 if thick_on_treble(layout.strings) else 1
    strings = tuple(checked(replace(s, diameter=d, core=c, note=n)) for s, d, c, n in zip(
        layout.strings[::turn], chosen.diameters, chosen.cores, chosen.notes, strict=True))
    return settled(replace(layout, strings=strings[::turn]))
