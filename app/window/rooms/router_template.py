"""Writing the template of one plan: the board alone, as DXF or SVG at full size."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.window import ask
from app.window.background.disk import saved_where_asked
from geometry.drawing.template_board import board_drawing
from geometry.errors import GeometryError
from geometry.routing.follower import follower_of
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def write_template(window: Frame, bit: str, bush: str | None, of: str = "") -> None:
    """Ask for a file and write the template for a bit and guide bush of the layout's rack; `of` is what its plan is of."""
    from app.formats.dxf_out import dxf_bytes
    from app.formats.svg_out import svg_text

    layout = window.document.layout
    try:
        tool = next(one for one in layout.rack.bits if one.id == bit)
        guide = follower_of(tool, next((one for one in layout.rack.bushes if one.id == bush), None))
        drawing = board_drawing(layout, guide, of)
    except GeometryError as error:
        window.say(str(error))
        return
    title = say("{name}: template, 1 unit = 1 mm", name=layout.name)
    path = saved_where_asked(window, say("Write the template"), "router-template.dxf", ask.TEMPLATES, (".dxf", ".svg"),
                             say("The template was not written"),
                             lambda path: svg_text(drawing, title).encode() if path.suffix.lower() == ".svg" else dxf_bytes(drawing))
    if path is not None:
        window.say(say("Written: {path}. Check the size on a print or with calipers before the wood.", path=path))
