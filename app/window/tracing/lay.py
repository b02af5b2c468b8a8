"""Laying a photo or scan behind the drawing: read beside the window, set straight, to scale and onto the nut line."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtWidgets import QDialog

from app.formats.errors import FormatError
from app.formats.picture_in import PictureRead, read_picture
from app.window import ask
from app.window.background.disk import read_beside
from app.window.rooms.own_rack import with_own_rack
from app.window.tracing.lay_dialog import AS_WIDE, LayDialog
from geometry.beginning import mended
from geometry.beginning.in_unit import usual_numbers
from geometry.edits.picture import lay_picture as with_picture
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import format_close

if TYPE_CHECKING:
    from app.window.frame import Frame

KINDS = say("Pictures (*.jpg *.jpeg *.png *.tif *.tiff *.bmp *.webp *.gif)")


def lay_picture(window: Frame, path: Path | None = None) -> None:
    """Ask for a picture and where it lies; one step of the history."""
    if path is None:
        path = ask.open_file(window, say("A photo or scan to trace"), str(window.folder), KINDS)
    if path is None:
        return
    try:
        read = read_beside(window, path, partial(read_picture, path))
    except FormatError as error:
        ask.warn(window, say("This picture was not laid behind the drawing"), str(error))
        return
    if not isinstance(read, PictureRead):
        return
    dialog = LayDialog(window, path.name, read)
    picture = dialog.picture if dialog.exec() == QDialog.DialogCode.Accepted else None
    nut = dialog.nut_width
    dialog.deleteLater()
    if picture is not None:
        begins = window.front.shown
        if begins:
            name = path.stem[:80] or say("Traced")
            window.document.replace(_begun(window, name, nut), None)
        window.document.apply(say("Lay {path} behind the drawing", path=path.name),
                              with_picture(window.document.layout, picture))
        window.set_stage("outline")
        window.canvas.fit(window.document.shown)
        own, unit = window.document.layout.nut.width, window.unit
        if begins and abs(own - nut) > AS_WIDE:
            window.say(say("The picture lies behind the drawing. The nut in it measures {nut}, but {own} is the nearest that "
                           "this layout begins with: check the size of the picture, or set the width of the nut.",
                           nut=format_close(nut, unit, mark=True), own=format_close(own, unit, mark=True)))
        else:
            window.say(say("The picture lies behind: Ctrl+T traces it, or draw over it."))


def _begun(window: Frame, name: str, nut: float) -> Headstock:
    """A layout to trace into: from the usual numbers and the nut in the picture (mm), its outline waits to be replaced."""
    _, layout, _ = mended(replace(usual_numbers(window.unit), nut_width=round(nut, 1)))
    return replace(with_own_rack(window, layout), name=name, about="")
