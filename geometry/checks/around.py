"""What a feature is held against when nothing but the feature itself is looked at."""

from __future__ import annotations

from msgspec import Struct

from geometry.checks.drills import Drills
from geometry.layout.blank import Blank
from geometry.layout.shop import DrillPress, Margins, Template


class Around(Struct, frozen=True, eq=False):
    """The wood and the shop about one feature."""

    blank: Blank
    margins: Margins
    drills: Drills
    press: DrillPress
    template: Template
