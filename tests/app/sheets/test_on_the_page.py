"""Pages of heads that no sample has: reamed pegs, a bore without a mark, a narrow blank with a slanted nut, German."""

import re
from decimal import Decimal

import pytest
import shapely
from msgspec.structs import replace

from app.formats.letters import wrapped
from app.formats.mark_shapes import drawing_box, mark_box
from app.formats.paper import paper_size
from app.formats.paper_look import INKS
from app.languages.catalogue import speak
from app.sheets import pages, plan_work
from app.sheets.block_table import block_table
from app.sheets.book_pages import book_blocks
from app.sheets.card_pages import card_blocks
from app.sheets.cards import cards
from app.sheets.furniture import window_of
from app.sheets.hole_table import CSV_HEAD, csv_rows, paper_rows
from app.sheets.lay import flow
from app.sheets.pages import papers
from geometry import saying
from geometry.drawing import Area, Label, Stroke
from geometry.drawing.router_picture import pass_picture
from geometry.drawing.wrap import wrap_drawing
from geometry.layout import Book, DrillPress, Ear, EdgePlace, Price, Remark, SingleHole
from geometry.layout.generic import RACK
from tests.app.sheets.printed import layout, made, words, work


def reamed():
    """The demo with the counterbores of its face tuners reamed."""
    head = layout("demo")
    pattern = head.patterns[0]
    wider = replace(pattern.bores[0], reamed=9.5, taper=25)
    return replace(head, patterns=(replace(pattern, bores=(wider, *pattern.bores[1:])), *head.patterns[1:]))


def told(blocks):
    return " ".join(mark.text for block in blocks for placed in block.placed for mark in placed.drawing if isinstance(mark, Label))


def test_cards_and_hole_table_tell_what_is_reamed_later():
    head = reamed()
    plan = plan_work(head)
    card = next(card for card in cards(head, plan) if card.ids == ("bass face 1",))
    step = next(plan.number[op.id] for op in plan.steps if op.title == "Ream bass face 1")
    assert f"Later (step {step}): ream the counterbore of bass face 1 by hand" in told(card_blocks(head, plan, [card], 180.0))
    assert [row[1] for row in paper_rows(head) if row[0] == "bass face 1.1.1"] == ["counterbore, reamed 1:25 to 9.5"]
    last = {row[0]: row[-2:] for row in csv_rows(head)}
    assert CSV_HEAD[-2:] == ("reamed_to_mm", "taper_one_to") and last["bass face 1.1.1"] == (9.5, 25) and last["bass face 1.1.2"] == (None, None)


def test_what_is_wrong_with_a_bore_without_a_mark_stands_clear_of_its_section():
    """Round the tip the seat looks up the head: its axis never comes to the square edge."""
    head = layout("demo")
    tuners = tuple(replace(one, place=EdgePlace(side="bass", along=222.0, depth=8.0)) if one.id == "bass side 1" else one for one in head.tuners)
    head = replace(head, tuners=tuners)
    plan = plan_work(head)
    card = next(card for card in cards(head, plan) if card.ids == ("bass side 1",))
    assert card.drillings[0].mark is None
    block = card_blocks(head, plan, [card], 180.0)[0]
    shown = [(mark, placed.matrix) for placed in block.placed for mark in placed.drawing]
    section = [shapely.box(*mark_box(mark, matrix)) for mark, matrix in shown if isinstance(mark, Area) and mark.style == "wood" and matrix.e]
    said = [(mark.text, shapely.box(*mark_box(mark, matrix))) for mark, matrix in shown if isinstance(mark, Label) and not matrix.e]
    assert section and sum("never meets" in text for text, _ in said) == 1
    whole = shapely.unary_union(section).envelope
    assert [text for text, box in said if box.intersects(whole)] == []


@pytest.mark.parametrize("text", ['at 1.201", 3 25/32", 4 19/64", 5 21/64" on', "31.4 mm to the bass side, 134.9 mm on", "at most 24 000 turns, or 18 000 turns"])
def test_no_line_ends_within_a_number(text):
    """4 at the end of a line and 19/64 at the beginning of the next are two numbers to whoever reads them."""
    for width in range(30, 120):
        for line in wrapped(text, 2.2, float(width)):
            assert not re.match(r"\d+/\d|mm\b|000\b", line), (width, line)


def test_no_words_of_a_routing_picture_lie_on_what_they_name():
    plan = next(one.best for one in work("demo").plans if one.best is not None)
    marks = pass_picture(plan, 0)
    parts = [shapely.box(*drawing_box((mark,))) for mark in marks if isinstance(mark, Area)]
    names = [mark for mark in marks if isinstance(mark, Label)]
    assert {"base", "template", "wood"} <= {mark.text for mark in names}
    for mark in names:
        assert not any(part.intersects(shapely.box(*drawing_box((mark,)))) for part in parts), mark.text


def test_no_head_of_the_block_table_is_broken():
    speak("de")
    try:
        head = layout("demo")
        plan = plan_work(head)
        found = told(block_table(head, plan, cards(head, plan), 180.0)).split()
        lines = [mark.text for block in block_table(head, plan, cards(head, plan), 150.0) for one in block.placed for mark in one.drawing if isinstance(mark, Label)]
    finally:
        saying.use(None)
    assert {"angehoben", "Anschlag"} <= set(found)
    assert sum("(Karte" in line for line in lines) > 5 and not any(line.endswith("(Karte") for line in lines), "a number stays at its card"


def test_names_of_a_slanted_nut_keep_off_the_folds_of_a_narrow_blank():
    head = layout("slotted")
    head = replace(head, nut=replace(head.nut, slant=-6.0))
    drawing = wrap_drawing(head)
    folds = [mark.path for mark in drawing if isinstance(mark, Stroke) and mark.style == "fold"]
    names = [mark for mark in drawing if isinstance(mark, Label) and mark.owner == "nut"]
    assert folds and len(names) == 3
    for name in names:
        x0, _, x1, _ = drawing_box((name,))
        assert all(not x0 < fold.start[0] < x1 for fold in folds), name.text


def test_the_rows_of_the_job_book_are_lower_where_that_spares_its_notes_a_page_of_their_own():
    """On Letter the book of this demo, glued up, has no room for the notes else. What is noted makes it longer."""
    head = layout("demo")
    head = replace(head, blank=replace(head.blank, face_veneer=1.5, back_veneer=0.6, scarf=40.0), ears=(Ear(id="ear", side="bass", width=8.0, start=20.0, end=180.0),))
    planned = plan_work(head)
    high = window_of(*paper_size("Letter"))
    assert len(flow(book_blocks(head, planned, 180.0), high)) == 2
    found = [page for page in pages(head, "Letter", (), planned) if page.title == "Job book"]
    assert len(found) == 1 and "Notes: do this differently" in words(found[0])


def test_lines_to_write_on_stand_under_their_heading():
    """Two at least, however long the book is: some of these end where the notes begin."""
    head = layout("demo")
    for n in range(1, 24):
        prices = tuple(Price(piece="real", part=f"part {i}", count=1, each=Decimal(1)) for i in range(n))
        *_, last = flow(book_blocks(replace(head, book=Book(prices=prices)), work("demo"), 180.0), window_of(*paper_size("Letter")))
        under = [i for i, placed in enumerate(last) if any(getattr(mark, "text", "") == "Notes: do this differently" for mark in placed.drawing)]
        assert len(under) == 1 and under[0] < len(last) - 2, n


@pytest.mark.parametrize(("paper", "unit"), [("A4", "mm"), ("Letter", "in64")])
def test_the_card_of_two_dozen_holes_that_the_press_does_not_reach_and_that_are_noted_is_no_higher_than_a_page(paper, unit):
    """Each is a caution of its own, and whoever noted something wrote a page of it."""
    inlays = tuple(SingleHole(id=f"inlay {i}", at=(-11.5 + i % 3 * 11.5 + i * 0.11, 40.0 + i // 3 * 9.0), diameter=6.0, depth=3.0) for i in range(24))
    notes = tuple(Remark(piece="practice", text="The next ones a hair shallower. " * 60, on=one.id) for one in inlays)
    head = replace(layout("plain"), slots=(), tuners=(), rows=(), pins=(), holes=inlays, rack=replace(RACK, press=DrillPress(throat=10.0)), book=Book(remarks=notes))
    found = [page for page in pages(head, paper, (), unit=unit) if page.title == "Cards"]
    low = window_of(found[0].width, found[0].height)[1]
    for page in found:
        inside = [mark_box(m, placed.matrix) for placed in page.content[1:] for m in placed.drawing]
        assert min(box[1] for box in inside) >= low - 0.5
    said = " ".join(words(page) for page in found)
    assert len(re.findall(r"Mind: Hole inlay \d+: It lies", said)) == said.count("Do differently") == said.count("... (whole in the job book)") == 5
    assert "And 19 more things to mind" in said and "And 19 more notes in the job book." in said


def test_what_holds_of_all_holes_of_a_card_is_said_once_and_what_holds_of_some_with_their_names():
    holes = tuple(SingleHole(id=f"inlay {i}", at=(0.0, 40.0 + 20.0 * i), diameter=6.0, depth=3.0) for i in range(3))
    bare = replace(layout("plain"), slots=(), tuners=(), rows=(), pins=(), holes=holes, rack=replace(RACK, drills=()))
    said = " ".join(words(page) for page in pages(bare, "A4", ()) if page.title == "Cards")
    assert said.count("The rack has no 6 mm drill") == said.count("Mind: The rack has no 6 mm drill") == 1
    near = replace(bare, rack=replace(RACK, press=DrillPress(throat=45.0)), blank=replace(bare.blank, bass=60.0, treble=60.0, tip=110.0))
    said = " ".join(words(page) for page in pages(near, "A4", ()) if page.title == "Cards")
    assert "Mind: Hole inlay 0: It lies 60 mm from" in said and said.count("has a throat of") == 2


def test_a_note_on_a_card_is_told_whole_where_there_is_room_and_else_ends_with_a_word():
    """A note of the sample that is longer than two lines tells at its end what to do."""
    head = layout("plain")
    pin = head.pins[0].id

    def card(*texts):
        noted = replace(head, book=Book(remarks=tuple(Remark(piece="practice", text=text, on=pin) for text in texts)))
        return told(block for block in card_blocks(noted, work("plain"), [one for one in cards(noted, work("plain")) if pin in one.ids], 180.0))

    long = "Drag it inwards until the wall is whole. " * 20
    assert long.strip() in card(long)
    assert card(long, long).count("... (whole in the job book)") == 2
    assert re.search(r"(it|inwards|until|the|wall|is|whole\.|Drag) \.\.\. \(whole", card(long, long))


@pytest.mark.parametrize(("text", "kept"), [
    ("Das Brett im Bestand hat L 100.", "L 100."), ("ein 30 x 32 Sitz", "30 x 32"), ("das sind 24 000 m/s", "24 000 m/s"), ("gut 15 m/s schnell", "15 m/s"),
    ("etwa 29 degrees off it", "29 degrees"), ("nur 100 % drucken", "100 %"), ("bass\N{NO-BREAK SPACE}3 hier", "bass 3"),
    ("17 bis 22: 6 x Bohrung", "6 x Bohrung")])
def test_a_line_ends_neither_before_a_unit_nor_at_a_space_that_parts_nothing(text, kept):
    for width in range(25, 90):
        lines = wrapped(text, 2.2, float(width))
        assert any(kept in line for line in lines) and " ".join(lines) == text.replace("\N{NO-BREAK SPACE}", " "), lines


def test_what_is_kept_together_and_wider_than_its_column_is_broken_at_a_space():
    """No word of it is cut in two as long as the word itself has room."""
    assert wrapped("35 und 36: 12 x Räumbohrungen", 1.8, 25.5) == ["35 und 36:", "12 x", "Räumbohrungen"]


@pytest.mark.parametrize("name", ["demo", "slotted"])
def test_every_kind_of_broken_line_on_the_papers_is_in_the_legend(name):
    """The seats on the back paper and the ramps of slots among them."""
    broken = {mark.style for part in papers(layout(name), work(name)) for mark in part.drawing if not isinstance(mark, Label) and INKS[mark.style].dash}
    assert broken >= {"demo": {"seat", "fold", "side bore"}, "slotted": {"ramp"}}[name]
    cover = made(name)[0].content[1].drawing  # behind what is printed round it
    assert broken <= {mark.style for mark in cover if isinstance(mark, Stroke)}
