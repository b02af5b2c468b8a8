"""What a start loads, and before what: counted in modules, since times are the machine's own."""

import subprocess
import sys

from app.setup.places import CHECKOUT
from app.window.demo import DEMO, samples

HEAVY = ("ezdxf", "svgelements", "reportlab", "fontTools", "PIL", "contourpy")
"""What is only needed for a drawing that comes in or goes out."""
CARD = """
import app.commands.main, app.window.running.threshold as threshold, PySide6.QtCore as core
table = []
def draw(card, painter, own=threshold.Threshold.drawContents):
    own(card, painter)
    table.append("Qt" in vars(core))
threshold.Threshold.drawContents = draw
def appear(card, own=threshold.Threshold.appear):
    own(card)
    print(*table)
    print("painted" if card._with_words and card._painted >= 2 else "blank", card.isVisible(), card.accessibleName())
    print(*sys.modules)
    sys.stdout.flush()
    os._exit(0)
threshold.Threshold.appear = appear
"""
GIVEN_WAY = """
import app.commands.main, app.window.running.threshold as threshold
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
def give_way(card, own=threshold.Threshold.give_way):
    own(card)
    QTimer.singleShot(50, told)
def told():
    print(*sorted({type(widget).__name__ for widget in QApplication.topLevelWidgets() if widget.isVisible()}))
    sys.stdout.flush()
    os._exit(0)
threshold.Threshold.give_way = give_way
"""
READY = """
import app.commands.main, app.window, app.window.running.threshold as threshold
def give_way(card):
    import linecache
    import PySide6.QtCore as core
    import PySide6.QtGui as gui
    import PySide6.QtWidgets as widgets
    print("kinds", *(name for name in ("QStyle", "QGradient", "QMessageBox", "QTableView", "QWizard", "QAccessible", "QDesktopServices", "QImageReader", "QUrl") if name in {**vars(core), **vars(gui), **vars(widgets)}))
    print(gc.isenabled(), gc.get_freeze_count() > 10_000)
    print(*sys.modules)
    print(*(name for name in linecache.cache if "layout" in name))
    print(sum("__dataclass_fields__" in vars(kind) for name, module in list(sys.modules.items()) if name.startswith(("app.", "geometry."))
              for kind in vars(module).values() if isinstance(kind, type) and kind.__module__ == name))
    sys.stdout.flush()
    os._exit(0)
threshold.Threshold.give_way = give_way
"""
PAINTED = """
import app.commands.main, app.window.running.threshold as threshold
from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication
class Watch(QObject):
    def eventFilter(self, view, event):
        if event.type() == QEvent.Type.Paint:
            view.removeEventFilter(self)
            QTimer.singleShot(0, told)
        return False
def told():
    import PySide6.QtWidgets as widgets
    box = window.tools.hardware
    print(box.fontMetrics().horizontalAdvance(box.currentText()) > box.width() - 30)
    print("kinds", *(name for name in ("QStyle", "QTableView", "QWizard") if name in vars(widgets)))
    sys.stdout.flush()
    os._exit(0)
def give_way(card, own=threshold.Threshold.give_way):
    global window
    window = next(widget for widget in QApplication.topLevelWidgets() if type(widget).__name__ == "MainWindow")
    window.tools.hardware.setFixedWidth(100)
    window.canvas.view.viewport().installEventFilter(Watch(window))
    own(card)
threshold.Threshold.give_way = give_way
"""
KEPT = """
import app.commands.main, app.window
from PySide6.QtCore import QTimer
from app.setup import import_cache
app.window.KEPT_MS = 0
class Cache(import_cache.ImportCache):
    def stop(self):
        super().stop()
        print(sum(type(module.__spec__.loader).__name__ == "_Loader" for module in list(sys.modules.values()) if getattr(module, "__spec__", None)))
        QTimer.singleShot(0, self.look)
    def look(self):
        if not os.path.exists(import_cache.place()):
            QTimer.singleShot(20, self.look)
            return
        print(os.listdir(os.path.dirname(import_cache.place())).count(os.path.basename(import_cache.place())), self.grown)
        sys.stdout.flush()
        os._exit(0)
import_cache.ImportCache = Cache
"""
WARNED = """
import app.commands.main, app.window.ask as ask
def warn(parent, title, text):
    print(title, parent.isVisible(), parent.document.path, parent.front.shown)
    print(text)
    sys.stdout.flush()
    os._exit(0)
ask.warn = warn
"""
TAKEN = """
import app.commands.main, app.window.front.drops as drops
def take(window, file):
    print(file.name, window.isVisible(), window.document.path, window.front.shown, len(window.windows.all))
    sys.stdout.flush()
    os._exit(0)
drops.take = take
"""
RECOVERED = """
import app.window.running.recovery as recovery
recovery.recover = lambda windows, left: 1
"""
CLOSED = """
import app.commands.main, app.window.running.threshold as threshold
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
def give_way(card, own=threshold.Threshold.give_way):
    own(card)
    next(widget for widget in QApplication.topLevelWidgets() if type(widget).__name__ == "MainWindow").close()
    QTimer.singleShot(0, goes_on)
def goes_on():
    print("goes on without a window")
    sys.stdout.flush()
    os._exit(0)
threshold.Threshold.give_way = give_way
import atexit
atexit.register(print, "ended")
"""
FILE = str(samples() / DEMO)


def told(code: str, words: list[str], tmp_path, **more: str) -> list[str]:
    """Lines that a new process prints which runs `code` and then the program with these words."""
    import os
    place = {name: str(tmp_path) for name in ("XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "APPDATA", "LOCALAPPDATA")}
    run = f"import gc, os, sys\n{code}\nfrom app.commands.arguments import parse\napp.commands.main.run(parse({words!r}))"
    done = subprocess.run([sys.executable, "-c", run], cwd=CHECKOUT, capture_output=True, text=True, env=os.environ | place | more)
    assert done.stdout, done.stderr
    return done.stdout.splitlines()


def rooms(modules: str) -> set[str]:
    """The packages that the modules belong to."""
    return {name.partition(".")[0] for name in modules.split()}


def test_the_card_is_painted_before_any_room_is_loaded(tmp_path):
    table, said, modules = told(CARD, [FILE], tmp_path)
    assert table == "False True", "the toolkit's table of names is loaded for the words, after the card was painted once"
    assert said == f"painted True Pegwright {DEMO}"
    assert rooms(modules).isdisjoint({"numpy", "shapely", "msgspec", *HEAVY})
    assert "app.window.main" not in modules.split()


def test_the_window_opens_without_what_only_drawings_chances_and_plans_need(tmp_path):
    kinds, said, modules, read, made = told(READY, [FILE], tmp_path)
    assert kinds == "kinds", "a kind that the toolkit has many names for is made when it is named, or all of a family with the first stranger"
    assert said == "False True", "only the event loop collects garbage, and what was loaded is not looked through"
    assert rooms(modules).isdisjoint(HEAVY)
    assert {"geometry.accuracy.simulation", "geometry.sequence", "geometry.book.planned", "app.sheets.pages",
            "app.window.dialogs.libraries", "geometry.routing.search"}.isdisjoint(modules.split())
    assert not read, "the toolkit read the source of what was loaded after it"
    assert int(made) <= 3, "a dataclass takes twenty times as long to be made as a record of msgspec, and there are a hundred"
    assert {"app.tools.draw", "app.window.running.fault_dialog", "app.window.dialogs.offset_dialog", "app.help.tip"}.isdisjoint(modules.split())
    assert {"app.panels.side_inside", "app.panels.snags.snag_list", "app.panels.forms.form", "app.panels.describe", "app.window.input.spoken",
            "geometry.cures", "geometry.edits.copying", "app.window.front.page", "app.tools.grips_shape", "app.tools.grips_blank",
            "geometry.solids.distance_depth", "app.tools.hold", "app.tools.snap", "app.window.background.trial", "app.window.cure_search",
            "geometry.accuracy.words", "geometry.drawing.string_marks", "geometry.edits.moving", "geometry.routing.reached"}.isdisjoint(modules.split()), "loaded after the drawing"
    assert {"app.formats.file_names", "geometry.routing.medial", "hashlib", "heapq", "locale"}.isdisjoint(modules.split()), "loaded at need"
    assert sum(name.startswith(("app.", "geometry.")) for name in modules.split()) < 310


def test_no_table_of_the_toolkit_is_made_to_paint_the_window(tmp_path):
    narrow, kinds = told(PAINTED, [FILE], tmp_path)
    assert narrow == "True" and kinds == "kinds", "what is chosen in a narrow box is shortened without the style's own words"


def test_the_next_start_finds_what_this_one_loaded_in_one_file(tmp_path):
    place = {"PYTHONPYCACHEPREFIX": str(tmp_path / "compiled"), "PYTHONDONTWRITEBYTECODE": ""}
    first, second = (told(KEPT, [FILE], tmp_path, **place) for _ in range(2))
    assert first == ["0", "1 True"]
    assert int(second[0]) > 300 and second[1] == "1 False"


def test_the_card_gives_way_to_the_window(tmp_path):
    assert told(GIVEN_WAY, [FILE], tmp_path) == ["MainWindow"]


def test_a_window_that_is_closed_before_the_loop_begins_ends_the_program(tmp_path):
    assert told(CLOSED, [FILE], tmp_path) == ["ended"]


def test_a_file_that_cannot_be_read_is_told_of_in_the_window(tmp_path):
    """Whoever opens it from the desktop would see a card come and go, and no word."""
    file = tmp_path / "bad.headstock.json"
    file.write_text("{", encoding="utf-8")
    told_of, why = told(WARNED, [str(file)], tmp_path)
    assert told_of == "This file was not opened True None True"
    assert "bad.headstock.json" in why


def test_what_a_check_has_loaded_is_not_looked_through_for_garbage(tmp_path):
    code = ("import app.commands.main, atexit\natexit.register(lambda: print('COLLECTOR', gc.isenabled(), gc.get_freeze_count() > 10_000))\n"
            f"sys.exit(app.commands.main.main_with_setup(['check', {FILE!r}]))")
    assert "COLLECTOR True True" in told(code, [], tmp_path)


def test_a_check_without_a_window_loads_no_toolkit(tmp_path):
    code = "import app.commands.main, atexit\natexit.register(lambda: print('MODULES', *sys.modules))"
    lines = told(code, ["check", FILE], tmp_path)
    modules = next(line for line in lines if line.startswith("MODULES"))
    assert lines[0].startswith("Twelve strings")
    assert rooms(modules).isdisjoint({"PySide6", "shiboken6", *HEAVY})


def test_a_drawing_or_a_picture_named_at_the_start_is_taken_as_if_it_were_dropped(tmp_path):
    for name in ("head.dxf", "HEAD.SVG", "scan.png"):
        assert told(TAKEN, [str(tmp_path / name)], tmp_path) == [f"{name} True None True 1"]
    assert told(TAKEN + RECOVERED, [str(tmp_path / "scan.png")], tmp_path) == ["scan.png True None True 2"], "not laid behind what was recovered"
