"""Setting any field of a layout by its path, and renaming things without losing what refers to them."""

from __future__ import annotations

import unicodedata

import msgspec
from msgspec.structs import replace

from geometry.edits.in_book import exchanged, renamed_in_book
from geometry.edits.parts import FEATURE_GROUPS, checked, sentence, settled
from geometry.edits.steps import renamed_steps
from geometry.errors import GeometryError
from geometry.layout import Headstock, Route, RowPlace, Template, Tool, feature_ids
from geometry.layout.names import RESERVED, mistaken_for, told_of
from geometry.layout.parts import Part
from geometry.saying import say
from geometry.terms import field, term

Key = str | int

GROUPS = (*FEATURE_GROUPS, "patterns", "rows", "strings", "bits", "bushes", "drills")
"""What can be renamed; bits, bushes and drills belong to the rack."""


def set_field(layout: Headstock, path: tuple[Key, ...], value: object) -> Headstock:
    """The layout with one field set, for example ("slots", "bass slot", "shape", "width").

    A member of a list is named by its index or by its id. The value is held
    against the type and the limits of the field; setting an id renames. For
    GeometryError the message says what is wrong with the value.
    """
    if not path:
        raise GeometryError(say("A field needs a path to it."))
    if path[-1] == "id" and len(path) >= 3:
        group = str(path[-3])
        part = _step(_walk(layout, path[:-2]), path[-2], path)
        return rename(layout, group, part.id, str(value))
    return settled(_set(layout, path, value, path))


def get_field(layout: Headstock, path: tuple[Key, ...]) -> object:
    """The value of a field by the same kind of path."""
    return _walk(layout, path)


def rename(layout: Headstock, group: str, old: str, new: str) -> Headstock:
    """Another name for a feature, pattern, row, string, bit, bush or drill, everywhere it is named.

    `group` is the list it is in (see GROUPS). GeometryError when there is no
    such thing, when the name is taken, by a feature that is gone too of which
    the job book tells, or when it is no good name. An accent typed as a
    character of its own becomes part of its letter.
    """
    new = unicodedata.normalize("NFC", new)
    if group not in GROUPS:
        raise GeometryError(say("There is nothing to rename in {group}.", group=term(group)))
    owner = layout.rack if group in ("bits", "bushes", "drills") else layout
    found = next((one for one in getattr(owner, group) if one.id == old), None)
    if found is None:
        raise GeometryError(say("There is nothing named {old} in {group}.", old=old, group=term(group)))
    if new == old:
        return layout
    if group in FEATURE_GROUPS and new in RESERVED:
        raise GeometryError(say("The name {new} is kept for the {new} itself: choose another.", new=new))
    if group in FEATURE_GROUPS and new in told_of(layout.book) and new not in feature_ids(layout):
        raise GeometryError(say("The job book tells of another {new}, which is gone: what was done, measured and noted there would "
                                "count for this one. Choose another name, or strike that out there first.", new=new))
    other = mistaken_for(new, (id for id in feature_ids(layout) if id != old)) if group in FEATURE_GROUPS else None
    if other is not None:
        raise GeometryError(say("{new} would be mistaken for {other}, as holes are told by the name and a number behind a point: choose "
                                "another.", new=new, other=other))
    renamed = checked(replace(found, id=new))
    members = tuple(renamed if one is found else one for one in getattr(owner, group))
    changes: dict[str, object] = {}
    if owner is layout:
        changes[group] = members
    else:
        changes["rack"] = replace(layout.rack, **{group: members})
    tuners = changes.get("tuners", layout.tuners)
    if group in FEATURE_GROUPS:
        changes["notes"] = tuple(replace(note, on=new) if note.on == old else note for note in layout.notes)
        changes["order"] = renamed_steps(layout.order, {id: id for id in feature_ids(layout)} | {old: new})
        changes["book"] = renamed_in_book(layout.book, exchanged(old, new))
    elif group == "patterns":
        changes["tuners"] = tuple(replace(t, pattern=new) if t.pattern == old else t for t in tuners)
    elif group == "rows":
        changes["tuners"] = tuple(replace(t, place=replace(t.place, row=new))
                                  if isinstance(t.place, RowPlace) and t.place.row == old else t for t in tuners)
    elif group == "strings":
        changes["tuners"] = tuple(replace(t, string=new) if t.string == old else t for t in tuners)
    elif group in ("bits", "bushes"):
        changes["template"], changes["routes"] = renamed_tools(layout.template, layout.routes, group, old, new)
    if group == "slots":
        changes["routes"] = tuple(replace(r, of=new) if r.of == old else r for r in layout.routes)
    return settled(replace(layout, **changes))


def renamed_tools(template: Template, routes: tuple[Route, ...], shelf: str, old: str, new: str) -> tuple[Template, tuple[Route, ...]]:
    """What the template is made for, and the choices, after one of the `bits` or `bushes` got another name."""
    key = {"bits": "bit", "bushes": "bush"}[shelf]

    def renamed(one: Template | Tool) -> Template | Tool:
        return replace(one, **{key: new}) if getattr(one, key) == old else one

    return renamed(template), tuple(replace(route, tools=tuple(map(renamed, route.tools))) for route in routes)


def set_part(part: Part, path: tuple[Key, ...], value: object) -> Part:
    """A record with one field set, held against the type and the limits of the field. Names are not looked after."""
    return _set(part, path, value, path)


def _walk(part: object, path: tuple[Key, ...]) -> object:
    for key in path:
        part = _step(part, key, path)
    return part


def _step(part: object, key: Key, path: tuple[Key, ...]) -> object:
    if isinstance(part, Part) and isinstance(key, str) and key in part.__struct_fields__:
        return getattr(part, key)
    if isinstance(part, tuple):
        return part[_index(part, key, path)]
    raise GeometryError(say("The layout has no field {words}.", words=_words(path)))


def _index(members: tuple, key: Key, path: tuple[Key, ...]) -> int:
    if isinstance(key, int):
        if 0 <= key < len(members):
            return key
    else:
        for i, one in enumerate(members):
            if getattr(one, "id", None) == key:
                return i
    raise GeometryError(say("The layout has no {words}.", words=_words(path)))


def _set(part: object, keys: tuple[Key, ...], value: object, path: tuple[Key, ...]) -> object:
    key, rest = keys[0], keys[1:]
    if isinstance(part, tuple):
        i = _index(part, key, path)
        new = _set(part[i], rest, value, path) if rest else value
        return (*part[:i], new, *part[i + 1:])
    old = _step(part, key, path)
    if rest and isinstance(old, Part | tuple):
        value = _set(old, rest, value, path)
    elif rest:
        raise GeometryError(say("The layout has no field {words}.", words=_words(path)))
    if isinstance(value, str) and any("\ud800" <= char <= "\udfff" for char in value):
        raise GeometryError(say("The words hold half a character, which no file can keep: type them again."))
    plain = {**msgspec.to_builtins(part), key: msgspec.to_builtins(value)}
    try:
        made = msgspec.convert(plain, type(part))
    except msgspec.ValidationError as error:
        raise GeometryError(sentence(error, _about(path[:-1]))) from error
    # Everything but this one field stays the very same object.
    return replace(part, **{key: getattr(made, key) if not rest else value})


def _words(path: tuple[Key, ...]) -> str:
    return " ".join(str(key + 1) if isinstance(key, int) else key for key in path)


def _about(path: tuple[Key, ...]) -> str:
    """What a message calls the record at a path: its id or number rather than the whole way to it."""
    words = []
    for before, key, after in zip(("", *path), path, (*path[1:], ""), strict=False):
        if isinstance(key, int):
            words.append(f"{field(str(before).removesuffix('s'))} {key + 1}")
        elif not isinstance(after, int) and key not in GROUPS and key not in ("rack", "shape", "place", "run", "loop"):
            words.append(key if before in GROUPS else field(key))
    return " ".join(words)
