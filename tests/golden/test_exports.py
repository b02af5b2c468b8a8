"""Exports stay the same to the byte until somebody means to change them."""

import pytest

from tests.golden.exports import FOLDER, exports


@pytest.mark.parametrize("name", ["plain-template.svg", "plain-holes.csv", "marks-entities.dxf.txt"])
def test_an_export_is_what_it_was(name):
    assert exports()[name] == (FOLDER / name).read_bytes(), "if this is wanted: python -m tests.golden.exports"


def test_every_export_is_compared():
    kept = {path.name for path in FOLDER.iterdir() if path.suffix not in (".py", "") and path.name != "__pycache__"}
    assert kept == set(exports())
