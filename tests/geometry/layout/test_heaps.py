"""Heaps of features that would take minutes to check are refused with the name of one of them; a long head full of tuners is none."""

from itertools import combinations

import pytest
from msgspec.structs import replace

from geometry.edits import align, set_field
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, FreePlace, Pin, RowPlace, SingleHole, Slot, StraightSlot, heaps, validate
from geometry.layout.heaps import MOST_FEATURES, MOST_MEETINGS, hold_to_no_heap
from tests.geometry.checks.many import many
from tests.property.layouts import DEMO

BARE = replace(DEMO, tuners=(), slots=(), rows=(), pins=())
FACE, SIDE = (next(pattern for pattern in DEMO.patterns if pattern.mount == mount) for mount in ("face", "side"))


def copies(one, count, **places):
    """Copies of a feature under names of their own; what is named is a function of the number of the copy."""
    return tuple(replace(one, id=f"heap {i}", **{name: place(i) for name, place in places.items()}) for i in range(count))


def tuners(count, pattern, place):
    return (*DEMO.tuners, *copies(replace(DEMO.tuners[0], pattern=pattern.id, place=place, string=None), count))


HEAPS = {
    "holes": {"holes": copies(SingleHole(id="h", at=(0.0, 60.0), diameter=5.0), 500, at=lambda i: (0.003 * i, 60.0))},
    "wide holes": {"holes": copies(SingleHole(id="h", at=(0.0, 60.0), diameter=300.0), 500, at=lambda i: (i % 25 * 9.0, i // 25 * 9.0))},
    "pins": {"pins": copies(Pin(id="p", at=(0.0, 60.0)), 500)},
    "slots": {"slots": copies(Slot(id="s", shape=StraightSlot(nut_end=(9.0, 40.0), tip_end=(9.0, 90.0), width=9.0)), 100)},
    "face tuners": {"tuners": tuners(300, FACE, FreePlace(at=(0.0, 80.0)))},
    "side tuners": {"tuners": tuners(300, SIDE, EdgePlace(side="bass", along=80.0))},
    "a place in a row": {"tuners": tuners(300, FACE, RowPlace(row=DEMO.rows[0].id, index=3))},
}


@pytest.mark.parametrize("name", HEAPS)
def test_a_heap_is_refused_and_named(name):
    with pytest.raises(GeometryError, match=r"heaped up about heap \d+ "):
        validate(replace(DEMO, **HEAPS[name]))


def test_more_features_than_any_head_has_are_refused():
    apart = copies(SingleHole(id="h", at=(0.0, 0.0), diameter=1.0), MOST_FEATURES, at=lambda i: (i % 60 * 20.0, i // 60 * 20.0))
    with pytest.raises(GeometryError, match=r"and no more than 3,000 are taken"):
        validate(replace(DEMO, holes=apart))
    one_too_many = len(DEMO.tuners) + len(DEMO.slots) + len(DEMO.pins) + len(DEMO.holes)
    validate(replace(DEMO, holes=apart[one_too_many:]))


@pytest.mark.parametrize("dozens", [1, 16, 64])
def test_a_long_head_full_of_tuners_is_none(dozens):
    hold_to_no_heap(many(dozens))


def test_as_many_may_meet_as_is_said():
    """Every two of 100 holes on one place are 4,950 pairs, of 101 they are 5,050."""
    for count in (100, 101):
        holes = copies(SingleHole(id="h", at=(0.0, 60.0), diameter=5.0), count)
        assert (len(list(combinations(holes, 2))) > MOST_MEETINGS) == (count == 101)
        if count == 101:
            with pytest.raises(GeometryError):
                hold_to_no_heap(replace(BARE, holes=holes))
        else:
            hold_to_no_heap(replace(BARE, holes=holes))


def test_what_stands_apart_is_not_counted(monkeypatch):
    """Bores 3 mm apart, as the margins want: 900 holes of 5 mm every 8 mm meet nothing, every 7.9 mm each its eight neighbours, 3,422 pairs."""
    grid = [(x, y) for x in range(30) for y in range(30)]
    for step, pairs in ((8.0, 0), (7.9, 3422)):
        layout = replace(BARE, holes=tuple(SingleHole(id=f"h {x} {y}", at=(step * x, step * y), diameter=5.0) for x, y in grid))
        monkeypatch.setattr(heaps, "MOST_MEETINGS", pairs)
        hold_to_no_heap(layout)
        if pairs:
            monkeypatch.setattr(heaps, "MOST_MEETINGS", pairs - 1)
            with pytest.raises(GeometryError):
                hold_to_no_heap(layout)


def test_no_edit_leaves_a_heap_that_could_not_be_opened_again():
    """Brought to one x 120 holes stand in six heaps of twenty; brought to one y as well they would be one heap."""
    holes = tuple(SingleHole(id=f"h {x} {y}", at=(9.0 * x, 9.0 * y), diameter=5.0) for x in range(20) for y in range(6))
    layout = validate(replace(BARE, holes=holes))
    squeezed = align(layout, [hole.id for hole in holes], "x")
    assert len({hole.at for hole in squeezed.holes}) == 6
    with pytest.raises(GeometryError, match="heaped up about h"):
        align(squeezed, [hole.id for hole in holes], "y")
    with pytest.raises(GeometryError, match="or lower the margins"):
        set_field(layout, ("margins", "bore_bore"), 200.0)
