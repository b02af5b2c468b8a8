"""How fast a cutter may turn, and which way to feed.

Rim speed v = pi D n. Highest speeds by diameter after a published chart for
router bits (up to 1 inch 24,000; 2 inches 18,000; 2 1/2 inches 16,000;
3 1/2 inches 12,000 turns a minute); published charts differ by 20 to 30 %, and
what is printed on the cutter goes before all of them. Beyond the chart: a rim
speed of 12,000 feet a minute.
"""

from __future__ import annotations

import math

from geometry.layout import Router, RouterBit
from geometry.routing.words import rim
from geometry.saying import say
from geometry.units import MM_PER_INCH

CHART = ((1.0, 24000.0), (2.0, 18000.0), (2.5, 16000.0), (3.5, 12000.0))
"""(cutter up to inches, turns a minute)"""
RIM_LIMIT = 12000 * 12 * MM_PER_INCH / 60000
"""60.96 m/s"""

FEED = {
    "inside": say("Inside an opening feed clockwise, seen from above: against the turning of the cutter. Never "
                  "climb-cut."),
    "outside": say("Outside a template feed counter-clockwise, seen from above: against the turning of the cutter. "
                   "Never climb-cut."),
}
"""Which way to feed (after published guidance for hand-held routers), whichever side of the wood is up."""

STOP_AT_NUT = say("Begin and stop at the nut line: round the end of the template the cutter goes into the neck.")
"""For a template whose end lies where the wood goes on."""
NOT_ROUND_THE_END = say("Begin and stop at the nut line: round the end of the template the cutter goes into the head.")
"""For a larger template that is cut off at the nut line, where the wood ends there, too."""


def rim_speed(diameter: float, turns: float) -> float:
    """Speed of the cutting edge in m/s for a cutter diameter in mm and turns a minute."""
    return math.pi * diameter * turns / 60000


def highest_speed(bit: RouterBit) -> float:
    """Most turns a minute for a bit: what is printed on it, else the chart, else the rim speed limit."""
    if bit.marked_speed is not None:
        return bit.marked_speed
    for inches, turns in CHART:
        if bit.cutter <= inches * MM_PER_INCH + 1e-9:
            return turns
    return RIM_LIMIT * 60000 / (math.pi * bit.cutter)


def speed_setting(bit: RouterBit, router: Router) -> float | None:
    """The fastest setting of the router (turns a minute) that a bit may run at; None when all are too fast."""
    fitting = [turns for turns in router.speeds if turns <= highest_speed(bit) + 1e-9]
    return max(fitting, default=None)


def speed_words(bit: RouterBit, router: Router) -> str:
    """One sentence on the speed of a bit."""
    most = highest_speed(bit)
    source = say("printed on the cutter") if bit.marked_speed is not None else say("usual for its diameter")
    if not router.speeds:
        return say("{bit}: at most {most:,.0f} turns a minute ({source}).", bit=bit.id, most=most, source=source)
    setting = speed_setting(bit, router)
    if setting is None:
        return say("{bit}: at most {most:,.0f} turns a minute ({source}), and the router's slowest setting is "
                   "{slowest:,.0f}: do not run it in this router.",
                   bit=bit.id, most=most, source=source, slowest=min(router.speeds))
    return say("{bit}: set {setting:,.0f} turns a minute, rim speed {rim_speed}; at most {most:,.0f} ({source}).",
               bit=bit.id, setting=setting, rim_speed=rim(rim_speed(bit.cutter, setting)), most=most, source=source)


def speed_table(bit: RouterBit, router: Router) -> tuple[tuple[float, float, bool], ...]:
    """(turns a minute, rim speed in m/s, allowed) for every setting of the router, slowest first."""
    most = highest_speed(bit)
    return tuple((turns, rim_speed(bit.cutter, turns), turns <= most + 1e-9) for turns in sorted(router.speeds))
