"""The few style properties that decide whether a shape is seen, from attributes, style attributes and sheets."""

from __future__ import annotations

import re
from collections.abc import Sequence

from msgspec import Struct

from app.formats.drawing_in.svg_tree import Node

PROPERTIES = frozenset({"display", "visibility", "fill", "stroke", "stroke-width", "fill-opacity", "stroke-opacity",
                        "opacity", "transform", "clip-path", "x", "y", "width", "height", "rx", "ry", "cx", "cy", "r"})

_COMPOUND = re.compile(r"(?P<tag>[\w-]+|\*)?(?P<rest>(?:[.#][\w-]+)*)$")


class _Part(Struct, frozen=True):
    """One compound selector: tag or None, classes, id or None, and whether its parent must match the part before."""

    tag: str | None
    classes: frozenset[str]
    id: str | None
    child: bool

    def fits(self, node: Node) -> bool:
        return ((self.tag is None or self.tag == node.tag)
                and (self.id is None or self.id == node.get("id"))
                and self.classes <= set((node.get("class") or "").split()))


class _Rule(Struct, frozen=True):
    parts: tuple[_Part, ...]
    weight: tuple[int, int, int, int]
    """(ids, classes, tags, order): later and more specific rules win"""
    declarations: tuple[tuple[str, str, bool], ...]


class Styles:
    """Style sheets of one file. Selectors beyond tags, classes, ids, descendants and children are ignored."""

    def __init__(self, sheets: Sequence[str]) -> None:
        self.rules: list[_Rule] = []
        for sheet in sheets:
            self._add(sheet)
        self.rules.sort(key=lambda rule: rule.weight)

    def _add(self, sheet: str) -> None:
        sheet = re.sub(r"/\*.*?\*/|<!--|-->", " ", sheet, flags=re.DOTALL)
        sheet = re.sub(r"@[\w-]+[^{};]*;", " ", sheet)
        sheet = re.sub(r"@[\w-]+[^{}]*\{(?:[^{}]*\{[^{}]*\})*[^{}]*\}", " ", sheet)
        for selectors, body in re.findall(r"([^{}]+)\{([^{}]*)\}", sheet):
            declarations = tuple(_declarations(body))
            for selector in selectors.split(","):
                parts = _parts(selector)
                if parts and declarations:
                    ids = sum(p.id is not None for p in parts)
                    classes = sum(len(p.classes) for p in parts)
                    tags = sum(p.tag is not None for p in parts)
                    self.rules.append(_Rule(parts, (ids, classes, tags, len(self.rules)), declarations))

    def of(self, node: Node) -> dict[str, str]:
        """The declared properties of a node by the cascade: attributes, sheets, style attribute, !important."""
        found = {name: value.strip() for name, value in node.attributes.items() if name in PROPERTIES}
        strong: dict[str, str] = {}
        for rule in self.rules:
            if _matches(rule.parts, node):
                for name, value, important in rule.declarations:
                    (strong if important else found)[name] = value
        for name, value, important in _declarations(node.attributes.get("style", "")):
            (strong if important else found)[name] = value
        return {**found, **strong}


def _declarations(body: str) -> list[tuple[str, str, bool]]:
    found = []
    for item in body.split(";"):
        name, colon, value = item.partition(":")
        name = name.strip().lower()
        if colon and name in PROPERTIES:
            plain, bang, _ = value.partition("!")
            found.append((name, plain.strip(), bool(bang)))
    return found


def _parts(selector: str) -> tuple[_Part, ...] | None:
    """The compound selectors from outermost to the element itself; None for a selector not understood."""
    words = re.sub(r"\s*>\s*", " > ", selector.strip()).split()
    parts: list[_Part] = []
    child = False
    for word in words:
        if word == ">":
            child = True
            continue
        found = _COMPOUND.match(word)
        if not found:
            return None
        names = re.findall(r"([.#])([\w-]+)", found.group("rest"))
        tag = found.group("tag")
        parts.append(_Part(None if tag in (None, "*") else tag, frozenset(n for mark, n in names if mark == "."),
                           next((n for mark, n in names if mark == "#"), None), child))
        child = False
    return tuple(parts) or None


def _matches(parts: Sequence[_Part], node: Node) -> bool:
    if not parts[-1].fits(node):
        return False
    if len(parts) == 1:
        return True
    above = node.parent
    while above is not None:
        if _matches(parts[:-1], above):
            return True
        if parts[-1].child:
            return False
        above = above.parent
    return False
