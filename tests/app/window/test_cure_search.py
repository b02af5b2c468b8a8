"""The search for cures ends by itself, seeks to its end what is asked for, and leaves nothing of it out."""

import math

import pytest
from msgspec.structs import replace

from app.window.cure_search import CureSearch
from app.window.demo import demo
from geometry.checks import check
from geometry.cures import with_cures
from geometry.edits import move_features

SPOILT = move_features(demo(), ("treble side 2",), (0.0, -9.0))
RESULT = check(SPOILT)


def search(patience: float = math.inf) -> CureSearch:
    return CureSearch(SPOILT, RESULT, patience)


def test_it_finds_what_is_found_without_a_window():
    """The same, and all of it, whatever it is asked for first."""
    cured = {snag.where: snag for snag in with_cures(SPOILT, RESULT).snags}
    for wanted in (None, search().left[-1]):
        seeking = search()
        seeking.wanted = wanted
        found = list(seeking.run())
        assert found and not seeking.left
        assert wanted is None or found[0][0] is wanted
        assert all(done == next(one for one in cured.values() if (one.kind, one.between) == (snag.kind, snag.between))
                   for snag, done in found)
        assert seeking.tried >= len(found)


def test_without_patience_it_seeks_what_is_asked_for_alone():
    seeking = search(0.0)
    assert list(seeking.run()) == [] and seeking.left == search().left
    wanted = seeking.left[1]
    seeking.wanted = wanted
    [(snag, done)] = seeking.run()
    assert snag is wanted and done.cured and wanted not in seeking.left


def test_run_again_it_goes_on_with_what_is_left():
    seeking = search(0.0)
    first = []
    while seeking.left:
        seeking.wanted = seeking.left[-1]
        first += seeking.run()
    assert len(first) == len(search().left)


def test_what_is_asked_for_comes_before_what_is_in_work():
    seeking = search()
    turn = seeking.run()
    next(turn)
    seeking.wanted = seeking.left[-1]
    assert next(turn)[0] is seeking.wanted


def test_it_ends_when_it_is_stopped():
    seeking = search()
    turn = seeking.run()
    next(turn)
    seeking.stopped = True
    assert list(turn) == [] and seeking.left


@pytest.mark.parametrize("result", [check(demo()), replace(RESULT, snags=())])
def test_where_nothing_is_to_be_sought_it_ends_at_once(result):
    seeking = CureSearch(demo(), result)
    assert list(seeking.run()) == [] and seeking.tried == 0 and "0 of 0" in seeking.at()
