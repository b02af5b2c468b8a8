"""Where the card at the pointer stands, so that it covers nothing of what lies near."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from app.canvas.free_room import Box
from geometry.vectors import Vec2

OFF = 18.0
"""Pixels between the pointer and the card, where nothing is in the way."""
REACHES = (OFF, 44.0, 76.0, 114.0, 158.0)
"""Pixels from the pointer at which a place is sought, the nearest first."""
WAYS = ((1, 1), (1, -1), (-1, 1), (-1, -1), (1, 0), (-1, 0), (0, -1), (0, 1))
"""Where the card stands from the pointer, across and down the screen; the first is the usual one."""
_OFF = np.array([(reach * across, reach * down) for reach in REACHES for across, down in WAYS])
_SHARE = (np.sign(_OFF) - 1) / 2
"""Where the card begins at each of these places: pixels from the pointer, and parts of its own size, as it stands behind the pointer,
before it or with its middle at it."""
HAND = 9.0
"""Half the side of the square about the pointer that stays free, pixels."""
CALM = 0.5
"""A place that is nearer to the pointer by less than this part of the way to it is not worth the jump."""


def card_place(size: Vec2, at: Vec2, room: Vec2, taken: Sequence[Box], last: Vec2 | None) -> Vec2:
    """The card's left upper corner from the pointer, pixels, y down.

    `size` of the card, `at` the pointer in a view of the size `room`, which it may have left; `taken` boxes from the view's left
    upper corner; `last`: the corner in the frame before. Of the places in the view it is the one that covers the fewest boxes,
    among them one near the pointer and near where the card stood. Where the view has no room, the card stays within it.
    """
    wide, high = size
    if last is not None:  # in most frames it stays
        x0, y0 = at[0] + last[0], at[1] + last[1]
        x1, y1 = x0 + wide, y0 + high
        if max(last[0], -last[0] - wide, last[1], -last[1] - high) == OFF and 0 <= x0 and 0 <= y0 and x1 <= room[0] and y1 <= room[1] \
                and not any(left < x1 and right > x0 and top < y1 and bottom > y0 for left, right, top, bottom in taken):
            return last
    places = _OFF + _SHARE * size
    if last is not None:
        places = np.concatenate(((last,), places))
    least = -np.array(at)
    most = np.maximum(np.array(room) - size + least, least)
    places = np.clip(places, least, most)
    x, y = places[:, 0], places[:, 1]
    gaps = np.maximum(np.maximum(x, -x - wide), np.maximum(y, -y - high))
    boxes = np.array([(-HAND + at[0], HAND + at[0], -HAND + at[1], HAND + at[1]), *taken])
    left, right, top, bottom = (boxes - (at[0], at[0], at[1], at[1])).T
    covered = np.count_nonzero((left < x[:, None] + wide) & (right > x[:, None]) & (top < y[:, None] + high) & (bottom > y[:, None]), axis=1)
    cost = gaps if last is None else gaps + CALM * np.hypot(x - last[0], y - last[1])
    best = int(np.lexsort((cost, covered))[0])
    return float(x[best]), float(y[best])
