"""One of each dialog, made as the program makes it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory

from PySide6.QtGui import QImage
from PySide6.QtWidgets import QDialog

from app.formats.drawing_in import read_drawing
from app.formats.picture_in import read_picture
from app.help.window import HelpWindow
from app.printing.measure import MeasureBars
from app.setup.places import CHECKOUT
from app.window import texts
from app.window.dialogs.about import AboutDialog
from app.window.dialogs.holding import HoldDialog
from app.window.dialogs.offset_dialog import OffsetDialog
from app.window.dialogs.round_dialog import RoundDialog
from app.window.front.numbers_dialog import NumbersDialog
from app.window.importing.importing import ImportDialog
from app.window.main import MainWindow
from app.window.running.fault_dialog import FaultDialog
from app.window.tracing.lay_dialog import LayDialog
from app.window.tracing.trace_dialog import TraceDialog
from geometry.layout.picture import Picture
from geometry.tracing.plane_map import scaled

SAMPLES = CHECKOUT / "samples"


def _import(window: MainWindow) -> ImportDialog:
    file = next(iter(sorted((SAMPLES / "outlines").glob("*.dxf"))))
    return ImportDialog(window, file, read_drawing(file))


def _lay(window: MainWindow) -> LayDialog:
    picture = QImage(400, 300, QImage.Format.Format_RGB32)
    picture.fill(0x998877)
    with TemporaryDirectory() as folder:
        file = Path(folder) / "scan.png"
        picture.save(str(file))
        return LayDialog(window, file.name, read_picture(file))


def _trace(window: MainWindow) -> TraceDialog:
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    image.fill(0x998877)
    with TemporaryDirectory() as folder:
        file = Path(folder) / "scan.png"
        image.save(str(file))
        read = read_picture(file)
    return TraceDialog(window, Picture(name=file.name, jpeg=read.jpeg, width=read.width, height=read.height,
                                       place=scaled((0.0, 0.0), (400.0, 0.0), 100.0).rows))


DIALOGS: dict[str, Callable[[MainWindow], QDialog]] = {
    "help": lambda w: HelpWindow(list(w.actions_.values()), texts.HAND_KEYS, w),
    "numbers": NumbersDialog,
    "import": _import,
    "lay": _lay,
    "hold": HoldDialog,
    "bars": lambda w: MeasureBars("A4", w.unit, w),
    "offset": lambda w: OffsetDialog(w, "outline"),
    "round": lambda w: RoundDialog(w, "outline", 0),
    "trace": _trace,
    "about": AboutDialog,
    "fault": lambda w: FaultDialog("While nudging a tuner.", "Your work is kept.", "a report\n" * 20, w),
}
