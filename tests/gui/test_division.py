"""How a window is divided between the drawing and the panel."""


def drawing_and_panel(bench) -> tuple[int, int]:
    bench.pump()
    drawing, panel = bench.window.splitter.sizes()
    assert bench.window.side.width() == panel
    return drawing, panel


def test_in_a_narrow_window_with_letters_of_twice_the_size_the_drawing_has_half(bench):
    window = bench.window
    window.resize(1360, 880)
    window.looks.choose_letters(200)
    assert drawing_and_panel(bench)[1] == window.side.sizeHint().width()
    window.resize(1024, 700)
    drawing, panel = drawing_and_panel(bench)
    assert abs(drawing - panel) <= window.splitter.handleWidth()
    window.resize(1360, 880)
    assert drawing_and_panel(bench)[1] == window.side.sizeHint().width(), "it has its width again with the window"
    window.resize(1024, 700)
    assert drawing_and_panel(bench) == (drawing, panel)
    window.looks.choose_letters(100)
    assert drawing_and_panel(bench)[1] == window.side.sizeHint().width() == 420
    window.looks.choose_letters(200)
    assert drawing_and_panel(bench) == (drawing, panel), "the same where the letters grow in the narrow window"


def test_a_panel_that_the_maker_made_wider_than_it_asks_for_stays_so(bench):
    window = bench.window
    window.resize(1200, 800)
    window.splitter.setSizes([500, 700])
    wide = drawing_and_panel(bench)[1]
    assert wide > 600
    window.resize(1180, 800)
    assert drawing_and_panel(bench)[1] == wide


def test_in_a_narrow_window_the_width_that_the_maker_gives_the_panel_stays(bench):
    window = bench.window
    window.looks.choose_letters(150)
    window.resize(1024, 700)
    half = drawing_and_panel(bench)[1]
    window.keyboard.widen_panel(-1)
    narrower = drawing_and_panel(bench)[1]
    assert narrower < half
    window.resize(1020, 700)
    assert drawing_and_panel(bench)[1] <= narrower
    window.keyboard.widen_panel(1)
    assert drawing_and_panel(bench)[1] > narrower
