"""Loose drawing ends joined into loops, and a loop placed on the headstock's frame."""

from geometry.joining.chains import Chain, Gap
from geometry.joining.loops import Joined, join
from geometry.joining.placing import Placing, place

__all__ = ["Chain", "Gap", "Joined", "Placing", "join", "place"]
