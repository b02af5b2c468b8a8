"""Strings that bend sideways at the nut, or hardly or far down over it."""

from __future__ import annotations

import math
from collections.abc import Iterable

from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, NUT, TIGHT, Snag
from geometry.layout.strings import Nut
from geometry.saying import say
from geometry.strings.runs import TOLERABLE, Run, break_angle

LEAST_BREAK = 5.0
"""degrees down over the nut: 7 to 17 is good, 5 the least (common practice, no source)"""
MOST_BREAK, MOST_INTO_SLOT = 20.0, 30.0
"""degrees down over the nut to a post on the face, and to one in a slot, which lies deeper: beyond, strings grind the nut and stick
in it (common practice, no source)"""
_LEAST_BREAK = math.radians(LEAST_BREAK - 1e-9)
_MOST_BREAK = math.radians(MOST_BREAK + 1e-9)


def snags(scene: Scene) -> Iterable[Snag]:
    """Notes of strings that bend more aside at the nut than is tolerable, or less or more down over it; tight where they
    do not press on it at all."""
    return scene.memo.snags(_bends, scene.runs, scene.layout.nut)


def _bends(own: tuple[Run, Item], nut: Nut) -> tuple[Snag, ...]:
    run, item = own
    found = []
    if run.wide:
        angle = abs(math.degrees(run.side_angle))
        found.append(Snag("side-angle", NOTE, (run.tuner, NUT), (*run.nut, 0.0), angle, TOLERABLE,
                          say("String {string} leaves the nut {angle:.1f} degrees sideways to {tuner}; up to "
                              "{tolerable:g} is tolerable.",
                              string=run.string, angle=angle, tuner=run.tuner, tolerable=TOLERABLE),
                          say("Give {tuner} a string nearer its side, or move it farther from the nut.",
                              tuner=run.tuner), "deg"))
    down = break_angle(run, nut)
    if down < _LEAST_BREAK:
        found.append(_flat(run, math.degrees(down)))
    elif down > _MOST_BREAK:
        found += _steep(run, math.degrees(down), MOST_BREAK if item.mount == "face" else MOST_INTO_SLOT)
    return tuple(found)


def _flat(run: Run, down: float) -> Snag:
    words = {"string": run.string, "tuner": run.tuner, "down": max(0.0, math.floor(down * 10) / 10), "least": LEAST_BREAK}
    text = (say("String {string} does not press on the nut: it leaves it upwards to {tuner}.", **words) if down <= 0 else
            say("String {string} bends down over the nut by {down:.1f} degrees to {tuner}; {least:g} is the least.", **words))
    return Snag("break-angle", TIGHT if down <= 0 else NOTE, (run.tuner, NUT), (*run.nut, 0.0), down, LEAST_BREAK, text,
                say("Set a string retainer (Strings stage), wind the string lower on its post, lean the head back farther, or "
                    "let the face lie deeper below the nut."), "deg")


def _steep(run: Run, down: float, most: float) -> Iterable[Snag]:
    if down > most + 1e-9:
        yield Snag("break-angle-steep", NOTE, (run.tuner, NUT), (*run.nut, 0.0), down, most,
                   say("String {string} bends down over the nut by {down:.1f} degrees to {tuner}; beyond {most:g} strings grind the nut and "
                       "stick in it.", string=run.string, tuner=run.tuner, down=math.ceil(down * 10 - 1e-9) / 10, most=most),
                   say("Lean the head back less, wind the string higher on its post, or set what holds it down higher or farther from the nut."),
                   "deg")
