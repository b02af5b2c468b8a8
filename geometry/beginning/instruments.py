"""Kinds of instruments that a layout may begin as: what their makers usually take (mm, degrees).

Dimensions are common practice, no source: each is a beginning that the maker changes.
"""

from __future__ import annotations

from msgspec import Struct
from msgspec.structs import replace

from geometry.beginning.numbers import Mount, Numbers
from geometry.edits.parts import settled
from geometry.edits.string_count import MOST_STRINGS, graded, pair_all, strings_for_posts
from geometry.layout import Headstock, String
from geometry.layout.generic import FRICTION, GEARED, LARGE, ROLLER, THROUGH_SIDE
from geometry.saying import say
from geometry.strings.hands import thick_on_treble
from geometry.strings.sets import SETS


class Instrument(Struct, frozen=True, kw_only=True):
    """A kind of instrument. `strings` is how many it mostly has, `nut_width` the nut for those, `string_step` what each further string
    (or course) adds to it and `pairs` what pairs add; `gauges` the thickest and the thinnest string, `gap` and `course_gap` the least from
    string to string and from pair to pair at the nut, `pair` from string to string within one, `shoulders` what the nut is wider than from the first string to the last; `height` of the nut above the face, `angle`
    of the head in degrees; `hardware` the face tuner that it takes, "" for the one that fits the row, `through` the one through the side. `plates` hold the four tuners of a side on one line at a fixed pitch, square to it."""

    title: str
    bass: int = 3
    treble: int = 3
    mount: Mount = "face"
    courses: bool = False
    scale: float = 648.0
    nut_width: float = 43.0
    string_step: float = 5.5
    pairs: float = 5.0
    gauges: tuple[float, float] = (1.2, 0.25)
    gap: float = 3.0
    course_gap: float = 5.5
    pair: float = 2.2
    shoulders: float = 7.4
    height: float = 6.0
    angle: float = 13.0
    pitch: float = 30.0
    thickness: float = 16.0
    hardware: str = ""
    through: str = THROUGH_SIDE
    plates: bool = False

    def nut_for(self, strings: int, courses: bool) -> float:
        """The usual width of the nut for so many strings, mm."""
        groups = strings // 2 if courses else strings
        usual = (self.bass + self.treble) // (2 if self.courses else 1)
        return self.nut_width + (groups - usual) * self.string_step + (self.pairs if courses and not self.courses else 0.0)


INSTRUMENTS: dict[str, Instrument] = {
    "guitar": Instrument(title=say("Guitar, steel strings")),
    "classical": Instrument(title=say("Guitar, nylon strings, slotted head"), mount="side", scale=650.0, nut_width=52.0, string_step=7.0,
                            pairs=4.0, gauges=(1.1, 0.7), angle=15.0, pitch=35.0, thickness=20.0, through=ROLLER),
    "bass": Instrument(title=say("Bass"), bass=2, treble=2, scale=864.0, nut_width=42.0, string_step=6.0, gauges=(2.7, 1.1), gap=7.0,
                       course_gap=9.5, pair=5.0, height=7.0, angle=10.0, pitch=38.0, hardware=LARGE),
    "mandolin": Instrument(title=say("Mandolin"), bass=4, treble=4, courses=True, scale=352.0, nut_width=29.0, string_step=6.0,
                           gauges=(1.0, 0.28), shoulders=5.6, height=5.0, angle=15.0, pitch=23.0, thickness=15.0, plates=True),
    "octave mandolin": Instrument(title=say("Octave mandolin"), bass=4, treble=4, courses=True, scale=560.0, nut_width=33.0, string_step=6.5,
                                  gauges=(1.17, 0.3), pair=2.6, shoulders=5.6, height=5.0, angle=15.0, pitch=23.0, thickness=15.0, plates=True),
    "bouzouki": Instrument(title=say("Bouzouki, eight strings"), bass=4, treble=4, courses=True, scale=670.0, nut_width=32.0, string_step=6.0,
                           gauges=(0.71, 0.25), shoulders=5.6, height=5.0, angle=15.0, pitch=23.0, thickness=15.0, plates=True),
    "banjo": Instrument(title=say("Banjo (four strings on the head)"), bass=2, treble=2, scale=667.0, nut_width=32.0, string_step=8.0,
                        gauges=(0.51, 0.25), height=5.0, thickness=14.0, hardware=GEARED),
    "soprano ukulele": Instrument(title=say("Ukulele, soprano"), bass=2, treble=2, scale=346.0, nut_width=35.0, string_step=8.0,
                                  gauges=(0.9, 0.6), height=5.0, thickness=13.0, hardware=FRICTION),
    "concert ukulele": Instrument(title=say("Ukulele, concert"), bass=2, treble=2, scale=381.0, nut_width=35.0, string_step=8.0,
                                  gauges=(0.9, 0.6), height=5.0, thickness=13.0, hardware=FRICTION),
    "tenor ukulele": Instrument(title=say("Ukulele, tenor"), bass=2, treble=2, scale=432.0, nut_width=36.0, string_step=8.0,
                                gauges=(0.9, 0.6), height=5.0, thickness=14.0),
    "baritone ukulele": Instrument(title=say("Ukulele, baritone"), bass=2, treble=2, scale=508.0, nut_width=36.0, string_step=8.0,
                                   gauges=(0.9, 0.6), height=5.0, thickness=14.0),
}
"""By the key that Numbers keep."""

FOLLOWS = ("pitch", "nut_width", "scale", "scale_treble", "angle", "slant", "length", "width", "thickness")
"""The numbers that follow the instrument until the maker has typed them."""


def usual(instrument: str) -> Numbers:
    """The numbers of an instrument as it mostly is."""
    kind = INSTRUMENTS[instrument]
    return following(Numbers(instrument=instrument, bass=kind.bass, treble=kind.treble, bass_mount=kind.mount, treble_mount=kind.mount,
                             courses=kind.courses))


def following(numbers: Numbers, typed: frozenset[str] = frozenset()) -> Numbers:
    """The numbers with each of FOLLOWS that was not `typed` as it is usual for the instrument, its tuners and its strings."""
    kind, base = INSTRUMENTS[numbers.instrument], Numbers()
    usually = {"pitch": kind.pitch, "nut_width": kind.nut_for(numbers.strings, numbers.courses), "scale": kind.scale,
               "scale_treble": kind.scale if "scale" not in typed else numbers.scale, "angle": kind.angle, "slant": 0.0,
               "length": base.length, "width": base.width, "thickness": kind.thickness}
    return replace(numbers, **{key: value for key, value in usually.items() if key not in typed})


def strung(numbers: Numbers) -> tuple[String, ...]:
    """The strings of an instrument: from a generic set where there is one for that number, else each thinner than the last.

    Where the frets are fanned each has the scale length of its place, as evenly from one side to the other as the strings stand.
    """
    strings = _gauged(numbers.instrument, graded(numbers.strings, numbers.courses, *INSTRUMENTS[numbers.instrument].gauges))
    if numbers.scale_treble == numbers.scale:
        return strings
    step = (numbers.scale_treble - numbers.scale) / (len(strings) - 1)
    return tuple(replace(string, scale_length=round(numbers.scale + i * step, 2)) for i, string in enumerate(strings))


def _gauged(instrument: str, strings: tuple[String, ...]) -> tuple[String, ...]:
    """Strings from the bass side on as the generic set of an instrument has them; they themselves where there is none for so many."""
    paired = len({string.course for string in strings}) * 2 == len(strings)
    fits = next((one for one in SETS if one.instrument == instrument and one.paired == paired and len(one) == len(strings)), None)
    if fits is None:
        return strings
    return tuple(replace(string, diameter=d, core=core, note=note)
                 for string, d, core, note in zip(strings, fits.diameters, fits.cores, fits.notes, strict=True))


def as_usual(layout: Headstock, instrument: str, scale: float) -> Headstock:
    """A layout that was drawn, traced or imported, with nut and strings as they are usual for an instrument of that scale length (mm).

    Width and slant of the nut, the way from the first string to the last, courses and posts stay, and thick strings on the side where they are.
    A layout without strings gets one for each of its posts, in pairs where the instrument has them.
    """
    kind = INSTRUMENTS[instrument]
    posts = len(layout.tuners)
    if not layout.strings and 2 <= posts <= MOST_STRINGS:
        layout = pair_all(strings_for_posts(layout), kind.courses and posts % 2 == 0)
    nut = replace(layout.nut, height=kind.height, pitch=kind.angle, pair=kind.pair, scale_length=scale)
    turn = -1 if thick_on_treble(layout.strings) else 1
    strings = layout.strings[::turn]
    if len(strings) > 1:
        new = graded(len(strings), False, *kind.gauges)
        strings = _gauged(instrument, tuple(replace(old, diameter=one.diameter, core=None, note="", scale_length=None)
                                            for old, one in zip(strings, new, strict=True)))
    return settled(replace(layout, nut=nut, strings=strings[::turn]))
