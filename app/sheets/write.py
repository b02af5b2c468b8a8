"""The files that a maker takes to the printer, the cutter and the bench."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from app.formats.csv_out import csv_bytes
from app.formats.disk_words import why_no_folder
from app.formats.dxf_out import dxf_bytes
from app.formats.errors import FormatError
from app.formats.file_names import fitting
from app.formats.mark_shapes import drawing_box
from app.formats.pdf_out import pdf_bytes
from app.formats.reading import is_file
from app.formats.saving import save_files
from app.formats.svg_out import svg_text
from app.sheets import list_pages, order_pages
from app.sheets.cards import card_of, cards
from app.sheets.compensation import compensation
from app.sheets.hole_table import CSV_HEAD, csv_rows
from app.sheets.pages import pages, papers
from app.sheets.parts import Part
from app.sheets.work import Work, plan_work
from geometry.cancellation import Ask, go_on
from geometry.checks import Snag
from geometry.checks.words import listed
from geometry.drawing import Drawing, Label
from geometry.drawing.depths import depths_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking, spoken
from geometry.saying import say
from geometry.units import LengthUnit

AT_TIMES = ("template.dxf", "template.svg", "back.dxf", "back.svg")
"""How files are called that not every layout has."""


def write_sheets(layout: Headstock, out_dir: Path, paper: str = "A4", stem: str = "headstock",
                 snags: Sequence[Snag] | None = None, work: Work | None = None, unit: LengthUnit = "mm",
                 ask: Ask = go_on) -> list[Path]:
    """Write template, wrap paper and back paper, where the plan has them, as DXF and SVG, the pages as PDF, and holes, running order and
    lists as CSV; returns their paths. A template or back paper of before stays where there is none now: left_words tells of it.

    `snags`, `work`, `unit` and `ask` as for pages(); numbers in the CSV files are in mm, as their heads say. Everything is
    computed before the first file is written, and from then on nobody is asked whether to go on. FormatError with one
    sentence when the layout cannot be printed or the folder cannot be written.
    """
    with speaking(unit):
        return _write_sheets(layout, out_dir, paper, stem, snags, work, ask)


def _write_sheets(layout: Headstock, out_dir: Path, paper: str, stem: str, snags: Sequence[Snag] | None,
                  work: Work | None, ask: Ask) -> list[Path]:
    try:
        work = plan_work(layout, ask=ask) if work is None else work
    except GeometryError as error:
        raise FormatError(say("There is nothing to print yet: {error}", error=error)) from error
    ask()
    drawn = papers(layout, work)
    printed = pages(layout, paper, snags, work, spoken(), ask, drawn)
    ask()
    title, made = layout.name or stem, dict[str, bytes]()
    for part in drawn:
        drawing, deep = full_template(layout, part) if part.name == "template" else part.drawing, depths_of(layout, behind=part.name == "back")
        made[f"{part.name}.dxf"] = dxf_bytes(drawing, deep)
        made[f"{part.name}.svg"] = svg_text(drawing, say("{title}: {name}, 1 unit = 1 mm", title=title, name=part.name), deep).encode()
    made["sheets.pdf"] = pdf_bytes(printed, title)
    made["holes.csv"] = csv_bytes(CSV_HEAD, csv_rows(layout))
    made["order.csv"] = csv_bytes(order_pages.CSV_HEAD, order_pages.csv_rows(work, card_of(cards(layout, work), work)))
    made["parts.csv"] = csv_bytes(list_pages.CSV_HEAD, list_pages.csv_rows(layout, work))
    out_dir, stem = Path(out_dir), fitting(stem)
    try:
        out_dir.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise FormatError(say("The folder {out_dir} cannot be made: {why}.", out_dir=out_dir, why=why_no_folder(error))) from error
    files = {out_dir / f"{stem}-{name}": data for name, data in made.items()}
    save_files(files)
    return list(files)


def left_words(out_dir: Path, stem: str, written: Sequence[Path]) -> str:
    """What to say of files in the folder that not every writing of sheets of that stem makes, where they are not among those `written` now;
    empty where there are none. They are the maker's to throw away, who may have drawn in them."""
    made = (Path(out_dir) / f"{fitting(stem)}-{name}" for name in AT_TIMES)
    left = [path.name for path in made if path not in written and is_file(path)]
    return say("Still in the folder, of an earlier plan, and no part of this one: {files}. Throw that away before anything is cut from it.",
               files=listed(left)) if left else ""


def full_template(layout: Headstock, template: Part) -> Drawing:
    """The template of a layout with its compensation in words below it, as DXF and SVG carry it."""
    low = drawing_box(template.drawing)[1]
    return (*template.drawing, Label(compensation(layout).words, (0.0, low - 8.0), 2.0, "note", anchor="middle"))
