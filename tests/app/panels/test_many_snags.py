"""Thousands of snags, as of a drawing that came in with every hole three times over: the list and the drawing answer at once."""

from msgspec.structs import replace
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QGraphicsScene

from app.canvas import snag_marks
from app.canvas.free_room import FreeRoom
from app.canvas.snag_marks import MOST_SOUGHT, SPOTS, SnagItem, SnagLayer
from app.panels.snags.snag_card import AT_ONCE, REMEMBERED, SnagCard
from app.panels.snags.snag_list import SnagList
from app.window.demo import demo
from geometry.checks import check
from tests.waiting import on_screen, until

MANY = 1200


def many():
    """Snags that differ in their words, and so in how high their cards are."""
    found = check(demo()).snags
    return tuple(replace(found[k % len(found)], cured=f"{k} " + "Move it a little. " * (12 * (k % 5))) for k in range(MANY))


def test_a_long_list_is_measured_in_turns_and_is_then_as_high_as_its_cards(qtbot, monkeypatch):
    laid = []
    own = SnagCard._lay
    monkeypatch.setattr(SnagCard, "_lay", lambda card, option, index, width: laid.append(index.row()) or own(card, option, index, width))
    shown = SnagList()
    qtbot.addWidget(shown)
    shown.resize(360, 400)
    shown.show()
    on_screen(shown)
    snags = many()
    shown.show_snags(snags)
    shown.doItemsLayout()
    assert AT_ONCE <= len(laid) < AT_ONCE + 20
    until(lambda: not shown._measuring.busy and not shown._card.guessed, "the rest is not measured")
    heights = [shown.sizeHintForIndex(shown.model().index(row, 0)).height() for row in range(MANY)]
    assert len(set(heights)) > 1
    assert [shown.visualRect(shown.model().index(row, 0)).height() for row in range(MANY)] == heights
    laid.clear()
    shown.show_snags(snags[:1000] + snags[1001:])
    shown.doItemsLayout()
    assert len(laid) < 20, "what was measured is not measured again when one goes"


def test_heights_are_remembered_of_about_what_the_list_shows(qtbot, monkeypatch):
    """Each step of a drag brings snags that are new: none of those that are gone is kept for good, and none of those shown is measured again."""
    shown = SnagList()
    qtbot.addWidget(shown)
    shown.resize(360, 400)
    shown.show()
    on_screen(shown)
    stay = many()[:30]
    for step in range(2 * REMEMBERED):
        moved = replace(stay[0], said=f"{step} moved")
        shown.show_snags((moved, *stay[1:]))
        shown.doItemsLayout()
        assert len(shown._card._heights) <= REMEMBERED
    laid = []
    own = SnagCard._lay
    monkeypatch.setattr(SnagCard, "_lay", lambda card, option, index, width: laid.append(index.row()) or own(card, option, index, width))
    shown.show_snags((replace(stay[0], said="moved once more"), *stay[1:]))
    shown.doItemsLayout()
    assert set(laid) <= {0}


def test_room_for_cards_is_sought_for_the_worst_alone(qtbot, monkeypatch):
    asked = []
    own = FreeRoom.has
    monkeypatch.setattr(snag_marks.FreeRoom, "has", lambda room, box: asked.append(box) or own(room, box))
    scene = QGraphicsScene()
    layer = SnagLayer(scene, QFont())
    layer.show([(snag, "1.2 < 3") for snag in many()])
    assert 0 < len(asked) <= MOST_SOUGHT * len(SPOTS)
    assert len(scene.items()) == MANY, "each has its ring"
    scene.clear()


def test_a_card_stands_clear_of_the_words_of_the_drawing_where_it_can(qtbot):
    scene = QGraphicsScene()
    layer = SnagLayer(scene, QFont())
    snag = many()[0]
    layer.show([(snag, "1.2 < 3")])
    x, y = snag.where[0] * 3.0, -snag.where[1] * 3.0
    usual = next(item for item in scene.items() if isinstance(item, SnagItem))._box.translated(x, y)
    words = (usual.left(), usual.right(), usual.top(), usual.bottom())
    layer.show([(snag, "1.2 < 3")], [words])
    moved = layer._items[0]._box.translated(x, y)
    assert moved.isValid() and not moved.intersects(usual)
    layer.show([(snag, "1.2 < 3")], [(x - 500.0, x + 500.0, y - 500.0, y + 500.0)])
    assert layer._items[0]._box.translated(x, y) == usual, "words all round: the number is told all the same"
    layer.look(5.0, [])
    layer.look(3.0, [words])
    assert layer._items[0]._box.translated(x, y) == moved
    scene.clear()
