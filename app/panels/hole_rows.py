"""A row for single holes that are meant for tuners."""

from __future__ import annotations

from app.panels.rows import FieldRow
from geometry.edits.holes import fitting_hardware, tuners_for_holes
from geometry.layout import Headstock
from geometry.saying import say


def tuner_rows(layout: Headstock, ids: tuple[str, ...]) -> list[FieldRow]:
    """A choice of hardware that takes the places of held holes; none where the layout has none for the face."""
    widest = max(hole.diameter for hole in layout.holes if hole.id in ids)
    choices = tuple((id, id) for id in fitting_hardware(layout, widest))
    if not choices:
        return []
    return [FieldRow(say("A tuner in its place") if len(ids) == 1 else say("Tuners in their places"), "choice", "",
                     lambda pattern: tuners_for_holes(layout, ids, pattern) if pattern else layout,
                     choices=(("", say("none")), *choices),
                     help=say("The hole is for a tuner: it gives way to the bores of this hardware, about the same centre."))]
