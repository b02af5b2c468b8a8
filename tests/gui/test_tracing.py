"""From a scan to an outline, by hand: laid to scale, moved, hidden, traced, taken back."""

import io
import re

import pytest
from msgspec.structs import replace
from PIL import Image
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel

from app.formats import headstock
from app.formats.picture_in import read_picture
from app.look.descendants import below
from app.window import ask
from app.window.demo import samples
from app.window.tracing import lay_dialog
from app.window.tracing.lay import lay_picture
from app.window.tracing.lay_dialog import LayDialog
from app.window.tracing.trace_dialog import TraceDialog
from geometry.edits import replace_outline
from geometry.errors import GeometryError
from geometry.layout import loop_path
from geometry.tracing.plane_map import PlaneMap
from tests.geometry.routing.specimens import loop
from tests.geometry.tracing.scans import Scan
from tests.gui.hands import drop, fill, typed
from tests.waiting import on_screen, press

HEAD = headstock.read(samples() / "three-a-side.headstock.json")


@pytest.fixture(scope="module")
def scan() -> Scan:
    """A scan of the outline of a sample, 100 points an inch."""
    return Scan(loop_path(HEAD.outline), 100)


@pytest.fixture
def file(scan, tmp_path):
    path = tmp_path / "old head.jpg"
    path.write_bytes(scan.jpeg)
    return path


def drag(board, key: str, to: tuple[float, float]) -> None:
    """Take a mark with the mouse and let go of it at a place of the picture."""
    start, end = board.pixel(board._handles[key].at), board.pixel(to)
    QTest.mousePress(board, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start.toPoint())
    for part in (0.5, 1.0):
        QTest.mouseMove(board, (start + (end - start) * part).toPoint())
        QApplication.processEvents()
    QTest.mouseRelease(board, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, end.toPoint())


def laid_by_hand(scan, qtbot, four: bool = False):
    """What the maker does in the dialog: two points 120 mm apart or a 100 x 120 mm rectangle, and the ends of the nut."""
    def by_hand(dialog):
        dialog.show()
        on_screen(dialog)
        if four:
            press(dialog.four, QPoint(8, dialog.four.height() // 2))
            for key, at in (("1", (-30, 130)), ("2", (30, 130)), ("3", (30, 10)), ("4", (-30, 10))):
                drag(dialog.board, key, scan.at(*at))
            fill(dialog.across, "60", Qt.Key.Key_Tab)
            fill(dialog.along, "120", Qt.Key.Key_Tab)
            assert (dialog.across.text(), dialog.along.text()) == ("60 mm", "120 mm"), "a number is told with its unit"
        else:
            drag(dialog.board, "a", scan.at(0, 10))
            drag(dialog.board, "b", scan.at(0, 130))
            fill(dialog.distance, "120 mm", Qt.Key.Key_Tab)
        drag(dialog.board, "bass", scan.at(-20, 0))
        drag(dialog.board, "treble", scan.at(20, 0))
        assert dialog.lay_button.isEnabled(), dialog._says.text()
        press(dialog.lay_button)
        assert dialog.result() == QDialog.DialogCode.Accepted
        return QDialog.DialogCode.Accepted
    return by_hand


def lay(bench, scan, file, monkeypatch, qtbot, four: bool = False) -> None:
    monkeypatch.setattr(LayDialog, "exec", laid_by_hand(scan, qtbot, four))
    monkeypatch.setattr(ask, "open_file", lambda *asked: file)
    bench.window.commands.run("trace")


@pytest.mark.parametrize("four", [False, True], ids=["two points", "four corners"])
def test_a_scan_is_laid_to_scale_on_the_nut_line(bench, scan, file, monkeypatch, qtbot, four):
    lay(bench, scan, file, monkeypatch, qtbot, four)
    picture = bench.layout.picture
    place = PlaneMap(picture.place)
    # A mark is set to a point of the screen, here about half a millimetre.
    for at in ((0, 10), (0, 130), (30, 60), (-20, 0)):
        assert place(scan.at(*at)) == pytest.approx(at, abs=1.2)
    item = bench.window.canvas.picture.item
    assert item.isVisible() and item.opacity() == pytest.approx(picture.opacity)
    there = item.sceneTransform().map(*scan.at(30, 60))
    assert there == pytest.approx(place(scan.at(30, 60)), abs=1e-6)
    assert b"old head.jpg" in headstock.encode(bench.layout) and str(file.parent).encode() not in headstock.encode(bench.layout)
    assert headstock.decode(headstock.encode(bench.layout)) == bench.layout
    bench.window.commands.run("undo")
    assert bench.layout.picture is None and bench.window.canvas.picture.item is None


def test_a_scan_is_as_large_as_its_scanner_says(bench, scan, tmp_path, monkeypatch, qtbot):
    """Nothing has to be marked but the nut: a mark put by hand would cost what a point of the screen shows."""
    path = tmp_path / "scan.jpg"
    with Image.open(io.BytesIO(scan.jpeg)) as picture:
        picture.save(path, dpi=(100, 100))
    read = read_picture(path)
    dialog = LayDialog(bench.window, path.name, read)
    qtbot.addWidget(dialog)
    dialog.show()
    on_screen(dialog)
    offered = " ".join(dialog.scan.text().replace("&", "").split())
    assert dialog.two.isChecked() and offered == "A scan of 100 points to the inch, as its file says"
    press(dialog.scan, QPoint(8, dialog.scan.height() // 2))
    assert sorted(dialog.board._handles) == ["bass", "treble"] and dialog.distance.isHidden() and dialog.across.isHidden()
    for key, at in (("bass", (-20, 0)), ("treble", (20, 0))):
        dialog.board.place(key, scan.at(*at))
    assert dialog._says.text().startswith("The nut measures 40 mm") and dialog.lay_button.isEnabled()
    place = dialog._map()
    assert place(scan.at(30, 60)) == pytest.approx((30, 60), abs=1e-6)
    monkeypatch.setattr(lay_dialog, "WIDEST_NUT", 39.0)
    dialog.board.place("bass", scan.at(-20, 0))
    dialog._judge()
    assert dialog._says.text() == "The nut would measure 40 mm: check the marks at the nut, or give the size by two points."
    dialog.reject()


def test_where_the_file_tells_no_size_none_is_offered(bench, scan, file, qtbot):
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.scan.isHidden()
    dialog.reject()


def test_the_picture_is_unlocked_moved_turned_hidden_and_taken_away(bench, scan, file, monkeypatch, qtbot):
    lay(bench, scan, file, monkeypatch, qtbot)
    actions = bench.window.actions_
    assert not actions["move picture"].isEnabled()
    actions["picture locked"].trigger()
    actions["move picture"].trigger()
    before = PlaneMap(bench.layout.picture.place)((100.0, 100.0))
    bench.drag((0.0, 60.0), (10.0, 50.0))
    after = PlaneMap(bench.layout.picture.place)((100.0, 100.0))
    assert (after[0] - before[0], after[1] - before[1]) == pytest.approx((10, -10), abs=0.6)
    assert bench.window.document.history.undo_name == "Move the picture"
    placed = bench.layout.picture
    bench.press((0.0, 60.0))
    bench.move((5.0, 60.0))
    bench.key(Qt.Key.Key_Escape)
    assert bench.layout.picture is placed
    actions["picture locked"].trigger()
    assert bench.window.tools.tool == "hold" and bench.layout.picture.locked
    bench.window.activateWindow()
    bench.pump()
    QTest.keyClick(bench.window, Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    assert bench.layout.picture.hidden and not bench.window.canvas.picture.item.isVisible()
    actions["picture shown"].trigger()
    actions["picture fainter"].trigger()
    assert bench.window.canvas.picture.item.opacity() == pytest.approx(0.4)
    actions["picture away"].trigger()
    assert bench.layout.picture is None and not actions["trace outline"].isEnabled()


def put(dialog, scan, distance: float) -> None:
    """Both points and both ends of the nut in their places, the points so far apart."""
    dialog.show()
    on_screen(dialog)
    for key, at in (("a", (0, 10)), ("b", (0, 130)), ("bass", (-20, 0)), ("treble", (20, 0))):
        dialog.board.place(key, scan.at(*at))
    fill(dialog.distance, f"{distance} mm", Qt.Key.Key_Tab)


def test_a_nut_that_no_layout_has_is_refused_while_the_marks_are_there(bench, scan, file, qtbot):
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    qtbot.addWidget(dialog)
    put(dialog, scan, 6000)
    assert dialog._says.text() == "The nut would measure 2000 mm: check the length that was typed and the marks at the nut."
    assert not dialog.lay_button.isEnabled()
    put(dialog, scan, 120)
    assert dialog.lay_button.isEnabled()
    dialog.reject()


def test_a_layout_that_begins_with_another_nut_than_the_picture_says_so(bench, scan, file, monkeypatch):
    def wide(dialog):
        put(dialog, scan, 600)
        dialog._accept()
        return dialog.result()

    monkeypatch.setattr(LayDialog, "exec", wide)
    bench.window.front.show()
    lay_picture(bench.window, file)
    assert bench.layout.picture is not None and bench.layout.nut.width == 90
    assert any("The nut in it measures 200 mm, but 90 mm is the nearest" in label.text() for label in below(bench.window.foot, QLabel))


def test_a_mark_that_is_put_back_still_has_to_be_placed(bench, scan, file, qtbot):
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    qtbot.addWidget(dialog)
    dialog.show()
    on_screen(dialog)
    start = dialog.board.pixel(dialog.board._handles["a"].at).toPoint()
    QTest.mousePress(dialog.board, Qt.MouseButton.LeftButton, pos=start)
    QTest.mouseMove(dialog.board, start + QPoint(40, 40))
    assert "A" not in dialog._to_place()
    QTest.keyClick(dialog.board, Qt.Key.Key_Escape)
    QTest.mouseRelease(dialog.board, Qt.MouseButton.LeftButton, pos=start + QPoint(40, 40))
    assert "A" in dialog._to_place() and dialog.isVisible()
    dialog.reject()


def test_the_outline_is_proposed_and_taken_as_one_step(bench, scan, file, monkeypatch, qtbot):
    lay(bench, scan, file, monkeypatch, qtbot)
    before = bench.layout
    said = []

    def by_hand(dialog):
        dialog.show()
        qtbot.waitUntil(lambda: dialog.take_button.isEnabled())
        said.append(dialog._says.text())
        begun = dialog._at
        QTest.keyClick(dialog.board, Qt.Key.Key_Return)
        assert dialog._at == pytest.approx(begun), "Enter on the picture presses where the head is sought, not in the picture's middle"
        qtbot.waitUntil(lambda: dialog.take_button.isEnabled() and not dialog.errand.busy)
        QTest.keyClick(dialog.tolerance, Qt.Key.Key_Down)
        QTest.keyClick(dialog.tolerance, Qt.Key.Key_Down)
        dialog.tolerance.activated.emit(dialog.tolerance.currentIndex())
        qtbot.waitUntil(lambda: dialog.take_button.isEnabled() and not dialog.errand.busy)
        said.append(dialog._says.text())
        press(dialog.take_button)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(TraceDialog, "exec", by_hand)
    bench.view.look_at(400.0, 400.0)
    bench.window.commands.run("trace outline")
    x0, y0, x1, y1 = loop_path(bench.layout.outline).box
    assert bench.view.shows(x0, y0) and bench.view.shows(x1, y1), "the whole of what was traced is seen"
    fine, coarse = (int(re.match(r"(\d+) nodes", text).group(1)) for text in said)
    assert coarse <= fine + 1 and fine <= 60, "the line is followed piece by piece, so one node more may come of it"
    assert re.search(r"no more than 0\.\d\d mm", said[0])
    # The outline is known: tolerance 0.5 mm, and the marks were set with a hand to about 1 mm.
    traced, true = loop_path(bench.layout.outline).flatten(0.02), loop_path(HEAD.outline).flatten(0.02)
    from shapely import LineString, hausdorff_distance
    assert hausdorff_distance(LineString(traced), LineString(true)) < 2.0
    bench.window.commands.run("undo")
    assert bench.layout is before


def test_a_dropped_picture_on_the_front_page_begins_a_layout_to_trace_into(bench, scan, file, monkeypatch, qtbot):
    bench.window.front.show()
    monkeypatch.setattr(LayDialog, "exec", laid_by_hand(scan, qtbot))
    assert drop(bench.window, file)
    qtbot.waitUntil(lambda: bench.layout.picture is not None)
    assert bench.layout.name == "old head" and bench.window.stage == "outline" and not bench.window.front.shown
    # The nut is taken from the picture; the marks were set with a hand to about 1 mm.
    assert bench.layout.nut.width == pytest.approx(HEAD.nut.width, abs=2.0) and bench.layout.nut.width != 43.0


def test_who_stays_with_the_layout_that_is_open_keeps_the_marks_on_the_picture(bench, scan, file, monkeypatch, qtbot):
    """Unsaved work is asked about as the picture is to be laid: on Cancel the marks are where they were put."""
    bench.window.document.apply("Rename", replace(bench.layout, name="unsaved"))
    before, answers = bench.layout, ["cancel", "discard"]
    monkeypatch.setattr(ask, "save_first", lambda *_: answers.pop(0))
    by_hand = laid_by_hand(scan, qtbot)

    def twice(dialog):
        with pytest.raises(AssertionError, match="Accepted"):
            by_hand(dialog)
        assert dialog.isVisible() and bench.layout is before and answers == ["discard"]
        press(dialog.lay_button)
        return dialog.result()
    bench.window.front.show()
    monkeypatch.setattr(LayDialog, "exec", twice)
    assert drop(bench.window, file)
    qtbot.waitUntil(lambda: bench.layout.picture is not None)
    assert bench.layout.name == "old head" and not answers


def test_what_is_no_picture_is_said_and_changes_nothing(bench, tmp_path, monkeypatch):
    file = tmp_path / "letter.png"
    file.write_text("Dear maker")
    said = []
    monkeypatch.setattr(ask, "warn", lambda parent, title, text: said.append(text))
    monkeypatch.setattr(ask, "open_file", lambda *asked: file)
    before = bench.layout
    bench.window.commands.run("trace")
    assert said == ["letter.png is no picture that can be read: save it as JPEG or PNG."]
    assert bench.layout is before


def test_a_size_that_cannot_be_read_is_not_laid_with_the_one_before(bench, scan, file, qtbot):
    """A picture laid to a wrong size makes a head of a wrong size."""
    from app.formats.picture_in import read_picture
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    dialog.show()
    on_screen(dialog)
    for key in ("a", "b", "bass", "treble"):
        x, y = dialog._at[key]
        drag(dialog.board, key, (x + 40, y + 20))
    typed(dialog.distance, "12o mm")
    QTest.mouseClick(dialog.lay_button, Qt.MouseButton.LeftButton)
    assert dialog.distance.hasFocus(), "not Cancel, where Enter would throw the marks away"
    QTest.keyClick(dialog.distance, Qt.Key.Key_Return)
    assert dialog.isVisible() and dialog.picture is None
    assert "is not a length" in dialog._says.text() and not dialog.lay_button.isEnabled()
    press(dialog.four, QPoint(8, dialog.four.height() // 2))
    assert dialog._says.text() == "Still to be put in their places: corner 1, corner 2, corner 3 and corner 4.", "the distance is not asked for here"
    press(dialog.two, QPoint(8, dialog.two.height() // 2))
    fill(dialog.distance, "120 mm", Qt.Key.Key_Tab)
    QTest.keyClick(dialog.distance, Qt.Key.Key_Return)
    assert dialog.picture is not None and dialog._lengths["distance"] == 120.0
    dialog.deleteLater()


def test_nothing_is_measured_between_marks_that_nobody_has_put_anywhere(bench, scan, file, qtbot):
    from app.formats.picture_in import read_picture
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    dialog.show()
    on_screen(dialog)
    for key, at, still in (("a", (0, 10), "A, B, the bass"), ("b", (0, 130), ": B, the bass"), ("bass", (-20, 0), ": the bass"),
                           ("treble", (20, 0), "in its place: the treble end of the nut.")):
        assert still in dialog._says.text() and not dialog.lay_button.isEnabled()
        drag(dialog.board, key, scan.at(*at))
    # 100 mm are asked for between points 120 apart: a nut of 40 measures 33, and the layout has another.
    nut = dialog.nut_width
    assert nut == pytest.approx(40 / 1.2, abs=3.0) and dialog.lay_button.isEnabled()
    assert re.match(rf"The nut measures 3\d(\.\d)? mm \(in the layout it is {bench.layout.nut.width:g} mm wide\), one point", dialog._says.text())
    dialog.close()
    dialog.deleteLater()


def test_marks_are_moved_by_keys(bench, scan, file, qtbot):
    from app.formats.picture_in import read_picture
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    dialog.show()
    board = dialog.board
    board.setFocus()
    start = dialog._at["b"]
    QTest.keyClick(board, Qt.Key.Key_PageDown)
    QTest.keyClick(board, Qt.Key.Key_Right)
    QTest.keyClick(board, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert dialog._at["b"] == pytest.approx((start[0] + 1, start[1] - 10))
    dialog.close()
    dialog.deleteLater()


def test_an_outline_beyond_the_blank_is_seen_whole(bench):
    wide = [(-160.0, 0.0), (160.0, -60.0), (150.0, 420.0), (-150.0, 380.0)]
    bench.window.document.apply("Trace", replace_outline(bench.layout, loop_path(loop(*wide))))
    bench.window.commands.run("fit")
    assert all(bench.view.viewport().rect().contains(bench.pixel(at)) for at in wide)


def test_a_fault_of_the_program_is_raised_though_another_proposal_was_asked_for_meanwhile(bench, scan, file, monkeypatch, qtbot):
    """What the newest wish makes of no interest is a sentence or a stop, never a fault."""
    lay(bench, scan, file, monkeypatch, qtbot)
    dialog = TraceDialog(bench.window, bench.layout.picture)
    dialog._again = True
    dialog._failed(GeometryError("No edge is found."))
    assert "No edge" not in dialog._says.text()
    with pytest.raises(ZeroDivisionError):
        dialog._failed(ZeroDivisionError())
    dialog.reject()


def test_who_works_in_inches_begins_with_their_sheet_and_round_lengths(bench, file, qtbot):
    bench.window.set_unit("in64")
    dialog = LayDialog(bench.window, file.name, read_picture(file))
    qtbot.addWidget(dialog)
    assert dialog.sheets.currentText() == "Letter upright"
    assert [dialog._lengths[key] for key in ("distance", "across", "along")] == pytest.approx([101.6, 215.9, 279.4])
    told = " ".join(label.text() for label in below(dialog, QLabel))
    assert '5/8" lower, seen from 32",' in told and "16 mm" not in told
