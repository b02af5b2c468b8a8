"""Cases of every pair of drillings, and of every drilling with slots and the outline.

In each the two come within a gap that is read off the drawing: the margin less
one millimetre, half a millimetre into each other, or the margin exactly.
"""

from msgspec.structs import replace

from geometry.checks.kinds import outline_kind, pair_kind, slot_kind
from geometry.checks.words import SORTS
from geometry.layout import DrawnSlot, Pin, Ramp, SingleHole, Slot, StraightSlot
from tests.geometry.checks.case import Case
from tests.geometry.checks.heads import FACE, PINS, SIDE, bore, face, head, loop, pattern, side, slot

_ROLES = {"counterbore": "counterbore", "screw": "screw", "pin hole": "pin"}
UPRIGHT = {sort: pattern(f"one {sort}", "face", bore(role=role)) for sort, role in _ROLES.items()} | {"bore": FACE}
"""Patterns that are one drilling of 6 mm through the wood."""


def margin(one, two):
    """Wanted between two sorts with the default margins."""
    if "locating pin" in (one, two):
        return 3.0
    return 2.0 if {"screw", "pin hole"} & {one, two} else 3.0


def carrier(sort, id, x, y):
    """Layout parts that hold one drilling of 6 mm at a point: (tuners, patterns, holes, pins)."""
    if sort == "hole":
        return (), (), (SingleHole(id=id, at=(x, y), diameter=6.0),), ()
    if sort == "locating pin":
        return (), (), (), (Pin(id=id, at=(x, y), diameter=6.0),)
    return (face(id, x, y, UPRIGHT[sort]),), (UPRIGHT[sort],), (), ()


def joined(*carriers, **rest):
    """A head with what several carriers hold."""
    tuners, patterns, holes, pins = (sum(parts, ()) for parts in zip(*carriers, strict=True))
    patterns = tuple({p.id: p for p in patterns}.values())
    return head(tuners=tuners, patterns=patterns, holes=holes, pins=PINS + pins, **rest)


def _upright_pair(one, two, gap):
    return joined(carrier(one, "a", 10.0, 90.0), carrier(two, "b", 10.0, 96.0 + gap))


def _side_pair(other, gap):
    """A side bore along y = 90 from x = 40 to 10, and something beside it."""
    if other == "side bore":
        return head(tuners=(side("a", 90.0), side("b", 96.0 + gap)), patterns=(SIDE,))
    return joined(((side("a", 90.0),), (SIDE,), (), ()), carrier(other, "b", 25.0, 96.0 + gap))


def _pair_cases():
    for i, one in enumerate(SORTS):
        for two in SORTS[i:]:
            def make(gap, one=one, two=two):
                return _side_pair(two, gap) if one == "side bore" else _upright_pair(one, two, gap)
            wanted = margin(one, two)
            yield Case(pair_kind(one, two), make(wanted - 1), wanted - 1, "tight", make(wanted), between=("a", "b"))
            yield Case(pair_kind(one, two), make(-0.5), -0.5, "spoils the work", make(wanted), between=("a", "b"))


def _slot_cases():
    """A slot with its wall at x = 20; a side bore beside the round end of another at y = 100."""
    wanted = {"screw": 2.0, "pin hole": 2.0}
    for sort in SORTS:
        need = wanted.get(sort, 3.0)

        def make(gap, sort=sort):
            if sort == "side bore":
                end = slot("slot", x=20.0, nut=106.0, tip=150.0)
                return head(tuners=(side("a", 97.0 - gap),), patterns=(SIDE,), slots=(end,))
            return joined(carrier(sort, "a", 23.0 + gap, 90.0), slots=(slot(x=14.0),))
        yield Case(slot_kind(sort), make(need - 1), need - 1, "tight", make(need), between=("a", "slot"))
        yield Case(slot_kind(sort), make(-0.5), -0.5, "spoils the work", make(need), between=("a", "slot"),
                   within=0.003)


def _outline_cases():
    """Beside the edge at x = 40; a side bore whose end comes near the far edge at x = -40."""
    wanted = {"screw": 2.5, "pin hole": 2.5, "locating pin": 3.0}
    for sort in SORTS:
        need = wanted.get(sort, 4.0)

        def make(gap, sort=sort):
            if sort == "side bore":
                long = pattern("long", "side", bore(surface="seat", depth=80.0 - gap))
                return head(tuners=(side("a", 90.0, long),), patterns=(long,))
            return joined(carrier(sort, "a", 37.0 - gap, 90.0))
        yield Case(outline_kind(sort), make(need - 1), need - 1, "tight", make(need), between=("a", "outline"))
        yield Case(outline_kind(sort), make(-0.5), -0.5, "spoils the work", make(need), between=("a", "outline"))


def _ramp_cases():
    """A ramp that falls by 5 in 12 (and 13 aslant) from y = 42 to the nut end of the slot at y = 54, 6 mm to either side of x = 14."""
    opening = slot()
    opening = type(opening)(id="slot", shape=opening.shape, ramp=Ramp(length=12.0, depth=5.0))

    def hole(x, y, depth=None):
        return head(holes=(SingleHole(id="a", at=(x, y), diameter=6.0, surface="back" if depth else "face", depth=depth),),
                    slots=(opening,))

    def level(gap):
        """A side bore at y = 48, where the ramp lies 2.5 mm deep: seen along it, 12/13 of the drop from there to its axis."""
        return head(tuners=(side("a", 48.0, depth=2.5 + (gap + 3.0) * 13 / 12),), patterns=(SIDE,), slots=(opening,))

    def under(gap):
        """From the back: its rim at y = 51 comes nearest, where the ramp lies 3.75 mm deep."""
        return hole(14.0, 48.0, 16.0 - 3.75 - gap * 13 / 12)
    for make in (lambda gap: hole(23.0 + gap, 48.0), lambda gap: hole(14.0, 39.0 - gap), under, level):
        for gap, grade in ((2.0, "tight"), (-0.5, "spoils the work")):
            yield Case("hole-to-ramp", make(gap), gap, grade, make(3.0), between=("a", "slot"), within=1e-4)


def _ramp_edge_cases():
    """Ramps about x = 14, to the nut end of a slot at y = 54; the edge stands at x = 40, the nut line at y = 0."""
    def ramped(length, width):
        opening = slot()
        return head(pins=PINS[1:], slots=(type(opening)(id="slot", shape=opening.shape,
                                                        ramp=Ramp(length=length, depth=5.0, width=width)),))

    def beside_pocket(width):
        """A pocket with its wall at x = -2, 16 mm from the middle of the ramp."""
        bed = Slot(id="pocket", there=True, shape=StraightSlot(nut_end=(-8.0, -6.0), tip_end=(-8.0, 50.0), width=12.0), depth=9.0)
        layout = ramped(12.0, width)
        return replace(layout, slots=(*layout.slots, bed))
    yield Case("ramp-to-outline", ramped(12.0, 50.0), 1.0, "tight", ramped(12.0, 48.0), between=("slot", "outline"))
    yield Case("ramp-to-outline", ramped(12.0, 54.0), -1.0, "spoils the work", ramped(12.0, 48.0), between=("slot", "outline"))
    yield Case("ramp-to-pocket", beside_pocket(30.0), 1.0, "tight", beside_pocket(28.0), between=("slot", "pocket"))
    yield Case("ramp-to-pocket", beside_pocket(34.0), -1.0, "tight", beside_pocket(28.0), between=("slot", "pocket"))
    # The same before a slot to rout, and before the ramp of its mirror image.
    def beside_slot(width):
        layout = beside_pocket(width)
        return replace(layout, slots=tuple(replace(one, there=False) for one in layout.slots))

    def beside_ramp(width):
        layout = ramped(12.0, width)
        return replace(layout, slots=(*layout.slots, replace(layout.slots[0], id="other", shape=slot(x=-14.0).shape)))
    for width, gap in ((30.0, 1.0), (34.0, -1.0)):
        yield Case("ramp-to-slot", beside_slot(width), gap, "tight", beside_slot(28.0), between=("slot", "pocket"))
        yield Case("ramp-to-slot", beside_ramp(28.0 - gap), gap, "tight", beside_ramp(26.0), between=("slot", "other"))
    yield Case("ramp-to-nut", ramped(53.0, 12.0), 1.0, "tight", ramped(52.0, 12.0), between=("slot", "nut line"))
    yield Case("ramp-to-nut", ramped(55.0, 12.0), -1.0, "spoils the work", ramped(52.0, 12.0), between=("slot", "nut line"))


def _ramp_depth_cases():
    """A ramp 12 long to a slot 12 wide: 6 past the nut end, beside the round end, it is half as deep again; 16 of wood."""
    def ramped(depth, floor=None, width=None, shape=None):
        opening = slot()
        return head(pins=PINS[1:], slots=(type(opening)(id="slot", shape=shape or opening.shape, depth=floor,
                                                        ramp=Ramp(length=12.0, depth=depth, width=width)),))
    yield Case("ramp-too-deep", ramped(10.0), 1.0, "tight", ramped(26 / 3), between=("slot", "back"))
    yield Case("ramp-too-deep", ramped(12.0), -2.0, "spoils the work", ramped(26 / 3), between=("slot", "back"))
    # 7.2 wide: the slot's round end has swallowed it 6 - sqrt(36 - 12.96) = 1.2 past the nut end.
    yield Case("ramp-too-deep", ramped(13.0, width=7.2), 16 - 13 * 1.1, "tight", ramped(13 / 1.1, width=7.2), between=("slot", "back"))
    # A square nut end at y = 54: no wood beside it, so it ends as deep as it says.
    square = DrawnSlot(loop=loop((8.0, 54.0), (20.0, 54.0), (20.0, 120.0), (8.0, 120.0)))
    yield Case("ramp-too-deep", ramped(14.0, shape=square), 2.0, "tight", ramped(13.0, shape=square), between=("slot", "back"), within=1e-3)
    yield Case("ramp-too-deep", ramped(7.0, 6.0), -1.0, "tight", ramped(6.0, 6.0), between=("slot",))


def _point_cases():
    """The brad point of a hole of 3 mm, 0.9 ahead, over a side bore whose top lies 5 mm down."""
    def over(depth, surface="face"):
        return joined(((side("a", 90.0),), (SIDE,), (), ()), ((), (), (SingleHole(id="b", at=(25.0, 90.0), diameter=3.0, depth=depth,
                                                                                 surface=surface),), ()))
    yield Case("drill-point", over(2.0), 2.1, "tight", over(1.1), between=("a", "b"))
    yield Case("drill-point", over(2.0, "back"), 2.1, "tight", over(1.1, "back"), between=("a", "b"))


CASES = (*_point_cases(), *_ramp_depth_cases(), *_pair_cases(), *_slot_cases(), *_outline_cases(), *_ramp_cases(), *_ramp_edge_cases())
