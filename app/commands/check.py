"""`python3 -m app check FILE [--json]`: what is wrong with a layout."""

import argparse
import json
import time

from app.formats import headstock
from geometry.checks import check
from geometry.cures import with_cures

from .report import check_lines, check_report
from .terminal import shown

SOMETHING_SPOILS = 1
PATIENCE_S = 10.0
"""How long the processor works on cures, seconds. A head with a few snags takes a tenth of one; with a slip of a hundred it would
take minutes."""


def run(request: argparse.Namespace) -> int:
    """Print the snags; the exit code is 0 when none spoils the work, else 1. FormatError for an unreadable file."""
    layout = headstock.read(request.file)
    ends = time.process_time() + PATIENCE_S
    result = with_cures(layout, check(layout), lambda: time.process_time() >= ends)
    if request.json:
        print(json.dumps(check_report(result), indent=2, allow_nan=False))
    else:
        for line in check_lines(layout.name, result):
            print(shown(line))
    return SOMETHING_SPOILS if result.spoils else 0
