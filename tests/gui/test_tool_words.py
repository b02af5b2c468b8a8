"""Words beside the signs of the tool bar, while there is room for them."""

from app.window.sign_button import SignButton


def test_each_sign_is_asked_once_how_wide_it_wants_to_be(bench, monkeypatch):
    """To answer takes long, and it is asked at each step of the window's edge, where four ways to show words are weighed."""
    asked, own = [], SignButton.rooms
    monkeypatch.setattr(SignButton, "rooms", lambda button: asked.append(button) or own(button))
    bench.window.tools._fit_words()
    assert asked and len(asked) == len(set(asked))
