"""The ramp that is proposed: sound, or refused with the reason. Strings that fall by 5 in 12 over a slot 12 wide."""

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.edits import set_field
from geometry.edits.hand_cuts import propose_ramp
from geometry.errors import GeometryError
from geometry.layout import Headstock, Nut, SingleHole
from geometry.layout.slots import Ramp, slot_path
from geometry.lengths import speaking
from geometry.solids.ramps import below, ramp_cut
from geometry.solids.walls import Wall
from tests.geometry.checks.cases_strings import _DROP, _TWO, _dive


def wants(cover: float, cut: float = 4.0, **parts: object) -> Headstock:
    """A string that cuts so much into the nut end at y = 54, in 16 mm of wood of which `cover` has to stay below."""
    layout = _dive(_DROP - cut)
    return replace(layout, margins=replace(layout.margins, side_cover=cover), **parts)


def ramp_of(layout: Headstock) -> Ramp:
    return layout.slots[0].ramp


def sound(layout: Headstock) -> bool:
    return not [s for s in check(layout).snags if "ramp" in s.kind or s.kind == "string-to-nut-end"]


def test_the_shortest_where_that_leaves_enough() -> None:
    made = propose_ramp(wants(8.0), "slot")
    # 4 mm and 13/12 of half a string and its air: begins where the string's skin leaves the face, 12/5 of that away.
    assert ramp_of(made) == Ramp(length=12.2, depth=5.1) and sound(made)
    cut = ramp_cut(made.slots[0])
    # Beside the round end it goes on for half the slot's width.
    assert below(made.slots[0], cut, Wall(slot_path(made.slots[0])), 16.0) == pytest.approx(16 - 5.1 * (12.2 + 6) / 12.2)


@pytest.mark.parametrize(("cover", "length", "width"), [(9.0, 22.1, None), (10.0, 42.0, None), (10.5, 42.0, 10.0)])
def test_a_longer_or_narrower_one_where_the_shortest_goes_too_deep(cover: float, length: float, width: float | None) -> None:
    layout = wants(cover)
    assert not sound(replace(layout, slots=(replace(layout.slots[0], ramp=Ramp(length=12.2, depth=5.1)),)))
    made = propose_ramp(layout, "slot")
    assert ramp_of(made) == Ramp(length=length, depth=5.1, width=width) and sound(made)


def test_why_none_is_sound() -> None:
    with pytest.raises(GeometryError, match="less than 12 mm of wood to the back"):
        propose_ramp(wants(12.0), "slot")
    with pytest.raises(GeometryError, match='less than 0.472" of wood to the back'), speaking("in"):
        propose_ramp(wants(12.0), "slot")
    # A hole in the very way of the string: no width and no length goes round it.
    blocked = wants(3.0, holes=(SingleHole(id="in the way", at=(0.0, 48.0), diameter=6.0),))
    with pytest.raises(GeometryError, match="No ramp frees the strings of slot and leaves enough wood. The best would be .* long and .*: ") as found:
        propose_ramp(blocked, "slot")
    assert "in the way" in str(found.value) and "\x01" not in str(found.value)
    with pytest.raises(GeometryError, match="a is no slot"):
        propose_ramp(blocked, "a")


def test_the_cure_of_a_string_over_the_nut_end_is_sound_too() -> None:
    snag, = (s for s in check(wants(9.0)).snags if s.kind == "string-to-nut-end")
    assert "a ramp 22.1 mm long and 5.1 mm deep" in snag.cure
    snag, = (s for s in check(wants(12.0)).snags if s.kind == "string-to-nut-end")
    assert "less than 12 mm of wood to the back" in snag.cure


def test_none_helps_a_string_that_runs_into_the_wall_beside() -> None:
    """From 25 mm beside the slot, 12 wide, a string comes below the face before it is over the slot's side."""
    layout = set_field(_dive(10.0), ("tuners", "a", "place", "along"), 110.0)
    layout = replace(layout, nut=Nut(height=10.0, spread=50.0), strings=_TWO)
    assert [snag.kind for snag in check(layout).snags if snag.kind.startswith("string-to")] == ["string-to-wall"]
    with pytest.raises(GeometryError, match="these run into its wall beside the nut end, where no ramp helps: 1\\."):
        propose_ramp(layout, "slot")
