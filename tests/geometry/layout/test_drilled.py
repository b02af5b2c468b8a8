"""What is drilled or cut already, by the job book: proposals and cures leave it where it is."""

from msgspec.structs import replace

from app.panels.describe import describe
from app.window.demo import demo
from geometry.accuracy.knobs import knobs
from geometry.checks import Snag, check
from geometry.checks.moves import Change, Shift, Slide, Stretch
from geometry.checks.snags import TIGHT
from geometry.cures.tracks import tracks
from geometry.edits import set_field
from geometry.layout import Ear, Row, RowPlace, SingleHole, StraightRun, Task, Time, cut, drilled, staying, staying_rows
from geometry.sequence import operations
from tests.geometry.accuracy.specimens import sample


def timed(layout, feature, piece="real", minutes=4.0, kind="side bore"):
    """The layout with that operation of a feature, as the plan names it, in its book."""
    op = next(op for op in operations(layout) if feature in op.features and op.kind == kind)
    time = Time(piece=piece, task=Task(operation=op.id, title=op.title, features=(feature,)), minutes=minutes)
    return replace(layout, book=replace(layout.book, times=(*layout.book.times, time)))


def test_only_holes_of_the_real_piece_are_in_the_wood():
    layout = demo()
    assert drilled(layout) == frozenset()
    assert drilled(timed(layout, "treble side 2")) == {"treble side 2"}
    assert drilled(timed(layout, "treble face 1", kind="bore")) == {"treble face 1"}
    assert drilled(timed(layout, "treble side 2", piece="practice")) == drilled(timed(layout, "treble side 2", minutes=0.0)) == frozenset()
    sawn = next(op for op in operations(layout) if op.kind == "saw" or op.kind.startswith("waste"))
    book = replace(layout.book, times=(Time(piece="real", minutes=5.0, task=Task(
        operation=sawn.id, features=tuple(f for f in sawn.features if f != "outline"))),))
    assert drilled(replace(layout, book=book)) == frozenset()


def test_the_hole_of_a_pin_in_a_bore_is_that_bore():
    layout = sample("three-a-side")
    op = next(op for op in operations(layout) if op.kind == "pin hole" and op.features == ("nut pin", "bass 1"))
    time = Time(piece="real", task=Task(operation=op.id, title=op.title, features=op.features), minutes=4.0)
    job = replace(layout, book=replace(layout.book, times=(time,)))
    assert drilled(job) == {"nut pin", "bass 1"} and staying_rows(job) == {"bass row"}


def test_no_proposal_moves_what_is_drilled():
    layout = timed(demo(), "treble side 2")
    assert staying(layout) == {"treble side 2"}
    moved = [knob.features for knob in knobs(layout)]
    assert any("treble side 2" in one for one in map(lambda knob: knob.features, knobs(demo())))
    assert not any("treble side 2" in one for one in moved) and any("bass side 2" in one for one in moved)


def test_no_cure_moves_what_is_drilled():
    near = set_field(demo(), ("tuners", [t.id for t in demo().tuners].index("treble side 2"), "place", "along"), 95.0)

    def slid(layout):
        return {move.of for snag in check(layout).snags if "treble side 2" in snag.between
                for track in tracks(layout, snag) if isinstance(move := track.make(1.0), Slide)}
    assert "treble side 2" in slid(near)
    assert "treble side 2" not in slid(timed(near, "treble side 2"))


def test_no_cure_puts_wood_back_into_what_is_drilled():
    """Bores of one pattern are drilled less deep all together, so with one of them drilled they are not; deeper they may be."""
    layout = demo()
    pattern = layout.pattern(layout.tuner("treble side 2").pattern)
    at = next(k for k, bore in enumerate(pattern.bores) if bore.role == "post")
    snag = Snag("point-to-wall", TIGHT, ("treble side 3",), (0.0, 0.0, 0.0), 0.5, 1.0, "", "")

    def depths(layout, kind):
        moves = [way.make(1.0) for way in tracks(layout, replace(snag, kind=kind))]
        return [move.after - move.before for move in moves if isinstance(move, Change) and move.path == ("patterns", pattern.id, "bores", at, "depth")]
    for kind, by in (("point-to-wall", -1.0), ("side-bore-to-hole", -1.0), ("slot-not-reached", 1.0)):
        assert depths(layout, kind) == [by]
        assert depths(timed(layout, "treble side 2"), kind) == ([by] if by > 0 else [])


def test_rows_with_a_member_that_stays_are_told():
    first = demo().tuners[0]
    row = Row(id="row", spacing=30.0, run=StraightRun(start=(0.0, 40.0), heading=90.0))
    layout = replace(demo(), rows=(row,), tuners=(replace(first, place=RowPlace(row="row", index=0)), *demo().tuners[1:]))
    assert staying_rows(layout) == staying_rows(demo()) == frozenset()
    assert staying_rows(replace(layout, tuners=(replace(layout.tuners[0], held=True), *layout.tuners[1:]))) == {"row"}


def test_no_cure_moves_a_pin_or_a_hole_that_is_drilled():
    pin, hole = demo().pins[0], SingleHole(id="lamp", at=(5.0, 50.0), diameter=4.0)
    near = replace(demo(), holes=(hole,), pins=(replace(pin, at=(1.0, 50.0)), *demo().pins[1:]))
    for id, kind in ((pin.id, "pin hole"), ("lamp", "bore")):
        for layout, some in ((near, True), (timed(near, id, kind=kind), False)):
            moves = [track.make(1.0) for snag in check(layout).snags if {"lamp", pin.id} == set(snag.between) for track in tracks(layout, snag)]
            assert any(move.of == id for move in moves if isinstance(move, Shift)) == some, (id, some)


def test_a_slot_is_cut_as_soon_as_wood_is_out_of_it():
    layout = demo()
    slot = layout.slots[0].id
    assert cut(layout) == cut(timed(layout, slot, "practice", kind="rout")) == frozenset()
    for kind in {op.kind for op in operations(layout) if slot in op.features}:
        assert cut(timed(layout, slot, kind=kind)) == ({slot} if kind in ("waste holes", "saw", "rout") else set()), kind
    for kind in ("cut outline", "rout outline"):
        done = timed(layout, "outline", kind=kind)
        task = replace(done.book.times[0].task, features=())
        assert cut(replace(layout, book=replace(done.book, times=(Time(piece="real", minutes=1.0, task=task),)))) == {"outline"}


def test_no_cure_puts_wood_back_into_a_slot_that_is_cut():
    layout = demo()
    slot = layout.slots[0].id
    deep = set_field(layout, ("slots", slot, "depth"), 12.0)
    snag = Snag("rail", TIGHT, (slot,), (0.0, 0.0, 0.0), 0.5, 1.0, "", "", push=(1.0, 0.0))

    def signs(layout, kind="rail"):
        moves = [way.make(1.0) for way in tracks(layout, replace(snag, kind=kind))]
        return {(type(move).__name__, 0 if isinstance(move, Shift) else move.by > 0 if isinstance(move, Stretch) else move.after > move.before)
                for move in moves}
    assert signs(deep) == {("Shift", 0), ("Stretch", True), ("Stretch", False), ("Change", True), ("Change", False)}
    for kind in ("rail", "bit-too-wide"):
        assert signs(timed(deep, slot, kind="rout"), kind) == {("Stretch", True), ("Change", True)}


def test_no_cure_makes_a_blank_larger_whose_outline_is_cut():
    snag = Snag("blank-too-small", TIGHT, ("outline", "blank"), (0.0, 0.0, 0.0), 0.5, 1.0, "", "")
    assert {track.make(1.0).path[0] for track in tracks(demo(), snag)} == {"blank"}
    assert not tracks(timed(demo(), "outline", kind="cut outline"), snag)


def test_no_cure_makes_an_ear_wider_or_narrower_that_is_glued_on():
    layout = replace(demo(), ears=(Ear(id="ear", side="treble", width=18.0, start=20.0, end=170.0),))
    snag = Snag("glue-line", TIGHT, ("treble side 2", "ear"), (0.0, 0.0, 0.0), 0.5, 1.0, "", "")

    def ears(layout):
        return sorted(move.after - move.before for move in (way.make(1.0) for way in tracks(layout, snag))
                      if isinstance(move, Change) and move.path[0] == "ears")
    done = timed(layout, "ear", kind="glue ear")
    assert ears(layout) == ears(timed(layout, "ear", "practice", kind="glue ear")) == [-1.0, 1.0]
    assert ears(done) == [] and any(isinstance(way.make(1.0), Slide) for way in tracks(done, snag))


def test_the_panel_says_what_is_cut():
    slot = demo().slots[0].id
    for layout, told in ((demo(), False), (timed(demo(), slot, kind="rout"), True)):
        assert any(row.value == "cut: a change here changes the plan alone" and row.warn for row in describe(layout, slot, "mm").facts) == told


def test_the_panel_says_what_is_drilled():
    near = replace(demo(), holes=(SingleHole(id="lamp", at=(5.0, 50.0), diameter=4.0),))
    for id, kind in (("treble side 2", "side bore"), ("lamp", "bore"), (demo().pins[0].id, "pin hole")):
        for layout, told in ((near, False), (timed(near, id, kind=kind), True)):
            facts = describe(layout, id, "mm").facts
            assert any(row.value == "drilled: a move here moves the plan alone" and row.warn for row in facts) == told, id
