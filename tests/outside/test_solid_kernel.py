"""Distances between flat-ended cylinders against a solid-modelling kernel (Open CASCADE; see cylinder_pairs.py)."""

import numpy as np
import pytest

from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from tests.outside.cylinder_pairs import KINDS, VALUES, pairs

WITHIN = 1e-5
"""mm; the kernel's own values carry 7 decimals"""


@pytest.fixture(scope="module")
def measured():
    every = pairs()
    found = gaps(Cylinders.made([one for _, one, _ in every]), Cylinders.made([two for _, _, two in every]))
    kernel = np.array([float(line) for line in VALUES.read_text().split()])
    return np.array([kind for kind, *_ in every]), found.distance, kernel


def test_there_are_over_two_thousand_pairs_of_every_kind(measured):
    kinds, distance, kernel = measured
    assert len(kernel) == len(distance) >= 2000
    assert {kind: int((kinds == kind).sum()) for kind in KINDS} == dict.fromkeys(KINDS, 260)
    assert (kernel > 0.01).sum() > 1000


@pytest.mark.parametrize("kind", KINDS)
def test_agrees_with_the_kernel(measured, kind):
    kinds, distance, kernel = measured
    ours, theirs = np.maximum(distance[kinds == kind], 0.0), kernel[kinds == kind]
    assert np.abs(ours - theirs).max() < WITHIN


def test_never_overstates(measured):
    _, distance, kernel = measured
    assert (np.maximum(distance, 0.0) - kernel).max() < 1e-6


def test_overlap_is_where_the_kernel_finds_contact(measured):
    _, distance, kernel = measured
    assert (kernel[distance < -1e-6] < 1e-6).all()
    assert (distance[kernel > 1e-6] > 0).all()
