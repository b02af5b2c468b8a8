"""What the layout means in space: where each tuner sits, every hole, every seat."""

from geometry.solids.drilling import Drilling, Hole, holes, once_plugged
from geometry.solids.frames import Frame, frames
from geometry.solids.side import SideBore, side_bore

__all__ = ["Drilling", "Frame", "Hole", "SideBore", "frames", "holes", "once_plugged", "side_bore"]
