"""What is glued up before anything is marked: the scarf joint, plugs in old holes, ears, then veneers; and why in this order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Literal

from geometry.checks.words import listed
from geometry.layout import Headstock, SingleHole
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.operation import BENCH, Kind, Operation
from geometry.sequence.wishes import Wishes
from geometry.solids.scarf import scarf_of
from geometry.strings.square_line import square_line
from geometry.terms import term

VENEERS: tuple[Kind, Kind] = ("glue face veneer", "glue back veneer")
"""The kind and id of the step by which a veneer comes onto the face, onto the back."""
PLUG: Kind = "plug"
"""The kind and id of the step by which old holes are filled."""
GLUED: tuple[Kind, ...] = ("glue scarf", PLUG, "glue ear", *VENEERS)
"""Kinds after which the glue has to dry."""


def glue_operations(layout: Headstock, wishes: Wishes) -> list[Operation]:
    """The joint, plugs, ears, veneers."""
    blank = layout.blank
    made: list[Operation] = []
    if blank.scarf is not None:
        made.append(Operation("glue scarf", "glue scarf", say("Glue the scarf joint"), _scarf_words(layout, wishes), BENCH))
    if plugs := [hole for hole in layout.holes if hole.plugged]:
        made.append(Operation(PLUG, PLUG, say("Plug the old holes"), _plug_words(plugs, blank.thickness, wishes), BENCH,
                              tuple(hole.id for hole in plugs), amount=float(len(plugs))))
    made += [Operation(
        f"glue ear {ear.id}", "glue ear", say("Glue {ear}", ear=ear.id),
        say("Glue {ear} to the {side} side, let it dry, then plane face, back and edge flush and square.",
            ear=ear.id, side=term(ear.side)),
        BENCH, (ear.id,)) for ear in layout.ears]
    if blank.face_veneer:
        made.append(Operation(VENEERS[0], VENEERS[0], say("Glue the face veneer"),
                              _veneer_words(layout, blank.face_veneer, True, wishes), BENCH))
    if blank.back_veneer:
        made.append(Operation(VENEERS[1], VENEERS[1], say("Glue the back veneer"),
                              _veneer_words(layout, blank.back_veneer, False, wishes), BENCH))
    return made


def _plug_words(plugs: Sequence[SingleHole], thickness: float, wishes: Wishes) -> str:
    show = wishes.told
    sizes: dict[str, list[str]] = {}
    for hole in plugs:
        size = (say("{diameter} through", diameter=show(hole.diameter)) if hole.through(thickness) else
                say("{diameter} x {depth} deep from the {surface}", diameter=show(hole.diameter), depth=show(hole.depth), surface=term(hole.surface)))
        sizes.setdefault(size, []).append(hole.id)
    which = "; ".join(f"{size}: {listed(ids)}" for size, ids in sizes.items())
    return say("Clean out the old holes, to the last bit of a screw that broke off in one, and glue in plugs of the same wood that fill them to the "
               "bottom, their grain along the head's: {which}. Let them dry and plane them flush. Each is drilled into as wood is.", which=which)


def _scarf_words(layout: Headstock, wishes: Wishes) -> str:
    show, joint = wishes.told, scarf_of(layout.blank, layout.nut)
    given = {"pitch": layout.nut.pitch, "core": show(layout.blank.core, 2)}
    words = (say("Saw the joint at {pitch:.1f} degrees and parallel to the slanted nut line, plane both slopes flat, glue them with the pieces "
                 "held from sliding, leave them in the clamps until the glue is hard, and plane the head to {core}.", **given)
             if layout.nut.slant else
             say("Saw the joint at {pitch:.1f} degrees, plane both slopes flat and square to the edges, glue them with the pieces held from "
                 "sliding, leave them in the clamps until the glue is hard, and plane the head to {core}.", **given))
    if joint is None:
        return words
    if joint.back < 0:
        where = say("Its line comes out {face} from the {line} on the face, and on the back {back} behind it; it is {length} long.",
                    line=square_line(layout.nut), face=show(joint.face), back=show(-joint.back), length=show(joint.length))
    else:
        where = say("Its line comes out {face} from the {line} on the face and {back} on the back; it is {length} long.",
                    line=square_line(layout.nut), face=show(joint.face), back=show(joint.back), length=show(joint.length))
    return f"{words} {where}"


def _veneer_words(layout: Headstock, veneer: float, on_face: bool, wishes: Wishes) -> str:
    show, blank = wishes.told, layout.blank
    before = blank.core if on_face else blank.core + blank.face_veneer
    given = {"veneer": show(veneer, 2), "before": show(before, 2), "after": show(before + veneer, 2)}
    if on_face:
        words = say("Plane the head to {before}, its face flat. Glue the face veneer, {veneer} thick, over it from the nut line to the tip, under a flat board, and "
                    "leave it in the clamps until the glue is hard. The head is {after} thick then: measure it.", **given)
    else:
        words = say("Plane the head to {before}, its back flat. Glue the back veneer, {veneer} thick, over it from the nut line to the tip, under a flat board, and "
                    "leave it in the clamps until the glue is hard. The head is {after} thick then: measure it.", **given)
        if blank.face_veneer:
            words += " " + say("Both veneers may stand in the clamps at once.")
    surface: Literal["face", "back"] = "face" if on_face else "back"
    under = [slot.id for slot in layout.slots if slot.there and (on_face or slot.through(blank.thickness))]
    under += [hole.id for hole in layout.holes if hole.there and not hole.plugged and hole.opens(blank.thickness, surface)]
    return words if not under else words + " " + say("It covers what is there already: open it over {names} with a knife.", names=listed(under))


def waits(steps: Sequence[Operation]) -> int:
    """How often glue dries before the work goes on: ears that follow each other stand in the clamps at once, and so do both veneers."""
    turns = groupby("veneer" if op.kind in VENEERS else op.kind if op.kind in GLUED else "" for op in steps)
    return sum(turn != "" for turn, _ in turns)


def scarf_before_all(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The joint makes the piece of wood that everything else is done to."""
    if layout.blank.scarf is None:
        return
    for op in ops:
        if op.kind not in ("glue scarf", "template"):
            yield Before("glue scarf", op.id, say("The head is two pieces of wood until its joint is glued and planed."),
                         say("the head piece"), "impossible", "then")


def plugs_before_all(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Papers, veneers and drills come upon wood that has no holes."""
    if all(op.kind != PLUG for op in ops):
        return
    for op in ops:
        if op.kind in VENEERS:
            yield Before(PLUG, op.id, say("The veneer would lie over open holes that nothing fills any more."), say("the veneer"), "unsafe", "then")
        elif op.kind == "mark":
            yield Before(PLUG, op.id, say("The papers would lie over open holes: plugs are planed flush before, and a centre is pricked in wood."),
                         say("the pricked centres"), "unsafe", "then")
        elif op.drillings or op.waste_holes is not None or op.cut is not None:
            yield Before(PLUG, op.id, say("A drill wanders where its point or its rim finds no wood, and the cutter tears the rim of an open "
                                          "hole."), say("the hole"), "unsafe", "then")


def veneers_over_ears(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Ears are planed flush with face and back, then the veneers lie over their glue lines."""
    for veneer in ops:
        if veneer.kind in VENEERS:
            for ear in ops:
                if ear.kind == "glue ear":
                    yield Before(ear.id, veneer.id,
                                 say("The veneer lies over {ear} and its glue line: to plane the ear flush afterwards would take the veneer off.",
                                     ear=ear.features[0]),
                                 say("the veneer"), "unsafe", "then")


def veneers_before_marks_and_cuts(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Papers lie on the veneer; what is drilled and cut goes through it."""
    for veneer in ops:
        if veneer.kind not in VENEERS:
            continue
        for op in ops:
            if op.kind == "mark":
                yield Before(veneer.id, op.id,
                             say("The papers are pasted on the head as it is with its veneers: glued on later, the veneer covers every mark."),
                             say("the pricked centres"), "impossible", "then")
            elif op.drillings or op.waste_holes is not None or op.cut is not None or op.kind in ("saw", "ramp", "flat"):
                yield Before(veneer.id, op.id,
                             say("The veneer would cover what is open by then, and nothing lies under it there while it is glued and cut."),
                             say("the veneer"), "unsafe", "then")
