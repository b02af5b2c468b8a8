"""Hours expected, and the minutes behind them that the maker may change."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from app.panels.rows import FieldRow
from geometry.edits import set_field
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.sequence import Counts, Hours

NAMES = {
    "mark": "Paste papers and prick", "template": "Make the template", "glue_ear": "Glue an ear", "hole": "Drill a hole",
    "side_bore": "Drill a bore from the side", "hand_pilot": "Drill a pilot by hand", "waste_hole": "Drill a waste hole",
    "saw_100": "Saw out, 100 mm", "rout_100": "Rout, 100 mm and pass", "band_saw_100": "Saw the outline, 100 mm",
    "rout_outline_100": "Rout the outline, 100 mm", "hand_100": "Work an edge by hand, 100 mm", "ramp": "File a ramp",
    "flat": "Cut a flat for a plate", "clean_up": "Clean up",
    "finish": "Finish", "final_diameter": "Clear a bore after finish", "machine_change": "Go to another machine",
    "bit_change": "Change the bit", "table_change": "Set the table", "side_change": "Turn the piece over",
    "factor": "Everything times",
}
"""What each rate is called."""


MOST_SAID = 2
"""Steps that cannot be done and are told above the list; the others are counted, and marked in it."""


def hour_rows(counts: Counts, found: float | None = None) -> list[FieldRow]:
    """What there is to do and how long it is expected to take; `found` is the hours by what the job book holds."""
    c, h = counts.changes, counts.hours
    return [FieldRow("Work", "fact", _hours(Hours(h.work, 0.0))), FieldRow("Set-ups and changes", "fact", _hours(Hours(0.0, h.changes))),
            FieldRow("Together", "fact", _hours(h)),
            *([] if found is None else [FieldRow("By the job book", "fact", f"{found:.1f} h", help="Corrected by what the timed steps took.")]),
            FieldRow("Other machine", "fact", f"{c.machine} times"), FieldRow("Other bit", "fact", f"{c.bit} times"),
            FieldRow("Table set", "fact", f"{c.table} times"), FieldRow("Piece turned", "fact", f"{c.side} times"),
            FieldRow("Holes", "fact", f"{counts.holes} in {counts.drillings} drillings"),
            FieldRow("Waste holes", "fact", str(counts.waste_holes))]


def rate_rows(layout: Headstock) -> list[FieldRow]:
    """One field a rate, in minutes."""
    rows = [FieldRow("Minutes (common practice, no source: yours are better)", "heading")]
    for name, words in NAMES.items():
        value = getattr(layout.rates, name)
        shown = f"{value:g}" if name == "factor" else f"{value:g} min"
        rows.append(FieldRow(words, "text", shown, partial(_changed, layout, name), key="rates"))
    return rows


def _changed(layout: Headstock, name: str, text: str) -> Headstock:
    return set_field(layout, ("rates", name), read_minutes(text))


def read_minutes(text: str) -> float:
    """Minutes out of "4", "4.5 min", "1,5 h" or "90 s"; GeometryError with a sentence for anything else."""
    words = text.strip().lower().replace(",", ".")
    for endings, by in ((("minutes", "minute", "min"), 1.0), (("hours", "hour", "h"), 60.0), (("s",), 1 / 60), (("",), 1.0)):
        for ending in endings:
            if words.endswith(ending):
                try:
                    value = float(words.removesuffix(ending)) * by
                except ValueError:
                    raise GeometryError(f'"{text.strip()}" is no time: type minutes, for example 4 or 1.5 h.') from None
                if not 0.0 <= value < float("inf"):
                    raise GeometryError(f'"{text.strip()}" is no time that work can take: type minutes above zero.')
                return value
    raise AssertionError("every text ends with nothing")


def tally(counts: Counts) -> str:
    """The counts on two lines for the head of the panel."""
    return (f"{counts.operations} steps · {counts.holes} holes · {counts.set_ups} set-ups · "
            f"{counts.tilts} {'tilt' if counts.tilts == 1 else 'tilts'}\nabout {counts.hours.total:.1f} hours, "
            f"{counts.hours.changes:.1f} of them setting up")


def loud_words(blocked: Sequence[str], left_out: Sequence[str]) -> str:
    """What cannot be had at all, one line a thing; empty when nothing is in the way."""
    lines = [text if text.startswith("No order works") else f"Cannot be done: {text}" for text in blocked[:MOST_SAID]]
    more = len(blocked) - MOST_SAID
    if more > 0:
        lines.append(f"And {more} more that cannot be done: each is marked below.")
    if left_out:
        lines.append(f"Left out, because they cannot be reached: {', '.join(left_out)}.")
    return "\n".join(lines)


def _hours(h: Hours) -> str:
    return f"{h.total:.1f} h"
