"""A button whose words may go on in another row."""

import pytest
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.look.alt_letters import give_letters
from app.look.wrapping import WrappingButton, WrappingCheck, WrappingRadio


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_a_button_tells_a_size_before_it_has_words(qtbot):
    """The toolkit may ask while the button is being made."""
    button = WrappingButton("Kopfplattenvorderseitenbohrungen setzen")
    qtbot.addWidget(button)
    with_words = button.minimumSizeHint()
    del button.words
    assert 0 < button.minimumSizeHint().width() < with_words.width()
    assert 0 < button.sizeHint().width() < with_words.width()


@pytest.mark.qt_log_ignore("This plugin does not support")
@pytest.mark.parametrize("kind", [WrappingButton, WrappingRadio, WrappingCheck])
def test_a_button_that_is_too_narrow_for_its_words_has_them_in_rows_with_its_letter(qtbot, kind):
    page = QWidget()
    qtbot.addWidget(page)
    row = QHBoxLayout(page)
    row.addWidget(button := kind("A rectangle of known size: sheet, ruler, template", page))
    whole = page.sizeHint()
    give_letters(page)
    page.resize(whole.width() // 2, 20)
    page.show()
    qtbot.waitUntil(lambda: page.height() > whole.height())
    assert button.text().replace("\n", " ") == "&A rectangle of known size: sheet, ruler, template" and "\n" in button.text()
    assert button.accessibleName() == "A rectangle of known size: sheet, ruler, template"
    assert button.height() >= 2 * button.fontMetrics().height()
