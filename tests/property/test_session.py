"""Any order of edits, undo, redo, entries, saving, opening and dying: always what doing it over again gives."""

import importlib
import inspect
import pkgutil
import random
import tempfile
from functools import reduce
from pathlib import Path
from types import CodeType

import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule, run_state_machine_as_test

from app.document import Document
from app.document.history import MOST_STEPS
from geometry import edits
from geometry.book import add_remark, remove_remark, set_minutes
from geometry.edits import duplicate, rename
from geometry.errors import GeometryError
from geometry.layout import Headstock, Remark, Task
from tests.endurance import edits as tried
from tests.endurance.edits import EDITS
from tests.endurance.session import Session, by_chance
from tests.property.layouts import DEMO

NAMES, SEEDS, PARTS = st.sampled_from(sorted(EDITS)), st.integers(0, 10_000).map(float), st.floats(0, 1)


class Sessions(RuleBasedStateMachine):
    def __init__(self):
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.session = Session(DEMO, Path(self.folder.name))

    @rule(name=NAMES, seed=SEEDS)
    def edit(self, name, seed):
        self.session.edit(name, seed)

    @rule(name=NAMES, seed=SEEDS)
    def edit_again(self, name, seed):
        self.session.edit(name, seed)

    @rule(name=NAMES, seed=SEEDS)
    def tried(self, name, seed):
        self.session.tried(name, seed)

    @rule(part=PARTS)
    def go(self, part):
        self.session.go(part)

    @rule(text=st.text("abc", min_size=1, max_size=3))
    def write(self, text):
        self.session.write(text)

    @rule(part=PARTS)
    def strike(self, part):
        self.session.strike(part)

    @rule(minutes=st.integers(0, 60).map(float))
    def time(self, minutes):
        self.session.time(minutes)

    @rule(cents=st.integers(0, 9999))
    def pay(self, cents):
        self.session.pay("wood", cents)

    @rule(part=PARTS)
    def unpay(self, part):
        self.session.unpay(part)

    @rule(now=st.integers(1, 9).map(float))
    def clock(self, now):
        self.session.clock(now)

    @rule()
    def drill(self):
        self.session.drill()

    @rule()
    def rout(self):
        self.session.rout()

    @rule()
    def turn(self):
        self.session.turn()

    @rule(value=st.floats(0, 20))
    def read(self, value):
        self.session.read(value)

    @rule()
    def undo(self):
        self.session.undo()

    @rule()
    def redo(self):
        self.session.redo()

    @rule()
    def take_back(self):
        self.session.take_back()

    @rule()
    def save(self):
        self.session.save()

    @precondition(lambda self: self.session.document.path is not None)
    @rule()
    def open(self):
        self.session.open()

    @rule()
    def crash(self):
        self.session.crash()

    @invariant()
    def agree(self):
        self.session.agree()

    def teardown(self):
        self.session.end()
        self.folder.cleanup()


def test_any_session_is_what_a_replay_gives(qapp):
    run_state_machine_as_test(Sessions, settings=settings(
        max_examples=8, stateful_step_count=22, phases=(Phase.explicit, Phase.generate),
        suppress_health_check=list(HealthCheck)))


def test_a_seeded_share_of_the_long_sessions(qapp, tmp_path):
    session = Session(DEMO, tmp_path)
    by_chance(session, random.Random(11), 60)
    session.end()


def test_more_steps_than_the_history_holds(qapp, tmp_path):
    session = Session(DEMO, tmp_path)
    for i in range(MOST_STEPS + 20):
        assert session.edit("move_pin", float(i))
        if i % 50 == 0:
            session.agree()
    session.go(0.0)
    session.redo()
    session.end()


def move_pin(layout: Headstock, chance: random.Random) -> Headstock:
    return edits.move_features(layout, [layout.pins[0].id], (chance.uniform(-1, 1), chance.uniform(-1, 1)))


@pytest.fixture(autouse=True)
def quick_edit(monkeypatch):
    """One more edit that is quick to check, for many steps."""
    monkeypatch.setitem(EDITS, "move_pin", move_pin)


BUILT_OF = {"parts": "what edits are made of", "layout_from": "a new layout, no edit of one", "with_openings": "a part of with_shape",
            "without_replaced": "a part of with_shape", "with_tuner": "a part of tuners' edits",
            "without_left_rows": "a part of tuners' edits", "unpinned": "a part of remove_features and with_shape"}
"""A file of geometry/edits or a function there that is no edit by itself, and why."""


def edits_there_are() -> set[str]:
    """Every function of geometry/edits that makes a layout."""
    found = set()
    for file in pkgutil.iter_modules(edits.__path__):
        module = importlib.import_module(f"geometry.edits.{file.name}")
        found |= {name for name, one in vars(module).items() if inspect.isfunction(one) and one.__module__ == module.__name__
                  and not name.startswith("_") and one.__annotations__.get("return") == "Headstock" and file.name not in BUILT_OF}
    return found - set(BUILT_OF)


def names_in(code: CodeType) -> set[str]:
    """All that a function names, and what is defined in it."""
    return set(code.co_names).union(*(names_in(one) for one in code.co_consts if isinstance(one, CodeType)))


def test_every_edit_is_among_those_tried():
    """One that is new fails here until `tests/endurance/edits.py` does it too."""
    written = compile(Path(tried.__file__).read_text("utf-8"), "edits", "exec")
    there = edits_there_are()
    assert {"move_node", "pair_string", "paste", "offset_copy", "echo_edit"} <= there
    assert there - names_in(written) == set()


def done(layout: Headstock, name: str) -> Headstock:
    """The layout after the first chance that changes anything; itself when none of many does."""
    for seed in range(60):
        try:
            after = EDITS[name](layout, random.Random(seed))
        except GeometryError:
            continue
        if after != layout:
            return after
    return layout


BUSY = reduce(done, ("add_hole", "add_hole", "lay_picture", "move_node", "free_from_row", "free_from_row"),
              duplicate(DEMO, ["bass slot"]))  # two slots that overlap


@pytest.mark.parametrize("name", sorted(EDITS))
def test_every_edit_of_the_sessions_is_done_and_not_only_refused(name):
    assert done(BUSY, name) != BUSY


@pytest.fixture
def document(qapp):
    made = Document(DEMO)
    yield made
    made.deleteLater()


def times(document):
    return {time.task.features[0]: time.minutes for time in document.book.times}


def test_taking_back_an_entry_leaves_the_others_with_the_names_of_now(document):
    saw = Task(operation="saw bass slot", features=("bass slot",))
    document.record("Minutes", lambda book: set_minutes(book, "real", saw, 8.0))
    document.record("A note", lambda book: add_remark(book, Remark(piece="real", text="later")))
    document.apply("Rename", rename(document.layout, "slots", "bass slot", "long slot"))
    assert document.take_back() == "A note"
    assert times(document) == {"long slot": 8.0} and document.book.remarks == ()
    document.undo()
    assert times(document) == {"bass slot": 8.0} and document.book.remarks == ()
    document.redo()
    assert times(document) == {"long slot": 8.0}
    assert document.take_back() == "Minutes" and document.book.times == ()


def test_an_entry_struck_out_comes_back_where_it_was(document):
    for text in "abc":
        document.record("A note", lambda book, text=text: add_remark(book, Remark(piece="real", text=text)))
    document.record("Strike", lambda book: remove_remark(book, 1))
    document.apply("Rename", rename(document.layout, "slots", "bass slot", "long slot"))
    document.take_back()
    assert [one.text for one in document.book.remarks] == ["a", "b", "c"]
