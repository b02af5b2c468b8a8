"""No field without its sentence, no kind of snag without its explanation."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPoint
from PySide6.QtGui import QHelpEvent, QImage
from PySide6.QtWidgets import QApplication, QLabel, QToolTip

from app.formats import headstock
from app.help.pictures import picture
from app.help.snags import DRAWN, drawing_of, snag_words
from app.help.tip import _encoded, drawn, pictured
from app.look.descendants import below
from app.look.theme import LAMP, THEMES, use_theme
from app.panels import pages
from app.panels.accuracy_rows import accuracy_rows
from app.panels.describe import describe, nut_rows
from app.panels.forms.field_help import LABELS, PATHS, explained, pattern
from app.panels.forms.form import Form
from app.panels.forms.rows import FieldRow
from app.panels.order.rate_rows import rate_rows
from app.panels.router.rack_rows import entry_rows, machine_rows
from app.panels.strings.string_panel import _string_rows
from geometry.checks.kinds import KINDS
from geometry.edits.hand_cuts import propose_flat, propose_ramp
from geometry.edits.hardware import add_ear
from geometry.errors import GeometryError
from geometry.layout import Headstock, feature_ids
from tests.geometry.edits.heads import curved, plain, twelve
from tests.waiting import on_screen

SAMPLES = sorted((Path(__file__).parents[3] / "samples").glob("*.headstock.json"))
TYPED = ("length", "angle", "text", "words", "choice", "flag")


def heads() -> Iterator[Headstock]:
    for head in (*(headstock.read(file) for file in SAMPLES), plain(), curved(), twelve()):
        yield head
        head = add_ear(head, "bass")
        for edit, ids in ((propose_ramp, [s.id for s in head.slots]), (propose_flat, [t.id for t in head.tuners])):
            for id in ids:
                try:
                    head = edit(head, id)
                except GeometryError:
                    continue  # nothing to propose here: another head shows these rows
        yield head


def rows(head: Headstock) -> Iterator[FieldRow]:
    """Every row of every page that a layout can show."""
    for id in (*feature_ids(head), "outline", "nut", "blank"):
        page = describe(head, id, "mm")
        yield from (*page.facts, *page.fields)
    for node in range(len(head.outline.nodes)):
        yield from describe(head, "outline", "mm", node).fields
    for pattern_ in head.patterns:
        yield from pages.tuners_page(head, pattern_.id)
    for made in (pages.blank_page(head, "mm"), nut_rows(head), pages.template_rows(head),
                 accuracy_rows(head, "mm"), rate_rows(head), _string_rows(head), machine_rows(head.rack, "mm")):
        yield from made
    for shelf in ("bits", "bushes", "drills"):
        for entry in getattr(head.rack, shelf):
            yield from entry_rows(head.rack, shelf, entry.id, "mm")


def test_every_field_of_every_panel_has_its_sentence():
    without = {(row.label, row.key) for head in heads() for row in rows(head)
               if row.kind in TYPED and row.change is not None and not explained(row)[0]}
    assert without == set()


def test_every_number_and_choice_of_a_layout_can_be_set_in_some_field():
    """What only a file could set would be a promise that the window does not keep."""
    head = twelve()
    keys = {row.key for row in rows(head)}
    wanted = {f"{record}.{name}" for record in ("blank", "margins", "nut") for name in getattr(head, record).__struct_fields__}
    assert wanted - keys == set()


def test_every_sentence_is_of_some_field():
    """A sentence that no row asks for is of a field that is gone, or that is called otherwise now."""
    shown = [row for head in heads() for row in rows(head)]
    assert PATHS.keys() <= {row.key for row in shown}
    assert LABELS.keys() <= {row.label for row in shown if not row.key}


def test_a_row_with_a_path_is_never_told_of_as_another_of_its_name():
    """An ear is as wide as its wood goes in; a ramp is as wide as its slot."""
    head = add_ear(plain(), "bass")
    row, = [row for row in describe(head, head.ears[0].id, "mm").fields if row.label == "Width"]
    assert explained(row) == ("From the square edge in to the glue line.", "")


def test_sentences_end_and_name_drawings_that_exist():
    for sentence, drawing in (*PATHS.values(), *LABELS.values()):
        assert sentence.endswith(".") and len(sentence) > 15, sentence
        assert bool(picture(drawing)) == bool(drawing)


def test_paths_are_looked_up_without_names_and_numbers():
    assert pattern(("tuners", "treble side 2", "place", "depth")) == "tuners.place.depth"
    assert pattern(("patterns", 3, "bores", 0, "diameter")) == "patterns.bores.diameter"
    assert pattern(("bits", "12 shank bearing", "cutter"), "rack") == "rack.cutter"
    assert pattern(("slots", "shape", "shape", "width")) == "slots.shape.width", "a slot may be called shape"


def test_every_kind_of_snag_is_explained_and_found_in_the_help():
    words = snag_words()
    assert {word.word for word in words} == {kind.title for kind in KINDS.values()}
    for word in words:
        assert word.means.endswith(".") and len(word.means) > 15
        assert bool(picture(word.picture)) == bool(word.picture)
    assert DRAWN.keys() <= KINDS.keys()


PLAIN = {"outline-crosses", "slot-crosses", "no-place", "drilled-and-gone", "drilled-otherwise", "cut-and-gone", "cut-otherwise", "marked-otherwise", "glued-otherwise", "blank-too-small", "blank-too-thick", "wood-for-tuner", "slot-too-shallow",
         "post-to-slot-end", "post-not-through", "string-to-face", "string-to-screw", "string-to-post", "string-to-string",
         "string-off-wood", "nut-step", "string-off-nut", "strings-in-nut", "retainer-no-hole", "retainer-bar", "bit-too-wide", "bit-too-short",
         "wood-left", "template-lost", "ream-short", "no-drill", "drill-size"}
"""Kinds of snags whose sentence is enough."""


def test_where_words_fail_there_is_a_drawing():
    assert {key for key in KINDS if not drawing_of(key)} == PLAIN


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
def test_a_drawing_of_a_tip_shows_something_and_stays_inside(qapp, theme):
    for name in sorted({*DRAWN.values(), *(d for _, d in (*PATHS.values(), *LABELS.values()) if d)}):
        image: QImage = drawn(picture(name), theme).toImage()
        border = {image.pixelColor(x, y).name() for x in range(image.width()) for y in (0, image.height() - 1)}
        border |= {image.pixelColor(x, y).name() for y in range(image.height()) for x in (0, image.width() - 1)}
        assert border == {theme.paper.lower()}, name
        assert len({image.pixelColor(x, image.height() // 2).name() for x in range(image.width())}) > 1, name


def test_every_margin_says_that_nobody_published_it():
    margins = [row for row in pages.blank_page(plain(), "mm") if row.key.startswith("margins.")]
    assert {row.key.removeprefix("margins.") for row in margins} >= {"rail", "skate_angle"}
    assert all("ommon practice, no source" in explained(row)[0] for row in margins)


def test_a_tip_without_a_drawing_is_its_sentence(qapp):
    assert pictured("Of the pin.", "") == "Of the pin."
    assert pictured("A & B.", "rail and web").startswith("<p>A &amp; B.</p><img ")


def test_a_drawing_of_a_tip_is_in_the_colours_in_use(qapp):
    day = pictured("A.", "rail and web")
    use_theme(LAMP)
    assert pictured("A.", "rail and web") != day


def test_a_drawing_is_made_when_its_tip_is_asked_for_and_not_with_the_form(qtbot):
    form = Form("mm")
    qtbot.addWidget(form)
    row = next(row for head in heads() for row in rows(head) if row.kind == "length" and row.change and explained(row)[1])
    sentence, drawing = explained(row)
    _encoded.cache_clear()
    form.show_rows([FieldRow("Wood", "heading"), row])
    form.show()
    on_screen(form)
    assert _encoded.cache_info().misses == 0
    label = next(one for one in below(form, QLabel) if one.text() == row.label)
    for number, child in enumerate((label, label.buddy()), 1):
        assert child.toolTip() == "" and (child is label or child.accessibleDescription() == sentence)
        QToolTip.hideText()
        at = QPoint(2, 2)
        QApplication.sendEvent(child, QHelpEvent(QEvent.Type.ToolTip, at, child.mapToGlobal(at)))
        qtbot.waitUntil(lambda: QToolTip.text() == pictured(sentence, drawing))
        assert "<img " in QToolTip.text() and _encoded.cache_info().misses == 1, number
    QToolTip.hideText()
