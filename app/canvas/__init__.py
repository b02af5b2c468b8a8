"""The canvas: the display list on the screen, and the hand on it."""

from app.canvas.canvas import Canvas

__all__ = ["Canvas"]
