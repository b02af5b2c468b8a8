"""The rows of the blank: its dimensions, what is glued on, and the scarf joint."""

from __future__ import annotations

from functools import partial

from app.panels.forms.field_help import pattern
from app.panels.forms.rows import FieldRow
from geometry.checks.words import first
from geometry.edits import set_field
from geometry.layout import Headstock
from geometry.routing.depth import SLIM
from geometry.saying import say
from geometry.solids.scarf import scarf_of
from geometry.strings.square_line import square_line
from geometry.units import LengthUnit, format_close


def blank_rows(layout: Headstock, unit: LengthUnit = "mm") -> list[FieldRow]:
    """The blank's dimensions, what of them is glued on, its wood, and what comes on it."""
    line = square_line(layout.nut)
    rows = [_row(layout, say("Centreline to the bass edge"), "bass"), _row(layout, say("Centreline to the treble edge"), "treble"),
            _row(layout, say("{line} to the far end", line=first(line)), "tip"), _row(layout, say("Wood behind the {line}", line=line), "behind"),
            _row(layout, say("Thickness"), "thickness"),
            _row(layout, say("Face veneer, counted in"), "face_veneer"), _row(layout, say("Back veneer, counted in"), "back_veneer")]
    if layout.blank.veneers:
        rows.append(FieldRow(say("Planed to before the veneers"), "length", layout.blank.core, partial(_planed_to, layout),
                             help=say("Thickness less the veneers. Typed here, it makes the whole thicker or thinner.")))
    rows.append(_row(layout, say("Scarf joint, its line on the face"), "scarf", optional=True, empty=say("none")))
    rows += [*_joint_facts(layout, unit), _flag(layout, say("Hard wood, such as maple"), "hard_wood", help=say(
        "Router bits slimmer than {slim} then cut half as deep in a pass.", slim=format_close(SLIM, unit, mark=True))),
        _flag(layout, say("Finish, once it has its shape"), "finish")]
    return rows


def _row(layout: Headstock, label: str, name: str, **more) -> FieldRow:
    path = ("blank", name)
    return FieldRow(label, "length", getattr(layout.blank, name), partial(set_field, layout, path), key=pattern(path), **more)


def _flag(layout: Headstock, label: str, name: str, **more) -> FieldRow:
    path = ("blank", name)
    return FieldRow(label, "flag", getattr(layout.blank, name), partial(set_field, layout, path), key=pattern(path), **more)


def _planed_to(layout: Headstock, core: float) -> Headstock:
    blank = layout.blank
    return set_field(layout, ("blank", "thickness"), core + blank.face_veneer + blank.back_veneer)


def _joint_facts(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """Where the joint comes out on the back, how long it is, and the neck's wood that it asks for."""
    joint = scarf_of(layout.blank, layout.nut)
    if joint is None:
        return []
    line, away = square_line(layout.nut), format_close(abs(joint.back), unit, 1, mark=True)
    back = say("{away} from the {line}", away=away, line=line) if joint.back >= 0 else say("{away} behind the {line}", away=away, line=line)
    return [FieldRow(say("Its line on the back"), "fact", back),
            FieldRow(say("Length of the joint"), "fact", format_close(joint.length, unit, 1, mark=True)),
            FieldRow(say("Wood of the neck over it"), "length", joint.neck, partial(_under_a_neck, layout, joint.neck / joint.face),
                     help=say("How thick the neck is where the head piece is glued under it, square to the neck. Typed here, it sets where the "
                              "line comes out."))]


def _under_a_neck(layout: Headstock, each: float, thick: float) -> Headstock:
    return set_field(layout, ("blank", "scarf"), round(thick / each, 3))
