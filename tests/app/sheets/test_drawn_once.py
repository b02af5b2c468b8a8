"""Pages and files show the same papers: each is drawn once."""

from pathlib import Path

from app.sheets import parts, write
from app.sheets.pages import papers
from app.window.demo import demo
from geometry.drawing import Label


def test_pages_and_files_share_the_papers(tmp_path: Path, monkeypatch) -> None:
    drawn: list[str] = []
    for name in ("template_drawing", "wrap_drawing", "back_drawing"):
        draw = getattr(parts, name)
        monkeypatch.setattr(parts, name, lambda *given, name=name, draw=draw: drawn.append(name) or draw(*given))
    carried: list[tuple] = []
    monkeypatch.setattr(write, "dxf_bytes", lambda drawing, *rest: carried.append(drawing) or b"")
    layout = demo()
    write.write_sheets(layout, tmp_path)
    assert sorted(drawn) == ["back_drawing", "template_drawing", "wrap_drawing"]
    monkeypatch.undo()
    template, wrap, back = papers(layout, write.plan_work(layout))
    assert carried == [write.full_template(layout, template), wrap.drawing, back.drawing]
    assert isinstance(carried[0][-1], Label), "the file tells the compensation in words"
