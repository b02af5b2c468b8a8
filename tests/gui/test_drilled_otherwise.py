"""Half of the head is drilled and the drawing changes: the snags, the order, the book and the page say so, and none keeps a false tick."""

from msgspec.structs import replace

from app.panels.describe import describe
from app.panels.order.order_rows import minutes_words
from geometry.book import tick_off
from geometry.edits import add_hole, move_features, move_node, remove_features, set_field
from geometry.layout import Book, DrawnSlot, Made, Shaped, Task
from tests.gui.test_order_stage import order  # noqa: F401  a fixture

TUNER = "treble face 2"


def tick(bench, room, *ids):
    for id in ids:
        room._ticked(id)
        bench.planned("order")


def kinds(bench):
    return [snag.kind for snag in bench.window.document.result.snags if snag.kind.startswith("drilled")]


def row(room, id):
    return next(row for row in room.panel.list.steps if row.id == id)


def test_a_tuner_is_moved_after_it_is_drilled(bench, order):  # noqa: F811
    document = bench.window.document
    document.record("piece", lambda book: replace(book, piece="real"))
    bench.planned("order")
    post, other = f"bore {TUNER}.1.2", "bore bass face 1.1.2"
    tick(bench, order, post, other)
    assert row(order, post).mark == "done" and kinds(bench) == []
    document.apply("Nudge", move_features(bench.layout, (TUNER,), (0.5, 0.0)))
    bench.planned("order")
    assert kinds(bench) == ["drilled-otherwise"]
    assert row(order, other).mark == "done" and row(order, post).mark == ""
    assert row(order, post).grade == "loud" and "(job book); the drawing now says from the face at x" in row(order, post).text
    assert row(order, post).text in order.panel.loud
    facts = describe(bench.layout, TUNER, "mm").facts
    assert any(fact.warn and fact.value == "drilled otherwise than it is drawn" for fact in facts)
    bench.window.set_stage("book")
    bench.planned("book")
    book = bench.window.room
    titles = {book.view.hours.key(i): book.view.hours.model().index(i, 1).data() for i in range(len(book.rows))}
    assert titles[post].endswith("(drilled otherwise)") and not titles[other].endswith("(drilled otherwise)")
    left = sum(one.planned for one in book.planned() if one.operation != other)
    assert {row.label: row.value for row in book.panel._sums.rows}["Left, by the plan"] == minutes_words(left)
    bench.window.set_stage("order")
    bench.planned("order")
    tick(bench, order, post)
    assert row(order, post).mark == "done" and kinds(bench) == [], "drilled anew, as it is drawn now"
    assert len(bench.layout.book.done) == 2
    bench.window.commands.run("undo")
    bench.planned("order")
    assert kinds(bench) == ["drilled-otherwise"] and row(order, post).mark == ""
    tick(bench, order, post, post)
    assert kinds(bench) == [] and row(order, post).mark == ""


def test_a_hole_of_the_same_name_in_an_older_step_does_not_bear_the_tick(bench, order):  # noqa: F811
    document = bench.window.document
    document.record("piece", lambda book: replace(book, piece="real"))
    document.apply("One", add_hole(bench.layout, (0.0, 20.0), 5.0))
    name = bench.layout.holes[-1].id
    document.apply("None", remove_features(bench.layout, (name,)))
    document.apply("Two", add_hole(bench.layout, (0.0, 30.0), 5.0))
    assert bench.layout.holes[-1].id == name
    bench.planned("order")
    step = f"bore {name}.1"
    tick(bench, order, step)
    assert row(order, step).mark == "done" and kinds(bench) == []
    bench.window.commands.run("undo")
    assert kinds(bench) == ["drilled-and-gone"]
    bench.window.commands.run("undo")
    bench.planned("order")
    assert kinds(bench) == ["drilled-otherwise"] and row(order, step).mark == ""
    snag = next(snag for snag in document.result.snags if snag.kind == "drilled-otherwise")
    assert "drilled from the face at x 0.00 mm, y 30.00 mm (job book); the drawing now says from the face at x 0.00 mm, y 20.00 mm." in snag.text


def test_a_slot_is_widened_after_the_router(bench, order):  # noqa: F811
    document = bench.window.document
    document.record("piece", lambda book: replace(book, piece="real"))
    bench.planned("order")
    saw, rout = "saw bass slot", "rout bass slot 1"
    tick(bench, order, saw, rout)
    assert row(order, saw).mark == row(order, rout).mark == "done"
    document.apply("Wider", set_field(bench.layout, ("slots", "bass slot", "shape", "width"), 15.0))
    bench.planned("order")
    snag, = (snag for snag in document.result.snags if snag.kind == "cut-otherwise")
    assert snag.grade == "tight" and snag.between == ("bass slot",)
    assert row(order, saw).mark == "done", "it has left 2 mm"
    assert row(order, rout).mark == "" and "cut up to 1.0 mm short of the line" in row(order, rout).text
    assert row(order, rout).grade == "unwise" and order.panel.loud == "", "it is cut on: nothing is impossible"
    assert any(fact.warn and fact.value == "cut otherwise than it is drawn" for fact in describe(bench.layout, "bass slot", "mm").facts)
    bench.window.set_stage("book")
    book = bench.window.room
    book._show()
    titles = {book.view.hours.key(i): (book.view.hours.model().index(i, 0).data(), book.view.hours.model().index(i, 1).data()) for i in range(len(book.rows))}
    assert titles[rout][1].endswith("(cut otherwise)") and not titles[rout][0].startswith("✓"), "before its plan is there"
    assert titles[saw][0].startswith("✓")
    bench.planned("book")
    bench.window.set_stage("order")
    bench.window.commands.run("undo")
    bench.planned("order")
    assert row(order, rout).mark == "done"


def test_the_page_of_a_node_says_that_its_outline_is_cut(bench):
    book = tick_off(Book(piece="real"), Task(operation="rout outline 1"), 1, Made(cut=Shaped(shape=DrawnSlot(loop=bench.layout.outline))))
    layout = replace(bench.layout, book=book)
    x, y = layout.outline.nodes[5].at
    for one, told in ((layout, "cut: a change here changes the plan alone"), (move_node(layout, "outline", 5, (x, y + 4.0)), "cut otherwise than it is drawn")):
        assert [page.facts[0].value for page in (describe(one, "outline", "mm"), describe(one, "outline", "mm", 5))] == [told, told]
        assert describe(one, "outline", "mm", 5).title == "Node 6 of the outline"
