"""The drawing on its way between processes."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.formats.drawing_in.result import DrawingRead, Loop
from app.formats.drawing_in.wire import decode, encode, encode_refusal
from app.formats.errors import FormatError
from geometry.curves import Arc, Cubic, Line, Path
from geometry.joining import Gap

number = st.floats(-1e6, 1e6, allow_nan=False)
point = st.tuples(number, number)


@st.composite
def open_paths(draw):
    """A path of lines, cubics and arcs, each starting where the last one ended."""
    at, segments = draw(point), []
    for kind in draw(st.lists(st.sampled_from("LCA"), min_size=1, max_size=5)):
        to = draw(point.filter(lambda p, at=at: math.dist(p, at) > 1e-3))
        if kind == "L":
            segments.append(Line(at, to))
        elif kind == "C":
            segments.append(Cubic(at, draw(point), draw(point), to))
        else:
            segments.append(Arc.bulging(at, to, draw(st.sampled_from([-2.0, -0.1, 0.3, 1.0]))))
        at = to
    return Path(tuple(segments))


@settings(max_examples=40)
@given(st.lists(open_paths(), max_size=3), st.text(max_size=20), st.lists(st.tuples(number, number, number), max_size=3))
def test_every_number_and_word_survives(paths, text, gaps):
    read = DrawingRead(tuple(Loop(p, "outline", text) for p in paths), tuple(paths), "mm", "guess", False, (text,), (1.5, 2.5), 25.4,
                       tuple(Gap((x, y), size) for x, y, size in gaps))
    assert decode(encode(read)) == read


def test_a_refusal_is_raised_again():
    with pytest.raises(FormatError, match="^No.$"):
        decode(encode_refusal("No."))


@pytest.mark.parametrize("answer", [b"", b"{}", b"null", b"[1]", b'{"read": 3}', b"Traceback", b'{"refusal": 7}'])
def test_anything_else_is_not_an_answer(answer):
    with pytest.raises(ValueError) as caught:
        decode(answer)
    assert not isinstance(caught.value, FormatError)
