"""The records of the model are read as they stand."""

from geometry.layout.parts import Part


def records(kind: type = Part) -> list[type]:
    return [kind, *(more for one in kind.__subclasses__() for more in records(one))]


def test_no_record_has_annotations_to_be_worked_out_from_text():
    import geometry.layout  # noqa: F401  (makes them all; others may have made records of their own before)

    made = [kind for kind in records() if kind.__module__.startswith("geometry.layout")]
    assert len(made) > 30
    late = {kind.__name__ for kind in made for said in vars(kind).get("__annotations__", {}).values() if isinstance(said, str)}
    assert not late
