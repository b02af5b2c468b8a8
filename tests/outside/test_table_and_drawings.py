"""The hole table as it is written against the drawings as they are written: numbers of a CSV file, circles of DXF files.

Both are read back from their files, the DXF group by group by hand.
"""

import csv
from pathlib import Path

import pytest

from app.formats.csv_out import csv_bytes
from app.formats.dxf_out import dxf_bytes
from app.formats.headstock import read
from app.formats.layer_names import LAYERS
from app.sheets.hole_table import CSV_HEAD, csv_rows
from app.sheets.pages import papers
from app.sheets.work import plan_work
from app.sheets.write import full_template
from tests.app.formats.out.test_dxf import entities

SAMPLES = ("six-in-line", "slotted-three-a-side", "three-a-side", "twelve-string-mixed")


def circles(path: Path) -> list[tuple]:
    """(layer, x, y, diameter) of every circle of a DXF file, mm."""
    return [(entity[8], float(entity[10]), float(entity[20]), 2 * float(entity[40]))
            for entity in entities(path.read_bytes()) if entity[0] == "CIRCLE"]


def circle(row: dict[str, str], x: float, y: float, layer: str | None = None) -> tuple:
    return layer or LAYERS[row["operation"]], x, y, float(row["diameter_mm"])


def left_over(drawn: list[tuple], told: list[tuple]) -> list[tuple]:
    """The circles that no row tells of, each row taken once; AssertionError for a row without its circle."""
    rest = list(drawn)
    for wanted in told:
        own = [one for one in rest if one[0] == wanted[0] and one[1:] == pytest.approx(wanted[1:], abs=0.002)]
        assert own, wanted
        rest.remove(own[0])
    return rest


@pytest.mark.parametrize("name", SAMPLES)
def test_circles_of_wrap_and_template_lie_where_the_table_says(name, tmp_path):
    layout = read(Path(f"samples/{name}.headstock.json"))
    template, wrap, *_ = papers(layout, plan_work(layout))
    (tmp_path / f"{name}-wrap.dxf").write_bytes(dxf_bytes(wrap.drawing))
    (tmp_path / f"{name}-template.dxf").write_bytes(dxf_bytes(full_template(layout, template)))
    (tmp_path / f"{name}-holes.csv").write_bytes(csv_bytes(CSV_HEAD, csv_rows(layout)))
    with open(tmp_path / f"{name}-holes.csv", encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    on_wrap, on_template = [], []
    for row in rows:
        if row["surface"] in ("face", "back"):
            on_template.append(circle(row, float(row["start_x_mm"]), float(row["start_y_mm"])))
        if row["surface"] == "face":
            on_wrap.append(on_template[-1])
        elif row["surface"].endswith("edge") and row["operation"] not in ("screw pilot", "pin hole"):
            # Folded flat beside the face: as far out as the mark lies below it.
            x, below = float(row["mark_x_mm"]), float(row["mark_z_mm"])
            layer = LAYERS["side bore"] if row["operation"] == "post bore" else None
            on_wrap.append(circle(row, x + below if x > 0 else x - below, float(row["mark_y_mm"]), layer))
    assert len(rows) > 10 and on_wrap
    waste = left_over(circles(tmp_path / f"{name}-wrap.dxf"), on_wrap)
    assert {layer for layer, *_ in waste} == ({LAYERS["waste hole"]} if layout.slots else set())
    assert left_over(circles(tmp_path / f"{name}-template.dxf"), on_template) == []
