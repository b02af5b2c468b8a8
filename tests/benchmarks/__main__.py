"""`python3 -m tests.benchmarks [GROUP ...]`: set up what is missing, measure, print the table."""

import argparse
import sys

from app.setup.version import complaint, find_command


def main() -> int:
    """Measure the groups that are named, or all of them; 0 unless one could not be measured."""
    sentence = complaint(sys.version_info, find_command)
    if sentence:
        sys.stderr.write(sentence + "\n")
        return 2
    from app.setup import start
    from app.setup.system import ensure_window_libraries
    start.ensure(["app", "tests"])
    ensure_window_libraries()

    from tests.benchmarks.groups import GROUPS, measured
    from tests.benchmarks.table import HEAD, row
    parser = argparse.ArgumentParser(prog="python3 -m tests.benchmarks", description="Tells how quick the program is.")
    parser.add_argument("group", nargs="*", help=f"one of {', '.join(GROUPS)}; all without")
    parser.add_argument("--rounds", type=int, help="how often each row is measured")
    words = parser.parse_args()
    unknown = sorted(set(words.group) - set(GROUPS))
    if unknown:
        parser.error(f"there is no group {', '.join(unknown)}")
    print(HEAD, flush=True)
    for group in words.group or GROUPS:
        for line in measured(group, words.rounds):
            print(row(line), flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
