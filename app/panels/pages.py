"""Rows that a stage shows while nothing is held."""

from __future__ import annotations

from functools import partial

from app.panels.accuracy_rows import accuracy_rows
from app.panels.blank_rows import blank_rows
from app.panels.describe import ear_rows, field, pair_rows
from app.panels.forms.rows import FieldRow
from app.panels.pocket_rows import pocket_facts
from app.panels.router.fit_rows import fit_rows
from geometry.edits import remove_features, rename, set_field
from geometry.edits.hardware import add_bore, add_ear, copy_pattern, remove_bore, remove_pattern
from geometry.edits.rack import set_template_tool
from geometry.layout import Headstock, Pattern
from geometry.layout.hardware import TAPERS
from geometry.saying import say
from geometry.terms import term
from geometry.units import LengthUnit, format_close, format_size

MARGINS = (
    ("bore_outline", say("Bore to outline")), ("screw_outline", say("Screw to outline")), ("bore_bore", say("Bore to bore")),
    ("screw_any", say("Screw to anything")), ("bore_slot", say("Bore to slot wall")), ("rail", say("Rail")), ("web", say("Web")),
    ("side_cover", say("Wood above and below a side bore")), ("slot_nut", say("Slot to nut line")),
    ("pin_any", say("Pin to anything")), ("post_wall", say("Post end to inner wall")),
    ("string_hole", say("String hole to slot wall")),
    ("string_air", say("String to post, wall and ramp")), ("seat_overhang", say("Plate inside the edge")),
    ("seat_gap", say("Plate to plate")), ("button_gap", say("Button to button")), ("blank_edge", say("Outline to blank edge")),
    ("feather", say("Screw and bore to a feather edge")), ("template_contact", say("Follower has to rub")))


def blank_page(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """The blank, its ears, the margins wanted, and how far the shop strays."""
    rows = [field(layout, say("Name of the layout"), "words", ("name",), layout.name), *blank_rows(layout, unit)]
    for ear in layout.ears:
        rows += [FieldRow(say("Ear: {ear}", ear=ear.id), "heading"), *ear_rows(layout, ear),
                 FieldRow(say("Remove this ear"), "button", None, lambda _, id=ear.id: remove_features(layout, (id,)))]
    rows += [FieldRow(say("Add an ear on the bass side"), "button", None, lambda _: add_ear(layout, "bass")),
             FieldRow(say("Add an ear on the treble side"), "button", None, lambda _: add_ear(layout, "treble")),
             FieldRow(say("Margins wanted"), "heading")]
    rows += [field(layout, label, "length", ("margins", key), getattr(layout.margins, key),
                   help=say("Common practice, no source: set what you trust.")) for key, label in MARGINS]
    rows.append(field(layout, say("A drill skates beyond"), "angle", ("margins", "skate_angle"), layout.margins.skate_angle))
    return rows + accuracy_rows(layout, unit)


def slots_page(layout: Headstock, unit: LengthUnit) -> list[FieldRow]:
    """Every slot with what fits it."""
    rows: list[FieldRow] = []
    for slot in layout.slots:
        rows.append(FieldRow(slot.id, "heading"))
        rows += pocket_facts(slot, layout.blank.thickness, unit) if slot.there else fit_rows(layout, slot.id, unit)
    return rows or [FieldRow(say("No slot yet: choose New slot, and press where the middle of its round nut end goes."), "heading")]


def tuners_page(layout: Headstock, pattern_id: str) -> list[FieldRow]:
    """Every number of one hardware pattern."""
    found = [(i, p) for i, p in enumerate(layout.patterns) if p.id == pattern_id]
    if not found:
        return [FieldRow(say("No hardware in this layout."), "heading")]
    i, pattern = found[0]
    return _pattern_rows(layout, i, pattern)


def template_rows(layout: Headstock) -> list[FieldRow]:
    """What the template is made for."""
    rack = layout.rack
    return [
        FieldRow(say("Made for the bit"), "choice", layout.template.bit,
                 lambda bit: set_template_tool(layout, bit, None if bit is None else layout.template.bush),
                 choices=((None, say("none chosen")), *((b.id, b.id) for b in rack.bits))),
        field(layout, say("Guide bush"), "choice", ("template", "bush"), layout.template.bush,
              choices=((None, say("none")), *((b.id, b.id) for b in rack.bushes))),
        field(layout, say("Thickness"), "length", ("template", "thickness"), layout.template.thickness),
        field(layout, say("Cut from a board"), "choice", ("template", "board"), layout.template.board,
              choices=(("outline", say("shaped like the head")), ("blank", say("as large as the blank")))),
        field(layout, say("Follower has to rub"), "length", ("margins", "template_contact"), layout.margins.template_contact,
              help=say("Least height of the follower that rubs on the template.")),
        field(layout, say("Board between openings"), "length", ("margins", "template_web"), layout.margins.template_web),
        field(layout, say("Base rests inside by"), "length", ("margins", "base_rest"), layout.margins.base_rest)]


def _pattern_rows(layout: Headstock, i: int, pattern: Pattern) -> list[FieldRow]:
    path = ("patterns", i)
    rows = [FieldRow(say("Name"), "words", pattern.id, partial(rename, layout, "patterns", pattern.id)),
            field(layout, say("In words"), "words", (*path, "about"), pattern.about),
            FieldRow(say("Make a copy to change"), "button", None, lambda _: copy_pattern(layout, pattern.id)),
            FieldRow(say("Remove this hardware"), "button", None, lambda _: remove_pattern(layout, pattern.id))]
    roles = (("post", term("post bore")), ("counterbore", term("counterbore")), ("clearance", term("clearance bore")),
             ("screw", term("screw pilot")), ("pin", term("pin hole")))
    words = (say("Out, to the button"), say("Aside")) if pattern.mount == "face" else (say("Along, to the tip"), say("Down, to the back"))
    for k, bore in enumerate(pattern.bores):
        at = (*path, "bores", k)
        rows += [FieldRow(say("Bore {k}", k=k + 1), "heading"),
                 field(layout, say("Kind"), "choice", (*at, "role"), bore.role, choices=roles),
                 field(layout, say("Diameter"), "length", (*at, "diameter"), bore.diameter),
                 field(layout, say("Depth"), "length", (*at, "depth"), bore.depth, optional=pattern.mount == "face",
                       empty=say("through")), *pair_rows(bore.at, words, partial(set_field, layout, (*at, "at")))]
        if pattern.mount == "face":
            rows.append(field(layout, say("Drilled from the"), "choice", (*at, "surface"), bore.surface,
                              choices=(("face", term("face")), ("back", term("back")))))
        rows.append(field(layout, say("Drill"), "choice", (*at, "drill"), bore.drill, choices=(
            ("brad", say("brad point")), ("twist", say("twist drill")), ("forstner", say("Forstner bit")))))
        rows.append(field(layout, say("Reamed to"), "length", (*at, "reamed"), bore.reamed, optional=True, empty=say("not reamed")))
        if bore.reamed is not None:
            rows.append(field(layout, say("Taper"), "choice", (*at, "taper"), bore.taper, choices=tuple(
                (taper, say("1:{taper:g}", taper=taper)) for taper in sorted({*map(float, TAPERS), bore.taper}))))
        if len(pattern.bores) > 1:
            rows.append(FieldRow(say("Remove bore {k}", k=k + 1), "button", None,
                                 lambda _, k=k: remove_bore(layout, pattern.id, k)))
    rows.append(FieldRow(say("Add a bore"), "button", None, lambda _: add_bore(layout, pattern.id)))
    groups = (("seat", say("Plate"), (("before", say("Before the post")), ("behind", say("Behind the post")), ("across", say("Across")))),
              ("post", say("Post"), (("diameter", say("Diameter")), ("length", say("End")), ("string_hole", say("String hole")))),
              ("button", say("Button"), (("reach", say("Reach from the post")), ("length", say("Length")), ("width", say("Width")),
                                    ("thickness", say("Thickness")), ("stand", say("Stands off")))))
    for key, heading, fields in groups:
        part = getattr(pattern, key)
        rows.append(FieldRow(heading, "heading"))
        rows += [field(layout, label, "length", (*path, key, name), getattr(part, name)) for name, label in fields]
        if key == "post" and pattern.mount == "face":
            rows += _over_the_face(layout, path, pattern)
    return rows


def _over_the_face(layout: Headstock, path: tuple, pattern: Pattern) -> list[FieldRow]:
    """Where the heights of a post through the face are measured from, where its string comes off, and the wood that it clamps."""
    post = pattern.post
    return [field(layout, say("Where its string comes off"), "length", (*path, "post", "winding"), post.winding, optional=True,
                  empty=say("at the hole")),
            field(layout, say("Measured from"), "choice", (*path, "post", "measured"), post.measured,
                  choices=(("plate", say("its plate")), ("face", say("the face")))),
            field(layout, say("Thinnest head it clamps"), "length", (*path, "least_wood"), pattern.least_wood, optional=True,
                  empty=say("any")),
            field(layout, say("Thickest head it clamps"), "length", (*path, "most_wood"), pattern.most_wood, optional=True,
                  empty=say("any"))]


def sheets_page(layout: Headstock, unit: LengthUnit, paper: str) -> list[FieldRow]:
    """What will be written."""
    b = layout.blank
    face = format_size(b.bass + b.treble, b.tip + b.behind, unit, 2)
    wrap = format_close(b.bass + b.treble + 2 * b.thickness, unit, 2, mark=True)
    return [
        FieldRow(say("Paper"), "fact", paper),
        FieldRow(say("Blank"), "fact", face),
        FieldRow(say("Wrap paper"), "fact", say("{wrap} wide, folds round both edges", wrap=wrap)),
        FieldRow(say("Written too"), "fact", say("template, wrap paper and back paper as DXF and SVG, tables as CSV")),
        FieldRow(say("Print at 100 %. Measure the 100 mm bars before you glue."), "heading"),
        FieldRow(say("How far your shop strays stands in the Blank stage."), "note")]
