"""Refusals in the maker's unit: what they name is enough when it is typed, rounded as it is told."""

import re

import pytest
from msgspec.structs import replace

from geometry.beginning import Numbers, Refused, begin
from geometry.lengths import speaking
from geometry.units import parse_length

CASES = [  # numbers that are refused, the words before the number that would do, and its field
    (replace(Numbers(), bass=6, treble=0), r"take a blank (\S.*?\") long", "length"),
    (replace(Numbers(), bass=6, treble=0), r"set them (\S.*?\") apart", "pitch"),
    (replace(Numbers(), pitch=12.0), r"need (\S.*?\")\.", "pitch"),
    (replace(Numbers(), thickness=5.0), r"it takes (\S.*?\")\.", "thickness"),
    (replace(Numbers(), nut_width=15.0), r"it takes (\S.*?\")\.", "nut_width"),
    (replace(Numbers(), width=40.0), r"make it (\S.*?\") wide", "width")]


@pytest.mark.parametrize("unit", ["in", "in64"])
@pytest.mark.parametrize(("numbers", "pattern", "field"), CASES)
def test_the_number_that_would_do_does_it_when_it_is_typed(unit, numbers, pattern, field):
    with speaking(unit):
        with pytest.raises(Refused) as refused:
            begin(numbers)
        said = str(refused.value)
        assert " mm" not in said
        typed = replace(numbers, **{field: parse_length(re.search(pattern, said)[1], unit)})
        try:
            begin(typed)
        except Refused as again:
            assert again.field != field or field == "pitch", str(again)


def test_in_millimetres_it_is_told_as_it_was_asked():
    with pytest.raises(Refused, match=r"^6 tuners in a row, 30 mm apart, take a blank 224 mm long from the nut line; this one is 190 mm: "
                                      r"make it longer, or set them 23 mm apart\.$"):
        begin(replace(Numbers(), bass=6, treble=0))
