"""The text of the launcher and of the kind of file, after the open specifications of freedesktop.org.

Desktop Entry Specification (keys of version 1.4, quoting of Exec), Shared MIME-info
Specification (packages, globs), Icon Theme Specification (folders of hicolor).
"""

from __future__ import annotations

import os
import sys
from pathlib import Path
from xml.sax.saxutils import escape

from app.commands.arguments import FILE_ENDING
from app.languages.catalogue import ENGLISH, NAMES, read
from app.setup.places import CHECKOUT, base_python, in_checkout
from geometry.saying import say

ID = "pegwright"
KIND = "application/x-headstock+json"
"""The kind of a layout file; it is JSON, so that any editor of text may open it too."""
NAME = "Pegwright"
GENERIC = say("Headstock layouts")
ABOUT = say("Plan the holes, slots and templates of a guitar headstock")
KIND_WORDS = say("Headstock layout")
"""These are English here (the command speaks no other language) and looked up for each of the others."""
WORDS = ("guitar", "headstock", "tuner", "template", "woodwork")
GLOB_WEIGHT = 60
"""More than the 50 that plain JSON has, so that the longer ending decides."""


def _translations(text: str) -> dict[str, str]:
    """The text in every other language that it is translated into, by the code of the language."""
    return {code: found for code in NAMES if code != ENGLISH and (found := read(code).get((text, "")))}


def command() -> list[str]:
    """How this program is started from anywhere: one that was installed or bundled by its own name, a checkout by the
    Python below its environment, so that the environment can be made anew."""
    if getattr(sys, "frozen", False):
        return [sys.executable]
    if in_checkout():
        return [base_python(), "-m", "app"]
    script = Path(sys.executable).with_name("pegwright.exe" if os.name == "nt" else "pegwright")
    return [str(script)] if script.is_file() else [sys.executable, "-m", "app"]


def desktop_entry(words: list[str] | None = None, folder: Path | None = None) -> str:
    """The launcher. `words` start the program, `folder` is where they are to be run (None: anywhere)."""
    if words is None:
        words, folder = command(), CHECKOUT if in_checkout() else None
    lines = ["[Desktop Entry]", "Type=Application", "Version=1.4", f"Name={NAME}"]
    lines += _localised("GenericName", GENERIC) + _localised("Comment", ABOUT)
    lines += [f"Icon={ID}", f"Exec={_string(' '.join(map(_argument, words)))} %F"]
    if folder is not None:
        lines.append(f"Path={_string(str(folder))}")
    lines += ["Terminal=false", "StartupNotify=true", f"StartupWMClass={NAME}", f"MimeType={KIND};",
              "Categories=Graphics;2DGraphics;VectorGraphics;", f"Keywords={';'.join(WORDS)};"]
    return "\n".join(lines) + "\n"


def mime_package() -> str:
    """The kind of file, known by its ending."""
    words = "".join(f'\n    <comment xml:lang="{code}">{escape(text)}</comment>'
                    for code, text in _translations(KIND_WORDS).items())
    return (f'<?xml version="1.0" encoding="UTF-8"?>\n'
            f'<mime-info xmlns="http://www.freedesktop.org/standards/shared-mime-info">\n'
            f'  <mime-type type="{KIND}">\n'
            f"    <comment>{escape(KIND_WORDS)}</comment>{words}\n"
            f'    <sub-class-of type="application/json"/>\n'
            f'    <glob pattern="*{FILE_ENDING}" weight="{GLOB_WEIGHT}"/>\n'
            f"  </mime-type>\n</mime-info>\n")


def _localised(key: str, text: str) -> list[str]:
    return [f"{key}={_string(text)}", *(f"{key}[{code}]={_string(other)}" for code, other in _translations(text).items())]


def _argument(word: str) -> str:
    """One word of Exec: quoted, with what is special inside quotes escaped; a percent sign would begin a field."""
    for special in '\\"`$':
        word = word.replace(special, f"\\{special}")
    return '"' + word.replace("%", "%%") + '"'


def _string(text: str) -> str:
    """A value of the kind string: a backslash is written twice, and no value goes on in a second line."""
    return text.replace("\\", "\\\\").replace("\n", "\\n").replace("\t", "\\t").replace("\r", "\\r")
