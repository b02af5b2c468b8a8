"""Where notes of the job book are shown on the drawing."""

import pytest

from geometry.drawing import Disc, Label, Stroke, opened_out_groups
from geometry.drawing.pinned_notes import HIGH, WIDE, pinned_notes
from geometry.layout import Remark, Task
from tests.geometry.drawing.specimens import plain_head

HEAD = plain_head()
GROUPS = opened_out_groups(HEAD)


def note(on=None, **more):
    return Remark(piece="practice", text="Mind", on=on, **more)


@pytest.mark.parametrize("id", [pin.id for pin in HEAD.pins] + [slot.id for slot in HEAD.slots] + ["outline"])
def test_a_sheet_of_its_size_stands_beside_the_feature(id):
    marks = pinned_notes([note(id)], GROUPS)[f"note {id}"]
    boxes = [mark.path.box for mark in marks if isinstance(mark, Stroke)]
    left, low = min(b[0] for b in boxes), min(b[1] for b in boxes)
    right, high = max(b[2] for b in boxes), max(b[3] for b in boxes)
    assert (right - left, high - low) == (pytest.approx(WIDE), pytest.approx(HIGH))
    assert not any(isinstance(mark, Label) for mark in marks)
    rounds = [mark for mark in GROUPS[id] if isinstance(mark, Disc) and not mark.hidden]
    if rounds:
        (x, y), r = rounds[0].centre, rounds[0].radius
        assert x + r < left < x + r + 1 and y + r < low < y + r + 1


def test_several_notes_are_counted_and_those_seen_to_or_without_a_place_are_not_shown():
    pin = HEAD.pins[0].id
    task = Task(operation="pin hole", features=(pin,))
    found = pinned_notes([note(pin), note(task=task), note(pin, done=True), note("gone"), note()], GROUPS)
    assert list(found) == [f"note {pin}"]
    assert [mark.text for mark in found[f"note {pin}"] if isinstance(mark, Label)] == ["2"]
