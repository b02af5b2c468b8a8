"""`python -m tests.app.formats.watched FOLDER`: reads every file in a folder with every reader, and prints what Python was
made to open, connect to or start meanwhile, beyond the files of the folder, of Python and of the program."""

from __future__ import annotations

import contextlib
import json
import os
import sys
from pathlib import Path

OPENS = ("open", "os.listdir", "os.scandir")
NEVER = ("socket.", "subprocess.", "os.system", "os.exec", "os.posix_spawn", "os.spawn", "os.fork", "os.startfile", "urllib.",
         "webbrowser.", "ftplib.", "http.", "smtplib.", "pty.", "os.remove", "os.rename", "os.mkdir", "os.rmdir", "os.link", "os.symlink",
         "os.truncate", "shutil.")


def main(folder: Path) -> None:
    """Read, watch, tell."""
    from app.document.leftovers import leftovers
    from app.formats import headstock
    from app.formats.drawing_in.read import read_drawing
    from app.formats.errors import FormatError
    from app.formats.picture_in import grey_of, read_picture
    from app.formats.rack import load_rack
    from geometry.checks import check
    from geometry.errors import GeometryError

    def layout(path: Path) -> None:
        made = headstock.read(path)
        check(made)
        if made.picture is not None:
            grey_of(made.picture.jpeg)

    readers = (layout, read_drawing, read_picture, load_rack, lambda path: leftovers(path.parent / path.stem))
    own = tuple(os.path.realpath(place) for place in (sys.prefix, sys.base_prefix, Path(__file__).parents[3], folder, *sys.path) if place)
    watching, seen = [False], []

    def hook(event: str, arguments: tuple) -> None:
        if not watching[0]:
            return
        if event in OPENS and isinstance(arguments[0], str | bytes):
            place = os.path.realpath(os.fsdecode(arguments[0]))
            if not place.startswith(own) or "secret" in place:
                seen.append(f"{event} {place}")
        elif event.startswith(NEVER):
            seen.append(f"{event} {arguments!r}"[:300])

    sys.addaudithook(hook)
    for file in sorted(folder.iterdir()):
        for reader in readers if file.is_file() else ():
            watching[0] = not file.name.startswith("a warming up")
            with contextlib.suppress(FormatError, GeometryError):
                reader(file)
            watching[0] = False
            for one in seen:
                print(json.dumps([file.name, one]))
            seen.clear()
    print(json.dumps("read"))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
