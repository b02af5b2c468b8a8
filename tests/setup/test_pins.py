"""The pins, the ranges in pyproject.toml and what is installed must not drift apart."""

import importlib.metadata
import tomllib

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from app.setup import present
from app.setup.places import CHECKOUT, PINS

MACHINES = [(python, system) for python in ("3.11", "3.12", "3.13") for system in ("linux", "win32", "darwin")]


def environment(python: str, system: str) -> dict[str, str]:
    """What markers are compared with on such a machine."""
    return {
        "python_version": python,
        "python_full_version": f"{python}.0",
        "sys_platform": system,
        "platform_system": {"linux": "Linux", "win32": "Windows", "darwin": "Darwin"}[system],
        "os_name": "nt" if system == "win32" else "posix",
        "implementation_name": "cpython",
        "platform_python_implementation": "CPython",
        "extra": "",
    }


def pins(parts: list[str], machine: dict[str, str]) -> dict[str, str]:
    """Name and version of each pin that counts on that machine."""
    found: dict[str, str] = {}
    for part in parts:
        for line in PINS[part].read_text(encoding="utf-8").splitlines():
            if not line or line.startswith("#"):
                continue
            requirement = Requirement(line)
            if requirement.marker is None or requirement.marker.evaluate(machine):
                name = canonicalize_name(requirement.name)
                assert name not in found, f"{name} is pinned twice"
                found[name] = str(requirement.specifier).removeprefix("==")
    return found


def ranges() -> dict[str, list[Requirement]]:
    project = tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return {
        "app": [Requirement(line) for line in project["dependencies"]],
        "tests": [Requirement(line) for line in project["optional-dependencies"]["tests"]],
    }


@pytest.mark.parametrize(("python", "system"), MACHINES)
def test_every_range_has_a_pin_inside_it(python: str, system: str) -> None:
    machine = environment(python, system)
    for part, requirements in ranges().items():
        pinned = pins([part], machine)
        for requirement in requirements:
            if requirement.marker is None or requirement.marker.evaluate(machine):
                assert requirement.specifier.contains(pinned[canonicalize_name(requirement.name)]), requirement


@pytest.mark.parametrize(("python", "system"), MACHINES)
@pytest.mark.parametrize("parts", [["app"], ["app", "tests"]])
def test_whatever_a_pin_needs_is_pinned_too(parts: list[str], python: str, system: str) -> None:
    machine = environment(python, system)
    pinned = pins(parts, machine)
    for name in pinned:
        if name == "colorama" and system == "win32":
            continue  # needs nothing; only Windows installs it, so that it has no metadata to read elsewhere
        for line in importlib.metadata.requires(name) or []:
            needed = Requirement(line)
            if needed.marker is not None and not needed.marker.evaluate(machine):
                continue
            version = pinned.get(canonicalize_name(needed.name))
            assert version is not None, f"{name} needs {needed}, which has no pin"
            if needed.name not in (
                "shiboken6",
                "PySide6-Essentials",
            ):  # their metadata here are of this Python's version
                assert needed.specifier.contains(version), f"{name} needs {needed}"


def test_the_toolkit_is_held_below_the_release_that_aborts_on_old_pythons() -> None:
    toolkit = canonicalize_name("PySide6-Essentials")
    assert pins(["app"], environment("3.11", "linux"))[toolkit].startswith("6.11.")
    requirement = next(
        r
        for r in ranges()["app"]
        if canonicalize_name(r.name) == toolkit and r.marker.evaluate(environment("3.11", "linux"))
    )
    assert not requirement.specifier.contains("6.12.0")


def test_the_environment_of_the_tests_is_taken_for_whole() -> None:
    assert present.everything(["app", "tests"])


def test_an_environment_that_lacks_a_part_or_has_an_old_one_is_not() -> None:
    assert not present._met(Requirement("pegwright-has-no-such-part"))
    assert not present._met(Requirement("numpy<1"))
    assert present._met(Requirement('pegwright-has-no-such-part; python_version < "3"'))
