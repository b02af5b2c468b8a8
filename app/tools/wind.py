"""Changing over the side on which a string passes its post, by pressing on the post."""

from __future__ import annotations

from app.tools.hit import hit
from app.tools.pointer import Done, Gesture, Shown
from geometry.drawing import Drawing
from geometry.drawing.string_marks import ghost_strings
from geometry.edits import set_field
from geometry.errors import GeometryError
from geometry.layout import OTHER, Headstock
from geometry.saying import say
from geometry.strings import runs
from geometry.terms import term

HINT = say("Press on a post to lead its string past the other side of it.")
NOT_A_POST = say("There is no post here: press on a tuner to change over the side of its string.")


def change_over(layout: Headstock, tuner_id: str) -> Headstock:
    """The layout with the string of a tuner on the other side of its post. KeyError for an unknown id.

    GeometryError when no string winds on it.
    """
    tuner = layout.tuner(tuner_id)
    if tuner.string is None:
        raise GeometryError(say("No string winds on {tuner}: give it one in the table of strings first.",
                                tuner=tuner_id))
    return set_field(layout, ("tuners", tuner_id, "winds"), OTHER[tuner.winds])


def wind(layout: Headstock) -> Gesture:
    """Shows the run that a press would give while the pointer is over a post; the press takes it, as one step."""
    hint = shown = Shown(layout, readout=HINT, takes=None, follows=True)
    while True:
        pointer = yield shown
        if pointer.kind not in ("press", "move"):
            continue
        target = hit(layout, pointer.at, pointer.mm_per_pixel)
        at = target.id if target is not None and target.kind in ("tuner", "mark") else None
        if pointer.kind == "press":
            if at is None:
                raise GeometryError(NOT_A_POST)
            made = change_over(layout, at)
            return Done(made, say("Side of the string on {at}", at=at))
        shown = hint if at is None else Shown(layout, _ghost(layout, at), _words(layout, at), takes=None, follows=True)


def _ghost(layout: Headstock, tuner_id: str) -> Drawing:
    """The run that the change would give; nothing where there is none."""
    try:
        made = change_over(layout, tuner_id)
        return ghost_strings([run for run in runs(made) if run.tuner == tuner_id])
    except GeometryError:
        return ()


def _words(layout: Headstock, tuner_id: str) -> str:
    tuner = layout.tuner(tuner_id)
    if tuner.string is None:
        return say("No string winds on {tuner}.", tuner=tuner_id)
    if layout.pattern(tuner.pattern).mount == "side":
        return (say("String {string}: over the post", string=tuner.string) if tuner.winds == "treble" else
                say("String {string}: under the post", string=tuner.string))
    return say("String {string}: {side} side", string=tuner.string,
               side=term(OTHER[tuner.winds]))
