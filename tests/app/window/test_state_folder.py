"""The folder of journals is the one that the library of such folders names, whatever the environment says."""

import sys

import platformdirs
import pytest

from app.window.running.state_folder import state_folder

ABSENT = None


@pytest.mark.parametrize("home", ["/home/maker", "/home/maker/", "/home/a maker", "/", "", "relative", "~", ABSENT])
@pytest.mark.parametrize("state", ["/var/state", "/var//state/", "/", "", " ", " /state", "state", "~/state", "./state", ABSENT])
def test_it_is_the_folder_that_the_library_names(monkeypatch, home, state):
    for name, value in (("HOME", home), ("XDG_STATE_HOME", state)):
        if value is ABSENT:
            monkeypatch.delenv(name, raising=False)
        else:
            monkeypatch.setenv(name, value)
    assert state_folder() == platformdirs.user_state_path("Pegwright", appauthor=False)


@pytest.mark.parametrize("system", ["darwin", "win32"])
def test_elsewhere_the_library_is_asked(monkeypatch, system):
    monkeypatch.setattr(platformdirs, "user_state_path", lambda name, appauthor: ("asked", name, appauthor))
    monkeypatch.setattr(sys, "platform", system)
    assert state_folder() == ("asked", "Pegwright", False)
