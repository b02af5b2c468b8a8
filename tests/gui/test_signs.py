"""Signs in the window: words beside them while there is room, tips always, and the colours of the lamp."""


from app.look.descendants import below
from app.look.icons import SHAPES
from app.look.theme import DAY, LAMP, THEMES
from app.window.sign_button import SignButton
from app.window.tool_bar import ACTIONS, TOOLS, WORDS
from tests.icon_sheet import icon_sheet
from tests.waiting import press


def shown(bench):
    tools = bench.window.tools
    return [button for button in below(tools, SignButton) if button.isVisibleTo(tools)]


def test_every_tool_and_every_action_of_the_strip_has_a_sign():
    assert {key for tools in TOOLS.values() for key in tools} <= SHAPES.keys()
    assert {key for keys in ACTIONS.values() for key in keys} <= SHAPES.keys()


def test_a_tool_tells_what_it_does_with_the_keys_that_go_with_it(bench):
    for key, (_, about) in WORDS.items():
        bench.window.tools.set_tool(key)
        assert about and bench.window.tools.about == about
    assert "Shift" in WORDS["hold"][1] and "Alt" in WORDS["hold"][1]


def test_words_go_where_there_is_no_room_and_come_back(bench):
    window = bench.window
    window.splitter.setSizes([2000, 340])
    for stage in ("outline", "tuners"):
        window.set_stage(stage)
        window.resize(1500, 800)
        bench.pump()
        assert all(button.text() for button in shown(bench)), stage
        window.resize(window.minimumSizeHint().width(), 800)
        bench.pump()
        tools = window.tools
        right = max(button.geometry().right() for button in shown(bench))
        assert right <= tools.width(), "what is in the strip is whole"
        if stage == "outline":
            assert not all(button.text() for button in shown(bench))
    for button in shown(bench):
        assert button.toolTip() and button.accessibleName() and not button.icon().isNull()
        assert button.toolTip().startswith(button.accessibleName()), "the tip tells the word"
    window.resize(1500, 800)
    bench.pump()
    assert all(button.text() for button in shown(bench))


def test_no_window_grows_as_stages_are_gone_through(bench):
    window = bench.window
    narrow = window.minimumSizeHint().width()
    window.resize(narrow, 700)
    for stage in TOOLS:
        window.set_stage(stage)
        bench.pump()
    assert window.minimumSizeHint().width() <= max(narrow, 1060), "it fits a screen of 1100 points"


def test_the_signs_take_the_colours_of_the_lamp(bench):
    button = bench.window.tools._tools["measure"]
    def colours():
        image = button.icon().pixmap(32, 32).toImage()
        return {image.pixelColor(x, y).name().upper() for x in range(32) for y in range(32)
                if image.pixelColor(x, y).alpha() == 255}
    assert DAY.ink in colours()
    bench.window.actions_["lamp"].trigger()
    assert LAMP.ink in colours() and DAY.ink not in colours()


def test_undo_and_redo_stand_at_the_end_of_the_menu_bar(bench):
    buttons = bench.window.history_buttons.buttons
    assert not buttons["undo"].isEnabled() and not buttons["redo"].isEnabled()
    before = bench.layout
    bench.window.commands.run("turn over")
    assert buttons["undo"].isEnabled() and "Left-handed mirror" in buttons["undo"].toolTip()
    press(buttons["undo"])
    assert bench.layout is before
    press(buttons["redo"])
    assert bench.layout is not before
    press(buttons["changes"])
    assert bench.window.side.inside.changes.isVisible() and buttons["changes"].isChecked()
    press(buttons["changes"])
    assert bench.window.side.inside.snags.isVisible() and not buttons["changes"].isChecked()


def test_the_sheet_of_all_signs_shows_them(qapp):
    for theme in THEMES.values():
        image = icon_sheet(theme).toImage()
        found = {image.pixelColor(x, y).name().upper() for x in range(0, image.width(), 3) for y in range(0, image.height(), 2)}
        assert {theme.ink, theme.bore, theme.wood, theme.panel} <= found
