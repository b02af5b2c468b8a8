"""`python3 -m app [FILE ...]`: the editor."""

import argparse


def run(request: argparse.Namespace) -> int:
    """Open the window and return when it is closed; the exit code."""
    from app.window import run as open_window

    return open_window(request.file, request.language, request.more)
