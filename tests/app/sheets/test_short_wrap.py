"""The wrap paper of a blank that goes on bare beyond what is marked on it."""

import math

import pytest
from msgspec.structs import replace

from app.formats.mark_shapes import drawing_box
from app.sheets import pages, plan_work
from app.sheets.parts import BARE, OF_BLANK, wrap_part
from geometry.drawing import Label
from geometry.drawing.tuner_plan import folded
from geometry.edits import mirror_layout
from geometry.layout import Ear, EdgePlace, SingleHole
from geometry.solids import holes
from tests.app.formats.out.pdf_reading import lines, open_pdf
from tests.app.sheets.printed import layout, pdf_bytes, words
from tests.app.sheets.test_pdf_sheets import crosses

TRUE = 0.01
"""How far (mm) a place on the paper may be from where the layout has it."""
SAID = "The blank goes on beyond this paper."


def long(name="demo", **change):
    head = layout(name)
    return replace(head, blank=replace(head.blank, **{"tip": 430.0, "behind": 300.0, **change}))


@pytest.mark.parametrize(("mirrored", "paper"), [(False, "A4"), (True, "Letter")])
def test_it_ends_behind_its_marks_and_every_mark_is_where_the_layout_has_it(mirrored, paper):
    """Read by PDFium, from the middle of the nut line, which is drawn as far as the paper is wide."""
    head = mirror_layout(long()) if mirrored else long()
    found = pages(head, paper, (), plan_work(head))
    (number,) = [i for i, page in enumerate(found) if page.title.startswith("Wrap paper")]
    assert SAID in words(found[number])
    page, blank = open_pdf(pdf_bytes(found, "long"))[number], head.blank
    wide = blank.bass + blank.treble + 2 * blank.thickness
    nut = next((min(a[0], b[0]), a[1]) for a, b in sorted(lines(page)) if abs(a[1] - b[1]) < TRUE and abs(abs(a[0] - b[0]) - wide) < TRUE)
    x = nut[0] + blank.bass + blank.thickness
    face = {d.start[:2] for hole in holes(head) for d in hole.drillings if d.upright and d.surface == "face"}
    edges = {folded(blank, "treble" if d.mark[0] > 0 else "bass", *d.mark[1:]) for hole in holes(head) for d in hole.drillings if d.role == "post" and not d.upright}
    assert len(face) == 8 and len(edges) == 6
    for across, along in face | edges:
        assert min(math.dist((x + across, nut[1] + along), at) for at in crosses(page)) < TRUE


def test_it_is_as_long_as_the_blank_where_that_takes_no_more_pages():
    head = long(tip=300.0, behind=20.0)
    (page,) = [page for page in pages(head, "A3", (), plan_work(head)) if page.title.startswith("Wrap paper")]
    assert SAID not in words(page)


@pytest.mark.parametrize("head", [
    long(), long("slotted"), long("plain"), replace(long(scarf=120.0), nut=replace(layout("demo").nut, pitch=12.0)), long(face_veneer=1.0),
    replace(long(), ears=(Ear(id="ear", side="bass", width=8.0, start=150.0, end=260.0),)),
    replace(long(), holes=(SingleHole(id="hole", at=(20.0, -90.0), diameter=6.0),))], ids=range(7))
def test_nothing_that_is_marked_is_left_out_or_reaches_past_its_ends(head):
    def marked(part):
        return {mark for mark in part.drawing if mark.style not in OF_BLANK and not isinstance(mark, Label)}

    whole = wrap_part(head, ())
    short = whole.short()
    assert marked(short) == marked(whole)
    ends = drawing_box(mark for mark in short.drawing if mark.style == "blank")
    low, high = drawing_box(marked(whole))[1::2]
    assert ends[1::2] == pytest.approx((low - BARE, high + BARE))
    assert short.box[3] - short.box[1] < whole.box[3] - whole.box[1] - 200.0
    assert SAID in short.note and SAID not in whole.note


def test_a_bore_near_the_crown_keeps_its_name():
    head = long("slotted")
    high = EdgePlace(side="bass", along=180.0)
    head = replace(head, tuners=tuple(replace(one, place=high) if one.id == "bass 3" else one for one in head.tuners))
    short = wrap_part(head, ()).short()
    said = [mark for mark in short.drawing if isinstance(mark, Label) and mark.owner == "bass 3"]
    assert said[0].text == "bass 3" and drawing_box(said)[3] < drawing_box(mark for mark in short.drawing if mark.style == "blank")[3]


def test_a_blank_that_ends_near_its_marks_has_no_shorter_paper():
    assert wrap_part(long(tip=195.0, behind=10.0), ()).short is None


@pytest.mark.parametrize("behind", [20.0, 6.0])
def test_the_name_of_the_back_stands_clear_of_the_nut_line(behind, monkeypatch):
    """In German it is longer than the paper behind the nut line is short."""
    monkeypatch.setattr("geometry.drawing.wrap.term", lambda key: "Rückseite" if key == "back" else key)
    paper = wrap_part(long(behind=behind), ()).short()
    named = [drawing_box((mark,)) for mark in paper.drawing if isinstance(mark, Label) and mark.text == "Rückseite"]
    assert len(named) == 2 and all(low > 0.0 or high < 0.0 for _, low, _, high in named)
