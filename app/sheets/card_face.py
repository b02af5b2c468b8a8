"""What stands on a drilling card, from the title band down to the cautions."""

from __future__ import annotations

import math
from collections.abc import Sequence
from textwrap import shorten

from msgspec.structs import replace

from app.formats.letters import text_width
from app.formats.mark_shapes import drawing_box
from app.formats.paper import Placed
from app.sheets.block_table import two_lengths
from app.sheets.book_pages import PIECES_IN_WORDS
from app.sheets.card_rows import hand_op, made_by, rows
from app.sheets.cards import Card
from app.sheets.lay import BAND, TICKED, drawing, moved, tick, title_band
from app.sheets.lengths import card_number, deep, enough, length, tenths, thousandths
from app.sheets.words import LEADING, block, numbers
from app.sheets.work import Work
from geometry.book import open_remarks
from geometry.checks.words import few, told_first
from geometry.drawing import Drawing, Label, Mark, Stroke
from geometry.drawing.cards import Picture, mark_picture, scale_words
from geometry.drawing.heights import LEAST, READ
from geometry.drawing.sections import section_along_bore
from geometry.drawing.shapes import rectangle, straight
from geometry.drawing.wood_section import section_for, wood_section
from geometry.layout import Headstock
from geometry.lengths import from_line, spoken, told_down
from geometry.saying import count, number_list, say, within
from geometry.sequence import Operation
from geometry.sequence.neck_hangs import neck_words
from geometry.sequence.state import state_of
from geometry.solids import Drilling
from geometry.solids.side import block_height, side_bore
from geometry.strings.square_line import base_words, square_line
from geometry.terms import term
from geometry.tilt_words import raised_end
from geometry.tolerance import TOUCH
from geometry.units import format_angle
from geometry.vectors import Box

PAD = 2.5
"""White inside the frame, mm."""
BESIDE = 3.0
"""White between what stands beside each other, mm."""
MARK_PICTURE, NARROWEST = (42.0, 34.0), 30.0
"""Room for the picture of the mark, and how wide it is at least where the section beside it would find no room otherwise, mm."""
FIGURE = 3.2
"""Capital height of the numbers that are set at the drill press, mm."""
BESIDE_HOLE = 22.0
"""Wood shown to either side of a single hole, mm."""


MOST_SAID = 5
"""Cautions and notes that are told one by one: the card of two dozen holes is no higher than a page. The running order has all
cautions, the job book all notes."""
NAMED = 4
"""Steps whose names stand before what is to be heeded at them."""
NOTED = 900
"""Letters of all notes that stand on a card; each has its share."""

Section = tuple[Drawing, Box | None]
"""A section in mm, and what of it is shown when that is not all."""


class Maker:
    """Writes one card from the top down; `width` is that of the whole card (mm), `cut` its section."""

    def __init__(self, layout: Headstock, work: Work, card: Card, width: float, cut: Section) -> None:
        self.layout, self.work, self.card, self.width, self.cut = layout, work, card, width, cut
        self.marks: list[Mark] = []
        self.placed: list[Placed] = []
        self.mark = ""
        """what is in the boxes of the settings, see tick"""
        self.y = 0.0
        self.top = 0.0
        """where settings or table begin, and what stands beside them"""
        self.right = PAD
        """how far they reach"""

    def made(self) -> tuple[tuple[Placed, ...], float]:
        """The card in its frame, its upper left corner the origin, and its height (mm)."""
        self._title()
        if self.card.kind == "side":
            self._settings()
        else:
            self._table()
        self._section()
        self._remarks()
        height = -self.y + PAD - 0.8
        self.marks.append(Stroke(rectangle(0.0, -height, self.width, 0.0), "outline"))
        return (Placed(tuple(self.marks)), *self.placed), height

    @property
    def inner(self) -> float:
        return self.width - 2 * PAD

    def say(self, text: str) -> None:
        lines, self.y = block(text, (PAD, self.y), READ, self.inner)
        self.marks += lines
        self.y -= 0.8

    def _title(self) -> None:
        self.marks += title_band(self.card.title, self._number(), self.width)
        self.y = -BAND - 1.8

    def _number(self) -> str:
        number = f"{card_number(self.card.number)}, {self.work.plan_words}"
        return say("{card}, done", card=number) if self.work.mark(*(op.id for op in self.card.ops)) == "done" else number

    def _table(self) -> None:
        """Face bores, single holes, pins: one line a drilling."""
        self.say(self._lead())
        self.y -= 0.6
        self.top = self.y
        self.right = self._rows(self.card, *self._beside_section)
        self.y -= 0.8

    @property
    def _beside_section(self) -> tuple[float, float]:
        """How wide that may be which the section at full size stands beside, and how high the section is, mm."""
        marks, clip = self.cut
        if not marks:
            return self.inner, 0.0
        left, low, right, high = clip or drawing_box(marks)
        return self.inner - BESIDE - (right - left), high - low

    def _rows(self, card: Card, wanted: float = math.inf, high: float = 0.0) -> float:
        """A line a drilling, no wider than wanted where that breaks no word and makes them no higher than `high`; how far to the right
        they reach."""
        laid, wide = rows(self.layout, self.work, card, self.inner)
        if wide > wanted:
            narrow = rows(self.layout, self.work, card, self.inner, wanted)
            laid, wide = narrow if sum(row.height for row in narrow[0]) <= high else (laid, wide)
        for row in laid:
            self.placed += moved(row.placed, PAD, self.y)
            self.y -= row.height
        return PAD + wide

    def _lead(self) -> str:
        if self.card.kind == "pin":
            return say("Table level; the template clamped on centreline and {line}, through it and the blank into a spoil board.",
                       line=square_line(self.layout.nut))
        if any(d.through for d in self.card.drillings):
            return say("Table level, a spoil board below; depths from where the drill goes in.")
        return say("Table level; depths from where the drill goes in.")

    # ---- side bores -----------------------------------------------------
    def _settings(self) -> None:
        post = next((d for d in self.card.drillings if d.role == "post"), self.card.drillings[0])
        op = self._op(post)
        bore = side_bore(self.layout, self.card.ids[0])
        lies = "back" if post.surface == "treble edge" else "face"
        step = (say("Step {number}:", number=self.work.number[op.id]) + " "
                if op is not None and op.id in self.work.number else "")
        wide = length(post.diameter)
        bit = op.setup.bit if op is not None else wide
        self.say(step + say("drill press, {bit}, {wide} wide; {surface} up, the {lies} against the fence.",
                            bit=bit, wide=wide, surface=term(post.surface), lies=term(lies)))
        self.y -= 0.8
        self.top, before = self.y, len(self.marks)
        if post.mark is None or bore is None:
            self.say(say("{hole} has no mark on the square edge.", hole=post.hole))
            self.top = self.y
            return
        tilt = bore.tilt if op is None or op.setup.table is None else op.setup.table.tilt
        raised = raised_end(tilt)
        y = tenths(abs(post.mark[1]))
        self.mark = "" if op is None else self.work.mark(op.id)
        self._line(say("mark"), from_line(post.mark[1], y, square_line(self.layout.nut)), y)
        squared = tenths(abs(post.mark[1] - bore.squared_miss))
        if abs(bore.squared_miss) > 0.05 and squared != y:
            self._more(say("not at {mark}, squared", mark=tenths(post.mark[1] - bore.squared_miss)))
        below = tenths(post.mark[2])
        self._line("", say("{mark} below the face", mark=below), below)
        lean = format_angle(abs(tilt))
        self._line(say("tilt"), say("level") if raised is None else say("{tilt}, {end} end raised", tilt=lean, end=term(raised)),
                   say("level") if raised is None else lean)
        if raised is not None:
            for base in two_lengths(self.layout.rack.press.base):
                self._more(say("blocks {high} over {base}", high=thousandths(block_height(tilt, base)), base=thousandths(base)))
        fence = None if op is None or op.setup.table is None else op.setup.table.fence
        if fence is not None:
            self._line(say("fence"), say("{fence} to the axis", fence=tenths(fence)), tenths(fence))
        self._line(say("stop"), say("{stop} to full diameter", stop=deep(post.stop)), deep(post.stop))
        self._more(say("{stop} to the point", stop=deep(post.stop + bore.point)))
        self._more(say("({depth} from the seat)", depth=deep(bore.depth)))
        self.right = max(one.at[0] + text_width(one.text, one.height) for one in self.marks[before:] if isinstance(one, Label))
        wide, high = MARK_PICTURE
        left = PAD + self._beside_section[0] - self.right - BESIDE
        picture = mark_picture(self.layout, self.card.ids[0], (left if NARROWEST <= left < wide else wide, high), LEAST)
        if picture is not None:
            self._picture(picture)
        self.y -= 1.0

    def _line(self, name: str, value: str, figure: str) -> None:
        """A setting with its name, ticked off once it is set; `figure` is what the value begins with and what is set, in large letters."""
        base = self.y - FIGURE
        self.marks += tick(PAD, base, FIGURE, self.mark)
        if name:
            self.marks.append(Label(name, (PAD + TICKED, base), READ, "note"))
        x = PAD + self._values
        if value.startswith(f"{figure},"):
            figure += ","
        if value.startswith(figure):
            self.marks.append(Label(figure, (x, base), FIGURE, "note"))
            x, value = x + text_width(figure, FIGURE), value.removeprefix(figure)
            x, value = (x + 1.0, value[1:]) if value.startswith(" ") else (x, value)
        self.marks.append(Label(value, (x, base), READ, "note"))
        self.y -= 5.0

    def _more(self, value: str) -> None:
        """A further line of a setting."""
        self.marks.append(Label(value, (PAD + self._values, self.y - READ), READ, "note"))
        self.y -= LEADING * READ

    @property
    def _values(self) -> float:
        """From the card's inner edge to the values of its settings, mm."""
        return TICKED + max(text_width(each, READ) for each in (say("mark"), say("tilt"), say("fence"), say("stop"))) + 2.0

    def _picture(self, picture: Picture) -> None:
        """The place of the mark, right of the settings."""
        x0, y0, x1, y1 = picture.box
        wide, high = (x1 - x0) * picture.scale, (y1 - y0) * picture.scale
        left, top = self.right + BESIDE, self.top
        clip = (left, top - high, left + wide, top)
        self.placed.append(drawing(picture.drawing, left - x0 * picture.scale, top - high - y0 * picture.scale, picture.scale, clip))
        self._caption(say("from the face, {scale}", scale=scale_words(picture.scale)), left + wide / 2, top - high, wide)
        self.right = left + wide

    def _caption(self, words: str, middle: float, low: float, width: float) -> None:
        """Words under a picture whose lower edge is at `low`, no wider than `width`; what follows stands below them."""
        lines, y = block(words, (middle, low - 1.0), LEAST, width, "dimension")
        self.marks += [replace(line, anchor="middle") for line in lines]
        self.y = min(self.y, y - 0.6)

    def _window(self) -> str:
        """Which other stops would do; or how deep the post's end lies in the inner wall."""
        bore = side_bore(self.layout, self.card.ids[0])
        if bore is None or bore.mark is None:
            return ""
        if bore.window is not None:
            low, high = bore.window
            return say("Stops from {low} to {high} will do.", low=enough(low), high=deep(high))
        return say("The post's end lies {deep} deep in the inner wall.", deep=deep(bore.bears)) if bore.bears > 0 else ""

    def _shared(self, op: Operation | None) -> str:
        """Which other bores are drilled at the same setting."""
        if op is None or op.setup.table is None:
            return ""
        others = [o for o in self.work.ops if o.setup.table == op.setup.table and o.id not in {one.id for one in self.card.ops}
                  and o.kind == op.kind]
        same = [o.features[0] for o in others if o.setup.side == op.setup.side]
        turned = [o.features[0] for o in others if o.setup.side != op.setup.side]
        parts = [", ".join(same)] if same else []
        if turned:
            parts.append(say("{turned} with the blank turned over", turned=", ".join(turned)))
        return say("Same setting: {parts}.", parts='; '.join(parts)) if parts else ""

    def _op(self, d: Drilling) -> Operation | None:
        return next(iter(made_by(self.card, d)), None)

    # ---- section and remarks ------------------------------------------
    def _section(self) -> None:
        """The section to scale through the first axis of the card: beside what is set where it fits at full size, else below."""
        marks, clip = self.cut
        if not marks:
            return
        box = clip or drawing_box(marks)
        wide = box[2] - box[0]
        scale = next((s for s in (1.0, 0.5, 0.2) if wide * s <= self.inner), 0.1)
        if scale < 1.0:
            marks = _legible(marks, scale)
            box = clip or drawing_box(marks)
        what = {"side": say("Section along the bore"), "face": say("Section at the post, square to its edge")}.get(
            self.card.kind, say("Section across, through {ids}", ids=self.card.ids[0]))
        wide, high = (box[2] - box[0]) * scale, (box[3] - box[1]) * scale
        start, top = self.right + BESIDE, self.top
        if scale < 1.0 or start + wide > self.width - PAD + TOUCH:
            start, top = PAD, self.y
        middle = (start + self.width - PAD) / 2
        left, low = middle - wide / 2, top - high
        self.placed.append(drawing(marks, left - box[0] * scale, low - box[1] * scale, scale, None if clip is None else (left, low, left + wide, top)))
        self._caption(f"{what}, {scale_words(scale)}", middle, low, self.width - PAD - start)

    def _to_mind(self) -> list[str]:
        """What to heed at the steps, each once; on a card of several features with their names, unless it holds of all."""
        told: dict[str, list[str]] = {}
        for op in self.card.ops:
            for text in filter(None, (*self.work.cautions(op), self.work.blocked(op))):
                told.setdefault(text, []).append(op.title)
        of_all = 0 if len(self.card.ids) == 1 else len(self.card.ops)
        harms = dict.fromkeys(text for op in self.card.ops for text in self.work.harms(op))
        return [*harms, *(text if len(titles) >= of_all else f"{few(titles, NAMED)}: {text}" for text, titles in told.items())]

    def _remarks(self) -> None:
        """What is drilled at the press beside the post bore, what comes later, then everything to heed."""
        by_hand = [d for d in self.card.drillings if hand_op(self.card, d) is not None]
        at_press = tuple(d for d in self.card.drillings if d not in by_hand)
        if self.card.kind == "side" and len(at_press) > 1:
            self._rows(replace(self.card, drillings=at_press))
        if self.card.kind == "side" and (told := f"{self._window()} {self._shared(self._op(self.card.drillings[0]))}".strip()):
            self.say(told)
        self._later(by_hand)
        self._mind()
        self._notes()

    def _later(self, by_hand: Sequence[Drilling]) -> None:
        """What is done at these holes once the head is in shape: screws `by_hand`, flats, final diameters."""
        if by_hand:
            steps = sorted(self.work.number[op.id] for op in self.card.ops
                           if op.setup.machine == "hand drill" and op.id in self.work.number)
            sizes = sorted({(d.diameter, d.depth) for d in by_hand})
            holes = number_list(say("{wide} wide, {deep} deep", wide=length(a), deep=told_down(b, 2)) for a, b in sizes)
            self.say(count(len(by_hand), "{n} screw pilot later (step {steps}): by hand through the plate once the outline is finished, {holes}.",
                           "{n} screw pilots later (steps {steps}): by hand through the plate once the outline is finished, {holes}.",
                           steps=numbers(steps), holes=holes))
        for op in self.work.ops:
            if op.kind == "flat" and op.features[0] in self.card.ids:
                self.say(say("Later: {words} The stop above reckons with it.", words=within(op.words)))
        own = {d.id for d in self.card.drillings}
        for op in self.work.steps:
            if op.kind == "final diameter" and op.drillings[0].id in own:
                self.say(say("Later (step {step}): {words}", step=self.work.number[op.id], words=within(op.words)))

    def _mind(self) -> None:
        """Everything to heed, and how lengths are told where the nut is slanted."""
        # How the piece lies is set up by the card of a bore from the side, else once for many cards, by the running order.
        necks = [neck_words(self.layout, op.setup, spoken()) for op in self.card.ops if self.card.kind == "side"]
        said = [say("Mind: {text}", text=text) for text in dict.fromkeys(filter(None, (*necks, *self._to_mind())))]
        for text in told_first(said, MOST_SAID, lambda n: count(n, "And {n} more thing to mind: its step in the running order says it.",
                                                                "And {n} more things to mind: their steps in the running order say them.")):
            self.say(text)
        if slanted := base_words(self.layout.nut):
            self.say(slanted)

    def _notes(self) -> None:
        """What the maker noted to do differently."""
        notes = open_remarks(self.layout.book, self.card.ids, [op.id for op in self.card.ops])
        share, rest = NOTED // max(1, min(len(notes), MOST_SAID)), f" {say('... (whole in the job book)')}"
        said = [say("Do differently ({piece}): {note}", piece=PIECES_IN_WORDS[note.piece], note=shorten(note.text, share, placeholder=rest))
                for note in notes]
        for text in told_first(said, MOST_SAID, lambda n: count(n, "And {n} more note in the job book.", "And {n} more notes in the job book.")):
            self.say(text)


def section(layout: Headstock, work: Work, card: Card) -> Section:
    """The section through the first axis of a card: along a tuner's bore through the finished piece, across other holes as the wood is once
    they are drilled. Empty when the layout gives it no place."""
    if card.kind in ("side", "face"):
        return section_along_bore(layout, card.ids[0], spoken()), None
    d = card.drillings[0]
    op = next((one for one in card.ops if d.id in {x.id for x in one.drillings}), None)
    if op is None:
        return (), None
    now = work.number.get(op.id, 0)
    done = [one for one in work.ops if one in card.ops or one.id in work.done or work.number.get(one.id, now) < now]
    line = section_for(layout, op)
    marks = tuple(m for m in wood_section(layout, state_of(layout, done, work.ops), line) if not isinstance(m, Label))
    if not marks:
        return (), None
    at, thick = line.along(d.start[:2]), layout.blank.thickness
    low, high = max(0.0, at - BESIDE_HOLE), min(layout.blank.bass + layout.blank.treble, at + BESIDE_HOLE)
    middle = Stroke(straight((at, 3.0), (at, -thick - 3.0)), "axis", d.of)
    return (*marks, middle), (low, -thick - 3.5, high, 3.5)


def _legible(marks: Drawing, scale: float) -> Drawing:
    """Words at a readable size on a section that is printed smaller: each moved down until it is clear of the others."""
    out: list[Mark] = [m for m in marks if not isinstance(m, Label)]
    boxes: list[Box] = []
    for label in sorted((m for m in marks if isinstance(m, Label)), key=lambda m: -m.at[1]):
        moved_label = replace(label, height=LEAST / scale)
        step = 1.7 * moved_label.height
        if label.at[1] < 0:
            moved_label = replace(moved_label, at=(label.at[0], label.at[1] - 0.9 * moved_label.height + label.height))
        while any(_over(drawing_box((moved_label,)), box) for box in boxes):
            moved_label = replace(moved_label, at=(moved_label.at[0], moved_label.at[1] - step))
        boxes.append(drawing_box((moved_label,)))
        out.append(moved_label)
    return tuple(out)


def _over(a: Box, b: Box) -> bool:
    return min(a[2], b[2]) > max(a[0], b[0]) and min(a[3], b[3]) > max(a[1], b[1])
