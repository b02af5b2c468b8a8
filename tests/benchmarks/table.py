"""The table that is printed."""

from __future__ import annotations

from tests.benchmarks.lines import Line, part

HEAD = f"{'':58}{'median':>9}{'p95':>9}{'wanted':>9}{'ratio':>8}{'wanted':>8}   ms; ratio of medians, against"


def row(line: Line) -> str:
    """One line of the table; what misses what is wanted is marked with an exclamation mark."""
    median, high = part(line.times, 0.5), part(line.times, 0.95)
    missed = line.most is not None and high > line.most
    cells = [f"{line.name:58}", f"{number(median):>9}", f"{number(high) + ('!' if missed else ''):>9}",
             f"{'' if line.most is None else number(line.most):>9}"]
    quotient = line.quotient
    if quotient is None:
        cells += [f"{'':8}", f"{'':8}"]
    else:
        missed = line.ratio is not None and quotient > line.ratio
        cells += [f"{quotient:.2f}{'!' if missed else ''}".rjust(8),
                  f"{'' if line.ratio is None else f'{line.ratio:g}':>8}"]
    words = f"{line.against} ({number(part(line.reference, 0.5))})" if line.reference else ""
    return "".join(cells) + "   " + "; ".join(word for word in (words, line.note, f"n={len(line.times)}") if word)


def number(ms: float) -> str:
    """Three digits at most behind what counts."""
    return f"{ms:.0f}" if ms >= 100 else f"{ms:.1f}" if ms >= 10 else f"{ms:.2f}"
