"""Symmetric editing of what is typed, nudged or removed: the mirror image on the other side follows."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry.edits.adding import remove_features
from geometry.edits.loops import Nodes, shifted
from geometry.edits.parts import feature, group_of, loop_at, put, settled, shaped_loop, with_loop
from geometry.edits.shape import without_pair
from geometry.edits.twin_features import echo_features, twin_feature
from geometry.edits.twins import echo_edge, echo_nodes, stays, twin_edge, twin_of
from geometry.layout import Headstock, feature_ids

ALIKE = {"pins": ("diameter",), "holes": ("diameter", "depth", "surface", "there", "plugged", "retainer"), "tuners": ("flat",),
         "ears": ("width",)}
"""Fields besides the place that a twin takes over when they change."""
TOGETHER = frozenset(("there", "plugged", "retainer"))
"""Of these all go over when one does: not every hole may be, and carry, each."""


def echo_edit(before: Headstock, after: Headstock, held: Iterable[str], node: int | None = None) -> Headstock:
    """`after` with the twins of what was held in `before` changed alike, or gone with it.

    `node` is the node in hand when one loop is held. What has no twin, or was
    only renamed, is left as it is. GeometryError where the twin cannot follow, and where nothing would come of the edit, as it
    moves aside what stays on the centreline.
    """
    made = _echoed(before, after, tuple(dict.fromkeys(held)), node)
    if made == before != after:
        raise stays()
    return made


def _echoed(before: Headstock, after: Headstock, ids: tuple[str, ...], node: int | None) -> Headstock:
    if node is not None and len(ids) == 1 and shaped_loop(before, ids[0]) is not None:
        return _node_echoed(before, after, ids[0], node)
    known, left = set(feature_ids(before)), set(feature_ids(after))
    if len(known) > len(left):
        twins = {id: twin_feature(before, id) for id in ids if id in known}
        kept = [id for id in twins if id in left]  # what the others were joined to
        if kept and not {*ids, *(None for id in kept if twins[id] is None)}.isdisjoint(twins.values()):
            return after  # it has, or they have, no others on the other side to be joined alike
        gone = [twin for id, twin in twins.items() if id not in left and twin in left]
        made = echo_features(before, after, kept) if kept else after
        return remove_features(made, gone) if gone else made
    return settled(_alike(before, echo_features(before, after, (id for id in ids if id in known and id in left)), ids))


def _node_echoed(before: Headstock, after: Headstock, ref: str, index: int) -> Headstock:
    old, new = list(loop_at(before, ref).nodes), list(loop_at(after, ref).nodes)
    twin = twin_of(old, index)
    if len(new) == len(old) - 1:
        return with_loop(after, ref, without_pair(old, index, twin))
    if len(new) != len(old) or new == old:
        return after
    lead, end = [index], (index + 1) % len(new)
    if twin_edge(old, index) == index and new[index].at == old[index].at and new[end].at != old[end].at:
        new, lead = _centred(new, index, end), [end]  # an edge across the centreline was given another length
    kind = (old[index].bulge, old[index].handles is None) != (new[index].bulge, new[index].handles is None)
    out = echo_nodes(old, new, lead, [(index, 0), (index, 1)])
    if kind:
        echo_edge(old, out, index)
    if twin is not None and old[index].smooth != new[index].smooth:
        out[twin] = replace(out[twin], smooth=new[index].smooth)
    return with_loop(after, ref, out)


def _centred(nodes: Nodes, index: int, end: int) -> Nodes:
    """The loop with an edge moved across until its middle is on the centreline."""
    by = (-(nodes[index].at[0] + nodes[end].at[0]) / 2, 0.0)
    return shifted(shifted(nodes, index, by), end, by)


def _alike(before: Headstock, after: Headstock, ids: tuple[str, ...]) -> Headstock:
    """Give twins the fields that changed besides the place."""
    left = set(feature_ids(after))
    for id in (one for one in ids if one in left):
        group = group_of(after, id)
        twin = twin_feature(before, id) if group in ALIKE and id in set(feature_ids(before)) else None
        if twin is None or twin in ids or twin not in left:
            continue
        old, new = feature(before, id), feature(after, id)
        changed = {name for name in ALIKE[group] if getattr(old, name) != getattr(new, name)}
        if changed:
            changed |= TOGETHER if changed & TOGETHER else set()
            after = put(after, group, replace(feature(after, twin), **{name: getattr(new, name) for name in changed}))
    return after
