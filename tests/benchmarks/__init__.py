"""How quick the program is, told as medians, p95 and ratios against references measured in the same run.

`python3 -m tests.benchmarks` runs every group, `python3 -m tests.benchmarks drag sheets` some.
Nothing here fails for being slow: a machine's own speed and load decide about
times, so trust the ratios. What must not become slow again is held by tests
that count (paints, modules, file accesses) rather than measure.

To add a row: yield one more `Line` from `lines` of the group's file. To add a
group: a file with `lines(rounds)`, its name in `GROUPS`. A group runs in a
process of its own, once for each entry of `SETTINGS` where it has some.
"""
