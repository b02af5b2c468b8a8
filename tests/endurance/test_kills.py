"""A seeded share of the kills; `python3 -m tests.endurance kills` does 300 and more."""

import os

import pytest

from app.document.leftovers import leftovers
from tests.endurance.kills import MOST_LOST, run

SEEDS = list(range(12))


@pytest.mark.skipif(os.name == "nt", reason="kill -9 is for POSIX")
def test_killed_programs_lose_at_most_two_seconds(qapp, tmp_path):
    losses = run(tmp_path, SEEDS, windows=frozenset({3, 7}), at_once=6)
    assert len(losses) == len(SEEDS) and max(losses) <= MOST_LOST
    assert len({one.file for one in leftovers(tmp_path / "journal")}) >= len(SEEDS) // 3
