"""Which language the window speaks, chosen before its rooms are loaded, and Qt's own words in it."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QSettings, QTranslator

from app.languages.catalogue import CONTEXT, ENGLISH, NAMES, compiled_file, fitting
from geometry import saying

KEY = "language"
"""Of the settings: a code of NAMES, or SYSTEM."""
SYSTEM = "system"


def choice(settings: QSettings) -> str:
    """What the maker chose: a code of NAMES, or SYSTEM."""
    kept = settings.value(KEY, SYSTEM)
    return kept if isinstance(kept, str) and kept in NAMES else SYSTEM


def chosen(settings: QSettings) -> str:
    """The code of the language to start in: the choice, else the first of the system's that there is."""
    kept = choice(settings)
    return fitting(QLocale.system().uiLanguages()) if kept == SYSTEM else kept


def speak(code: str) -> None:
    """Say everything in this language from now on; before the rooms are loaded, or their constants stay as they were."""
    if code == ENGLISH:
        saying.use(None)
        return
    # Not by its name: the toolkit would look into the file as long as the program runs, and whoever writes it anew meanwhile, as
    # an update does, would end the program.
    try:
        data = compiled_file(code).read_bytes()
    except OSError:
        data = b""
    catalogue = QTranslator()
    if not catalogue.load(data):
        raise FileNotFoundError(f"The catalogue {compiled_file(code)} cannot be read: write it again with tests.languages.")
    saying.use(partial(_looked_up, catalogue, data), code)


def _looked_up(catalogue: QTranslator, _data: bytes, text: str, about: str) -> str:
    """`_data` is what the catalogue was loaded from: it keeps no copy."""
    return catalogue.translate(CONTEXT, text, about or None)


def teach_toolkit(application: QCoreApplication, code: str) -> None:
    """Let the toolkit's own dialogs and buttons speak the language too."""
    translator = QTranslator(application)
    if code != ENGLISH and translator.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        application.installTranslator(translator)
