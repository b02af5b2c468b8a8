"""The best order: legal, least, proven, and plain about what cannot be had."""

from itertools import permutations

from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.layout import Pin, Slot, StraightSlot
from geometry.sequence import (
    Before,
    Changes,
    Operation,
    Rates,
    Setup,
    Table,
    best_order,
    count_changes,
    judge,
    operations,
    precedence,
    runs,
)
from geometry.sequence.bound import Bound
from geometry.sequence.task import CHANGE, make_task
from tests.geometry.sequence.specimens import THROUGH, TURNED, before, demo, finished, leaning, stocked, work
from tests.spent import spent

SETUPS = st.one_of(
    st.builds(Setup, st.just("bench"), st.sampled_from([None, "reamer 6", "reamer 8"])),
    st.builds(Setup, st.just("router"), st.sampled_from("ab"), st.none(), st.sampled_from(["face", "back"])),
    st.builds(Setup, st.just("drill press"), st.sampled_from(["a", "b", "c", None]), st.sampled_from([0.0, 0.1, 0.2]).map(
        lambda tilt: Table(tilt, 8.0)), st.sampled_from(["face", "treble edge", "bass edge"])))


@st.composite
def tasks(draw: st.DrawFn, most: int = 7) -> tuple[list[Operation], list[Before]]:
    """A few operations and edges without a circle."""
    setups = draw(st.lists(SETUPS, min_size=1, max_size=most))
    ops = [Operation(f"o{i}", "bore", f"O{i}", "", setup) for i, setup in enumerate(setups)]
    ids = draw(st.permutations([op.id for op in ops]))
    pairs = [(a, b) for i, a in enumerate(ids) for b in ids[i + 1:]]
    chosen = draw(st.lists(st.sampled_from(pairs), max_size=8, unique=True)) if pairs else []
    return ops, [before(a, b) for a, b in chosen]


def legal(steps: tuple[str, ...], edges: list[Before]) -> bool:
    place = {id: i for i, id in enumerate(steps)}
    return all(place[e.first] < place[e.then] for e in edges)


def least_changes(ops: list[Operation], edges: list[Before]) -> int:
    """By trying every legal order, cutting off those that are dearer already; counts set-ups on its own."""
    waits = {op.id: {e.first for e in edges if e.then == op.id} for op in ops}
    best = [10_000]

    def go(done: frozenset[str], held: dict[tuple[str, str], object], cost: int) -> None:
        if cost >= best[0]:
            return
        if len(done) == len(ops):
            best[0] = cost
        for op in ops:
            if op.id in done or not waits[op.id] <= done:
                continue
            s = op.setup
            wanted = {("machine", ""): s.machine, ("side", ""): s.side, ("bit", s.machine): s.bit,
                      ("table", s.machine): s.table}
            wanted = {key: value for key, value in wanted.items() if value is not None}
            more = sum(held.get(key) != value for key, value in wanted.items())
            go(done | {op.id}, held | wanted, cost + more)

    go(frozenset(), {}, 0)
    return best[0]


@given(tasks())
@settings(max_examples=150)
def test_the_least_of_all_legal_orders_is_found_and_proven(task: tuple[list[Operation], list[Before]]) -> None:
    ops, edges = task
    order = best_order(ops, edges)
    assert order.proven
    assert order.changes.total == order.bound == least_changes(ops, edges)


@given(tasks(most=20))
@settings(max_examples=60)
def test_every_best_order_is_legal_and_whole(task: tuple[list[Operation], list[Before]]) -> None:
    ops, edges = task
    order = best_order(ops, edges, effort=200_000)
    assert sorted(order.steps) == sorted(op.id for op in ops)
    assert legal(order.steps, edges)
    assert judge(order.steps, ops, edges) == ()
    assert order.bound <= order.changes.total


@given(tasks(), st.data())
@settings(max_examples=60)
def test_dropping_an_edge_never_costs_more(task: tuple[list[Operation], list[Before]], data: st.DataObject) -> None:
    ops, edges = task
    if edges:
        gone = data.draw(st.sampled_from(edges))
        fewer = best_order(ops, [e for e in edges if e is not gone])
        assert fewer.changes.total <= best_order(ops, edges).changes.total


@given(tasks(most=6))
@settings(max_examples=60)
def test_the_bound_never_exceeds_what_is_left_to_pay(task: tuple[list[Operation], list[Before]]) -> None:
    ops, edges = task
    waits = {op.id: {e.first for e in edges if e.then == op.id} for op in ops}
    made = make_task(ops, waits, Rates())
    assert Bound(made)(0, made.start) // CHANGE <= least_changes(ops, edges)


@given(tasks(most=6))
@settings(max_examples=80)
def test_the_bound_is_never_too_high_on_the_way_and_exact_before_the_last_set_up(task: tuple[list[Operation], list[Before]]) -> None:
    """Every state that any order leads to, with what each of them costs from there on, found by trying all."""
    ops, edges = task
    made = make_task(ops, {op.id: {e.first for e in edges if e.then == op.id} for op in ops}, Rates())
    bound, least = Bound(made), {}

    def left(done: int, held: tuple[int, ...]) -> int:
        if done == made.all:
            return 0
        if (done, held) not in least:
            ways = [(made.step(held, setup), made.closed(done, setup)) for setup, group in enumerate(made.groups)
                    if made.closed(done, setup) != done and group & ~done]
            least[done, held] = min(cost + left(after, now) for (cost, now), after in ways)
            assert bound(done, held) <= least[done, held]
            if sum(bool(group & ~done) for group in made.groups) == 1:
                assert bound(done, held) == least[done, held]
        return least[done, held]
    left(0, made.start)


def test_the_same_task_gives_the_same_order() -> None:
    layout = demo()
    ops = operations(layout)
    edges = precedence(layout, ops)
    assert best_order(ops, edges) == best_order(ops, tuple(edges))


def test_changes_are_counted_machine_by_machine() -> None:
    # First set-up: machine, bit, table, side = 4. The other bit: 1. The bench: machine. Back again: machine alone,
    # for the drill press still holds bit and table. Router: machine, bit, and the piece turned over: 3.
    steps = [work("a", bit="x"), work("b", bit="y"), work("c", "bench", None, None, None), work("d", bit="y"),
             work("e", "router", "z", None, "back")]
    assert count_changes(op.setup for op in steps) == Changes(machine=4, bit=3, table=1, side=2)


def test_runs_keep_what_is_done_in_one_set_up_together() -> None:
    steps = [work("a"), work("b"), work("c", bit="y"), work("d")]
    assert [[op.id for op in run] for run in runs(steps)] == [["a", "b"], ["c"], ["d"]]


def test_a_shared_tilt_is_used_for_both_edges_before_the_table_moves() -> None:
    ops = [work(f"{side} {tilt}", table=tilt, side=f"{side} edge") for tilt in (0.1, 0.2) for side in ("bass", "treble")]
    order = best_order(ops, [])
    # Equal counts either way (turn, tilt, turn or tilt, turn, tilt): time decides for fewer tilts.
    assert order.changes == Changes(machine=1, bit=1, table=2, side=3)


def test_habit_settles_what_is_left_open() -> None:
    ops = [work("a", bit="x"), work("b", bit="y"), work("c", bit="z")]
    assert best_order(ops, []).steps == ("a", "b", "c")


def test_without_operations_there_is_nothing_to_do() -> None:
    order = best_order([], [])
    assert (order.steps, order.changes, order.proven) == ((), Changes(), True)


# ---- what cannot be had ----------------------------------------------------------
def test_an_unwise_edge_gives_way_to_a_hard_circle() -> None:
    ops = [work("a"), work("b")]
    soft, hard = before("a", "b", "unwise"), before("b", "a")
    order = best_order(ops, [soft, hard])
    assert order.steps == ("b", "a")
    assert order.given_up == (soft,)
    assert order.blocked == order.stuck == ()


def test_an_unwise_edge_beside_a_hard_one_is_not_given_up() -> None:
    edges = [before("a", "b", "unwise"), before("a", "b"), before("b", "c")]
    order = best_order([work("a"), work("b"), work("c")], edges)
    assert order.given_up == () and order.steps == ("a", "b", "c")


def test_a_hard_circle_is_said_plainly_and_the_rest_is_still_ordered() -> None:
    ops = [work("a"), work("b"), work("c"), work("d")]
    order = best_order(ops, [before("a", "b"), before("b", "a"), before("b", "c")])
    assert order.steps == ("d",)
    assert order.stuck == ("a", "b", "c")
    assert len(order.blocked) == 1
    assert order.blocked[0].startswith("No order works: ")
    assert "“A” must come before “B” (a first.)" in order.blocked[0]
    assert "“B” must come before “A” (b first.)" in order.blocked[0]


def test_two_pins_each_in_the_other_slot_block_the_layout() -> None:
    slots = tuple(Slot(id=f"{side} slot", shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 150.0), width=13.0))
                  for side, x in (("bass", -17.0), ("treble", 17.0)))
    layout = stocked(slots=slots, tuners=(), holes=(),
                     pins=(Pin(id="one", at=(-17.0, 60.0)), Pin(id="two", at=(17.0, 60.0))))
    ops = operations(layout)
    order = best_order(ops, precedence(layout, ops))
    assert any(text.startswith("Rout bass slot from the face: The pin one stands in the way") for text in order.blocked)
    circle = next(text for text in order.blocked if text.startswith("No order works"))
    assert "Rout bass slot" in circle and "Rout treble slot" in circle and "takes one away" in circle
    assert "rout bass slot 1" in order.stuck and "clean up" in order.stuck


def test_a_pin_in_a_slot_sends_the_outline_ahead_of_that_slot() -> None:
    layout = stocked(pins=(Pin(id="pin", at=(17.0, 60.0)),), tuners=())
    ops = operations(layout)
    order = best_order(ops, precedence(layout, ops))
    assert order.steps.index("rout outline 1") < order.steps.index("waste holes slot")
    assert {edge.grade for edge in order.given_up} == {"unwise"}


def test_what_the_shop_cannot_do_is_named_and_still_has_its_place() -> None:
    layout = stocked(rack=type(stocked().rack)(bits=stocked().rack.bits))
    ops = operations(layout)
    order = best_order(ops, precedence(layout, ops))
    assert any(text.startswith("Side bore flank: The rack has no 6.4 mm drill") for text in order.blocked)
    assert "side bore flank.1.1" in order.steps and order.stuck == ()


def test_with_too_little_effort_the_order_is_not_called_proven_and_the_bound_is_stated() -> None:
    layout = demo()
    ops = operations(layout)
    edges = precedence(layout, ops)
    short, longer, whole = (best_order(ops, edges, effort=effort) for effort in (1, 20_000, 1_000_000))
    for order in (short, longer):
        assert not order.proven
        assert order.bound < order.changes.total
        assert judge(order.steps, ops, edges) == ()
    assert short.bound < longer.bound
    assert whole.proven and longer.bound < whole.bound == whole.changes.total <= short.changes.total


# ---- the demo ------------------------------------------------------------------------
def test_the_demo_is_proven_and_reads_as_a_maker_would_do_it() -> None:
    layout = demo()
    ops = operations(layout)
    order = best_order(ops, precedence(layout, ops))
    by_id = {op.id: op for op in ops}
    kinds = [(run[0].kind, len(run)) for run in runs(by_id[id] for id in order.steps)]
    assert order.proven and order.given_up == order.blocked == order.stuck == ()
    assert order.changes == Changes(machine=8, bit=8, table=4, side=9)
    assert kinds == [("template", 2), *6 * [("side bore", 1)], ("pin hole", 2), ("counterbore", 6), ("bore", 6),
                     ("pilot", 12), ("waste holes", 2), ("saw", 2), ("rout", 2), ("cut outline", 1),
                     ("rout outline", 1), ("edge pilot", 6), ("edge pilot", 6), ("clean up", 1)]


def test_the_order_of_the_demo_takes_a_fraction_of_a_second() -> None:
    layout = demo()
    ops = operations(layout)
    edges = precedence(layout, ops)
    assert spent(lambda: best_order(ops, edges), 0.2, rounds=3) <= 0.2


def test_orders_of_whole_layouts_are_legal_by_their_own_judge() -> None:
    for layout in map(finished, (demo(), stocked(), leaning(pins=()))):
        plans = {slot.id: TURNED for slot in layout.slots} | {"outline": THROUGH}
        ops = operations(layout, plans)
        edges = precedence(layout, ops)
        order = best_order(ops, edges, effort=300_000)
        assert judge(order.steps, ops, edges) == ()


def test_three_operations_by_all_permutations() -> None:
    ops = [work("a", bit="x"), work("b", bit="y"), work("c", bit="x", side="back")]
    edges = [before("b", "c")]
    cheapest = min(count_changes(op.setup for op in order).total for order in permutations(ops)
                   if [op.id for op in order].index("b") < [op.id for op in order].index("c"))
    assert best_order(ops, edges).changes.total == cheapest
