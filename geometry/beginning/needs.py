"""What the tuners of a side need of the wood: measured from their edge and along it, mm.

The distances follow from the generic patterns and the margins that a layout
begins with; the tests hold them to the checker, over the whole range.
"""

from __future__ import annotations

from msgspec import Struct

from geometry.beginning.instruments import INSTRUMENTS
from geometry.beginning.numbers import Mount, Numbers, Refused
from geometry.errors import GeometryError
from geometry.layout.blank import Side
from geometry.layout.generic import (
    FOUR_SCREWS,
    FRICTION,
    GEARED,
    LARGE,
    ONE_SCREW,
    PATTERNS,
    ROLLER,
    ROOMY,
    SLIM,
    STEPPED,
    TAPERED,
    THROUGH_SIDE,
)
from geometry.layout.hardware import Pattern
from geometry.lengths import at_least, at_most, mm
from geometry.saying import say
from geometry.terms import term

_PATTERN = {pattern.id: pattern for pattern in PATTERNS}


class Face(Struct, frozen=True):
    """Room that a tuner through the face takes (mm): its post stands `inset` inside the edge and its plate reaches `reach` in from there;
    in rows narrower than `pitch` plates, screws or buttons come together, and the head is from `thin` to `thick`."""

    inset: float
    reach: float
    pitch: float
    thin: float = 12.0
    thick: float = 20.0
    lead: float = 13.5
    """from the ends of the straight run of an edge to the first and the last tuner"""


class Through(Struct, frozen=True):
    """Room that a tuner through the side takes (mm): the inner wall of its slot stands `inner` in from the edge, beyond the post and
    the point of its drill; the rest as of Face."""

    inner: float
    pitch: float
    thin: float = 13.0
    thick: float = 26.0
    lead: float = 13.5


FACES = {
    ROOMY: Face(11.8, 5.5, 24.0), ONE_SCREW: Face(13.0, 13.0, 26.0, 13.0, 18.0), STEPPED: Face(12.5, 12.0, 22.0, 14.0, 18.0),
    SLIM: Face(10.0, 14.0, 18.0), LARGE: Face(17.5, 16.0, 35.0, 13.0, lead=18.0),
    FRICTION: Face(11.0, 10.0, 25.0, 9.0, 16.0), TAPERED: Face(11.0, 11.0, 26.0, 9.0, 20.0),
    GEARED: Face(11.3, 12.0, 29.0, 10.0, 18.0)}
"""Of each generic pattern through the face."""
BESIDE_A_SLOT = (ROOMY, GEARED)
"""Those that stay clear of a slot when face and side take turns."""
THROUGHS = {THROUGH_SIDE: Through(33.2, 25.5), ROLLER: Through(37.4, 31.5, 16.0, lead=16.5), FOUR_SCREWS: Through(34.7, 24.5, 15.0)}
"""Of each through the side."""
LEAST_MIXED = 23.0
"""Narrower rows, face and side in turn, bring plates, screws or turning buttons together."""
MOST_PITCH = 75.0
"""Plates of 60 mm along the head, as of heavy bass tuners, and air between them (common practice, no source)."""
MOST_THICKNESS: dict[Mount, float] = {"face": 20.0, "side": 26.0, "mixed": 20.0}
SLOT_OUTER = 19.6
"""A slot's outer wall, measured in from the edge: the rail and face tuners stay clear of it."""
SLOT_BEFORE, SLOT_AFTER = 10.0, 6.5
"""From the outer posts to the centres of a slot's round ends, towards the nut and towards the tip."""


class SideNeeds(Struct, frozen=True):
    """One side of the head: its tuners and the room that they take."""

    side: Side
    count: int
    mount: Mount
    pitch: float
    face: str
    through: str
    """patterns of its tuners through the face, and through the side"""
    chosen: bool
    """whether those through the face are to stay when the row grows narrower"""

    @property
    def fits(self) -> tuple[Face | Through, ...]:
        """What the kinds of tuners that it may have take."""
        return {"face": (FACES[self.face],), "side": (THROUGHS[self.through],), "mixed": (FACES[self.face], THROUGHS[self.through])}[self.mount]

    @property
    def least_pitch(self) -> float:
        """The least from tuner to tuner, mm: mixed, a neighbour of the same kind stands twice as far."""
        if self.mount == "mixed":
            return max(LEAST_MIXED, *(fit.pitch / 2 for fit in self.fits))
        return self.fits[0].pitch if self.chosen or self.mount == "side" else FACES[SLIM].pitch

    @property
    def inset(self) -> float:
        """How far the posts of face tuners stand inside the edge."""
        return FACES[self.face].inset

    @property
    def post(self) -> Pattern:
        """The pattern of its tuners through the side."""
        return _PATTERN[self.through]

    @property
    def slot_inner(self) -> float:
        """How far in from the edge the inner wall of a slot stands at least."""
        return THROUGHS[self.through].inner

    @property
    def has_slot(self) -> bool:
        """Whether any tuner goes through the side."""
        return any(kind == "side" for kind in self.kinds)

    @property
    def kinds(self) -> tuple[str, ...]:
        """face or side for each tuner, from the nut on."""
        if self.mount == "mixed":
            return tuple("face" if i % 2 == 0 else "side" for i in range(self.count))
        return (self.mount,) * self.count

    @property
    def inner(self) -> float:
        """How far its hardware or its slot reaches in from the edge; 0 without tuners."""
        if not self.count:
            return 0.0
        return self.slot_inner if self.has_slot else self.inset + FACES[self.face].reach

    @property
    def keep(self) -> float:
        """What must be left between `inner` and the centreline."""
        return 0.0 if not self.count else 5.4 if self.has_slot else 1.5

    @property
    def pull(self) -> float:
        """How far in from the edge the strings are wound, on average."""
        wound = {"face": self.inset, "side": 28.0}
        return sum(wound[kind] for kind in self.kinds) / self.count if self.count else 0.0

    @property
    def lead(self) -> float:
        """From the ends of the straight run of the edge to the first and the last tuner."""
        return max(fit.lead for fit in self.fits)

    @property
    def run(self) -> float:
        """Straight run of edge that the row takes."""
        return 2 * self.lead + max(0, self.count - 1) * self.pitch


def needs(numbers: Numbers, side: Side) -> SideNeeds:
    """What a side needs. Refused when the tuners stand too near each other or too far apart, or the wood is too thin or too thick;
    GeometryError when the hardware is none of FACES and THROUGHS, or does not go with the mount."""
    count, mount = numbers.count(side), numbers.mount(side)
    chosen = numbers.face or INSTRUMENTS[numbers.instrument].hardware
    face = chosen or (ROOMY if numbers.pitch >= FACES[ROOMY].pitch or mount == "mixed" else SLIM)
    through = numbers.through or INSTRUMENTS[numbers.instrument].through
    if face not in FACES or through not in THROUGHS:
        raise GeometryError(say("{pattern} is no hardware to begin with.", pattern=through if face in FACES else face))
    made = SideNeeds(side, count, mount, numbers.pitch, face, through, bool(chosen))
    if not count:
        return made
    if face == LARGE and mount != "face":
        raise GeometryError(say("Large tuners, as for a bass, go through the face: choose so on the {side} side, or take usual ones.",
                                side=term(side)))
    if mount == "mixed" and face not in BESIDE_A_SLOT:
        raise GeometryError(say("Where face and side take turns these tuners through the face would reach into the slot beside them: "
                                "choose smaller ones, or those that fit."))
    words = say("large tuners through the face") if face == LARGE else {
        "face": say("tuners through the face"), "side": say("tuners through the side"), "mixed": say("mixed tuners")}[mount]
    least = made.least_pitch
    if count > 1 and numbers.pitch < least:
        raise Refused("pitch", least, say("{pitch} from tuner to tuner is too little for {words}: their plates and "
                                          "buttons need {least}.",
                                          pitch=mm(numbers.pitch), words=words, least=at_least(least)))
    if count > 1 and numbers.pitch > MOST_PITCH:
        raise Refused("pitch", MOST_PITCH, say("{pitch} from tuner to tuner makes a head nobody can hold: {most} is the most.",
                                               pitch=mm(numbers.pitch), most=at_most(MOST_PITCH)))
    thin, thick = max(fit.thin for fit in made.fits), min(MOST_THICKNESS[mount], *(fit.thick for fit in made.fits))
    if numbers.thickness < thin:
        raise Refused("thickness", thin, say("A blank {thickness} thick is too thin for {words}: it takes {thin}.",
                                             thickness=mm(numbers.thickness), words=words, thin=at_least(thin)))
    if numbers.thickness > thick:
        raise Refused("thickness", thick, say("A head {thickness} thick is too much for {words}: {most} is the most.",
                                              thickness=mm(numbers.thickness), words=words, most=at_most(thick)))
    return made


def gap(numbers: Numbers) -> float:
    """Least centre distance of strings at the nut, or of the middles of pairs, mm."""
    kind = INSTRUMENTS[numbers.instrument]
    return kind.course_gap if numbers.courses else kind.gap


def spread(numbers: Numbers) -> float:
    """From the first string to the last at the nut, mm. Refused when the strings stand too close."""
    if numbers.courses:
        least = (numbers.strings // 2 - 1) * gap(numbers) + INSTRUMENTS[numbers.instrument].pair
    else:
        least = (numbers.strings - 1) * gap(numbers)
    least += INSTRUMENTS[numbers.instrument].shoulders
    if numbers.nut_width < least - 1e-9:
        raise Refused("nut_width", least, say("{strings} strings on a nut {nut_width} wide stand too close: it takes {least}.",
                                              strings=numbers.strings, nut_width=mm(numbers.nut_width),
                                              least=at_least(least)))
    if numbers.nut_width > MOST_NUT:
        raise Refused("nut_width", MOST_NUT, say("A nut {nut_width} wide is more than a hand spans: {most} is the most.",
                                                 nut_width=mm(numbers.nut_width), most=at_most(MOST_NUT)))
    return numbers.nut_width - INSTRUMENTS[numbers.instrument].shoulders


MOST_NUT = 90.0
