"""`python -m tests.benchmarks.one GROUP ROUNDS`: one group in this process, a line of JSON for each row."""

import importlib
import sys

from tests.benchmarks.lines import dumped


def main(group: str, rounds: int) -> int:
    """Measure and tell."""
    for text in dumped(importlib.import_module(f"tests.benchmarks.{group}_rows").lines(rounds)):
        print(text, flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], int(sys.argv[2])))
