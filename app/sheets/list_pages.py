"""Cut list and part list on paper, with boxes to tick while things are laid out."""

from __future__ import annotations

from collections.abc import Container, Sequence

from app.formats.csv_out import Cell
from app.sheets.lay import TICKED, Block, Column, fitting, heading, natural, space, table
from app.sheets.lengths import length, unit_words
from app.sheets.needs import Tool, bits, drills, lacks, pieces, reamers, wares
from app.sheets.work import Work
from geometry.drawing.heights import READ
from geometry.layout import Headstock
from geometry.saying import say
from geometry.terms import term

APART = 3.0
"""White between two lists, mm."""


def list_blocks(layout: Headstock, work: Work, width: float) -> list[Block]:
    """Wood, hardware, tools, what the rack lacks."""
    room = width - TICKED
    blocks = [heading(say("Cut list"), width, say("Finished sizes in {unit_words}, length along the grain. Allow for the "
                                             "saw and the plane as you are used to.",
                                             unit_words=unit_words()))]
    blocks += _list((say("piece"), say("no."), say("length"), say("width"), say("thick"), ""),
                    [(p.name, str(p.count), length(p.length, 1), length(p.width, 1), length(p.thickness, 2), p.remark) for p in pieces(layout, work)],
                    room, range(1, 5))
    blocks += [space(APART), heading(say("Part list"), width, say("Hardware by its dimensions, in {unit_words}: hold each part "
                                                           "against them before you drill.", unit_words=unit_words()))]
    blocks += _list((say("part"), say("no."), say("dimensions")), [(ware.name, str(ware.count), ware.on_paper or ware.sizes) for ware in wares(layout)], room, (1,))
    tools = [*drills(layout, work), *reamers(work), *bits(work)]
    missing = lacks(tools)
    machines = sorted({op.setup.machine for op in work.steps if op.setup.machine != "bench" and work.ahead(op.id)})
    if not (tools or machines):
        return blocks
    says = [say("For the steps that are left.")] if work.done and work.open else []
    says += [say("Not in the rack: {missing}.", missing=", ".join(missing))] if missing else []
    says += [say("Machines: {others}.", others=", ".join(term(one) for one in machines))] if machines else []
    blocks += [space(APART), heading(say("Drills, bits and machines"), width, " ".join(says))]
    return blocks + _list((say("tool"), say("for"), say("rack")), [(tool.name, tool.work, _rack(tool)) for tool in tools], room)


def _list(titles: Sequence[str], rows: Sequence[Sequence[str]], room: float, right: Container[int] = ()) -> list[Block]:
    """A table with boxes to tick, as wide as the `room` (mm), each column after its words; those named by `right` stand on the right."""
    widths = fitting(natural([titles, *rows], READ, room), room)
    return table([Column(title, wide, i in right) for i, (title, wide) in enumerate(zip(titles, widths, strict=True))], rows, ticks=True)


def _rack(tool: Tool) -> str:
    if tool.by_hand:
        return say("by hand")
    if not tool.held:
        return say("lacking")
    return say("in the rack, {remark}", remark=tool.remark) if tool.remark else say("in the rack")


CSV_HEAD = (say("list", about="column"), say("name", about="column"), say("count", about="column"), say("length_mm", about="column"), say("width_mm", about="column"), say("thickness_mm", about="column"), say("words", about="column"))
"""Columns of the lists for a spreadsheet."""


def csv_rows(layout: Headstock, work: Work) -> list[tuple[Cell, ...]]:
    """Cut list, part list and tools as rows."""
    out: list[tuple[Cell, ...]] = [(say("cut"), p.name, p.count, p.length, p.width, p.thickness, p.remark) for p in pieces(layout, work)]
    out += [(say("part"), ware.name, ware.count, None, None, None, ware.sizes) for ware in wares(layout)]
    out += [(say("tool"), tool.name, None, None, None, None, f"{tool.work}; {_rack(tool)}")
            for tool in (*drills(layout, work), *reamers(work), *bits(work))]
    return out
