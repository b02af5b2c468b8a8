"""How long things take in this shop, for an estimate of hours."""

from typing import Annotated

from msgspec import Meta

from geometry.layout.parts import Part

LONGEST = 6000
"""Minutes at most that a step is reckoned to take."""
Minutes = Annotated[float, Meta(ge=0, le=LONGEST)]


class Rates(Part, kw_only=True):
    """Minutes; all common practice, no source, and all for the maker to change.

    Cuts are for 100 mm of wall in one pass. `factor` multiplies everything: the
    job book sets it from hours really spent. `glue_dry` is how long each glueing stays in the clamps before the work goes on:
    it is told beside the hours, no part of them, and `factor` leaves it alone.
    """

    glue_ear: Minutes = 20.0
    glue_veneer: Minutes = 30.0
    glue_scarf: Minutes = 60.0
    plug: Minutes = 8.0
    template: Minutes = 60.0
    mark: Minutes = 30.0
    hole: Minutes = 1.5
    side_bore: Minutes = 4.0
    hand_pilot: Minutes = 2.0
    waste_hole: Minutes = 0.75
    saw_100: Minutes = 3.0
    rout_100: Minutes = 1.5
    band_saw_100: Minutes = 1.5
    rout_outline_100: Minutes = 2.0
    hand_100: Minutes = 12.0
    ramp: Minutes = 15.0
    flat: Minutes = 8.0
    clean_up: Minutes = 90.0
    finish: Minutes = 120.0
    final_diameter: Minutes = 2.0
    machine_change: Minutes = 2.0
    bit_change: Minutes = 2.0
    table_change: Minutes = 6.0
    side_change: Minutes = 1.5
    glue_dry: Minutes = 720.0
    factor: Annotated[float, Meta(gt=0, le=100)] = 1.0
