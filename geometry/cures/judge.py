"""What a trial has done: whether the snag is gone, and what came of it elsewhere."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from geometry.checks import Snag
from geometry.checks.snags import NOTE, SPOILS, TIGHT

_SAME = 1e-4
"""mm: a snag that lacks more than this beyond what it lacked has got worse"""

Key = tuple[str, tuple[str, ...]]


class Verdict(Struct, frozen=True):
    """`gone`: the snag is; `lacks`: what is left of it, in its unit; `worse`: snags that are new or have grown.

    `mild`: all of those are new and no more than tight.
    """

    gone: bool
    lacks: float
    worse: tuple[Snag, ...]
    mild: bool

    @property
    def clean(self) -> bool:
        """Nothing else has suffered."""
        return not self.worse


class Before:
    """The snags of a layout before a move, ready to be compared with those after it."""

    def __init__(self, snags: Sequence[Snag]) -> None:
        self._all = snags
        self._known = _by_key(snags)

    def judged(self, snag: Snag, after: Sequence[Snag]) -> Verdict:
        """The verdict on a move meant for one of these snags."""
        own = (snag.kind, snag.between)
        rest = sorted((one.lacks for one in self._all
                       if (one.kind, one.between) == own and one is not snag), reverse=True)
        left = sorted((one.lacks for one in after if (one.kind, one.between) == own), reverse=True)
        gone = len(left) <= len(rest) and all(a <= b + _SAME for a, b in zip(left, rest, strict=False))
        new: list[Snag] = []
        grown: list[Snag] = []
        for key, found in _by_key(after).items():
            known = self._known.get(key, [])
            if key != own:
                new += found[len(known):]
                grown += [now for now, then in zip(found, known, strict=False) if _grown(now, then)]
        mild = not grown and all(snag.grade == TIGHT for snag in new)
        return Verdict(gone, left[0] if left else 0.0, (*grown, *new), mild)


def _grown(now: Snag, then: Snag) -> bool:
    return now.lacks > then.lacks + _SAME or (now.grade == SPOILS and then.grade == TIGHT)


def _by_key(snags: Sequence[Snag]) -> dict[Key, list[Snag]]:
    """Snags that are more than notes by kind and features, worst first."""
    found: dict[Key, list[Snag]] = {}
    for snag in snags:
        if snag.grade != NOTE:
            found.setdefault((snag.kind, snag.between), []).append(snag)
    for alike in found.values():
        alike.sort(key=lambda snag: (snag.grade == SPOILS, snag.lacks), reverse=True)
    return found
