"""Sheets printed again in mid-job: what is done is ticked, keeps its number, and what it has made unsafe is said."""

from pathlib import Path

import pytest
from msgspec import defstruct
from msgspec.structs import fields, replace
from shapely import Polygon

from app.formats.headstock import decode, encode, read
from app.formats.letters import text_width
from app.sheets import pages, plan_work
from app.sheets.card_rows import rows
from app.sheets.cards import card_of, cards
from app.sheets.needs import pieces
from app.sheets.order_pages import CSV_HEAD, csv_rows, summary
from app.sheets.parts import parts
from app.sheets.plan_letters import plan_letters
from app.sheets.router_pages import _marks as router_marks
from app.sheets.router_pages import _steps, routed
from app.sheets.stage_pages import stage_blocks
from app.sheets.words import numbers as in_words
from geometry.book import made_by, set_minutes, task_of, tick_off
from geometry.drawing import Label, Stroke
from geometry.edits import mirror_layout, move_features, remove_features, rename
from geometry.edits.hardware import copy_pattern
from geometry.edits.rack import add_entry, remove_entry, set_in_rack, sort_shelf
from geometry.layout import Made, Pin
from geometry.routing.reached import Patch
from geometry.sequence import Wishes, moved, numbered
from geometry.sequence.state import state_of
from tests.app.sheets.printed import layout, made, section, work


def begun_job(head, steps, of):
    """The layout with the first steps of a plan ticked off."""
    book = head.book
    for op in of.steps[:steps]:
        book = tick_off(book, task_of(op), of.number[op.id])
    return replace(head, book=book)


def ticks(page):
    """How many strokes there are in boxes: two a tick, one where a step is begun."""
    return sum(1 for one in page.content for mark in one.drawing if isinstance(mark, Stroke) and mark.style == "outline"
               and max(mark.path.box[2] - mark.path.box[0], mark.path.box[3] - mark.path.box[1]) < 4.0)


def words(found):
    return " ".join(mark.text for page in found for one in page.content for mark in one.drawing if isinstance(mark, Label))


def test_a_step_that_is_added_takes_no_number_of_what_is_done():
    """Without one side tuner twelve steps are done; then it comes back."""
    head = layout("demo")
    less = remove_features(head, ("bass side 2",))
    was = plan_work(less)
    assert "side bore bass side 2.1.1" in plan_work(head).order.steps[:12]
    job = begun_job(less, 12, was)
    again = plan_work(replace(head, book=job.book))
    assert [again.number[op.id] for op in was.steps[:12]] == list(range(1, 13))
    assert again.number["side bore bass side 2.1.1"] > 12
    assert again.problems == (), "the bore may still be drilled"


def test_no_open_step_takes_the_number_of_what_is_done_and_gone():
    """Nine steps are done, a tuner of one of them is taken out: what is done stands first, and the work goes on with step 10."""
    head, was = layout("demo"), work("demo")
    gone = next(op.features[0] for op in was.steps[4:8] if op.features and op.features[0] in {tuner.id for tuner in head.tuners})
    job = begun_job(head, 9, was)
    left = plan_work(replace(remove_features(head, (gone,)), book=job.book))
    out = {was.number[op.id] for op in was.steps[:9] if gone in op.features}
    assert out and [left.number[id] for id in left.order.steps[:9 - len(out)]] == sorted(set(range(1, 10)) - out)
    assert all(id in left.done for id in left.order.steps[:9 - len(out)]) and left.number[left.open[0]] == 10
    assert len(set(left.number.values())) == len(left.number) == len(left.order.steps)
    told = [mark.text for block in stage_blocks(left.layout, left, 180.0)[0] for one in block.placed for mark in one.drawing if isinstance(mark, Label)]
    (cut,) = [left.number[op.id] for op in left.steps if op.kind == "cut outline"]
    assert f"{cut}: Saw the outline" in told, "the picture of a stage too"
    nothing = plan_work(replace(remove_features(head, (gone,)), book=begun_job(head, 0, was).book))
    assert list(nothing.number.values()) == list(range(1, len(nothing.order.steps) + 1))


def test_what_comes_too_late_is_said_of_the_step_that_is_open():
    head = layout("demo")
    was = work("demo")
    book = head.book
    for op in was.steps:
        if op.id != "side bore bass side 2.1.1" and op.kind != "clean up":
            book = tick_off(book, task_of(op), was.number[op.id])
    job = plan_work(replace(head, book=book))
    assert job.order.steps == was.order.steps, "its number is still free"
    assert {p.op for p in job.problems} == {"side bore bass side 2.1.1"}
    assert any("no square edge" in p.text for p in job.problems) and {e.harmed for e in job.broken} == {"side bore bass side 2.1.1"}


def test_the_order_ticks_what_is_done_and_says_of_which_piece():
    job = begun_job(layout("demo"), 13, work("demo"))
    op = work("demo").steps[15]
    job = replace(job, book=set_minutes(job.book, "practice", task_of(op), 3.0))
    found = [page for page in pages(job, "A4", ()) if page.title == "Running order"]
    assert sum(map(ticks, found)) == 2 * 13 + 1
    assert "Ticked: done, by the job book (practice piece)." in words(found)
    assert "13 of 55 steps done, about 4.1 hours left: go on with step 14." in words(found)
    other = [page for page in pages(replace(job, book=replace(job.book, piece="real")), "A4", ()) if page.title == "Running order"]
    assert sum(map(ticks, other)) == 0 and "Ticked" not in words(other)


def test_the_table_for_a_spreadsheet_tells_it_too():
    job = begun_job(layout("demo"), 13, work("demo"))
    job = replace(job, book=set_minutes(job.book, "practice", task_of(work("demo").steps[15]), 3.0))
    rows = csv_rows(plan_work(job), {})
    done = CSV_HEAD.index("done")
    assert [row[done] for row in rows] == ["done"] * 13 + [None, None, "begun"] + [None] * (len(rows) - 16)
    assert [row[0] for row in rows] == list(range(1, len(rows) + 1))


def test_cards_and_hole_table_tick_it_too():
    job = begun_job(layout("demo"), 13, work("demo"))
    letters, found = plan_work(job).plan_words, pages(job, "A4", ())
    shown = [page for page in found if page.title == "Cards"]
    assert f"card 7, mm, {letters}, done" in words(shown) and f"card 8, mm, {letters}, done" not in words(shown), "its counterbore alone is done"
    of_side, of_face = 5, 1
    assert sum(map(ticks, shown)) == 2 * (6 * of_side + 2 + 3 * of_face), "mark along, mark below, tilt, fence and stop of six side bores; two pin holes; three counterbores"
    table, = [page for page in found if "Hole table" in page.title]
    assert ticks(table) == 2 * (13 - 2), "all but the template and the papers is holes"


@pytest.mark.parametrize(("numbers", "steps"), [
    ({}, "abcd"), ({"d": 2}, "adbc"), ({"a": 4}, "bcda"), ({"a": 9}, "bcda"), ({"c": 1, "b": 1}, "bcad"), ({"c": 4, "b": 4}, "adcb"),
    ({"x": 1}, "abcd")])
def test_numbers_that_are_kept(numbers, steps):
    found = numbered("abcd", numbers)
    assert sorted(found) == list("abcd")
    assert "".join(found) == steps and list(found.values()) == [1, 2, 3, 4]


def test_the_bore_whose_pin_is_taken_away_is_drilled_all_the_same():
    """The holes of both pins, ticked off, are bores; turned over, the wood has them where other tuners are drawn."""
    head = read(Path("samples/three-a-side.headstock.json"))
    plan, book = plan_work(head), replace(head.book, piece="real")
    for op in plan.steps:
        if op.kind == "pin hole":
            book = tick_off(book, task_of(op), plan.number[op.id], made_by(head, op))
    job = replace(head, book=book)
    assert plan_work(job).done.keys() == {"pin hole nut pin.1", "pin hole tip pin.1"}
    for now in (remove_features(job, ["nut pin", "tip pin"]), mirror_layout(job)):
        again = plan_work(now)
        assert again.done.keys() == {"bore bass 1.1.1", "bore treble 3.1.1"} and again.otherwise == {}
        assert again.done.keys() <= set(again.order.steps)


@pytest.mark.parametrize(("numbers", "gone", "given"), [
    ({"a": 1, "c": 3}, {2}, {"a": 1, "c": 3, "b": 4, "d": 5}), ({"c": 2}, {2}, {"a": 1, "c": 3, "b": 4, "d": 5}),
    ({"d": 9}, {1}, {"a": 2, "b": 3, "c": 4, "d": 5})])
def test_numbers_that_are_gone_are_nobodys(numbers, gone, given):
    found = numbered("abcd", numbers, gone)
    assert found == given and list(found) == list(given)


def test_router_cards_and_the_order_name_each_other():
    head, plan = layout("demo"), work("demo")
    found = card_of(cards(head, plan), plan)
    assert {found[op.id] for op in routed(plan, "bass slot")} == {14} and found["cut outline"] == found["rout outline 1"] == 15
    said = section("demo", "Cards")
    assert "bass slot: steps 35, 37, 39. treble slot: steps 36, 38, 40." in said and "Steps 41 and 42." in said
    assert "card 14" in section("demo", "Running order")


def test_a_router_card_ticks_what_is_done_of_it():
    """Of the slotted head the waste of one slot is out, that of the other only drilled; then all is routed, and nothing pared yet."""
    head, plan = layout("slotted"), work("slotted")
    one, other = (slot.id for slot in head.slots)
    best = next(of.best for of in plan.plans if of.of == one)

    def boxes(*kinds, of=(one, other)):
        """How many strokes are in the boxes of either slot, sentence by sentence."""
        book = head.book
        for op in plan.steps:
            if (op.kind, op.features[:1]) in [(kind, (slot,)) for kind in kinds for slot in of]:
                book = tick_off(book, task_of(op), plan.number[op.id])
        made_blocks = _steps(plan.with_order(replace(head, book=book)), best, [one, other], 180.0)
        return [sum(mark.style == "outline" for mark in block.placed[0].drawing if isinstance(mark, Stroke)) for block in made_blocks]

    assert len(boxes()) == 3 and sum(boxes()) == 0
    assert boxes("waste holes", "saw", of=(one,)) == [2, 0, 0]
    assert boxes("waste holes", "saw") == [4, 0, 0] and boxes("waste holes") == [2, 0, 0], "one stroke each where it is begun"
    assert boxes("waste holes", "saw", "rout") == [4, 4, 4], "the ramp is filed afterwards"
    pared = replace(best, reached=replace(best.reached, left=(Patch(Polygon(), 20.0, 1.0, (0.0, 50.0)),)))
    assert router_marks(plan, pared, one) == [""] * 4
    book = head.book
    for op in plan.steps[:-1]:
        book = tick_off(book, task_of(op), plan.number[op.id])
    assert router_marks(plan.with_order(replace(head, book=book)), pared, one) == ["done"] * 3 + [""]
    book = tick_off(book, task_of(plan.steps[-1]), len(plan.steps))
    assert router_marks(plan.with_order(replace(head, book=book)), pared, one) == ["done"] * 4


@pytest.mark.parametrize(("of", "said"), [((), ""), ((4,), "4"), ((3, 5), "3 and 5"), ((3, 4, 5), "3 to 5"), ((11, 13, 15, 16, 34), "11, 13, 15, 16, 34"),
                                          ((3, 43, 44, 45), "3, 43 to 45")])
def test_numbers_of_steps_in_words(of, said):
    assert in_words(of) == said


def test_each_row_of_a_drilling_card_bears_the_number_of_its_step():
    """Two pilots of a tuner are told apart by it: each stands at the place that its step tells."""
    head, plan = layout("demo"), work("demo")
    step = {plan.number[op.id]: op.drillings[0].start[1] for op in plan.steps if op.drillings}
    found = {}
    for card in (one for one in cards(head, plan) if one.kind != "side"):
        for block in rows(head, plan, card, 180.0)[0][1:]:
            named, _, along = [mark.text for one in block.placed for mark in one.drawing if isinstance(mark, Label)][:3]
            found[int(named.partition(": ")[0])] = float(along)
    assert len(found) == 2 + 6 * 4
    assert found == {number: pytest.approx(step[number], abs=0.05) for number in found}


# ---- which plan a page is of ---------------------------------------------------
def test_a_router_card_says_what_is_cut_otherwise_than_it_is_drawn():
    """Of the slots, cut as they were drawn, one is drawn 1 mm narrower now: 0.5 mm on each side. It is told once, not once a step."""
    head, book = layout("demo"), layout("demo").book
    for number, op in enumerate(work("demo").steps, 1):
        book = tick_off(book, task_of(op), number, made_by(head, op))
    one, other = head.slots
    narrower = replace(other, shape=replace(other.shape, width=other.shape.width - 1.0))
    job = replace(head, slots=(one, narrower), book=book)
    text = words([page for page in pages(job, "A4") if page.title == "Cards"])
    assert text.count("is cut up to 0.50 mm beyond the line that is drawn now") == 1
    assert "is cut up to" not in words([page for page in pages(replace(head, book=book), "A4") if page.title == "Cards"])


def test_a_pass_that_a_shorter_bit_routed_is_gone_on_with():
    """8 mm deep by the bit that the rack had; the bit of now goes through 16 mm at once, in a step of the same name."""
    head, plan = layout("demo"), work("demo")
    op = next(op for op in plan.steps if op.id == "rout bass slot 1")
    made = made_by(head, op)
    job = plan.with_order(replace(head, book=tick_off(head.book, task_of(op), 39, replace(made, cut=replace(made.cut, ends=8.0)))))
    assert op.id not in job.done and op.id in job.to_go_on and job.cannot == ()
    assert job.blocked(op) == "“Rout bass slot from the face” is cut 8.00 mm deep (job book); with the bits chosen now it is to be cut through."
    assert op.id in plan.with_order(replace(head, book=tick_off(head.book, task_of(op), 39, made))).done


def test_pages_and_cards_of_one_plan_bear_its_letters_and_no_other_does():
    head, plan = layout("demo"), work("demo")
    assert len(plan.letters) == 4 and plan.letters.isalnum()
    for page in made("demo"):
        assert f"plan {plan.letters}, page" in words([page])
    cut = section("demo", "Cards")
    assert cut.count(f"plan {plan.letters}") == cut.count("Cards - ") + 15, "13 cards for the drill press and 2 for the router"
    assert f"another plan than {plan.letters}" in section("demo", "Cover")
    same = (begun_job(head, 5, plan), replace(head, notes=(), picture=None), replace(head, name="another", about=""),
            replace(head, rates=replace(head.rates, factor=1.2)), replace(head, accuracy=replace(head.accuracy, stop=0.9)))
    assert {plan_work(one).letters for one in same} == {plan.letters}, "nothing is set or cut otherwise"
    others = [move_features(head, ["bass face 1"], (0.0, 0.5)), replace(head, order=moved(plan.order.steps, "saw bass slot", 40)), remove_features(head, ("bass side 2",))]
    assert len({plan.letters, *(plan_work(one).letters for one in others)}) == 4


def test_of_the_rack_and_the_hardware_only_what_the_plan_uses_counts():
    head, plan = layout("demo"), work("demo")
    rack, passes = head.rack, [one for of in plan.plans for one in of.best.passes]
    used = next(bit for bit in rack.bits if bit.id == passes[0].bit)
    more = rack
    for shelf in ("bits", "bushes", "drills"):
        more = sort_shelf(add_entry(more, shelf), shelf)
    more = replace(more, bits=tuple(replace(bit, about="another word") for bit in more.bits))
    same = (replace(head, rack=more), copy_pattern(head, head.patterns[0].id),
            replace(head, patterns=tuple(replace(one, about="another word") for one in head.patterns)))
    assert {plan_work(one).letters for one in same} == {plan.letters}
    drill = next(op.setup.bit for op in plan.ops if op.kind == "bore")
    other = (replace(head, rack=set_in_rack(rack, ("bits", used.id, "cutting_length"), used.cutting_length - 1.0)),
             replace(head, rack=remove_entry(rack, "drills", drill)),
             replace(head, rack=remove_entry(rack, "bits", used.id), template=replace(head.template, bit=None)))
    assert len({plan.letters, *(plan_work(one).letters for one in other)}) == 4


def test_the_letters_are_those_of_the_file_and_of_layouts_with_more_fields():
    head, plan = layout("demo"), (work("demo").order.steps, work("demo").plans)
    nut, *pins = head.pins
    whole = replace(head, pins=(replace(nut, at=(-0.0, 26)), *pins), blank=replace(head.blank, tip=200))
    assert plan_letters(decode(encode(whole)), *plan) == plan_letters(whole, *plan) == plan_letters(head, *plan)
    had = [(f.name, f.type) if f.required else (f.name, f.type, f.default) for f in fields(Pin)]
    more = defstruct("Pin", [*had, ("new", str, "")], kw_only=True, frozen=True)
    newer = replace(head, pins=tuple(more(id=pin.id, at=pin.at, diameter=pin.diameter) for pin in head.pins))
    assert plan_letters(newer, *plan) == plan_letters(head, *plan)


def test_who_takes_the_ticks_back_has_the_best_order_again():
    head = layout("demo")
    less = remove_features(head, ("bass side 2",))
    job = plan_work(replace(head, book=begun_job(less, 12, plan_work(less)).book))
    best = work("demo").order
    assert job.order.steps != best.steps and job.best == best
    assert "your own" not in summary(job)
    assert job.with_order(head).order == best


def test_what_is_done_is_not_said_to_be_impossible_any_more():
    """The side bores are drilled with a friend's drill; that of the rack is too short."""
    head = layout("demo")
    drills = tuple(replace(drill, length=30.0) if drill.diameter == 6.4 else drill for drill in head.rack.drills)
    short = replace(head, rack=replace(head.rack, drills=drills))
    was = plan_work(short)
    *drilled, last = [op for op in was.steps if op.kind == "side bore"]
    assert len(drilled) == 5 and set(was.cannot) == {op.cannot for op in (*drilled, last)}
    book = short.book
    for op in drilled:
        book = tick_off(book, task_of(op), was.number[op.id])
    job = plan_work(replace(short, book=book))
    assert job.cannot == (last.cannot,)
    assert [row[1] for row in csv_rows(job, {}) if "find a longer one" in row[CSV_HEAD.index("cautions")]] == [last.id]
    said = words(pages(job.layout, "A4", (), job))
    assert said.count("find a longer one") == 3, "over the running order, at the step and on its card"


def test_what_is_gone_on_with_is_still_said_to_be_impossible_and_what_is_spoilt_is_said_itself():
    """The drill of the rack is too short; of the bores one is drilled half as deep as it is drawn, or half as deep again, or elsewhere."""
    head = layout("demo")
    drills = tuple(replace(drill, length=30.0) if drill.diameter == 6.4 else drill for drill in head.rack.drills)
    short = replace(head, rack=replace(head.rack, drills=drills))
    plan = plan_work(short)
    op = next(op for op in plan.steps if op.kind == "side bore")
    planned = made_by(short, op).hole

    def told(far, aside=0.0):
        (x, y, z), (tip_x, tip_y, _) = planned.at, planned.end
        hole = replace(planned, at=(x, y + aside, z), end=(x + (tip_x - x) * far, y + (tip_y - y) * far + aside, z))
        job = plan.with_order(replace(short, book=tick_off(short.book, task_of(op), plan.number[op.id], Made(hole=hole))))
        return job.blocked(op), op.cannot in job.cannot, job.blocked(op) in job.cannot

    assert told(1.0) == ("", False, False)
    assert told(0.5) == (op.blocked, True, False) and "find a longer one" in op.blocked
    for words, of, hidden in (told(1.5), told(1.0, aside=3.0)):
        assert "is drilled" in words and (of, hidden) == (False, True)


def test_an_edge_that_no_order_can_keep_is_not_heeded():
    plan = work("demo")
    edge = plan.before[0]
    given_up = replace(plan, order=replace(plan.order, given_up=(edge,)))
    assert edge in plan.heeded and set(plan.heeded) - set(given_up.heeded) == {edge}


def test_the_number_of_a_card_that_is_done_stands_beside_the_longest_name():
    head = rename(layout("demo"), "tuners", "bass side 1", "bass side " + "w" * 40)
    job = begun_job(head, None, plan_work(head))
    page = next(page for page in pages(job, "A4", ()) if page.title == "Cards")
    marks = [mark for one in page.content for mark in one.drawing if isinstance(mark, Label)]
    number, title = (next(mark for mark in marks if mark.text.startswith(text)) for text in ("card 1, mm, plan", "bass side w"))
    assert title.text.endswith("...") and number.text.endswith(", done")
    assert title.at[1] == number.at[1]
    assert title.at[0] + text_width(title.text, title.height) < number.at[0] - text_width(number.text, number.height)


def test_a_head_that_is_sawn_already_is_told_of_as_one():
    """Other tuners for an old head: nobody folds a paper round it, pastes it on a square blank, or saws one."""
    head, bare = layout("demo"), work("demo")
    saw = next(op for op in bare.ops if op.kind == "cut outline")
    book = tick_off(replace(head.book, piece="real"), task_of(saw), bare.number[saw.id], made_by(head, saw))
    sawn = bare.with_order(replace(head, book=book))
    for one, words in ((bare, ("both square edges", "fold it back", "all edges square")), (sawn, ("The head is sawn already", "along the outline", "already sawn"))):
        mark = next(op for op in one.steps if op.kind == "mark")
        wrap = next(part for part in parts(one.layout, (), one.sawn) if part.title == "Wrap paper")
        for text, word in zip((mark.words, wrap.purpose, pieces(one.layout, one)[0].name), words, strict=True):
            assert word in text
    assert "square" not in mark.words.replace("squared", "") and sawn.with_order(head).ops == bare.ops
    assert state_of(head, sawn.worked[:1], sawn.ops).outline == "sawn", "it comes before all that is left to do"


@pytest.mark.parametrize("sawn", [False, True])
def test_how_papers_are_pasted_is_told_in_the_unit_of_the_plan_whoever_asks(sawn):
    """The window hands the book over outside of the unit it speaks."""
    head = layout("demo")
    head = replace(head, nut=replace(head.nut, slant=5.0))
    plan = plan_work(head, Wishes(unit="in64"))
    saw = next(op for op in plan.ops if op.kind == "cut outline")
    book = tick_off(head.book, task_of(saw), plan.number[saw.id]) if sawn else head.book
    words, = [op.words for op in plan.with_order(replace(head, book=book)).ops if op.kind == "mark"]
    assert '0.945" to either side' in words and " mm" not in words and ("sawn already" in words) == sawn
