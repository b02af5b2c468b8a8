"""Cut, copy and paste of features."""

import msgspec
import pytest

from geometry.edits import new_ids, plan_point, remove_features
from geometry.edits.clipping import Clip, clip, lead, paste
from geometry.errors import GeometryError
from tests.geometry.edits.heads import demo, plain


def test_what_is_pasted_is_what_was_copied_where_it_was():
    head = plain()
    ids = [one.id for one in (*head.tuners[:1], *head.pins[:1])]
    made = paste(head, clip(head, ids))
    new = new_ids(head, made)
    assert len(new) == len(ids)
    for id, copy in zip(sorted(ids), sorted(new), strict=True):
        a, b = plan_point(head, id), plan_point(made, copy)
        assert b == pytest.approx(a)


def test_cut_and_paste_brings_every_tuner_back_to_its_place_without_its_string():
    head = demo()
    ids = [tuner.id for tuner in head.tuners]
    held = clip(head, ids)
    back = paste(remove_features(head, ids), held)
    assert [t.id for t in back.tuners] == ids
    for id in ids:
        assert plan_point(back, id) == pytest.approx(plan_point(head, id), abs=1e-9)
        assert back.tuner(id).string is None


def test_hardware_comes_along_and_keeps_its_own_dimensions():
    head = demo()
    pattern = head.patterns[0]
    tuner = next(t for t in head.tuners if t.pattern == pattern.id)
    held = clip(head, [tuner.id])
    other = msgspec.structs.replace(head, patterns=tuple(
        msgspec.structs.replace(one, about="another") if one.id == pattern.id else one for one in head.patterns))
    made = paste(other, held)
    new = made.tuner(new_ids(other, made)[0])
    assert new.pattern != pattern.id
    assert msgspec.structs.replace(made.pattern(new.pattern), id=pattern.id) == pattern
    assert paste(head, held).patterns == head.patterns


def test_a_clip_goes_through_the_clipboard_as_bytes():
    head = demo()
    held = clip(head, [head.tuners[0].id, head.slots[0].id])
    assert msgspec.json.decode(msgspec.json.encode(held), type=Clip) == held


def test_nothing_to_copy_is_said():
    with pytest.raises(GeometryError, match="Hold tuners"):
        clip(demo(), ["outline", "nut"])


def test_the_lead_is_the_middle():
    head = demo()
    ids = [t.id for t in head.tuners[:2]]
    a, b = (plan_point(head, id) for id in ids)
    assert lead(head, ids) == pytest.approx(((a[0] + b[0]) / 2, (a[1] + b[1]) / 2))
