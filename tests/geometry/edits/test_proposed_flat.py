"""A flat is proposed for a tuner on the edge, and for nothing else."""

import pytest

from geometry.edits.hand_cuts import propose_flat
from geometry.errors import GeometryError
from tests.geometry.edits.heads import demo


@pytest.mark.parametrize("id", ["bass slot", "nut pin", "no such thing"])
def test_what_is_no_tuner_is_refused_in_a_sentence(id):
    with pytest.raises(GeometryError, match=id):
        propose_flat(demo(), id)
