"""Where a picture lies: how big it is, whether it is straightened, and where nut line and centreline are in it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QDialog,
    QFormLayout,
    QLabel,
    QVBoxLayout,
)
from shiboken6 import isValid

from app.canvas.picture import pixmap
from app.formats.paper import usual_paper
from app.formats.picture_in import PictureRead, grey_of
from app.look.alt_letters import Lead
from app.look.buttons import ok_cancel
from app.look.choice import Choice
from app.look.column import lay_beside
from app.look.filled import filled
from app.look.paragraph import paragraph, restyle
from app.look.sizes import open_at
from app.look.walk import ReadInOrder
from app.look.wrapping import WrappingRadio
from app.panels.forms.fields import LengthField
from app.window.tracing.board import Handle, PictureBoard
from geometry.checks.words import listed
from geometry.errors import GeometryError
from geometry.layout.picture import Picture
from geometry.saying import count, say
from geometry.tracing.catching import caught
from geometry.tracing.plane_map import PlaneMap, laid, scaled, straightened
from geometry.units import MM_PER_INCH, LengthUnit, format_close
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from app.window.frame import Frame

WIDEST_NUT = 1000.0
"""mm: no layout begins with a wider one"""
AS_WIDE = 1.0
"""mm: a nut that measures no more off the layout's than this is the same: marks are put by hand"""


def _sheets(first: str) -> list[tuple[str, tuple[float, float] | None]]:
    """Common sheets (ISO 216; ANSI/ASME Y14.1) as they can lie in a picture, mm; the paper that is usual `first`."""
    a4, a3, letter = (210.0, 297.0), (297.0, 420.0), (215.9, 279.4)
    metric = [(say("A4 upright"), a4), (say("A4 on its side"), a4[::-1]), (say("A3 upright"), a3), (say("A3 on its side"), a3[::-1])]
    letters = [(say("Letter upright"), letter), (say("Letter on its side"), letter[::-1])]
    return [*(letters + metric if first == "Letter" else metric + letters), (say("Another rectangle"), None)]


def _two_in_a_hundred(unit: LengthUnit) -> dict[str, str]:
    """Round lengths of which the one is 2 % of the other, in full percents, as told in this unit."""
    lower, far = (16.0, 800.0) if unit == "mm" else (0.625 * MM_PER_INCH, 32 * MM_PER_INCH)
    return {"lower": format_close(lower, unit, 0, mark=True), "far": format_close(far, unit, 0, mark=True)}


class _Unplaced(GeometryError):
    """Marks that the maker has not put anywhere yet: nothing is wrong, and nothing can be measured."""


class LayDialog(ReadInOrder, QDialog):
    """Two points, four corners or the scanner's own word give size and plane, two ends of the nut give place and direction."""

    def __init__(self, window: Frame, name: str, read: PictureRead) -> None:
        super().__init__(window, windowTitle=say("Lay {name} behind the drawing", name=name))
        self._window = window
        self._name = name
        self._read = read
        self.picture: Picture | None = None
        self.nut_width = 0.0
        """mm between the two marks at the nut"""
        w, h = float(read.width), float(read.height)
        self._at: dict[str, Vec2] = {
            "a": (0.2 * w, 0.5 * h), "b": (0.8 * w, 0.5 * h),
            "1": (0.15 * w, 0.1 * h), "2": (0.85 * w, 0.1 * h), "3": (0.85 * w, 0.75 * h), "4": (0.15 * w, 0.75 * h),
            "bass": (0.42 * w, 0.85 * h), "treble": (0.58 * w, 0.85 * h)}
        self._began_at = dict(self._at)
        """where the program put the marks: one that lies there still means nothing"""
        self.board = PictureBoard(pixmap(read.jpeg), self)
        self.board.moved.connect(self._moved)
        self.board.let_go.connect(self._catch)
        self._grey: np.ndarray | None = None
        self.two = WrappingRadio(say("Two points a known distance apart"), self)
        self.four = WrappingRadio(say("A rectangle of known size: sheet, ruler, template"), self)
        self.scan = WrappingRadio(say("A scan of {n:.0f} points to the inch, as its file says", n=read.to_mm * 25.4), self)
        """offered where the file says so, and the size is known without a mark"""
        self.back = QCheckBox(say("The picture shows the back"), self)
        self.distance = LengthField(window.unit, parent=self)
        self.across = LengthField(window.unit, parent=self)
        self.along = LengthField(window.unit, parent=self)
        sheets = _sheets(usual_paper(window.unit))
        self.sheets = Choice(self, choices=[(size, word) for word, size in sheets], accessibleName=say("Sheet"), activated=self._sheet)
        across, along = sheets[0][1] or (0.0, 0.0)
        self._lengths = {"distance": 100.0 if window.unit == "mm" else 4 * MM_PER_INCH, "across": across, "along": along}
        self._caught = paragraph(self, name="dim")
        self._says = QLabel(self)
        self._build()
        self._show()

    # ---- building -------------------------------------------------------
    def _build(self) -> None:
        group = QButtonGroup(self)
        for choice in (self.two, self.four, self.scan):
            group.addButton(choice)
            choice.clicked.connect(self._show)
        self.two.setChecked(True)
        self.scan.setVisible(self._read.to_mm > 0)
        self._form = QFormLayout()
        labels = {"distance": say("From A to B"), "across": say("Corner 1 to 2"), "along": say("Corner 2 to 3")}
        for key, field in (("distance", self.distance), ("across", self.across), ("along", self.along)):
            field.setProperty("length", key)
            field.setAccessibleName(labels[key])
            field.show_value(self._lengths[key])
            field.sent.connect(self._length)
            field.refused.connect(self._judge)
            field.mended.connect(self._judge)
            self._form.addRow(Lead(labels[key], field), field)
        self._form.insertRow(1, Lead(say("Sheet"), self.sheets), self.sheets)
        self._how = paragraph(self, name="dim")
        right = filled(QVBoxLayout(), paragraph(self, say("1. Its size"), "heading"), self.two, self.four, self.scan, self._form, self._how,
                       self._caught, gap=8)
        right.addSpacing(6)
        right.addWidget(paragraph(self, say("2. Its place"), "heading"))
        right.addWidget(paragraph(self, say("Drag the two marks to the ends of the nut: it comes to lie on the nut line, "
                                        "its middle on the centreline."), "dim"))
        self.back.clicked.connect(self._show)
        right.addWidget(self.back)
        right.addSpacing(6)
        self._says.setWordWrap(True)
        right.addWidget(self._says)
        right.addWidget(paragraph(self, say("A lens bends straight lines most near the rim, so keep the head in the "
                                        "middle and the camera far away. Sheet or ruler must lie as high as the face: "
                                        "{lower} lower, seen from {far}, makes the head 2 % too large. A camera that "
                                        "is 5 degrees off the square costs 0.4 % with two points, nothing with four "
                                        "corners. Check what you print with the 100 mm bar and the head itself with a "
                                        "rule.", **_two_in_a_hundred(self._window.unit)), "dim"))
        right.addStretch(1)
        buttons, self.lay_button = ok_cancel(self, self._accept, say("Lay it there"))
        lay_beside(self, self.board, right, say("Size and place of the picture"), buttons)
        open_at(self, 1020, 700)

    # ---- state ----------------------------------------------------------
    def _show(self) -> None:
        four, two = self.four.isChecked(), self.two.isChecked()
        if self.scan.isChecked():
            handles = []
            self._how.setText(say("Only as it came from the scanner: cut it, but do not let it be made larger or smaller. Then check a "
                                  "length that you know with Measure."))
        elif four:
            handles = [Handle(key, key, self._at[key], "sheet") for key in "1234"]
            self._how.setText(say("Corner 1 is the upper left one in the picture, 2 upper right, 3 lower right, 4 "
                                  "lower left. The picture is set straight by them."))
        else:
            handles = [Handle("a", "A", self._at["a"], "size"), Handle("b", "B", self._at["b"], "size")]
            self._how.setText(say("Nothing is straightened: for scans, and for photos taken square from far away. The "
                                  "farther apart the points, the better."))
        for field, shown in ((self.distance, two), (self.sheets, four), (self.across, four), (self.along, four)):
            self._form.setRowVisible(field, shown)
        words = {"bass": say("nut, bass end"), "treble": say("nut, treble end")}
        handles += [Handle(key, words[key], self._at[key], "nut", key == "bass") for key in ("bass", "treble")]
        self.board.show_handles(handles, frozenset({"sheet"}))
        self._judge()

    def _moved(self, key: str, at: Vec2) -> None:
        self._at[key] = at
        self._judge()

    def _catch(self, key: str, hand: float) -> None:
        """Put a mark onto the corner next to it, to a fraction of a point; where none is it stays."""
        if self._grey is None:
            self._grey = grey_of(self._read.jpeg)
        corner = caught(self._grey, self._at[key], hand)
        if corner is not None:
            self.board.place(key, corner)
        self._caught.setText(say("The mark lies on the corner that it was next to; with Alt it stays where you let go.")
                             if corner is not None else "")

    def _sheet(self) -> None:
        """Take over the size of a common sheet, lying as the corners in the picture do."""
        chosen = self.sheets.currentData()
        if chosen is not None:
            for key, field, value in (("across", self.across, chosen[0]), ("along", self.along, chosen[1])):
                self._lengths[key] = value
                field.show_value(value)
            self._judge()

    def _length(self, value: float) -> None:
        self._lengths[self.sender().property("length")] = value
        self.sender().show_value(value)  # with its unit: what was typed may have been in another
        if self.sender() is not self.distance:
            self.sheets.setCurrentIndex(self.sheets.count() - 1)
        self._judge()

    def _to_place(self) -> list[str]:
        """The marks that lie where the program put them, in words."""
        size = ({key: say("corner {n}", n=key) for key in "1234"} if self.four.isChecked() else
                {"a": "A", "b": "B"} if self.two.isChecked() else {})
        words = size | {"bass": say("the bass end of the nut"), "treble": say("the treble end of the nut")}
        return [word for key, word in words.items() if self._at[key] == self._began_at[key]]

    def _map(self) -> PlaneMap:
        """From the picture to mm. GeometryError when the marks make no sense."""
        if self.four.isChecked():
            flat = straightened([self._at[key] for key in "1234"], self._lengths["across"], self._lengths["along"])
        elif self.scan.isChecked():
            flat = scaled((0.0, 0.0), (float(self._read.width), 0.0), self._read.width / self._read.to_mm)
        else:
            flat = scaled(self._at["a"], self._at["b"], self._lengths["distance"])
        made = laid(flat, self._at["bass"], self._at["treble"], self.back.isChecked())
        if not made.sees(self._read.width, self._read.height):
            raise GeometryError(say("The horizon runs through the picture: put the four corners more carefully, or "
                                    "cut the picture to the head."))
        return made

    def _judge(self) -> None:
        """Say how large the head becomes, or what is wrong: then it cannot be laid."""
        unit = self._window.unit
        refused = next((field for field in (self.distance, self.across, self.along) if field.bad and not field.isHidden()), None)
        try:
            if refused is not None:
                raise GeometryError(refused.refusal)
            left = self._to_place()
            if left:
                raise _Unplaced(count(len(left), "Still to be put in its place: {marks}.", "Still to be put in their places: {marks}.",
                                      marks=listed(left)))
            made = self._map()
            nut = made(self._at["treble"])[0] - made(self._at["bass"])[0]
            self.nut_width = abs(nut)
            if self.nut_width > WIDEST_NUT:
                wide = format_close(self.nut_width, unit, mark=True)
                raise GeometryError(say("The nut would measure {nut}: check the marks at the nut, or give the size by two points.", nut=wide)
                                    if self.scan.isChecked() else
                                    say("The nut would measure {nut}: check the length that was typed and the marks at the nut.", nut=wide))
            point = made.size_at(self._at["bass"])
            words = {"nut": format_close(abs(nut), unit, mark=True), "point": format_close(point, unit, 2, mark=True)}
            own = self._window.document.layout.nut.width
            text = (say("The nut measures {nut}, one point of the picture {point}.", **words)
                    if self._window.front.shown or abs(own - self.nut_width) <= AS_WIDE else
                    say("The nut measures {nut} (in the layout it is {own} wide), one point of the picture {point}.",
                        own=format_close(own, unit, mark=True), **words))
            if point > 0.3:
                text += " " + say("That is coarse: a picture with more points traces better.")
            name = ""
        except _Unplaced as todo:
            text, name = str(todo), "dim"
        except GeometryError as error:
            text, name = str(error), "warning"
        self._says.setText(text)
        restyle(self._says, name)
        if refused is not None and self.lay_button.hasFocus():
            refused.setFocus()  # else the keyboard would go on to Cancel, and Enter would throw the marks away
        self.lay_button.setEnabled(not name)

    def _accept(self) -> None:
        self._judge()
        if not self.lay_button.isEnabled():
            return
        # Before the front page a layout of its own begins; who stays with the one that is open keeps the marks too.
        if self._window.front.shown and not (self._window.files.may_leave() and isValid(self)):
            return
        place = self._map()
        self.picture = Picture(name=self._name[:200], jpeg=self._read.jpeg, width=self._read.width,
                               height=self._read.height, place=place.rows)
        self.accept()
