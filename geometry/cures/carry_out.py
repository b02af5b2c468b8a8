"""A move carried out on a layout, as the edit that the maker would make."""

from __future__ import annotations

from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks import Snag
from geometry.checks.moves import AsCut, Change, Move, Ramped, Shift, Slide, Stretch, Swap, Wind
from geometry.edits import along_edge, free_from_row, move_features, set_field, slide_tuner
from geometry.edits.mirrored import echo_edit
from geometry.edits.parts import FEATURE_GROUPS, feature, settled, with_feature
from geometry.edits.strings import set_post
from geometry.edits.tuners import tuner_of
from geometry.edits.twin_features import twin_feature
from geometry.errors import GeometryError
from geometry.layout import OTHER, Headstock, RowPlace, StraightSlot, Tuner
from geometry.layout.edges import edge
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids.pins_along import pins_along


def apply_cure(layout: Headstock, snag: Snag, mirrored: bool = False) -> Headstock:
    """The layout after the move that cures a snag. GeometryError when the snag carries none."""
    if snag.move is None:
        raise GeometryError(say("No single move is known that cures this snag."))
    return carried_out(layout, snag.move, mirrored and not snag.alone)


def carried_out(layout: Headstock, move: Move, mirrored: bool = False) -> Headstock:
    """The layout after a move; a row's member leaves its row first, and a pin goes with its bore. `mirrored`: the twins of what it moves
    follow, but for strings. GeometryError when it cannot be done."""
    after, ids = _done(layout, move), touched(layout, move)
    if mirrored and ids and not isinstance(move, Swap | Wind):
        after = echo_edit(layout, after, ids)
    return pins_along(layout, after)


def touched(layout: Headstock, move: Move, mirrored: bool = False) -> tuple[str, ...]:
    """The features that a move alters, of a row all its tuners; `mirrored`: with their twins, but for strings."""
    if isinstance(move, Swap):
        return move.of, move.other
    if isinstance(move, Wind):
        return (move.of,)
    if isinstance(move, Change) and move.path[0] == "rows":
        ids = tuple([tuner.id for tuner in layout.tuners if isinstance(tuner.place, RowPlace) and tuner.place.row == move.path[1]])
    elif isinstance(move, Change):
        ids = (move.path[1],) if move.path[0] in FEATURE_GROUPS else ()
    else:
        ids = () if move.of == OUTLINE else (move.of,)
    twins = [twin for id in ids if (twin := twin_feature(layout, id)) is not None] if mirrored else ()
    return tuple(dict.fromkeys((*ids, *twins)))


def _done(layout: Headstock, move: Move) -> Headstock:
    if isinstance(move, Change):
        if move.path[0] == "tuners" and move.path[2] == "place":
            layout = _alone(layout, move.path[1])
        return set_field(layout, move.path, move.after)
    if isinstance(move, Stretch):
        return _stretched(layout, move)
    if isinstance(move, Swap):
        return set_post(layout, _served(layout, move.of), move.other)
    if isinstance(move, Wind):
        return set_field(layout, ("tuners", move.of, "winds"), OTHER[tuner_of(layout, move.of).winds])
    if isinstance(move, Slide):
        layout = _alone(layout, move.of)
        side, along = along_edge(layout, move.of) or (None, 0.0)  # a tuner on no edge is refused by slide_tuner
        if side is not None and not 0 <= along + move.by <= edge(layout.outline, side).length:
            raise GeometryError(say("The edge ends before {of} has slid so far.", of=move.of))
        return slide_tuner(layout, move.of, along + move.by)
    if isinstance(move, AsCut):
        if move.of == OUTLINE:
            return settled(replace(layout, outline=move.shape.loop))
        return with_feature(layout, replace(feature(layout, move.of), shape=move.shape, depth=move.depth, ramp=move.ramp))
    if isinstance(move, Ramped):
        return with_feature(layout, replace(feature(layout, move.of), ramp=move.ramp))
    assert isinstance(move, Shift)
    return move_features(_alone(layout, move.of), [move.of], move.by)


def _served(layout: Headstock, id: str) -> str:
    string = tuner_of(layout, id).string
    if string is None:
        raise GeometryError(say("No string winds on {tuner}.", tuner=id))
    return string


def _alone(layout: Headstock, id: str) -> Headstock:
    part = feature(layout, id)
    in_row = isinstance(part, Tuner) and isinstance(part.place, RowPlace)
    return free_from_row(layout, id) if in_row else layout


def _stretched(layout: Headstock, move: Stretch) -> Headstock:
    slot = feature(layout, move.of)
    shape = slot.shape
    if not isinstance(shape, StraightSlot):
        raise GeometryError(say("{of} has no ends: its wall is drawn.", of=move.of))
    length = v.distance(shape.nut_end, shape.tip_end)
    if length + move.by < shape.width / 2:
        raise GeometryError(say("{of} cannot become that short.", of=move.of))
    axis = v.unit(v.sub(shape.tip_end, shape.nut_end))
    new = (replace(shape, tip_end=v.along(shape.tip_end, axis, move.by)) if move.end == "tip" else
           replace(shape, nut_end=v.along(shape.nut_end, axis, -move.by)))
    return with_feature(layout, replace(slot, shape=new))
