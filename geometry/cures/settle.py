"""The search for the cheapest single move that cures a snag and spoils nothing else."""

from __future__ import annotations

import heapq
from collections import Counter
from collections.abc import Callable, Sequence

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks import CheckResult, LiveCheck, Snag
from geometry.checks.already import routed
from geometry.checks.in_wood import by_the_wood, in_wood
from geometry.checks.moves import Change, Move, how_far
from geometry.checks.router import OTHER_BIT
from geometry.checks.snags import NOTE, SPOILS, TIGHT
from geometry.checks.words import listed, tenths, up
from geometry.cures.advice import advised
from geometry.cures.carry_out import carried_out, touched
from geometry.cures.to_wood import to_the_wood
from geometry.cures.tracks import Track, tracks
from geometry.cures.words import told
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.names import OUTLINE
from geometry.saying import count, say
from geometry.terms import term

_STEPS = (0.0, 0.1, 0.2, 0.4, 0.8)
_STRIDE, _LONG_STRIDE, _LONG_AFTER = 1.0, 2.0, 8.0
"""mm: how an amount grows beyond the least that could do"""
_PATIENCE = 2
"""A way on which the snag has not become less after so many trials is given up."""
MOST_TRIALS = 300
"""Trials for one snag: about half a second."""


def with_cures(layout: Headstock, result: CheckResult, stop: Callable[[], bool] = lambda: False) -> CheckResult:
    """`result`, which is check(layout), with the cure of every snag settled that is more than a note; from where it is stopped on
    snags are as they were."""
    checker = LiveCheck()
    return replace(result, snags=tuple(settle(layout, result, snag, checker, stop) or snag if curable(snag) else snag
                                       for snag in result.snags))


def curable(snag: Snag) -> bool:
    """Whether a cure of the snag is sought at all; a note carries its advice."""
    return snag.grade != NOTE


def settle(layout: Headstock, result: CheckResult, snag: Snag, checker: LiveCheck | None = None,
           stop: Callable[[], bool] = lambda: False, tried: Callable[[], None] = lambda: None, mirrored: bool = False) -> Snag | None:
    """A snag of `result`, which is check(layout), with its cure; None when stopped.

    `checker` may be one that has checked layouts near this one before: it is quicker. `tried` is called at each move that is tried.
    `mirrored`: the twins of what moves follow.
    """
    layout = by_the_wood(layout)
    search = _Search(layout, Before(result.snags, routed(in_wood(layout, "real"))), snag, checker or LiveCheck(), tried, mirrored)
    if snag.kind in _MADE:
        made = search.to_the_wood()
        if made.move is None and mirrored:  # of two alike the wood may have the other one as it is drawn
            return replace(settle(layout, result, snag, checker, stop, tried), alone=True)
        return made
    ways = tracks(layout, snag, mirrored)
    queue = [(up(max(snag.lacks, 0.1) if snag.unit == "mm" else 0.1) * way.dear, i, 0) for i, way in enumerate(ways)]
    heapq.heapify(queue)
    spare: tuple[Move, Verdict] | None = None
    marked: tuple[int, int, Verdict] | None = None
    while queue and search.trials < MOST_TRIALS:
        if stop():
            return None
        _, i, step = heapq.heappop(queue)
        way, amount = ways[i], search.amount(step)
        if amount > way.farthest:
            continue
        move = way.make(amount)
        verdict = search.trial(i, move)
        if verdict is not None and verdict.gone and verdict.clean:
            return search.cured(*search.least(i, way, step, verdict))
        if verdict is not None and verdict.gone and verdict.work_alone:
            marked = marked or (i, step, verdict)
        elif verdict is not None and verdict.gone and verdict.mild and spare is None and snag.grade == SPOILS:
            spare = move, verdict
        if verdict is not None and search.hopeful(i) and not (marked and verdict.asks_work) and way.make(search.amount(step + 1)) != move:
            heapq.heappush(queue, (search.amount(step + 1) * way.dear, i, step + 1))
    if marked is not None:
        i, step, verdict = marked
        return search.cured(*search.least(i, ways[i], step, verdict))
    return search.cured(*spare) if spare is not None else search.not_cured(bool(ways))


class _Search:
    def __init__(self, layout: Headstock, before: Before, snag: Snag, checker: LiveCheck, tried: Callable[[], None],
                 mirrored: bool) -> None:
        self._tried, self._mirrored = tried, mirrored
        self._layout, self._before, self._snag, self._checker = layout, before, snag, checker
        self._stay = frozenset((*(tuner.id for tuner in layout.tuners if tuner.held), *(hole.id for hole in layout.holes if hole.there)))
        self._least = up(snag.lacks) if snag.unit == "mm" and snag.lacks > 0 else 0.1
        self._lacked: dict[int, list[float]] = {}
        self._in_the_way: Counter[str] = Counter()
        self.trials = 0
        self._farthest = 0.0

    def amount(self, step: int) -> float:
        """The amount of a step: the least that could do, then growing, in tenths of a mm."""
        if step < len(_STEPS):
            return round(self._least + _STEPS[step], 1)
        beyond = _STEPS[-1] + _STRIDE * (step - len(_STEPS) + 1)
        return round(self._least + beyond + max(0.0, beyond - _LONG_AFTER) * (_LONG_STRIDE - _STRIDE), 1)

    def trial(self, i: int, move: Move) -> Verdict | None:
        """What a move on a way does; None when it cannot be made, and where a twin that would follow is to be left where it is, or
        is in the blank already."""
        if self._mirrored and self._stay.intersection(touched(self._layout, move, True)).difference(touched(self._layout, move)):
            return None
        try:
            moved = carried_out(self._layout, move, self._mirrored)
        except GeometryError:
            return None
        self.trials += 1
        self._tried()
        self._farthest = max(self._farthest, how_far(move))
        verdict = self._before.judged(self._snag, self._checker.check(moved).snags)
        self._lacked.setdefault(i, []).append(0.0 if verdict.gone else verdict.lacks)
        if verdict.gone:
            own = move.path[1] if isinstance(move, Change) else move.of
            # In order of their names, so that of several as often in the way the same are told each time.
            self._in_the_way.update(sorted({name for snag in verdict.worse if not _only_work(snag) for name in snag.between if name != own}))
        return verdict

    def hopeful(self, i: int) -> bool:
        """Whether the snag became less on this way in its last trials, or there is nothing to measure it by."""
        seen = self._lacked[i]
        if self._snag.measured is None or len(seen) <= _PATIENCE:
            return True
        return min(seen[-_PATIENCE:]) < min(seen[:-_PATIENCE]) - 1e-6 or seen[-1] == 0.0

    def least(self, i: int, way: Track, step: int, verdict: Verdict) -> tuple[Move, Verdict]:
        """The smallest amount in tenths, between the step before and this one, that still does it as cleanly as this one did."""
        good = self.amount(step)
        low = self.amount(step - 1) if step else 0.0
        best = way.make(good), verdict
        while step and good - low > 0.15:
            middle = round((low + good) / 2, 1)
            move = way.make(middle)
            tried = self.trial(i, move)
            if tried is not None and tried.gone and (tried.clean or not verdict.clean and tried.work_alone):
                good, best = middle, (move, tried)
            else:
                low = middle
        return best

    def to_the_wood(self) -> Snag:
        """The snag of what is drilled or cut otherwise with the move that draws it so, whatever gets tight by that: so it is in the wood.
        Where that spoils the work it has to be made anew, as the advice says."""
        for move in to_the_wood(self._layout, self._snag):
            verdict = self.trial(0, move)
            if verdict is not None and verdict.gone and all(snag.grade == TIGHT for snag in verdict.worse):
                return self.cured(move, verdict)
        return replace(self._snag, cured=self._snag.advice)

    def cured(self, move: Move, verdict: Verdict) -> Snag:
        """The snag with a move that does it, and what becomes tight or has to be marked anew by it."""
        said = told(self._layout, move, self._mirrored)
        if self._snag.kind == _DRILLED:
            said = say("{move}, as it is drilled", move=said)
        if names := sorted({name for snag in verdict.worse if not _only_work(snag) for name in snag.between}):
            said = say("{move}; room beside {names} then gets tight", move=said, names=listed([term(name) for name in names]))
        if any(snag.kind == _MARKS for snag in verdict.worse):
            said = say("{move}; the papers or the template (job book) then have it elsewhere", move=said)
        if any(snag.kind in _MADE and snag.grade == TIGHT for snag in verdict.worse):
            said = say("{move}, going on from what is made already (job book)", move=said)
        said += "."
        if self._snag.kind == _DRILLED:
            said += " " + say("Or tick its step again: at once if it came out as the drawing has it now, else when it is plugged and drilled anew.")
        elif self._snag.kind in _MADE:
            said += " " + (say("Or tick its steps again: at once if it came out as the drawing has it now, else when wood is glued on and it is "
                               "cut anew.") if self._snag.between == (OUTLINE,) else
                           say("Or tick its steps again: at once if it came out as the drawing has it now, else when wood is let in and it is "
                               "cut anew."))
        return replace(self._snag, cured=said, move=move)

    def not_cured(self, tried: bool) -> Snag:
        """The snag with its advice, what was tried in vain, and what stood in the way; where nothing was tried with its advice alone.

        The search is no proof: it follows the ways in `tracks` in steps, so the sentence says how many moves it tried, and how far.
        """
        if not (tried and self.trials):
            return replace(self._snag, cured=advised(self._layout, self._snag))
        own = set(self._snag.between)
        names = [name for name, _ in self._in_the_way.most_common(3) if name not in own][:2] or [
            name for name, _ in self._in_the_way.most_common(2)]
        sentences = [count(self.trials, "The one move that was tried does not do it.", "Of {n} moves that were tried none does it.")
                     if self._farthest == 0 else
                     count(self.trials, "The one move that was tried does not do it.",
                           "Of {n} moves of one part that were tried, up to {far} mm, none does it.",
                           far=tenths(self._farthest))]
        if names:
            sentences.append(say("In the way: {names}.", names=listed([term(name) for name in names])))
        return replace(self._snag, cured=" ".join([*sentences, advised(self._layout, self._snag)]))


_DRILLED = "drilled-otherwise"
_MADE = (_DRILLED, "cut-otherwise")
"""The kinds of snags that tell what is drawn otherwise than it is in the wood: tight where it can be gone on with."""
_MARKS = "marked-otherwise"
"""The kind that tells what pasted papers or the template have elsewhere: they are made anew, and no wood suffers."""
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

    @property
    def asks_work(self) -> bool:
        """Papers or template are to be made anew, or what is cut or drilled is to be gone on with, however much farther it goes."""
        return any(_only_work(snag) for snag in self.worse)

    @property
    def work_alone(self) -> bool:
        """No wood has suffered: papers and template are to be made anew, or what is cut or drilled is to be gone on with."""
        return all(_only_work(snag) for snag in self.worse)


class Before:
    """The snags of a layout before a move, ready to be compared with those after it. What the bit does to slots that are `routed`, and are
    no more when they are drawn otherwise, is not the move's doing."""

    def __init__(self, snags: Sequence[Snag], routed: frozenset[str] = frozenset()) -> None:
        self._all, self._routed = snags, routed
        self._known = _by_key(snags)
        self._misplaced = {name for snag in snags if snag.kind == _MARKS for name in snag.between}

    def judged(self, snag: Snag, after: Sequence[Snag]) -> Verdict:
        """The verdict on a move meant for one of these snags."""
        own = (snag.kind, snag.between)
        rest = sorted((one.lacks for one in self._all
                       if (one.kind, one.between) == own and one is not snag), reverse=True)
        alike = [one for one in after if (one.kind, one.between) == own]
        left = sorted((one.lacks for one in alike), reverse=True)
        stays = any(v.distance3(one.where, snag.where) <= _SAME and abs(one.lacks - snag.lacks) <= _SAME for one in alike)
        gone = not stays and len(left) <= len(rest) and all(a <= b + _SAME for a, b in zip(left, rest, strict=False))
        new: list[Snag] = []
        grown: list[Snag] = []
        for key, found in _by_key(after).items():
            known = self._known.get(key, [])
            if key[0] in OTHER_BIT and key[1][0] in self._routed:
                continue
            if key[0] == _MARKS and self._misplaced.issuperset(key[1]):
                continue  # one snag tells of all that papers have elsewhere, and of fewer when some is put back
            if key != own:
                new += found[len(known):]
                grown += [now for now, then in zip(found, known, strict=False) if _grown(now, then)]
        mild = not grown and all(snag.grade == TIGHT for snag in new)
        return Verdict(gone, left[0] if left else 0.0, (*grown, *new), mild)


def _only_work(snag: Snag) -> bool:
    """Whether a snag asks for nothing but more of the maker's work."""
    return snag.kind == _MARKS or snag.kind in _MADE and snag.grade == TIGHT


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
