"""`python3 -m app launcher [--remove]`: Pegwright in the menus of this user's desktop, and layouts that open with it."""

import argparse
import sys

from geometry.saying import count, say

REFUSED = 2


def run(request: argparse.Namespace) -> int:
    """Write the files of the launcher, or remove them, and tell which; 2 on a system that has none of the kind."""
    if sys.platform == "win32":
        print(say("Windows knows a file by what follows the last dot of its name, so layouts (.headstock.json) cannot be "
                  "given to Pegwright alone: make a shortcut to the program, and drop layouts on it or on its window."),
              file=sys.stderr)
        return REFUSED
    if sys.platform == "darwin":
        print(say("On macOS the bundled program brings its launcher and opens layouts itself; see DEVELOPERS.md for how "
                  "it is made."), file=sys.stderr)
        return REFUSED
    from app.launcher.install import data_folder, install, remove

    folder = data_folder()
    done = remove(folder) if request.remove else install(folder)
    words = {"written": say("written"), "unchanged": say("as it was"), "removed": say("removed"),
             "absent": say("was not there")}
    for one in done:
        print(f"{words[one.how]}: {one.file}")
    changed = sum(one.how in ("written", "removed") for one in done)
    print(count(changed, "{n} file changed.", "{n} files changed."))
    return 0
