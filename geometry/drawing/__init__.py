"""The display list: what the screen, DXF, SVG and paper all draw from."""

from geometry.drawing.marks import STYLES, Area, Cross, Disc, Drawing, Label, Mark, Stroke

__all__ = ["STYLES", "Area", "Cross", "Disc", "Drawing", "Label", "Mark", "Stroke"]
