"""The safety questions and the scores, by keyboard alone, on a real screen."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from tests.ui.pictures import keep
from tracker.plan.gate import QUESTIONS
from tracker.practice.tasks import AskGate, AskScores
from ui import theme
from ui.pages.gate import GatePage
from ui.pages.scores import ScoresPage
from ui.widgets.basic import Button, Page, Words
from ui.widgets.marks import Mark
from ui.widgets.scale import Step

SIZE = (1366, 768)
ALL_NO = dict.fromkeys(QUESTIONS, False)

Show = Callable[..., Page]


@pytest.fixture
def show(qtbot: QtBot) -> Iterator[Show]:
    """Show a page at a text size, as the window does."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)

    def build(page: Page, percent: int = 100, colours: str = "light") -> Page:
        theme.apply(app, colours)
        page.resize(*SIZE)
        qtbot.addWidget(page)
        for widget in (page, *page.findChildren(QWidget)):
            change = getattr(widget, "set_percent", None)
            if change is not None:
                change(percent)
        with qtbot.waitActive(page):
            page.show()
            page.activateWindow()
        return page

    yield build
    theme.apply(app, "light")


def settle() -> None:
    for _ in range(5):
        QApplication.processEvents()


def gate(show: Show, task: AskGate | None = None, **look: object) -> tuple[GatePage, list[dict]]:
    page = GatePage()
    got: list[dict] = []
    page.answered.connect(got.append)
    show(page, **look)
    page.ask(task or AskGate(because="start"))
    settle()
    return page, got


def scores(
    show: Show, names: tuple[str, ...] = ("dizziness",), **look: object
) -> tuple[ScoresPage, list[dict]]:
    page = ScoresPage()
    got: list[dict] = []
    page.answered.connect(got.append)
    show(page, **look)
    page.ask(AskScores(names=names))
    settle()
    return page, got


def press(*keys: Qt.Key | str) -> None:
    for key in keys:
        focus = QApplication.focusWidget()
        assert focus is not None
        if isinstance(key, str):
            QTest.keyClicks(focus, key)
        else:
            QTest.keyClick(focus, key)
        settle()


def tab_to(button: Button) -> None:
    for _ in range(30):
        if button.hasFocus():
            return
        press(Qt.Key.Key_Tab)
    raise AssertionError(f"Tab never comes to {button.text()}")


# --- the safety questions ---


def test_no_to_everything_by_keyboard(show: Show) -> None:
    page, got = gate(show)
    for _ in range(3):
        assert got == []
        assert isinstance(QApplication.focusWidget(), Mark)
        tab_to(page.none)
        press(Qt.Key.Key_Return)
    assert got == [ALL_NO]


def test_a_yes_ends_the_questions_and_takes_nothing_for_a_no(show: Show) -> None:
    page, got = gate(show)
    tab_to(page.none)
    press(Qt.Key.Key_Return)
    press(Qt.Key.Key_Down, Qt.Key.Key_Space)
    assert page.marked == ["blackout"]
    assert page.none.isHidden() and not page.some.isHidden()
    tab_to(page.some)
    press(Qt.Key.Key_Return)
    assert got == [{**dict.fromkeys(QUESTIONS[:4], False), "blackout": True}]


def test_enter_held_down_answers_nothing(show: Show) -> None:
    page, got = gate(show)
    press(*[Qt.Key.Key_Return] * 6)
    assert got == [] and page.marked == []
    press(Qt.Key.Key_Return)
    assert page.marked == ["severe_headache"]
    press(Qt.Key.Key_Return)
    assert page.marked == [] and not page.none.isHidden()


def test_the_first_statement_has_the_keys_at_once(show: Show) -> None:
    """Else "none", which waits until all was in sight, gives them to "I feel unwell"."""
    page, got = gate(show, percent=200)
    page.resize(700, 500)
    settle()
    page.none.setFocus()
    page.ask(AskGate(because="start"))
    for _ in range(2):
        assert QApplication.focusWidget() is page._marks["severe_headache"]
        settle()
    page.scroll.verticalScrollBar().setValue(page.scroll.verticalScrollBar().maximum())
    tab_to(page.none)
    QTest.keyClick(page.none, Qt.Key.Key_Return)
    assert QApplication.focusWidget() is page._marks["cannot_stand"] and got == []


def test_a_group_can_be_gone_back_to(show: Show) -> None:
    page, got = gate(show)
    assert page.back.isHidden()
    page.none.click()
    page.back.click()
    settle()
    assert list(page._marks) == list(QUESTIONS[:4])
    for _ in range(3):
        page.none.click()
        settle()
    assert got == [ALL_NO]


def test_only_what_is_still_open_is_asked(show: Show) -> None:
    page, got = gate(show, AskGate(questions=("fall",), because="unwell"))
    assert page.question.text() == "Is any of this new just now?"
    page.none.click()
    assert got == [{"fall": False}]


def test_none_waits_until_all_was_in_sight(show: Show) -> None:
    page, _got = gate(show, percent=200)
    page.resize(700, 500)
    settle()
    assert page.scroll.verticalScrollBar().maximum() > 0
    assert not page.none.isEnabled()
    page.none.click()
    assert page._at == 0
    while page.scroll.verticalScrollBar().value() < page.scroll.verticalScrollBar().maximum():
        page.page_down()
        settle()
    assert page.none.isEnabled()


# --- the scores ---


@pytest.mark.parametrize("digit", range(10))
def test_a_digit_and_enter(digit: int, show: Show) -> None:
    page, got = scores(show)
    press(Qt.Key.Key_Return)
    assert got == [] and not page.done.isEnabled()
    press(str(digit))
    assert page.scale.value == digit and got == []
    press(Qt.Key.Key_Return)
    assert got == [{"dizziness": digit}]


@pytest.mark.parametrize(
    ("keys", "value"),
    [
        (["1", "0"], 10),
        ([Qt.Key.Key_End], 10),
        (["1", Qt.Key.Key_Left, "0"], 0),
        (["2", "0"], 0),
        (["1", "1", "0"], 10),
        (["9", Qt.Key.Key_Right], 10),
        ([Qt.Key.Key_End, Qt.Key.Key_Up], 10),
        ([Qt.Key.Key_Right], 0),
        (["3", Qt.Key.Key_Up, Qt.Key.Key_Right, Qt.Key.Key_Down], 4),
        (["7", Qt.Key.Key_Home], 0),
        ([Qt.Key.Key_Space], 0),
    ],
)
def test_ways_to_a_number(keys: list[Qt.Key | str], value: int, show: Show) -> None:
    page, got = scores(show)
    press(*keys)
    assert page.scale.value == value
    tab_to(page.done)
    press(Qt.Key.Key_Return)
    assert got == [{"dizziness": value}]


def test_each_score_is_asked_for_by_itself(show: Show) -> None:
    page, got = scores(show, ("dizziness", "nausea", "unsteadiness"))
    asked = []
    for key in ("4", "0", "7"):
        asked.append(page.question.text())
        assert page.scale.value is None
        press(key, Qt.Key.Key_Return)
    assert got == [{"dizziness": 4, "nausea": 0, "unsteadiness": 7}]
    assert len(set(asked)) == 3
    press(Qt.Key.Key_Return)
    assert len(got) == 1


def test_a_click_chooses_and_does_not_go_on(show: Show) -> None:
    page, got = scores(show)
    step = page.scale._group.button(6)
    QTest.mouseClick(step, Qt.MouseButton.LeftButton)
    assert page.scale.value == 6 and got == []
    QTest.mouseClick(page.done, Qt.MouseButton.LeftButton)
    assert got == [{"dizziness": 6}]


# --- how it looks ---


@pytest.mark.parametrize("colours", ["light", "dark"])
@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut_and_all_has_a_name(percent: int, colours: str, show: Show) -> None:
    page, _ = gate(show, percent=percent, colours=colours)
    for part in range(3):
        next(iter(page._marks.values())).setChecked(part == 1)
        settle()
        keep(page, f"safety/gate-{part + 1}-{percent}-{colours}")
        check_page(page)
        if percent == 100:
            assert page.scroll.verticalScrollBar().maximum() == 0
        next(iter(page._marks.values())).setChecked(False)
        bar = page.scroll.verticalScrollBar()
        bar.setValue(bar.maximum())
        page.none.click()
        settle()
    other, _ = scores(show, percent=percent, colours=colours)
    press("7")
    keep(other, f"safety/scores-{percent}-{colours}")
    check_page(other)


def check_page(page: Page) -> None:
    inner = page.scroll.widget()
    assert inner.width() <= page.scroll.viewport().width()
    for label in page.findChildren(Words):
        if label.isVisible() and label.text():
            box = QRect(0, 0, label.width(), 10_000)
            flags = int(Qt.TextFlag.TextWordWrap)
            needed = label.fontMetrics().boundingRect(box, flags, label.text())
            assert needed.height() <= label.height() + 1 and needed.width() <= label.width()
    for button in page.findChildren(Button):
        if not button.isVisible():
            continue
        assert button.accessibleName()
        assert button.height() >= 44 and button.width() >= 44
        right = button.mapTo(page, button.rect().topRight()).x()
        assert right <= page.width()
        if isinstance(button, Mark):
            assert button.height() >= button.heightForWidth(button.width())
        elif isinstance(button, Step):
            assert button.width() >= button.fontMetrics().horizontalAdvance("10") + 2 * theme.S


def test_tab_leads_from_the_last_statement_to_the_answer(show: Show) -> None:
    page, _ = gate(show)
    for _ in range(2):
        for _ in range(len(page._marks)):
            press(Qt.Key.Key_Tab)
        assert QApplication.focusWidget() is page.none
        press(Qt.Key.Key_Space)
