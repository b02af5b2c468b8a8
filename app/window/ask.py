"""The one seam through which the program asks the maker something, so that tests can answer."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Literal

from PySide6 import (
    QtWidgets,  # and not the names out of it: a dialog's kind is made when its name is asked for, and a start asks nothing
)
from PySide6.QtCore import Qt
from PySide6.QtGui import QPixmap

from app.formats.errors import Unconfirmed
from app.look.plain import plain
from app.look.sizes import px
from geometry.errors import GeometryError
from geometry.saying import say

LAYOUTS = say("Headstock layouts (*.headstock.json)")
DRAWINGS = say("Drawings (*.dxf *.svg)")
RACKS = say("Racks (*.json)")
TEMPLATES = say("Templates (*.dxf *.svg)")
TABLES = say("Tables (*.csv)")


LINE = 460
"""Room for a line of text that is asked for, pixels at 100 %: a note is a sentence."""

_lately: dict[str, Path] = {}
"""The folder in which a file of that kind was chosen last, while the program runs."""


def _answering(parent: QtWidgets.QWidget, *folders: str | Path | None) -> Path:
    """The first of these folders that is there, the home folder when none is or a drive does not answer: the dialogs of the
    toolkit look at it in the thread of the window."""
    from app.threads.waiting import answer_soon  # here: a start asks for no file

    wanted = [Path(one) for one in folders if one]
    return answer_soon(parent, lambda: next((one for one in wanted if os.path.isdir(one)), Path.home()), Path.home())


def open_file(parent: QtWidgets.QWidget, title: str, folder: str, kinds: str) -> Path | None:
    """A file to read, or None. The search begins where one of its kind was found last, at first in `folder`."""
    start = _answering(parent, _lately.get(kinds), folder)
    name, _ = QtWidgets.QFileDialog.getOpenFileName(parent, title, str(start), kinds)
    return _noted(name, kinds)


def save_file(parent: QtWidgets.QWidget, title: str, suggestion: str, kinds: str, endings: Sequence[str] = ()) -> Path | None:
    """A file to write, or None. What would go into the home folder goes where one of its kind went last.

    A name with none of the endings gets the first; a file that is there under the whole name is asked about, for the
    system asked only about the name as it was typed.
    """
    at = Path(suggestion)
    at = _answering(parent, _lately.get(kinds) if at.parent == Path.home() else None, at.parent) / at.name
    name, _ = QtWidgets.QFileDialog.getSaveFileName(parent, title, str(at), kinds)
    path = _noted(name, kinds)
    if path is None or not endings or path.name.lower().endswith(tuple(endings)):
        return path
    path = path.with_name(path.name + endings[0])
    return path if not there(parent, path) or write_over(parent, path.name, kept=False) else None


def there(parent: QtWidgets.QWidget, path: Path) -> bool:
    """Whether there is something of that name; True when its drive does not answer soon."""
    from app.threads.waiting import answer_soon

    return answer_soon(parent, lambda: os.path.lexists(path), True)


def _noted(name: str, kinds: str) -> Path | None:
    """The chosen file, its folder noted; None when none was chosen."""
    if not name:
        return None
    _lately[kinds] = Path(name).parent
    return Path(name)


def folder(parent: QtWidgets.QWidget, title: str, start: str) -> Path | None:
    """A folder, or None. The search begins where one was chosen last, at first in `start`."""
    name = QtWidgets.QFileDialog.getExistingDirectory(parent, title, str(_answering(parent, _lately.get("folder"), start)))
    if not name:
        return None
    _lately["folder"] = Path(name)
    return Path(name)


def save_first(parent: QtWidgets.QWidget, name: str) -> Literal["save", "discard", "cancel"]:
    """What to do with unsaved work before it would go."""
    box = _box(parent, say("Unsaved work"), say("{name} has changes that are not saved.", name=name))
    buttons = QtWidgets.QMessageBox.StandardButton
    box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
    box.setDefaultButton(buttons.Save)
    return _answer(box, {box.button(buttons.Save): "save", box.button(buttons.Discard): "discard"}, "cancel")


def changed_elsewhere(parent: QtWidgets.QWidget, name: str) -> Literal["theirs", "mine", "elsewhere", "cancel"]:
    """What to do when another program has written the file that is about to be saved."""
    return _choice(parent, say("Changed by another program"),
                   say("{name} was written by another program after it was opened here.", name=name),
                   say("Saving yours keeps theirs beside it as the version before. Taking theirs makes yours one undo away."),
                   "elsewhere", warning=True, elsewhere=(say("Save mine elsewhere…"), "Accept"), mine=(say("Save mine here"), "Destructive"),
                   theirs=(say("Take theirs"), "Action"), cancel=(say("Do nothing"), "Reject"))


def not_saved(parent: QtWidgets.QWidget, text: str, certain: bool = True) -> Literal["elsewhere", "again", "later"]:
    """What to do when the layout could not be saved; not `certain`: when it may yet last where it was written."""
    return _choice(parent, say("The layout was not saved") if certain else say("It is not certain that the layout was saved"), text,
                   say("Your work is still here in the window, as it was."), "elsewhere", warning=True,
                   elsewhere=(say("Save elsewhere…"), "Accept"), again=(say("Try again"), "Action"), later=(say("Not now"), "Reject"))


def write_over(parent: QtWidgets.QWidget, name: str, kept: bool = True) -> bool:
    """Whether a file of that name may be replaced; `kept` when what is in it now stays beside it."""
    text = (say("{name} is there already. Its present version would be kept beside it as the version before.", name=name) if kept else
            say("{name} is there already. What is in it now would be lost.", name=name))
    return _choice(parent, say("Replace this file?"), text, "", "no", yes=(say("Replace it"), "Accept"), no=(say("Leave it"), "Reject")) == "yes"


def uncorrected(parent: QtWidgets.QWidget, text: str) -> bool:
    """Whether to print without a correction, of which `text` says why it cannot be had."""
    return _choice(parent, say("Print without a correction?"), text,
                   say("The pages would come out at 100 %, not corrected: measure the bars before you glue."), "no", warning=True,
                   yes=(say("Print uncorrected"), "Accept"), no=(say("Do not print"), "Reject")) == "yes"


def tell(parent: QtWidgets.QWidget, title: str, text: str) -> None:
    """Tell the maker one thing and wait until it is read."""
    QtWidgets.QMessageBox.information(parent, title, text)


def warn(parent: QtWidgets.QWidget, title: str, text: str) -> None:
    """Tell the maker what went wrong and wait until it is read."""
    _answer(_box(parent, title, text, icon=QtWidgets.QMessageBox.Icon.Warning), {}, "")


def title_of(error: Exception, failed: str) -> str:
    """The title over what a writing raised: `failed`, or another where what was written is there and may yet last."""
    return say("It is not certain that the disk keeps what was written") if isinstance(error, Unconfirmed) else failed


def text(parent: QtWidgets.QWidget, title: str, label: str, value: str = "") -> str | None:
    """A line of text, or None."""
    words = plain(label)
    if words != label:
        words = words.replace("\n", "<br>")
    dialog = QtWidgets.QInputDialog(parent, windowTitle=title, labelText=words, textValue=value)
    dialog.resize(px(LINE), dialog.sizeHint().height())
    given = dialog.exec()
    dialog.deleteLater()
    return dialog.textValue() if given else None


def line(parent: QtWidgets.QWidget, title: str, label: str, take: Callable[[str], object]) -> bool:
    """Ask for a line of text until `take` takes it; False when the maker gives it up.

    What `take` refuses with a GeometryError is said over the line, which stands there as it was typed.
    """
    value, words = "", label
    while (given := text(parent, title, words, value)) is not None:
        try:
            take(given)
        except GeometryError as error:
            value, words = given, f"{error}\n{label}"
        else:
            return True
    return False


def recover(parent: QtWidgets.QWidget, text: str, picture: QPixmap) -> Literal["open", "later", "discard"]:
    """What to do with work that an earlier run had not saved; `picture` shows it. To throw it away takes two answers."""
    while (answer := _recover(parent, text, picture)) == "discard" and not _throw_away(parent):
        pass
    return answer


def _throw_away(parent: QtWidgets.QWidget) -> bool:
    return _choice(parent, say("Throw this work away?"), say("What was not saved is in no other file, and nothing brings it back."), "",
                   "no", warning=True, yes=(say("Throw it away for good"), "Destructive"), no=(say("Keep it"), "Reject")) == "yes"


def _recover(parent: QtWidgets.QWidget, text: str, picture: QPixmap) -> str:
    return _choice(parent, say("Unsaved work was found"), text, "", "open", picture, open=(say("Open it"), "Accept"),
                   discard=(say("Throw it away"), "Destructive"), later=(say("Ask me next time"), "Reject"))


def unreadable(parent: QtWidgets.QWidget, text: str, place: Path) -> Literal["enough", "later"]:
    """Tell of unsaved work that cannot be read, and show the folder it lies in when asked to; whether to tell of it again."""
    answer = _choice(parent, say("Unsaved work could not be read"), text, "", "later", warning=True, copied=True,
                     show=(say("Show its folder"), "Action"), enough=(say("Do not tell me again"), "Destructive"), later=(say("Remind me next time"), "Reject"))
    if answer == "show":
        from PySide6.QtCore import QUrl  # here, as the dialogs' kinds above
        from PySide6.QtGui import QDesktopServices

        QDesktopServices.openUrl(QUrl.fromLocalFile(str(place)))
        return "later"
    return answer


def _choice(parent: QtWidgets.QWidget, title: str, text: str, more: str, default: str, picture: QPixmap | None = None,
            warning: bool = False, copied: bool = False, **buttons: tuple[str, str]) -> str:
    """The key of the button that was pressed. Each has its words and its role, of which the last is the answer of whoever closes
    the box; Enter presses that of `default`. A question that is no warning may show a picture. `copied`: its text can be copied."""
    icons = QtWidgets.QMessageBox.Icon
    box = _box(parent, title, text, icon=icons.Warning if warning else icons.Question, informativeText=more)
    if picture is not None:
        box.setIconPixmap(picture)
    if copied:
        box.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard)
    made = {box.addButton(words, QtWidgets.QMessageBox.ButtonRole[f"{role}Role"]): key for key, (words, role) in buttons.items()}
    box.setDefaultButton(next(button for button, key in made.items() if key == default))
    return _answer(box, made, list(buttons)[-1])


def _box(parent: QtWidgets.QWidget, title: str, text: str, **more) -> QtWidgets.QMessageBox:
    """A question without buttons, `more` what else of it is set. Its words are plain: the name of a layout or a file is never read
    as markup."""
    return QtWidgets.QMessageBox(parent, textFormat=Qt.TextFormat.PlainText, windowTitle=title, text=text, **more)


def _answer(box: QtWidgets.QMessageBox, words: dict, otherwise: str) -> str:
    """The word of the button that was pressed."""
    from app.look.alt_letters import give_letters  # here: a start asks nothing

    give_letters(box)
    box.exec()
    clicked = box.clickedButton()
    box.deleteLater()
    return next((word for button, word in words.items() if button is clicked), otherwise)
