"""A button whose words may go on in another row."""

import pytest

from app.look.wrapping import WrappingButton


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_a_button_tells_a_size_before_it_has_words(qtbot):
    """The toolkit may ask while the button is being made."""
    button = WrappingButton("Kopfplattenvorderseitenbohrungen setzen")
    qtbot.addWidget(button)
    with_words = button.minimumSizeHint()
    del button.words
    assert 0 < button.minimumSizeHint().width() < with_words.width()
    assert 0 < button.sizeHint().width() < with_words.width()
