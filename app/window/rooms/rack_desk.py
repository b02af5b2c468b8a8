"""Whose rack is on show, where it is kept, and what becomes of a change: the Router stage's desk for the rack."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QObject

from app.formats.disk_words import why_unread
from app.formats.errors import FormatError, StaysAsItIs
from app.formats.rack import (
    LARGEST_BYTES,
    decode_rack,
    encode_rack,
    keep_before,
    load_rack,
    rack_path,
    save_rack,
    set_aside,
    starting_rack,
)
from app.formats.reading import read_bytes
from app.formats.saving import fingerprint_of
from app.panels.describe import field
from app.panels.router.rack_view import RackView
from app.window import ask
from app.window.background.disk import read_beside, saved_where_asked
from geometry.edits.rack import set_rack
from geometry.layout import Headstock, Rack
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

MOST_BACK = 100


class RackDesk(QObject):
    """Feeds a RackView with the layout's rack or the maker's own, and puts changes where they belong."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self._path = rack_path()
        self._mine: Rack | None = None
        self._seen: tuple[str | None, str] = (None, "")
        """fingerprint of the file that `_mine` was read from or written to, None without one, and the unit it was asked for in"""
        self._before: list[Rack] = []
        self._stays = ""
        """why the file cannot be used now, when it stays as it is"""
        self.view = RackView(window.unit)
        self.view.edited.connect(self._edited)
        self.view.refused.connect(window.foot.refuse)
        self.view.whose_changed.connect(self.show)
        self.view.wanted.connect(self._wanted)

    def show(self) -> None:
        """Show the rack that is asked for, as it is now."""
        layout = self._window.document.layout
        if self.view.whose == "layout":
            extra = [field(layout, say("Template thickness"), "length", ("template", "thickness"),
                           layout.template.thickness)]
            says = say("Saved with the layout, so that it opens the same anywhere. Plans are made with this rack.")
            self.view.show_rack(layout.rack, says, extra, False)
        else:
            mine = self.mine()
            says = self._stays or say("Kept for you in {path}. Layouts hold copies of their own.", path=self._path)
            self.view.show_rack(mine, says, [], bool(self._before))

    def mine(self) -> Rack:
        """The maker's own rack as it is kept now, the starting one in his unit while none is.

        Another window may have written it: then there is nothing to take back here. A damaged file is set aside and said so;
        one that may be sound is left, and nothing is kept in its place.
        """
        unit = "mm" if self._window.unit == "mm" else "inch"
        seen = (fingerprint_of(self._path), unit)
        if self._mine is None or seen != self._seen:
            if seen[0] != self._seen[0]:
                self._before = []
            self._seen = seen
            self._stays = ""
            try:
                self._mine = load_rack(self._path, unit)
            except StaysAsItIs as error:
                self._mine, self._stays = starting_rack(unit), str(error)
                self._tell(say("Your rack could not be read"),
                           say("{error} A starting rack is shown meanwhile; what you change in it is not kept.", error=error))
            except FormatError as error:
                self._mine = starting_rack(unit)
                self._tell(say("Your rack could not be read"), f"{error} {self._aside()}")
        return self._mine

    # ---- inside ---------------------------------------------------------
    def _aside(self) -> str:
        try:
            aside = set_aside(self._path)
        except FormatError as error:
            return str(error)
        return say("It was set aside as {aside}, nothing of it is lost; a starting rack takes its place.",
                   aside=aside.name)

    def _tell(self, title: str, text: str) -> None:
        ask.warn(self._window, title, text)

    def _edited(self, what: str, changed: Rack | Headstock, renamed: tuple[str, str, str] | None = None) -> None:
        if isinstance(changed, Headstock):
            self._window.document.apply(what, changed)
        elif self.view.whose == "layout":
            self._into_layout(what, changed, renamed)
        else:
            shown, was = self.view.rack, self.mine()
            if was != shown:
                self._window.say(say("Your own rack was changed in another window meanwhile. Here it is as it is now: make the "
                                     "change once more."))
            elif self._save(changed):
                self._before = [*self._before, was][-MOST_BACK:]
        self.show()

    def _into_layout(self, what: str, rack: Rack, renamed: tuple[str, str, str] | None = None) -> bool:
        """Whether the layout has taken it; what is in the way is said."""
        document = self._window.document
        return self._window.foot.can(lambda: document.apply(what, set_rack(document.layout, rack, renamed)))

    def _save(self, rack: Rack) -> bool:
        try:
            save_rack(rack, self._path)
        except FormatError as error:
            self._tell(say("Your rack was not kept"), str(error))
            return False
        self._mine, self._seen = rack, (fingerprint_of(self._path), self._seen[1])
        return True

    def _wanted(self, key: str) -> None:
        {"take": self._take, "keep": self._keep, "import": self._import, "export": self._export, "back": self._back,
         "start mm": partial(self._start, "mm"), "start inch": partial(self._start, "inch")}[key]()
        self.show()

    def _take(self) -> None:
        if self._into_layout(say("Take my rack into the layout"), self.mine()):
            self._window.say(say("The layout now holds a copy of your rack."))

    def _keep(self) -> None:
        self.mine()
        try:
            before = keep_before(self._path)
        except FormatError as error:
            self._tell(say("Your rack was not kept"), str(error))
            return
        if self._save(self._window.document.layout.rack):
            words = say("This rack is now yours, for all layouts.")
            self._window.say(words if before is None else
                             words + say(" The one before it is in {before}.", before=before.name))

    def _back(self) -> None:
        self.mine()  # what another window has written since is not taken back here
        if self._before:
            *rest, last = self._before
            if self._save(last):
                self._before = rest

    def _start(self, unit: Literal["mm", "inch"]) -> None:
        self._edited(say("Start the rack anew"), starting_rack(unit))

    def _import(self) -> None:
        path = ask.open_file(self._window, say("Import a rack"), str(self._window.folder), ask.RACKS)
        if path is None:
            return
        try:
            data = read_beside(self._window, path, partial(read_bytes, path, LARGEST_BYTES))
            if data is None:
                return
            rack = decode_rack(data, path.name)
        except OSError as error:
            self._tell(say("This rack was not imported"),
                       say("{path} cannot be read: {why}.", path=path.name, why=why_unread(error)))
        except FormatError as error:
            self._tell(say("This rack was not imported"), str(error))
        else:
            self._edited(say("Import {path}", path=path.name), rack)

    def _export(self) -> None:
        rack = self.view.rack
        path = saved_where_asked(self._window, say("Export the rack"), "rack.json", ask.RACKS, (".json",), say("This rack was not exported"),
                                 lambda _: encode_rack(rack))
        if path is not None:
            self._window.say(say("Written: {path}", path=path))
