"""The window answers: a whole session of work, and at no time is its thread away from the event loop for long.

The limit of the house is 50 ms. Judged is the processor time of each absence,
in times of a reference loop measured before and after the act that it belongs
to, with room for a busy machine, and what is too long has to be so each of three times; the
longest are printed with what ran (`-s` shows them).
"""

import pytest
from PySide6.QtCore import QSettings

from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows
from tests.collector import call_back, set_aside
from tests.gui.bench import Bench
from tests.gui.gaps import Watchdog
from tests.gui.hour import hour
from tests.waiting import on_screen

HOUSE_MS = 50.0
"""Nobody notices that the window was away for so long."""
ROOM = 2.0
"""What a machine that others work on adds to the processor time of painting and laying out, beyond what it adds to the
reference loop, which needs no memory."""
LONGER_MS = {
    "colours at tuners": 200.0, "colours at book": 200.0, "letters": 200.0,
}
"""Acts that may take longer: the toolkit styles all widgets of a window anew in one go, a fifth of a millisecond each. It is
chosen once in a while, and widgets that nobody sees are let go before."""


def bench(qtbot, folder) -> Bench:
    """As elsewhere, with a journal, since writing it is what might keep the window waiting."""
    folder.mkdir()
    settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
    made = Bench.__new__(Bench)
    made.window = MainWindow(demo(), None, Windows(settings, folder / "journal"))
    qtbot.addWidget(made.window, before_close_func=lambda window: window.document.replace(window.document.layout, None))
    made.window.resize(1360, 880)
    made.window.show()
    on_screen(made.window)
    made.view = made.window.canvas.view
    made.pump()
    return made


@pytest.fixture(autouse=True)
def no_rest() -> None:
    """Work stands aside for the hand, as in the program."""


@pytest.fixture(autouse=True)
def chances_come() -> None:
    """They are worked out beside the rest, as in the program."""


@pytest.fixture
def dog():
    """What other tests left in the process is not looked through meanwhile, as what a start has loaded is not in the program."""
    set_aside()
    made = Watchdog()
    yield made
    made.stop()
    call_back()


def too_long(dog: Watchdog) -> dict[str, str]:
    """The longest absence of each act that has one beyond its limit."""
    told = "\n".join(f"{gap.meant(dog.slow):6.1f} ms here meant, {gap}" for gap in
                     sorted(dog.gaps, key=lambda gap: -gap.meant(dog.slow))[:25])
    print(f"\nThe longest absences:\n{told}")
    return {gap.act: str(gap) for gap in sorted(dog.gaps, key=lambda gap: gap.busy)
            if gap.meant(dog.slow) > ROOM * LONGER_MS.get(gap.act, HOUSE_MS)}


def test_the_window_is_never_away_for_long(qtbot, dog, tmp_path, monkeypatch):
    """What a window does it does again: an absence counts when two others have one in the same act. Once or twice it may be
    the machine, which others slow down for a moment, or a collection of garbage."""
    late: dict[str, str] = {}
    kept = []
    for name in ("one", "another", "a third"):
        kept.append(bench(qtbot, tmp_path / name))
        dog.gaps.clear()
        for act in hour(kept[-1], tmp_path / name, monkeypatch):
            dog.now(act)
        kept[-1].window.document.replace(kept[-1].layout, None)
        kept[-1].window.close()
        now = too_long(dog)
        late = now if name == "one" else {act: f"{said}; again {now[act]}" for act, said in late.items() if act in now}
        if not late:
            break
    assert late == {}
