"""What belongs into the one-file program, and what of its libraries can stay out."""

from __future__ import annotations

import re
from pathlib import Path

from app import __version__
from app.setup.places import CHECKOUT

ROOT = CHECKOUT
"""The source tree."""

UNUSED = re.compile(
    r"Qt6?(Qml|Quick|QuickControls2|QmlModels|QmlMeta|QmlWorkerScript|VirtualKeyboard|Pdf|Sql|Test|Designer|Help|"
    r"ShaderTools|Labs|EglFS|Eglfs)\w*\b|plugins/(qmltooling|virtualkeyboard|sqldrivers|egldeviceintegrations|generic|"
    r"tls|networkinformation|platforminputcontexts/libqtvirtualkeyboard)|platforms/libq(eglfs|linuxfb|vnc|vkkhr|minimal)|"
    r"imageformats/libq(pdf|icns|tga|wbmp)|translations/(?!qtbase_(de|en)\.qm)"
)
"""Names of the toolkit's parts that a window of drawings has no use for."""

LAYOUT_KIND = "org.pegwright.headstock"
PLIST = {
    "CFBundleShortVersionString": __version__,
    "CFBundleVersion": __version__,
    "NSHighResolutionCapable": True,
    "LSMinimumSystemVersion": "12.0",
    "UTExportedTypeDeclarations": [{
        "UTTypeIdentifier": LAYOUT_KIND,
        "UTTypeDescription": "Headstock layout",
        "UTTypeConformsTo": ["public.json"],
        "UTTypeTagSpecification": {"public.filename-extension": ["headstock.json"]},
    }],
    "CFBundleDocumentTypes": [{
        "CFBundleTypeName": "Headstock layout",
        "CFBundleTypeRole": "Editor",
        "LSHandlerRank": "Alternate",
        "LSItemContentTypes": [LAYOUT_KIND, "public.json"],
    }],
}
"""For macOS. The system goes by what follows the last dot, so plain JSON is claimed too, as one that can open it but
not as the one to open it with."""


def data_files() -> list[tuple[str, str]]:
    """Every file of the program that is no Python and nothing that Python keeps, with the folder that it goes into."""
    found = []
    for file in sorted((ROOT / "app").rglob("*")):
        if file.is_file() and file.suffix != ".py" and "__pycache__" not in file.parts:
            found.append((str(file), file.parent.relative_to(ROOT).as_posix()))
    for file in sorted((ROOT / "samples").rglob("*")):
        if file.is_file() and "pictures" not in file.parts and not file.name.endswith(".before"):
            found.append((str(file), (Path("app") / file.parent.relative_to(ROOT)).as_posix()))
    return found


def records() -> list[str]:
    """The libraries whose records (version, licence) the program tells of."""
    from app.window.dialogs.libraries import libraries

    return [library.name for library in libraries()]


def left_out(name: str) -> bool:
    """Whether a file of the toolkit can stay out; `name` is its place in the program."""
    return "PySide6" in name.replace("\\", "/") and bool(UNUSED.search(name.replace("\\", "/")))
