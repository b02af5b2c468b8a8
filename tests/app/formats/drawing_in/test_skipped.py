"""What was left out of a drawing is counted in the words of the maker, one and many."""

import re
from collections import Counter
from pathlib import Path

import pytest

from app.formats.drawing_in import dxf_walk, svg_tree
from app.formats.drawing_in.skipped import WORDS, damaged, listed

ROOM = Path("app/formats/drawing_in")


@pytest.mark.parametrize(("counts", "words"), [
    ({"hatches": 1, "dimensions": 3}, "3 dimensions, 1 hatch"), ({"solid bodies": 1}, "1 solid body"),
    ({"blocks that the file does not hold": 2}, "2 blocks that the file does not hold"), ({"shapes on paper pages": 1}, "1 shape on paper pages"),
    ({"acad_proxy_entity": 2, "mline": 1}, "2 acad_proxy_entity shapes, 1 mline shape"),
    ({damaged("SPLINE"): 1}, "1 damaged spline shape"), ({damaged("ARC"): 4}, "4 damaged arc shapes"), ({"damaged blocks": 2}, "2 damaged blocks")])
def test_counts_in_words(counts, words):
    assert listed(Counter(counts)) == words


def test_every_key_that_a_reader_counts_has_words_and_no_words_are_left_over():
    used = {*dxf_walk._WORDS.values(), *svg_tree._WORDS.values(), "3-D faces"}
    for file in ROOM.glob("*.py"):
        used |= set(re.findall(r'skipped\["([^"]+)"\]', file.read_text("utf-8")))
    assert used == WORDS.keys()
