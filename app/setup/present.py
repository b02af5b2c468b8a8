"""Does the running Python already have every part, though the program did not put it there?"""

import importlib.metadata
import tomllib

from .places import CHECKOUT


def everything(parts: list[str]) -> bool:
    """Whether each requirement of these parts is installed here in a version within its range.

    Without the small library that reads such ranges, itself one of the parts,
    the answer is no.
    """
    try:
        from packaging.requirements import Requirement
    except ImportError:
        return False
    project = tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    lines = list(project["dependencies"])
    for part in parts:
        lines += project["optional-dependencies"].get(part, [])
    return all(_met(Requirement(line)) for line in lines)


def _met(requirement) -> bool:
    if requirement.marker is not None and not requirement.marker.evaluate():
        return True
    try:
        version = importlib.metadata.version(requirement.name)
    except importlib.metadata.PackageNotFoundError:
        return False
    return requirement.specifier.contains(version, prereleases=True)
