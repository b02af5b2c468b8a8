"""The Strings stage: the table of strings and posts, and the proposal of a better one as ghost lines."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from app.panels.strings.string_panel import StringPanel
from app.window.rooms.room import StageRoom
from app.window.rooms.seeking import Seeking
from geometry.beginning.in_unit import usual_numbers
from geometry.beginning.instruments import INSTRUMENTS, as_usual
from geometry.cancellation import Ask
from geometry.checks.words import few
from geometry.drawing import Drawing
from geometry.drawing.string_marks import angle_marks, ghost_strings
from geometry.edits.fields import set_field
from geometry.edits.string_count import all_paired
from geometry.edits.strings import serve, set_post, string_set
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import number, say
from geometry.strings import runs
from geometry.strings.pairing import Pairing, present, propose_pairing
from geometry.strings.sets import StringSet
from geometry.units import LengthUnit, format_close

if TYPE_CHECKING:
    from app.window.frame import Frame

NEAR_USUAL = 0.5
"""mm within which a nut is as wide as usual"""


class StringRoom(StageRoom):
    """Owns the panel and the proposal that is on show, if one is."""

    key = "strings"

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.panel = StringPanel(window.unit)
        self.panel.edited.connect(window.document.apply)
        self.panel.refused.connect(window.foot.refuse)
        self.panel.wanted.connect(self._propose)
        self.panel.taken.connect(self._take)
        self.panel.left.connect(self._leave)
        self.panel.set_chosen.connect(self._set)
        self.panel.usual_wanted.connect(self._usual)
        self.panel.table.post_chosen.connect(self._post)
        self.panel.table.winds_chosen.connect(self._winds)
        self.proposal: Pairing | None = None
        self.seeking = Seeking(self, window, say("Looking for the best post of each string…"),
                               say("The layout changed meanwhile: ask again."), _sought)
        self.errand = self.seeking.errand
        self.seeking.found.connect(self._found)

    def marks(self) -> dict[str, Drawing]:
        """The angles along the strings, and a proposal as ghost lines."""
        shown = self.window.document.shown
        try:
            made = {"string angles": angle_marks(shown, runs(shown))}
        except GeometryError:
            return {}  # the outline gives no place; the checks say so
        if self.proposal is not None and self._for is shown:
            made["string proposal"] = ghost_strings(self.proposal.runs)
        return made

    def refresh(self) -> None:
        layout = self.window.document.layout
        if self._for is not layout:
            self.proposal = None
            self.panel.show_gain("")
        try:
            self.panel.show_layout(layout, self.window.unit)
        except GeometryError as error:
            self.window.say(str(error))
        if self._for is not layout and _unserved(layout):
            self._propose()

    def leave(self) -> None:
        """A proposal that was found waits here for as long as the layout stays as it is."""
        self.seeking.give_up()

    def shown(self) -> None:
        self.window.canvas.show_more(self.marks())

    def end(self) -> None:
        """The window goes: wait for a search that runs."""
        self.seeking.end()

    # ---- the proposal -----------------------------------------------------
    def _propose(self) -> None:
        self.seeking.start()

    @property
    def _for(self) -> Headstock | None:
        """The layout that posts were last proposed for."""
        return self.seeking.of

    def _found(self, found: Pairing) -> None:
        now = present(self._for)
        if serve(self._for, found.runs, found.winds) == self._for:
            self.panel.show_gain("")
            self.window.say(say("Every string already has its best post."))
            return
        self.proposal = found
        self.window.say("")
        self.panel.show_gain(gain_words(self._for, now, found))
        self.window.canvas.show_more(self.marks())

    def _take(self) -> None:
        if self.proposal is not None and self.window.document.layout is self._for:
            self.window.document.apply(say("Propose posts for strings"), serve(self._for, self.proposal.runs, self.proposal.winds))

    def _leave(self) -> None:
        self.proposal = None
        self.panel.show_gain("")
        self.window.canvas.show_more(self.marks())

    # ---- edits --------------------------------------------------------------
    def _post(self, string: str, tuner: str | None) -> None:
        self._edit(say("Post of string {string}", string=string), partial(set_post, string=string, tuner=tuner))

    def _winds(self, tuner: str, side: str) -> None:
        self._edit(say("Where the string of {tuner} runs", tuner=tuner),
                   partial(set_field, path=("tuners", tuner, "winds"), value=side))

    def _set(self, chosen: StringSet) -> None:
        self._edit(say("Set of strings"), partial(string_set, chosen=chosen))

    def _usual(self, key: str) -> None:
        """Nut and strings as usual for an instrument; what came of it is said, and what stayed."""
        before, unit = self.window.document.layout, self.window.unit
        if self.edit(say("As usual for an instrument"), partial(as_usual, instrument=key, scale=usual_numbers(unit, key).scale)):
            self.window.say(usual_words(before, self.window.document.layout, key, unit))

    def _edit(self, name: str, change: Callable[[Headstock], Headstock]) -> None:
        if not self.edit(name, change):
            self.refresh()


def _sought(layout: Headstock, _: LengthUnit, ask: Ask) -> Pairing:
    return propose_pairing(layout, ask)


def _unserved(layout: Headstock) -> bool:
    """Whether there are posts for all strings and none has one yet: then a proposal is wanted, unasked."""
    return bool(layout.strings) and len(layout.tuners) >= len(layout.strings) and not any(t.string for t in layout.tuners)


def usual_words(before: Headstock, after: Headstock, instrument: str, unit: LengthUnit) -> str:
    """What as_usual changed of nut and strings, and that the nut keeps its width where another one is usual for so many strings."""
    kind, strings = INSTRUMENTS[instrument], after.strings
    words = [say("As usual already: {instrument}.", instrument=kind.title) if after == before else
             say("As usual now: {instrument}.", instrument=kind.title) if strings else
             say("As usual now: {instrument}. No posts tell yet how many strings there are.",
                 instrument=kind.title)]
    usual = kind.nut_for(len(strings), all_paired(after)) if strings else kind.nut_width
    if abs(usual - after.nut.width) > NEAR_USUAL:
        words.append(say("The nut stays {width} wide, where {usual} is usual.", width=format_close(after.nut.width, unit, mark=True),
                         usual=format_close(usual, unit, mark=True)))
    return " ".join(words)


def gain_words(layout: Headstock, now: Pairing, found: Pairing) -> str:
    """What a proposal changes: the widest side angle, the middle one, crossings, strings that rub, and posts wound the other way."""
    def of(pairing: Pairing) -> dict[str, object]:
        mean = math.sqrt(pairing.total / max(1, len(pairing.runs)))
        return {"worst": number(math.degrees(pairing.worst), ".1f"), "mean": number(math.degrees(mean), ".1f"),
                "crossed": pairing.crossings, "rubbing": pairing.rubbing}
    then = of(found)
    words = [say("Ghost lines show it: widest side angle from {worst} to {worst_then} degrees, typical from {mean} to {mean_then}, "
                 "crossings from {crossed} to {crossed_then}, strings that rub somewhere from {rubbing} to {rubbing_then}.",
                 **of(now), **{f"{key}_then": value for key, value in then.items()}) if now.runs else
             say("Ghost lines show it: widest side angle {worst} degrees, typical {mean}, crossings {crossed}, strings that rub "
                 "somewhere {rubbing}.", **then)]
    turned = [run.tuner for run, side in zip(found.runs, found.winds, strict=True) if side != layout.tuner(run.tuner).winds]
    if turned:
        words.append(say("Wound the other way round, so that strings keep clear and straight: {tuners}.", tuners=few(turned, 6)))
    if not found.proven:
        words.append(say("The search was cut short: a better one may exist."))
    return " ".join(words)
