"""Small checkouts for the tests of set-up."""

from pathlib import Path

import pytest

from tests.setup.checkout import Checkout, tiny_wheel


@pytest.fixture(scope="session")
def wheels(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder of tiny packages, all that the small checkouts can install."""
    folder = tmp_path_factory.mktemp("wheels")
    for name, version in (("tiny", "1.0"), ("tiny", "1.1"), ("tiny-extra", "1.0")):
        tiny_wheel(folder, name, version)
    return folder


@pytest.fixture
def checkout(tmp_path: Path, wheels: Path) -> Checkout:
    """A small checkout on a bare machine."""
    return Checkout(tmp_path / "a checkout", wheels)
