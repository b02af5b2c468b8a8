"""Asks what the two bars of a printed page measure, and keeps the correction of that printer."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtPrintSupport import QPrinterInfo
from PySide6.QtWidgets import QCheckBox, QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from app.formats.errors import FormatError
from app.formats.paper import PAPERS
from app.look.alt_letters import Lead
from app.look.choice import Choice
from app.look.column import Column
from app.look.filled import filled
from app.look.paragraph import paragraph, restyle
from app.look.sizes import keep
from app.look.walk import ReadInOrder
from app.panels.forms.fields import LengthField
from app.printing.correction import Correction, measured
from app.printing.printers import correction_for, keep_correction
from app.sheets.furniture import BAR
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.units import LengthUnit


class MeasureBars(ReadInOrder, QDialog):
    """For one printer and paper; what is kept takes effect with the next print."""

    def __init__(self, paper: str, unit: LengthUnit = "mm", parent: QWidget | None = None, settings: Path | None = None) -> None:
        super().__init__(parent, windowTitle=say("Correct a printer"))
        self._settings = settings
        self._before: dict[LengthField, str] = {}
        """what stood in a field at first: a bar of exactly 100 mm, of which inches show no more than is near it"""
        self.printer = Choice(self, editable=True)
        self.printer.addItems(QPrinterInfo.availablePrinterNames())
        self.printer.setCurrentText(QPrinterInfo.defaultPrinterName())
        self.printer.setAccessibleName(say("Printer"))
        self.paper = Choice(self)
        self.paper.addItems(list(PAPERS))
        self.paper.setCurrentText(paper)
        self.paper.setAccessibleName(say("Paper"))
        self.lying = self._length(unit, say("Lying bar"))
        self.upright = self._length(unit, say("Upright bar"))
        self.already = QCheckBox(say("The page says that it was corrected"), self)
        self.says = paragraph(self, name="dim")
        self._lay_out()
        self.printer.currentTextChanged.connect(self._other)
        self.paper.currentTextChanged.connect(self._other)
        self.already.toggled.connect(self._tell)
        self.lying.textChanged.connect(self._tell)
        self.upright.textChanged.connect(self._tell)
        keep(self, panel_width=460)
        self._other()

    def _length(self, unit: LengthUnit, name: str) -> LengthField:
        field = LengthField(unit, parent=self, accessibleName=name)
        field.show_value(BAR)
        self._before[field] = field.text()
        return field

    def _lay_out(self) -> None:
        about = paragraph(self, say("Print the cover, measure both bars from end tick to end tick as exactly as you can, best "
                                    "with calipers, and enter what you find. Only printed pages are corrected, never drawings."))
        form = QFormLayout()
        for word, widget in ((say("Printer"), self.printer), (say("Paper"), self.paper),
                             (say("Lying bar"), self.lying), (say("Upright bar"), self.upright)):
            form.addRow(Lead(word, widget), widget)
        form.addRow(self.already)
        kinds = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(kinds.Save | kinds.Cancel | kinds.Reset, self, accepted=self.accept, rejected=self.reject)
        self.buttons.button(kinds.Reset).setText(say("Forget the correction"))
        self.buttons.button(kinds.Reset).clicked.connect(self.forget)
        inside = filled(QVBoxLayout(), about, form, self.says, 1)
        filled(QVBoxLayout(self), (Column(inside, self.windowTitle(), self), 1), self.buttons)

    # ---- what comes of it ---------------------------------------------
    @property
    def kept(self) -> Correction | None:
        """What is kept for the chosen printer and paper. FormatError when the file cannot be used."""
        return correction_for(self.printer.currentText().strip(), self.paper.currentText(), self._settings)

    def correction(self) -> Correction:
        """What the entries come to. FormatError with a sentence when they cannot be."""
        try:
            lying, upright = (BAR if field.text() == self._before[field] else float(field.read(field.text()))
                              for field in (self.lying, self.upright))
        except GeometryError as error:
            raise FormatError(str(error)) from error
        return measured(lying, upright, self.kept if self.already.isChecked() else None)

    def accept(self) -> None:
        """Keep the correction and close."""
        self._keep(self.correction)

    def forget(self) -> None:
        """Forget what was kept for the chosen printer and paper, and close."""
        self._keep(lambda: None)

    def _keep(self, correction: Callable[[], Correction | None]) -> None:
        """Keep this for the chosen printer and paper, and close; stay open and say why when that cannot be."""
        try:
            printer = self.printer.currentText().strip()
            if not printer:
                raise FormatError(say("Name the printer: the correction is kept for that one alone."))
            keep_correction(printer, self.paper.currentText(), correction(), self._settings)
        except FormatError as error:
            self._say(str(error), "warning")
            return
        super().accept()

    def _other(self) -> None:
        """Another printer or paper was chosen."""
        try:
            kept = self.kept
        except FormatError as error:
            self._say(str(error), "warning")
            return
        self.already.setEnabled(kept is not None)
        self.already.setChecked(kept is not None)
        self.buttons.button(QDialogButtonBox.StandardButton.Reset).setEnabled(kept is not None)
        self._tell()

    def _tell(self) -> None:
        try:
            found, kept = self.correction(), self.kept
        except FormatError as error:
            self._say(str(error), "dim")  # it may be half typed
            return
        words = [say("Now: {words}.",
                     words=kept.words) if kept is not None else say("Nothing is kept for this printer and paper yet.")]
        if found != (kept or Correction()):
            words.append(say("New: across {across:.3f}, along {along:.3f}.", across=found.across, along=found.along))
        if found.warning:
            words.append(found.warning)
        self._say(" ".join(words), "warning" if found.warning else "dim")

    def _say(self, text: str, name: str) -> None:
        self.says.setText(text)
        restyle(self.says, name)
