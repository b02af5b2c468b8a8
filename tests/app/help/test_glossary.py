"""The words of the trade: sorted, each once, each with a sentence and a drawing that exists."""

import pytest

from app.help.glossary import WORDS
from app.help.pictures import picture
from geometry.drawing import Label


def test_words_stand_in_the_order_of_a_dictionary():
    titles = [word.word.casefold() for word in WORDS]
    assert titles == sorted(set(titles))


@pytest.mark.parametrize("word", WORDS, ids=lambda word: word.word)
def test_every_word_is_explained(word):
    assert word.means.endswith(".") and len(word.means) > 20
    marks = picture(word.picture)
    assert bool(marks) == bool(word.picture)
    if marks:
        assert any(isinstance(mark, Label) for mark in marks), "a drawing without words explains nothing"


def test_a_drawing_that_there_is_not_is_an_error():
    with pytest.raises(KeyError):
        picture("no such drawing")
