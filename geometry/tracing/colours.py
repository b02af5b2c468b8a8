"""A coloured picture as one of greys in which wood and what lies behind it are farthest apart, shadow or not."""

from __future__ import annotations

import numpy as np

GREY = np.array((0.299, 0.587, 0.114))
"""Shares of red, green and blue in a grey (ITU-R BT.601)."""
GRAIN = 4.0
"""Levels by which each colour strays in any picture (common practice, no source)"""
SHADE = 0.2
"""Part by which the light on wood, and on what is behind it, differs from place to place (common practice, no source)"""
BETTER = 1.5
"""How many times farther apart than in its greys wood and background have to be in the colours of a picture"""
APART = 2.5
"""How many times their spread they have to be apart at the least"""
LEAST = 20
"""Points of either below which nothing is known of its colours"""


def alike(colours: np.ndarray) -> np.ndarray:
    """Those of (n, 3) colours that are near the middle of all: of wood with a bore in it, those of the wood."""
    if not len(colours):
        return colours
    off = np.abs(colours - np.median(colours, axis=0)).max(axis=1)
    return colours[off <= 2.0 * np.median(off) + GRAIN]


def parted(picture: np.ndarray, wood: np.ndarray, behind: np.ndarray) -> np.ndarray | None:
    """(height, width) levels, 192 for the mean of `wood` and 64 for that of `behind`, of a (height, width, 3) picture.

    `wood`, `behind`: (n, 3) colours of places that are known to be one or the other. They are mixed so that both lie far apart
    compared to how either strays (Fisher 1936), light and shadow included. None where the greys of the picture part them
    about as well, or nothing does.
    """
    if min(len(wood), len(behind)) < LEAST:
        return None
    way, spread = _apart(wood, behind)
    apart = float(np.sqrt(way @ np.linalg.solve(spread, way)))
    if apart < APART or apart < BETTER * abs(GREY @ way) / float(np.sqrt(GREY @ spread @ GREY)):
        return None
    return mixed(picture, wood, behind)


def mixed(picture: np.ndarray, wood: np.ndarray, behind: np.ndarray) -> np.ndarray:
    """The levels of `parted`, whether these colours lie far apart or not; they are at least two of each, and not all the same."""
    way, spread = _apart(wood, behind)
    mix = np.linalg.solve(spread, way)
    mix *= 128.0 / (way @ mix)
    return np.clip(picture.astype(np.float32) @ mix.astype(np.float32)
                   + np.float32(128.0 - mix @ (wood.mean(axis=0) + behind.mean(axis=0)) / 2), 0.0, 255.0)


def _apart(wood: np.ndarray, behind: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """From the mean of one to that of the other, and how both stray in the grain and the light, (3, 3)."""
    means = [part.mean(axis=0) for part in (wood, behind)]
    spread = GRAIN**2 * np.eye(3)
    for part, mean in zip((wood, behind), means, strict=True):
        spread = spread + np.cov(part.T) / 2 + SHADE**2 * np.outer(mean, mean) / 2
    return means[0] - means[1], spread
