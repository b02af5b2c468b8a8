"""`python3 -m app sheets FILE --out DIR [--paper ...]`: everything to print and cut."""

import argparse
import sys

from app.formats import headstock
from geometry.checks import check
from geometry.saying import say

from .arguments import FILE_ENDING, program


def run(request: argparse.Namespace) -> int:
    """Write the sheets and print the path of each; 0. FormatError for an unreadable file.

    A layout that would spoil the work is written all the same, since a maker
    may want to see it on paper, with a warning on standard error.
    """
    from app.sheets import write_sheets

    layout = headstock.read(request.file)
    request.out.mkdir(parents=True, exist_ok=True)
    stem = request.file.name.removesuffix(FILE_ENDING)
    for path in write_sheets(layout, request.out, request.paper, stem, unit=request.unit):
        print(path)
    if check(layout).spoils:
        print(
            say("Do not cut from these sheets yet: something spoils the work, see {command}.",
                command=f"{program()} check {request.file}"),
            file=sys.stderr,
        )
    return 0
