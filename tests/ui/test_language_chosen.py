"""Choosing a language: a window in it takes the place of the other, and all goes on by keys."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from functools import partial
from itertools import cycle, product
from math import isfinite
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.exceptions import capture_exceptions
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from tests.handover.made import plan_with
from tests.ui.acting import SLOWER, Acting, Patient
from tests.ui.fakes import CAMERA, SIZE, FakeWorld
from tests.ui.patient import ENTER, Person
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in
from tracker.plan.files import save_plan
from tracker.practice.tasks import (
    AskAfterSet,
    AskScores,
    CountDown,
    DoSet,
    Over,
    Settle,
    ShowToday,
)
from tracker.session.files import data_folder
from tracker.session.recovery import Interrupted
from tracker.session.trace import load_trace
from ui import opening, theme, wiring, words
from ui.app import Window
from ui.editor.window import EditorWindow
from ui.languages import CODES, hush, language_of, locale_of
from ui.plan_in_use import plan_in_use
from ui.recovering import Stage
from ui.session.first import STEPS
from ui.session.flow import Phase
from ui.settings import Settings
from ui.wiring import make_world as real_world


@pytest.fixture
def opened(
    qtbot: QtBot, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Callable[..., Callable[[], Window]]]:
    """Open the program as the command does, before stand-ins; gives what gives its window."""
    monkeypatch.setattr("ui.wiring.make_world", lambda *_: fake.world())
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    locale, quits = QLocale(), QGuiApplication.quitOnLastWindowClosed()

    def now() -> Window:
        (window,) = opening._shown
        return window

    def build(percent: int = 100, **more: Any) -> Any:
        opening.user_settings().text_percent = percent
        opening.open_window(**more)
        settle(qtbot, now)
        return now

    yield build
    QGuiApplication.setQuitOnLastWindowClosed(False)
    for window in opening._shown:
        window.close()
        window.deleteLater()
    opening._shown.clear()
    QApplication.processEvents()
    QGuiApplication.setQuitOnLastWindowClosed(quits)
    theme.apply(app, "light")
    hush(app)
    QLocale.setDefault(locale)
    app.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def settle(qtbot: QtBot, now: Callable[[], Window]) -> None:
    """Let a new window be the test's alone, in the size of a laptop."""
    window = now()
    window._timer.stop()
    window.setWindowState(Qt.WindowState.WindowNoState)
    window.resize(*SIZE)
    with qtbot.waitActive(window):
        window.activateWindow()
    QApplication.processEvents()


def choose_language(qtbot: QtBot, now: Callable[[], Window], fake: FakeWorld, code: str) -> None:
    """By Tab and the arrow keys, one after the other until it is the one."""
    person = Person(now(), fake)
    person.settle()
    person.find(now().pages["first"].looks.language._group.checkedButton().text())
    while language_of(now().settings.language) != code:
        old = now()
        at = CODES.index(language_of(old.settings.language))
        ahead = CODES.index(code) > at
        # They stand in reading order.
        right = ahead == (old.layoutDirection() == Qt.LayoutDirection.LeftToRight)
        Person(old, fake).press(Qt.Key.Key_Right if right else Qt.Key.Key_Left)
        qtbot.waitUntil(lambda old=old: now() is not old)
        settle(qtbot, now)


def test_another_language_is_there_at_once_and_can_be_undone(
    qtbot: QtBot, opened: Any, fake: FakeWorld
) -> None:
    begun: list[Window] = []
    now = opened(begin=begun.append)
    first = now()
    choose_language(qtbot, now, fake, "de")
    assert now() is not first and begun == [first] and not isValid(first)
    assert now().pages["first"].title.text() == words.say("first.text")
    assert words.say("ask.yes") == "Ja" and now().pages["first"].looks.unchecked.isVisible()
    assert QApplication.focusWidget().text() == "Deutsch"
    assert now().director.first_step == "text" and now().director.phase == Phase.first
    choose_language(qtbot, now, fake, "ar")
    assert now().layoutDirection() == Qt.LayoutDirection.RightToLeft
    choose_language(qtbot, now, fake, "en")
    assert now().layoutDirection() == Qt.LayoutDirection.LeftToRight
    assert words.say("ask.yes") == "Yes" and not now().pages["first"].looks.unchecked.isVisible()
    assert Settings(data_folder() / "window.ini").language == "en"


def test_the_next_start_speaks_the_language_chosen(
    qtbot: QtBot, opened: Any, fake: FakeWorld
) -> None:
    now = opened()
    choose_language(qtbot, now, fake, "es")
    now().close()
    now = opened()
    assert words.say("ask.yes") == "Sí" and now().header.mark.text == words.say("camera_off")


def test_an_unsaved_plan_is_asked_about_before_the_language_changes(
    qtbot: QtBot, opened: Any, fake: FakeWorld, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = opened()
    window = now()
    window.beside.open_editor()
    editor = window.beside.editor
    assert isinstance(editor, EditorWindow)
    editor.start.from_empty.click()
    editor.editing.add_entry("walk")
    raised: list[EditorWindow] = []
    monkeypatch.setattr(EditorWindow, "raise_", lambda self: raised.append(self))
    window.director.open_first("text")
    window.pages["first"].looks.language._group.button(CODES.index("de")).click()
    qtbot.waitUntil(lambda: raised == [editor])
    QApplication.processEvents()
    assert now() is window and isValid(window) and window.isVisible() and editor.isVisible()
    assert window.settings.language == "" and words.say("ask.yes") == "Yes"
    looks = window.pages["first"].looks
    assert looks.language.row == CODES.index(language_of(""))
    # Answered, the language can be chosen.
    editor.bar.buttons[1].click()
    assert not editor.isVisible()
    settle(qtbot, now)
    choose_language(qtbot, now, fake, "de")
    assert now() is not window and words.say("ask.yes") == "Ja"


def test_whether_the_last_window_quits_is_as_before_when_a_window_cannot_be_made(
    opened: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = opened()()
    QGuiApplication.setQuitOnLastWindowClosed(True)
    with monkeypatch.context() as patched, capture_exceptions() as raised:
        patched.setattr(Window, "close", lambda _: 1 / 0)
        window.other_language.emit("de")
        QApplication.processEvents()
    assert len(raised) == 1 and QGuiApplication.quitOnLastWindowClosed()


def covering(window: Window) -> str:
    return next(n for n, p in window.pages.items() if p is window.stack.currentWidget())


def test_a_plan_that_was_refused_stays_away_in_another_language(
    qtbot: QtBot, opened: Any, fake: FakeWorld, tmp_path: Path
) -> None:
    save_plan(tmp_path / "plan.json", plan_with(plain=True))
    now = opened(plan=tmp_path / "plan.json")
    assert covering(now()) == "same"
    now().pages["same"].no.click()
    now().director.open_first("text")
    choose_language(qtbot, now, fake, "de")
    assert now().pages["welcome"].plan is None and plan_in_use() is None
    now().director.leave_first()
    assert covering(now()) == "welcome"


def test_words_of_a_plan_that_nobody_looked_at_are_shown_in_the_other_language(
    qtbot: QtBot, opened: Any, fake: FakeWorld, tmp_path: Path
) -> None:
    save_plan(tmp_path / "plan.json", plan_with(plain=True))
    now = opened(plan=tmp_path / "plan.json")
    assert covering(now()) == "same"
    now().director.open_first("text")
    choose_language(qtbot, now, fake, "de")
    assert covering(now()) == "first"
    now().director.leave_first()
    assert covering(now()) == "same" and now().handing_over.unchecked
    # To look at the sounds is no answer.
    now().open_sound()
    now().close_sound()
    assert covering(now()) == "same"
    now().pages["same"].later.click()
    assert covering(now()) == "welcome"
    now().director.open_first("text")
    choose_language(qtbot, now, fake, "es")
    now().director.leave_first()
    assert covering(now()) == "welcome" and now().handing_over.unchecked


def test_the_layout_for_a_call_stays(qtbot: QtBot, opened: Any, fake: FakeWorld) -> None:
    now = opened()
    now().switch_sharing()
    now().director.open_first("text")
    choose_language(qtbot, now, fake, "de")
    assert now().director.sharing and now().header.sharing.isChecked()
    now().director.leave_first()
    now().refresh()
    assert not now().pages["welcome"].open.isVisible()


def test_sessions_that_broke_off_are_offered_again_until_it_is_answered(
    qtbot: QtBot, opened: Any, fake: FakeWorld
) -> None:
    fake.interrupted = [Interrupted(Path("a"), "2026-11-24T09:00:00Z", 4)]
    now = opened(begin=lambda window: window.director.look_for_interrupted())
    now().tick()
    assert now().director.recovering.stage == Stage.offered
    now().director.open_first("text")
    choose_language(qtbot, now, fake, "de")
    now().tick()
    assert now().director.recovering.stage == Stage.offered
    now().director.recovering.later()
    choose_language(qtbot, now, fake, "es")
    now().tick()
    assert now().director.recovering.stage == Stage.nothing


def test_in_a_session_no_language_can_be_chosen(opened: Any) -> None:
    """It stands on a page of the first steps alone, which no session shows."""
    window = opened()()
    for phase in Phase:
        window.director.phase = phase
        on = window._page() is window.pages["first"]
        assert on == (phase == Phase.first)
    window.director.phase = Phase.first


def test_numbers_are_written_as_in_the_persons_country() -> None:
    countries = QLocale.Country
    assert locale_of("de", countries.Austria).name() == "de_AT"
    assert locale_of("de", countries.AnyCountry).name() == "de_DE"
    assert locale_of("es", countries.Mexico).name() == "es_MX"
    assert locale_of("ar", countries.Egypt).zeroDigit() == "٠"
    assert locale_of("ar", countries.Germany).zeroDigit() == "0"


def test_texts_take_the_countrys_digits_and_keys_keep_theirs(opened: Any) -> None:
    opened()
    before = QLocale()
    QLocale.setDefault(QLocale("ar_EG"))
    try:
        assert words.say("score.value", value=7) == "٧ of ١٠"
        assert "(F4)" in words.say("share.open")
        assert words.number(12) == "١٢"
        assert words.in_digits("F10, A4, 10 °") == "F10, A4, ١٠ °"
    finally:
        QLocale.setDefault(before)


# --- from the first run to a saved session ---


@pytest.fixture
def acted(
    qtbot: QtBot, opened: Any, fake: FakeWorld, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Callable[[str, int], Patient]:
    """The program as its command opens it, in a language; a clip is its camera."""

    def build(code: str, percent: int) -> Patient:
        acting = Acting(tmp_path, lambda: opening._shown[0].director)
        monkeypatch.setattr(wiring, "make_world", lambda *_: acting.world(real_world()))
        monkeypatch.setattr("ui.session.setup.setup_asked", acting.setup_asked)
        # Six seconds of the half minute tell as much.
        monkeypatch.setattr("ui.session.first_try._SECONDS", 6)
        now = opened(percent)
        choose_language(qtbot, now, fake, code)
        return Patient(qtbot, now(), fake, acting)

    return build


def is_asked(director: Any, step: str) -> bool:
    return director.asked is not None and director.asked.step.step == step


def set_up(person: Patient, look: Callable[[str], None]) -> None:
    """From "I am in place" to the set, with what is seen on the way."""
    assert person.director.phase == Phase.camera
    person.seen()
    look("camera before the set-up")
    page: Any = person.window.pages["camera"]
    person.choose(page.next.text())
    director = person.director
    for step in ("rest", "look", "turn_slowly", "nod_slowly"):
        person.until(partial(is_asked, director, step))
        look(f"set-up {step}")
    person.until_asked(CountDown)
    look("countdown")
    person.until_asked(DoSet)


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    """Each language goes through once, the text sizes in turn; with ``--first-runs all`` in both.

    A run takes some fifteen seconds of the processor. What is in sight at 200 % is looked at in
    every language anyway (test_languages.py).
    """
    if "percent" in metafunc.fixturenames:
        sizes = (100, 200)
        every = metafunc.config.getoption("first_runs") == "all"
        runs = product(CODES, sizes) if every else zip(CODES, cycle(sizes), strict=False)
        metafunc.parametrize(("code", "percent"), list(runs))


@pytest.mark.slow
def test_from_the_first_run_to_a_saved_session_by_keys_alone(
    acted: Callable[[str, int], Patient], private_data_folder: Path, code: str, percent: int
) -> None:
    """All is the program's own but what the person looks at in the set-up.

    Its targets are those of the clip, at the clip's times (``Acting.setup_asked`` in place of
    ``setup_asked``), since the person of a clip can look nowhere else. That the program's own
    set-up asks for the right looks is not shown here.
    """
    person = acted(code, percent)
    window, director = person.window, person.director
    faults: list[str] = []
    pictures = 0

    def look(name: str) -> None:
        nonlocal pictures
        person.settle()
        pictures += 1
        keep(window, f"pages/first-run/{code}-{percent}/{pictures:02d}-{name}", always=True)
        faults.extend(f"{name}: {fault}" for fault in cut_in(window))

    for step in STEPS:
        assert director.first_step == step
        if step == "camera":
            person.seen()
        look(step)
        if step != STEPS[-1]:
            person.choose("Go on")
    person.choose("Try it now")
    look("gate")
    person.none_of_these()
    look("score")
    person.press("1", "0")
    person.press("2", ENTER)
    assert isinstance(director.task, ShowToday)
    look("today")
    person.choose("Begin")
    look("prepare")
    person.choose("I am in place")
    set_up(person, look)
    person.until(lambda: director.set_ran_s > 4.0)
    look("set")
    person.until_asked(AskAfterSet)
    while isinstance(director.task, AskAfterSet):
        look("after the set")
        person.until(lambda: not director.takes_no_answer)
        person.answer_one()
    look("wait")
    person._acting.wait(11)
    person.until_asked(AskScores)
    look("score again")
    person.press("2", ENTER)
    person.until_asked(Settle)
    look("settle")
    person.choose("I feel as usual again")
    person.until(lambda: director.phase in (Phase.asking, Phase.summary))
    if isinstance(director.task, Over):
        look("over")
        person.choose("Show what I did")
    person.until(lambda: director.phase == Phase.summary and director.saved is not None)
    look("summary")
    assert not faults
    judge(director.saved, private_data_folder)
    person.choose("Close")
    assert not window.isVisible()


def judge(saved: Any, data: Path) -> None:
    """What the pictures of the clip gave, against what its person does."""
    assert saved.folder.parent == data / "sessions"
    names = {p.name for p in saved.folder.iterdir()}
    assert names == {"journal.jsonl", "summary.json", "trace.csv", "stage.json"}
    summary = json.loads(saved.summary_path.read_text(encoding="utf-8"))
    assert summary["ended"] == "finished" and summary["symptoms"]["before"] == 2
    assert summary["setup"]["calibration"] and summary["setup"]["camera"]["name"] == CAMERA.name
    (done,) = summary["exercises"]
    assert done["done"]["measured_fraction"] > 0.9
    # A there-and-back in three seconds, and the set may begin within one.
    assert done["done"]["repetitions"] in (1, 2)
    assert done["head"]["tempo_bpm"]["median"] == pytest.approx(60 / SLOWER, rel=0.1)
    # The clip's person looks at the place of the clip's target, whatever place the window gives it
    # (a gaze that rests beside it is withheld): that the eyes were measured is what can be told.
    read = [s for s in load_trace(saved.folder / "trace.csv") if s.step == "exercise"]
    assert sum(isfinite(s.eye_yaw_deg) for s in read) > 20
