"""A frame of a drag paints what moved and little else: counted in paints and pixels, since times are the machine's own."""

from collections import Counter
from itertools import count

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication

from app.canvas import canvas as canvas_module
from app.canvas.snag_marks import SnagItem
from app.look.theme import LAMP, use_theme
from app.panels.describe import describe
from app.panels.snags import snag_words
from app.window.demo import demo
from geometry.drawing.sections import section_along_bore
from geometry.edits import free_from_row
from tests.gui.bench import Bench
from tests.waiting import rest, until

TUNER = "treble face 2"
MOST_OF_CANVAS = 0.4
"""Part of the canvas that a frame may paint, before and after a wide step: tuner, rings with their cards, dimensions, the card at the pointer."""
MOST_OF_RULER = 0.05


class Paints(QObject):
    """Counts paints and pixels of some widgets, by name."""

    def __init__(self, parent: QObject, **watched) -> None:
        super().__init__(parent)
        self._names = {widget: name for name, widget in watched.items()}
        self.clear()
        for widget in watched.values():
            widget.installEventFilter(self)

    def clear(self) -> None:
        self.paints, self.pixels = Counter(), Counter()

    def eventFilter(self, thing: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            name = self._names[thing]
            self.paints[name] += 1
            self.pixels[name] += sum(part.width() * part.height() for part in event.region())
        return False


@pytest.fixture
def bench(qtbot, tmp_path):
    return Bench(qtbot, tmp_path, free_from_row(demo(), TUNER))


@pytest.fixture
def paints(bench):
    canvas = bench.window.canvas
    return Paints(bench.window, canvas=bench.view.viewport(), top=canvas._top, left=canvas._left,
                  snags=bench.window.side.inside.snags.viewport(), tools=bench.window.tools, stages=bench.window.stages)


@pytest.mark.parametrize("by", [(0.0, 0.4), (-0.5, 0.7)], ids=["clear of others", "into others"])
def test_a_frame_paints_what_moved(bench, paints, by):
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x + 8 * by[0], y + 8 * by[1]), 4)
    rest(0.1)
    whole = bench.view.viewport().width() * bench.view.viewport().height()
    sides = {"top": bench.window.canvas._top, "left": bench.window.canvas._left}
    for k in range(9, 24):
        paints.clear()
        shown = bench.window.document.shown
        bench.move((x + k * 2 * by[0], y + k * 2 * by[1]))
        QApplication.processEvents()
        assert bench.window.document.shown is not shown
        assert paints.paints["canvas"] <= 2
        assert 0 < paints.pixels["canvas"] < MOST_OF_CANVAS * whole
        for name, ruler in sides.items():
            assert paints.pixels[name] <= MOST_OF_RULER * ruler.width() * ruler.height()
        assert not paints.paints["tools"] and not paints.paints["stages"]
    bench.window.hand.cancel()
    bench.pump()


def test_a_frame_paints_nothing_behind_the_drawing_and_lays_out_no_more_than_the_words_that_changed(bench):
    """What lies behind the drawing up to the window, and every layout above a word, were most of what was not the drawing."""
    window = bench.window
    behind = Paints(window, canvas=window.canvas, beside=window.beside, paper=window.paper, whole=window, side=window.side,
                    splitter=window.splitter)
    asked = Laid(window, window=window, splitter=window.splitter, side=window.side, panel=window.side.inside)
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x - 4, y + 6), 4)
    until(lambda: not window.held_page._due.isActive())
    bench.pump()
    behind.clear()
    asked.times.clear()
    for k in range(1, 16):
        bench.move((x - 4 - 0.3 * k, y + 6 + 0.4 * k))
        rest(0.02)
    assert not behind.paints
    assert max(asked.times.values(), default=0) <= 2, "only where a tally goes on in another line"
    window.hand.cancel()
    bench.pump()


class Laid(QObject):
    """Counts how often some widgets are asked to lay out what they hold, by name."""

    def __init__(self, parent: QObject, **watched) -> None:
        super().__init__(parent)
        self._names = {widget: name for name, widget in watched.items()}
        self.times = Counter()
        for widget in watched.values():
            widget.installEventFilter(self)

    def eventFilter(self, thing: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            self.times[self._names[thing]] += 1
        return False


def test_the_list_of_snags_follows_at_an_eyes_pace(bench, paints, qtbot):
    """Twenty frames as fast as they come: the list may be filled some times, not each time."""
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x - 4, y + 6), 4)
    rest(0.1)
    paints.clear()
    filled = []
    show, bench.window.side.inside.show_result = bench.window.side.inside.show_result, lambda result: filled.append(show(result))
    for k in range(20):
        bench.window.hand.point(bench.view._pointer(_at(bench, (x - 4 - 0.3 * k, y + 6 + 0.4 * k)), "move"))
    assert filled == [], "no beat without the event loop"
    until(lambda: filled and not bench.window.held_page._due.isActive())
    assert len(filled) <= 4
    assert bench.window.side.inside.snags.model().rowCount() == len(bench.window.document.result.snags)
    bench.window.hand.cancel()
    bench.pump()


def test_numbers_that_stand_side_by_side_are_of_one_step(bench):
    """The hand goes on while tally, facts and section are filled in turn; they must not show 2 snags beside a third, or two stops."""
    window, held = bench.window, "treble side 2"
    inside = window.side.inside
    x, y = bench.inside(held)
    bench.press((x, y))
    bench.move_along((x, y), (x, y + 2), 4)
    until(lambda: not window.held_page._due.isActive())
    steps, listed, facts, rounds = [], [], [], []
    window.document.shown_changed.connect(lambda: steps.append((window.document.result, window.document.shown)))
    list_snags, tell, cut = inside.show_result, inside.show_facts, inside.show_section
    inside.show_result = lambda result: (listed.append(result), list_snags(result))
    inside.show_facts = lambda page: (facts.append(page.facts), tell(page))
    inside.show_section = lambda title, drawing, *more: (rounds.append((listed[-1], facts[-1], drawing)), cut(title, drawing, *more))

    def went_on(moves=count(1)) -> bool:
        bench.move((x, y + 2 + 0.17 * (next(moves) % 36)))
        return len({str(told) for _, told, _ in rounds}) >= 3

    until(went_on)
    window.hand.cancel()
    for result, told, drawing in rounds:
        shown = next(layout for checked, layout in steps if checked is result)
        assert told == describe(shown, held, window.unit, None).facts
        assert drawing == section_along_bore(shown, held, window.unit, result.holes)


def test_a_snag_that_changes_alone_is_painted_alone(bench, paints):
    from msgspec.structs import replace
    snags = bench.window.document.result.snags
    listed = bench.window.side.inside.snags
    bench.pump()
    paints.clear()
    first = snags[0]
    listed.show_snags((replace(first, where=(first.where[0] + 0.01, *first.where[1:])), *snags[1:]))
    bench.pump()
    assert 0 < paints.pixels["snags"] <= listed.visualRect(listed.model().index(0)).height() * listed.viewport().width()


def _at(bench: Bench, place):
    from PySide6.QtCore import QPointF, Qt
    from PySide6.QtGui import QMouseEvent
    pixel = QPointF(bench.pixel(place))
    return QMouseEvent(QEvent.Type.MouseMove, pixel, pixel, Qt.MouseButton.NoButton, Qt.MouseButton.LeftButton,
                       Qt.KeyboardModifier.NoModifier)


def test_a_frame_clear_of_others_touches_no_card_and_asks_no_choice_of_the_tools(bench, monkeypatch):
    """What the snags, the hardware and the kind of edge are stays while nothing about them changes."""
    touched, tools = Counter(), bench.window.tools
    for kind, name in ((SnagItem, "show_snag"), (snag_words, "numbers"), (canvas_module, "feature_states"),
                       (tools.hardware, "addItems"), (tools.edge, "findData")):
        was = getattr(kind, name)
        monkeypatch.setattr(kind, name, lambda *given, was=was, name=name: touched.update([name]) or was(*given))
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x - 4.0, y + 1.0), 5)
    snags = bench.window.document.result.snags
    touched.clear()
    for k in range(1, 9):
        bench.move((x - 4.0 + 0.25 * k, y + 1.0 + 0.25 * k))
        bench.pump()
    assert bench.window.document.result.snags is snags, "all clear: or the cards would have to follow"
    assert touched == {"feature_states": 8}, "which features are snagged and held, of each frame"
    bench.window.hand.cancel()
    bench.pump()


def test_other_colours_leave_no_line_behind_for_a_drag_to_take_out_of_its_picture(bench):
    canvas = bench.window.canvas
    use_theme(LAMP)
    canvas.follow_theme()
    assert canvas._marks.take_changed() == (set(), set())
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x - 4.0, y + 1.0), 3)
    assert canvas._scene.under.items, "paper, wood and slots lie still"
    bench.window.hand.cancel()
    bench.pump()
