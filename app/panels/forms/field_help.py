"""What each field is, in a sentence, and the name of a small drawing where words fail.

A row made from a field of the layout or the rack is looked up by the path of
that field, any other by its label; a row that carries its own help keeps it.
"""

from __future__ import annotations

import re

from app.panels.forms.rows import FieldRow
from geometry.saying import say

NAMED = ("tuners", "slots", "pins", "holes", "ears", "rows", "bits", "bushes", "drills")
"""Groups whose members go by an id in a path."""

PATHS: dict[str, tuple[str, str]] = {
    "name": (say("What the layout is called, on its sheets and in its file's name."), ""),
    "blank.bass": (say("How far the square bass edge lies from the centreline: bores through the side are marked and "
                       "measured from it."), "opened-out"),
    "blank.treble": (say("How far the square treble edge lies from the centreline: bores through the side are marked and "
                         "measured from it."), "opened-out"),
    "blank.tip": (say("Wood from the nut line to the far end of the blank."), ""),
    "blank.behind": (say("Wood behind the nut line that the drawing shows: pins and clamps may stand there."), ""),
    "blank.thickness": (say("From face to back as it is drilled: planed, veneers and all. Side bores lie at half of it unless they say otherwise."), "cover"),
    "blank.face_veneer": (say("Of the head plate glued on the face: part of the thickness above. Nothing for none."), ""),
    "blank.back_veneer": (say("Of the veneer glued on the back: part of the thickness above. Nothing for none."), ""),
    "blank.scarf": (say("How far from the nut line, on the centreline, the joint of head and neck comes out on the face, under a veneer or not: "
                        "parallel to the nut, and as steep into the wood as the head leans. 0 for one that lies behind the nut line."), "scarf joint"),
    "blank.finish": (say("Lacquer or oil: a step of the order after cleaning up. The bores that hold tuners in the face, or their pressed-in bushings, are cleared of it then."), ""),
    "nut.width": (say("Of the nut itself, edge to edge."), ""),
    "nut.spacing": (say("Equal centres put thick and thin strings at even steps; equal gaps leave even room between them."),
                    ""),
    "nut.height": (say("Where a string leaves the nut, above the face; it decides the break angle."), "break angle"),
    "nut.pitch": (say("How far the head leans back from the line of the neck."), "break angle"),
    "nut.slant": (say("For fanned frets: how far the nut line is turned about its middle. Above zero the bass end lies nearer the tip. "
                      "Widths stay square to the centreline, and so does the base line through its middle, from which distances are told. The "
                      "outline ends where it did until you let it end along the nut line, under Strings."), ""),
    "nut.scale_length": (say("From nut to bridge. The pull of the strings is reckoned with it."), ""),
    "strings.note": (say("The note it sounds, as C4 or F#3: with diameter and scale length it gives the pull."), ""),
    "strings.scale_length": (say("Of this string alone, where frets are fanned; left empty it is the one of all."), ""),
    "strings.diameter": (say("Outside, windings included."), ""),
    "rows.run.inset": (say("From the outline square in to the posts of the row."), ""),
    "tuners.place.side": (say("The edge that the bore starts from."), ""),
    "tuners.place.depth": (say("From the face down to the axis of the bore; left empty it is half the thickness."), "cover"),
    "tuners.string": (say("The string that is wound on this post."), ""),
    "slots.shape.width": (say("From wall to wall. The bit has to pass, and the string hole has to lie between the walls."),
                          "rail and web"),
    "slots.there": (say("In the blank already, open or filled: a truss rod's pocket, an inlay's bed, an old slot. Everything keeps "
                        "clear of it, nothing cuts it; no post stands in it and no string goes down into it. Of one that is cut from "
                        "the back leave the depth empty: then everything keeps clear of it at every depth."), "pocket"),
    "slots.depth": (say("From the face down; left empty the slot goes through."), ""),
    "pins.diameter": (say("Of the pin itself: it has to fit without play."), ""),
    "holes.diameter": (say("Of the drill that makes it."), ""),
    "holes.depth": (say("From the surface that it starts from; left empty it goes through."), ""),
    "holes.surface": (say("The surface that the drill enters."), ""),
    "ears.side": (say("The edge that the piece is glued to."), ""),
    "ears.width": (say("From the square edge in to the glue line."), ""),
    "ears.start": (say("Where the glued piece begins, from the nut line."), ""),
    "ears.end": (say("Where the glued piece ends, from the nut line."), ""),
    "patterns.about": (say("A sentence for yourself; it is printed in the part list."), ""),
    "patterns.bores.role": (say("What the bore is for: it decides which margins it keeps and when it is drilled."),
                            "counterbore"),
    "patterns.bores.diameter": (say("Of the drill. Measure the part with a caliper and add what it needs to slide in."), ""),
    "patterns.bores.depth": (say("From the surface that it starts from, to full diameter; through when left empty."),
                             "stop depth"),
    "patterns.bores.surface": (say("The surface that the drill enters."), "counterbore"),
    "patterns.bores.drill": (say("The kind of drill decides how far its point runs ahead of the full diameter."),
                             "stop depth"),
    "patterns.seat.before": (say("How far the plate reaches from the post's axis towards the button."), "seat"),
    "patterns.seat.behind": (say("How far the plate reaches from the post's axis away from the button."), "seat"),
    "patterns.seat.across": (say("Width of the plate."), "seat"),
    "patterns.post.diameter": (say("Where the string winds."), "break angle"),
    "patterns.post.length": (say("Where the post ends. Through the side measured from the plate; through the face from what you choose below."),
                             ""),
    "patterns.post.string_hole": (say("The hole that the string goes through, measured as the end of the post."), "break angle"),
    "patterns.post.winding": (say("The lowest turn, measured as the end of the post: where the string runs from to the nut. Left empty it "
                                  "comes straight out of the hole."), "break angle"),
    "patterns.post.measured": (say("Of a loose tuner measure from its plate: the thickness of the head then takes from what stands out. "
                                   "Of one that is fitted measure from the face."), ""),
    "patterns.least_wood": (say("With its bushing and washer tight; a thinner head is a snag."), ""),
    "patterns.most_wood": (say("As far as its bushing reaches; a thicker head is a snag."), ""),
    "patterns.bores.reamed": (say("For a peg that its taper holds: how wide the bore is opened by hand at the side that it is drilled from, after "
                                  "all else. Wood is kept all along as if it were as wide as there."), ""),
    "patterns.bores.taper": (say("1:30 narrows by 1 mm over 30 mm. The reamer has to have the taper of the peg."), ""),
    "patterns.button.reach": (say("From the post's axis to the far end of the button. Less than its length: the button lies behind the post and turns "
                                  "about its axis, as of a peg."), "buttons"),
    "patterns.button.length": (say("Along the axis that fingers turn."), "buttons"),
    "patterns.button.width": (say("Across the axis: with its thickness it sweeps the room that fingers need."), "buttons"),
    "patterns.button.thickness": (say("The thin way of the button."), "buttons"),
    "patterns.button.stand": (say("How far the button's axis lies from the back, or from the edge."), "buttons"),
    "template.bush": (say("A ring under the router that rubs on the template while the cutter turns inside it."), "offset"),
    "template.thickness": (say("Of the board: the follower has to reach it at every depth."), "offset"),
    "template.board": (say("A board as large as the blank holds the inside openings; one shaped like the head guides the "
                           "outline."), ""),
    "margins.skate_angle": (say("From square to the edge: a bore from the side that leans more asks for a guide block or a short starter. "
                                "Common practice, no source: set what you trust."), ""),
    "margins.template_web": (say("Least width of board that is to stay between two openings of the template."), ""),
    "margins.base_rest": (say("How far the router's base has to rest on the board at the rim of an opening."), ""),
    "rack.id": (say("What you call it; plans and cards use this name."), ""),
    "rack.about": (say("A sentence for yourself."), ""),
    "rack.cutter": (say("Of the cutting edges, measured with a caliper across their tips."), "offset"),
    "rack.shank": (say("The part that the collet grips. Without a bearing it may rub on the template."), "offset"),
    "rack.bearing_diameter": (say("Of the ring that rubs on the template."), "offset"),
    "rack.bearing_height": (say("How tall the ring is: so much of it can rub."), "offset"),
    "rack.outer": (say("Of the part that rubs on the template."), "offset"),
    "rack.inner": (say("The hole that the cutter passes through."), ""),
    "rack.length": (say("How far it reaches; deeper than that it cannot work."), ""),
    "rack.kind": (say("The kind decides how far its point runs ahead of the full diameter."), "stop depth"),
    "rack.diameter": (say("Measured across the cutting edges."), ""),
    "rack.press.tilt": (say("As far as the table goes either way; a bore that wants more is a snag."), "entry mark"),
    "rack.press.quill": (say("How far the spindle comes down in one go."), ""),
    "rack.router.base": (say("Of the plate that rests on the work or the template."), ""),
    "rack.router.plunge": (say("How far the bit can be lowered; deeper needs another depth of the collet."), ""),
    "rates": (say("What one such step takes you, in minutes; 1:30, s and h behind the number are understood."), ""),
    "rates.factor": (say("How many times as long all of it takes you: above 1 longer, below 1 shorter."), ""),
    "rack.point_angle": (say("Of the cone at the tip, edge to edge; 118 degrees is usual."), "stop depth"),
}

LABELS: dict[str, tuple[str, str]] = {
    say("Name"): (say("One name for one thing; cards, notes and the running order use it."), ""),
    say("Hardware"): (say("The dimensions that this tuner has. Change them on the Tuners stage while nothing is held."), ""),
    say("Spacing of the row"): (say("From one post of the row to the next: all move together."), ""),
    say("Node"): (say("At a corner the edges meet at any angle; at a smooth node they go on in one direction."), ""),
    say("Edge to the next node"): (say("Straight, an arc of one radius, or a curve that its two handles pull."), ""),
    say("Length"): (say("Of the edge from this node to the next; the next node moves."), ""),
    say("Length over all"): (say("From end to end over the round ends; the nut end stays where it is."), ""),
    say("Radius"): (say("Of the arc from this node to the next; both nodes stay."), ""),
    say("First handle, across"): (say("The handle that pulls the curve as it leaves this node, from the centreline."), ""),
    say("First handle, along"): (say("The handle that pulls the curve as it leaves this node, from the nut line."), ""),
    say("Second handle, across"): (say("The handle that pulls the curve as it comes to the next node, from the centreline."),
                                   ""),
    say("Second handle, along"): (say("The handle that pulls the curve as it comes to the next node, from the nut line."),
                                  ""),
    say("Made for the bit"): (say("The template is larger or smaller than the cut by the offset of this bit and its "
                                  "follower."), "offset"),
    say("Length before the slot"): (say("How far before the slot the ramp begins."), "ramp"),
    say("Depth at the slot"): (say("How deep the ramp lies where it meets the slot."), "ramp"),
    say("Width"): (say("From wall to wall; left empty the ramp is as wide as its slot."), "ramp"),
    say("Out, to the button"): (say("From the post's axis towards the button, seen on the face."), "on the plate"),
    say("Aside"): (say("To the left of the way from post to button, seen on the face; to the right below zero."),
                   "on the plate"),
    say("Along, to the tip"): (say("From the post's axis along the edge, towards the tip of the head."), "on the edge"),
    say("Down, to the back"): (say("From the post's axis towards the back of the head."), "on the edge"),
    say("Shape"): (say("A flat runs along the edge under the plate; a round spot is cut with a Forstner bit."), "seat"),
    say("Length, or width of the spot"): (say("As long as the plate, and a little more for the chisel."), "seat"),
    say("Depth of the flat"): (say("Deep enough that the plate lies on wood from end to end."), "seat"),
}


NONE = ("", "")


def pattern(path: tuple, before: str = "") -> str:
    """What a path of a field is looked up by: names and numbers of single things left out."""
    parts: list[str] = [before] if before else []
    for i, part in enumerate(path):
        of_group = i > 0 and path[i - 1] in NAMED
        if isinstance(part, str) and not of_group and re.fullmatch(r"[a-z_]+", part) and not (before and part in NAMED):
            parts.append(part)
    return ".".join(parts)


def explained(row: FieldRow) -> tuple[str, str]:
    """(sentence, name of a drawing) for a row; both empty when nothing is known of it."""
    sentence, drawing = (PATHS.get(row.key, NONE) if row.key else LABELS.get(row.label, NONE))
    return (row.help or sentence, drawing)
