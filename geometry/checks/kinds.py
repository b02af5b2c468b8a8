"""Every kind of snag by its key: a title for people and one sentence that explains it."""

from __future__ import annotations

from dataclasses import dataclass

from geometry.checks.words import SORTS, first


@dataclass(frozen=True, slots=True)
class Kind:
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
            title = f"{first(one)} meets {'another' if one == two else two}"
            found[pair_kind(one, two)] = Kind(
                title, "Least wood between two drillings, measured in space between the real cylinders.")
        found[slot_kind(one)] = Kind(f"{first(one)} meets slot", "Least wood between a drilling and a slot's wall.")
        found[outline_kind(one)] = Kind(f"{first(one)} close to the outline",
                                        "Least wood between a drilling and the edge of the finished head.")
    return found


KINDS: dict[str, Kind] = _of_drillings() | {
    # the outline, the blank, the slots
    "outline-crosses": Kind("Outline crosses itself", "A line that crosses itself encloses no head."),
    "no-place": Kind("No place for a feature", "The shapes of the layout leave this feature nowhere to be."),
    "slot-crosses": Kind("Slot crosses itself", "A wall that crosses itself cannot be routed."),
    "blank-too-small": Kind("Outline leaves the blank", "The blank has to hold the whole outline and more."),
    "rail": Kind("Rail is thin", "The rail is the wood between a slot and the outline; it carries the tuners."),
    "slot-outside": Kind("Slot leaves the head", "A slot that crosses the outline leaves no rail."),
    "web": Kind("Web is thin", "The web is the wood between two slots."),
    "slots-overlap": Kind("Slots overlap", "Two slots share wood."),
    "slot-to-nut": Kind("Slot close to the nut", "The wood between nut and slot carries the pull of the strings."),
    # side bores
    "cover": Kind("Little wood above or below", "Wood between a bore from the side and the face or the back."),
    "no-slot": Kind("No slot in the way", "The post of a side tuner has to lie across a slot."),
    "slot-not-reached": Kind("Bore stops in the rail", "A side bore has to come through the rail into its slot."),
    "post-too-long": Kind("Post is longer than its bore", "Where the bore ends in wood, the post cannot go on."),
    "post-to-wall": Kind("Post end close to the inner wall", "The post has to turn free of the slot's inner wall."),
    "point-to-wall": Kind("Drill point scars the inner wall", "The drill's point runs ahead of its full diameter."),
    "string-hole": Kind("String hole outside the slot", "The string reaches the hole in the post through the slot."),
    "post-to-slot-end": Kind("Post close to the slot's end", "The string needs room on both sides of the post."),
    "slot-too-shallow": Kind("Slot too shallow for the post", "A blind slot has to go below the post."),
    "no-mark": Kind("No mark on the square edge", "A side bore starts at a mark on the square edge of the blank."),
    "skate": Kind("Drill would skate", "A drill that enters at an angle slides off before it bites."),
    "table-tilt": Kind("Tilt beyond the table", "The table of the drill press does not tilt that far."),
    "shared-tilt": Kind("Bores share a tilt", "Opposite bores need one table setting; the blank is turned over."),
    # face tuners
    "too-deep": Kind("Bore deeper than the wood", "A blind bore has to leave wood at its bottom."),
    "post-not-through": Kind("Post bore does not come through", "The post has to pass from the back to the face."),
    # hardware
    "seat-overhang": Kind("Plate overhangs", "A plate wants wood under all of it."),
    "seat-over-slot": Kind("Plate over a slot", "A plate wants wood under all of it."),
    "seats-overlap": Kind("Plates overlap", "Two plates cannot lie in one place."),
    "plate-rocks": Kind("Plate rocks", "A flat plate on a curved edge rocks or bridges: cut a flat for it."),
    "flat-too-small": Kind("Flat too small for its plate", "Wood left standing under a plate keeps it from sitting."),
    "flat-rail": Kind("Rail is thin behind a flat", "A flat takes wood from the rail that carries the tuner."),
    "buttons": Kind("Buttons close together", "Fingers need room between the buttons as they turn."),
    "button-to-wood": Kind("Button close to the wood", "A button behind the head needs room beyond its edge."),
    # pins, ears, strings
    "pin-to-blank": Kind("Locating pin near the blank's edge", "A pin needs wood all round it."),
    "few-pins": Kind("Fewer than two locating pins", "Two pins bring the template back to the same place."),
    "pins-askew": Kind("Pins not mirrored for a template that turns over",
                       "Turned over, the template comes back to its place only on pins that are each other's mirror image."),
    "glue-line": Kind("Glue line through a hole", "A drill wanders along a glue line, and the joint is weakened."),
    "glue-line-crossed": Kind("Bores cross a glue line", "Ears are glued before anything crosses the glue line."),
    "side-angle": Kind("String bends sideways at the nut", "Above 10 degrees a string tends to catch in the nut."),
    "string-to-post": Kind("String rubs on another post", "A string on its way to its post needs air past the others."),
    "string-to-nut-end": Kind("String over the slot's nut end",
                              "A string that goes down into a slot must clear the edge it dives over, or get a ramp."),
    "string-to-ramp": Kind("String over the ramp", "The ramp has to lie deeper than the strings that it leads down."),
    "string-to-wall": Kind("String beside the slot's wall", "A string in a slot must not rub on the walls beside it."),
    "string-to-floor": Kind("String winds on the slot's floor", "The windings need air below the post."),
    # router and rack
    "no-bit": Kind("No bit chosen for the template", "Without a bit the template has no size."),
    "bush-too-narrow": Kind("Bit and follower do not go together", "The cutter has to pass through its guide bush."),
    "bit-too-wide": Kind("Bit does not enter the slot", "The slot has to be as wide as the cutter everywhere."),
    "template-lost": Kind("Template cannot hold the shape", "The follower rides over wood thinner than it can follow."),
    "wood-left": Kind("Corners tighter than the cutter", "The cutter leaves wood in corners to be pared by hand."),
    "bit-too-short": Kind("Bit does not reach through", "The slot has to be finished from the other side."),
    "bit-unguided": Kind("Template does not guide the bit", "The follower has to rub on the template at every depth."),
    "no-drill": Kind("No such drill in the rack", "The rack holds no drill of this diameter."),
    "drill-short": Kind("Deeper than the drill is long", "The drill does not reach the bottom of the hole."),
    "quill": Kind("Deeper than the quill travels", "The drill press has to be reset during the hole."),
}
