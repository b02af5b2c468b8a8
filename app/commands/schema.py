"""`python3 -m app schema`: the file format's JSON Schema."""

import argparse


def run(request: argparse.Namespace) -> int:
    """Print the schema; the exit code."""
    from app.formats.headstock import schema_text

    print(schema_text().rstrip("\n"))
    return 0
