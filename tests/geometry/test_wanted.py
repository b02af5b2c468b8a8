"""What the strict reader objects to is told in words of the maker: each kind of its sentences, as the library says it today."""

from decimal import Decimal
from typing import Annotated, Literal

import msgspec
import pytest
from msgspec import Meta, Struct

from geometry.layout.parts import Id, ToolId
from geometry.wanted import wanted


class Record(Struct, forbid_unknown_fields=True):
    """One field of each kind."""

    needed: int = 0
    part: Annotated[float, Meta(ge=0.5, lt=2.0)] = 1.0
    above: Annotated[float, Meta(gt=0, le=7)] = 1.0
    word: Annotated[str, Meta(min_length=1, max_length=3)] = "a"
    id: Id = "a"
    tool: ToolId = "a"
    few: Annotated[list[int], Meta(min_length=1, max_length=2)] = []
    pair: tuple[int, int] = (1, 2)
    choice: Literal["mm", "in"] = "mm"
    yes: bool = False
    price: Decimal = Decimal(0)
    jpeg: Annotated[bytes, Meta(min_length=2, max_length=3)] | None = None


@pytest.mark.parametrize(("said", "told"), [
    ('{"part": 0.25}', "Expected a number of at least 0.5"), ('{"part": 2}', "Expected a number below 2"), ('{"above": 0}', "Expected a number above 0"),
    ('{"above": 8}', "Expected a number of at most 7"), ('{"part": "1"}', "Expected a number"), ('{"needed": 1.5}', "Expected a whole number"),
    ('{"word": ""}', "Expected a word"), ('{"word": "abcd"}', "Expected at most 3 letters"), ('{"word": 1}', "Expected words"),
    ('{"id": "a/b"}', "Expected a name: a letter or a digit, then only letters, digits, spaces and _ . - signs"),
    ('{"tool": "a#"}', "Expected a name: a letter or a digit, then only letters, digits, spaces and _ . - / signs"),
    ('{"price": true}', "Expected an amount such as 12.50"), ('{"price": "12,5"}', "Expected an amount such as 12.50"),
    ('{"jpeg": 1}', "Expected a picture (JPEG) in base64"), ('{"jpeg": "%%"}', "Expected a picture (JPEG) in base64"),
    ('{"jpeg": ""}', "Expected a picture (JPEG) in base64"), ('{"jpeg": "QUJDRA=="}', "Expected a picture of at most 3e-06 MB"),
    ('{"above": 1e400}', "Expected a number that is not as long as that"),
    ('{"few": []}', "Expected a list of at least 1 entry"), ('{"few": [1, 2, 3]}', "Expected a list of at most 2 entries"),
    ('{"pair": [1]}', "Expected a list of 2 entries"), ('{"few": 1}', "Expected a list"), ('{"yes": 1}', "Expected true or false"), ("[]", "Expected a record in braces"),
    ('{"choice": "ft"}', "Unknown word `ft`"), ('{"%s": 1}' % ("k" * 61), f"Unknown field `{'k' * 60}…`"), ('{"%s": 1}' % ("k" * 60), f"Unknown field `{'k' * 60}`"),
    ('{"needed": 1,}', "It is not sound JSON: a comma too many (byte 13)"), ("{} {}", "It is not sound JSON: something stands behind its end (byte 4)"),
    ('{"needed" 1}', "It is not sound JSON: something is wrong or missing (byte 10)")])
def test_every_kind_is_told_in_words(said, told):
    with pytest.raises(msgspec.DecodeError) as caught:
        msgspec.json.decode(said, type=Record)
    assert wanted(str(caught.value).partition(" - at ")[0]) == told


def test_what_was_never_heard_comes_as_it_is():
    assert wanted("Something else") == "Something else"
    assert wanted("Expected `uuid`, got `int`") == "Expected `uuid`, got `int`"
