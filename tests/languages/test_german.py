"""The window in German, in a process of its own: what it says, and that lengths are read with comma and with dot."""

import json
import os
import subprocess
import sys
from pathlib import Path

from tests.languages.collect import ROOT

WINDOW = """
import json, re, sys
from pathlib import Path
from app.languages import chosen
chosen.speak("de")
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication, QDialogButtonBox
application = QApplication([])
chosen.teach_toolkit(application, "de")
from app.look.descendants import below
from app.panels.forms.fields import LengthField
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows
from geometry.checks import check
from geometry.edits.moving import move_features
from geometry.units import parse_length
box = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
settings = QSettings(sys.argv[1], QSettings.Format.IniFormat)
window = MainWindow(demo(), None, Windows(settings))
window.show()
window.set_stage("blank")
window.document.hold(("blank",))
for _ in range(20):
    application.processEvents()
field = next(w for w in below(window, LengthField) if w.accessibleName() == "Dicke" and w.isVisible())


def enter(text):
    field.setText(text)
    field.setModified(True)
    field.editingFinished.emit()


enter("17,5")
thick = window.document.layout.blank.thickness
enter("16.25")
close = move_features(demo(), ["treble face 2"], (4.0, 0.0))
window.resize(1350, 725)  # maximised on a screen of 1366 x 768
window.set_stage("router")
window.rooms["router"].open_rack()
for _ in range(5):
    application.processEvents()
shelf = window.rooms["router"].rack.view.table
name = shelf.fontMetrics().horizontalAdvance("12.7 mit Ring an der Spitze") + 8
window.rooms.let_load()  # as all that the window loads later
from app.sheets.pages import pages
from geometry.drawing import Label
menus = [window.menuBar(), *(action.menu() for action in window.menuBar().actions() if action.menu())]
said = {
    "stages": [button.text() for button in window.stages._buttons.values()],
    "menus": [action.text() for action in window.menuBar().actions()],
    "letters": [re.findall("&(.)", " ".join(action.text() for action in menu.actions()).lower()) for menu in menus],
    "lengths": [thick, window.document.layout.blank.thickness, parse_length("12,5"), parse_length("12.5")],
    "snags": [[snag.grade, snag.text] for snag in check(close).snags],
    "kept": [tuner.id for tuner in window.document.layout.tuners],
    "sheets": [mark.text for page in pages(demo(), "A4")[:2] for placed in page.content for mark in placed.drawing
               if isinstance(mark, Label)],
    "shelf": [name + sum(shelf.columnWidth(column) for column in range(1, 6)), shelf.viewport().width()],
    "cancel": box.button(QDialogButtonBox.StandardButton.Cancel).text(),
}
window.document.replace(window.document.layout, None)
window.close()
window.windows.end()  # as the program does: else everything is destroyed in any order
print(json.dumps(said))
"""


def test_the_window_the_snags_and_the_sheets_are_german(tmp_path: Path) -> None:
    done = subprocess.run([sys.executable, "-c", WINDOW, str(tmp_path / "settings.ini")], cwd=ROOT, capture_output=True,
                          text=True, timeout=900, env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONIOENCODING": "utf-8"})
    assert done.returncode == 0, done.stderr
    said = json.loads(done.stdout)
    assert said["stages"] == ["Rohling", "Umriss", "Schlitze", "Mechaniken", "Saiten", "Oberfräse", "Folge", "Blätter", "Werkbuch"]
    assert "&Entwurf" in said["menus"] and "&Hilfe" in said["menus"]
    assert all(len(letters) == len(set(letters)) for letters in said["letters"])
    assert said["lengths"] == [17.5, 16.25, 12.5, 12.5]
    # Grades and names are keys: they stay what they are in the file.
    assert {grade for grade, _ in said["snags"]} <= {"spoils the work", "tight", "note"}
    assert any("gewünscht" in text for _, text in said["snags"]) and "treble face 2" in said["kept"]
    assert any("Mit 100 % drucken" in text for text in said["sheets"]) and any("ü" in text for text in said["sheets"])
    assert not any("outline" in text for text in said["sheets"]), "a key is no word"
    assert said["shelf"][0] <= said["shelf"][1], "all columns of the bits are seen beside the entry"
    assert said["cancel"].replace("&", "") == "Abbrechen"


WRITTEN_ANEW = """
import sys
from pathlib import Path
from app.languages import chosen
from geometry.saying import say
copy = Path(sys.argv[1])
copy.write_bytes(chosen.compiled_file("de").read_bytes())
chosen.compiled_file = lambda code: copy
chosen.speak("de")
with open(copy, "r+b") as file:  # as who writes into it, and not as who puts another in its place
    file.truncate(0)
print(say("Slots"), say("Outline"))
"""


def test_a_catalogue_that_is_written_anew_while_the_program_runs_does_not_end_it(tmp_path: Path) -> None:
    done = subprocess.run([sys.executable, "-c", WRITTEN_ANEW, str(tmp_path / "de.qm")], cwd=ROOT, capture_output=True, text=True)
    assert (done.returncode, done.stdout.split()) == (0, ["Schlitze", "Umriss"]), done.stderr


def test_a_check_without_a_window_speaks_german_when_asked() -> None:
    layout = "samples/twelve-string-mixed.headstock.json"
    words = [sys.executable, "-c", "import sys; from app.commands.main import run; from app.commands.arguments import parse; "
             "code = run(parse(sys.argv[1:])); assert not any(name.startswith('PySide6') for name in sys.modules); sys.exit(code)"]
    answers = [subprocess.run([*words, "check", layout, *more], cwd=ROOT, capture_output=True, text=True, encoding="utf-8",
                              env={**os.environ, "PYTHONIOENCODING": "utf-8"})
               for more in ((), ("--language", "de"), ("--language", "de", "--json"))]
    assert all(done.returncode in (0, 1) for done in answers), answers[1].stderr
    english, german, data = (done.stdout for done in answers)
    assert "holes" in english and "Bohrungen" in german and "holes" not in german
    report = json.loads(data)
    assert set(report) == {"snags", "holes", "pins", "there", "counts"}
    assert {snag["grade"] for snag in report["snags"]} <= {"spoils the work", "tight", "note"}
