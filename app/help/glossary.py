"""The words of the trade as the program uses them, each in a sentence or two."""

from __future__ import annotations

from msgspec import Struct

from geometry.saying import say


class Word(Struct, frozen=True):
    """One word; `picture` names a drawing of `pictures.py`, "" for none."""

    word: str
    means: str
    picture: str = ""


WORDS = (
    Word(say("Back paper"), say("Printed as the back is seen and glued there: it marks what is drilled from the back. Full circles "
                           "are drilled from its side, dashed ones come through from the face.")),
    Word(say("Base line"), say("Of a slanted nut: the line through its middle that is square to the centreline. Papers show it dashed, square "
                               "it on the wood: everything along the head is measured from it.")),
    Word(say("Bass edge, treble edge"), say("The two long sides of the blank. Bass is left when the face looks at you and "
                                       "the tip is up, whichever hand the guitar is for.")),
    Word(say("Blank"), say("The wood before it is shaped, with square edges. A vice holds it and a rule finds places on it "
                      "only as long as those edges are there.")),
    Word(say("Blind"), say("A hole or slot that ends inside the wood; the opposite of through.")),
    Word(say("Bore"), say("A hole that a drill makes, given by where its axis enters, its direction, its diameter and its "
                     "depth.")),
    Word(say("Break angle"), say("How much a string bends down over the nut: the pitch of the head and the drop from the "
                            "nut to the winding together. Too little and the string rattles in its place, too much "
                            "and it binds."),
         "break angle"),
    Word(say("Button"), say("The part of a tuner that fingers turn.")),
    Word(say("Card"), say("A sheet for one tuner at the drill press, or one slot at the router: marks, tilt, stop and bit, with a "
                     "section at full size.")),
    Word(say("Chances"), say("How often a shop that works as true as yours would spoil a head built by this layout, and how often "
                        "every margin would be kept.")),
    Word(say("Climbing cut"), say("The router pushed the same way as its cutter turns: it grabs and runs away, out of "
                             "your hands or with the work. Always feed against the turning; where the grain would tear, "
                             "leave a shaving for a last light pass, or rout from the other side.")),
    Word(say("Counterbore"), say("A wider, shallower hole on the axis of another, for a bushing or a screw's head. It is "
                            "drilled first: the drill's spur needs wood at the centre."), "counterbore"),
    Word(say("Course"), say("Strings that are played as one, usually a pair close together.")),
    Word(say("Ear"), say("A piece glued to the side of the blank to make it wide enough. Its glue line should cross no "
                    "hole.")),
    Word(say("Entry mark"), say("Where a side bore's axis meets the square edge of the blank. It is not straight across "
                           "from the seat: the axis runs aslant to it."), "entry mark"),
    Word(say("Feather edge"), say("Where a scarf joint comes out on the face or the back: the wood beside the glue line runs out to nothing there, "
                              "and chips. A veneer over it holds it down."), "scarf joint"),
    Word(say("Flip"), say("The blank turned over, so that the router reaches from the back what it cannot reach from the "
                     "face. The template goes over with it on the same two pins.")),
    Word(say("Follower"), say("Whatever rubs on the template: a bearing on the bit, its bare shank, or a guide bush on the "
                         "router."), "offset"),
    Word(say("Glue line"), say("The seam where two pieces of wood meet: an ear and the blank, a veneer and the core, head and neck in a scarf "
                           "joint.")),
    Word(say("Job book"), say("The record of hours and money, of the practice piece and of the real one.")),
    Word(say("Locating pin"), say("A pin through template and blank that brings the template back to the same place, also "
                             "after the blank is turned over. One that stands in a bore to come goes where that goes.")),
    Word(say("Margin"), say("The least wood that is to stay between two things. The margins given are common practice "
                       "without a published source: set what you trust.")),
    Word(say("Nut line"), say("The line where nut and head begin: everything along the head is measured from where it "
                         "crosses the centreline.")),
    Word(say("Offset"), say("Half of follower less cutter: how far the cut lies from the template's edge. An opening in "
                       "the template is that much larger than the slot, an outside template that much smaller than "
                       "the outline."),
         "offset"),
    Word(say("Opened-out view"), say("The face in the middle and both square edges folded flat beside it, exactly as the "
                                "wrap paper is printed."), "opened-out"),
    Word(say("Pass"), say("One round of the router at one depth.")),
    Word(say("Pitch of the head"), say("How far the head leans back from the line of the neck."), "break angle"),
    Word(say("Pocket"), say("An opening that the blank has already, such as the access to a truss rod under the nut: all keeps clear "
                            "of it, nothing cuts it."), "pocket"),
    Word(say("Post"), say("The part of a tuner that the string winds on; the string hole goes through it.")),
    Word(say("Practice piece, real piece"), say("The head made once in scrap by the same plan, and the one that counts. The job book "
                                           "holds hours, money, notes and readings of each by itself.")),
    Word(say("Printer correction"), say("Printers stretch a page a little, each way by its own amount. Both bars of a printed page are "
                                   "measured, and pages are printed so much smaller or larger that they come out true.")),
    Word(say("Rack"), say("The bits, bushes, drills and machines that you own, described by their dimensions. Plans use "
                     "nothing else.")),
    Word(say("Rail"), say("The wood between a slot and the outline; side bores go through it."), "rail and web"),
    Word(say("Ramp"), say("The sloped nut end of a slot, cut so that the strings dive in without touching wood."), "ramp"),
    Word(say("Reach"), say("How deep a bit can cut below the router's base, less the template.")),
    Word(say("Readings"), say("What a caliper says of the finished piece, held against the plan: how far each hole is off, whether the "
                         "hardware still fits, and how true the shop works.")),
    Word(say("Running order"), say("Every operation in the order in which it is done at the bench, so that nothing becomes "
                              "impossible.")),
    Word(say("Sawn head"), say("A head that has its outline already and is to have other tuners: tick the steps that saw and rout the outline "
                           "first, in the order, and papers, pictures and steps are those of such a head. Say of old holes that they are there, "
                           "and which are plugged first.")),
    Word(say("Scarf joint"), say("Head and neck sawn apart at the pitch of the head and glued together again at an angle, so that the grain "
                             "runs along both. Its glue line comes out on the face and, nearer to the nut, on the back."), "scarf joint"),
    Word(say("Seat"), say("Where a tuner's plate or body lands. A flat plate on a curved edge stands off or rocks."), "seat"),
    Word(say("Sheets"), say("What is printed: template, wrap paper, drilling and router cards, lists.")),
    Word(say("Shop accuracy"), say("How far your marks, drills, angles and stops stray from what was meant. With it the "
                              "program reckons how likely a clearance is to hold.")),
    Word(say("Side angle"), say("How far a string turns aside at the nut on its way to the post, seen from the face. Small "
                           "angles keep a string in tune."), "side angle"),
    Word(say("Slot"), say("An opening in the head that the posts of side tuners cross."), "rail and web"),
    Word(say("Snag"), say("Something the checks found: it spoils the work, it is tight, or it is a note. Each says what, "
                     "between which, how much is there, how much is wanted, and what would cure it.")),
    Word(say("Spelching, breakout"), say("Splinters torn out where a drill leaves the wood.")),
    Word(say("Spoil board"), say("Scrap held behind the work so that the drill leaves into wood.")),
    Word(say("Stop depth"), say("How deep the drill press is set, from where the drill enters: to its full diameter, or to "
                           "its point."), "stop depth"),
    Word(say("String 1"), say("Strings are counted from the thin side: the first is the outermost at the treble edge, on a left-handed head at "
                              "the left one, and in pairs strings 1 and 2 are the first course. Lists go from left to right, as the strings "
                              "lie on the face. Strings that a layout names otherwise keep their names.")),
    Word(say("Template"), say("Hardboard that the follower runs along; it is larger or smaller than the cut by the offset.")),
    Word(say("Tilt"), say("The angle of the table for a side bore: how far the edge at its seat is turned from the square edge of the blank."),
         "entry mark"),
    Word(say("Veneer"), say("A thin sheet glued over the face (the head plate) or the back. The thickness of the head is measured with it.")),
    Word(say("Waste"), say("Wood that goes: outside the outline, or inside a slot.")),
    Word(say("Web"), say("The wood between two slots, or a slot and a pocket that is there."), "rail and web"),
    Word(say("Wrap paper"), say("Printed at full size and glued round the blank: the face and both edges in one piece."),
         "opened-out"),
)
"""Sorted by word."""
