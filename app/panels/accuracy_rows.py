"""Rows for how far the shop strays: each value with its unit and a sentence on what it means."""

from __future__ import annotations

import re

from app.panels.describe import field
from app.panels.forms.rows import FieldRow
from geometry.edits import set_field
from geometry.errors import GeometryError, quoted
from geometry.layout import Accuracy, Headstock
from geometry.saying import number, say
from geometry.units import LengthUnit, format_close

WORDS = (
    ("mark", say("Marking"), "length",
     say("How far a mark on the wood strays from where the paper says, either way.")),
    ("wander_per_50", say("Drill wander in 50 mm"), "length",
     say("How far the drill has run off its axis 50 mm deep; half as far 25 mm deep.")),
    ("tilt_degrees", say("Table tilt"), "angle",
     say("How far the table is from the tilt that you set, and from square for a bore through the face.")),
    ("stop", say("Depth stop"), "length",
     say("How far the depth strays from what the stop was set to.")),
    ("template", say("Following the template"), "length",
     say("How far the cutter leaves the template's line, and the template its pins.")),
    ("paper_percent", say("Printed paper"), "percent",
     say("How much the printed paper has stretched or shrunk; the 100 mm bars on each page tell.")),
)
"""(field, label, kind, what it means)"""


def accuracy_rows(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """How far the shop strays: heading, what the numbers are, then each with its sentence."""
    rows = [FieldRow(say("Shop accuracy, plus or minus"), "heading"),
            FieldRow(say("About 95 in 100 of your marks, bores and cuts stay within these. Measure a practice piece "
                         "and enter what you find: the chances are a model with these figures."), "note")]
    for key, label, kind, meaning in WORDS:
        value, usual = getattr(layout.accuracy, key), getattr(Accuracy(), key)
        source = (say("This is common practice, no source.") if value == usual
                  else say("Common practice, no source, would be {usual}.", usual=_usual(usual, kind, unit)))
        if kind == "percent":
            rows.append(FieldRow(label, "text", f"{number(value, 'g')} %", lambda text: _set_paper(layout, text),
                                 help=f"{meaning} {source}"))
        else:
            rows.append(field(layout, label, kind, ("accuracy", key), value, help=f"{meaning} {source}"))
        rows.append(FieldRow(f"{meaning} {source}" if value != usual else meaning, "note"))
    if layout.accuracy == Accuracy():
        rows.insert(2, FieldRow(say("All are still the defaults: common practice, no source."), "note"))
    return rows


def _usual(value: float, kind: str, unit: LengthUnit) -> str:
    return {"length": format_close(value, unit, 2, mark=True), "angle": f"{number(value, 'g')}°",
            "percent": f"{number(value, 'g')} %"}[kind]


def _set_paper(layout: Headstock, text: str) -> Headstock:
    match = re.fullmatch(r"\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*%?\s*", text)
    if match is None:
        raise GeometryError(say('{text} is not a percentage: write for example 0.2 %.', text=quoted(text)))
    value = float(match[1].replace(",", "."))
    if value > 5:
        raise GeometryError(say("Paper does not stretch by {value:g} %: measure the 100 mm bars and enter up to 5 %.",
                                value=value))
    return set_field(layout, ("accuracy", "paper_percent"), value)
