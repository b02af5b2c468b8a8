"""What is said of a length that cannot be read."""

import pytest

from geometry.errors import GeometryError
from geometry.units import parse_length


def test_a_refusal_repeats_what_was_typed_on_one_line_and_cut_short():
    with pytest.raises(GeometryError) as caught:
        parse_length("12 furlongs\n" * 300)
    text = str(caught.value)
    assert "12 furlongs 12 furlongs" in text and "…" in text and "\n" not in text and len(text) < 160
