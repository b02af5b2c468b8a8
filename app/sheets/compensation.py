"""What the chosen follower does to the template, as a number and in words for the sheet."""

from __future__ import annotations

from dataclasses import dataclass

from app.sheets.lengths import marked
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.routing.follower import Follower, follower
from geometry.routing.words import exact


@dataclass(frozen=True, slots=True)
class Compensation:
    """`offset` in mm as geometry.routing defines it, None when there is no usable follower; `words` for the maker."""

    offset: float | None
    words: str


def compensation(layout: Headstock) -> Compensation:
    """The offset of the template lines and the sentence that states it."""
    try:
        chosen = follower(layout)
    except GeometryError as error:
        return Compensation(None, f"No template lines: {error}")
    if chosen is None:
        return Compensation(None, "No bit is chosen, so there are no template lines: outline and slots are the "
                                  "finished size. Choose a bit before you cut a template.")
    return Compensation(chosen.offset, f"Template for a {_tools(chosen)}: {_sizes(chosen.offset)}.")


def _tools(chosen: Follower) -> str:
    kind = {"guide bush": "guide bush", "bare shank": "bare shank"}.get(chosen.kind, chosen.kind)
    return f"{marked(chosen.diameter, 3)} {kind} with a {marked(chosen.bit.cutter, 3)} cutter"


def _sizes(offset: float) -> str:
    if abs(offset) < 0.0005:
        return "openings the same size as the slots, outside the same size as the outline"
    if offset > 0:
        return (f"openings {exact(offset)} larger all round than the slots, "
                f"outside {exact(offset)} smaller all round than the outline")
    return (f"openings {exact(-offset)} smaller all round than the slots, "
            f"outside {exact(-offset)} larger all round than the outline")
