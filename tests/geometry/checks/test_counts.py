"""How much is measured, counted and not timed: it grows with the number of tuners, and a move measures its neighbourhood alone."""

import pytest
from msgspec.structs import replace

from geometry.checks import LiveCheck, check, nut_line, solid_pairs
from geometry.layout import FreePlace
from geometry.solids import distance
from tests.geometry.checks.many import many


@pytest.fixture
def counted(monkeypatch):
    """Pairs of solids whose gap is asked for, and of these the ones that no closed form decides."""
    counts = {"asked": 0, "searched": 0}
    gaps, certified = solid_pairs.gaps, distance.certified

    def counting(a, b, beyond):
        counts["asked"] += len(a)
        return gaps(a, b, beyond)

    def searching(a, *others, **more):
        counts["searched"] += len(a)
        return certified(a, *others, **more)

    monkeypatch.setattr(solid_pairs, "gaps", counting)
    monkeypatch.setattr(distance, "certified", searching)
    return counts


def _counts_of(counted, act):
    counted.update(asked=0, searched=0)
    act()
    return dict(counted)


def test_pairs_measured_grow_with_the_tuners(counted):
    first = _counts_of(counted, lambda: check(many(1)))
    for dozens in (4, 16):
        grown = _counts_of(counted, lambda dozens=dozens: check(many(dozens)))
        for kind, count in grown.items():
            assert count <= 1.2 * dozens * max(first[kind], 1)


def _moved(head, at, by):
    tuner = head.tuners[at]
    place = FreePlace(at=(tuner.place.at[0], tuner.place.at[1] + by))
    return replace(head, tuners=(*head.tuners[:at], replace(tuner, place=place), *head.tuners[at + 1:]))


@pytest.mark.parametrize("dozens", [1, 4, 16])
def test_a_move_measures_its_neighbourhood_alone(counted, dozens):
    head = many(dozens)
    at = next(i for i in range(6 * dozens, 12 * dozens) if isinstance(head.tuners[i].place, FreePlace))
    live = LiveCheck()
    live.check(head)
    # Its own drillings among themselves, its buttons, and those of the four tuners about it: none of these where all are clear.
    for by, least in ((0.5, 0), (20.0, 1)):
        after = _moved(head, at, by)
        counts = _counts_of(counted, lambda after=after: live.check(after))
        assert least <= counts["asked"] <= 80 and counts["searched"] <= 12
        assert _counts_of(counted, lambda after=after: live.check(after))["asked"] == 0
        assert live.check(after) == check(after)


def test_nothing_moved_measures_nothing(counted):
    head = many(2)
    live = LiveCheck()
    result = live.check(head)
    counts = _counts_of(counted, lambda: live.check(replace(head, name="another name")))
    assert counts == {"asked": 0, "searched": 0}
    assert live.check(replace(head, name="a third")) == result


def test_what_hangs_on_the_outline_alone_is_looked_up_once(monkeypatch):
    """Where its wood ends at the nut line: neither a tuner that moves nor a whole check changes that."""
    clipped = []
    clip = nut_line.shapely.clip_by_rect
    monkeypatch.setattr(nut_line.shapely, "clip_by_rect", lambda *given: clipped.append(1) or clip(*given))
    head = many(1)
    nut_line.wood_at_nut.cache_clear()
    live = LiveCheck()
    for by in (0.0, 0.5, 1.0):
        live.check(_moved(head, 6, by) if isinstance(head.tuners[6].place, FreePlace) else head)
        check(head)
    assert len(clipped) == 1
