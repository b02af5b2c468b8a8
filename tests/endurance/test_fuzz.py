"""A seeded share of the broken files; `python3 -m tests.endurance fuzz` reads 20,000."""

import sys

import pytest

from tests.endurance.fuzz import run


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the child is held down as Linux does it")
def test_broken_files_end_in_a_layout_or_a_sentence(tmp_path):
    found = run(tmp_path, seed=7, count=260)
    assert found.bad == []
    assert found.cases == 260 and sum(found.ends.values()) == 260
    assert any(end.endswith("read") for end in found.ends) and any(end.endswith("refused") for end in found.ends)
