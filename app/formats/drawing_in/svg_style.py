"""The few style properties that decide whether a shape is seen, from attributes, style attributes and sheets."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from msgspec import Struct

from app.formats.drawing_in.svg_tree import Node
from app.formats.errors import FormatError
from geometry.saying import say

PROPERTIES = frozenset({"display", "visibility", "fill", "stroke", "stroke-width", "fill-opacity", "stroke-opacity",
                        "opacity", "transform", "clip-path", "mask", "x", "y", "width", "height", "rx", "ry", "cx", "cy", "r"})

MOST_LOOKS = 400_000
"""Comparisons of a part of a rule with a shape or what it is in: four for each of the most shapes that a file may hold."""
MOST_PARTS = 40
"""Words of a selector; longer ones are not understood."""

_COMPOUND = re.compile(r"(?P<tag>[\w-]+|\*)?(?P<rest>(?:[.#][\w-]+)*)$")


class _Part(Struct, frozen=True):
    """One compound selector: tag or None, classes, id or None, and whether its parent must match the part before."""

    tag: str | None
    classes: frozenset[str]
    id: str | None
    child: bool

    def fits(self, node: Node, classes: frozenset[str]) -> bool:
        """Whether a node with these classes is such a one."""
        return (self.tag is None or self.tag == node.tag) and (self.id is None or self.id == node.get("id")) and self.classes <= classes

    @property
    def key(self) -> str:
        """What a node has that this can fit: `#id`, `.class`, its tag, or "" for any."""
        return f"#{self.id}" if self.id is not None else f".{min(self.classes)}" if self.classes else self.tag or ""


class _Rule(Struct, frozen=True):
    parts: tuple[_Part, ...]
    weight: tuple[int, int, int, int]
    """(ids, classes, tags, order): later and more specific rules win"""
    declarations: tuple[tuple[str, str, bool], ...]


class Styles:
    """Style sheets of one file. Selectors beyond tags, classes, ids, descendants and children are ignored.

    FormatError when the rules and the shapes that they may be about are far more than a drawing needs.
    """

    def __init__(self, sheets: Sequence[str]) -> None:
        rules: list[_Rule] = []
        for sheet in sheets:
            for selectors, body in rules_of(sheet):
                declarations = tuple(_declarations(body))
                for selector in selectors.split(",") if declarations else ():
                    parts = _parts(selector)
                    if parts:
                        ids = sum(p.id is not None for p in parts)
                        classes = sum(len(p.classes) for p in parts)
                        tags = sum(p.tag is not None for p in parts)
                        rules.append(_Rule(parts, (ids, classes, tags, len(rules)), declarations))
        self._by_key: dict[str, list[_Rule]] = {}
        for rule in rules:
            self._by_key.setdefault(rule.parts[-1].key, []).append(rule)
        self._looks = 0
        """comparisons of a rule's part with a node so far"""
        self._known: dict[int, frozenset[str]] = {}
        """the classes of each node by its identity"""

    def of(self, node: Node) -> dict[str, str]:
        """The declared properties of a node by the cascade: attributes, sheets, style attribute, !important."""
        found = {name: value.strip() for name, value in node.attributes.items() if name in PROPERTIES}
        strong: dict[str, str] = {}
        if self._by_key:
            keys = {"", node.tag, *(f".{name}" for name in self._classes(node)), f"#{node.get('id')}"}
            rules = [rule for key in keys for rule in self._by_key.get(key, ()) if self._matches(rule.parts, node)]
            for rule in sorted(rules, key=lambda rule: rule.weight):
                for name, value, important in rule.declarations:
                    (strong if important else found)[name] = value
        for name, value, important in _declarations(node.attributes.get("style", "")):
            (strong if important else found)[name] = value
        return {**found, **strong}

    def _matches(self, parts: Sequence[_Part], node: Node) -> bool:
        """Whether a selector is about a node.

        Each part in turn is compared with each node above once, from the node itself outwards: `reached` are the nodes at
        which the parts behind it may stand. To try out where each may stand would take as many tries as there are choices.
        """
        if not self._fits(parts[-1], node):
            return False
        reached = [node]
        for part, inner in zip(parts[-2::-1], parts[:0:-1], strict=True):
            # A part that need not be the parent may be any node above the innermost at which the one behind it stands.
            above = [one.parent for one in reached] if inner.child else list(_above(reached[0]))
            reached = [one for one in above if one is not None and self._fits(part, one)]
            if not reached:
                return False
        return True

    def _classes(self, node: Node) -> frozenset[str]:
        if id(node) not in self._known:
            self._known[id(node)] = frozenset(node.attributes.get("class", "").split())
        return self._known[id(node)]

    def _fits(self, part: _Part, node: Node) -> bool:
        self._looks += 1
        if self._looks > MOST_LOOKS:
            raise FormatError(say("The style sheets of the SVG file have far more rules than a drawing needs: export only the outline, "
                                  "the slots and the holes."))
        return part.fits(node, self._classes(node))


def _above(node: Node) -> Iterator[Node]:
    while (node := node.parent) is not None:
        yield node


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
    words = selector.replace(">", " > ").split()
    if len(words) > MOST_PARTS:
        return None
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


_SIGNS = re.compile(r"[{};]")


def rules_of(sheet: str) -> Iterator[tuple[str, str]]:
    """(selectors, declarations) of each rule, in their order; what begins with @ is left out with all that is in it."""
    sheet = _without_comments(sheet)
    depth, start, head = 0, 0, ""
    for found in _SIGNS.finditer(sheet):
        sign = found[0]
        if sign == "{":
            if depth == 0:
                head, start = sheet[start:found.start()].strip(), found.end()
            depth += 1
        elif sign == "}":
            if depth == 1 and head and not head.startswith("@"):
                yield head, sheet[start:found.start()]
            depth = max(0, depth - 1)
            start = found.end() if depth == 0 else start
        elif depth == 0:  # the end of a statement without a block, such as @import
            start = found.end()


def _without_comments(sheet: str) -> str:
    """The sheet with a space for each comment; one that is never closed goes on to the end (CSS 2.1, 4.2)."""
    parts, at = [], 0
    while (opens := sheet.find("/*", at)) >= 0:
        parts.append(sheet[at:opens])
        closes = sheet.find("*/", opens + 2)
        at = len(sheet) if closes < 0 else closes + 2
    return " ".join([*parts, sheet[at:]]).replace("<!--", " ").replace("-->", " ")
