"""What a feature is held against when nothing but the feature itself is looked at."""

from __future__ import annotations

from msgspec import Struct, field

from geometry.checks.drills import Drills
from geometry.layout.blank import Blank
from geometry.layout.hardware import Pattern
from geometry.layout.shop import DrillPress, Margins, Template


class Around(Struct, frozen=True, eq=False):
    """The wood and the shop about one feature.

    `quiet` fills as it is used: the patterns of face tuners of which there is nothing to say, by their identity.
    """

    blank: Blank
    margins: Margins
    drills: Drills
    press: DrillPress
    template: Template
    quiet: dict[int, Pattern] = field(default_factory=dict)
