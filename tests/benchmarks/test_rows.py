"""Every row of the benchmarks can be measured; how quick it is decides nothing here."""

import pytest

from tests.benchmarks.groups import GROUPS, ROUNDS, measured
from tests.benchmarks.lines import Line, part
from tests.benchmarks.table import row


@pytest.mark.parametrize("group", GROUPS)
def test_every_row_is_measured_and_told(group: str) -> None:
    lines = list(measured(group, 0))
    assert lines and all(line.times and min(line.times) >= 0 for line in lines)
    assert len({line.name for line in lines}) == len(lines)
    assert not [line.note for line in lines if "REFUSED" in line.note]
    for line in lines:
        assert row(line).startswith(line.name)
    if group == "drag":
        clear, into = lines[:2]
        assert clear.note.endswith("with others in 0 frames")
        assert into.note.endswith(f"with others in {len(into.times)} frames")


def test_every_group_has_its_number_of_rounds() -> None:
    assert set(ROUNDS) == set(GROUPS)


def test_a_part_of_the_times_is_one_of_them() -> None:
    """Nearest rank: of twenty, the p95 is the nineteenth and the median the tenth."""
    times = [float(k) for k in range(20, 0, -1)]
    assert (part(times, 0.95), part(times, 0.5), part([7.0], 0.95)) == (19.0, 10.0, 7.0)


def test_a_row_marks_what_misses_what_is_wanted() -> None:
    slow = row(Line("name", [9.0, 9.0], 8.3, "bare", [3.0], 2.0))
    assert "9.00!" in slow and "3.00!" in slow and "bare (3.00)" in slow
    quick = row(Line("name", [8.0], 8.3, "bare", [8.0], 2.0))
    assert "!" not in quick and "1.00" in quick
