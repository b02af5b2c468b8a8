"""Hours expected, and the minutes behind them that the maker may change."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from app.panels.forms.rows import FieldRow
from geometry.book import read_minutes
from geometry.checks.words import told_first
from geometry.edits import set_field
from geometry.errors import GeometryError, quoted
from geometry.layout import Headstock
from geometry.layout.rates import LONGEST
from geometry.saying import count, number, say
from geometry.sequence import Counts

NAMES = {
    "mark": say("Paste papers and prick"), "template": say("Make the template"), "glue_ear": say("Glue an ear"),
    "glue_veneer": say("Glue a veneer"), "glue_scarf": say("Saw, plane and glue a scarf joint"), "plug": say("Plug an old hole"), "glue_dry": say("Glue dries, in the clamps"), "hole": say("Drill a hole"),
    "side_bore": say("Drill a bore from the side"), "hand_pilot": say("Drill a pilot by hand"), "waste_hole": say("Drill a waste hole"),
    "saw_100": say("Saw out, 100 mm"), "rout_100": say("Rout, 100 mm and pass"), "band_saw_100": say("Saw the outline, 100 mm"),
    "rout_outline_100": say("Rout the outline, 100 mm"), "hand_100": say("Work an edge by hand, 100 mm"), "ramp": say("File a ramp"),
    "flat": say("Cut a flat for a plate"), "clean_up": say("Clean up"),
    "finish": say("Finish"), "final_diameter": say("Clear or ream a bore by hand"), "machine_change": say("Go to another machine"),
    "bit_change": say("Change the bit"), "table_change": say("Set the table"), "side_change": say("Turn the piece over"),
    "factor": say("Everything times"),
}
"""What each rate is called."""


MOST_SAID = 2
"""Steps that cannot be done and are told above the list; the others are counted, and marked in it."""


def hour_rows(counts: Counts, found: float | None = None) -> list[FieldRow]:
    """What there is to do and how long it is expected to take; `found` is the hours by what the job book holds."""
    c, h = counts.changes, counts.hours
    return [FieldRow(say("Work"), "fact", _hours(h.work)), FieldRow(say("Set-ups and changes"), "fact", _hours(h.changes)),
            FieldRow(say("Together"), "fact", _hours(h.total)),
            *([] if found is None else [FieldRow(say("By the job book"), "fact", _hours(found),
                                                 help=say("Corrected by what the timed steps took."))]),
            *([] if not counts.waits else [FieldRow(say("Glue dries"), "fact", drying(counts),
                                                    help=say("Beside the hours of work: for so long the piece stands in the clamps."))]),
            FieldRow(say("Other machine"), "fact", count(c.machine, "once", "{n} times")),
            FieldRow(say("Other bit"), "fact", count(c.bit, "once", "{n} times")),
            FieldRow(say("Table set"), "fact", count(c.table, "once", "{n} times")),
            FieldRow(say("Piece turned"), "fact", count(c.side, "once", "{n} times")),
            FieldRow(say("Holes"), "fact", count(counts.drillings, "{holes} in {n} drilling", "{holes} in {n} drillings",
                                                 holes=" + ".join((str(counts.holes), *_pins(counts))))),
            FieldRow(say("Waste holes"), "fact", str(counts.waste_holes))]


def _pins(counts: Counts) -> tuple[str, ...]:
    """How many locating pins are drilled for; nothing where there are none."""
    return (count(counts.pins, "{n} pin", "{n} pins"),) if counts.pins else ()


def drying(counts: Counts) -> str:
    """How often and how long the piece stands in clamps: "2 times, 24.0 h in all"."""
    times = count(counts.waits, "once", "{n} times")
    return say("{times}, {hours:.1f} h in all", times=times, hours=counts.drying)


def rate_rows(layout: Headstock) -> list[FieldRow]:
    """One field a rate, in minutes."""
    rows = [FieldRow(say("Minutes (common practice, no source: yours are better)"), "heading")]
    for name, words in NAMES.items():
        value = getattr(layout.rates, name)
        if name == "factor":
            rows.append(FieldRow(words, "text", number(value, "g"), partial(_multiplied, layout), key="rates.factor"))
        else:
            rows.append(FieldRow(words, "text", f"{number(value, 'g')} min", partial(_changed, layout, name), key="rates"))
    return rows


def _changed(layout: Headstock, name: str, text: str) -> Headstock:
    minutes = read_minutes(text)
    if minutes is None:
        raise GeometryError(say("Type minutes, for example 4 or 1.5 h."))
    if minutes > LONGEST:
        raise GeometryError(say("An operation takes between 0 and {longest:,.0f} minutes: {minutes:g} cannot be.", longest=LONGEST, minutes=minutes))
    return set_field(layout, ("rates", name), minutes)


def _multiplied(layout: Headstock, text: str) -> Headstock:
    try:
        factor = float(text.strip().replace(",", "."))
    except ValueError:
        raise GeometryError(say("{text} is no number: type how many times as long your work takes, for example 1.2.",
                                text=quoted(text))) from None
    return set_field(layout, ("rates", "factor"), factor)


def tally(counts: Counts) -> str:
    """The counts on two lines for the head of the panel."""
    tilts = count(counts.tilts, "{n} tilt", "{n} tilts")
    dry = "\n" + say("beside that glue dries: {drying}", drying=drying(counts)) if counts.waits else ""
    return say("{steps} · {holes} · {set_ups} · {tilts}\nabout {hours:.1f} hours, {changes:.1f} of them "
               "setting up",
               steps=count(counts.operations, "{n} step", "{n} steps"),
               holes=" · ".join((count(counts.holes, "{n} hole", "{n} holes"), *_pins(counts))),
               set_ups=count(counts.set_ups, "{n} set-up", "{n} set-ups"), tilts=tilts, hours=counts.hours.total,
               changes=counts.hours.changes) + dry


def loud_words(blocked: Sequence[str], left_out: Sequence[str]) -> str:
    """What cannot be had at all, one line a thing; empty when nothing is in the way."""
    said = [text if text.startswith(say("No order works")) else say("Cannot be done: {text}", text=text) for text in blocked]
    lines = told_first(said, MOST_SAID, lambda n: count(n, "And {n} more that cannot be done: it is marked below.",
                                                        "And {n} more that cannot be done: each is marked below."))
    if left_out:
        lines.append(say("Left out, because they cannot be reached: {left_out}.", left_out=', '.join(left_out)))
    return "\n".join(lines)


def _hours(hours: float) -> str:
    return f"{number(hours, '.1f')} h"
