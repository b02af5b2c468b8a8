"""The words of the command line and what they mean."""

import argparse
import math
import sys
from pathlib import Path
from typing import NoReturn

from app import __version__

PAPERS = ("A4", "A3", "Letter", "Tabloid")
SHEET_UNITS = ("mm", "in", "in64")
UNITS = ("mm", "cm", "inch", "pt", "px", "1/90 inch")
LANGUAGES = ("en", "de")
FILE_ENDING = ".headstock.json"


def without_ending(file: Path) -> str:
    """The name of a layout's file without the ending, in whatever capitals that stands."""
    return file.name[:-len(FILE_ENDING)] if file.name.lower().endswith(FILE_ENDING) else file.name


WITHOUT_WINDOW = {
    "check": "print what is wrong with a layout",
    "sheets": "write everything to print and cut",
    "outline": "make a layout from a drawing, DXF or SVG",
    "schema": "print the JSON Schema of the layout file",
    "launcher": "put Pegwright into the menus of the desktop, or take it out",
}
"""The commands that need no display, and what each is for."""


def parse(words: list[str]) -> argparse.Namespace:
    """The request that these words make; its `command` is `window` or a key of WITHOUT_WINDOW.

    Leaves by SystemExit after --help and --version (code 0), and with one
    sentence on standard error for words that make no sense (code 2).
    """
    words = _command_first(words)
    name = words[0] if words else ""
    if name in WITHOUT_WINDOW:
        return _PARSERS[name]().parse_args(words[1:], argparse.Namespace(command=name))
    if not any(word.startswith("-") for word in words):
        # Files alone, as in nearly every start of the window: to make a parser takes longer, and it looks through the disk for
        # translations of its words.
        files = [Path(word) for word in words]
        return argparse.Namespace(command="window", file=files[0] if files else None, more=files[1:], language=None)
    return _window().parse_args(words, argparse.Namespace(command="window"))


def _command_first(words: list[str]) -> list[str]:
    """A language that is named before the command belongs behind it."""
    before = 2 if words[:1] == ["--language"] else 1 if words and words[0].startswith("--language=") else 0
    if before and words[before:before + 1] and words[before] in WITHOUT_WINDOW:
        return [*words[before:], *words[:before]]
    return words


def program() -> str:
    """How this process was called, as the maker would type it again."""
    called = Path(sys.argv[0]).name if sys.argv else ""
    return "pegwright" if called.lower().startswith("pegwright") else "python3 -m app"


class _Parser(argparse.ArgumentParser):
    """A parser that says what is wrong in one sentence."""

    def error(self, message: str) -> NoReturn:
        self.exit(2, f"{message[:1].upper()}{message[1:]}; see {self.prog} --help.\n")


def _parser(name: str, about: str) -> _Parser:
    prog = program() if name == "window" else f"{program()} {name}"
    return _Parser(
        prog=prog, description=about, allow_abbrev=False, formatter_class=argparse.RawDescriptionHelpFormatter
    )


def _window() -> _Parser:
    parser = _parser("window", "Pegwright plans the holes, slots and templates of a guitar headstock.")
    width = max(map(len, WITHOUT_WINDOW))
    listed = "\n".join(f"  {program()} {name.ljust(width)}  {about}" for name, about in WITHOUT_WINDOW.items())
    parser.epilog = f"commands that need no window (each has its own --help):\n{listed}"
    parser.add_argument(
        "file",
        nargs="?",
        type=Path,
        metavar="FILE",
        help=f"a layout (*{FILE_ENDING}) to open, or a drawing or picture to begin from; without it a page of ways to begin",
    )
    parser.add_argument("more", nargs="*", type=Path, metavar="FILE", help="more of them, each in a window of its own")
    _add_language(parser, "the language of the window, this time (default: what was chosen in it)")
    parser.add_argument("--version", action="version", version=f"Pegwright {__version__}")
    return parser


def _check() -> _Parser:
    parser = _parser(
        "check",
        "Print the snags of a layout: what is wrong, where, and what would cure it.\n"
        "Exit code 0: nothing spoils the work; 1: something does; 2: the file cannot be read.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="the layout to check")
    parser.add_argument("--json", action="store_true", help="print one JSON object with snags, holes and counts (mm)")
    _add_language(parser)
    return parser


def _sheets() -> _Parser:
    parser = _parser(
        "sheets", "Write the template as DXF, SVG and PDF, the hole table and the other sheets at full size."
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="the layout to print")
    parser.add_argument(
        "--out", type=Path, required=True, metavar="DIR", help="the folder to write into; made if it is not there"
    )
    parser.add_argument(
        "--paper",
        type=_one_of(PAPERS),
        metavar="|".join(PAPERS),
        help="the paper in the printer (default A4, or Letter where lengths are told in inches)",
    )
    parser.add_argument(
        "--unit",
        type=_one_of(SHEET_UNITS),
        default="mm",
        metavar="|".join(SHEET_UNITS),
        help="what lengths are told in: mm, decimal inches, or inches in 64ths (default mm)",
    )
    _add_language(parser)
    return parser


def _outline() -> _Parser:
    parser = _parser(
        "outline",
        "Make a layout from a drawing: the largest closed loop becomes the outline,\n"
        "the loops inside it slots and holes. What lies on a layer 'pockets that are there' or\n"
        "'holes that are there' is in the blank already, and nothing cuts it.",
    )
    parser.add_argument("drawing", type=Path, metavar="DRAWING", help="a DXF or SVG file")
    parser.add_argument(
        "--out",
        type=Path,
        required=True,
        metavar=f"NEW{FILE_ENDING}",
        help="the layout to write, in place of one that is there",
    )
    parser.add_argument(
        "--unit",
        type=_one_of(UNITS),
        metavar="|".join(UNITS),
        help="the unit of the drawing, if it does not say or says it wrongly",
    )
    parser.add_argument(
        "--scale", type=_scale, metavar="1:2", help="what the drawing was drawn at: with 1:2 all of it is made twice as large (default as it is drawn)"
    )
    parser.add_argument(
        "--head", type=int, metavar="N", help="of several heads of one size in the drawing: which, from the left (default the one with most in it, "
        "else the first)"
    )
    parser.add_argument(
        "--turn", type=int, default=0, choices=(0, 90, 180, 270), help="degrees counter-clockwise by which the drawing is turned from how it would be "
        "laid, so that another end comes to the nut"
    )
    parser.add_argument("--mirrored", action="store_true", help="bass and treble change places")
    parser.add_argument(
        "--nut-to-tip", type=float, metavar="MM", help="of a drawing of a whole neck: how far behind the tip the headstock is cut off, in mm "
        "(default where a line lies across the neck, or its straight sides end)"
    )
    parser.add_argument(
        "--nut-slant", type=_slant, metavar="DEGREES", help="of a drawing of a whole neck: how far the nut line is turned about its middle, for fanned "
        "frets; above zero the bass end lies nearer the tip (default as a line across the neck tells it)"
    )
    parser.add_argument(
        "--slanted", action="store_true", help="the nut is slanted, for fanned frets: the drawing stays upright, and its slanted edge becomes the nut line"
    )
    parser.add_argument(
        "--json", action="store_true", help="print one JSON object with the unit, the loops, the nut and the warnings (mm)"
    )
    _add_language(parser)
    return parser


def _schema() -> _Parser:
    return _parser("schema", "Print the JSON Schema of the layout file.")


def _add_language(parser: _Parser, about: str = "the language of what is written (default en)") -> None:
    parser.add_argument("--language", type=_one_of(LANGUAGES), metavar="|".join(LANGUAGES), help=about)


def _launcher() -> _Parser:
    parser = _parser(
        "launcher",
        "Put Pegwright into the menus of this user's desktop, and let layouts open with it (Linux and other\n"
        "systems that follow freedesktop.org); tells every file that it writes.",
    )
    parser.add_argument("--remove", action="store_true", help="take all of it away again")
    return parser


def _scale(text: str) -> float:
    """mm of wood for each of the drawing, of a scale such as 1:2."""
    drawn, _, wood = text.replace(",", ".").partition(":")
    try:
        factor = float(wood) / float(drawn)
    except (ValueError, ZeroDivisionError):
        factor = 0.0
    if not 0 < factor < math.inf:
        raise argparse.ArgumentTypeError(f"{text!r} is no scale such as 1:2")
    return factor


def _slant(text: str) -> float:
    """Degrees by which a nut may be slanted."""
    from geometry.layout.strings import MOST_SLANT  # here: the window starts without it
    try:
        slant = float(text.replace(",", "."))
    except ValueError:
        slant = math.nan
    if not abs(slant) <= MOST_SLANT:
        raise argparse.ArgumentTypeError(f"{text!r} is no slant between -{MOST_SLANT:.0f} and {MOST_SLANT:.0f} degrees")
    return slant


def _one_of(words: tuple[str, ...]):
    """A reader of one of these words in any case."""
    known = {word.lower(): word for word in words}

    def read(text: str) -> str:
        if text.lower() not in known:
            raise argparse.ArgumentTypeError(f"{text!r} is not one of {', '.join(words)}")
        return known[text.lower()]

    return read


_PARSERS = {"check": _check, "sheets": _sheets, "outline": _outline, "schema": _schema, "launcher": _launcher}
