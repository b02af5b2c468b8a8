"""A fresh window for each test."""

import pytest

from tests.gui.bench import Bench


@pytest.fixture
def bench(qtbot, tmp_path) -> Bench:
    return Bench(qtbot, tmp_path)
