"""Heads whose outline is cut: in its turn, or before anything else as an old head has it."""

from pathlib import Path

from msgspec.structs import replace

from app.formats.headstock import read
from app.formats.mark_shapes import drawing_box
from app.panels.blank_rows import blank_rows
from app.sheets import pages, plan_work, write_sheets
from app.sheets.card_face import section
from app.sheets.card_pages import card_blocks
from app.sheets.cards import cards
from app.sheets.list_pages import list_blocks
from app.sheets.needs import bits, drills, pieces, reamers
from app.sheets.order_pages import CSV_HEAD, csv_rows, order_blocks, order_warning, troubles
from app.sheets.router_pages import router_blocks
from app.sheets.write import left_words
from geometry.book import made_by, task_of, tick_off
from geometry.drawing import Area, Label
from geometry.edits import set_field
from geometry.layout import SingleHole
from geometry.sequence import moved
from geometry.sequence.operation import KINDS
from tests.app.sheets.printed import layout, work


def test_once_papers_are_pasted_on_a_square_blank_the_sheets_go_on_saying_so():
    """The outline is sawn in its turn: what was folded round the edges was folded round them."""
    head, bare = layout("demo"), work("demo")
    book = replace(head.book, piece="real")
    for kind in ("mark", "cut outline"):
        op = next(op for op in bare.ops if op.kind == kind)
        book = tick_off(book, task_of(op), bare.number[op.id], made_by(head, op))
    later = bare.with_order(replace(head, book=book))
    assert not later.sawn and later.ops == bare.ops and "square" in pieces(later.layout, later)[0].name


def test_a_head_that_is_finished_outside_needs_no_template_and_no_pins():
    """Other tuners through the face for an old head without slots."""
    inline = read(Path("samples/six-in-line.headstock.json"))
    old = replace(inline, pins=())
    bare = plan_work(old)
    book, ops = replace(old.book, piece="real"), [op for op in bare.ops if op.kind in ("cut outline", "rout outline")]
    for op in ops:
        book = tick_off(book, task_of(op), bare.number[op.id], made_by(old, op))
    now = bare.with_order(replace(old, book=book))
    assert "template" in bare.order.steps and "template" not in now.order.steps and all(one.grade != "left out" for one in now.problems)
    assert list(now.number.items()) == [(id, number) for id, number in bare.number.items() if id != "template"], "no step has another number for that"
    assert not [one for one in pieces(now.layout, now) if "template" in one.name] and [one for one in pieces(old, bare) if "template" in one.name]
    printed = pages(now.layout, "A4", (), now)
    assert "Template" not in {page.title for page in printed}
    words = [mark.text for page in printed for placed in page.content for mark in placed.drawing if isinstance(mark, Label)]
    assert [text.endswith(", done") for text in words if text.startswith("card ") and ", plan " in text].count(True) == 1, "that of the outline"
    assert now.with_order(old).order.steps == bare.order.steps, "the ticks are taken back"
    pinned = plan_work(replace(inline, book=book))
    pin = next(op for op in pinned.ops if op.kind == "pin hole")
    assert "template" in pinned.order.steps and "take nut pin out of the drawing" in pinned.blocked(pin)
    half = bare.with_order(replace(old, book=tick_off(replace(old.book, piece="real"), task_of(ops[0]), 1, made_by(old, ops[0]))))
    assert "template" in half.order.steps, "sawn outside its line, it is routed by the template still"


def worked(head, *kinds):
    """(the plan of a head of which only these steps are done on the real piece, the plan of it without any)"""
    bare, book = plan_work(head), replace(head.book, piece="real")
    for op in bare.ops:
        if op.kind in kinds:
            book = tick_off(book, task_of(op), bare.number[op.id], made_by(head, op))
    return bare.with_order(replace(head, book=book)), bare


def on_cards(work):
    """What each card says, those for the router last."""
    made = cards(work.layout, work)
    laid = [*(card_blocks(work.layout, work, [card], 190.0) for card in made), router_blocks(work.layout, work, len(made) + 1, 190.0)]
    return [" ".join(mark.text for block in blocks for placed in block.placed for mark in placed.drawing if isinstance(mark, Label)) for blocks in laid]


def test_what_is_only_harder_on_a_sawn_head_is_minded_at_its_step_and_no_fault_of_the_order():
    """Every bore would better have come before the outline, which nobody can change any more."""
    now, bare = worked(read(Path("samples/six-in-line.headstock.json")), "cut outline", "rout outline")
    assert now.problems == now.broken == () and order_warning(now) == "" and not any(troubles(now))
    bores = [op for op in now.steps if op.kind == "bore"]
    assert all(any("give" in text or "backs" in text for text in now.cautions(op)) for op in bores) and len(bores) == 9
    assert all(bare.cautions(op) == op.cautions for op in bare.ops), "in their turn there is nothing to mind"
    (row,) = [row for row in csv_rows(now, {}) if row[1] == "bore bass 2.1.1"]
    assert "The square blank lies against fence and clamps; the shape of the head gives them little to hold." in row[CSV_HEAD.index("cautions")]
    printed = [mark.text for one in order_blocks(now, {}, 180.0) for placed in one.placed for mark in placed.drawing if isinstance(mark, Label)]
    assert len([text for text in printed if "square blank lies" in text]) == 3, "of pins, posts and retainers once each"
    early = now.wrong_in(moved(now.order.steps, "clean up", 3))
    assert early and {problem.others for problem in early} == {("clean up",)}, "what an order can mend is told still"
    clean, = [op for op in bare.ops if op.kind == "clean up"]
    assert not worked(bare.layout, "clean up")[0].cautions(clean), "cleaned up too early it is done, and nothing harms it any more"


def test_tools_are_got_ready_for_what_is_left():
    """A rack without router bits: of a head that has its outline none is lacking."""
    head = read(Path("samples/six-in-line.headstock.json"))
    now, bare = worked(replace(head, pins=(), rack=replace(head.rack, bits=())), "cut outline", "rout outline", "bore")

    def told(work):
        return " ".join(mark.text for one in list_blocks(work.layout, work, 180.0) for placed in one.placed for mark in placed.drawing if isinstance(mark, Label))
    assert "Not in the rack: a bit for outline. Machines: band saw, drill press." in told(bare)
    assert "For the steps that are left. Machines: drill press." in told(now)
    assert [tool.name for tool in drills(bare.layout, bare)] == ["twist 1.6", "twist 2", "brad 6.4"] and len(bits(bare)) == 1
    assert [(tool.name, tool.work) for tool in drills(now.layout, now)] == [("twist 1.6", "6 holes, deepest 8.49 mm to the point")] and not bits(now)
    done, _ = worked(bare.layout, *KINDS)
    assert not done.open and [tool.name for tool in drills(done.layout, done)] == ["twist 1.6", "twist 2", "brad 6.4"], "of a head that is made all are told"


def test_a_head_with_a_finish_has_its_bushings_cleared_of_it_behind_cleaning_up():
    """As the blank says it; the cards of the tuners tell it as what comes later."""
    head = layout("demo")
    flag, = [row for row in blank_rows(head) if row.key == "blank.finish"]
    plan = plan_work(flag.change(True))
    assert flag.value is False and [op.kind for op in plan.steps[-8:]] == ["clean up", "finish", *6 * ["final diameter"]] and plan.problems == ()
    assert ("reamer 8.8 mm", "6 holes") in [(tool.name, tool.work) for tool in reamers(plan)] and reamers(plan_work(head)) == []
    clear = plan.number[next(op.id for op in plan.steps if op.kind == "final diameter")]
    printed = " ".join(mark.text for page in pages(plan.layout, "A4", (), plan) for placed in page.content for mark in placed.drawing if isinstance(mark, Label))
    assert f"(step {clear}): clear the finish out of the counterbore" in printed and plan.letters != plan_work(head).letters


def test_what_came_too_early_for_good_is_told_as_that_on_the_sheets():
    now, _ = worked(layout("demo"), "cut outline")
    assert now.misplaced == (0, 6)
    assert order_warning(now) == "What is done came too early for 6 steps: no other place in the order mends that."
    assert {problem.grade for problem in now.problems} == {"impossible"}
    assert [text.partition(":")[0] for text in troubles(now)] == 6 * ["Impossible by now"]
    cut_apart = [words for words in on_cards(now) if "Impossible by now: " in words]
    assert len(cut_apart) == 6 and all("comes after" in words for words in cut_apart), "a card is read away from the order"
    assert [row[1] for row in csv_rows(now, {}) if "Impossible by now: " in row[CSV_HEAD.index("cautions")]] == [one.op for one in now.problems]
    early = now.with_order(replace(now.layout, order=moved(now.order.steps, "clean up", 0)))
    assert any("Impossible in this order: " in words for words in on_cards(early) if words.startswith("Rout"))
    assert {(early.too_late(one), early.harm(one).partition(":")[0]) for one in early.problems if one.grade == "impossible"} == {
        (True, "Impossible by now"), (False, "Impossible in this order")}


def test_what_is_drilled_otherwise_for_good_did_not_come_too_late():
    """Side bores, then slots; a blank that turns out 1 mm thicker has all six bores elsewhere. They are told of as that alone."""
    was, _ = worked(layout("demo"), "side bore", "waste holes", "saw", "rout")
    now = plan_work(set_field(was.layout, ("blank", "thickness"), was.layout.blank.thickness + 1.0))
    bores = {op.id for op in now.steps if op.kind == "side bore"}
    assert now.otherwise.keys() >= bores and not bores & now.to_go_on and not bores & now.done.keys() and len(bores) == 6
    assert now.misplaced == (0, 0) and now.problems == now.broken == ()
    assert len([text for text in now.cannot if "is drilled" in text]) == len(bores)


def test_the_files_of_a_sawn_head_have_no_template_and_tell_of_an_earlier_one(tmp_path):
    old = replace(read(Path("samples/six-in-line.headstock.json")), pins=())
    first = write_sheets(old, tmp_path, snags=())
    now, _ = worked(old, "cut outline", "rout outline")
    then = write_sheets(now.layout, tmp_path, snags=(), work=now)
    assert {path.name for path in first} - {path.name for path in then} == {"headstock-template.dxf", "headstock-template.svg"}
    assert "headstock-template.dxf" in left_words(tmp_path, "headstock", then) and left_words(tmp_path, "headstock", first) == ""


def test_the_section_of_a_hole_shows_what_was_sawn_before_its_turn():
    """Drilled in a square blank by the order, in a head of its own width once that is ticked off."""
    head = replace(layout("demo"), holes=(SingleHole(id="inlay", at=(0.0, 110.0), diameter=6.0, depth=3.0),))
    bare = plan_work(head)
    saw = next(op for op in bare.ops if op.kind == "cut outline")
    sawn = bare.with_order(replace(head, book=tick_off(replace(head.book, piece="real"), task_of(saw), bare.number[saw.id], made_by(head, saw))))

    def wide(work):
        card = next(card for card in cards(work.layout, work) if card.ids == ("inlay",))
        x0, _, x1, _ = drawing_box([mark for mark in section(work.layout, work, card)[0] if isinstance(mark, Area)])
        return x1 - x0
    assert bare.number[saw.id] > next(bare.number[op.id] for op in bare.ops if "inlay" in op.features)
    assert wide(bare) == head.blank.bass + head.blank.treble > wide(sawn) + 5.0
