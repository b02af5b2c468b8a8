"""A move in a sentence, its lengths marked for the maker's unit."""

from __future__ import annotations

from geometry.checks.moves import AsCut, Change, Move, Ramped, Slide, Stretch, Swap, Wind
from geometry.checks.said import length
from geometry.checks.string_slots import ramp_words
from geometry.cures.carry_out import touched
from geometry.cures.plates import may_share_a_plate
from geometry.edits.slots import lies_across
from geometry.layout import Headstock, RowPlace, Tuner
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.terms import term

BORES = {"post": "post bores", "counterbore": "counterbores", "clearance": "clearance bores", "screw": "screw holes",
         "pin": "pin holes"}
"""What a cure calls the bores of each role."""


def told(layout: Headstock, move: Move, mirrored: bool = False) -> str:
    """`Move treble face 1 by 1.2 mm to the tip, out of its row`: what the move does, without a full stop; `mirrored` as in carried_out."""
    said = _told(layout, move)
    alike = mirrored and (len(touched(layout, move, True)) > len(touched(layout, move)) or isinstance(move, Stretch) and _crosses(layout, move.of))
    return say("{move}, and the other side alike", move=said) if alike else said


def _crosses(layout: Headstock, id: str) -> bool:
    """Whether a straight slot lies across the centreline, so that with its twin its other end follows."""
    return lies_across(next(slot.shape for slot in layout.slots if slot.id == id))


def _told(layout: Headstock, move: Move) -> str:
    if isinstance(move, Stretch):
        return _longer(move.of, move.by, move.end)
    if isinstance(move, Change):
        return _change(layout, move)
    if isinstance(move, Swap):
        return say("Lead string {one} to {other} and string {two} to {tuner}", one=layout.tuner(move.of).string, tuner=move.of,
                   two=layout.tuner(move.other).string, other=move.other)
    if isinstance(move, Wind):
        return _wind(layout, layout.tuner(move.of))
    if isinstance(move, AsCut):
        return say("Draw the outline as it is cut") if move.of == OUTLINE else say("Draw {slot} as it is cut", slot=move.of)
    if isinstance(move, Ramped):
        ramped = next(slot.ramp for slot in layout.slots if slot.id == move.of) is not None
        return (say("Make the ramp of {slot} {ramp_words}", slot=move.of, ramp_words=ramp_words(move.ramp)) if ramped else
                say("Give {slot} a ramp {ramp_words}", slot=move.of, ramp_words=ramp_words(move.ramp)))
    if isinstance(move, Slide):
        words = {"tuner": move.of, "by": _mm(move.by)}
        said = (say("Slide {tuner} by {by} to the tip", **words) if move.by > 0 else
                say("Slide {tuner} by {by} to the nut", **words))
        return _row(layout, move.of, said)
    x, y = move.by
    along = (say("{by} to the tip", by=_mm(y)) if y > 0 else say("{by} to the nut", by=_mm(y))) if y else ""
    across = (say("{by} to the treble side", by=_mm(x)) if x > 0 else say("{by} to the bass side", by=_mm(x))) if x else ""
    ways = [way for size, way in sorted(((abs(y), along), (abs(x), across)), key=lambda part: -part[0]) if size > 0]
    if len(ways) == 2:
        ways = [say("{one} and {two}", one=ways[0], two=ways[1])]
    return _row(layout, move.of, say("Move {what} by {ways}", what=move.of, ways="".join(ways)))


def _longer(what: str, by: float, end: str) -> str:
    words = {"what": what, "by": _mm(by), "end": term(end)}
    return (say("Lengthen {what} by {by} at its {end} end", **words) if by > 0 else
            say("Shorten {what} by {by} at its {end} end", **words))


def _wind(layout: Headstock, tuner: Tuner) -> str:
    words = {"string": tuner.string, "tuner": tuner.id}
    if layout.pattern(tuner.pattern).mount == "side":
        return (say("Lead string {string} over the post of {tuner}", **words) if tuner.winds == "treble" else
                say("Lead string {string} under the post of {tuner}", **words))
    return (say("Lead string {string} past the bass side of the post of {tuner}", **words) if tuner.winds == "treble" else
            say("Lead string {string} past the treble side of the post of {tuner}", **words))


def _change(layout: Headstock, move: Change) -> str:
    group, field = move.path[0], move.path[-1]
    more = move.after > move.before
    words = {"what": move.path[1], "by": _mm(move.after - move.before)}
    if group == "blank":
        end = term({"tip": "tip end", "behind": "nut end"}.get(field, f"{field} edge"))
        return (say("Make the blank {by} larger at the {end}", by=words["by"], end=end) if field in ("tip", "behind") else
                say("Make the blank {by} larger at the {end}, by an ear where the wood is no wider", by=words["by"], end=end))
    if group == "rows" and field != "spacing":
        return _whole_row(field, more, words)
    if group == "rows":
        said = say("Space {what} wider by {by}", **words) if more else say("Space {what} closer by {by}", **words)
        one = next(tuner for tuner in layout.tuners if isinstance(tuner.place, RowPlace) and tuner.place.row == move.path[1])
        return say("{move}, unless its tuners share a plate", move=said) if may_share_a_plate(layout, one) else said
    if group == "slots" and field != "width":
        return say("Rout {what} deeper by {by}", **words) if more else say("Rout {what} less deep by {by}", **words)
    if group == "ears" and field != "width":
        return _longer(move.path[1], abs(move.after - move.before), "tip" if more else "nut")
    if group in ("slots", "ears"):
        return say("Make {what} wider by {by}", **words) if more else say("Make {what} narrower by {by}", **words)
    if group == "tuners":
        said = (say("Set the axis of {what} deeper by {by}", **words) if more else
                say("Set the axis of {what} higher by {by}", **words))
        return _row(layout, move.path[1], said)
    if group == "holes":
        return say("Drill {what} deeper by {by}", **words) if more else say("Drill {what} less deep by {by}", **words)
    pattern = layout.pattern(move.path[1])
    words = {"bores": term(BORES[pattern.bores[move.path[3]].role]), "pattern": pattern.id, "by": words["by"]}
    return (say("Drill the {bores} of all {pattern} deeper by {by}", **words) if more else
            say("Drill the {bores} of all {pattern} less deep by {by}", **words))


def _whole_row(field: str | int, more: bool, words: dict) -> str:
    """All of a row: along its edge, across to that, or as a straight one lies (0 across the head, 1 along it)."""
    if field == "inset":
        return (say("Set the row “{what}” by {by} farther in from the edge", **words) if more else
                say("Set the row “{what}” by {by} nearer to the edge", **words))
    if field == 0:
        return (say("Move the row “{what}” by {by} to the treble side", **words) if more else
                say("Move the row “{what}” by {by} to the bass side", **words))
    return say("Move the row “{what}” by {by} to the tip", **words) if more else say("Move the row “{what}” by {by} to the nut", **words)


def _row(layout: Headstock, id: str, said: str) -> str:
    tuner = next((tuner for tuner in layout.tuners if tuner.id == id), None)
    if tuner is None or not isinstance(tuner.place, RowPlace):
        return said
    return (say("{move}, out of its row, unless its tuners share a plate", move=said) if may_share_a_plate(layout, tuner) else
            say("{move}, out of its row", move=said))


def _mm(value: float) -> str:
    tenths = abs(value * 10 - round(value * 10)) < 1e-6
    return f"{length(abs(value), 1 if tenths else 2, exact=True)} mm"
