"""What a finish asks of the bores that tuners sit in."""

from app.formats import headstock
from app.window.demo import samples
from geometry.sequence import operations, precedence
from tests.geometry.sequence.specimens import finished


def test_a_finish_is_cleared_out_of_the_bore_that_the_tuner_itself_sits_in() -> None:
    """A post that goes through a plain bore, or whose bushing is as wide as it, has no counterbore to be cleared."""
    bass = finished(headstock.read(samples() / "four-string-bass.headstock.json"))
    ops = operations(bass)
    cleared = {op.id: op for op in ops if op.kind == "final diameter"}
    assert [(op.drillings[0].role, op.drillings[0].diameter) for op in cleared.values()] == 4 * [("post", 14.0)]
    assert {op.words for op in cleared.values()} >= {
        "Clear the finish out of the post bore of bass 1 by hand until it is 14 mm wide again and its tuner goes in."}
    assert {edge.then for edge in precedence(bass, ops) if edge.first == "finish"} == set(cleared)
