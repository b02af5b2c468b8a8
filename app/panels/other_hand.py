"""The row that changes left hardware for right."""

from __future__ import annotations

from collections.abc import Sequence

from app.panels.forms.rows import FieldRow
from geometry.edits import is_handed, take_other_hand
from geometry.layout import Headstock, Tuner
from geometry.saying import say


def other_hand_rows(layout: Headstock, tuners: Sequence[Tuner]) -> list[FieldRow]:
    """A button for tuners whose hardware comes as left and right; nothing where it is its own mirror image."""
    if not any(is_handed(layout.pattern(tuner.pattern)) for tuner in tuners):
        return []
    return [FieldRow(say("Change left for right"), "button", None, lambda _: take_other_hand(layout, [tuner.id for tuner in tuners]),
                     help=say("This hardware comes as left and right, mirror images of each other: a screw beside the post changes sides. "
                              "On a head with tuners on both edges each edge usually wants its own."))]
