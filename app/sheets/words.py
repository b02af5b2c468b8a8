"""The fixed words of the sheets, and blocks of words as marks."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from app.formats.letters import text_width, wrapped
from app.sheets.lengths import length, marked
from geometry.checks.words import listed
from geometry.drawing import Label, Mark
from geometry.layout import Headstock
from geometry.saying import say
from geometry.vectors import Vec2

PRINT_AT = say("Print at 100 %. Measure the bar before you glue.")

# After the usual published guidance for drill presses and hand-held routers (29 CFR 1910.213, OSHA woodworking
# guidance, HSE L114); general cautions only, never a substitute for the manual of a machine.
CAUTIONS = say("Cautions: wear eye and ear protection and a dust mask; no gloves, loose sleeves or loose hair near a turning bit or a "
               "blade. Guard the chuck and take its key out before you start. Hold the work in a vice, clamp or jig, back up every "
               "exit and keep your fingers out of the line of a blade. Stop the machine before you measure, unplug the router before "
               "you change its bit, and run no bit faster than is marked on it. Rout in light passes against the turning of the "
               "cutter, and never a small loose piece. Test on scrap. The manuals of your machines, the rules where you work and "
               "qualified instruction come first.")

IN_SHORT = say("Eye protection, no gloves or loose sleeves, work clamped, bit at rest before you measure. All cautions: on the cover.")

LEADING = 1.65
"""Distance of lines of words in capital heights."""


def glued_words(layout: Headstock) -> str:
    """What the head is glued up of before the papers go on; nothing where it is one piece."""
    blank = layout.blank
    if not blank.veneers:
        return say("The scarf joint is glued and the head planed before any paper goes on.") if blank.scarf is not None else ""
    layers = [{"face": say("a face veneer of {veneer}", veneer=length(bottom - top)), "back": say("a back veneer of {veneer}", veneer=length(bottom - top))}[surface]
              for surface, top, bottom in blank.veneers]
    return say("The papers go onto the head as it is glued up: {core} of wood with {layers}, {whole} together. Depths count from the outside of a veneer.",
               core=marked(blank.core), layers=listed(layers), whole=marked(blank.thickness))


def block(text: str, at: Vec2, height: float, width: float, style: str = "note") -> tuple[list[Mark], float]:
    """Wrapped words of capital `height` in `width` mm, the first line's top at `at`; and the y below the last line."""
    x, y = at
    marks: list[Mark] = []
    for line in wrapped(text, height, width):
        marks.append(Label(line, (x, y - height), height, style))
        y -= height * LEADING
    return marks, y


def short(text: str, height: float, width: float) -> str:
    """The text, cut off with three dots when it is wider than the room."""
    if text_width(text, height) <= width:
        return text
    while text and text_width(text + "...", height) > width:
        text = text[:-1]
    return text.rstrip() + "..."


def numbers(of: Sequence[int]) -> str:
    """Rising numbers in words with stretches of three and more joined: `3, 5, 6, 43 to 45`; two alone as `3 and 5`."""
    if len(of) == 2:
        return say("{one} and {two}", one=of[0], two=of[1])
    parts: list[str] = []
    for _, stretch in groupby(enumerate(of), key=lambda item: item[1] - item[0]):
        own = [number for _, number in stretch]
        parts += [say("{first} to {last}", first=own[0], last=own[-1])] if len(own) > 2 else map(str, own)
    return ", ".join(parts)
