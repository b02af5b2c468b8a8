"""`python3 -m app sheets FILE --out DIR [--paper ...]`: everything to print and cut."""

import argparse
import sys

from app.formats import headstock
from geometry.checks import check
from geometry.saying import say

from .arguments import program, without_ending


def run(request: argparse.Namespace) -> int:
    """Write the sheets and print the path of each; 0. FormatError for an unreadable file.

    Without a paper it is the usual one of the unit, and not what was chosen in a window last: the same words write the
    same sheets for whoever calls them. A layout that would spoil the work is written all the same, since a maker
    may want to see it on paper, with a warning on standard error, where files of an earlier plan are told of too.
    """
    from app.formats.paper import usual_paper
    from app.sheets import write_sheets
    from app.sheets.write import left_words

    layout = headstock.read(request.file)
    stem = without_ending(request.file)
    paper = request.paper or usual_paper(request.unit)
    paths = write_sheets(layout, request.out, paper, stem, unit=request.unit)
    for path in paths:
        print(path)
    if left := left_words(request.out, stem, paths):
        print(left, file=sys.stderr)
    if check(layout).spoils:
        print(
            say("Do not cut from these sheets yet: something spoils the work, see {command}.",
                command=f"{program()} check {request.file}"),
            file=sys.stderr,
        )
    return 0
