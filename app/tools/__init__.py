"""Gestures: what the pointer does on the opened-out view, without any window.

A gesture is a generator: it yields what to show, takes pointers, and returns
what came of it. `Running` runs one. They change no layout, they give new ones.
"""

from app.tools.draw import draw
from app.tools.hit import Target, hit
from app.tools.hold import hold
from app.tools.measure import measure
from app.tools.options import Options
from app.tools.place import place
from app.tools.pointer import Done, Gesture, Pointer, Running, Shown
from app.tools.section import section
from app.tools.slot import draw_slot
from app.tools.wind import wind

__all__ = ["Done", "Gesture", "Options", "Pointer", "Running", "Shown", "Target", "draw", "draw_slot", "hit", "hold",
           "measure", "place", "section", "wind"]
