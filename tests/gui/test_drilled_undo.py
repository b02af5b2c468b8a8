"""Going to and fro in the history where holes are drilled already: the wood does not go along, and the foot says so."""

from msgspec.structs import replace

from geometry.book import tick_off
from geometry.edits import add_hole, mirror_layout, move_features, remove_features, rename
from geometry.layout import Made, Task
from geometry.layout.drilled import drilling_of
from geometry.sequence import operations
from geometry.solids import holes
from geometry.solids.in_wood import bored

TOLD = "(in the real piece already, and drawn otherwise now: {name})"


def drill(bench, feature):
    op = next(op for op in operations(bench.layout) if feature in op.features and op.kind == "bore")
    task = Task(operation=op.id, title=op.title, features=(feature,))
    bench.window.document.record("done", lambda book: tick_off(replace(book, piece="real"), task, 1))


def test_a_hole_that_was_moved_and_then_drilled_is_told_of_as_the_move_is_undone(bench):
    feature, told = "treble face 2", TOLD.format(name="treble face 2")
    run, foot = bench.window.commands.run, bench.window.foot
    bench.window.document.apply("Nudge", move_features(bench.layout, (feature,), (0.0, 0.5)))
    run("undo")
    assert foot.said == "Undone: Nudge", "nothing is drilled yet"
    run("redo")
    drill(bench, feature)
    bench.window.document.apply("Name", replace(bench.layout, name="another"))
    run("undo")
    assert foot.said == "Undone: Name"
    run("undo")
    assert foot.said == f"Undone: Nudge {told}"
    run("redo")
    assert foot.said == f"Done again: Nudge {told}"
    bench.window.changes.go(0)
    assert foot.said == f"Back to the beginning {told}"


def test_to_put_a_hole_back_to_where_it_was_drilled_is_no_fault(bench):
    feature, document, run, foot = "treble face 2", bench.window.document, bench.window.commands.run, bench.window.foot
    hole = next(hole for hole in holes(bench.layout) if hole.of == feature)
    op = next(op for op in operations(bench.layout) if feature in op.features and op.kind == "bore")
    task = Task(operation=op.id, title=op.title, features=(feature,))
    made = {drilling.id: bored(drilling) for drilling in hole.drillings}[drilling_of(task)]
    document.record("done", lambda book: tick_off(replace(book, piece="real"), task, 1, Made(hole=made)))
    document.apply("Nudge", move_features(bench.layout, (feature,), (0.0, 0.5)))
    run("undo")
    assert foot.said == "Undone: Nudge", "it is drawn as it is drilled"
    run("redo")
    assert foot.said == f"Done again: Nudge {TOLD.format(name=feature)}"


def test_an_older_hole_with_the_name_of_the_drilled_one_is_told_of(bench):
    document, run, foot = bench.window.document, bench.window.commands.run, bench.window.foot
    document.apply("One", add_hole(bench.layout, (0.0, 20.0), 5.0))
    name = bench.layout.holes[-1].id
    document.apply("None", remove_features(bench.layout, (name,)))
    document.apply("Two", add_hole(bench.layout, (0.0, 30.0), 5.0))
    assert bench.layout.holes[-1].id == name
    drill(bench, name)
    for undone in ("Two", "None"):
        run("undo")
        assert foot.said == f"Undone: {undone} {TOLD.format(name=name)}"


def test_a_drilled_hole_under_its_name_before_is_no_other_hole(bench):
    feature, run, foot = "treble face 2", bench.window.commands.run, bench.window.foot
    drill(bench, feature)
    bench.window.document.apply("Rename", rename(bench.layout, "tuners", feature, "third"))
    run("undo")
    assert foot.said == "Undone: Rename"
    run("redo")
    assert foot.said == "Done again: Rename"
    bench.window.document.apply("Nudge", move_features(bench.layout, ("third",), (0.0, 0.5)))
    bench.window.changes.go(0)
    assert foot.said == f"Back to the beginning {TOLD.format(name=feature)}"
    bench.window.changes.go(1)
    assert foot.said == "Forward to: Rename"


def test_after_a_mirror_image_a_hole_with_the_name_of_the_drilled_one_is_not_told_of(bench):
    document, run, foot = bench.window.document, bench.window.commands.run, bench.window.foot
    for name, x in (("bass screw", -20.0), ("treble screw", 20.0)):
        layout = add_hole(bench.layout, (x, 185.0), 3.0)
        document.apply(name, rename(layout, "holes", layout.holes[-1].id, name))
    drilling, = (drilling for hole in holes(bench.layout) for drilling in hole.drillings if drilling.id == "bass screw.1")
    task = Task(operation="bore bass screw.1", features=("bass screw",))
    document.record("done", lambda book: tick_off(replace(book, piece="real"), task, 1, Made(hole=bored(drilling))))
    document.apply("Mirror", mirror_layout(bench.layout))
    document.apply("Remove", remove_features(bench.layout, ("treble screw",)))  # not drilled: its twin is where the hole in the wood is
    for key, said in (("undo", "Undone: Remove"), ("redo", "Done again: Remove"), ("undo", "Undone: Remove"), ("undo", "Undone: Mirror")):
        run(key)
        assert foot.said == said
