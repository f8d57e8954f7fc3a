"""Two traces to compare: where they stand, and that a degree is as high in both."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.ui.test_desk_moments import made_view
from ui import words
from ui.desk.trace_pair import BESIDE_PX, TracePair

Build = Callable[..., TracePair]
LONG = "a title that is so long that it has to go on in a second line, and perhaps in a third"


@pytest.fixture
def pair(qtbot: QtBot) -> TracePair:
    """Two sets of a session each, the second one with ten times the values."""
    made = TracePair()
    qtbot.addWidget(made)
    views = [made_view([k / 10 for k in range(100)], []) for _ in range(2)]
    views[1].columns["head_yaw_deg"] = 10 * views[1].columns["head_yaw_deg"]
    made.show_second(on=True)
    made.resize(BESIDE_PX, 600)
    made.show()
    made.show_sets(["first", LONG], views, [v.sets[0] for v in views])
    settle()
    return made


def settle() -> None:
    for _ in range(4):
        QApplication.processEvents()


def boxes(pair: TracePair) -> list[tuple[float, float, float, float]]:
    """Left, top, width and height of where the lines are, in the pair."""
    found = []
    for pane in pair.panes:
        box, at = pane.trace._box, pane.trace.mapTo(pair, pane.trace.rect().topLeft())
        found.append((at.x() + box.left(), at.y() + box.top(), box.width(), box.height()))
    return found


def test_where_it_is_wide_they_stand_side_by_side_and_level(pair: TracePair) -> None:
    assert pair.beside
    first, second = boxes(pair)
    assert second[0] > first[0] + first[2]
    # A degree is as high in both, and 0 stands at one height, whatever the words around take.
    assert second[1] == first[1] and second[3] == first[3]
    assert abs(first[2] - second[2]) <= 1
    assert pair.panes[1].title.height() > pair.panes[0].title.sizeHint().height()
    scales = [pane.trace._scale for pane in pair.panes]
    assert scales[0] == scales[1] and scales[0][1] > 10
    # So it is with words that the cursor meets on one side alone.
    pair.panes[0].values.setText(" ".join([LONG] * 3))
    settle()
    first, second = boxes(pair)
    assert second[1] == first[1] and second[3] == first[3]
    # And the room of a long title is given back when it goes.
    high = first[3]
    view = pair._views[0]
    assert view is not None
    pair.show_sets(["first", "second"], [view, view], [view.sets[0]] * 2)
    settle()
    assert boxes(pair)[0][3] > high


def test_where_it_is_narrow_or_words_are_large_they_stand_below_each_other(
    pair: TracePair,
) -> None:
    for change in (
        lambda: pair.resize(BESIDE_PX - 1, 600),
        lambda: (pair.resize(BESIDE_PX, 600), pair.set_percent(200)),
    ):
        change()
        settle()
        first, second = boxes(pair)
        assert not pair.beside and second[1] > first[1] + first[3] and second[0] == first[0]
        pair.set_percent(100)
        pair.resize(BESIDE_PX, 600)
        settle()
        assert pair.beside


def test_one_alone_has_all_the_room(pair: TracePair) -> None:
    both = boxes(pair)[0][2]
    pair.show_second(on=False)
    settle()
    assert not pair.beside and boxes(pair)[0][2] > 1.8 * both


def test_keys_move_both_and_a_screen_reader_tells_them_apart(pair: TracePair) -> None:
    first, second = (pane.trace for pane in pair.panes)
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(first, Qt.Key.Key_Plus)
    assert first.cursor_s == second.cursor_s == pytest.approx(1.0)
    assert (first.from_s, first.to_s) == (second.from_s, second.to_s)
    assert first.to_s - first.from_s == pytest.approx(5.0)
    names = [trace.accessibleName() for trace in (first, second)]
    assert all(n.startswith(words.say("desk.trace")) and "1.00 s" in n for n in names)
    assert "first" in names[0] and LONG in names[1]
    # Tab goes from the first, by its two buttons, to the second.
    for _ in range(3):
        assert pair.focusWidget() is not second
        QTest.keyClick(pair.focusWidget() or pair, Qt.Key.Key_Tab)
    assert pair.focusWidget() is second
