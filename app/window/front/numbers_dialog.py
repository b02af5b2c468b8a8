"""A layout from a few numbers, drawn and checked while they are typed."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)
from shiboken6 import isValid

from app.look.alt_letters import Lead
from app.look.buttons import ok_cancel
from app.look.choice import Choice
from app.look.column import Column, form_of_dialog
from app.look.face_picture import FacePicture
from app.look.filled import filled
from app.look.paragraph import paragraph, restyle
from app.look.plain import plain
from app.look.sizes import keep, open_at
from app.look.theme import theme
from app.look.walk import ReadInOrder
from app.panels.forms.fields import AngleField, Field, LengthField
from app.threads.background import raised
from app.window.background.errand import Errand
from app.window.front.tried import Tried, tried
from app.window.rooms.own_rack import with_own_rack
from geometry.beginning import Numbers
from geometry.beginning.in_unit import followed, usual_numbers
from geometry.beginning.instruments import INSTRUMENTS
from geometry.beginning.needs import FACES, THROUGHS
from geometry.layout import Headstock
from geometry.layout.generic import PATTERNS
from geometry.saying import count, say
from geometry.terms import given_tool
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame

LENGTHS = ("pitch", "nut_width", "scale", "scale_treble", "length", "width", "thickness")
ANGLES = ("angle", "slant")


def begin_from_numbers(window: Frame) -> None:
    """Ask for numbers and open the layout that they make."""
    dialog = NumbersDialog(window)
    if dialog.exec() == QDialog.DialogCode.Accepted:
        window.document.replace(with_own_rack(window, dialog.layout_made), None)
        window.set_stage("tuners")
    dialog.deleteLater()


class _Picture(QWidget):
    """The head that the numbers make."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, minimumSize=QSize(220, 380), accessibleName=say("Preview of the headstock"))
        self._picture: FacePicture | None = None
        self._faint = False

    def sizeHint(self) -> QSize:
        return QSize(400, 520)

    def show_tried(self, answer: Tried) -> None:
        self._picture = FacePicture(answer.marks, answer.frame) if answer.marks else None
        self._faint = answer.layout is None
        self.update()

    def paintEvent(self, event) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme().paper))
        if self._picture is not None:
            painter.setOpacity(0.45 if self._faint else 1.0)
            self._picture.paint(painter, QRectF(self.rect()).adjusted(16, 16, -16, -16), theme())


class NumbersDialog(ReadInOrder, QDialog):
    """Asks for strings, tuners and blank, and shows at once what they make."""

    def __init__(self, window: Frame, numbers: Numbers | None = None) -> None:
        super().__init__(window, windowTitle=say("A layout from a few numbers"))
        self._window = window
        self.layout_made: Headstock | None = None
        self._numbers = numbers or usual_numbers(window.unit)
        self._unit: LengthUnit = window.unit
        self._answer: Tried | None = None
        self._typed: frozenset[str] = frozenset()
        """the numbers that the maker has typed; the others follow the instrument"""
        self._tried: tuple[Numbers, frozenset[str]] | None = None
        """the numbers that are being tried or were last, and those of them that were typed then"""
        self._begins = False
        """Begin was pressed before it was known what the numbers make"""
        self.errand = Errand(self, answered=self._answered, failed=raised, ended=self._ended)
        self._picture = _Picture(self)
        self._instrument = Choice(self, choices=[(key, kind.title) for key, kind in INSTRUMENTS.items()],
                                  accessibleName=say("Instrument"), activated=self._another_instrument)
        self._counts = {side: Choice(self, choices=[(n, str(n)) for n in range(13)], activated=self._changed) for side in ("bass", "treble")}
        ways = ("face", say("through the face")), ("side", say("through the side")), ("mixed", say("face and side in turn"))
        self._mounts = {side: Choice(self, choices=ways, activated=self._changed) for side in ("bass", "treble")}
        self._face, self._through = Choice(self, activated=self._changed), Choice(self, activated=self._changed)
        for box in (self._instrument, *self._mounts.values(), self._face, self._through):
            box.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(12)
            box.setToolTip(box.currentText())
            box.currentTextChanged.connect(box.setToolTip)
        self._courses = QCheckBox(say("Strings in pairs"), self, clicked=self._changed)
        self._left_handed = QCheckBox(say("Left-handed"), self, clicked=self._changed,
                                      toolTip=say("The whole head is mirrored, the sides named here with it."))
        self._fields: dict[str, Field] = {key: LengthField(window.unit, parent=self) for key in LENGTHS}
        self._fields |= {key: AngleField(parent=self) for key in ANGLES}
        self._build()
        self._fill()
        self._try()

    # ---- building -------------------------------------------------------
    def _build(self) -> None:
        form = self._form = form_of_dialog()
        form.setVerticalSpacing(6)
        form.setHorizontalSpacing(14)
        form.addRow(Lead(say("Instrument"), self._instrument), self._instrument)
        words = {"bass": say("Tuners, bass side"), "treble": say("Tuners, treble side")}
        for side in ("bass", "treble"):
            count, mount = self._counts[side], self._mounts[side]
            keep(count, fixed_width=64)
            count.setAccessibleName(words[side])
            mount.setAccessibleName(say("How they are mounted, {word}", word=words[side]))
            form.addRow(Lead(words[side], count), _beside(count, mount))
        titles = {"face": say("Hardware through the face"), "through": say("Hardware through the side")}
        for key, box, kinds in (("face", self._face, FACES), ("through", self._through, THROUGHS)):
            box.addItem(say("what fits"), "")
            for pattern in PATTERNS:
                if pattern.id in kinds:
                    box.addItem(pattern_name(pattern.id, self._unit), pattern.id)
                    box.setItemData(box.count() - 1, plain(pattern.about), Qt.ItemDataRole.ToolTipRole)
            box.setAccessibleName(titles[key])
            form.addRow(Lead(titles[key], box), box)
        form.addRow("", _beside(self._courses, self._left_handed))
        labels = {"pitch": say("From tuner to tuner"), "nut_width": say("Width of the nut"), "scale": say("Scale length, bass side"),
                  "scale_treble": say("Scale length, treble side"), "angle": say("Pitch of the head"), "slant": say("Slant of the nut"),
                  "length": say("Blank: length past the nut line"), "width": say("Blank: width"),
                  "thickness": say("Blank: thickness")}
        for key, field in self._fields.items():
            field.setAccessibleName(labels[key])
            field.setProperty("number", key)
            field.sent.connect(self._number)
            field.refused.connect(self._judge)
            field.mended.connect(self._mended)
        fields = self._fields
        form.addRow(Lead(labels["pitch"], fields["pitch"]), fields["pitch"])
        form.addRow(Lead(labels["nut_width"], fields["nut_width"]), fields["nut_width"])
        form.addRow(Lead(say("Scale length, bass and treble side"), fields["scale"]), _beside(fields["scale"], fields["scale_treble"]))
        form.addRow(Lead(say("Pitch of the head, slant of the nut"), fields["angle"]), _beside(fields["angle"], fields["slant"]))
        for key in ("length", "width", "thickness"):
            form.addRow(Lead(labels[key], fields[key]), fields[key])
        self._says = paragraph(self)
        self._left = paragraph(self, name="dim")
        self._cure = QPushButton(say("Take what would do"), self, autoDefault=False, clicked=self._take_cure)
        buttons, self.begin_button = ok_cancel(self, self._accept, say("Begin"))
        hint = paragraph(self, say("The outline and the hardware are a beginning: measure your own tuners, and change what you "
                                   "like."), "dim")
        inside = filled(QVBoxLayout(), form)
        inside.addSpacing(8)
        filled(inside, hint, 1)
        below = filled(QVBoxLayout(), self._says, self._left, (self._cure, 0, Qt.AlignmentFlag.AlignLeft),
                       margins=(4, 0, 4, 0))  # in line with the words in the column
        right = filled(QVBoxLayout(), (Column(inside, self.windowTitle(), self), 1), below, buttons)
        filled(QHBoxLayout(self), (self._picture, 2), (right, 3), margins=(14, 14, 14, 14), gap=18)
        open_at(self, 960, 640)

    def _fill(self) -> None:
        n = self._numbers
        for side in ("bass", "treble"):
            self._counts[side].setCurrentIndex(n.count(side))
            self._mounts[side].setCurrentIndex(self._mounts[side].findData(n.mount(side)))
        for box, key in ((self._instrument, n.instrument), (self._face, n.face), (self._through, n.through)):
            box.setCurrentIndex(box.findData(key))
        self._courses.setChecked(n.courses)
        self._left_handed.setChecked(n.left_handed)
        self._show_numbers()
        self._show_hardware()

    def _show_hardware(self) -> None:
        """Offer hardware for the ways in which tuners are mounted."""
        mounts = {self._numbers.mount(side) for side in ("bass", "treble") if self._numbers.count(side)}
        for box, none in ((self._face, {"side"}), (self._through, {"face"})):
            self._form.setRowVisible(box, mounts != none)

    def _show_numbers(self) -> None:
        """Show the numbers; what was refused stays in its field."""
        for key, field in self._fields.items():
            if not field.bad:
                field.show_value(getattr(self._numbers, key))

    # ---- what was typed -------------------------------------------------
    def _changed(self) -> None:
        self._numbers = followed(replace(
            self._numbers, bass=self._counts["bass"].currentData(), treble=self._counts["treble"].currentData(),
            bass_mount=self._mounts["bass"].currentData(), treble_mount=self._mounts["treble"].currentData(),
            courses=self._courses.isChecked(), left_handed=self._left_handed.isChecked(), face=self._face.currentData(),
            through=self._through.currentData()), self._typed, self._unit)
        self._show_numbers()
        self._show_hardware()
        self._try()

    def _another_instrument(self) -> None:
        """Its tuners, strings and numbers as they mostly are, but for what the maker has typed."""
        begun = usual_numbers(self._unit, self._instrument.currentData())
        self._numbers = followed(replace(begun, left_handed=self._numbers.left_handed,
                                         **{key: getattr(self._numbers, key) for key in self._typed}), self._typed, self._unit)
        self._fill()
        self._try()

    def _number(self, value: float) -> None:
        field = self.sender()
        field.show_value(value)  # with its unit: what was typed may have been in another
        key = field.property("number")
        self._typed |= {key}
        self._numbers = followed(replace(self._numbers, **{key: value}), self._typed, self._unit)
        self._show_numbers()
        self._try()

    def _mended(self) -> None:
        """What was refused is no longer there: its number may have changed meanwhile."""
        self._show_numbers()
        self._judge()

    def _take_cure(self) -> None:
        if self._answer is not None and self._answer.cure is not None:
            self._numbers = self._answer.cure
            self._fill()
            self._try()

    # ---- trying ---------------------------------------------------------
    def _try(self) -> None:
        """Build what the numbers make, beside the window; the newest numbers win."""
        self._begins = False
        self.begin_button.setEnabled(not self._refused)
        self._cure.setEnabled(False)
        if self.errand.free:
            self._tried = self._numbers, self._typed
            self.errand.start(partial(tried, self._numbers, self._unit, self._typed))

    def _ended(self) -> None:
        if self._tried != (self._numbers, self._typed):
            self._try()
        elif self._begins:
            self._accept()

    def _answered(self, answer: Tried) -> None:
        self._answer = answer
        if self._tried == (self._numbers, self._typed):
            self._numbers = answer.numbers
            self._tried = self._numbers, self._typed
            self._show_numbers()
        self._picture.show_tried(answer)
        self._judge()

    @property
    def settled(self) -> bool:
        """Whether it is known what the numbers make."""
        return self._answer is not None and self._answer.numbers == self._numbers

    @property
    def _refused(self) -> str:
        """Why what stands in a field is no length; "" when every field can be read."""
        return next((field.refusal for field in self._fields.values() if field.bad), "")

    def _judge(self) -> None:
        """Say what the numbers make, or what is wrong with them, and offer what can be done."""
        answer, refused = self._answer, self._refused
        wrong = refused or ("" if answer is None else answer.refusal)
        cure = answer is not None and answer.cure is not None and not refused
        text = wrong or ("" if answer is None else _made_words(answer))
        self._says.setText(f"{text} {say('The picture shows it with what would do.')}" if cure else text)
        restyle(self._says, "warning" if wrong else "heading")
        left = () if wrong or answer is None else answer.left
        self._left.setText(say("To look at later: {titles}.", titles="; ".join(title for title, _ in left)) if left else "")
        self._left.setToolTip("\n".join(said for _, said in left))
        self._left.setVisible(bool(left))
        self._cure.setVisible(cure)
        self._cure.setEnabled(self.settled)
        if refused and self.begin_button.hasFocus():
            next(field for field in self._fields.values() if field.bad).setFocus()  # else the keyboard would go on to Cancel
        self.begin_button.setEnabled(not refused and not (self.settled and answer.layout is None))

    def _accept(self) -> None:
        """Take the layout that the numbers make, as soon as it is known."""
        if self._refused:
            return
        self._begins = not self.settled
        if self.settled and self._answer.layout is not None:
            self.layout_made = self._answer.layout
            # Asked here and not when the dialog has gone: who stays with the layout that is open keeps the numbers too.
            if self._window.files.may_leave() and isValid(self):
                self.accept()

    def keyPressEvent(self, event) -> None:
        """Enter in a field takes what was typed and shows what it makes; the next one begins."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not self.settled and isinstance(self.focusWidget(), Field):
            return
        super().keyPressEvent(event)

    def done(self, result: int) -> None:
        self.errand.end()
        super().done(result)


def pattern_name(id: str, unit: LengthUnit) -> str:
    """What a generic pattern is called where lengths are told in that unit, in the language in use."""
    if unit != "mm":
        from geometry.layout.generic_inch import PATTERNS_INCH

        id = next(inches.id for mm, inches in zip(PATTERNS, PATTERNS_INCH, strict=True) if mm.id == id)
    return given_tool(id)


def _beside(one: QWidget, two: QWidget) -> QHBoxLayout:
    return filled(QHBoxLayout(), (one, 0 if isinstance(two, Choice) else 1), (two, 1), gap=6)


def _made_words(answer: Tried) -> str:
    """What is in the way of a layout, counted."""
    spoils, tight, notes = answer.grades
    told = (spoils and count(spoils, "{n} spoils the work", "{n} spoil the work"), tight and say("{n} tight", n=tight),
            notes and count(notes, "{n} note", "{n} notes"))
    return say("Snags: {counts}.", counts=", ".join(filter(None, told))) if any(told) else say("No snags.")
