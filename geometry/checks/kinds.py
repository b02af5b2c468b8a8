"""Every kind of snag by its key: a title for people and one sentence that explains it."""

from __future__ import annotations

from msgspec import Struct

from geometry.checks.words import SORTS, first
from geometry.saying import say
from geometry.terms import term


class Kind(Struct, frozen=True):
    """What a kind of snag is called, and what it means."""

    title: str
    why: str


def pair_kind(one: str, two: str) -> str:
    """Key for two drillings that come near each other; the order of the two sorts does not matter."""
    one, two = sorted((one, two), key=SORTS.index)
    return f"{one}-to-{two}".replace(" ", "-")


def slot_kind(sort: str) -> str:
    """Key for a drilling that comes near a slot's wall."""
    return f"{sort}-to-slot".replace(" ", "-")


def outline_kind(sort: str) -> str:
    """Key for a drilling that comes near the outline."""
    return f"{sort}-to-outline".replace(" ", "-")


def _of_drillings() -> dict[str, Kind]:
    found: dict[str, Kind] = {}
    for i, one in enumerate(SORTS):
        for two in SORTS[i:]:
            title = (say("{one} meets another", one=first(term(one))) if one == two else
                     say("{one} meets {two}", one=first(term(one)), two=term(two)))
            found[pair_kind(one, two)] = Kind(
                title, say("Least wood between two drillings, measured in space between the real cylinders."))
        found[slot_kind(one)] = Kind(say("{one} meets slot", one=first(term(one))), say("Least wood between a drilling and a slot's wall."))
        found[outline_kind(one)] = Kind(say("{one} close to the outline", one=first(term(one))),
                                        say("Least wood between a drilling and the edge of the finished head."))
    return found


KINDS: dict[str, Kind] = _of_drillings() | {
    # the outline, the blank, the slots
    "outline-crosses": Kind(say("Outline crosses itself"), say("A line that crosses itself encloses no head.")),
    "no-place": Kind(say("No place for a feature"), say("The shapes of the layout leave this feature nowhere to be.")),
    "drilled-otherwise": Kind(say("Drilled otherwise"), say("A hole that is in the real piece, by the job book, stays where and as it was drilled.")),
    "drilled-and-gone": Kind(say("Drilled, and gone from the drawing"), say("The real piece has a hole, by the job book, that the drawing has no more.")),
    "cut-otherwise": Kind(say("Cut otherwise"), say("A slot or the outline that is cut in the real piece, by the job book, stays as it was cut.")),
    "cut-and-gone": Kind(say("Cut, and gone from the drawing"), say("The real piece has a slot, by the job book, that the drawing has no more.")),
    "marked-otherwise": Kind(say("Marked otherwise"), say("What is pricked through the papers, or made of the template, by the job book, is where the drawing had it then.")),
    "glued-otherwise": Kind(say("Glued otherwise"), say("An ear or a plug that is glued to the real piece, by the job book, stays as it was glued.")),
    "slot-crosses": Kind(say("Slot crosses itself"), say("A wall that crosses itself cannot be routed.")),
    "blank-too-small": Kind(say("Outline leaves the blank"), say("The blank has to hold the whole outline and more.")),
    "blank-too-thick": Kind(say("Blank is too thick"), say("A thickness typed in another unit makes every depth wrong.")),
    "rail": Kind(say("Rail is thin"), say("The rail is the wood between a slot and the outline; it carries the tuners.")),
    "slot-outside": Kind(say("Slot leaves the head"), say("A slot that crosses the outline leaves no rail.")),
    "web": Kind(say("Web is thin"), say("The web is the wood between two slots, or a slot and a pocket that is there.")),
    "slots-overlap": Kind(say("Slots overlap"), say("Two slots share wood.")),
    "slot-to-nut": Kind(say("Slot close to the nut"), say("The wood between nut and slot carries the pull of the strings.")),
    "slot-floor": Kind(say("Floor of a slot is thin"), say("The wood left below a blind slot gives way under router and chisel.")),
    "ramp-to-outline": Kind(say("Ramp close to the outline"), say("A ramp wants wood to either side, or it runs out at the edge.")),
    "ramp-to-pocket": Kind(say("Ramp close to a pocket"), say("The wall between a ramp and a pocket that is there breaks away where it is "
                                                              "thin.")),
    "ramp-to-slot": Kind(say("Ramp close to another slot"), say("The wood between a ramp and another slot, or its ramp, breaks away where "
                                                                "it is thin.")),
    "ramp-to-nut": Kind(say("Ramp close to the nut"), say("The nut wants a flat of face in front of the ramp.")),
    "ramp-too-deep": Kind(say("Ramp too deep"), say("A ramp has to leave wood to the back, and ends no deeper than the floor of its slot.")),
    "hole-to-ramp": Kind(say("Hole meets a ramp"),
                         say("Least wood between a drilling and the slope at the nut end of a slot.")),
    "drill-point": Kind(say("Drill point comes through"),
                        say("A drill's point runs ahead of its full diameter, and takes wood beyond the depth that is asked for.")),
    # side bores
    "misses-wood": Kind(say("Screw misses the wood"), say("A screw beside a side tuner's post has to go into the edge of the head.")),
    "cover": Kind(say("Little wood above or below"), say("Wood between a bore from the side and the face or the back.")),
    "no-slot": Kind(say("Side bore meets no slot"), say("The post of a side tuner has to lie across a slot.")),
    "slot-not-reached": Kind(say("Bore stops in the rail"), say("A side bore has to come through the rail into its slot.")),
    "post-too-long": Kind(say("Post is longer than its bore"), say("Where the bore ends in wood, the post cannot go on.")),
    "post-to-wall": Kind(say("Post end close to the inner wall"), say("The post has to turn free of the slot's inner wall.")),
    "post-to-post": Kind(say("Posts meet"), say("Posts that turn in one slot need air between them.")),
    "point-to-wall": Kind(say("Drill point scars the inner wall"), say("The drill's point runs ahead of its full diameter.")),
    "string-hole": Kind(say("String hole outside the slot"), say("The string reaches the hole in the post through the slot.")),
    "post-to-slot-end": Kind(say("Post close to the slot's end"), say("The string needs room on both sides of the post.")),
    "slot-too-shallow": Kind(say("Slot too shallow for the post"), say("A blind slot has to go below the post.")),
    "no-mark": Kind(say("No mark on the square edge"), say("A side bore starts at a mark on the square edge of the blank.")),
    "ways-meet": Kind(say("Side bores meet in the waste"),
                      say("In the waste, too, a drill that breaks into a hole finds wood on one side only, and wanders: the rest of the bore follows.")),
    "way-through-head": Kind(say("Side bore goes through wood beyond its seat"),
                             say("It is drilled from the square edge, through all that stands between the edge and the seat.")),
    "skate": Kind(say("Drill would skate"), say("A drill that enters at an angle slides off before it bites.")),
    "table-tilt": Kind(say("Tilt beyond the table"), say("The table of the drill press does not tilt that far.")),
    "shared-tilt": Kind(say("Bores share a tilt"), say("Opposite bores need one table setting; the blank is turned over.")),
    # face tuners
    "too-deep": Kind(say("Bore deeper than the wood"), say("A blind bore has to leave wood at its bottom.")),
    "post-not-through": Kind(say("Post bore does not come through"), say("The post has to pass from the back to the face.")),
    "wood-for-tuner": Kind(say("Head too thick or too thin for its hardware"),
                           say("A tuner through the face clamps wood of a certain thickness between its plate and its bushing.")),
    "ream-short": Kind(say("Reamer does not reach through"),
                       say("A tapered peg bears on the whole of its hole: the drill leaves wood for the reamer at both ends.")),
    "post-too-low": Kind(say("Post does not come out of the face"),
                         say("The string winds above the face: a thick head takes that much from what the post stands out.")),
    "string-past-post": Kind(say("String comes off beyond its post"),
                             say("The string hole and the lowest turn lie on the post.")),
    # hardware
    "seat-overhang": Kind(say("Plate overhangs"), say("A plate wants wood under all of it.")),
    "seat-over-slot": Kind(say("Plate over a slot"), say("A plate wants wood under all of it.")),
    "seats-overlap": Kind(say("Plates too close"), say("Two plates cannot lie in one place, and want a little air between them.")),
    "plate-rocks": Kind(say("Plate rocks"), say("A flat plate on a curved edge rocks or bridges: cut a flat for it.")),
    "flat-too-small": Kind(say("Flat too small for its plate"),
                           say("Wood left standing under a plate keeps it from sitting.")),
    "flat-rail": Kind(say("Rail is thin behind a flat"), say("A flat takes wood from the rail that carries the tuner.")),
    "plate-over-flat": Kind(say("Plate over a neighbour's flat"), say("A plate wants wood under all of it.")),
    "hole-to-flat": Kind(say("Hole close to a flat"), say("Least wood between a drilling and the flat cut for a side tuner's plate.")),
    "buttons": Kind(say("Buttons close together"), say("Fingers need room between the buttons as they turn.")),
    "button-to-wood": Kind(say("Button close to the wood"), say("A button behind the head needs room beyond its edge.")),
    # pins, ears, strings
    "pin-to-blank": Kind(say("Locating pin near the blank's edge"), say("A pin needs wood all round it.")),
    "hole-in-the-way": Kind(say("Hole in the way of a side bore"),
                            say("In the waste, too, a drill that meets a hole wanders, and a pin whose hole is cut stands loose.")),
    "few-pins": Kind(say("Fewer than two locating pins"), say("Two pins bring the template back to the same place.")),
    "pins-askew": Kind(say("Pins not mirrored for a template that turns over"),
                       say("Turned over, the template comes back to its place only on pins that are each other's "
                           "mirror image.")),
    "glue-line": Kind(say("Glue line through a hole"), say("A drill wanders along a glue line, and the joint is weakened.")),
    "ear-too-short": Kind(say("Ear ends too soon"), say("Beside an ear the wood ends at its glue line, and the square edge lies there.")),
    "glue-line-crossed": Kind(say("Bores cross a glue line"), say("Ears are glued before anything crosses the glue line.")),
    "feather-screw": Kind(say("Screw in a feather edge"), say("A screw lifts and splits the wood where a scarf joint runs out to nothing.")),
    "feather-edge": Kind(say("Feather edge is cut"), say("Where a scarf joint comes out on the face or the back its wood runs out to nothing, and "
                                                          "chips under a drill or a bit.")),
    "string-off-wood": Kind(say("String starts beside the wood"), say("The head has to be as wide at the nut line as the strings lie apart in "
                                                                      "the nut.")),
    "nut-step": Kind(say("Step between nut and outline"), say("The nut ends flush with the edges of the neck, and the head goes on from there.")),
    "string-off-nut": Kind(say("String beside the nut"), say("The nut has to be as wide as the strings lie apart in it.")),
    "strings-in-nut": Kind(say("Strings close together in the nut"), say("Each string needs a slot of its own in the nut, with some of it left between two.")),
    "side-angle": Kind(say("String bends sideways at the nut"), say("Above 10 degrees a string tends to catch in the nut.")),
    "break-angle": Kind(say("String bends too little over the nut"),
                        say("A string that hardly presses on its nut slot rattles there, and jumps out of it.")),
    "break-angle-steep": Kind(say("String bends steeply over the nut"),
                              say("A string that bends far over the nut wears it, and sticks in it as it is tuned.")),
    "retainer-no-hole": Kind(say("No hole for a retainer's screw"), say("A retainer is screwed to the face.")),
    "retainer-idle": Kind(say("String retainer holds nothing"), say("A retainer presses on the strings that pass under it.")),
    "retainer-bar": Kind(say("String retainer in the way"), say("The bar of a retainer needs its place on the face beside posts and other bars.")),
    "string-to-face": Kind(say("String on the face"), say("A string needs air above the wood wherever it is held down.")),
    "string-to-screw": Kind(say("String at a retainer's screw"), say("The strings pass beside the screw that holds the retainer.")),
    "string-to-post": Kind(say("String rubs on another post"), say("A string on its way to its post needs air past the "
                                                              "others.")),
    "string-to-string": Kind(say("Strings cross or touch"),
                             say("Strings that touch between the nut and their posts catch on each other as they are tuned.")),
    "string-to-nut-end": Kind(say("String over the slot's nut end"),
                              say("A string that goes down into a slot must clear the edge it dives over, or get a "
                                  "ramp.")),
    "string-to-ramp": Kind(say("String over the ramp"), say("The ramp has to lie deeper than the strings that it leads "
                                                       "down.")),
    "string-to-wall": Kind(say("String beside the slot's wall"), say("A string in a slot must not rub on the walls beside "
                                                                "it.")),
    "string-to-floor": Kind(say("String winds on the slot's floor"), say("The windings need air below the post.")),
    # router and rack
    "no-bit": Kind(say("No bit chosen for the template"), say("Without a bit the template has no size.")),
    "bush-too-narrow": Kind(say("Bit and follower do not go together"), say("The cutter has to pass through its guide bush.")),
    "bit-too-wide": Kind(say("Bit does not enter the slot"), say("The slot has to be as wide as the cutter everywhere.")),
    "template-lost": Kind(say("Template cannot hold the shape"), say("The follower rides over wood thinner than it can "
                                                                "follow.")),
    "wood-left": Kind(say("Corners tighter than the cutter"), say("The cutter leaves wood in corners to be pared by hand.")),
    "bit-too-short": Kind(say("Bit does not reach through"), say("The slot has to be finished from the other side.")),
    "bit-unguided": Kind(say("Template does not guide the bit"), say("The follower has to rub on the template at every "
                                                                "depth.")),
    "no-drill": Kind(say("No such drill in the rack"), say("The rack holds no drill of this diameter.")),
    "drill-size": Kind(say("Drill of nearly that size"),
                       say("A part that is pressed into its bore is loose in one that is a twentieth of a millimetre wider.")),
    "drill-short": Kind(say("Deeper than the drill is long"), say("The drill does not reach the bottom of the hole.")),
    "quill": Kind(say("Deeper than the quill travels"), say("The drill press has to be reset during the hole.")),
}
