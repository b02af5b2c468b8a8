"""Writing the template of one plan: the board alone, as DXF or SVG at full size."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from app.formats.errors import FormatError
from app.window import ask
from app.window.background.disk import written_beside
from geometry.drawing.template_board import board_drawing
from geometry.errors import GeometryError
from geometry.routing.follower import follower_of
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def write_template(window: Frame, bit: str, bush: str | None, of: str = "") -> None:
    """Ask for a file and write the template for a bit and guide bush of the layout's rack; `of` is what its plan is of."""
    from app.formats.dxf_out import write_dxf
    from app.formats.svg_out import write_svg
    layout = window.document.layout
    try:
        tool = next(one for one in layout.rack.bits if one.id == bit)
        guide = follower_of(tool, next((one for one in layout.rack.bushes if one.id == bush), None))
        drawing = board_drawing(layout, guide, of)
    except GeometryError as error:
        window.say(str(error))
        return
    folder = window.document.path.parent if window.document.path is not None else Path.home()
    path = ask.save_file(window, say("Write the template"), str(folder / "router-template.dxf"), ask.TEMPLATES, (".dxf", ".svg"))
    if path is None:
        return
    try:
        if path.suffix.lower() == ".svg":
            title = say("{name}: template, 1 unit = 1 mm", name=layout.name)
            written_beside(window, path, partial(write_svg, drawing, path, title))
        else:
            written_beside(window, path, lambda go_on: write_dxf(drawing, path, go_on=go_on))
    except FormatError as error:
        ask.warn(window, say("The template was not written"), str(error))
        return
    window.say(say("Written: {path}. Check the size on a print or with calipers before the wood.", path=path))
