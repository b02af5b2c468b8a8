"""Cases of side bores in their slots, of plates, buttons and strings."""

import math

from msgspec.structs import replace

from geometry.layout import Blank, Button, DrillPress, Margins, Post, Rack
from tests.geometry.checks.case import Case
from tests.geometry.checks.heads import (
    BIT,
    DRILLS,
    OBLONG,
    bore,
    bulging,
    face,
    head,
    leaning,
    loop,
    pattern,
    side,
    slot,
)

SPOILS, TIGHT, NOTE = "spoils the work", "tight", "note"


def _side(diameter=6.0, depth=30.0, post=(6.0, 25.0, 26.0), along=90.0, slots=(slot(),), **parts):
    """One side tuner on the edge x = 40; the slot's walls lie 20 and 32 mm from the seat."""
    of = pattern("of", "side", bore(diameter=diameter, surface="seat", depth=depth), post=post,
                 seat=parts.pop("seat", (2.0, 2.0, 4.0)), button=parts.pop("button", None))
    return head(tuners=(side("a", along, of, **parts.pop("tuner", {})),), patterns=(of,), slots=slots, **parts)


def _small(role, below):
    """A side tuner with a screw or moulded pin of 2 mm, `below` mm under its axis at half of 16."""
    of = pattern("of", "side", bore(surface="seat", depth=30.0), bore(role, 2.0, "seat", (9.0, below), 8.0))
    return head(tuners=(side("a", 90.0, of),), patterns=(of,), slots=(slot(),))


def _beyond(along=84.0, edge=40.0):
    """A side tuner with a screw 9 mm to its tip, 8 deep; from y = 85 on the treble edge stands at x = `edge`."""
    of = pattern("of", "side", bore(surface="seat", depth=30.0), bore("screw", 2.0, "seat", (9.0, 0.0), 8.0))
    outline = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 85.0), (edge, 85.0), (edge, 180.0), (-40.0, 180.0)) if edge < 40 else OBLONG
    return head(tuners=(side("a", along, of),), patterns=(of,), slots=(slot(nut=20.0),), outline=outline)


def _blank(tip):
    return Blank(bass=50.0, treble=50.0, tip=tip, behind=20.0, thickness=16.0)


def _press(tilt):
    return Rack(bits=(BIT,), drills=DRILLS, press=DrillPress(quill=200.0, tilt=tilt))


def _opposite(depth=None):
    of = pattern("of", "side", bore(surface="seat", depth=30.0))
    return head(tuners=(side("a", 90.0, of, "treble"), side("b", 90.0, of, "bass", depth)), patterns=(of,),
                slots=(slot("treble slot", x=14.0), slot("bass slot", x=-14.0)))


def _thick(post, wood=None, **limits):
    """A face tuner whose post is (length, string hole, winding) from its plate, in wood 16 thick or `wood`."""
    length, hole, winding = post
    of = replace(pattern("of", "face", bore()), post=Post(diameter=6.0, length=length, string_hole=hole, winding=winding,
                                                          measured="plate"), **limits)
    made = head(tuners=(face("a", 0.0, 90.0, of),), patterns=(of,))
    return made if wood is None else replace(made, blank=replace(made.blank, thickness=wood))


def _peg(drilled, wide, taper=25.0):
    """A peg through wood 16 thick, drilled from the back and reamed there."""
    return head(tuners=(face("a", 0.0, 90.0, of := pattern("of", "face", bore(diameter=drilled, surface="back", reamed=wide, taper=taper))),),
                patterns=(of,))


def _beside_post(v, **margins):
    """A screw of 1.5, v mm from the axis of a peg that is drilled 6 and reamed to 9."""
    of = pattern("of", "face", bore(surface="back", reamed=9.0, taper=30.0), bore("screw", diameter=1.5, surface="back", at=(0.0, v), depth=6.0))
    return head(tuners=(face("a", 0.0, 90.0, of),), patterns=(of,), margins=Margins(**margins))


_FITTING = (
    # 7.2 less radii of 4.5 and 0.75; of bores drilled 6 alone 3.45 would be left.
    Case("bore-to-screw", _beside_post(7.2), 1.95, TIGHT, _beside_post(7.25), between=("a",)),
    Case("bore-to-screw", _beside_post(9.0, bore_bore=0.5, screw_any=4.0), 3.75, TIGHT, _beside_post(9.25, bore_bore=0.5, screw_any=4.0), between=("a",)),
    # 16 / 25 is 0.64: a bore reamed to 8 at the back is 7.36 at the face.
    Case("ream-short", _peg(7.4, 8.0), 7.36, TIGHT, _peg(7.36, 8.0)),
    Case("ream-short", _peg(7.4, 8.0), 7.36, TIGHT, _peg(7.4, 8.0, 30.0)),
    Case("wood-for-tuner", _thick((36.0, 28.0, 22.0), most_wood=15.0), 16.0, TIGHT, _thick((36.0, 28.0, 22.0), most_wood=16.0)),
    Case("wood-for-tuner", _thick((36.0, 28.0, 22.0), 11.5, least_wood=12.0), 11.5, TIGHT,
         _thick((36.0, 28.0, 22.0), 12.0, least_wood=12.0)),
    # The string comes off 16.6 from the plate, 0.6 above the face of wood 16 thick; and 15 from it, in the wood.
    Case("post-too-low", _thick((30.0, 22.0, 16.6)), 0.6, TIGHT, _thick((30.0, 22.0, 17.0)), between=("a", "face")),
    Case("post-too-low", _thick((30.0, 15.0, None)), -1.0, TIGHT, _thick((30.0, 17.0, None))),
    Case("string-past-post", _thick((30.0, 22.0, 30.5)), 30.5, TIGHT, _thick((30.0, 22.0, 30.0))),
    Case("string-past-post", _thick((30.0, 31.0, 20.0)), 31.0, TIGHT, _thick((30.0, 30.0, 20.0))),
    Case("string-past-post", _side(post=(6.0, 25.0, 26.0)), 26.0, TIGHT, _side(post=(6.0, 26.0, 26.0))),
)

_SIDES = (
    Case("cover", _side(diameter=12.0), 2.0, TIGHT, _side(diameter=10.0), between=("a", "face")),
    Case("cover", _side(tuner={"depth": 14.0}), -1.0, SPOILS, _side(tuner={"depth": 10.0}), between=("a", "back")),
    # A moulded pin wants as much wood as a screw, 2 mm: 16 - 8 - 5.5 - 1 are 1.5.
    *(Case("cover", _small(role, 5.5), 1.5, TIGHT, _small(role, 5.0), between=("a", "back")) for role in ("screw", "pin")),
    # Past the tip end at y = 180; where the edge stands 5 mm farther in, 3 mm of wood are left of 8.
    Case("misses-wood", _beyond(along=176.0), 0.0, SPOILS, _beyond(along=150.0), between=("a", "outline")),
    Case("misses-wood", _beyond(edge=35.0), 3.0, TIGHT, _beyond(edge=36.0), between=("a", "outline")),
    Case("no-slot", _side(slots=()), None, SPOILS, _side()),
    Case("no-slot", _side(slots=(slot(depth=7.0),)), None, SPOILS, _side()),
    Case("slot-not-reached", _side(depth=18.0), 18.0, SPOILS, _side(depth=20.0)),
    Case("post-too-long", _side(depth=34.0, post=(6.0, 35.0, 26.0)), 34.0, SPOILS,
         _side(depth=34.0, post=(6.0, 34.0, 26.0))),
    Case("post-to-wall", _side(post=(6.0, 31.5, 26.0)), 0.5, TIGHT, _side(post=(6.0, 31.0, 26.0))),
    Case("post-to-wall", _side(post=(6.0, 33.0, 26.0)), -1.0, SPOILS, _side(post=(6.0, 31.0, 26.0))),
    # A brad drill of 6 mm runs 1.8 mm ahead of its full diameter.
    Case("point-to-wall", _side(depth=31.0), -0.8, TIGHT, _side(depth=30.2)),
    Case("string-hole", _side(post=(6.0, 25.0, 21.0)), 1.0, TIGHT, _side(post=(6.0, 25.0, 21.5))),
    Case("string-hole", _side(post=(6.0, 30.0, 33.0)), -1.0, SPOILS, _side(post=(6.0, 30.0, 30.5))),
    # The string hole lies on the slot's middle, whose round end reaches to y = 156.
    Case("post-to-slot-end", _side(along=152.5), 0.5, TIGHT, _side(along=152.0)),
    Case("post-to-slot-end", _side(along=154.0), -1.0, SPOILS, _side(along=152.0)),
    Case("slot-too-shallow", _side(slots=(slot(depth=11.5),)), 0.5, TIGHT, _side(slots=(slot(depth=12.0),))),
    Case("no-mark", _side(along=178.0, blank=_blank(182.0)), 1.0, TIGHT, _side(along=178.0, blank=_blank(183.0))),
    # The edge leans by as much as the bore is tilted.
    Case("skate", _side(outline=leaning(10.0)), 10.0, NOTE, _side(outline=leaning(8.0))),
    Case("table-tilt", _side(outline=leaning(10.0), rack=_press(5.0)), 10.0, TIGHT,
         _side(outline=leaning(10.0), rack=_press(10.0))),
    Case("shared-tilt", _opposite(), 0.0, NOTE, _opposite(depth=9.0), between=("a", "b")),
)


def _face(x, y=90.0, seat=(8.0, 9.0, 24.0), button=None, **parts):
    of = pattern("of", "face", bore(), seat=seat, button=button)
    return head(tuners=(face("a", x, y, of),), patterns=(of,), **parts)


def _two(step, seat=(8.0, 9.0, 24.0), button=None):
    of = pattern("of", "face", bore(), seat=seat, button=button)
    return head(tuners=(face("a", 10.0, 60.0, of), face("b", 10.0, 60.0 + step, of)), patterns=(of,))


def _two_sides(step):
    of = pattern("of", "side", bore(surface="seat", depth=30.0), seat=(12.0, 12.0, 10.0))
    return head(tuners=(side("a", 60.0, of), side("b", 60.0 + step, of)), patterns=(of,))


_NOTCHED = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 88.0), (33.0, 90.0), (40.0, 92.0), (40.0, 180.0), (-40.0, 180.0))
"""A hollow that runs under a plate between its corners."""

_PLATES = (
    Case("seat-overhang", _face(32.0), 0.0, TIGHT, _face(31.5)),
    Case("seat-overhang", _face(34.0), -2.0, TIGHT, _face(31.5)),
    Case("seat-overhang", _face(30.0, seat=(6.0, 6.0, 12.0), outline=_NOTCHED), -3.0, TIGHT, _face(26.5, seat=(6.0, 6.0, 12.0), outline=_NOTCHED)),
    Case("seat-overhang", _side(seat=(12.0, 12.0, 15.5)), 0.25, TIGHT, _side(seat=(12.0, 12.0, 15.0)),
         between=("a", "face")),
    Case("seat-overhang", _side(along=171.0, slots=(), seat=(12.0, 12.0, 10.0)), -3.0, TIGHT,
         _side(along=168.0, slots=(), seat=(12.0, 12.0, 10.0))),
    # The plate reaches 9 mm behind the post, the slot's wall stands at x = 20.
    Case("seat-over-slot", _face(28.0, slots=(slot(),)), -1.0, TIGHT, _face(29.0, slots=(slot(),)), within=0.003),
    Case("seats-overlap", _two(24.3), 0.3, TIGHT, _two(24.5)),
    Case("seats-overlap", _two(23.0), -1.0, SPOILS, _two(24.5)),
    Case("seats-overlap", _two_sides(24.2), 0.2, TIGHT, _two_sides(24.5)),
    Case("seats-overlap", _two_sides(22.0), -2.0, SPOILS, _two_sides(24.5)),
    # A plate of 24 mm on a radius of 200: 200 - sqrt(200^2 - 12^2).
    Case("plate-rocks", _side(outline=bulging(200.0), seat=(12.0, 12.0, 10.0)), 200 - math.sqrt(200 ** 2 - 144), NOTE,
         _side(seat=(12.0, 12.0, 10.0))),
)


def _button(reach=60.0, width=18.0, stand=7.0):
    return Button(reach=reach, length=12.0, width=width, thickness=6.0, stand=stand)


def _beside_edge(stand, reach=12.0):
    """A side tuner whose button of 14 begins 8 mm before its end and turns `stand` mm outside the edge; its shaft starts 8 above the back."""
    button = Button(reach=reach, length=8.0, width=14.0, thickness=6.0, stand=stand)
    of = pattern("of", "side", bore(surface="seat", depth=30.0), button=button)
    return head(tuners=(side("a", 100.0, of),), patterns=(of,), slots=(slot(),))


_SMALL = (2.0, 2.0, 4.0)


def _facing(apart, length=45.0):
    """Side tuners through both edges, x = 40 and x = -40, their posts of 6 in one slot between x = -12 and 12, `apart` mm along it."""
    of = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, length, 32.0))
    return head(tuners=(side("a", 90.0, of), side("b", 90.0 + apart, of, edge="bass")), patterns=(of,), slots=(slot(x=0.0, width=24.0),))


_POSTS = (
    Case("post-to-post", _facing(6.4), 0.4, TIGHT, _facing(7.0)),
    Case("post-to-post", _facing(5.0), -1.0, SPOILS, _facing(7.0)),
    # In one line: each as long as half of the head is wide less 0.2.
    Case("post-to-post", _facing(0.0, 39.8), 0.4, TIGHT, _facing(0.0, 39.5)),
)
_BUTTONS = (
    Case("button-to-wood", _beside_edge(9.0), 2.0, NOTE, _beside_edge(10.0), between=("a", "outline")),
    Case("button-to-wood", _beside_edge(6.0), -1.0, TIGHT, _beside_edge(6.0, 19.0), between=("a", "outline")),
    # 0.9 below the back and 1.2 outside the edge; then under the head.
    Case("button-to-wood", _beside_edge(8.2, 16.9), 1.5, NOTE, _beside_edge(8.2, 19.0), between=("a", "outline")),
    Case("button-to-wood", _beside_edge(6.0, 16.9), 0.9, NOTE, _beside_edge(6.0, 19.0), between=("a", "outline")),
    Case("buttons", _two(20.0, _SMALL, _button()), 2.0, TIGHT, _two(21.0, _SMALL, _button())),
    Case("buttons", _two(17.0, _SMALL, _button()), -1.0, SPOILS, _two(21.0, _SMALL, _button())),
    # The button begins reach - length = 8 mm out from the post.
    Case("button-to-wood", _face(34.0, seat=_SMALL, button=_button(20.0)), 2.0, NOTE,
         _face(35.0, seat=_SMALL, button=_button(20.0))),
    Case("button-to-wood", _face(30.0, seat=_SMALL, button=_button(20.0)), -2.0, TIGHT,
         _face(35.0, seat=_SMALL, button=_button(20.0)), within=0.003),
    Case("button-to-wood", _face(30.0, seat=_SMALL, button=_button(20.0, stand=9.0)), -2.0, NOTE,
         _face(35.0, seat=_SMALL, button=_button(20.0)), within=0.003),
)


CASES = (*_FITTING, *_SIDES, *_PLATES, *_POSTS, *_BUTTONS)
