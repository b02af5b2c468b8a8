"""The Router stage: what each slot and the outline are routed with, planned beside the window."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from msgspec import Struct
from msgspec.structs import replace

from app.panels.pages import template_rows
from app.panels.router.rout_panel import RoutPanel
from app.panels.router.rout_sheet import RoutSheet, rout_sheets, template_notes
from app.threads.background import raised
from app.window.rooms.planning import PlanningRoom, PlanWords, asked_for
from app.window.rooms.rack_desk import RackDesk
from app.window.rooms.router_strip import RouterStrip
from app.window.rooms.router_template import write_template
from geometry.cancellation import Ask, go_on
from geometry.drawing import Drawing
from geometry.drawing.router_face import face_groups, note_marks
from geometry.edits.rack import choose_route, set_template_tool
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking
from geometry.routing import plan_routing
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


WORDS = PlanWords(
    first=say("The plan is being worked out."),
    anew=say("The plan on show is older than the last change: it is being worked out anew."),
    stopped=say("Stopped: there is no plan of this layout yet."),
    older=say("Stopped: the plan on show is older than the last change. Do not work by it."),
    done=say("The plan on show is of this layout."))


class Planned(Struct, frozen=True):
    """What the planning brought for one layout and unit."""

    layout: Headstock
    """of record: the one that was planned, or one that differs in nothing that a plan reads"""
    unit: LengthUnit
    sheets: tuple[RoutSheet, ...]
    notes: tuple[str, ...]
    marks: dict[str, Drawing]
    """on the face, by what they show"""


class RouterRoom(PlanningRoom):
    """Keeps the plans in step with the layout while the stage is on show."""

    key = "router"

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.panel = RoutPanel(window.unit)
        self.panel.edited.connect(window.document.apply)
        self.panel.refused.connect(window.foot.refuse)
        self.panel.plan_chosen.connect(self._choose)
        self.panel.template_wanted.connect(self._make_template)
        self.panel.template_file_wanted.connect(self._write_template)
        self.strip = self.shows = RouterStrip(window)
        self.rack = RackDesk(window)
        self.centre = self.rack.view
        self.shows.rack_wanted.connect(self._show_rack)
        self.shows.changed.connect(self._shows_changed)
        self.planned: Planned | None = None
        self.plan_over(self.panel, WORDS)

    # ---- the stage ------------------------------------------------------
    def enter(self) -> None:
        """The head is in the middle, or the rack where it was left so."""
        self.centre = self.rack.view if self.shows.rack.isChecked() else None

    def takes(self, held: tuple[str, ...]) -> bool:
        """A slot or the outline that is held is the one that the panel tells of."""
        if len(held) == 1 and self.panel.tells_of(held[0]):
            self.panel.show_of(held[0])
            return True
        return not held

    def refresh(self) -> None:
        """Show the rack as it is now; plan anew when layout or unit changed.

        A planning for another layout that still runs is stopped first.
        """
        if self.centre is not None:
            self.rack.show()
        layout, unit = self.window.document.layout, self.window.unit
        self.panel.show_template(template_rows(layout))  # at once: what is typed while a plan is on its way is typed into this layout
        if self.planning.see_to(asked_for(layout, unit), partial(plan, layout, unit)):
            self.planned = replace(self.planned, layout=layout)

    def marks(self) -> dict[str, Drawing]:
        """What the strip asks for of the plans of this very layout."""
        if self.planned is None or self.planned.layout is not self.window.document.shown:
            return {}
        shown = self.shows.shown
        return {f"router {name}": marks for name, marks in self.planned.marks.items() if name in shown}

    def shown(self) -> None:
        """While something is dragged the marks of the layout before it would lie: take them away."""
        self.window.canvas.show_more(self.marks())

    # ---- answers --------------------------------------------------------
    def _answered(self, planned: Planned) -> None:
        self.planned = planned
        self.panel.show_sheets(planned.sheets, planned.notes)

    def _failed(self, error: Exception) -> None:
        self.planned = None
        raised(error, but=GeometryError)
        self.panel.show_message(say("There is no plan: {error}", error=error))

    def _ended(self) -> None:
        super()._ended()
        if self.window.stage == self.key:
            self.window.show_room()

    def open_rack(self) -> None:
        """Lay the rack in the middle and hand the keyboard to its table."""
        self.shows.rack.setChecked(True)
        self.rack.view.table.setFocus()

    def _show_rack(self, on: bool) -> None:
        self.centre = self.rack.view if on else None
        if on:
            self.rack.show()
        self.window.show_room()

    def _shows_changed(self) -> None:
        self.window.canvas.show_more(self.marks())

    # ---- what the maker wants -------------------------------------------
    def _choose(self, of: str, tools: tuple) -> None:
        self.edit(say("Choose another plan") if tools else say("Back to the best plan"), partial(choose_route, of=of, tools=tools))

    def _make_template(self, tool: tuple[str, str | None]) -> None:
        self.edit(say("Make the template for this plan"), partial(set_template_tool, bit=tool[0], bush=tool[1]))

    def _write_template(self, tool: tuple[str, str | None]) -> None:
        if self.planned is None or self.planned.layout is not self.window.document.layout:
            self.window.say(say("The layout has changed and is being planned anew: write the template when that plan is on show."))
            return
        write_template(self.window, *tool, self.panel.of)


def plan(layout: Headstock, unit: LengthUnit, ask: Ask = go_on) -> Planned:
    """Plans and their words in the maker's unit. `ask` is asked between their parts. GeometryError when the outline or a slot has no inside."""
    with speaking(unit):
        routing = plan_routing(layout, ask)
        notes = template_notes(layout, routing, ask)
        marks = face_groups(layout, routing, ask)
        return Planned(layout, unit, rout_sheets(layout, routing, ask), tuple(note.words[:1].upper() + note.words[1:] for note in notes),
                       marks | {"template": marks["template"] + note_marks(notes)})
