"""What the tuners of a side need of the wood: measured from their edge and along it, mm.

The distances follow from the generic patterns and the margins that a layout
begins with; the tests hold them to the checker, over the whole range.
"""

from __future__ import annotations

from msgspec import Struct

from geometry.beginning.numbers import Mount, Numbers, Refused
from geometry.layout.blank import Side
from geometry.layout.generic import PATTERNS
from geometry.lengths import at_least, at_most, mm
from geometry.saying import say

ROOMY, SLIM, THROUGH_SIDE, LARGE = PATTERNS[0].id, PATTERNS[3].id, PATTERNS[4].id, PATTERNS[7].id
"""Face tuner with a bushing, small face tuner for narrow rows, side tuner, wide face tuner as for a bass."""
LEAST_LARGE = 35.0
"""Narrower rows bring the plates and buttons of large tuners together."""
INSETS = {ROOMY: 11.8, SLIM: 10.0, LARGE: 17.5}
"""How far the posts of face tuners stand inside the edge."""
REACHES = {ROOMY: 5.5, SLIM: 14.0, LARGE: 16.0}
"""How far their plates reach in from there."""
ROOMY_PITCH = 24.0
"""From here on there is room for the plates of the face tuner with a bushing."""
LEAST_PITCH: dict[Mount, float] = {"face": 18.0, "side": 25.5, "mixed": 23.0}
"""Narrower rows bring plates, screws or turning buttons together."""
MOST_PITCH = 60.0
LEAST_THICKNESS: dict[Mount, float] = {"face": 12.0, "side": 13.0, "mixed": 13.0}
MOST_THICKNESS: dict[Mount, float] = {"face": 20.0, "side": 26.0, "mixed": 20.0}
THIN_LARGE = 13.0
"""The thinnest blank for the screws of large tuners."""
LEAST_GAP, LEAST_COURSE_GAP = 3.0, 5.5
"""Least centre distance of strings at the nut, and of the middles of pairs (common practice, no source)."""
NUT_SHOULDERS = 7.4
"""What the nut is wider than from the first string to the last."""
PAIR, PAIR_LARGE = 2.2, 5.0
"""Centre distance within a pair, of usual strings and of those of a bass."""
LARGE_MORE = 4.0
"""How much farther apart the strings of a bass stand (common practice, no source)."""

SLOT_OUTER, SLOT_INNER = 19.6, 33.2
"""A slot's walls, measured in from the edge: the rail and face tuners stay clear of the first, the post and the
point of its drill of the second."""
SLOT_BEFORE, SLOT_AFTER = 10.0, 6.5
"""From the outer posts to the centres of a slot's round ends, towards the nut and towards the tip."""
LEAD = 13.5
"""From the ends of the straight run of an edge to the first and the last tuner, so that plates lie flat."""


LEAD_LARGE = 18.0
"""The same for large tuners."""


class SideNeeds(Struct, frozen=True):
    """One side of the head: its tuners and the room that they take."""

    side: Side
    count: int
    mount: Mount
    pitch: float
    face: str
    """pattern of its face tuners"""

    @property
    def inset(self) -> float:
        """How far the posts of face tuners stand inside the edge."""
        return INSETS[self.face]

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
        return SLOT_INNER if self.has_slot else self.inset + REACHES[self.face]

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
        return LEAD if self.face != LARGE else LEAD_LARGE

    @property
    def run(self) -> float:
        """Straight run of edge that the row takes."""
        return 2 * self.lead + max(0, self.count - 1) * self.pitch


def needs(numbers: Numbers, side: Side) -> SideNeeds:
    """What a side needs. Refused when the tuners stand too near each other or the wood is too thin."""
    count, mount = numbers.count(side), numbers.mount(side)
    roomy = numbers.pitch >= ROOMY_PITCH or mount == "mixed"
    made = SideNeeds(side, count, mount, numbers.pitch, LARGE if numbers.large else ROOMY if roomy else SLIM)
    if not count:
        return made
    words = {"face": say("tuners through the face"), "side": say("tuners through the side"), "mixed": say("mixed tuners")}[mount]
    if numbers.large:
        words = say("large tuners through the face")
    least = LEAST_LARGE if numbers.large else LEAST_PITCH[mount]
    if count > 1 and numbers.pitch < least:
        raise Refused("pitch", least, say("{pitch} from tuner to tuner is too little for {words}: their plates and "
                                          "buttons need {least}.",
                                          pitch=mm(numbers.pitch), words=words, least=at_least(least)))
    if count > 1 and numbers.pitch > MOST_PITCH:
        raise Refused("pitch", MOST_PITCH, say("{pitch} from tuner to tuner makes a head nobody can hold: {most} is the most.",
                                               pitch=mm(numbers.pitch), most=at_most(MOST_PITCH)))
    thin = THIN_LARGE if numbers.large else LEAST_THICKNESS[mount]
    if numbers.thickness < thin:
        raise Refused("thickness", thin, say("A blank {thickness} thick is too thin for {words}: it takes {thin}.",
                                             thickness=mm(numbers.thickness), words=words, thin=at_least(thin)))
    thick = MOST_THICKNESS[mount]
    if numbers.thickness > thick:
        raise Refused("thickness", thick, say("A head {thickness} thick is too much for {words}: {most} is the most.",
                                              thickness=mm(numbers.thickness), words=words, most=at_most(thick)))
    return made


def pair(numbers: Numbers) -> float:
    """Centre distance within a pair, mm."""
    return PAIR_LARGE if numbers.large else PAIR


def gap(numbers: Numbers) -> float:
    """Least centre distance of strings at the nut, or of the middles of pairs, mm."""
    return (LEAST_COURSE_GAP if numbers.courses else LEAST_GAP) + (LARGE_MORE if numbers.large else 0.0)


def spread(numbers: Numbers) -> float:
    """From the first string to the last at the nut, mm. Refused when the strings stand too close."""
    if numbers.courses:
        least = (numbers.strings // 2 - 1) * gap(numbers) + pair(numbers)
    else:
        least = (numbers.strings - 1) * gap(numbers)
    least += NUT_SHOULDERS
    if numbers.nut_width < least - 1e-9:
        raise Refused("nut_width", least, say("{strings} strings on a nut {nut_width} wide stand too close: it takes {least}.",
                                              strings=numbers.strings, nut_width=mm(numbers.nut_width),
                                              least=at_least(least)))
    if numbers.nut_width > MOST_NUT:
        raise Refused("nut_width", MOST_NUT, say("A nut {nut_width} wide is more than a hand spans: {most} is the most.",
                                                 nut_width=mm(numbers.nut_width), most=at_most(MOST_NUT)))
    return numbers.nut_width - NUT_SHOULDERS


MOST_NUT = 90.0
