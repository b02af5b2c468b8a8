"""The estimate of the next job, corrected by what this one took.

The rule, for each rate k of geometry.sequence.Rates that was timed: with P_k
the planned minutes (default rates) and A_k the minutes spent, summed over all
timed operations behind it on both pieces, and P, A the sums over all rates,

    f   = (A + W) / (P + W)                W = 120 min
    f_k = (A_k + w f) / (P_k + w)          w = 60 min

A rate that was never timed takes f. The ratio of sums is the plain estimate of
how much longer things take; W and w are planned minutes in favour of the
default: with an hour of planned work timed, a rate lies half-way between what
was found and what all the work together says, with ten hours nearly all the
way. W and w are common practice, no source. A rate never leaves 1/10 to 10.
"""

from __future__ import annotations

from collections.abc import Iterable

from msgspec import Struct
from msgspec.structs import replace

from geometry.book.planned import CHANGE_FIELDS, CHANGING, WORK_FIELDS
from geometry.layout import Book, Rates, Time

TRUST_ALL = 120.0
TRUST_EACH = 60.0
LEAST, MOST = 0.1, 10.0

MOST_MINUTES = 6000.0
"""What a rate may be at most."""


class Learned(Struct, frozen=True):
    """What was found about one rate: minutes planned and spent, and the factor for the next estimate."""

    rate: str
    planned: float
    spent: float
    factor: float


class Correction(Struct, frozen=True):
    """Factors for the next estimate; `overall` is that of rates that were never timed."""

    overall: float
    learned: tuple[Learned, ...]

    def factors(self) -> dict[str, float]:
        """A factor for every field of Rates, changes under one name."""
        found = {one.rate: one.factor for one in self.learned}
        return {name: found.get(name, self.overall) for name in (*WORK_FIELDS, CHANGING)}

    def rates(self, own: Rates) -> Rates:
        """The rates for the next plan, with a `factor` of 1.

        A rate that was timed is the default times its factor, whatever `own` says, so that taking the rates over
        twice changes nothing. One that was never timed is the maker's own where that differs from the default
        (its `factor` counted in), else the default times the overall factor.
        """
        default, by = Rates(), self.factors()
        timed = {one.rate for one in self.learned}
        made = {}
        for name in (*WORK_FIELDS, *CHANGE_FIELDS):
            key = CHANGING if name in CHANGE_FIELDS else name
            plain, set_by_hand = getattr(default, name), getattr(own, name)
            value = set_by_hand * own.factor if key not in timed and set_by_hand != plain else plain * by[key]
            made[name] = min(MOST_MINUTES, round(value, 3))
        return replace(default, glue_dry=own.glue_dry, **made)


def corrected(book: Book) -> Correction:
    """The correction that the times of a book give; all factors are 1 when nothing was timed.

    Times of operations that were planned at nothing say nothing about a rate and are left out.
    """
    timed = [time for time in book.times if time.task.planned > 0]
    planned, spent = _sums(timed)
    overall = _held((spent + TRUST_ALL) / (planned + TRUST_ALL))
    learned = []
    for rate in sorted({time.task.rate for time in timed}):
        p, a = _sums(time for time in timed if time.task.rate == rate)
        learned.append(Learned(rate, p, a, _held((a + TRUST_EACH * overall) / (p + TRUST_EACH))))
    return Correction(overall, tuple(learned))


def _sums(times: Iterable[Time]) -> tuple[float, float]:
    times = list(times)
    return sum(t.task.planned for t in times), sum(t.minutes for t in times)


def _held(factor: float) -> float:
    return min(MOST, max(LEAST, factor))
