"""History: undo only swaps layouts, whatever the order of steps."""

from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

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


def test_going_to_any_step_gives_the_very_layout_made_there():
    history = History(DEMO)
    made = [DEMO]
    for i in range(6):
        made.append(named(str(i)))
        history.push(f"Step {i}", made[-1])
    for number in (3, 0, 6, 5, 1, 4, 2):
        assert history.go(number)
        assert history.current is made[number] and history.at == number
        assert all(one is two for one, two in zip(history.layouts, made, strict=True))
        assert history.names == [f"Step {i}" for i in range(6)]
    assert not history.go(2) and not history.go(7) and not history.go(-1)
    assert history.current is made[2]


def test_after_going_back_a_new_step_ends_the_list_there():
    history = History(DEMO)
    for i in range(4):
        history.push(str(i), named(str(i)))
    history.go(1)
    history.push("Other", named("other"))
    assert history.names == ["0", "Other"] and history.at == 2
    assert history.redo() is None


def test_forgotten_steps_are_counted():
    history = History(DEMO)
    for i in range(MOST_STEPS + 3):
        history.push(str(i), named(str(i)))
    assert history.dropped == 3 and history.names[0] == "3"
    assert history.go(0) and history.current.name == "2"
