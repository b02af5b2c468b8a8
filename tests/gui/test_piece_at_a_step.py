"""The piece as the Order stage shows it at a step: what is cut, what was done before its turn, and what has nothing left to take."""

from msgspec.structs import replace
from PySide6.QtCore import QPointF, QRectF

from app.canvas.step_picture import BORDER
from app.look.paths import fitted
from geometry.book import made_by, tick_off
from geometry.layout import Made, Task
from tests.gui.test_order_stage import tick


def test_a_slot_is_wood_in_the_picture_until_it_is_cut(bench):
    """The paper on it shows its line: a line is no opening."""
    order = bench.enter("order")
    picture, slot = order.centre.picture, bench.layout.slots[0]
    room = QRectF(picture.rect()).adjusted(BORDER, BORDER + 6, -BORDER, -BORDER + 6)

    def colour(x: float, y: float) -> str:
        image = picture.grab().toImage()
        spot = fitted(picture._box, room).map(QPointF(x, y)) * image.devicePixelRatio()
        return image.pixelColor(spot.toPoint()).name()
    middle = (slot.shape.nut_end[0], slot.shape.nut_end[1] + 10.0)
    beside = (slot.shape.nut_end[0] - slot.shape.width, middle[1])
    for id, cut in (("mark", False), ("rout bass slot 1", True), ("clean up", True)):
        order.go_to(id)
        bench.pump()
        assert (colour(*middle) != colour(*beside)) == cut, id


def test_what_is_done_before_its_turn_is_gone_at_every_step_that_is_left(bench):
    """A head that is sawn already: whoever ticks that first sees it so at all steps."""
    order = bench.enter("order")
    first, id = order.work.order.steps[0], "cut outline"
    order.go_to(first)
    assert "Both square edges are there." in order.centre.page.text
    tick(bench, order, id)
    order.go_to(first)
    assert "The square edges are gone. The outline is sawn." in order.centre.page.text
    assert order.panel.said == "What is done came too early for 6 steps: no other place in the order mends that."


def test_a_pass_whose_wood_is_gone_with_another_has_no_tick_to_take_back(bench):
    """Routed in one go by a plan with another bit: the one that is planned from the back, and so by another, has nothing left to take."""
    order = bench.enter("order")
    passes = [op for op in order.work.ops if op.kind == "rout" and "bass slot" in op.features]
    cut = made_by(bench.layout, passes[0]).cut
    whole = Made(cut=replace(cut, begins=0.0, ends=None))
    bench.window.document.record("done", lambda book: tick_off(book, Task(operation="rout bass slot 9", features=("bass slot",)), 1, whole))
    assert passes[0].id in order.work.done
    tick(bench, order, passes[0].id)
    assert bench.window.foot.said == f"{passes[0].called} needs no tick: the steps that are ticked off have taken all of its wood."
    assert passes[0].id in order.work.done and len(bench.layout.book.done) == 1
