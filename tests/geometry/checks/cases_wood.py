"""Cases of the outline, the blank, slots, depths, pins, ears, bits and drills."""

import math

from msgspec.structs import replace

from geometry.layout import (
    Blank,
    Book,
    Bored,
    Done,
    Drill,
    DrillPress,
    Ear,
    GuideBush,
    Loop,
    Node,
    Nut,
    Pin,
    Rack,
    Ramp,
    RouterBit,
    Shaped,
    SingleHole,
    Slot,
    StraightSlot,
    Task,
    Template,
)
from geometry.solids.spots import set_down
from tests.geometry.checks.case import Case
from tests.geometry.checks.heads import (
    BIT,
    DRILLS,
    FACE,
    PINS,
    SIDE,
    THICK,
    bore,
    drawn,
    face,
    head,
    loop,
    pattern,
    side,
    slot,
)

SPOILS, TIGHT, NOTE = "spoils the work", "tight", "note"


def _blank(**parts):
    return Blank(**(dict(bass=50.0, treble=50.0, tip=190.0, behind=20.0, thickness=16.0) | parts))


def _rack(**parts):
    return Rack(**(dict(bits=(BIT,), drills=DRILLS, press=DrillPress(quill=200.0)) | parts))


_FLAT_LINE = Loop(nodes=(Node(at=(0.0, 0.0)), Node(at=(10.0, 0.0))))
_BOW_TIE = loop((-40.0, 0.0), (40.0, 180.0), (-40.0, 180.0), (40.0, 0.0))
_CROSSED = drawn("slot", (0.0, 60.0), (20.0, 80.0), (20.0, 60.0), (0.0, 80.0))
_OUTLINES = (
    Case("outline-crosses", head(outline=_BOW_TIE), None, SPOILS, head()),
    Case("no-place", head(outline=_FLAT_LINE, tuners=(side("a", 90.0),), patterns=(SIDE,)), None, SPOILS,
         head(tuners=(side("a", 90.0),), patterns=(SIDE,))),
    Case("blank-too-small", head(blank=_blank(treble=41.0)), 1.0, TIGHT, head(blank=_blank(treble=42.0))),
    Case("blank-too-small", head(blank=_blank(tip=178.0)), -2.0, SPOILS, head(blank=_blank(tip=182.0))),
    Case("blank-too-thick", head(blank=_blank(thickness=406.4)), -346.4, SPOILS, head(blank=_blank(thickness=60.0))),
    Case("blank-too-small", head(outline=loop((-40.0, -25.0), (40.0, -25.0), (40.0, 180.0), (-40.0, 180.0))), -5.0,
         SPOILS, head(outline=loop((-40.0, -20.0), (40.0, -20.0), (40.0, 180.0), (-40.0, 180.0)))),
)

# Slots of 12 mm: the walls lie 6 mm to either side of x, the round ends reach 6 mm beyond nut and tip.
_SLOTS = (
    Case("slot-crosses", head(slots=(_CROSSED,)), None, SPOILS, head(slots=(slot(),))),
    Case("rail", head(slots=(slot(x=28.0),)), 6.0, TIGHT, head(slots=(slot(x=26.0),))),
    Case("rail", head(slots=(slot(x=0.0, tip=170.0),), pins=()), 4.0, TIGHT, head(slots=(slot(x=0.0, tip=166.0),))),
    Case("slot-outside", head(slots=(slot(x=38.0),)), -4.0, SPOILS, head(slots=(slot(x=26.0),))),
    Case("web", head(slots=(slot("a", x=-10.0), slot("b", x=10.0))), 8.0, TIGHT,
         head(slots=(slot("a", x=-11.0), slot("b", x=11.0)))),
    Case("slots-overlap", head(slots=(slot("a", x=-5.0), slot("b", x=5.0))), -2.0, SPOILS,
         head(slots=(slot("a", x=-11.0), slot("b", x=11.0))), within=0.003),
    Case("slot-floor", head(slots=(slot(depth=14.0),)), 2.0, TIGHT, head(slots=(slot(depth=13.0),)), between=("slot", "back")),
    Case("slot-to-nut", head(slots=(slot(nut=12.0),)), 6.0, TIGHT, head(slots=(slot(nut=16.0),))),
    Case("slot-to-nut", head(slots=(slot(nut=4.0),)), -2.0, SPOILS, head(slots=(slot(nut=16.0),))),
)

_DEEP_SCREW = pattern("deep", "face", bore(role="screw", diameter=2.0, surface="back", depth=14.0))
_JUST_SCREW = pattern("just", "face", bore(role="screw", diameter=2.0, surface="back", depth=13.4))
_FLOORLESS = pattern("floorless", "face", bore(role="counterbore", diameter=8.0, depth=17.0), bore())
_FLOORED = pattern("floored", "face", bore(role="counterbore", diameter=8.0, depth=13.0), bore())
_STUCK = pattern("stuck", "face", bore(depth=10.0))
_OPENED = pattern("opened", "face", bore(depth=10.0), bore(role="clearance", diameter=8.0, surface="back", depth=6.0))


def _one(of):
    return head(tuners=(face("a", 0.0, 90.0, of),), patterns=(of,))


# 16 mm of wood; a brad drill of 2 mm has a spur of 0.6 mm.
_DEPTHS = (
    Case("too-deep", _one(_DEEP_SCREW), 1.4, TIGHT, _one(_JUST_SCREW)),
    Case("too-deep", _one(_FLOORLESS), -1.0, SPOILS, _one(_FLOORED)),
    Case("too-deep", head(holes=(SingleHole(id="h", at=(0.0, 90.0), diameter=2.0, depth=13.0),)), 2.4, TIGHT,
         head(holes=(SingleHole(id="h", at=(0.0, 90.0), diameter=2.0, depth=12.4),))),
    Case("post-not-through", _one(_STUCK), 10.0, SPOILS, _one(_OPENED)),
)

_TURNS = _rack(bits=(RouterBit(id="bit 10", cutter=10.0, cutting_length=8.0, shank=8.0, stick_out=15.0, bearing="shank",
                               bearing_diameter=10.0),))
_OFF = (PINS[0], Pin(id="tip pin", at=(1.5, 172.0), diameter=2.0))
def hollow(s, depths=(None, None), edge=50.0):
    """Two side bores of 6 that lean towards each other by 3 in 4, s mm down the flanks of a notch from (40, 50) and (40, 114).

    At an edge x = 50 the axes are 2 (82 - 50 - 0.8 s - 0.75 (10 + 0.6 s)) apart, and the rims reach out 2.25 farther along
    them: less 2.7 makes 46.3 - 2.5 s. At x = 60 they have crossed.
    """
    notched = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 50.0), (16.0, 82.0), (40.0, 114.0), (40.0, 180.0), (-40.0, 180.0))
    return head(outline=notched, tuners=(side("a", 50.0 + s, depth=depths[0]), side("b", 130.0 - s, depth=depths[1])), patterns=(SIDE,),
                blank=Blank(bass=50.0, treble=edge, tip=190.0, behind=20.0, thickness=THICK))


_WAYS = (
    Case("ways-meet", hollow(16.52), -1.0, TIGHT, hollow(14.92), between=("a", "b")),
    Case("ways-meet", hollow(15.72), 1.0, TIGHT, hollow(14.92), between=("a", "b")),
    # Where they cross one lies 7 below the other: 1 of wood between them, and 3 at 9.
    Case("ways-meet", hollow(16.0, (4.5, 11.5), 60.0), 1.0, TIGHT, hollow(16.0, (3.5, 12.5), 60.0)),
    Case("ways-meet", hollow(16.0, edge=60.0), -6.0, TIGHT, hollow(16.0, (3.5, 12.5), 60.0)),
)
def hooked(s):
    """A side bore of 6 that leans out by 3 in 4, s mm down the flank of a notch under a hook: the hook's corner at (40, 90) is 0.8 (90 - 50 - 1.25 s)
    from the axis, 32 - s."""
    notched = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 50.0), (16.0, 82.0), (16.0, 90.0), (40.0, 90.0), (40.0, 180.0), (-40.0, 180.0))
    return head(outline=notched, tuners=(side("a", 50.0 + s),), patterns=(SIDE,))


def _there(x, y, depth=None):
    return SingleHole(id="old", at=(x, y), diameter=4.0, depth=depth, there=True)


def _pocketed(y, depth=None):
    """A side bore of 6 at y = 90, and a pocket 4 wide and 6 long across the waste at that y, that is there."""
    pocket = Slot(id="old", shape=StraightSlot(nut_end=(42.0, y), tip_end=(48.0, y), width=4.0), depth=depth, there=True)
    return head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(pocket,))


_HOOKS = (Case("way-through-head", hooked(29.01), None, SPOILS, hooked(29.0), between=("a", "outline")),
          Case("way-through-head", hooked(36.0), None, SPOILS, hooked(28.0), between=("a", "outline")))
_PINS = (
    Case("pin-to-blank", head(pins=(*PINS, Pin(id="p", at=(0.0, 185.0), diameter=6.0))), 2.0, TIGHT,
         head(pins=(*PINS, Pin(id="p", at=(0.0, 184.0), diameter=6.0)))),
    Case("pin-to-blank", head(pins=(*PINS, Pin(id="p", at=(48.0, 90.0), diameter=6.0))), -1.0, SPOILS,
         head(pins=(*PINS, Pin(id="p", at=(44.0, 90.0), diameter=6.0)))),
    # The bore of 6 at y = 90 comes in from the square edge x = 50 to its seat at x = 40; below that a pin in the wood is told otherwise.
    Case("hole-in-the-way", head(tuners=(side("a", 90.0),), patterns=(SIDE,), pins=(*PINS, Pin(id="p", at=(44.5, 85.0), diameter=2.0))), 1.0,
         TIGHT, head(tuners=(side("a", 90.0),), patterns=(SIDE,), pins=(*PINS, Pin(id="p", at=(44.5, 83.0), diameter=2.0)))),
    Case("hole-in-the-way", head(tuners=(side("a", 90.0),), patterns=(SIDE,), pins=(*PINS, Pin(id="p", at=(45.0, 90.0), diameter=2.0))), -4.0,
         TIGHT, head(tuners=(side("a", 90.0),), patterns=(SIDE,), pins=(*PINS, Pin(id="p", at=(45.0, 97.0), diameter=2.0)))),
    # So it does of holes of 4 that are there: beside one that goes through, and 1.5 below a blind one of 3.5 (8 - 3 - 3.5).
    Case("hole-in-the-way", head(tuners=(side("a", 90.0),), patterns=(SIDE,), holes=(_there(45.0, 83.5),)), 1.5, TIGHT,
         head(tuners=(side("a", 90.0),), patterns=(SIDE,), holes=(_there(45.0, 82.0),)), between=("old", "a")),
    Case("hole-in-the-way", head(tuners=(side("a", 90.0),), patterns=(SIDE,), holes=(_there(45.0, 90.0, 3.5),)), 1.5, TIGHT,
         head(tuners=(side("a", 90.0),), patterns=(SIDE,), holes=(_there(45.0, 90.0, 2.0),)), between=("old", "a")),
    # And of a pocket 4 wide in the waste, from x = 42 to 48: its flank at y = 82 is 5 from the bore's, 3 wanted; blind ones end above it.
    Case("hole-in-the-way", _pocketed(83.0), 2.0, TIGHT, _pocketed(81.9), between=("old", "a"), within=0.02),
    Case("hole-in-the-way", _pocketed(90.0), -5.0, TIGHT, _pocketed(98.1), between=("old", "a"), within=0.02),
    Case("hole-in-the-way", _pocketed(90.0, 3.5), 1.5, TIGHT, _pocketed(90.0, 2.0), between=("old", "a")),
    # A stick-out of 15 in a template of 6: 9 into 16 of wood, so it turns over. The image of
    # (1.5, 172) is 3 away from it; 0.025 off the centreline misses by 0.05, which is let pass.
    Case("pins-askew", head(slots=(slot(),), pins=_OFF, rack=_TURNS), 3.0, TIGHT,
         head(slots=(slot(),), pins=(PINS[0], Pin(id="tip pin", at=(0.025, 172.0), diameter=2.0)), rack=_TURNS)),
    Case("pins-askew", head(slots=(slot(),), pins=(*PINS, Pin(id="p", at=(-30.0, 100.0), diameter=2.0)), rack=_TURNS), 60.0, TIGHT,
         head(slots=(slot(),), pins=(*PINS, Pin(id="p", at=(-30.0, 100.0), diameter=2.0)))),
    # In the waste beyond x = 40 a pin serves a template as large as the blank alone.
    Case("few-pins", head(slots=(slot(),), pins=(PINS[0], Pin(id="p", at=(45.0, 90.0), diameter=2.0))), None, NOTE,
         head(slots=(slot(),), pins=(PINS[0], Pin(id="p", at=(45.0, 90.0), diameter=2.0)), template=Template(bit="bit 10", thickness=6.0, board="blank"))),
    Case("few-pins", head(slots=(slot(),), pins=PINS[:1]), None, NOTE, head(slots=(slot(),))),
)

# An ear of 15 mm on the treble edge of the blank at x = 50: its glue line is x = 35.
_EAR = Ear(id="ear", side="treble", width=15.0, start=0.0, end=180.0)
def _eared(width, start, end=190.0, **parts):
    return head(ears=(Ear(id="ear", side="treble", width=width, start=start, end=end),), **parts)


_AT_60 = {"tuners": (side("a", 60.0),), "patterns": (SIDE,)}
_EARS = (
    # Beside an ear of 15 the wood ends at x = 35, and the head is 40 wide to that side; a bore of 6 has its mark at y = 60.
    Case("ear-too-short", _eared(15.0, 20.0), -20.0, SPOILS, _eared(15.0, 0.0), between=("ear", "outline")),
    Case("ear-too-short", _eared(15.0, 0.0, 150.0), -30.0, SPOILS, _eared(15.0, 0.0, 180.0), between=("ear", "outline")),
    Case("ear-too-short", _eared(8.0, 56.0, **_AT_60), 1.0, TIGHT, _eared(8.0, 55.0, **_AT_60), between=("a", "ear")),
    Case("ear-too-short", _eared(8.0, 64.0, **_AT_60), -7.0, SPOILS, _eared(8.0, 55.0, **_AT_60), between=("a", "ear")),
    Case("glue-line", head(ears=(_EAR,), holes=(SingleHole(id="h", at=(33.0, 90.0), diameter=6.0),)), -1.0, TIGHT,
         head(ears=(_EAR,), holes=(SingleHole(id="h", at=(32.0, 90.0), diameter=6.0),))),
    Case("glue-line-crossed", head(ears=(_EAR,), tuners=(side("a", 90.0),), patterns=(SIDE,)), None, NOTE,
         head(ears=(Ear(id="ear", side="treble", width=15.0, start=0.0, end=80.0),), tuners=(side("a", 90.0),),
              patterns=(SIDE,))),
)

# A joint that leaves the face at y = 90 and falls by 0.4: the back, 16 below, it reaches at y = 50.
_LEANS = Nut(pitch=math.degrees(math.atan(0.4)))


_ASKEW = Nut(pitch=_LEANS.pitch, slant=math.degrees(math.atan(0.5)))


def _joined(v=None, surface="face", **parts):
    """A face tuner at y = 60 with a screw of 2 mm at y = 60 + v."""
    of = FACE if v is None else pattern("screwed", "face", bore(), bore("screw", diameter=2.0, surface=surface, at=(0.0, v), depth=9.0))
    tuners = () if v is None else (face("a", -20.0, 60.0, of),)
    return head(**(dict(blank=_blank(scarf=90.0), nut=_LEANS, patterns=(of,), tuners=tuners) | parts))


def _ramped(length):
    return replace(slot(nut=100.0, depth=8.0), ramp=Ramp(length=length, depth=1.0))


_FEATHERS = (
    Case("feather-screw", _joined(27.0), 2.0, TIGHT, _joined(26.0), between=("a",)),
    Case("feather-screw", _joined(-10.5, "back"), -0.5, TIGHT, _joined(-14.0, "back"), between=("a",)),
    Case("feather-screw", _joined(-10.5, "back"), -0.5, TIGHT, _joined(-8.0, "back", blank=_blank(scarf=87.5, back_veneer=1.0)), between=("a",)),
    Case("feather-screw", _joined(27.0), 2.0, TIGHT, _joined(27.0, blank=_blank(scarf=90.0, face_veneer=1.0)), between=("a",)),
    # Turned by a slope of 1 in 2 the line passes (16, 82): (16, 82 + h) is h x 2 / sqrt(5) away from it.
    Case("feather-edge", _joined(nut=_ASKEW, holes=(SingleHole(id="h", at=(16.0, 82.0 + 2.49 * math.sqrt(5)), diameter=4.0, depth=6.0),)), None, NOTE,
         _joined(nut=_ASKEW, holes=(SingleHole(id="h", at=(16.0, 82.0 + 2.5 * math.sqrt(5)), diameter=4.0, depth=6.0),)), between=("h",)),
    Case("feather-edge", _joined(holes=(SingleHole(id="h", at=(0.0, 94.0), diameter=4.0, depth=6.0),)), None, NOTE,
         _joined(holes=(SingleHole(id="h", at=(0.0, 95.0), diameter=4.0, depth=6.0),)), between=("h",)),
    Case("feather-edge", _joined(slots=(slot(nut=50.0, tip=82.0, depth=8.0),)), None, NOTE, _joined(slots=(slot(nut=50.0, tip=81.0, depth=8.0),)),
         between=("slot",)),
    # The slot begins 4 past the line, its ramp 1.5 before it.
    Case("feather-edge", _joined(slots=(_ramped(1.5),)), None, NOTE, _joined(slots=(_ramped(1.0),)), between=("slot",)),
    Case("feather-edge", _joined(slots=(slot(),)), None, NOTE,
         _joined(slots=(slot(),), blank=_blank(scarf=90.0, face_veneer=1.0, back_veneer=0.6)), between=("slot",)),
)

_SQUARE = drawn("slot", (0.0, 60.0), (20.0, 60.0), (20.0, 80.0), (0.0, 80.0))
_QUARTER = math.tan(math.pi / 8)
_ROUNDED = drawn("slot", (5.0, 60.0), (15.0, 60.0, _QUARTER), (20.0, 65.0), (20.0, 75.0, _QUARTER), (15.0, 80.0),
                 (5.0, 80.0, _QUARTER), (0.0, 75.0), (0.0, 65.0, _QUARTER))
# Two rooms of 20 mm joined by a neck of 9 mm.
_NECK = drawn("slot", (-10.0, 40.0), (10.0, 40.0), (10.0, 60.0), (4.5, 60.0), (4.5, 70.0), (10.0, 70.0), (10.0, 90.0),
              (-10.0, 90.0), (-10.0, 70.0), (-4.5, 70.0), (-4.5, 60.0), (-10.0, 60.0))
# A tongue of wood, 6 mm thick and 30 mm long, between two rooms.
_TONGUE = drawn("slot", (-25.0, 60.0), (25.0, 60.0), (25.0, 120.0), (3.0, 120.0), (3.0, 90.0), (-3.0, 90.0),
                (-3.0, 120.0), (-25.0, 120.0))
_OPEN = 2 * math.asin(3.0 / 5.5)
_SEGMENT = 5.5 ** 2 * (_OPEN - math.sin(_OPEN)) / 2
_BUSH = GuideBush(id="bush", outer=21.0, inner=11.0, length=6.0)
_NARROW = GuideBush(id="narrow", outer=12.0, inner=9.0, length=6.0)
_SHORT = RouterBit(id="short", cutter=10.0, cutting_length=14.0, shank=12.0, stick_out=40.0)
_JUST = RouterBit(id="just", cutter=10.0, cutting_length=16.0, shank=12.0, stick_out=40.0)

# Bearing above the edges: with 30 mm of cutting edges and 3 mm that have to rub on a template of 6 mm the first pass
# is at least 30 + 3 - 6 = 27 mm deep; with 12 mm it is 9, less than the cutter is wide.
_LONG = RouterBit(id="long", cutter=10.0, cutting_length=30.0, shank=8.0, stick_out=60.0, bearing="shank",
                  bearing_diameter=10.0)
_STUBBY = RouterBit(id="stubby", cutter=10.0, cutting_length=12.0, shank=8.0, stick_out=60.0, bearing="shank",
                    bearing_diameter=10.0)


def _with_bush(bush, shape):
    return head(slots=(shape,), rack=_rack(bushes=(bush,)), template=Template(bit="bit 10", bush=bush.id))


def _with_bit(bit):
    return head(slots=(slot(),), rack=_rack(bits=(bit,)), template=Template(bit=bit.id))


_BITS = (
    Case("no-bit", head(slots=(slot(),), template=Template()), None, NOTE, head(slots=(slot(),))),
    Case("bush-too-narrow", _with_bush(_NARROW, slot()), None, SPOILS, _with_bush(_BUSH, slot())),
    Case("bit-too-wide", head(slots=(slot(width=9.0),)), 9.0, SPOILS, head(slots=(slot(width=10.0),))),
    Case("bit-too-wide", head(slots=(_NECK,)), 9.0, SPOILS,
         head(slots=(_NECK,), rack=_rack(bits=(RouterBit(id="bit 10", cutter=9.0, cutting_length=20.0, shank=8.0,
                                                         stick_out=40.0),))), within=0.02),
    # A follower of 21 mm over a cutter of 10 mm follows no wood narrower than 11: of the tongue's 180 mm2 only the
    # segment of its circle that fits into the 6 mm mouth stays.
    Case("template-lost", _with_bush(_BUSH, _TONGUE), 180.0 - _SEGMENT, SPOILS, head(slots=(_TONGUE,)), within=0.1),
    # Four corners of a square, each 5^2 (1 - pi / 4).
    Case("wood-left", head(slots=(_SQUARE,)), 100 * (1 - math.pi / 4), NOTE, head(slots=(_ROUNDED,)), within=0.02),
    Case("bit-unguided", _with_bit(_LONG), None, TIGHT, _with_bit(_STUBBY)),
    Case("bit-too-short", _with_bit(_SHORT), 14.0, NOTE, _with_bit(_JUST)),
    Case("bit-too-short", head(slots=(slot(depth=15.0),), rack=_rack(bits=(_SHORT,)), template=Template(bit="short")),
         14.0, TIGHT, head(slots=(slot(depth=14.0),), rack=_rack(bits=(_SHORT,)), template=Template(bit="short"))),
)

_NINE = pattern("nine", "face", bore(diameter=9.0))
_STUB = _rack(drills=tuple(Drill(id=d.id, kind=d.kind, diameter=d.diameter, length=15.0, spur=d.spur) for d in DRILLS))
_EXACT = _rack(drills=tuple(Drill(id=d.id, kind=d.kind, diameter=d.diameter, length=17.8, spur=d.spur)
                            for d in DRILLS))
# A brad drill of 6 mm runs 1.8 mm ahead: 17.8 mm through 16 mm of wood.


def _six(diameter):
    """The rack with a brad of that size in the place of the one of 6."""
    return _rack(drills=tuple(d for d in DRILLS if d.diameter != 6.0) + (Drill(id="brad", kind="brad", diameter=diameter, length=150.0, spur=1.8),))


_RACK = (
    Case("no-drill", _one(_NINE), None, NOTE, _one(FACE)),
    Case("drill-size", head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,), rack=_six(6.05)), None, NOTE,
         head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,), rack=_six(6.02))),
    Case("drill-short", head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,), pins=(), rack=_STUB), 15.0, NOTE,
         head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,), pins=(), rack=_EXACT)),
    Case("quill", head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,), pins=(), rack=_rack(press=DrillPress(quill=17.0))),
         17.0, NOTE,
         head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,), pins=(), rack=_rack(press=DrillPress(quill=17.8)))),
    # A brad drill of 2 mm runs 0.6 ahead, and a pin hole goes through the 6 mm of the template as well: 22.6.
    Case("quill", head(rack=_rack(press=DrillPress(quill=22.5))), 22.5, NOTE, head(rack=_rack(press=DrillPress(quill=22.6)))),
)

# A hole of 6 mm drilled at (10, 90), by the job book through the wood or 8 mm deep; what is within 0.01 mm of that is that hole.


def _drilled(*holes, depth=None):
    was = Bored(at=(10.0, 90.0, 0.0), end=(10.0, 90.0, depth or 16.0), diameter=6.0, through=depth is None)
    task = Task(operation="bore h.1", title="Hole h", features=("h",))
    return head(holes=holes, book=Book(done=(Done(piece="real", task=task, hole=was),)))


def _hole(x=10.0, diameter=6.0, depth=None):
    return SingleHole(id="h", at=(x, 90.0), diameter=diameter, depth=depth)


def _cut(*slots, ends=None):
    """A slot of 12 mm routed along the centreline, by the job book, through the wood or to a floor."""
    was = Shaped(shape=slot(x=0.0).shape, ends=ends, floor=ends is not None)
    task = Task(operation="rout slot 1", title="Rout slot", features=("slot",))
    return head(slots=slots, book=Book(done=(Done(piece="real", task=task, cut=was),)))


def _pasted(kind, *features):
    """What one of the steps set down of a hole and a slot, by the job book; then they are drawn as they are given."""
    was = head(slots=(slot(x=0.0),), holes=(_hole(),))
    done = Done(piece="real", task=Task(operation=kind), spots=set_down(was, kind))
    return head(holes=features[:1], slots=features[1:], book=Book(done=(done,)))


def _glued(*ears):
    """An ear of 12 mm glued on, by the job book."""
    done = Done(piece="real", task=Task(operation="glue ear ear", features=("ear",)), spots=set_down(head(ears=(_ear(12.0),)), "glue ear", ("ear",)))
    return head(ears=ears, book=Book(done=(done,)))


def _ear(width):
    return Ear(id="ear", side="bass", width=width, start=10.0, end=170.0)


_IN_WOOD = (
    Case("drilled-otherwise", _drilled(_hole(10.02)), None, SPOILS, _drilled(_hole(10.01))),
    Case("drilled-otherwise", _drilled(_hole(diameter=5.0)), None, SPOILS, _drilled(_hole())),
    Case("drilled-otherwise", _drilled(_hole(diameter=8.0)), None, TIGHT, _drilled(_hole())),
    Case("drilled-otherwise", _drilled(_hole(depth=9.0), depth=8.0), None, TIGHT, _drilled(_hole(depth=8.0), depth=8.0)),
    Case("drilled-otherwise", _drilled(_hole(depth=7.0), depth=8.0), None, SPOILS, _drilled(_hole(depth=8.0), depth=8.0)),
    Case("drilled-otherwise", _drilled(_hole(), depth=8.0), None, TIGHT, _drilled(_hole(depth=8.0), depth=8.0)),
    Case("drilled-and-gone", _drilled(), None, SPOILS, _drilled(_hole())),
    Case("cut-otherwise", _cut(slot(x=0.02)), None, SPOILS, _cut(slot(x=0.01))),
    Case("cut-otherwise", _cut(slot(x=0.0, width=12.03)), None, TIGHT, _cut(slot(x=0.0))),
    Case("cut-otherwise", _cut(slot(x=0.0), ends=9.0), None, TIGHT, _cut(slot(x=0.0, depth=9.0), ends=9.0)),
    Case("cut-otherwise", _cut(slot(x=0.0, depth=8.0), ends=9.0), None, SPOILS, _cut(slot(x=0.0, depth=9.0), ends=9.0)),
    Case("cut-and-gone", _cut(), None, SPOILS, _cut(slot(x=0.0))),
    Case("marked-otherwise", _pasted("mark", _hole(10.12)), None, TIGHT, _pasted("mark", _hole(10.08))),
    Case("marked-otherwise", _pasted("mark", _hole(), slot(x=0.12)), None, TIGHT, _pasted("mark", _hole(), slot(x=0.08))),
    Case("marked-otherwise", _pasted("template", _hole(), slot(x=0.0, width=12.3)), None, TIGHT, _pasted("template", _hole(), slot(x=0.0, width=12.1))),
    Case("glued-otherwise", _glued(_ear(12.2)), None, TIGHT, _glued(_ear(12.0))),
    Case("glued-otherwise", _glued(), None, TIGHT, _glued(_ear(12.0)), between=("face",)),
)

CASES = (*_IN_WOOD, *_OUTLINES, *_SLOTS, *_DEPTHS, *_WAYS, *_HOOKS, *_PINS, *_EARS, *_FEATHERS, *_BITS, *_RACK)
