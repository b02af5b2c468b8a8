"""What was noticed in a drawing: all of it, or how much more there is."""

import pytest
from msgspec.structs import replace

from app.window.importing.told import MOST, noticed
from tests.app.formats.drawing_in.reading import read_svg

READ = read_svg('<polygon points="30,100 70,100 85,60 85,5 15,5 15,60"/>')


@pytest.mark.parametrize(("more", "last"), [(0, "Sentence 11."), (1, "1 more thing was noticed in the drawing."), (5, "5 more things were noticed in the drawing.")])
def test_of_more_sentences_than_are_shown_the_number_is_told(more, last):
    read = replace(READ, warnings=tuple(f"Sentence {k}." for k in range(MOST + more)))
    told = noticed(read, read)
    assert told[:MOST] == [f"Sentence {k}." for k in range(MOST)] and told[-1] == last
