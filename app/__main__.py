"""`python3 -m app`: set up what is missing, then run a command or open the window."""

import sys

from app.setup.version import complaint, find_command


def main():
    """Run the command line of this process and return its exit code."""
    sentence = complaint(sys.version_info, find_command)
    if sentence:
        sys.stderr.write(sentence + "\n")
        return 2
    from app.setup import start

    start.hand_over(["app"])
    from app.commands.main import main_with_setup

    return main_with_setup(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
