"""What stands on a drilling card, from the title band down to the cautions."""

from __future__ import annotations

from msgspec.structs import replace

from app.formats.letters import text_width
from app.formats.mark_shapes import drawing_box
from app.formats.paper import Box, Placed
from app.sheets.block_table import two_lengths
from app.sheets.book_pages import PIECES_IN_WORDS
from app.sheets.card_rows import hand_op, rows
from app.sheets.cards import Card
from app.sheets.lay import BODY, SMALL, Block, band, drawing, moved, tick
from app.sheets.lengths import card_number, deep, length, tenths, thousandths
from app.sheets.words import block, numbers, short
from app.sheets.work import Work
from geometry.book import open_remarks
from geometry.drawing import Drawing, Label, Mark, Stroke
from geometry.drawing.cards import Picture, mark_picture, scale_words
from geometry.drawing.sections import section_along_bore
from geometry.drawing.shapes import rectangle, straight
from geometry.drawing.wood_section import section_for, wood_section
from geometry.layout import Headstock
from geometry.lengths import from_line, spoken, told_down
from geometry.saying import number_list, say, within
from geometry.sequence import Operation
from geometry.sequence.state import state_of
from geometry.solids import Drilling
from geometry.solids.side import block_height, side_bore
from geometry.strings.square_line import slant_words, square_line
from geometry.terms import term
from geometry.tilt_words import raised_end
from geometry.units import format_angle

PAD = 2.5
"""White inside the frame, mm."""
BANDS = 6.4
"""Height of the title band, mm."""
SIDE_PICTURE = (38.0, 31.0)
"""Room for the picture of the mark, mm."""
SETTINGS = 60.0
"""Room for the settings on a card of double width, mm."""
NAMES = 13.0
"""Room for a box and the name of a setting, mm; more where the language needs it."""
FIGURE = 2.5
"""Capital height of the numbers that are set at the drill press, mm: read at arm's length."""
BESIDE_HOLE = 26.0
"""Wood shown to either side of a single hole, mm."""


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

    def block(self) -> Block:
        """The card, its frame drawn round it by whoever knows how high it becomes."""
        self._title()
        if self.card.kind == "side":
            self._settings()
        else:
            self._table()
        self._section()
        self._remarks()
        return Block((Placed(tuple(self.marks)), *self.placed), -self.y + PAD)

    @property
    def inner(self) -> float:
        return self.width - 2 * PAD

    def say(self, text: str) -> None:
        lines, self.y = block(text, (PAD, self.y), SMALL, self.inner)
        self.marks += lines
        self.y -= 0.8

    def _title(self) -> None:
        base, number = -BANDS / 2 - 1.1, self._number()
        room = self.width - text_width(number, BODY) - 3 * PAD
        self.marks += [band(self.width, BANDS), Label(short(self.card.title, 2.2, room), (PAD, base), 2.2, "note"),
                       Label(number, (self.width - PAD, base), BODY, "note", anchor="right")]
        self.y = -BANDS - 1.8

    def _number(self) -> str:
        number = card_number(self.card.number)
        return say("{card}, done", card=number) if self.work.mark(*(op.id for op in self.card.ops)) == "done" else number

    def _table(self) -> None:
        """Face bores, single holes, pins: one line a drilling."""
        self.say(self._lead())
        self.y -= 0.6
        for row in rows(self.layout, self.work, self.card, self.inner):
            self.placed += moved(row.placed, PAD, self.y)
            self.y -= row.height
        self.y -= 0.8

    def _lead(self) -> str:
        steps = sorted(self.work.number[op.id] for op in self.card.ops if op.id in self.work.number)
        names = (say("Steps {steps}.", steps=numbers(steps)) + " " if len(steps) > 1 else
                 say("Step {step}.", step=steps[0]) + " " if steps else "")
        if self.card.kind == "pin":
            return names + say("Table level; the template clamped on centreline and {line}, through it and the blank.",
                               line=square_line(self.layout.nut))
        return names + say("Table level; depths from where the drill goes in.")

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
        top = self.y - 0.8
        self.y, before = top, len(self.marks)
        if post.mark is None or bore is None:
            self.say(op.blocked if op is not None else say("{hole} has no mark on the square edge.", hole=post.hole))
            return
        tilt = bore.tilt if op is None or op.setup.table is None else op.setup.table.tilt
        raised = raised_end(tilt)
        y = tenths(abs(post.mark[1]))
        self.mark = "" if op is None else self.work.mark(op.id)
        self._line(say("mark"), from_line(post.mark[1], y, square_line(self.layout.nut)), y)
        below = tenths(post.mark[2])
        self._line("", say("{mark} below the face", mark=below), below)
        squared = tenths(abs(post.mark[1] - bore.squared_miss))
        if abs(bore.squared_miss) > 0.05 and squared != y:
            self._more(say("not at {mark}, squared", mark=tenths(post.mark[1] - bore.squared_miss)))
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
        beside = self.width - PAD - 1.5 - max(one.at[0] + text_width(one.text, one.height) for one in self.marks[before:] if isinstance(one, Label))
        room = (min(max(SIDE_PICTURE[0], self.inner - SETTINGS), beside), SIDE_PICTURE[1])
        picture = mark_picture(self.layout, self.card.ids[0], room)
        if picture is not None:
            self._picture(picture, top)
            self.y = min(self.y, top - SIDE_PICTURE[1] - 4.6)
        self.y -= 1.0
        shared = self._shared(op)
        if shared:
            self.say(shared)

    def _line(self, name: str, value: str, figure: str) -> None:
        """A setting with its name, ticked off once it is set; `figure` is what the value begins with and what is set, in large letters."""
        base = self.y - FIGURE
        self.marks += tick(PAD, base, mark=self.mark)
        if name:
            self.marks.append(Label(name, (PAD + 4.2, base), BODY, "note"))
        x = PAD + self._values
        if value.startswith(f"{figure},"):
            figure += ","
        if value.startswith(figure):
            self.marks.append(Label(figure, (x, base), FIGURE, "note"))
            x, value = x + text_width(figure, FIGURE), value.removeprefix(figure)
            x, value = (x + 1.0, value[1:]) if value.startswith(" ") else (x, value)
        self.marks.append(Label(value, (x, base), BODY, "note"))
        self.y -= 4.7

    def _more(self, value: str) -> None:
        """A further line of a setting."""
        self.marks.append(Label(value, (PAD + self._values, self.y - BODY), BODY, "note"))
        self.y -= 3.6

    @property
    def _values(self) -> float:
        """From the card's inner edge to the values of its settings, mm."""
        return max(NAMES, max(4.2 + text_width(each, BODY) for each in (say("mark"), say("tilt"), say("fence"), say("stop"))) + 1.2)

    def _picture(self, picture: Picture, top: float) -> None:
        x0, y0, x1, y1 = picture.box
        wide, high = (x1 - x0) * picture.scale, (y1 - y0) * picture.scale
        left = self.width - PAD - wide
        clip = (left, top - high, left + wide, top)
        self.placed.append(drawing(picture.drawing, left - x0 * picture.scale, top - high - y0 * picture.scale, picture.scale, clip))
        self.marks.append(Label(say("from the face, {scale}", scale=scale_words(picture.scale)), (self.width - PAD, top - high - 2.6), 1.3, "dimension",
                                anchor="right"))

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
        return next((op for op in self.card.ops if d.id in {one.id for one in op.drillings}), None)

    # ---- section and remarks ------------------------------------------
    def _section(self) -> None:
        """The section to scale through the first axis of the card."""
        marks, clip = self.cut
        if not marks:
            return
        box = clip or drawing_box(marks)
        wide, high = box[2] - box[0], box[3] - box[1]
        scale = next((s for s in (1.0, 0.5, 0.2) if wide * s <= self.inner), 0.1)
        if scale < 1.0:
            marks = _legible(marks, scale)
            box = clip or drawing_box(marks)
            wide, high = box[2] - box[0], box[3] - box[1]
        left = PAD + (self.inner - wide * scale) / 2
        low = self.y - high * scale
        room = None if clip is None else (left, low, left + wide * scale, self.y)
        self.placed.append(drawing(marks, left - box[0] * scale, low - box[1] * scale, scale, room))
        what = {"side": say("Section along the bore"), "face": say("Section through the post, square to its edge")}.get(
            self.card.kind, say("Section across, through {ids}", ids=self.card.ids[0]))
        self.marks.append(Label(f"{what}, {scale_words(scale)}", (self.width / 2, low - 2.6), 1.3, "dimension", anchor="middle"))
        self.y = low - 5.0

    def _remarks(self) -> None:
        """What is drilled at the press beside the post bore, screws that come later, then everything to heed."""
        by_hand = [d for d in self.card.drillings if hand_op(self.card, d) is not None]
        at_press = tuple(d for d in self.card.drillings if d not in by_hand)
        if self.card.kind == "side" and len(at_press) > 1:
            for row in rows(self.layout, self.work, replace(self.card, drillings=at_press), self.inner):
                self.placed += moved(row.placed, PAD, self.y)
                self.y -= row.height
        if by_hand:
            steps = sorted(self.work.number[op.id] for op in self.card.ops
                           if op.setup.machine == "hand drill" and op.id in self.work.number)
            sizes = sorted({(d.diameter, d.depth) for d in by_hand})
            holes = number_list(say("{wide} wide, {deep} deep", wide=length(a), deep=told_down(b, 2)) for a, b in sizes)
            self.say(say("{n} screw pilots later (steps {steps}): by hand through the plate once the outline is "
                         "finished, {holes}.",
                         n=len(by_hand), steps=numbers(steps), holes=holes))
        for op in self.work.ops:
            if op.kind == "flat" and op.features[0] in self.card.ids:
                self.say(say("Later: {words} The stop above reckons with it.", words=within(op.words)))
        said: list[str] = []
        for op in self.card.ops:
            said += [text for text in (*op.cautions, self.work.blocked(op)) if text and text not in said]
        for text in said:
            self.say(say("Mind: {text}", text=text))
        if slanted := slant_words(self.layout.nut):
            self.say(slanted)
        for note in open_remarks(self.layout.book, self.card.ids, [op.id for op in self.card.ops]):
            self.say(say("Do differently ({piece}): {note}", piece=PIECES_IN_WORDS[note.piece], note=note.text))


def section(layout: Headstock, work: Work, card: Card) -> Section:
    """The section through the first axis of a card; empty when the layout gives it no place."""
    if card.kind in ("side", "face"):
        return section_along_bore(layout, card.ids[0], spoken()), None
    d = card.drillings[0]
    op = next((one for one in card.ops if d.id in {x.id for x in one.drillings}), None)
    if op is None:
        return (), None
    done = [one for one in work.ops if one.kind in ("mark", "glue ear") or one.drillings and one.setup.machine == "drill press"]
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
        moved_label = replace(label, height=1.5 / scale)
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


def frame(width: float, height: float, plan: str) -> tuple[Mark, ...]:
    """The line to cut a card out along, and which plan it is of."""
    return (Stroke(rectangle(0.0, -height, width, 0.0), "outline"),
            Label(plan, (width - PAD, -height + 0.7), 1.3, "dimension", anchor="right"))

