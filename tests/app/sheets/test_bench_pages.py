"""What is told at the bench: cards, running order, lists, block heights, router cards, job book."""

import csv
import io
import math
import re
from decimal import Decimal

import msgspec
import pytest
from msgspec.structs import replace

from app.formats.csv_out import csv_text
from app.formats.headstock import decode, encode, read
from app.formats.mark_shapes import mark_box
from app.sheets import card_rows, order_pages, pages, plan_work
from app.sheets.block_table import LENGTHS
from app.sheets.cards import card_of, cards
from app.sheets.hole_pages import hole_blocks
from app.sheets.list_pages import csv_rows as list_rows
from app.sheets.needs import bits, drills, lacks, pieces
from app.sheets.order_pages import csv_rows, troubles
from app.sheets.router_pages import routed
from geometry.book import corrected
from geometry.drawing import Cross, Label
from geometry.edits import mirror_layout
from geometry.edits.hand_cuts import set_flat, set_ramp
from geometry.layout import Book, Ear, Price, Rack, Reading, Remark, SingleHole, Task, Template, Time
from geometry.layout.generic import RACK
from geometry.layout.generic_inch import RACK_INCH
from geometry.layout.headstock import Note
from geometry.sequence import counts
from geometry.solids import holes
from geometry.solids.side import side_bore
from tests.app.sheets.printed import layout, made, section, words, work
from tests.geometry.drawing.specimens import leaning_head, plain_head

BENCH = ("Cut list and parts", "Running order", "Cards", "Hole table", "Job book", "Cover")


def change(head, **fields):
    return msgspec.structs.replace(head, **fields)


# ---- cards ---------------------------------------------------------------
@pytest.mark.parametrize("name", ["demo", "large", "plain", "slotted"])
def test_every_drilling_is_on_one_card(name):
    found = [d.id for card in cards(layout(name), work(name)) for d in card.drillings]
    assert sorted(found) == sorted(d.id for hole in holes(layout(name)) for d in hole.drillings)


def test_cards_are_numbered_in_the_order_of_the_work():
    made_cards = cards(layout("demo"), work("demo"))
    assert [card.number for card in made_cards] == list(range(1, 14))
    first = [min(work("demo").number[op.id] for op in card.ops) for card in made_cards]
    assert first == sorted(first)
    assert [card.kind for card in made_cards] == ["side"] * 6 + ["pin"] + ["face"] * 6


def test_equal_single_holes_share_a_card():
    made_cards = [card for card in cards(layout("large"), work("large")) if card.kind == "hole"]
    assert len(made_cards) == 1 and len(made_cards[0].drillings) == 6 and made_cards[0].title == "6 holes, 5 wide"


def test_the_running_order_names_the_card_of_every_drilling():
    plan = work("demo")
    found = card_of(cards(layout("demo"), plan), plan)
    routers = {op.id for one in plan.plans for op in routed(plan, one.of)}
    assert set(found) == {op.id for op in plan.ops if op.drillings} | routers and len(routers) == 8


def test_a_side_card_says_mark_tilt_blocks_and_stop():
    """Edges that lean out by 1 in 9, worked out by hand."""
    head = leaning_head()
    text = " ".join(words(page) for page in pages(head, "A4", ()) if page.title == "Cards")
    lean = math.atan(1 / 9)
    seat = (30.0 + 45.0 * math.sin(lean), 45.0 * math.cos(lean))
    away = (50.0 - seat[0]) / math.cos(lean)
    mark = seat[1] - away * math.sin(lean)
    for wanted in (f"{mark:.1f} from the nut line", "8.0 below the face", f"not at {seat[1]:.1f}, squared",
                   f"{math.degrees(lean):.1f}°, nut end raised", f"blocks {100 * math.sin(lean):.1f} over 100",
                   f"blocks {200 * math.sin(lean):.1f} over 200", f"{30 + away:.1f} to full diameter",
                   "(30.0 from the seat)", "8.0 to the axis", "Same setting: other with the blank turned over."):
        assert wanted in text, wanted
    assert 0 < text.index("squared") - text.index(" from the nut line") < text.index("below the face") - text.index(" from the nut line"), \
        "beside the mark that it is about"


def test_a_side_card_in_inches_has_boards_of_whole_inches():
    """The rack still has the board of 100 mm that it began with; a board that the maker entered stays."""
    head, rise = leaning_head(), math.sin(math.atan(1 / 9))
    entered = replace(head, rack=replace(head.rack, press=replace(head.rack.press, base=127.0)))
    for one, boards in ((head, (4, 8)), (entered, (5, 10))):
        text = " ".join(words(page) for page in pages(one, "A4", (), unit="in") if page.title == "Cards")
        for board in boards:
            assert f'blocks {board * rise:.3f}" over {board}"' in text


def test_a_face_card_says_each_drilling_from_its_side():
    text = section("plain", "Cards")
    # The card of "front": at (-28, 60), its screw 9 mm from the post on the back; forstner spur 2 mm in a rack that lacks one.
    for wanted in ("counterbore", "28.0 bass", "60.0", "pilot, back", "through", "Locating pin hole pin", "Hole peep"):
        assert wanted in text, wanted
    assert "not in the rack" in text  # the plain head has an empty rack


def test_a_drill_that_the_rack_lacks_is_named_in_the_language_in_use(monkeypatch):
    monkeypatch.setattr(card_rows, "term", {"brad": "Zentrierspitzbohrer", "forstner": "Forstnerbohrer", "twist": "Spiralbohrer"}.get)
    plain = layout("plain")
    told = {card_rows.drill_words(plain, d) for hole in holes(plain) for d in hole.drillings}
    assert told and all(word.split()[0] in ("Zentrierspitzbohrer", "Forstnerbohrer", "Spiralbohrer") for word in told), told


def test_what_to_heed_is_on_the_card():
    text = section("large", "Cards")
    assert "skates: use a guide block" in text and "The quill travels 50 mm" in text


@pytest.mark.parametrize("paper", ["A4", "A3", "Letter", "Tabloid"])
@pytest.mark.parametrize("name", ["demo", "large", "plain", "slotted"])
def test_no_two_words_lie_on_each_other_at_the_bench(name, paper):
    for page in made(name, paper):
        if not any(title in page.title for title in BENCH):
            continue
        found = [(m.text, mark_box(m, placed.matrix)) for placed in page.content for m in placed.drawing if isinstance(m, Label)]
        for i, (one, a) in enumerate(found):
            assert a[0] >= 9.9 and a[2] <= page.width - 9.9 and a[1] >= 9.4 and a[3] <= page.height - 9.9, one
            for other, b in found[i + 1:]:
                over = min(min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1]))
                assert over < 0.6, (page.title, one, other)


# ---- running order -------------------------------------------------------
def test_every_step_stands_in_the_running_order_once():
    text = section("demo", "Running order")
    for op in work("demo").steps:
        assert op.title in text
    numbers = [m.text for page in made("demo") if page.title == "Running order" for placed in page.content
               for m in placed.drawing if isinstance(m, Label) and m.text.isdigit() and m.anchor == "right"]
    steps = len(work("demo").steps)
    assert numbers[:steps] == [str(i) for i in range(1, steps + 1)]
    assert set(numbers[steps:]) == {"8"}  # fence settings in the block table


def test_reasons_are_said_once():
    text = section("demo", "Running order")
    assert text.count("There is no template to work along.") == 1
    assert "Before you swap steps" in text and "counterbore before bore" in text


def test_the_order_says_how_much_there_is_to_do():
    text = section("demo", "Running order")
    assert "55 steps, 36 holes and 2 pins in 44 drillings" in text and "No order of these steps needs fewer changes." in text


def test_the_makers_own_order_is_printed():
    own = work("demo")
    steps = (own.order.steps[1], own.order.steps[0], *own.order.steps[2:])
    swapped = replace(own, order=replace(own.order, steps=steps))
    text = " ".join(words(page) for page in pages(layout("demo"), "A4", (), swapped) if page.title == "Running order")
    assert text.index("Paste the papers") < text.index("Make the template")


def test_what_cannot_be_done_is_said_first():
    head = change(layout("demo"), rack=change(RACK, drills=()))
    made_work = plan_work(head)
    said = troubles(made_work)
    assert said[0].startswith("Cannot be done: ") and "The rack has no" in said[0]
    assert len(said) == 7 and said[-1].startswith("And ")
    own = work("demo")
    left_out = change(own, order=change(own.order, stuck=(own.ops[0].id, own.ops[3].id)))
    assert troubles(left_out) == [f"Left out, because they cannot be reached: {own.ops[0].called}, {own.ops[3].called}."] != troubles(own) == []


def test_the_order_as_csv():
    own = work("demo")
    text = csv_text(order_pages.CSV_HEAD, csv_rows(own, card_of(cards(layout("demo"), own), own)))
    rows = list(csv.DictReader(io.StringIO(text, newline="")))
    assert [row["id"] for row in rows] == list(own.order.steps)
    assert rows[2]["table"].startswith("table tilted 3.1°") and rows[2]["card"] == "1" and rows[2]["machine"] == "drill press"
    assert float(rows[2]["stop_mm"]) == pytest.approx(own.steps[2].stop, abs=1e-4)


# ---- stages ----------------------------------------------------------------
def test_the_piece_is_drawn_after_every_stretch_of_work():
    text = section("demo", "Running order").partition("The piece, stage by stage")[2]
    for said in ("3 to 8: 6 x side bore", "11 to 16: 6 x counterbore", "41: Saw the outline", "43 to 54: 12 x edge pilot"):
        assert said in text, said
    assert "Clean up" not in text and "Make the template" not in text  # the wood looks as before


def test_stages_show_the_wood_as_it_becomes():
    """Crosses that are still to be drilled become fewer; the square edges go with the outline, and no screw of a side tuner is marked on
    them, as on the wrap paper: at first there are the bores of six side tuners and of six through the face, and two pin holes."""
    (page,) = [page for page in made("demo") if "The piece, stage by stage" in words(page)]
    pictures = [placed.drawing for placed in page.content if any(m.style == "centreline" for m in placed.drawing)]
    crosses = [sum(isinstance(m, Cross) for m in marks) for marks in pictures]
    assert len({m.centre for m in pictures[0] if isinstance(m, Cross)}) == 6 + 6 + 2
    assert crosses[0] > crosses[1] > crosses[3] > crosses[5] and crosses == sorted(crosses, reverse=True)
    assert [any(m.style == "fold" for m in marks) for marks in pictures] == [True] * 9 + [False] * 3


# ---- lists ---------------------------------------------------------------
def test_the_cut_list_of_a_plain_head():
    head = plain_head()
    found = {piece.name: piece for piece in pieces(head, plan_work(head))}
    blank = found["blank, all edges square"]
    assert (blank.length, blank.width, blank.thickness) == (200.0, 90.0, 16.0)
    board = found["template board"]
    assert (board.length, board.width, board.thickness) == (200.0, 100.0, 6.0)  # outline 180 x 80 and 10 all round
    assert found["spoil board"].width == 90.0


def test_ears_are_cut_apart_from_the_blank():
    head = change(plain_head(), ears=(Ear(id="left", side="bass", width=12.0, start=60.0, end=180.0),
                                      Ear(id="right", side="treble", width=10.0, start=70.0, end=180.0)))
    found = pieces(head, plan_work(head))
    assert found[0].width == 90.0 - 22.0 and "33 to the bass side, 35 to the treble side" in found[0].remark
    assert [(p.name, p.length, p.width) for p in found[1:3]] == [("ear left", 120.0, 12.0), ("ear right", 110.0, 10.0)]


def test_a_template_as_large_as_the_blank():
    head = change(plain_head(), template=Template(board="blank", thickness=9.0))
    board = next(piece for piece in pieces(head, plan_work(head)) if piece.name == "template board")
    assert (board.length, board.width, board.thickness) == (200.0, 90.0, 9.0)


def test_every_drilling_is_counted_with_its_drill():
    tools = {tool.name: tool for tool in drills(layout("demo"), work("demo"))}
    # 37.19 mm to full diameter at the steepest bore, its point 1.92 (0.3 diameters); a pin hole goes through 16 mm of blank
    # and 6 of template; pilots 9 deep, point 0.48 (118 degrees), those in the edges from the finished edge.
    assert tools["twist 1.6"].work == "24 holes, deepest 9.49 mm to the point"
    assert tools["brad 6.4"].work == "6 holes, deepest 39.11 mm to the point"
    assert tools["brad 6"].work == "2 holes, deepest 23.8 mm to the point"
    assert tools["brad 11"].work == "22 holes for the waste, deepest 19.3 mm to the point"
    assert lacks(tools.values()) == []
    assert [tool.name for tool in bits(work("demo"))] == ["12 shank bearing"]
    head = change(layout("demo"), holes=(SingleHole(id="extra", at=(0.0, 150.0), diameter=11.0, depth=5.0),))
    (shared,) = [tool.work for tool in drills(head, plan_work(head)) if tool.name == "brad 11"]
    assert shared == "23 holes, 22 of them waste holes, deepest 19.3 mm to the point"


def test_what_the_rack_lacks_is_named():
    """A quarter inch is 6.35: within 0.05 of a bore of 6.4, and taken for it."""
    head = change(layout("demo"), rack=RACK_INCH, template=Template())
    made_work = plan_work(head)
    missing = lacks(drills(head, made_work))
    assert missing == ["brad 6", "brad 6.5", "forstner 8.8"]
    text = " ".join(words(page) for page in pages(head, "A4", (), made_work) if "Cut list and parts" in page.title)
    assert "Not in the rack: brad 6, brad 6.5, forstner 8.8." in text


def test_of_drills_of_one_size_that_the_rack_lacks_every_kind_is_named():
    head = layout("demo")
    other = SingleHole(id="extra", at=(0.0, 150.0), diameter=8.8, depth=5.0)
    head = change(head, rack=change(RACK, drills=()), holes=(other,))
    missing = lacks(drills(head, plan_work(head)))
    assert [name for name in missing if name.endswith(" 8.8")] == ["brad 8.8", "forstner 8.8"]


def test_a_bit_that_would_do_is_named_where_none_does():
    head = change(layout("demo"), rack=Rack(drills=RACK.drills), template=Template())
    tools = bits(plan_work(head))
    assert {tool.held for tool in tools} == {False} and "bass slot" in tools[0].name
    text = " ".join(words(page) for page in pages(head, "A4", ()) if page.title == "Cards")
    assert "No bit of the rack can rout bass slot" in text


def test_the_lists_as_csv():
    rows = list_rows(layout("demo"), work("demo"))
    assert {row[0] for row in rows} == {"cut", "part", "tool"}
    assert rows[0][1:6] == ("blank, all edges square", 1, 220.0, 100.0, 16.0)


# ---- block heights -------------------------------------------------------
def test_blocks_for_every_tilt():
    """H = L sin(tilt) for each tilt of the demo, each line once."""
    text = section("demo", "Running order")
    tilts = {round(math.degrees(abs(side_bore(layout("demo"), t.id).tilt)), 1): abs(side_bore(layout("demo"), t.id).tilt)
             for t in layout("demo").tuners if side_bore(layout("demo"), t.id) is not None}
    assert len(tilts) == 3
    for degrees, tilt in tilts.items():
        heights = " ".join(f"{length * math.sin(tilt):.1f}" for length in LENGTHS)
        assert f"{degrees}°" in text and heights in text


def test_no_tilts_no_block_heights():
    head = change(plain_head(), tuners=plain_head().tuners[:1])
    assert "Block heights" not in " ".join(words(page) for page in pages(head, "A4", ()))


# ---- job book ------------------------------------------------------------
def test_the_job_book_has_planned_minutes_and_room_for_real_ones():
    text = section("demo", "Job book")
    minutes = round(60 * work("demo").counts.hours.total)
    assert str(minutes) in text and "practice piece" in text and "real piece" in text and "Money" in text


def test_notes_of_the_layout_are_printed():
    head = change(plain_head(), notes=(Note(on="slot", text="Leave the ramp longer."), Note(text="Oil, no lacquer."),
                                       Note(on="gone slot", text="Too wide.")))
    text = " ".join(words(page) for page in pages(head, "A4", ()) if page.title == "Job book")
    assert "slot: Leave the ramp longer." in text and "Oil, no lacquer." in text
    assert "gone slot: Too wide." in text, "a feature that is no longer there keeps its note"
    assert decode(encode(head)) == head


def test_what_the_book_holds_is_printed_and_left_out_when_seen_to():
    head = layout("demo")
    tuner = head.tuners[0].id
    op = next(op for op in work("demo").steps if op.kind == "template")
    task = Task(operation=op.id, title=op.title, rate="template", planned=60.0)
    drilling = next(d for hole in holes(head) for d in hole.drillings if d.upright)
    book = Book(times=(Time(piece="practice", task=task, minutes=777.0),), currency="coins",
                prices=(Price(piece="real", part="ebony", count=3, each=Decimal("0.10")),),
                remarks=(Remark(piece="practice", text="Smaller pilot", on=tuner), Remark(piece="practice", text="Dull bit", on=tuner, done=True)),
                readings=(Reading(piece="practice", drilling=drilling.id, what="depth", value=87.65),))
    head = change(head, book=book)
    planned = work("demo").with_order(head)
    printed = pages(head, "A4", (), planned)
    text = {title: " ".join(words(page) for page in printed if title in page.title) for title in BENCH + ("Readings",)}
    assert "777" in text["Job book"] and "0.30 coins" in text["Job book"] and "Dull bit (seen to)" in text["Job book"]
    assert "Smaller pilot" in text["Cards"] and "Dull bit" not in text["Cards"]
    assert "87.65" in text["Readings"]
    rates = corrected(book).rates(head.rates)
    assert f"{counts(planned.order.steps, planned.ops, rates).hours.total:.1f}" in text["Running order"] and planned.found_hours > planned.counts.hours.total


def test_a_place_measured_from_an_edge_stands_on_the_readings_form_from_the_centreline():
    """The form has x from the centreline; a blank of 50 to the treble side, read 27.66 in from that edge, is at 22.34."""
    head = layout("demo")
    drilling = next(d for hole in holes(head) for d in hole.drillings if d.upright)
    taken = (Reading(piece="practice", drilling=drilling.id, what="x", how="treble edge", value=head.blank.treble - 22.34),)
    text = " ".join(words(page) for page in pages(change(head, book=Book(readings=taken)), "A4", ()) if "Readings" in page.title)
    assert "22.34" in text
    taken = (replace(taken[0], how="bass edge", value=head.blank.bass + 22.34),)
    text = " ".join(words(page) for page in pages(change(head, book=Book(readings=taken)), "A4", ()) if "Readings" in page.title)
    assert "22.34" in text


def test_the_readings_form_has_a_row_for_every_drilling_that_a_caliper_enters():
    text = section("demo", "Readings")
    assert {d.id: f"{d.id} {d.operation}" in text for hole in holes(layout("demo")) for d in hole.drillings} == {
        d.id: d.role not in ("screw", "locating") for hole in holes(layout("demo")) for d in hole.drillings}


def test_a_left_handed_head_says_on_its_sheets_which_edge_is_called_bass():
    """A distance "to the treble side" would be laid off to the wrong side by who goes by the strings."""
    for head, said in ((layout("demo"), False), (mirror_layout(layout("demo")), True)):
        printed = pages(head, "A4", ())
        for title in ("Cover", "Running order", "Cards"):
            text = " ".join(" ".join(words(page) for page in printed if page.title == title).split())
            assert ("the left edge is called bass and the right one treble" in text) == said, title


def test_ramps_and_flats_stand_on_their_cards():
    head = set_flat(set_ramp(layout("demo"), "bass slot", length=9.0, depth=3.0), "bass side 1", size=24.0, depth=0.35)
    text = " ".join(" ".join(words(page).split()) for page in pages(head, "A4", ()))
    # The slot's nut end lies at y = 24; 3 in 9 is 18.4 degrees.
    assert "Afterwards, by hand: Face up: from 15 mm above the nut line" in text and "(18.4 degrees)" in text
    assert "a flat 24 mm long into the edge about it, 0.35 mm deep" in text
    stops = [side_bore(one, "bass side 1").stop_full for one in (layout("demo"), head)]
    assert f"{stops[1]:.1f} to full diameter" in text and stops[1] - stops[0] == pytest.approx(0.35)


# ---- pages ---------------------------------------------------------------
def test_the_readings_form_begins_on_the_last_page_of_the_hole_table_where_it_has_room_there():
    """The cover tells the page of both."""
    for name, shared in (("slotted", True), ("demo", False)):
        titles = [page.title for page in made(name)]
        assert ("Hole table + Readings" in titles, "Readings" in titles) == (shared, not shared)
        found = re.findall(r"(Hole table|Readings|Job book) page (\d+)", section(name, "Cover"))
        assert found == [("Hole table", str(len(titles) - 1 - (not shared))), ("Readings", str(len(titles) - 1)), ("Job book", str(len(titles)))]


def test_a_pin_hole_that_is_a_bore_too_has_one_row_in_the_hole_table():
    head = read("samples/eight-strings.headstock.json")
    planned = plan_work(head)
    twice = {tuple(d.id for d in op.drillings) for op in planned.ops if len(op.drillings) == 2 and op.kind == "pin hole"}
    assert len(twice) == 2
    rows = [[mark.text for placed in block.placed for mark in placed.drawing if isinstance(mark, Label)] for block in hole_blocks(head, planned, 190.0)]
    for pin, bore in twice:
        told, = [" ".join(row) for row in rows if any(re.search(rf"\b{re.escape(one)}\b", " ".join(row)) for one in (pin, bore))]
        assert f"{bore}, {pin}" in told and "through through" in told


def test_what_all_steps_of_a_set_up_say_is_said_once():
    """On each page on which the set-up goes on."""
    text = section("demo", "Running order")
    assert text.count("Each: Through the plate on its seat and square to it") == text.count("the post in its bore: 1.6 mm wide") == 2
    assert text.count("31.4 mm to the bass side, 49.2 mm from the nut line") == 2, "what a step alone says stands with it"
