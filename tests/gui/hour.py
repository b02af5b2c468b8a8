"""What a maker does in an hour, in some seconds: one act after the other, each told to a watchdog by its name."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from PySide6.QtCore import QPoint, Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog

from app.help.window import HelpWindow
from app.look.descendants import below
from app.printing import job
from app.threads.background import running
from app.window import ask, texts
from app.window.demo import DEMO, samples
from app.window.dialogs.about import AboutDialog
from app.window.dialogs.offset_dialog import OffsetDialog
from app.window.front.numbers_dialog import NumbersDialog
from app.window.importing.importing import ImportDialog
from app.window.importing.reading import read_with_progress
from app.window.main import MainWindow
from app.window.stages import STAGES
from geometry.edits import move_features
from tests.benchmarks.heads import sixty_bits
from tests.gui.bench import Bench
from tests.gui.hands import fill
from tests.waiting import rest, until

OUTLINE = Path(__file__).parents[2] / "samples" / "outlines" / "head-with-slots-and-holes.dxf"


def quiet(window: MainWindow) -> bool:
    """Whether nothing runs beside the window any more but the search for cures."""
    return not any(thread.isRunning() for thread in running(window) if thread.asker is not window.cures)


def settle(window: MainWindow, seconds: float = 0.1) -> None:
    """Let the window come to rest."""
    rest(seconds)
    until(lambda: quiet(window))


def hour(bench: Bench, folder: Path, monkeypatch) -> Iterator[str]:
    """Yields the name of each act before it is done."""
    window = bench.window
    yield "loading beside the window"
    settle(window, 1.6)
    yield from _by_hand(bench)
    for stage in STAGES:
        yield f"first visit of {stage.key}"
        window.set_stage(stage.key)
        settle(window)
        if stage.key != "tuners":
            yield f"from {stage.key} to tuners"
            window.set_stage("tuners")
            settle(window, 0.05)
    yield from _edits(bench)
    yield from _stages(bench)
    yield from _files(bench, folder, monkeypatch)
    yield from _dialogs(window)
    yield from _looks(bench)
    yield "nothing"


def _by_hand(bench: Bench) -> Iterator[str]:
    window = bench.window
    yield "drag a tuner"
    start = bench.origin("treble face 2")
    bench.press(start)
    for k in range(1, 25):
        bench.move((start[0] - 0.4 * k, start[1] + 0.6 * k))
    bench.release((start[0] - 10, start[1] + 15))
    yield "drag a node"
    window.set_stage("outline")
    node = bench.layout.outline.nodes[2].at
    bench.click(node)
    bench.press(node)
    bench.move_along(node, (node[0] + 3, node[1] + 4), 10)
    bench.release((node[0] + 3, node[1] + 4))
    yield "undo and redo"
    for step in (window.document.undo, window.document.undo, window.document.redo):
        step()
        rest(0.02)
    yield "zoom and pan"
    for k in range(12):
        bench.view.zoom(1.2 if k < 6 else 1 / 1.2)
        bench.pump()
        bench.view.pan(QPoint(5, 3))
        bench.pump()


def _edits(bench: Bench) -> Iterator[str]:
    window = bench.window
    for ref in ("treble face 2", "treble side 3", "outline", "nut", bench.layout.slots[0].id, ""):
        yield f"hold {ref or 'nothing'}"
        window.document.hold((ref,) if ref else ())
        rest(0.05)
    yield "type a value"
    window.document.hold(("treble face 2",))
    rest(0.1)

    def fields() -> list:
        return [one for one in below(window.side, type(window.tools.slot_width_field)) if one.isVisible()]
    until(fields, "no row to type into")
    field = fields()[0]
    fill(field, "61.5")
    rest(0.1)
    for key in ("duplicate", "undo", "hold all", "copy"):
        yield f"action {key}"
        window.commands.run(key)
        rest(0.05)
    yield "paste all tuners"
    window.commands.run("paste")
    rest(0.1)
    window.hand.cancel()
    yield "changes"
    window.actions_["changes"].trigger()
    window.changes.go(1)
    rest(0.05)
    window.changes.go(len(window.document.history.names))
    window.actions_["changes"].trigger()
    yield "chances beside the window"
    window.document.hold(())
    settle(window, 0.7)
    for unit in ("in", "mm"):
        yield f"lengths in {unit}"
        window.commands.run(unit)
        rest(0.05)
    yield "head in space"
    window.show_solid(True)
    rest(0.3)
    window.show_solid(False)
    yield "journal"
    rest(1.2)


def _stages(bench: Bench) -> Iterator[str]:
    window = bench.window
    yield "strings: a proposal"
    window.set_stage("strings")
    window.rooms["strings"].panel.propose.click()
    settle(window)
    yield "router: sixty bits"
    window.set_stage("router")
    window.document.apply("Sixty bits", sixty_bits())
    settle(window)
    yield "router: the rack"
    window.rooms["router"].open_rack()
    rest(0.1)
    window.document.undo()
    yield "order: a step moved"
    window.set_stage("order")
    settle(window)
    order = window.rooms["order"]
    until(lambda: order.work is not None)
    order._stepped(order.work.order.steps[5], -1)
    settle(window)
    yield "book: a timer"
    window.set_stage("book")
    settle(window)
    window.rooms["book"].view.button("start").click()
    window.rooms["book"].view.button("drop").click()
    rest(0.05)
    yield "sheets: anew after an edit"
    window.set_stage("sheets")
    window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.5, 0.0)))
    settle(window)
    yield "sheets: page after page"
    preview = window.rooms["sheets"].preview
    for _ in range(8):
        QTest.keyClick(preview, Qt.Key.Key_PageDown)
        rest(0.05)
    yield "sheets: closer and back"
    for word in (preview.larger, preview.larger, preview.larger, preview.view.zoom_full_size, preview.view.fit):
        word()
        rest(0.05)
    for stage in ("sheets", "tuners", "book"):
        window.set_stage(stage)
        rest(0.1)
        yield f"drag the window's edge at {stage}"
        for k in range(8):
            window.resize(1360 - 25 * k, 880 - 15 * k)
            rest(0.012)
        window.resize(1360, 880)


def _files(bench: Bench, folder: Path, monkeypatch) -> Iterator[str]:
    window = bench.window
    yield "save"
    window.document.save(folder / "saved.headstock.json")
    rest(0.1)
    yield "print"
    window.set_stage("sheets")
    settle(window)
    until(lambda: window.rooms["sheets"].pages)
    monkeypatch.setattr(job, "choose_printer", lambda parent, size, count, title: _printer(size, folder / "printed.pdf"))
    window.rooms["sheets"].print()
    settle(window)
    yield "write the book"
    monkeypatch.setattr(ask, "save_file", lambda *asked: folder / "book.csv")
    window.commands.run("write book")
    settle(window)
    yield "import"
    dialog = ImportDialog(window, OUTLINE, read_with_progress(window, OUTLINE, None, 0.01))
    dialog.show()
    rest(0.3)
    yield "import: turned"
    dialog._left()
    rest(0.05)
    dialog.close()
    dialog.deleteLater()
    yield "open a file"
    window.document.replace(window.document.layout, None)
    window.files.open(samples() / DEMO)
    settle(window, 0.3)
    yield "front page"
    window.front.show()
    settle(window, 0.3)
    window.front.leave()


def _printer(size: str, to: Path) -> QPrinter:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(to))
    job.lock(printer, size)
    return printer


def _dialogs(window: MainWindow) -> Iterator[str]:
    made = {"actions and words": lambda: HelpWindow(list(window.actions_.values()), texts.HAND_KEYS, window),
            "about": lambda: AboutDialog(window), "offset": lambda: OffsetDialog(window, "outline"),
            "numbers": lambda: NumbersDialog(window)}
    for name, make in made.items():
        yield f"dialog: {name}"
        dialog: QDialog = make()
        dialog.show()
        settle(window, 0.2)
        dialog.close()
        settle(window, 0.05)
        dialog.deleteLater()
    yield "dialog: what must be held"
    window.commands.run("hold")
    rest(0.2)
    window.rooms.chances.dialog.close()
    settle(window)


def _looks(bench: Bench) -> Iterator[str]:
    window = bench.window
    for stage in ("tuners", "book"):
        window.set_stage(stage)
        settle(window)
        yield f"colours at {stage}"
        for name in ("lamp", "day"):
            window.actions_[name].trigger()
            rest(0.1)
    window.set_stage("tuners")
    yield "letters"
    for percent in (150, 100):
        window.looks.choose_letters(percent)
        rest(0.1)
    yield "strings after that"
    window.set_stage("strings")
    rest(0.2)
