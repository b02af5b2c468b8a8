"""What the chosen follower does to the template, as a number and in words for the sheet."""

from __future__ import annotations

from msgspec import Struct

from app.sheets.lengths import marked
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import exact
from geometry.routing.follower import Follower, follower
from geometry.routing.nut_end import nut_end
from geometry.saying import say
from geometry.terms import term


class Compensation(Struct, frozen=True):
    """`offset` in mm as geometry.routing defines it, None when there is no usable follower; `words` for the maker."""

    offset: float | None
    words: str


def compensation(layout: Headstock) -> Compensation:
    """The offset of the template lines and the sentence that states it."""
    try:
        chosen = follower(layout)
    except GeometryError as error:
        return Compensation(None, say("No template lines: {error}", error=error))
    if chosen is None:
        return Compensation(None, say("No bit is chosen, so there are no template lines: outline and slots are the "
                                      "finished size. Choose a bit before you cut a template."))
    sizes = _sizes(chosen.offset, nut_end(layout.outline, layout.nut) is not None, bool(layout.to_rout))
    return Compensation(chosen.offset, say("Template for a {tools}: {sizes}.", tools=_tools(chosen), sizes=sizes) + _two_boards(layout))


def _two_boards(layout: Headstock) -> str:
    """Openings in a board as large as the blank are not cut out along the outside line: pins may stand beyond it."""
    if layout.template.board != "blank" or not layout.to_rout:
        return ""
    return say(" Two boards: one as large as the blank for openings and pins, another for the outside line.")


def _tools(chosen: Follower) -> str:
    return say("{diameter} {follower} with a {cutter} cutter", diameter=marked(chosen.diameter, 3), follower=term(chosen.kind),
               cutter=marked(chosen.bit.cutter, 3))


def _sizes(offset: float, ends: bool, slots: bool) -> str:
    """How large openings and outside are; `ends`: whether the outline ends on the nut line, `slots`: whether there are any."""
    return _outside(offset, ends) if not slots else say("{openings}, {outside}", openings=_openings(offset), outside=_outside(offset, ends))


def _openings(offset: float) -> str:
    if abs(offset) < 0.0005:
        return say("openings the same size as the slots")
    return (say("openings {offset} larger all round than the slots", offset=exact(offset)) if offset > 0 else
            say("openings {offset} smaller all round than the slots", offset=exact(-offset)))


def _outside(offset: float, ends: bool) -> str:
    if abs(offset) < 0.0005:
        return say("outside the same size as the outline")
    if offset > 0:
        return (say("outside {offset} smaller than the outline down to the nut line", offset=exact(offset)) if ends else
                say("outside {offset} smaller all round than the outline", offset=exact(offset)))
    return (say("outside {offset} larger than the outline, cut off at the nut line", offset=exact(-offset)) if ends else
            say("outside {offset} larger all round than the outline", offset=exact(-offset)))
