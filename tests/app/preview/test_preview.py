"""The preview: turning pages, zooming, keeping its place when the layout changes."""


import pytest
from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, Qt
from PySide6.QtGui import QImage, QPainter, QWheelEvent
from PySide6.QtWidgets import QApplication

from app.look.theme import DAY, LAMP, use_theme
from app.preview import SheetPreview
from app.preview.page_list import PageModel
from app.printing.page_paint import paint_shapes, shapes_of
from tests.app.sheets.printed import made
from tests.waiting import until


@pytest.fixture
def preview(qtbot):
    widget = SheetPreview()
    qtbot.addWidget(widget)
    widget.resize(900, 700)
    widget.show()
    widget.show_pages(made("plain"))
    return widget


def seen(widget):
    """Let the event loop run until the page is painted as it is shown."""
    widget.view.viewport().grab()
    until(lambda: widget.view.settled)


def darkness(widget, item_x, item_y):
    """Grey of the viewport at a point of the page (mm from its upper left corner)."""
    seen(widget)
    at = widget.view.mapFromScene(QPointF(item_x, item_y))
    image = widget.view.viewport().grab().toImage()
    ratio = image.devicePixelRatio()
    return image.pixelColor(QPoint(round(at.x() * ratio), round(at.y() * ratio))).lightness()


def test_the_cover_comes_first_and_is_fitted(preview):
    assert preview.current == 0
    page = made("plain")[0]
    view = preview.view
    for corner in ((0.0, 0.0), (page.width, page.height)):
        assert view.viewport().rect().contains(view.mapFromScene(QPointF(*corner)))
    assert view.pixels_per_mm * page.height > 0.8 * view.viewport().height()


def test_every_page_is_listed_with_its_number_and_title(preview):
    model = preview.model
    assert model.rowCount() == len(made("plain"))
    assert model.data(model.index(0)) == "1  Cover"
    assert model.data(model.index(3), Qt.ItemDataRole.ToolTipRole) == f"Page 4: {made('plain')[3].title}"
    assert not model.data(model.index(2), Qt.ItemDataRole.DecorationRole).isNull()


def test_pages_are_turned_by_key_and_stop_at_the_ends(preview, qtbot):
    qtbot.keyClick(preview.view, Qt.Key.Key_PageDown)
    qtbot.keyClick(preview.view, Qt.Key.Key_PageDown)
    assert preview.current == 2
    preview.turn(1000)
    assert preview.current == len(made("plain")) - 1
    preview.turn(-1000)
    qtbot.keyClick(preview.view, Qt.Key.Key_PageUp)
    assert preview.current == 0


def test_the_paper_is_white_and_its_ink_dark_in_both_sets_of_colours(preview):
    for theme in (DAY, LAMP):
        use_theme(theme)
        preview.view.follow_theme()
        preview.turn(-1000)
        preview.view.zoom_full_size()
        preview.view.zoom(4.0 / preview.view.pixels_per_mm * 2)
        page = made("plain")[0]
        # The lying check bar begins 18 mm from the left and 19.2 mm from the bottom.
        preview.view.centerOn(68.0, page.height - 19.2)
        assert darkness(preview, 30.0, page.height - 24.0) > 250
        assert min(darkness(preview, 30.0, page.height - 19.2 + d / 20) for d in range(-6, 7)) < 120


def test_full_size_is_as_large_as_on_paper(preview):
    preview.view.zoom_full_size()
    assert preview.view.pixels_per_mm == pytest.approx(preview.view.physicalDpiX() / 25.4)
    assert "100 %" in preview._size.text()


def test_zoom_keeps_what_is_under_the_pointer(preview):
    view = preview.view
    at = QPoint(300, 200)
    before = view.mapToScene(at)
    wheel = QWheelEvent(QPointF(at), view.viewport().mapToGlobal(at), QPoint(), QPoint(0, 240), Qt.MouseButton.NoButton,
                        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False)
    scale = view.pixels_per_mm
    view.wheelEvent(wheel)
    assert view.pixels_per_mm > scale
    after = view.mapToScene(at)
    assert abs(after.x() - before.x()) < 1.0 and abs(after.y() - before.y()) < 1.0


def test_keys_and_buttons_zoom(preview, qtbot):
    view = preview.view
    fitted = view.pixels_per_mm
    qtbot.keyClick(view, Qt.Key.Key_Plus)
    assert view.pixels_per_mm == pytest.approx(fitted * 1.25)
    preview.smaller()
    assert view.pixels_per_mm == pytest.approx(fitted)
    preview.larger()
    qtbot.keyClick(view, Qt.Key.Key_0)
    assert view.pixels_per_mm == pytest.approx(fitted)
    qtbot.keyClick(view, Qt.Key.Key_1)
    assert view.pixels_per_mm == pytest.approx(view.full_size)
    for _ in range(60):
        view.zoom(2.0)
    assert view.pixels_per_mm <= 60.0


def test_a_fitted_page_stays_fitted_while_the_window_grows(preview, qtbot):
    before = preview.view.pixels_per_mm
    preview.resize(1400, 1100)
    qtbot.waitUntil(lambda: preview.view.pixels_per_mm > before * 1.2)


def test_a_changed_layout_keeps_the_page_on_show(preview):
    wrap = [page.title for page in made("plain")].index("Wrap paper")
    preview.turn(wrap)
    preview.show_pages(made("demo"))
    assert made("demo")[preview.current].title == "Wrap paper"
    second = [i for i, page in enumerate(made("demo")) if page.title == "Cards"][1]
    preview.turn(second - preview.current)
    preview.show_pages(made("demo"))
    assert preview.current == second


def test_a_section_that_shares_its_page_on_other_paper_stays_on_show(preview):
    """And one that is on two pages there."""
    shared, apart = made("demo"), made("demo", "Letter")
    for pages, others in ((shared, apart), (apart, shared)):
        for section in ("Cut list and parts", "Strings in the nut"):
            preview.show_pages(pages)
            preview.turn(next(i for i, page in enumerate(pages) if section in page.sections) - preview.current)
            section = pages[preview.current].sections[0]
            preview.show_pages(others)
            assert section in others[preview.current].sections, (section, others[preview.current].title)
    assert [page.title for page in shared] != [page.title for page in apart]


def test_a_page_that_is_gone_gives_way_to_the_cover(preview):
    back = [page.title for page in made("plain")].index("Back paper")
    preview.turn(back)
    preview.show_pages([page for page in made("plain") if page.title != "Back paper"])
    assert preview.current == 0


def test_no_pages_and_the_reason(preview):
    preview.show_message("There is nothing to print yet: the outline crosses itself.")
    assert preview.current == -1 and preview.message.isVisible() and not preview.view.isVisible()
    assert "crosses itself" in preview.message.text()
    preview.turn(1)
    preview.show_pages(made("plain"))
    assert preview.current == 0 and preview.view.isVisible() and not preview.message.isVisible()


def test_very_large_zoom_does_not_keep_a_picture_of_the_page(preview):
    seen(preview)
    picture = preview.view._picture
    before = picture.scale
    preview.view.zoom(20.0)
    seen(preview)
    assert picture.scale == before
    preview.view.fit()
    preview.view.zoom(1.5)
    seen(preview)
    assert picture.scale == pytest.approx(preview.view.pixels_per_mm * preview.devicePixelRatioF())


def test_a_page_painted_in_turns_is_the_page_painted_at_once(preview):
    seen(preview)
    for number in (3, 0):
        preview.turn(number - preview.current)
        preview.view.viewport().grab()
        assert not preview.view.settled and preview.view._picture.image is None, "it waits for the next turn of the event loop"
        seen(preview)
        picture, page = preview.view._picture, preview.model.pages[number]
        whole = QImage(picture.image.size(), picture.image.format())
        whole.fill(Qt.GlobalColor.transparent)
        painter = QPainter(whole)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_shapes(painter, shapes_of(page), page, picture.scale)
        painter.end()
        assert picture.image.convertedTo(whole.format()) == whole


def test_a_zoomed_page_is_stretched_until_it_is_painted_anew(preview):
    seen(preview)
    old = preview.view._picture.image
    preview.view.zoom(1.7)
    QApplication.processEvents()
    assert preview.view._picture.image is old
    seen(preview)
    assert preview.view._picture.image.width() == pytest.approx(1.7 * old.width(), abs=2)


class Resizes(QObject):
    """How often the viewport was resized; stops a view that resizes itself without end."""

    MOST = 40

    def __init__(self, view):
        super().__init__(view)
        self.view, self.count = view, 0
        view.viewport().installEventFilter(self)

    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Resize:
            self.count += 1
            if self.count == self.MOST:
                self.view.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        return False


def test_a_fitted_page_comes_to_rest_in_every_size_of_the_view(preview):
    view = preview.view
    view.setParent(None)
    view.show()
    for height in (300, 553):
        for width in range(220, 420, 4):
            resizes = Resizes(view)
            view.resize(width, height)
            QApplication.processEvents()
            view.viewport().removeEventFilter(resizes)
            assert resizes.count <= 2, f"{width} x {height}"
    view.setParent(preview)


def test_the_list_names_all_that_shares_a_page():
    """Which tile of a paper it is stands in the tip alone."""
    model = PageModel()
    model.set_pages(made("slotted"))
    told = [model.data(model.index(row, 0)) for row in range(model.rowCount())]
    assert told[1] == "2  Cut list and parts + Strings in the nut" and told[-2].endswith("  Hole table + Readings")
    model.set_pages(made("large"))
    assert {model.data(model.index(row, 0)).split("  ")[1] for row in range(model.rowCount())} >= {"Template", "Wrap paper"}
