"""Hardware copied, removed and given other bores."""

import pytest

from geometry.edits.hardware import add_bore, copy_pattern, remove_bore, remove_pattern
from geometry.errors import GeometryError
from tests.geometry.checks.heads import FACE, bore, face, head, pattern

TWO = pattern("two", "face", bore(), bore("screw", 2.0, "back", (9.0, 0.0), 8.0))


def test_bores_come_last_and_go_by_their_place_in_the_list():
    layout = head(tuners=(face("a", 0.0, 90.0, TWO),), patterns=(TWO,))
    more = add_bore(layout, "two").pattern("two")
    assert more.bores[:2] == TWO.bores and (more.bores[2].role, more.bores[2].surface) == ("screw", "back")
    assert [remove_bore(layout, "two", k).pattern("two").bores for k in (0, 1)] == [TWO.bores[1:], TWO.bores[:1]]
    with pytest.raises(GeometryError, match="face needs at least one bore"):
        remove_bore(head(patterns=(FACE,)), "face", 0)


def test_what_a_tuner_has_is_copied_and_not_removed():
    layout = head(tuners=(face("a", 0.0, 90.0, TWO),), patterns=(TWO, FACE))
    copied = copy_pattern(layout, "two").patterns
    assert len(copied) == 3 and len({one.id for one in copied}) == 3 and copied[-1].bores == TWO.bores
    assert remove_pattern(layout, "face").patterns == (TWO,)
    with pytest.raises(GeometryError, match="a uses the hardware two"):
        remove_pattern(layout, "two")
