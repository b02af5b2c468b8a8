"""The display list: what the screen, DXF, SVG and paper all draw from."""

from geometry.drawing.marks import STYLES, Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.opened_out import blank_box, feature_marks, opened_out, opened_out_groups

__all__ = ["STYLES", "Area", "Cross", "Disc", "Drawing", "Label", "Mark", "Stroke", "blank_box", "feature_marks",
           "opened_out", "opened_out_groups"]
