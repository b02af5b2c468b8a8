"""Rows that a stage shows while nothing is held."""

from __future__ import annotations

from functools import partial

from app.panels.accuracy_rows import accuracy_rows
from app.panels.describe import blank_rows, ear_rows, field, fit_rows, nut_rows, outline_size
from app.panels.rows import FieldRow
from geometry.edits import remove_features, rename, set_field
from geometry.edits.rack import set_template_tool
from geometry.edits.hardware import add_bore, add_ear, copy_pattern, remove_bore, remove_pattern
from geometry.errors import GeometryError
from geometry.layout import Headstock, Pattern
from geometry.units import LengthUnit, format_length

MARGINS = (
    ("bore_outline", "Bore to outline"), ("screw_outline", "Screw to outline"), ("bore_bore", "Bore to bore"),
    ("screw_any", "Screw to anything"), ("bore_slot", "Bore to slot wall"), ("rail", "Rail"), ("web", "Web"),
    ("side_cover", "Wood above and below a side bore"), ("slot_nut", "Slot to nut line"),
    ("pin_any", "Pin to anything"), ("post_wall", "Post end to inner wall"),
    ("string_hole", "String hole to slot wall"),
    ("string_air", "String to post, wall and ramp"), ("seat_overhang", "Plate inside the edge"),
    ("seat_gap", "Plate to plate"), ("button_gap", "Button to button"), ("blank_edge", "Outline to blank edge"),
    ("template_contact", "Follower on the template"))


def blank_page(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """The blank, its ears, the margins wanted, and how far the shop strays."""
    rows = [field(layout, "Name of the layout", "text", ("name",), layout.name), *blank_rows(layout)]
    for ear in layout.ears:
        rows += [FieldRow(f"Ear: {ear.id}", "heading"), *ear_rows(layout, ear.id),
                 FieldRow("Remove this ear", "button", None, lambda _, id=ear.id: remove_features(layout, (id,)))]
    rows += [FieldRow("Add an ear on the bass side", "button", None, lambda _: add_ear(layout, "bass")),
             FieldRow("Add an ear on the treble side", "button", None, lambda _: add_ear(layout, "treble")),
             FieldRow("Margins wanted", "heading")]
    rows += [field(layout, label, "length", ("margins", key), getattr(layout.margins, key),
                   help="Common practice, no source: set what you trust.") for key, label in MARGINS]
    return rows + accuracy_rows(layout)


def outline_page(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """Size of the outline and what to do next."""
    return [*outline_size(layout, unit),
            FieldRow("Double-click the edge to add a node. Hold a node to type its place.", "heading")]


def slots_page(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """Every slot with what fits it."""
    rows: list[FieldRow] = []
    for slot in layout.slots:
        rows.append(FieldRow(slot.id, "heading"))
        rows += fit_rows(layout, slot.id, unit)
    return rows or [FieldRow("No slot yet: choose New slot and press where its nut end goes.", "heading")]


def tuners_page(layout: Headstock, unit: LengthUnit, pattern_id: str) -> list[FieldRow]:
    """Every number of one hardware pattern."""
    found = [(i, p) for i, p in enumerate(layout.patterns) if p.id == pattern_id]
    if not found:
        return [FieldRow("No hardware in this layout.", "heading")]
    i, pattern = found[0]
    return _pattern_rows(layout, i, pattern)


def strings_page(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """Nut and strings."""
    rows = nut_rows(layout)
    for i, string in enumerate(layout.strings):
        rows.append(FieldRow(f"String {string.id}, course {string.course}", "heading"))
        rows.append(field(layout, "Note", "text", ("strings", i, "note"), string.note))
        rows.append(field(layout, "Diameter", "length", ("strings", i, "diameter"), string.diameter))
    return rows


def template_rows(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """What the template is made for."""
    rack = layout.rack
    return [
        FieldRow("Made for the bit", "choice", layout.template.bit,
                 lambda bit: set_template_tool(layout, bit, None if bit is None else layout.template.bush),
                 choices=((None, "none chosen"), *((b.id, b.id) for b in rack.bits))),
        field(layout, "Guide bush", "choice", ("template", "bush"), layout.template.bush,
              choices=((None, "none"), *((b.id, b.id) for b in rack.bushes))),
        field(layout, "Thickness", "length", ("template", "thickness"), layout.template.thickness),
        field(layout, "Cut from a board", "choice", ("template", "board"), layout.template.board,
              choices=(("outline", "shaped like the head"), ("blank", "as large as the blank"))),
        field(layout, "Follower has to rub", "length", ("margins", "template_contact"), layout.margins.template_contact,
              help="Least height of the follower that rubs on the template."),
        field(layout, "Board between openings", "length", ("margins", "template_web"), layout.margins.template_web),
        field(layout, "Base rests inside by", "length", ("margins", "base_rest"), layout.margins.base_rest)]


def _pattern_rows(layout: Headstock, i: int, pattern: Pattern) -> list[FieldRow]:
    path = ("patterns", i)
    rows = [FieldRow("Name", "text", pattern.id, partial(rename, layout, "patterns", pattern.id)),
            field(layout, "In words", "text", (*path, "about"), pattern.about),
            FieldRow("Make a copy to change", "button", None, lambda _: copy_pattern(layout, pattern.id)),
            FieldRow("Remove this hardware", "button", None, lambda _: remove_pattern(layout, pattern.id))]
    roles = (("post", "post bore"), ("counterbore", "counterbore"), ("clearance", "clearance bore"),
             ("screw", "screw pilot"), ("pin", "pin hole"))
    words = ("Out, to the button", "Aside") if pattern.mount == "face" else ("Along, to the tip", "Down, to the back")
    for k, bore in enumerate(pattern.bores):
        at = (*path, "bores", k)
        rows += [FieldRow(f"Bore {k + 1}", "heading"),
                 field(layout, "Kind", "choice", (*at, "role"), bore.role, choices=roles),
                 field(layout, "Diameter", "length", (*at, "diameter"), bore.diameter),
                 field(layout, "Depth", "length", (*at, "depth"), bore.depth, optional=pattern.mount == "face",
                       empty="through"),
                 FieldRow(words[0], "length", bore.at[0],
                          lambda u, at=at, v=bore.at[1]: set_field(layout, (*at, "at"), (u, v))),
                 FieldRow(words[1], "length", bore.at[1],
                          lambda v, at=at, u=bore.at[0]: set_field(layout, (*at, "at"), (u, v)))]
        if pattern.mount == "face":
            rows.append(field(layout, "Drilled from the", "choice", (*at, "surface"), bore.surface,
                              choices=(("face", "face"), ("back", "back"))))
        rows.append(field(layout, "Drill", "choice", (*at, "drill"), bore.drill, choices=(
            ("brad", "brad point"), ("twist", "twist drill"), ("forstner", "Forstner bit"))))
        if len(pattern.bores) > 1:
            rows.append(FieldRow(f"Remove bore {k + 1}", "button", None,
                                 lambda _, k=k: remove_bore(layout, pattern.id, k)))
    rows.append(FieldRow("Add a bore", "button", None, lambda _: add_bore(layout, pattern.id)))
    groups = (("seat", "Plate", (("before", "Before the post"), ("behind", "Behind the post"), ("across", "Across"))),
              ("post", "Post", (("diameter", "Diameter"), ("length", "Length"), ("string_hole", "String hole"))),
              ("button", "Button", (("reach", "Reach from the post"), ("length", "Length"), ("width", "Width"),
                                    ("thickness", "Thickness"), ("stand", "Stands off"))))
    for key, heading, fields in groups:
        part = getattr(pattern, key)
        rows.append(FieldRow(heading, "heading"))
        rows += [field(layout, label, "length", (*path, key, name), getattr(part, name)) for name, label in fields]
    return rows


def sheets_page(layout: Headstock, unit: LengthUnit, paper: str) -> list[FieldRow]:
    """What will be written."""
    b = layout.blank
    face = f"{format_length(b.bass + b.treble, unit)} x {format_length(b.tip + b.behind, unit, mark=True)}"
    wrap = format_length(b.bass + b.treble + 2 * b.thickness, unit, mark=True)
    return [
        FieldRow("Paper", "fact", paper),
        FieldRow("Blank", "fact", face),
        FieldRow("Wrap paper", "fact", f"{wrap} wide, folds round both edges"),
        FieldRow("Written too", "fact", "template as DXF and SVG, tables as CSV"),
        FieldRow("Print at 100 %. Measure the 100 mm bars before you glue.", "heading"),
        FieldRow("How far your shop strays stands in the Blank stage.", "note")]
