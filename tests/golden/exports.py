"""What the kept exports are made of. `python -m tests.golden.exports` writes them anew after a wanted change."""

from pathlib import Path

from app.formats.csv_out import csv_text
from app.formats.dxf_out import dxf_bytes
from app.formats.svg_out import svg_text
from app.sheets.hole_table import CSV_HEAD, csv_rows
from app.sheets.parts import parts
from app.sheets.write import full_template
from tests.app.formats.out.specimens import DRAWING
from tests.geometry.drawing.specimens import plain_head

FOLDER = Path(__file__).parent


def exports() -> dict[str, bytes]:
    """File name and bytes of every kept export."""
    template = full_template(plain_head(), parts(plain_head())[0])
    return {
        "plain-template.svg": svg_text(template, "Plain head, invented").encode(),
        "plain-holes.csv": csv_text(CSV_HEAD, csv_rows(plain_head())).encode(),
        "marks-entities.dxf.txt": _entities(dxf_bytes(DRAWING)),
    }


def _entities(data: bytes) -> bytes:
    """The entities section alone: what stands before it belongs to the library's version."""
    start = data.index(b"ENTITIES")
    return data[start:data.index(b"ENDSEC", start)].replace(b"\r\n", b"\n")


if __name__ == "__main__":
    for name, data in exports().items():
        (FOLDER / name).write_bytes(data)
