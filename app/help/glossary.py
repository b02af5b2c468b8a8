"""The words of the trade as the program uses them, each in a sentence or two."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Word:
    """One word; `picture` names a drawing of `pictures.py`, "" for none."""

    word: str
    means: str
    picture: str = ""


WORDS = (
    Word("Bass edge, treble edge", "The two long sides of the blank. Bass is left when the face looks at you and the "
         "tip is up, whichever hand the guitar is for."),
    Word("Blank", "The wood before it is shaped, with square edges. A vice holds it and a rule finds places on it only "
         "as long as those edges are there."),
    Word("Blind", "A hole or slot that ends inside the wood; the opposite of through."),
    Word("Bore", "A hole that a drill makes, given by where its axis enters, its direction, its diameter and its depth."),
    Word("Break angle", "How much a string bends down over the nut: the pitch of the head and the drop from the nut to "
         "the winding together. Too little and the string rattles in its place, too much and it binds.",
         "break angle"),
    Word("Button", "The part of a tuner that fingers turn."),
    Word("Climbing cut", "The router pushed the same way as its cutter turns: it runs away with the work. Feed against "
         "the turning, but for a last light pass where the grain asks for it and the machine's manual allows it."),
    Word("Counterbore", "A wider, shallower hole on the axis of another, for a bushing or a screw's head. It is drilled "
         "first: the drill's spur needs wood at the centre.", "counterbore"),
    Word("Course", "Strings that are played as one, usually a pair close together."),
    Word("Ear", "A piece glued to the side of the blank to make it wide enough. Its glue line should cross no hole."),
    Word("Entry mark", "Where a side bore's axis meets the square edge of the blank. It is not straight across from the "
         "seat: the axis runs aslant to it.", "entry mark"),
    Word("Flip", "The blank turned over, so that the router reaches from the back what it cannot reach from the face. "
         "The template goes over with it on the same two pins."),
    Word("Follower", "Whatever rubs on the template: a bearing on the bit, its bare shank, or a guide bush on the "
         "router.", "offset"),
    Word("Glue line", "The seam where an ear meets the blank."),
    Word("Job book", "The record of hours and money, of the practice piece and of the real one."),
    Word("Locating pin", "A pin through template and blank that brings the template back to the same place, also after "
         "the blank is turned over."),
    Word("Margin", "The least wood that is to stay between two things. The margins given are common practice without a "
         "published source: set what you trust."),
    Word("Nut line", "The line where nut and head begin: everything along the head is measured from where it crosses "
         "the centreline."),
    Word("Offset", "Half of follower less cutter: how far the cut lies from the template's edge. An opening in the "
         "template is that much larger than the slot, an outside template that much smaller than the outline.",
         "offset"),
    Word("Opened-out view", "The face in the middle and both square edges folded flat beside it, exactly as the wrap "
         "paper is printed.", "opened-out"),
    Word("Pass", "One round of the router at one depth."),
    Word("Pitch of the head", "How far the head leans back from the line of the neck.", "break angle"),
    Word("Post", "The part of a tuner that the string winds on; the string hole goes through it."),
    Word("Rack", "The bits, bushes, drills and machines that you own, described by their dimensions. Plans use nothing "
         "else."),
    Word("Rail", "The wood between a slot and the outline; side bores go through it.", "rail and web"),
    Word("Ramp", "The sloped nut end of a slot, cut so that the strings dive in without touching wood.", "ramp"),
    Word("Reach", "How deep a bit can cut below the router's base, less the template."),
    Word("Running order", "Every operation in the order in which it is done at the bench, so that nothing becomes "
         "impossible."),
    Word("Seat", "Where a tuner's plate or body lands. A flat plate on a curved edge stands off or rocks.", "seat"),
    Word("Sheets", "What is printed: template, wrap paper, drilling and router cards, lists."),
    Word("Shop accuracy", "How far your marks, drills, angles and stops stray from what was meant. With it the program "
         "reckons how likely a clearance is to hold."),
    Word("Side angle", "How far a string turns aside at the nut on its way to the post, seen from the face. Small "
         "angles keep a string in tune.", "side angle"),
    Word("Slot", "An opening in the head that the posts of side tuners cross.", "rail and web"),
    Word("Snag", "Something the checks found: it spoils the work, it is tight, or it is a note. Each says what, "
         "between which, how much is there, how much is wanted, and what would cure it."),
    Word("Spelching, breakout", "Splinters torn out where a drill leaves the wood."),
    Word("Spoil board", "Scrap held behind the work so that the drill leaves into wood."),
    Word("Stop depth", "How deep the drill press is set, from where the drill enters: to its full diameter, or to its "
         "point.", "stop depth"),
    Word("Template", "Hardboard that the follower runs along; it is larger or smaller than the cut by the offset."),
    Word("Tilt", "The angle of the table for a side bore: how far the edge's normal turns from the square edge's.",
         "entry mark"),
    Word("Waste", "Wood that goes: outside the outline, or inside a slot."),
    Word("Web", "The wood between two slots.", "rail and web"),
    Word("Wrap paper", "Printed at full size and glued round the blank: the face and both edges in one piece.",
         "opened-out"),
)
"""Sorted by word."""
