"""Tuners of one row that are too near each other: the row is spaced wider, and stays a row."""

import pytest

from geometry.checks import check
from geometry.checks.moves import Change
from geometry.cures import apply_cure, settle
from geometry.layout import EdgeRun, Row, RowPlace, Tuner
from tests.geometry.checks.heads import bore, head, pattern, slot

SEAT = pattern("plate", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0), seat=(12.0, 12.0, 10.0))


def row_of(count, spacing):
    """A row along the straight treble edge whose plates are 24 long."""
    return head(tuners=tuple(Tuner(id=f"t{i + 1}", pattern="plate", place=RowPlace(row="row", index=i)) for i in range(count)),
                rows=(Row(id="row", spacing=spacing, run=EdgeRun(side="treble", first=75.0)),), patterns=(SEAT,), slots=(slot(),))


def test_plates_of_a_row_are_spaced_wider():
    layout = row_of(3, 24.2)
    before = check(layout)
    one, two = [snag for snag in before.snags if snag.kind == "seats-overlap"]
    assert one.measured == pytest.approx(0.2) and one.needed == 0.5
    cured = settle(layout, before, one)
    assert cured.move == Change(("rows", "row", "spacing"), 24.2, pytest.approx(24.5)) and cured.cure == "Space row 0.3 mm wider."
    after = apply_cure(layout, cured)
    assert not [snag for snag in check(after).snags if snag.kind == "seats-overlap"], "both pairs at once"
    assert all(isinstance(tuner.place, RowPlace) for tuner in after.tuners)


def test_tuners_of_different_rows_have_none_to_space():
    layout = row_of(2, 24.2)
    apart = head(tuners=(layout.tuners[0], Tuner(id="t2", pattern="plate", place=RowPlace(row="other", index=0))), patterns=(SEAT,),
                 rows=(*layout.rows, Row(id="other", spacing=30.0, run=EdgeRun(side="treble", first=99.2))), slots=(slot(),))
    before = check(apart)
    cured = settle(apart, before, next(snag for snag in before.snags if snag.kind == "seats-overlap"))
    assert not isinstance(cured.move, Change)
