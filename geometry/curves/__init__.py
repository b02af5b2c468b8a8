"""Exact plane curves: line, arc, cubic, and paths of them. They stay exact until flattened."""

from geometry.curves.arc import Arc
from geometry.curves.cubic import Cubic
from geometry.curves.line import Line
from geometry.curves.matrix import LYING, MIRROR, Matrix, shift, stretch, turn
from geometry.curves.path import Nearest, Path, Segment, circle

__all__ = ["Arc", "Cubic", "Line", "LYING", "MIRROR", "Matrix", "Nearest", "Path", "Segment", "circle",
           "shift", "stretch", "turn"]
