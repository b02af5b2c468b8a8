"""Files as earlier programs wrote them open forever. They are never written anew: a file that no longer opens needs a migration."""

from pathlib import Path

import pytest

from app.formats import headstock
from geometry.checks import check

VERSIONS = sorted((Path(__file__).parent / "versions").glob("*.headstock.json"))


def test_there_is_a_file_of_every_version():
    assert [path.name for path in VERSIONS] == [f"version-{number}.headstock.json"
                                               for number in range(1, headstock.FORMAT + 1)]


@pytest.mark.parametrize("path", VERSIONS, ids=lambda path: path.name)
def test_it_opens_and_means_what_it_meant(path):
    layout = headstock.read(path)
    result = check(layout)
    assert (result.counts.holes, result.counts.drilling, result.counts.pins) == (36, 42, 2)
    assert headstock.decode(headstock.encode(layout)) == layout
    assert len(layout.strings) == 12 and layout.blank.thickness == 16.0
