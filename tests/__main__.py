"""`python3 -m tests [ARGS]`: set up what is missing and run the whole suite, or what pytest's ARGS choose."""

import sys

from app.setup.version import complaint, find_command


def main():
    """Run the suite without a screen and return pytest's exit code."""
    sentence = complaint(sys.version_info, find_command)
    if sentence:
        sys.stderr.write(sentence + "\n")
        return 2
    from tests.running import run_suite

    return run_suite(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
