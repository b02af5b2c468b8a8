"""An SVG's elements as plain nodes: only what can matter for outlines, within fixed limits.

Nothing outside the file is ever loaded, entities may not contain entities, and
what cannot hold an outline (pictures, texts, scripts, foreign content) is
dropped while parsing.
"""

from __future__ import annotations

import re
from collections import Counter
from xml.parsers import expat

from msgspec import Struct, field

from app.formats.drawing_in.sniff import as_text
from app.formats.errors import FormatError
from geometry.saying import say

SVG = "http://www.w3.org/2000/svg"
MOST_ELEMENTS = 100_000
DEEPEST = 200
MOST_ENTITY_TEXT = 10_000_000
"""Characters that all entity references of a file may expand to."""

_KEPT = frozenset({"svg", "g", "a", "switch", "use", "symbol", "defs", "style",
                   "path", "rect", "circle", "ellipse", "line", "polyline", "polygon"})
_WORDS = {"text": "texts", "image": "pictures", "foreignObject": "foreign contents"}


class Node(Struct):
    """One element: its local name, attributes by local name (`ns:name` when foreign), children, parent."""

    tag: str
    attributes: dict[str, str]
    parent: Node | None = None
    children: list[Node] = field(default_factory=list)

    def get(self, name: str) -> str | None:
        """The attribute, stripped; None when absent."""
        value = self.attributes.get(name)
        return value.strip() if value is not None else None


class Tree(Struct):
    """The root and what hangs off it."""

    root: Node
    by_id: dict[str, Node]
    styles: list[str]
    """text of the style sheets, in order"""
    texts: list[str]
    """what is written in the drawing"""
    skipped: Counter[str]
    written: int
    """how many elements the file holds"""


def parse(data: bytes) -> Tree:
    """The tree of an SVG file. Raises FormatError for anything broken, hostile or not SVG."""
    data = data.lstrip(b" \t\r\n")
    _check_entities(data)
    errors = []
    attempts = ((data, None, True), (as_text(data).encode("utf-8"), "utf-8", True), (as_text(data).encode("utf-8"), "utf-8", False))
    for content, encoding, namespaces in attempts:
        builder = _Builder(encoding, namespaces)
        try:
            builder.parser.Parse(content, True)
        except FormatError:
            raise
        except (expat.ExpatError, LookupError, ValueError) as error:
            errors.append(error)
            if isinstance(error, expat.ExpatError) and error.code not in _WORTH_ANOTHER_TRY:
                break
            continue
        return builder.finished()
    error = errors[0]
    if isinstance(error, expat.ExpatError):
        raise FormatError(say("The SVG file is damaged at line {line}: open it in the program that drew it and save it again.",
                              line=error.lineno))
    raise FormatError(say("The SVG file is damaged: open it in the program that drew it and save it again."))


_WORTH_ANOTHER_TRY = {expat.errors.codes[message] for message in (
    expat.errors.XML_ERROR_UNKNOWN_ENCODING, expat.errors.XML_ERROR_INCORRECT_ENCODING,
    expat.errors.XML_ERROR_INVALID_TOKEN, expat.errors.XML_ERROR_UNBOUND_PREFIX)}


def _check_entities(data: bytes) -> None:
    """FormatError when entities nest or expand beyond MOST_ENTITY_TEXT; a few short ones are normal."""
    text = data if b"\x00" not in data[:100] else as_text(data).encode("utf-8")
    declared = re.findall(rb"<!ENTITY\s+(%?)\s*([^\s>]+)\s+(?:\"([^\"]*)\"|'([^']*)')", text)
    longest = 0
    for _, _, double, single in declared:
        value = double or single
        if re.search(rb"[&%][A-Za-z_:]", value):
            raise FormatError(say("The SVG file defines entities inside entities, which only hostile files do; it was "
                                  "not read."))
        longest = max(longest, len(value))
    if longest * text.count(b"&") > MOST_ENTITY_TEXT:
        raise FormatError(say("The SVG file expands to an enormous text through its entities; it was not read."))


class _Builder:
    def __init__(self, encoding: str | None, namespaces: bool) -> None:
        self.parser = expat.ParserCreate(encoding, namespace_separator=" " if namespaces else None)
        self.parser.buffer_text = True
        self.parser.StartElementHandler = self.start
        self.parser.EndElementHandler = self.end
        self.parser.CharacterDataHandler = self.characters
        self.root: Node | None = None
        self.at: Node | None = None
        self.depth = 0
        self.dropped_below: int | None = None
        self.elements = 0
        self.by_id: dict[str, Node] = {}
        self.styles: list[str] = []
        self._said: list[str] = []
        """the text of the style sheet that is being read, in pieces"""
        self._written: list[str] | None = None
        """the words of the text element that is being read, in pieces"""
        self.texts: list[str] = []
        self.skipped: Counter[str] = Counter()

    def start(self, name: str, attributes: dict[str, str]) -> None:
        """Keep or drop an element, and everything below a dropped one."""
        self.depth += 1
        self.elements += 1
        if self.elements > MOST_ELEMENTS:
            raise FormatError(say("The SVG file has more than {most_elements:,} elements: export only the outline, the "
                                  "slots and the holes.",
                                  most_elements=MOST_ELEMENTS))
        if self.depth > DEEPEST:
            raise FormatError(say("The SVG file nests its groups more than {deepest} deep: ungroup them in the "
                                  "program that drew it.",
                                  deepest=DEEPEST))
        if self.dropped_below is not None:
            return
        space, tag = _split(name)
        if self.root is None:
            if tag != "svg" or space not in (SVG, ""):
                raise FormatError(say("The file is not an SVG drawing: its first element is <{tag}>.", tag=tag[:40]))
        elif space not in (SVG, "") or tag not in _KEPT:
            if space in (SVG, "") and tag in _WORDS:
                self.skipped[_WORDS[tag]] += 1
                self._written = [] if tag == "text" else None
            self.dropped_below = self.depth
            return
        node = Node(tag, {_attribute(key): value for key, value in attributes.items()}, self.at)
        if tag == "style":
            self._said = []
        if self.at is None:
            self.root = node
        else:
            self.at.children.append(node)
        if "id" in node.attributes:
            self.by_id.setdefault(node.attributes["id"], node)
        self.at = node

    def end(self, name: str) -> None:
        """Step back to the parent."""
        if self.dropped_below is not None:
            if self.depth == self.dropped_below:
                self.dropped_below = None
                if self._written is not None:
                    self.texts.append(" ".join(self._written))
                    self._written = None
        elif self.at is not None:
            if self.at.tag == "style" and "css" in self.at.attributes.get("type", "text/css"):
                self.styles.append("".join(self._said))
            self.at = self.at.parent
        self.depth -= 1

    def characters(self, text: str) -> None:
        """Keep the text of style sheets, and what is written in the drawing."""
        if self._written is not None:
            self._written.append(text)
        if self.at is not None and self.at.tag == "style" and self.dropped_below is None:
            self._said.append(text)

    def finished(self) -> Tree:
        """The tree, once parsing has succeeded."""
        assert self.root is not None
        return Tree(self.root, self.by_id, self.styles, self.texts, self.skipped, self.elements)


def _split(name: str) -> tuple[str, str]:
    """(namespace, local name); an unresolved prefix other than svg counts as foreign."""
    if " " in name:
        space, _, tag = name.rpartition(" ")
        return space, tag
    prefix, colon, tag = name.rpartition(":")
    return ("" if not colon or prefix == "svg" else prefix), tag


def _attribute(name: str) -> str:
    """Plain and linking attributes by local name, the others marked as foreign."""
    space, tag = _split(name)
    return tag if not space or tag == "href" or space == SVG else f"ns:{tag}"
