"""Where a neck that is glued to a pitched head goes while the head lies at the drill press."""

from __future__ import annotations

import math

from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.operation import BASE, Setup
from geometry.solids.side import block_height, board_for
from geometry.units import LengthUnit, format_close


def neck_words(layout: Headstock, setup: Setup, unit: LengthUnit = "mm") -> str:
    """What to mind of the neck in a set-up (common practice, no source); nothing away from the drill press, and nothing of a head without
    a scarf joint, of which nobody knows whether the neck is on."""
    if layout.blank.scarf is None or setup.machine != "drill press":
        return ""
    base = board_for(BASE, unit)
    given = {"drop": format_close(block_height(math.radians(layout.nut.pitch), base), unit, mark=True), "base": format_close(base, unit, mark=True)}
    # Against the fence lies the back of a head with its treble edge up, and the neck leans to the back.
    return {
        "face": say("Behind the nut line the neck hangs below the head, {drop} on each {base} of it: raise the head on a board, or let the neck "
                    "hang over the edge of the table.", **given),
        "back": say("Behind the nut line the neck stands up, {drop} on each {base} of it: turn it away from the column, clear of quill and handle.",
                    **given),
        "treble edge": say("Behind the nut line the neck leans to the fence, {drop} on each {base} of it: let the fence end there.", **given),
    }.get(setup.side or "", "")
