"""`python3 -m tests.pictures [DIR]`: every stage of the window in both sets of colours, as PNG files (in build/pictures).

`--letters 150` takes larger letters, `--grain 2` a screen of so many pixels to a point; both are in the files' names.
"""

import argparse
import os
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


SETTLES_MS = 1500
"""How long a stage may work beside the window before its picture is taken."""


def _rest(milliseconds: int) -> None:
    """Let the window and what runs beside it go on; a real event loop leaves the threads room to work."""
    from PySide6.QtCore import QEventLoop, QTimer

    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def main(folder: Path, letters: int, also: str) -> None:
    """Write the pictures, with `also` in their names; existing ones are replaced."""
    from PySide6.QtCore import QSettings
    from PySide6.QtWidgets import QApplication

    from app.look.theme import THEMES
    from app.window.demo import demo
    from app.window.main import MainWindow
    from app.window.stages import STAGES
    from app.window.windows import Windows
    from tests.icon_sheet import icon_sheet

    application = QApplication.instance() or QApplication([])
    application.setStyle("Fusion")
    folder.mkdir(parents=True, exist_ok=True)
    kept = tempfile.TemporaryDirectory()
    settings = QSettings(str(Path(kept.name) / "none.ini"), QSettings.Format.IniFormat)
    settings.setValue("letters", str(letters))
    for theme in THEMES.values():
        icon_sheet(theme).save(str(folder / f"icons-{theme.name}.png"))
        settings.setValue("theme", theme.name)
        window = MainWindow(demo(), None, Windows(settings))
        for size, mark in (((1440, 900), also), ((1280, 720), f"{also}-small")):
            window.show()
            _rest(50)
            window.resize(*size)
            for stage in STAGES:
                window.set_stage(stage.key)
                if stage.key == "tuners":
                    window.document.hold(("treble side 3",))
                _rest(SETTLES_MS)
                window.grab().save(str(folder / f"{stage.key}-{theme.name}{mark}.png"))
            window.set_stage("tuners")
            window.document.hold(("treble side 3",))
            window.show_solid(True)
            _rest(300)
            window.grab().save(str(folder / f"solid-{theme.name}{mark}.png"))
            window.show_solid(False)
        window.document.replace(window.document.layout, None)
        window.close()


if __name__ == "__main__":
    from app.setup import start

    start.ensure(["app"])
    wanted = argparse.ArgumentParser(prog="python3 -m tests.pictures")
    wanted.add_argument("folder", nargs="?", type=Path, default=ROOT / "build" / "pictures")
    wanted.add_argument("--letters", type=int, choices=(100, 125, 150, 175, 200), default=100)
    wanted.add_argument("--grain", choices=("1", "1.5", "2"), default="1")
    given = wanted.parse_args()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ["QT_SCALE_FACTOR"] = given.grain
    plain = given.letters == 100 and given.grain == "1"
    main(given.folder, given.letters, "" if plain else f"-{given.letters}-x{given.grain}")
