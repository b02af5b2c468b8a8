"""Rows on what fits a slot: its narrowest place, its corners, and how the chosen bit and follower do."""

from __future__ import annotations

from app.panels.forms.rows import FieldRow
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.routing import follower
from geometry.routing.chosen_fit import ChosenFit, chosen_fit
from geometry.routing.fit import narrowest, tightest
from geometry.saying import say
from geometry.units import LengthUnit, format_close, format_down


def fit_rows(layout: Headstock, id: str, unit: LengthUnit) -> list[FieldRow]:
    """What fits the slot of that id; one row with the reason where nothing can be said."""
    slot = next(s for s in layout.slots if s.id == id)
    try:
        width, corner = narrowest(slot), tightest(slot)
        rows = [FieldRow(say("Largest bit that passes"), "fact", _most(width, unit))]
        if corner < width - 1e-6:
            rows.append(FieldRow(say("Corners"), "fact", say("sharp: a cutter leaves wood to pare") if corner == 0 else
                                 say("a cutter over {corner} leaves wood to pare", corner=_most(corner, unit))))
        chosen = follower(layout)
        if chosen is None:
            return [*rows, FieldRow(say("Bit"), "fact", say("none chosen"))]
        fit = chosen_fit(layout, slot, chosen)
    except GeometryError as error:
        return [FieldRow(say("Fit"), "fact", str(error), warn=True)]
    return [*rows,
            FieldRow(say("Bit {bit}", bit=chosen.bit.id), "fact", say("enters") if fit.cutter_enters else say("too fat"),
                     warn=not fit.cutter_enters),
            FieldRow(say("Follower in the template"), "fact", say("enters") if fit.follower_enters else say("does not enter"),
                     warn=not fit.follower_enters),
            FieldRow(say("Reaches"), "fact", _reach(fit, unit), warn=fit.way in ("too short", "not guided"))]


def _reach(fit: ChosenFit, unit: LengthUnit) -> str:
    depth = format_close(fit.depth, unit, 2, mark=True)
    down = "" if fit.reach is None else say("{reach} of {depth}: ", reach=_most(fit.reach, unit), depth=depth)
    match fit.way:
        case "too short":
            return down + say("too short")
        case "not guided":
            return say("not guided by the template")
        case "both sides":
            return down + say("turn the template over")
        case "one side":
            return say("{depth}, through", depth=depth) if fit.through else depth


def _most(mm: float, unit: LengthUnit) -> str:
    """A length up to which something is so: never more than it is."""
    return format_down(mm, unit, 2, mark=True)
