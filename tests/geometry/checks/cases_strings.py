"""Cases of strings: at the nut, past other posts, down into a slot; and of flats under plates."""

import math

from msgspec.structs import replace

from geometry.layout import Flat, Nut, Ramp, Retainer, SingleHole, String
from tests.geometry.checks.case import Case
from tests.geometry.checks.heads import FACE, bore, face, head, loop, pattern, side, slot

SPOILS, TIGHT, NOTE = "spoils the work", "tight", "note"
_ONE = (String(id="1", diameter=1.0, course=1),)


def _aside(angle):
    """One string from the middle of the nut, `angle` degrees aside, 100 mm to where it touches its post of 6 mm."""
    sine, cosine = math.sin(math.radians(angle)), math.cos(math.radians(angle))
    post = face("a", 100 * sine + 3.5 * cosine, 100 * cosine - 3.5 * sine, string="1", winds="bass")
    return head(tuners=(post,), patterns=(FACE,), strings=_ONE)


def _over_nut(height, pitch, *holes):
    """One string straight up the centreline, 100 mm to its post, where it comes off 26 above the face."""
    return head(tuners=(face("a", 3.5, 100.0, string="1", winds="bass"),), patterns=(FACE,), strings=_ONE,
                nut=Nut(height=height, pitch=pitch), holes=holes)


def _thick_on_a_low_post(thick):
    """A string that comes off its post 1.5 above the face."""
    low = pattern("low", "face", bore(), post=(6.0, 8.0, 1.5))
    return head(tuners=(face("a", 5.0, 100.0, low, string="1", winds="bass"),), patterns=(low,), nut=Nut(height=6.0),
                strings=(String(id="1", diameter=thick, course=1),))


def _holding(x, height=15.0, id="r"):
    """A retainer 12 wide, 50 mm from the nut."""
    return SingleHole(id=id, at=(x, 50.0), diameter=2.0, depth=9.0, retainer=Retainer(height=height, width=12.0))


def _at(y, id="r"):
    """The same in the middle of the head, so far from the nut."""
    return replace(_holding(0.0, id=id), at=(0.0, y))


def past_a_post(apart):
    """A string straight up the centreline that passes a post whose middle is `apart` mm beside it."""
    return head(tuners=(face("a", 3.5, 150.0, string="1", winds="bass"), face("b", -apart, 75.0)), patterns=(FACE,),
                strings=_ONE)


_TWO = (String(id="1", diameter=1.0, course=1), String(id="2", diameter=0.6, course=2))


def necked(half):
    """A head `half` mm wide to either side for 10 mm from the nut line, and two strings 20 mm apart; no tuners."""
    return head(strings=_TWO, nut=Nut(spread=20.0), outline=loop(
        (-half, 0.0), (half, 0.0), (half, 10.0), (40.0, 40.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 40.0), (-half, 10.0)))


def _in_nut(width, spread=20.0):
    """A nut of that width with two strings in it that lie so far apart."""
    return head(strings=_TWO, nut=Nut(width=width, spread=spread))


def _pair(one, two):
    """Strings 1 and 2 from x = -10 and 10 at the nut to x = `one` and `two` at y = 100, all in one plane that rises by 1 in 5."""
    return head(tuners=(_beside("a", "1", 0.5, -10.0, one), _beside("b", "2", 0.3, 10.0, two)), patterns=(FACE,), strings=_TWO,
                nut=Nut(spread=20.0, height=6.0))


def crossed():
    """Two strings that cross half-way, at one height."""
    return _pair(10.0, -10.0)


def _beside(id, string, radius, x, end):
    """A post of 6 mm on the treble side of a string from x at the nut to `end` at y = 100."""
    far = math.hypot(end - x, 100.0)
    away = 3.0 + radius
    return face(id, end + away * 100.0 / far, 100.0 - away * (end - x) / far, string=string, winds="bass")


def _beside_each_other(air):
    """String 1 straight on, string 2 aslant to where its end has this air (mm): half of it leans by the angle between them."""
    apart = air + 0.8
    for _ in range(20):
        apart = air + 0.5 + 0.3 * math.cos(math.atan((20.0 - apart) / math.hypot(100.0, 20.0)))
    return _pair(-10.0, -10.0 + apart)


_DEEP = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 41.0, 40.0))
_DROP = 54 * 5 / 12
"""A string that falls by 5 in 12 comes down this much on its way to the nut end of the slot at y = 54."""


def _dive(height, x=0.0, ramp=None, depth=None, winds="bass"):
    """A string down the centreline, falling by 5 in 12 (and 13 aslant), over a post at z = 8 whose place follows."""
    far = 13 / 5 * (8 + height - 3.5 * 12 / 13)
    along = (12 * far - 3.5 * 5) / 13
    opening = slot(x=x, depth=depth)
    opening = type(opening)(id=opening.id, shape=opening.shape, depth=depth, ramp=ramp)
    return head(tuners=(side("a", along, _DEEP, string="1", winds=winds),), patterns=(_DEEP,), slots=(opening,),
                strings=_ONE, nut=Nut(height=height))


def _over(air):
    """Height of the nut that gives this air over the nut end: the skin is 0.5 off the middle, 12/13 of the drop."""
    return _DROP + (air + 0.5) * 13 / 12


_SLOPE = Ramp(length=12.0, depth=5.0)


def _over_ramp(air):
    """The ramp begins at y = 42 and runs level with the string."""
    return _dive(42 * 5 / 12 + (air + 0.5) * 13 / 12, ramp=_SLOPE)


_SEAT = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0), seat=(12.0, 12.0, 10.0))


def _flat(size=24.0, depth=0.5, inner=20.0):
    """A flat on the edge x = 40; the slot's wall stands `inner` mm from the edge."""
    return head(tuners=(side("a", 90.0, _SEAT, flat=Flat(size=size, depth=depth)),), patterns=(_SEAT,),
                slots=(slot(x=34.0 - inner),))


def _beside_flat(x, depth=0.5):
    """A bore through the face 10 mm beside the middle of the flat, at x."""
    layout = _flat(depth=depth)
    return replace(layout, tuners=(*layout.tuners, face("b", x, 100.0)), patterns=(*layout.patterns, FACE))


def _neighbours(along, depth=0.5, flat=None):
    """A flat of 30, and a neighbour's plate beside it."""
    layout = _flat(size=30.0, depth=depth)
    return replace(layout, tuners=(*layout.tuners, side("b", along, _SEAT, flat=flat)))


_FLATS = (
    Case("flat-too-small", _flat(size=23.0), 23.0, TIGHT, _flat(size=24.0)),
    Case("flat-rail", _flat(inner=8.0), 7.5, TIGHT, _flat(inner=8.5), between=("a", "slot")),
    # Its bottom lies at x = 39.5; a bore of 6 beside it, 4 mm from the bare edge.
    Case("hole-to-flat", _beside_flat(33.0), 3.5, TIGHT, _beside_flat(32.5), between=("a", "b")),
    # Flat of 30 about 90, plates that reach 12 to either side: the neighbour's begins at 103.
    Case("plate-over-flat", _neighbours(115.0), -2.0, NOTE, _neighbours(117.0), between=("b", "a")),
    Case("plate-over-flat", _neighbours(115.0, 1.5), -2.0, TIGHT, _neighbours(115.0, 0.3), between=("b", "a")),
    Case("plate-over-flat", _neighbours(65.0, 1.5), -2.0, TIGHT, _neighbours(65.0, 1.5, Flat(size=24.0, depth=1.5)), between=("b", "a")),
    Case("hole-to-flat", _beside_flat(33.0, depth=8.0), -4.0, SPOILS, _beside_flat(25.0, depth=8.0), between=("a", "b")),
)

CASES = (
    *_FLATS,
    Case("side-angle", _aside(12.0), 12.0, NOTE, _aside(10.0)),
    # Level with the nut at its post, a string bends by the pitch alone.
    Case("break-angle", _over_nut(26.0, 4.0), 4.0, NOTE, _over_nut(26.0, 5.0)),
    Case("break-angle-steep", _over_nut(26.0, 21.0), 21.0, NOTE, _over_nut(26.0, 20.0)),
    # It rises by 10 on 100; a retainer halfway draws it down by 5 degrees.
    Case("break-angle", _over_nut(16.0, 0.0), -math.degrees(math.atan(0.1)), TIGHT,
         _over_nut(16.0, 0.0, _holding(6.0, 16.0 - 50.0 * math.tan(math.radians(5.0))))),
    Case("retainer-idle", _over_nut(16.0, 13.0, _holding(6.01)), None, NOTE, _over_nut(16.0, 13.0, _holding(6.0))),
    # Halfway the string runs 21 above the face.
    Case("retainer-idle", _over_nut(16.0, 13.0, _holding(0.0, 21.0)), None, NOTE, _over_nut(16.0, 13.0, _holding(0.0, 20.9))),
    # The string's skin lies 0.5 below its middle.
    Case("string-to-face", _over_nut(0.7, 13.0), 0.2, TIGHT, _over_nut(1.0, 13.0), between=("a", "face")),
    Case("string-to-face", _over_nut(16.0, 13.0, _holding(3.0, 0.3)), -0.2, TIGHT, _over_nut(16.0, 13.0, _holding(3.0, 1.0)), between=("r", "face")),
    *(Case("string-to-face", _over_nut(16.0, 13.0, _holding(3.0, 0.3, id)), -0.2, TIGHT, _over_nut(16.0, 13.0, _holding(3.0, 1.0, id)),
           between=(id, "face")) for id in ("nut", "post")),
    Case("string-to-face", _thick_on_a_low_post(3.4), -0.2, TIGHT, _thick_on_a_low_post(3.0), between=("a", "face")),
    # The screw's pilot is 2 wide, the string 1.
    Case("string-to-screw", _over_nut(16.0, 13.0, _holding(1.7)), 0.2, TIGHT, _over_nut(16.0, 13.0, _holding(2.0)), between=("r", "a")),
    Case("string-to-screw", _over_nut(16.0, 13.0, _holding(-1.0)), -0.5, SPOILS, _over_nut(16.0, 13.0, _holding(-2.0)), between=("r", "a")),
    # Its bar reaches 2.5 to the tip; the post, 6 wide, stands at y = 100.
    Case("retainer-bar", _over_nut(16.0, 13.0, _at(94.3)), 0.2, NOTE, _over_nut(16.0, 13.0, _at(94.0)), between=("r", "a")),
    Case("retainer-bar", _over_nut(16.0, 13.0, _at(95.5)), -1.0, TIGHT, _over_nut(16.0, 13.0, _at(94.0)), between=("r", "a")),
    Case("retainer-bar", _over_nut(16.0, 13.0, _at(98.0)), -3.5, TIGHT, _over_nut(16.0, 13.0, _at(94.0)), between=("r", "a")),
    # Bars of 12 whose screws stand 10 apart, one higher than the other; equally high they are one.
    Case("retainer-bar", _over_nut(16.0, 13.0, _holding(0.0), _holding(10.0, 14.0, "r2")), -2.0, TIGHT,
         _over_nut(16.0, 13.0, _holding(0.0), _holding(10.0, 15.0, "r2")), between=("r", "r2")),
    Case("retainer-bar", _over_nut(16.0, 13.0, _holding(0.0), _at(54.0, "r2")), -1.0, TIGHT,
         _over_nut(16.0, 13.0, _holding(0.0), _at(55.0, "r2")), between=("r", "r2")),
    Case("retainer-no-hole", _over_nut(16.0, 13.0, replace(_holding(0.0), surface="back")), None, TIGHT, _over_nut(16.0, 13.0, _holding(0.0)),
         between=("r", "face")),
    # Two strings 20 apart, the thicker one 1 mm: its skin lies at x = -10.5.
    Case("string-off-nut", _in_nut(20.0), -0.5, TIGHT, _in_nut(21.0)),
    # The skins of strings of 1.0 and 0.6 mm lie 0.8 mm nearer than their middles.
    Case("strings-in-nut", _in_nut(40.0, 1.1), 0.3, NOTE, _in_nut(40.0, 1.3)),
    Case("strings-in-nut", _in_nut(40.0, 0.5), -0.3, TIGHT, _in_nut(40.0, 1.3)),
    Case("string-off-wood", necked(9.0), -1.5, SPOILS, necked(10.5)),
    # A nut of 44 before wood of 49; half a millimetre at either end is filed flush.
    Case("nut-step", necked(24.5), 2.5, NOTE, necked(22.5), between=("outline", "nut line")),
    Case("nut-step", necked(20.0), 2.0, NOTE, necked(21.5), between=("outline", "nut line")),
    Case("string-to-post", past_a_post(3.7), 0.2, TIGHT, past_a_post(4.0), between=("a", "b")),
    Case("string-to-post", past_a_post(3.0), -0.5, SPOILS, past_a_post(4.0), between=("a", "b"), within=1e-3),
    Case("string-to-string", crossed(), -0.8, TIGHT, _pair(-10.0, 10.0), between=("a", "b")),
    Case("string-to-string", _beside_each_other(0.2), 0.2, NOTE, _beside_each_other(0.5 + 1e-6), between=("a", "b")),
    # Strings that draw apart are the nut's concern, however near they are there.
    Case("string-to-string", crossed(), -0.8, TIGHT,
         head(tuners=(_beside("a", "1", 0.5, -0.5, -0.5), _beside("b", "2", 0.3, 0.5, 0.5)), patterns=(FACE,), strings=_TWO,
              nut=Nut(spread=1.0)), between=("a", "b")),
    Case("string-to-nut-end", _dive(_over(0.2)), 0.2, TIGHT, _dive(_over(0.5))),
    Case("string-to-nut-end", _dive(_over(-1.7)), -1.7, TIGHT, _dive(_over(-1.7), ramp=Ramp(length=12.0, depth=5.0))),
    Case("string-to-ramp", _over_ramp(0.2), 0.2, TIGHT, _over_ramp(0.5)),
    # Half of what the nut end cuts is taken by a ramp that is too shallow: (1.3 - 0.65) * 12 / 13 and half a string.
    Case("string-to-ramp", _dive(_over(-1.7), ramp=Ramp(length=12.0, depth=0.65)), -1.1, TIGHT, _over_ramp(0.5)),
    # The wall stands at x = -5.3 + 6.
    Case("string-to-wall", _dive(30.0, x=-5.3), 0.2, TIGHT, _dive(30.0, x=-5.0)),
    # The axis at 8, half a post of 6 and one string below it.
    Case("string-to-floor", _dive(30.0, depth=12.2), 0.2, TIGHT, _dive(30.0, depth=12.5)),
)
