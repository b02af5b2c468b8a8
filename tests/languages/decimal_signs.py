"""Walks the window, its dialogs and all sheets in German and prints every number with a decimal point, and how many had a comma.

In a process of its own: a language is chosen before the rooms are loaded. `python3 -m tests.languages.decimal_signs`
"""

from __future__ import annotations

import re
import sys
import tempfile
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path

from msgspec.structs import replace

from app.languages import chosen

POINT = re.compile(r"(?<![\w.,])\d+\.\d+(?![\w.])|(?<![\w.])\.\d+")
COMMA = re.compile(r"(?<![\w.,])\d+,\d+(?![\w.,])")
MEANT = ("12,50 und 12.50 sind dasselbe", "Version 2.1", "`12.5`")
"""What shows a point on purpose: what a field takes too, and versions."""
HELD = (("treble side 3",), ("treble face 1",), ("treble slot",), ("outline",), ("nut",), ("nut pin",), ("blank",),
        ("treble face 1", "treble face 2"))
TOOLS = ("tuner", "hole", "pin", "slot", "measure", "draw slot", "draw outline", "section")


class Widgets:
    """Takes the bench's window instead of the test runner, which is not there: main closes it."""

    def addWidget(self, *given, **more) -> None:
        pass


def pointed(text: str, names: list[str]) -> list[str]:
    """The numbers of a text with a decimal point, but for those in names of the layout, of its bores (`treble face 1.2.1`)
    and what is meant."""
    text = re.sub(r"<[^>]*>", " ", text)
    for kept in (*names, *MEANT):
        text = re.sub(re.escape(kept) + r"(\.\d)*", "\x00", text, flags=re.IGNORECASE)
    return POINT.findall(text)


def seen(window) -> Iterator[tuple[str, str]]:
    """(where, text) of all that the window and its dialogs show, say or tell, stage by stage and thing by thing."""
    from app.threads.background import running
    from app.window.stages import STAGES
    from tests.gui.test_inch_signs import READINGS, told
    from tests.languages.bracketed import dialogs, texts
    from tests.waiting import rest, until

    def all_of(where: str) -> Iterator[tuple[str, str]]:
        rest(0.02)
        until(lambda: not running())
        yield from ((where, text) for text in told(window))

    for stage in STAGES:
        window.set_stage(stage.key)
        yield from all_of(stage.key)
    window.room.view.show_page(READINGS)
    yield from all_of("readings")
    window.commands.run("rack")
    yield from all_of("rack")
    window.set_stage("tuners")
    for unit in ("in", "mm"):
        window.actions_[unit].trigger()
        for held in HELD:
            window.document.hold(held)
            yield from all_of(f"{held}, {unit}")
    yield from texts(window)
    yield from dialogs(window)


def at_the_pointer(bench) -> Iterator[tuple[str, str]]:
    """What the card at the pointer says while tools and a drag move over the drawing, and the marks that go with it."""
    from geometry.drawing import Label

    window, shown = bench.window, []
    window.hand.shown.connect(lambda one: shown.append(one) if one is not None else None)
    for tool in TOOLS:
        window.set_stage("slots" if "slot" in tool else "outline" if "outline" in tool else "tuners")
        window.set_tool(tool)
        bench.click((3.3, 50.7))
        bench.move((4.1, 71.3))
        window.hand.cancel()
    for one in shown:
        yield "at the pointer", one.readout
        yield from (("at the pointer", mark.text) for mark in one.marks if isinstance(mark, Label))


def busy(layout):
    """The layout with close places, and a book in which times, prices and readings stand."""
    from geometry.edits.moving import move_features
    from geometry.layout import Price, Reading, Task, Time
    from geometry.solids import holes

    book = layout.book
    posts = [d for hole in holes(layout) for d in hole.drillings if d.role == "post"]
    book = replace(book, currency="EUR", prices=(Price(piece="real", part="Tuners", count=3, each=Decimal("1234.5")),),
                   times=(Time(piece="real", task=Task(operation="setting up", title="Setting up"), minutes=12.5),),
                   readings=tuple(Reading(piece="real", drilling=d.id, what="diameter", value=d.diameter + 0.13, planned=d.diameter)
                                  for d in posts))
    return replace(move_features(layout, ["treble face 2"], (4.0, 0.0)), book=book)


def on_paper(layout) -> Iterator[tuple[str, str]]:
    """Every word of every sheet, in mm and in inches, and of the papers as DXF and SVG get them."""
    from app.sheets.pages import pages, papers
    from app.sheets.work import plan_work
    from app.sheets.write import full_template
    from geometry.drawing import Label

    for paper, unit in (("A4", "mm"), ("Letter", "in64")):
        for page in pages(layout, paper, unit=unit):
            # Lines of one paragraph follow each other: only together are its names whole.
            yield from ((page.title, " ".join(mark.text for mark in placed.drawing if isinstance(mark, Label)))
                        for placed in page.content)
    template, *others = papers(layout, plan_work(layout))
    for drawing in (full_template(layout, template), *(part.drawing for part in others)):
        yield from (("exported drawing", mark.text) for mark in drawing if isinstance(mark, Label))


def main() -> None:
    """Print what has a point, then the number of different texts with a comma."""
    chosen.speak("de")
    from PySide6.QtWidgets import QApplication

    from app.window.demo import demo
    from geometry.checks import check
    from geometry.layout.generic import PATTERNS
    from geometry.terms import given_tool
    from tests.gui.bench import Bench
    from tests.gui.test_inch_signs import named

    application = QApplication([])
    layout = busy(demo())
    names = [*named(layout), *(given_tool(pattern.id) for pattern in PATTERNS)]
    bench = Bench(Widgets(), Path(tempfile.mkdtemp()), layout)
    window = bench.window
    application.processEvents()
    found: dict[str, str] = {}
    commas: set[str] = set()

    def look(texts: Iterator[tuple[str, str]]) -> None:
        for where, text in texts:
            if pointed(text, names):
                found.setdefault(text, where)
            elif COMMA.search(text):
                commas.add(text)

    look(seen(window))
    look(at_the_pointer(bench))
    look(on_paper(layout))
    look(("snag", words) for unit in ("mm", "in") for snag in check(layout).snags for words in (snag.text_in(unit), snag.cure_in(unit)))
    for text, where in found.items():
        print(f"{where}: {text!r}")
    print(len(commas))
    window.document.replace(window.document.layout, None)
    window.close()
    sys.stdout.flush()


if __name__ == "__main__":
    main()
