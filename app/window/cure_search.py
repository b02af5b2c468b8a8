"""The search for the cures of one layout's snags: in a thread, the worst snag first or the one that the maker looks at."""

from __future__ import annotations

import time
from collections.abc import Iterator

from app.window.background.aside import stand_aside
from geometry.checks import CheckResult, Snag
from geometry.layout import Headstock
from geometry.saying import say

PATIENCE_S = 10.0
"""How long the processor works on cures that nobody has asked for, seconds. A head with a few snags takes a tenth of one."""
SHARE_S = 2.0
"""How long at most on one of them."""


class CureSearch:
    """What is left to be sought, and when to end.

    It ends between two trials once `stopped` is set, and by itself when it has worked for `patience`. A snag that takes
    longer than its share is put aside, so that the others have their turn; one that is `wanted` is sought to the end.
    Between two trials it also stands aside while the hand is at work.
    """

    def __init__(self, layout: Headstock, result: CheckResult, patience: float | None = None, mirrored: bool = False) -> None:
        from geometry.cures import curable  # here and below: a start need not wait for it

        self.layout, self.result = layout, result
        self.mirrored = mirrored
        """whether the twins of what a cure moves follow"""
        self.left = [snag for snag in result.snags if snag.cured is None and curable(snag)]
        """worst first; what is done goes out of it"""
        self.stopped = False
        """by a change of the layout, or by the maker"""
        self.wanted: Snag | None = None
        """sought before all others"""
        self.tried = 0
        """moves"""
        self._all = len(self.left)
        self._patience = PATIENCE_S if patience is None else patience
        self._ends = self._share_ends = 0.0
        self._doing: Snag | None = None

    def at(self) -> str:
        """How far it is, in words."""
        return say("{done} of {snags} snags done, {moves} moves tried", done=self._all - len(self.left), snags=self._all, moves=self.tried)

    def run(self) -> Iterator[tuple[Snag, Snag]]:
        """(snag, the same with its cure settled), in the thread of the search; may be run again for what is left."""
        from geometry.checks import LiveCheck
        from geometry.cures import settle

        checker, turn = LiveCheck(), list(self.left)
        self._ends = time.thread_time() + self._patience
        while not self.stopped and (snag := self.asked_for or next(iter(turn), None)) is not None:
            self._doing, self._share_ends = snag, min(self._ends, time.thread_time() + SHARE_S)
            done = settle(self.layout, self.result, snag, checker, self._ended, self._count, self.mirrored)
            if done is not None:
                self.left.remove(snag)
                yield snag, done
            if (done is not None or self.asked_for is None) and snag in turn:
                turn.remove(snag)
            if time.thread_time() >= self._ends:
                turn.clear()

    @property
    def asked_for(self) -> Snag | None:
        """The snag that is wanted, while its cure is not known."""
        wanted = self.wanted
        return wanted if any(snag is wanted for snag in self.left) else None

    def _ended(self) -> bool:
        """Whether to leave the snag in work: for good, for one that is wanted more, or for those whose turn comes."""
        if stand_aside(lambda: self.stopped):
            return True
        asked = self.asked_for
        return time.thread_time() >= self._share_ends if asked is None else asked is not self._doing

    def _count(self) -> None:
        self.tried += 1
