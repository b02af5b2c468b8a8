"""Gestures: what the pointer does on the opened-out view, without any window.

A gesture is a generator: it yields what to show, takes pointers, and returns
what came of it. `Running` runs one. They change no layout, they give new ones.
Each stands in a file of its own name and is taken from there.
"""

from app.tools.hit import Target, hit
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Pointer, Running, Shown

__all__ = ["Done", "Gesture", "Options", "Pointer", "Running", "Shown", "Target", "hit"]
