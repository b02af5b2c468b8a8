"""The first minute: the front page, a layout from numbers, files dropped on the window."""


import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel

from app.formats import headstock
from app.look.descendants import below
from app.look.theme import LAMP, theme
from app.panels.describe import SHAPING
from app.window import ask
from app.window.demo import samples
from app.window.front import numbers_dialog
from app.window.front.bare import begin_bare
from app.window.front.numbers_dialog import NumbersDialog
from app.window.importing.importing import ImportDialog
from app.window.stage_pages import DRAWING, HALF, NODES
from geometry.checks import check
from tests.gui.hands import drop, fill, pick, typed
from tests.waiting import press, until

OUTLINES = samples() / "outlines"


@pytest.fixture
def front(bench, qtbot):
    bench.window.front.show()
    qtbot.waitUntil(lambda: all(card.drawn for card in bench.window.front.page.cards))
    return bench.window.front


def card(front, words: str):
    return next(c for c in front.page.cards if words in c.accessibleName())


def test_a_press_on_a_sample_opens_a_copy_of_it(bench, front):
    assert len(front.page.cards) == len(list(samples().glob("*.headstock.json")))
    press(card(front, "Six in line"))
    assert not front.shown
    assert bench.layout == headstock.read(samples() / "six-in-line.headstock.json")
    assert bench.window.document.path is None and not bench.window.document.unsaved


def test_the_pictures_are_drawn_from_the_layouts(front):
    """The wood of a card is brown where the head is and paper beside it; two samples differ."""
    look = theme()
    shots = [card(front, words).grab().toImage() for words in ("Six in line", "Slotted, three")]
    assert shots[0] != shots[1]
    colours = {shots[0].pixelColor(x, 120).name().upper() for x in range(10, 160)}
    assert look.wood in colours and look.panel in colours


def test_the_keyboard_goes_from_way_to_way_and_from_card_to_card(bench, front):
    page = front.page
    assert QApplication.focusWidget() is page.ways["numbers"]
    for way in ("draw", "import", "trace", "open"):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        assert QApplication.focusWidget() is page.ways[way]
    page.cards[0].setFocus()
    QTest.keyClick(page.cards[0], Qt.Key.Key_Right)
    assert QApplication.focusWidget() is page.cards[1]
    QTest.keyClick(page.cards[1], Qt.Key.Key_Down)
    assert QApplication.focusWidget() is page.cards[1 + page._columns()]
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert not front.shown


def test_esc_goes_back_to_the_layout(bench, front, qtbot):
    before = bench.layout
    QTest.keyClick(bench.window, Qt.Key.Key_Escape)
    assert not front.shown and bench.layout is before
    QTest.keyClick(bench.window, Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    assert front.shown
    press(front.page.back)
    assert not front.shown and bench.layout is before


def test_the_way_back_names_the_layout_letter_by_letter(bench, front):
    bench.window.document.apply("Name", replace(bench.layout, name="Oak & ash"))
    front.show()
    bench.pump()
    back = front.page.back
    assert back.accessibleName() == "Back to “Oak & ash”" and back.shortcut().isEmpty()
    press(back)
    assert not front.shown


def test_what_changes_the_layout_shows_it_first(bench, front):
    """An edit behind the page of beginnings would go unseen; what only begins or looks leaves the page where it is."""
    bench.window.commands.run("mm")
    bench.window.commands.run("zoom in")
    assert front.shown
    bench.window.commands.run("turn over")
    assert not front.shown and bench.window.document.unsaved


def test_tab_leads_through_the_numbers_as_they_are_read(numbers):
    """Row by row: how many on a side, then how they are mounted."""
    numbers._counts["bass"].setFocus()
    seen = []
    for _ in range(7):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        seen.append(QApplication.focusWidget())
    assert seen == [numbers._mounts["bass"], numbers._counts["treble"], numbers._mounts["treble"], numbers._face,
                    numbers._courses, numbers._left_handed, numbers._fields["pitch"]]


def test_layouts_opened_lately_are_offered(bench, tmp_path):
    file = tmp_path / "mine.headstock.json"
    headstock.write(headstock.read(samples() / "three-a-side.headstock.json"), file)
    assert bench.window.files.open(file)
    bench.window.front.show()
    page = bench.window.front.page
    button = page._recent.itemAt(0).widget()
    assert button.text() == "mine" and page._recent_title.isVisible()
    bench.window.document.replace(headstock.read(samples() / "six-in-line.headstock.json"), None)
    bench.window.front.show()
    press(page._recent.itemAt(0).widget())
    assert bench.layout.name == "Three a side, through the face" and not bench.window.front.shown


def test_unsaved_work_is_asked_about_before_a_sample_takes_its_place(bench, monkeypatch):
    bench.window.document.hold(("treble side 3",))
    bench.window.commands.run("remove")
    changed = bench.layout
    bench.window.front.show()
    monkeypatch.setattr(ask, "save_first", lambda parent, name: "cancel")
    press(card(bench.window.front, "ix in line"))
    assert bench.layout is changed and bench.window.front.shown


def test_both_sets_of_colours(bench, front):
    bench.window.actions_["lamp"].trigger()
    colours = {card(front, "Six in line").grab().toImage().pixelColor(x, 120).name().upper() for x in range(10, 160)}
    assert LAMP.wood in colours


# ---- from numbers -------------------------------------------------------------
@pytest.fixture
def numbers(bench, qtbot):
    dialog = NumbersDialog(bench.window)
    dialog.show()
    qtbot.waitUntil(lambda: dialog.settled)
    yield dialog
    dialog.close()
    dialog.deleteLater()


def test_the_keyboard_stays_with_a_number_that_was_refused(numbers):
    """Not on Cancel, to which it would go on from a button that can no longer be pressed."""
    pitch = numbers._fields["pitch"]
    typed(pitch, "wide")
    QTest.mouseClick(numbers.begin_button, Qt.MouseButton.LeftButton)
    assert pitch.bad and pitch.hasFocus() and "is not a length" in numbers._says.text()
    QTest.keyClick(pitch, Qt.Key.Key_Escape)


def test_numbers_show_what_they_make_while_they_change(numbers, qtbot):
    assert numbers._says.text() == "No snags."
    pick(numbers._counts["bass"], numbers._counts["bass"].currentIndex() + 1)
    pick(numbers._counts["treble"], numbers._counts["treble"].currentIndex() - 1)
    pick(numbers._mounts["bass"], numbers._mounts["bass"].currentIndex() + 1)
    qtbot.waitUntil(lambda: numbers.settled)
    press(numbers.begin_button)
    made = numbers.layout_made
    assert [t.id for t in made.tuners] == ["bass 1", "bass 2", "bass 3", "bass 4", "treble 1", "treble 2"]
    assert [s.id for s in made.slots] == ["bass slot"]
    assert not check(made).spoils


def test_a_five_string_bass_is_begun_with_all_that_is_known_of_it(numbers, qtbot):
    """Tuners, nut, scale and strings of a bass, and a blank that holds it, without a number typed."""
    pick(numbers._instrument, numbers._instrument.findData("bass"))
    pick(numbers._counts["bass"], 3)
    qtbot.waitUntil(lambda: numbers.settled)
    assert numbers._says.text() == "No snags." and not numbers._cure.isVisible()
    assert numbers._fields["width"].text() == f"{numbers._numbers.width:g} mm" and numbers._numbers.width > 100
    press(numbers.begin_button)
    made = numbers.layout_made
    assert {t.pattern for t in made.tuners} == {"face 14 bushing four screws"}
    # By hand: 42 for four strings and 6 for one more; a low B in front of the four.
    assert (made.nut.scale_length, made.nut.width, made.nut.height, made.nut.pitch) == (864.0, 48.0, 7.0, 10.0)
    assert [s.note for s in made.strings] == ["B0", "E1", "A1", "D2", "G2"]


def test_what_was_typed_stays_when_another_instrument_is_chosen(numbers, qtbot):
    fill(numbers._fields["thickness"], "15", Qt.Key.Key_Tab)
    pick(numbers._instrument, numbers._instrument.findData("mandolin"))
    qtbot.waitUntil(lambda: numbers.settled)
    made = numbers._answer.layout
    assert (made.blank.thickness, made.nut.scale_length, made.nut.width) == (15.0, 352.0, 29.0)
    assert [s.course for s in made.strings] == [4, 4, 3, 3, 2, 2, 1, 1] and made.strings[-1].note == "E5"


def test_a_blank_that_was_typed_is_kept_and_what_would_do_is_offered(numbers, qtbot):
    fill(numbers._fields["length"], "150", Qt.Key.Key_Tab)
    pick(numbers._counts["bass"], 4)
    qtbot.waitUntil(lambda: numbers.settled)
    assert numbers._cure.isVisible() and numbers._numbers.length == 150.0


def test_long_words_in_a_box_do_not_make_the_numbers_wider_than_a_screen(bench, qtbot, monkeypatch):
    long = "as long as a word becomes in another language " * 3
    monkeypatch.setattr(numbers_dialog, "INSTRUMENTS", {key: replace(kind, title=long) for key, kind in numbers_dialog.INSTRUMENTS.items()})
    monkeypatch.setattr(numbers_dialog, "pattern_name", lambda *_: long)
    numbers = NumbersDialog(bench.window)
    qtbot.addWidget(numbers)
    assert numbers.minimumSizeHint().width() < 800
    assert numbers._instrument.toolTip() == long, "what is shortened is read in its tip"


def test_a_number_typed_as_it_stands_is_kept_though_a_wider_row_is_being_tried(beside, bench, qtbot):
    """The row asks for more than 190 of length: what is typed while that is worked out is the maker's."""
    dialog = NumbersDialog(bench.window)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.activateWindow()
    until(dialog.isActiveWindow)
    beside.set()
    pick(dialog._counts["bass"], 4)
    until(lambda: dialog.settled and dialog.errand.free)
    assert dialog._numbers.length == 190.0
    beside.clear()
    pick(dialog._counts["bass"], 5)
    assert dialog.errand.busy
    fill(dialog._fields["length"], "190", Qt.Key.Key_Tab)
    beside.set()
    until(lambda: dialog.settled and dialog.errand.free)
    assert dialog._numbers.length == 190.0 and dialog._cure.isVisible()


def test_the_number_that_is_meant_comes_back_when_what_was_refused_is_put_back(numbers, qtbot):
    fill(numbers._fields["thickness"], "thick", Qt.Key.Key_Tab)
    assert numbers._fields["thickness"].bad
    pick(numbers._instrument, numbers._instrument.findData("classical"))
    qtbot.waitUntil(lambda: numbers.settled)
    assert numbers._fields["thickness"].text() == "thick"
    numbers._fields["thickness"].setFocus()
    QTest.keyClick(numbers._fields["thickness"], Qt.Key.Key_Escape)
    assert numbers._fields["thickness"].text() == "20 mm" == f"{numbers._numbers.thickness:g} mm"


def test_a_fanned_left_handed_head(numbers, qtbot):
    fill(numbers._fields["scale"], "686", Qt.Key.Key_Tab)
    fill(numbers._fields["scale_treble"], "648", Qt.Key.Key_Tab)
    fill(numbers._fields["slant"], "10", Qt.Key.Key_Tab)
    press(numbers._left_handed)
    pick(numbers._counts["bass"], 4)
    qtbot.waitUntil(lambda: numbers.settled and numbers._answer.layout is not None)
    made = numbers._answer.layout
    assert made.nut.slant == -10.0 and not numbers._through.isVisible() and [s.id for s in made.strings][0] == "1"
    # By hand: six steps from 686 to 648.
    assert {s.id: s.scale_length for s in made.strings}["6"] == pytest.approx(686 - 38 / 6, abs=0.01)
    assert not check(made).spoils


def test_a_number_that_cannot_work_is_said_and_cured(numbers, qtbot):
    field = numbers._fields["length"]
    fill(field, "120", Qt.Key.Key_Tab)
    qtbot.waitUntil(lambda: "take a blank" in numbers._says.text())
    assert not numbers.begin_button.isEnabled() and numbers._cure.isVisible()
    assert field.text() == "120 mm", "with its unit"
    press(numbers._cure)
    qtbot.waitUntil(lambda: numbers.settled)
    assert numbers._says.text() == "No snags." and not numbers._cure.isVisible()
    assert float(field.text().split()[0]) > 120


def test_what_is_no_length_is_said_and_nothing_begins_with_it(numbers, qtbot):
    field = numbers._fields["pitch"]
    fill(field, "4o")
    assert numbers.isVisible() and numbers.layout_made is None, "not begun with the number of before"
    assert "“4o” is not a length" in numbers._says.text() and not numbers.begin_button.isEnabled()
    QTest.keyClick(field, Qt.Key.Key_Escape)
    assert numbers.begin_button.isEnabled() and numbers._says.text() == "No snags."


def test_begin_takes_the_number_that_was_just_typed(numbers, qtbot):
    field = numbers._fields["thickness"]
    typed(field, "18")
    press(numbers.begin_button)
    qtbot.waitUntil(lambda: numbers.layout_made is not None)
    assert numbers.layout_made.blank.thickness == 18.0 and not numbers.isVisible()


def test_enter_shows_what_a_number_makes_before_anything_begins(numbers, qtbot):
    field = numbers._fields["thickness"]
    fill(field, "18")
    assert numbers.isVisible()
    qtbot.waitUntil(lambda: numbers.settled)
    assert numbers.isVisible() and numbers.layout_made is None
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert numbers.layout_made.blank.thickness == 18.0


def test_numbers_become_the_layout(bench, front, monkeypatch, qtbot):
    def by_hand(dialog):
        dialog.show()
        qtbot.waitUntil(lambda: dialog.settled)
        press(dialog.begin_button)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(NumbersDialog, "exec", by_hand)
    press(front.page.ways["numbers"])
    assert bench.layout.name == "From numbers" and not front.shown
    assert bench.window.stage == "tuners"
    frame = bench.layout.tuners[0]
    before = bench.layout
    bench.window.document.hold((frame.id,))
    bench.window.commands.run("remove")
    assert len(bench.layout.tuners) == 5
    bench.window.commands.run("undo")
    assert bench.layout == before


def test_a_dialog_closed_while_it_tries_leaves_nothing_running(bench):
    dialog = NumbersDialog(bench.window)
    dialog.show()
    dialog.reject()
    assert not dialog.errand.busy and not dialog.errand.free
    dialog.deleteLater()
    assert numbers_dialog.tried(dialog._numbers).layout is not None


# ---- dropped files --------------------------------------------------------------
def test_a_dropped_layout_opens(bench, front, tmp_path):
    file = tmp_path / "mine.headstock.json"
    file.write_bytes((samples() / "three-a-side.headstock.json").read_bytes())
    assert drop(bench.window, file)
    assert bench.layout.name == "Three a side, through the face"
    assert bench.window.document.path == file and not front.shown


@pytest.mark.parametrize("name", ["head-in-millimetres.svg", "head-with-slots-and-holes.dxf"])
def test_a_dropped_drawing_is_imported(bench, monkeypatch, name):
    monkeypatch.setattr(ImportDialog, "exec", lambda self: (self._accept(), QDialog.DialogCode.Accepted)[-1])
    assert drop(bench.window, OUTLINES / name)
    assert bench.window.stage == "outline" and bench.layout.about == "From an imported drawing."


def test_another_file_is_refused_in_a_sentence(bench, tmp_path):
    file = tmp_path / "notes.txt"
    file.write_text("oak")
    before = bench.layout
    assert drop(bench.window, file)
    assert bench.window.foot.said.startswith("notes.txt is no layout")
    assert bench.layout is before


def test_what_is_left_to_look_at_is_named(numbers, qtbot):
    pick(numbers._counts["bass"], numbers._counts["bass"].currentIndex() - 3)
    pick(numbers._counts["treble"], numbers._counts["treble"].currentIndex() + 3)
    pick(numbers._mounts["treble"], numbers._mounts["treble"].currentIndex() + 1)
    qtbot.waitUntil(lambda: numbers.settled)
    assert numbers._says.text() == "Snags: 5 notes."
    assert numbers._left.isVisible() and numbers._left.text() == "To look at later: Deeper than the quill travels."
    assert "quill" in numbers._left.toolTip()


def test_whoever_draws_it_is_told_how_for_as_long_as_the_tool_is_in_hand(bench, front):
    """The foot tells of the pointer as soon as it moves; the panel keeps saying what the tool wants."""
    bench.window.tools.hardware.setCurrentIndex(3)
    begin_bare(bench.window)

    def told():
        bench.window.held_page.show()
        return [label.text() for label in below(bench.window.side, QLabel) if label.isVisible()]

    bench.move((20.0, 60.0))
    assert any(HALF in words and DRAWING in words for words in told())
    press(bench.window.tools.mirrored)
    assert any(NODES in words for words in told())
    bench.window.set_tool("hold")
    assert SHAPING in told() and not any(DRAWING in words for words in told())
    bench.window.set_stage("tuners")
    bench.window.set_tool("hole")
    assert bench.window.tools.about in told()
    assert bench.window.tools.hardware.currentIndex() == 0, "of a layout without tuners the first hardware is offered"


def test_both_columns_begin_at_one_height_and_their_words_at_one_edge(front):
    page = front.page
    titles = [label for label in below(page, QLabel) if label.objectName() == "fronttitle"]
    tops = [label.mapTo(page, label.contentsRect().topLeft()).y() for label in titles]
    assert len(tops) == 2 and tops[0] == tops[1]
    assert titles[1].mapTo(page, titles[1].contentsRect().topLeft()).x() == page.cards[0].mapTo(page, page.cards[0].rect().topLeft()).x()
