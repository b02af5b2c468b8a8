"""A move in a sentence, its lengths marked for the maker's unit."""

from __future__ import annotations

from geometry.checks.moves import Change, Move, Shift, Slide, Stretch
from geometry.checks.said import length
from geometry.layout import Headstock, RowPlace


def told(layout: Headstock, move: Move) -> str:
    """`Move treble face 1 1.2 mm to the tip, out of its row`: what the move does, without a full stop."""
    if isinstance(move, Stretch):
        return (f"{'Lengthen' if move.by > 0 else 'Shorten'} {move.of} by {_mm(move.by)} at its {move.end} end")
    if isinstance(move, Change):
        return _change(layout, move)
    row = _row(layout, move.of)
    if isinstance(move, Slide):
        return f"Slide {move.of} {_mm(move.by)} to the {'tip' if move.by > 0 else 'nut'}{row}"
    x, y = move.by
    parts = [(abs(y), "to the tip" if y > 0 else "to the nut"),
             (abs(x), "to the treble side" if x > 0 else "to the bass side")]
    ways = " and ".join(f"{_mm(size)} {way}" for size, way in sorted(parts, key=lambda part: -part[0]) if size > 0)
    return f"Move {move.of} {ways}{row}"


def _change(layout: Headstock, move: Change) -> str:
    group, field = move.path[0], move.path[-1]
    amount, more = _mm(move.after - move.before), move.after > move.before
    if group == "blank":
        end = {"tip": "tip end", "behind": "nut end"}.get(field, f"{field} edge")
        return f"Make the blank {amount} larger at the {end}"
    if group == "slots":
        if field == "width":
            return f"Make {move.path[1]} {amount} {'wider' if more else 'narrower'}"
        return f"Rout {move.path[1]} {amount} {'deeper' if more else 'less deep'}"
    if group == "ears":
        return f"Make {move.path[1]} {amount} {'wider' if more else 'narrower'}"
    if group == "tuners":
        return f"Set the axis of {move.path[1]} {amount} {'deeper' if more else 'higher'}{_row(layout, move.path[1])}"
    if group == "holes":
        return f"Drill {move.path[1]} {amount} {'deeper' if more else 'less deep'}"
    pattern = layout.pattern(move.path[1])
    role = pattern.bores[move.path[3]].role
    called = {"post": "post bores", "counterbore": "counterbores", "clearance": "clearance bores", "screw": "screw holes",
              "pin": "pin holes"}[role]
    return f"Drill the {called} of all {pattern.id} {amount} {'deeper' if more else 'less deep'}"


def _row(layout: Headstock, id: str) -> str:
    tuner = next((tuner for tuner in layout.tuners if tuner.id == id), None)
    return ", out of its row" if tuner is not None and isinstance(tuner.place, RowPlace) else ""


def _mm(value: float) -> str:
    tenths = abs(value * 10 - round(value * 10)) < 1e-6
    return f"{length(abs(value), 1 if tenths else 2, exact=True)} mm"
