"""History: undo only swaps layouts, whatever the order of steps."""

from msgspec.structs import replace

from hypothesis import given
from hypothesis import strategies as st

from app.document.history import MOST_STEPS, History
from app.window.demo import demo

DEMO = demo()


def named(name: str):
    return replace(DEMO, name=name)


def test_a_step_that_changes_nothing_is_no_step():
    history = History(DEMO)
    assert not history.push("Nothing", replace(DEMO))
    assert history.undo_name is None


def test_undo_gives_back_the_very_same_layout():
    history = History(DEMO)
    history.push("Rename", named("other"))
    assert history.undo() == "Rename"
    assert history.current is DEMO
    assert history.redo() == "Rename"
    assert history.current.name == "other"


def test_a_new_step_forgets_what_was_undone():
    history = History(DEMO)
    history.push("One", named("1"))
    history.undo()
    history.push("Two", named("2"))
    assert history.redo() is None


def test_the_oldest_steps_go_first():
    history = History(DEMO)
    for i in range(MOST_STEPS + 5):
        history.push(str(i), named(str(i)))
    assert len(history.past) == MOST_STEPS


@given(st.lists(st.one_of(st.integers(0, 5).map(str), st.sampled_from(["undo", "redo"])), max_size=60))
def test_any_sequence_equals_a_replay_on_a_list(words):
    history, line, at = History(named("start")), ["start"], 0
    for word in words:
        if word == "undo":
            assert (history.undo() is None) == (at == 0)
            at = max(0, at - 1)
        elif word == "redo":
            assert (history.redo() is None) == (at == len(line) - 1)
            at = min(len(line) - 1, at + 1)
        elif history.push("Rename", named(word)):
            line, at = [*line[:at + 1], word], at + 1
        assert history.current.name == line[at]
