"""Where the strings cross the nut."""

from __future__ import annotations

from itertools import groupby

from geometry.layout.strings import Nut, String


def nut_places(nut: Nut, strings: tuple[String, ...]) -> tuple[float, ...]:
    """x in mm of each string at the nut, in the order of the strings, bass side negative.

    The first and the last string lie half of `spread` to either side of the
    centreline; one string alone lies on it. Strings of one course stand `pair`
    apart. `centres`: the middles of the courses are evenly spaced. `gaps`: the
    air between neighbouring courses, from skin to skin of the strings, is equal.
    No strings give no places.
    """
    courses = [list(members) for _, members in groupby(strings, key=lambda s: s.course)]
    if not courses:
        return ()
    wide = [nut.pair * (len(course) - 1) for course in courses]
    if len(courses) == 1:
        starts = [-wide[0] / 2]
    elif nut.spacing == "centres":
        first, last = -nut.spread / 2 + wide[0] / 2, nut.spread / 2 - wide[-1] / 2
        step = (last - first) / (len(courses) - 1)
        starts = [first + step * i - wide[i] / 2 for i in range(len(courses))]
    else:
        skins = [(a[-1].diameter + b[0].diameter) / 2 for a, b in zip(courses, courses[1:], strict=False)]
        air = (nut.spread - sum(wide) - sum(skins)) / (len(courses) - 1)
        starts, at = [], -nut.spread / 2
        for width, skin in zip(wide, (*skins, 0.0), strict=True):
            starts.append(at)
            at += width + skin + air
    return tuple(start + nut.pair * i for start, course in zip(starts, courses, strict=True)
                 for i in range(len(course)))
