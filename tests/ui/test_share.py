"""The sharing layout: large, calm, without names of files, and readable after a call."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from tests.ui.fakes import PLAN, FakeWorld, Make, feed, grey_picture, seen, turning
from tests.ui.patient import ENTER, STAND, TURNS, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_window import cut_in, outside, pixels, to_choose, to_exercise
from tracker.motion.turning import Turn
from tracker.plan.model import Entry
from tracker.practice.tasks import AskSupport
from tracker.sample import Sample
from tracker.session.live import LiveState
from tracker.vision.messages import Measured, SourceState
from ui import theme, words
from ui.languages import CODES
from ui.session.flow import TROUBLES, Dose, Phase
from ui.share import HOLD_S, VALUES_SHARE, WORDS_SHARE, Board, Held, Sides, board_of, text_percent
from ui.widgets.basic import Button, Words
from ui.widgets.outline import HeadOutline, pose_of
from ui.widgets.share_text import text_of

F4 = Qt.Key.Key_F4
SIZES = [(1366, 768), (1920, 1080), (2560, 1440)]
GONE = sorted(TROUBLES | {SourceState.silent, SourceState.restarting})
FULL = Board(
    count="18",
    goal="of 20",
    first=("Right", "17 degrees", "104 a second"),
    second=("Left", "19 degrees", "96 a second"),
    tempo="58 beats a minute",
    asked="asked: 15 to 20 degrees, 60 beats a minute",
    cue="A little bigger",
    name="Turn your head, eyes on the target",
    symptoms="Before: dizziness 2, nausea 0, unsteadiness 1",
)


def share(window: Any) -> None:
    QTest.keyClick(window, F4)
    for _ in range(3):
        QApplication.processEvents()


def turn(side: str, index: int, amplitude_deg: float = 17.4, speed: float = 103.8) -> Turn:
    nothing = float("nan")
    values = dict.fromkeys(Turn.__dataclass_fields__, nothing)
    known = {"side": side, "index": index, "amplitude_deg": amplitude_deg}
    return Turn(**{**values, **known, "peak_speed_deg_s": speed})  # type: ignore[arg-type]


# --- the texts ---


def test_each_side_keeps_its_last_turn_and_what_is_missing_is_a_dash() -> None:
    sides = Sides()
    sides.take(turn("right", 0))
    assert sides.texts() == (("Right", "17 degrees", "104 a second"), ("Left", "–", "–"))
    sides.take(turn("left", 1, 19.0, float("nan")))
    assert sides.texts()[1] == ("Left", "19 degrees", "–")
    sides = Sides()
    sides.take(turn("down", 0))
    assert [s[0] for s in sides.texts()] == ["Up", "Down"]


def test_the_board_says_count_goal_tempo_and_symptoms() -> None:
    live = LiveState(
        repetitions=4,
        goal_repetitions=20,
        goal_amplitude_range_deg=(15.0, 20.0),
        goal_tempo_bpm=60.0,
        tempo_bpm=57.6,
        last_turn=turn("right", 3),
    )
    board = board_of(live, Sides(), counted=True, scores=("before", {"dizziness": 2, "nausea": 0}))
    assert (board.count, board.goal) == ("4", "of 20")
    assert board.asked == "asked: 15 to 20 degrees, 60 beats a minute"
    assert board.tempo == "now: 58 a minute"
    assert board.symptoms == "Before: dizziness 2, nausea 0"
    assert "4 of 20" in board.in_words() and "nausea 0" in board.in_words()


def test_what_is_not_counted_has_no_count() -> None:
    board = board_of(LiveState(repetitions=0), Sides(), counted=False, time="")
    assert board.count == "" and board.first == ("", "", "")
    assert board.symptoms == words.say("share.no_scores")


def test_each_text_stands_for_a_second() -> None:
    held = Held(Board())
    shown = [held.offer(Board(count=str(k), cue="steady"), k / 10).count for k in range(35)]
    changes = [k for k in range(1, 35) if shown[k] != shown[k - 1]]
    assert changes == [10, 20, 30] and shown[10] == "10"
    # Another text need not wait for the first.
    assert held.offer(Board(count="34", cue="new"), 3.45).cue == "new"
    assert HOLD_S == 1.0


@pytest.mark.parametrize(
    ("size", "chosen", "percent"),
    [
        ((960, 600), 100, 100),
        ((1366, 768), 100, 125),
        ((1366, 768), 200, 200),
        ((1920, 1080), 100, 175),
        ((2560, 1440), 100, 250),
        ((3840, 2160), 100, 350),
        # As high, but narrow.
        ((1440, 2560), 100, 200),
    ],
)
def test_the_text_grows_with_the_window(size: tuple[int, int], chosen: int, percent: int) -> None:
    assert text_percent(*size, chosen) == percent


# --- the window ---


def words_too_small(window: Any) -> list[str]:
    """Words and buttons with capitals below the least share of the window's height."""
    faults = []
    for widget in window.findChildren(QLabel) + window.findChildren(Button):
        if widget.isVisible() and widget.text():
            capital = QFontMetricsF(widget.font()).capHeight()
            if capital < WORDS_SHARE * window.height():
                faults.append(f"{widget.text()!r}: {capital:.1f} px")
    return faults


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("exercise", ["turns-on-target", "eyes-side-to-side"])
def test_in_a_call_everything_is_large_and_whole(
    make: Make, fake: FakeWorld, size: tuple[int, int], percent: int, exercise: str
) -> None:
    window = make(percent=percent)
    window.resize(*size)
    to_exercise(window, fake, exercise)
    share(window)
    window.director.pause_or_go_on()
    feed(fake.service, window.director, fake.service.time_s + 3.2, seen)
    assert window.director.phase == Phase.exercise
    page = window.pages["practice"]
    page.share.show_board(FULL)
    QApplication.processEvents()
    assert not words_too_small(window) and not cut_in(window)
    board = page.share
    assert not outside(window, board, "the board")
    assert not faults_of(window, FULL)
    # The outline's shoulders don't run into the words under it.
    around = board.outline.geometry().adjusted(0, 0, 0, round(board._least_gap()))
    assert not any(row.box.intersects(around) for row in board.rows(FULL))
    # The parts don't lie over each other.
    zones = [board.zone(n).toRect() for n in ("field", "cue", "count", "first", "second", "foot")]
    for k, one in enumerate(zones):
        assert not any(one.adjusted(1, 1, -1, -1).intersects(z) for z in zones[k + 1 :])


def longest() -> Board:
    """A set with the longest figures that there may be, in the language that is spoken."""
    number, say = words.number, words.say
    degrees = say("share.degrees", value=number(88))
    speed = say("share.speed", value=number(888))
    live = LiveState(
        repetitions=88,
        goal_repetitions=888,
        goal_amplitude_range_deg=(28.0, 30.0),
        goal_tempo_bpm=180.0,
        tempo_bpm=188.0,
    )
    scores = dict.fromkeys(("dizziness", "nausea", "unsteadiness"), 10)
    names = [say(k) for k in words.WORDS if re.fullmatch(r"exercise\.[a-z0-9-]+", k)]
    made = board_of(live, Sides(), counted=True, scores=("after", scores))
    return replace(
        made,
        first=(say("share.right"), degrees, speed),
        second=(say("share.left"), degrees, speed),
        name=max(names, key=len),
    )


def cues() -> list[str]:
    """All that may stand in the line for the cue."""
    say = words.say
    found = [say(k) for k in words.WORDS if re.fullmatch(r"cue\.\w+", k)]
    reasons = [say(k) for k in words.WORDS if re.fullmatch(r"reason\.\w+", k)]
    found += [say("practice.not_measured", reason=reason) for reason in reasons]
    found += [say(f"practice.{k}") for k in ("paused", "disk", "busy", "saving")]
    found += [say(key) for key in ("lost.hold", "lost.paused", "lost.again", "call.marked")]
    return found + [say(f"trouble.{state}") for state in TROUBLES]


def faults_of(window: Any, board: Board) -> list[str]:
    """What of a board is drawn too small, beside its place, or over something else."""
    share, high, faults = window.pages["practice"].share, window.height(), []
    rows = share.rows(board)
    for row in rows:
        for run in (run for word in row.line for run in word):
            capital = QFontMetricsF(share.font_of(run.capital_px)).capHeight()
            large = run.is_value or row.part == "cue"
            if capital < (VALUES_SHARE if large else WORDS_SHARE) * high:
                faults.append(f"{run.text!r} of {row.part}: {100 * capital / high:.2f} %")
        if not share.zone(row.part).adjusted(-1, -1, 1, 1).contains(row.box):
            faults.append(f"{text_of(row.line)!r} leaves {row.part}")
    for k, one in enumerate(rows):
        faults += [
            f"{text_of(one.line)!r} and {text_of(other.line)!r} lie on each other"
            for other in rows[k + 1 :]
            if one.box.intersects(other.box)
        ]
    return faults


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("language", CODES)
@pytest.mark.parametrize("exercise", ["turns-on-target", "eyes-up-down"])
def test_the_longest_texts_keep_their_size(
    make: Make, fake: FakeWorld, size: tuple[int, int], language: str, exercise: str
) -> None:
    window = make(language=language)
    window.resize(*size)
    to_exercise(window, fake, exercise)
    share(window)
    assert window.size().toTuple() == size
    assert not words_too_small(window)
    full, shown = longest(), window.pages["practice"].share
    faults = faults_of(window, full)
    texts = " ".join(text_of(row.line) for row in shown.rows(full))
    for text in (full.asked, full.symptoms, full.tempo, *full.first, words.say("share.consent")):
        assert " ".join(text.split()) in texts
    for cue in cues():
        faults += faults_of(window, replace(full, cue=cue))
    shown.show_board(replace(full, cue=max(cues(), key=len)))
    keep(window, f"call/{exercise}-{language}-{size[0]}")
    for state in GONE:
        do = words.say(f"trouble.{state}.do")
        paused = [words.say(k) for k in ("lost.hold", f"trouble.{state}")]
        for remedy in (f"{words.say('lost.count')} {do}", " ".join((*paused, do))):
            faults += faults_of(window, replace(full, remedy=remedy))
    assert not faults


def test_one_key_there_and_back(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_exercise(window, fake)
    page = window.pages["practice"]
    assert not page.share.isVisible()
    share(window)
    assert page.share.isVisible() and not page.title.isVisible() and page.field.isVisible()
    assert window.header.sharing.isChecked()
    share(window)
    assert not page.share.isVisible() and page.title.isVisible() and page.field.isVisible()
    assert page.field.parentWidget() is page


def test_the_text_size_chosen_before_comes_back(make: Make) -> None:
    window = make()
    share(window)
    assert window.appearance.percent == 125 and window.settings.text_percent == 100
    share(window)
    assert window.appearance.percent == 100
    share(window)
    window.resize(1900, 1060)
    QApplication.processEvents()
    assert window.appearance.percent == 175


def test_a_set_with_a_target_rests_when_the_target_moves(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_exercise(window, fake)
    field = window.fields.practice
    share(window)
    assert window.director.phase == Phase.paused
    QTest.keyClick(window, Qt.Key.Key_Space)
    feed(fake.service, window.director, fake.service.time_s + 3.2, seen)
    assert window.director.phase == Phase.exercise
    window.refresh()
    QApplication.processEvents()
    place = field.mapTo(window, field.rect().center())
    for _ in range(5):
        feed(fake.service, window.director, fake.service.time_s + 0.4, seen)
        window.refresh()
        QApplication.processEvents()
        assert field.mapTo(window, field.rect().center()) == place
    # Straight ahead as before: in the middle of the window.
    assert abs(place.x() - window.width() / 2) <= 1


def test_a_clip_goes_on(make: Make, fake: FakeWorld) -> None:
    window = make(PLAN)
    window.director.start()
    window.director.tick()
    share(window)
    assert not window.director.sharing  # not during a set-up
    assert not window.header.sharing.isEnabled()


def test_the_figures_come_from_the_set(make: Make, fake: FakeWorld) -> None:
    window = make()
    to_exercise(window, fake)
    share(window)
    QTest.keyClick(window, Qt.Key.Key_Space)
    feed(fake.service, window.director, fake.service.time_s + 3.2, seen)
    start_s = fake.service.time_s
    page = window.pages["practice"]
    page._hold_anew()
    for _ in range(30):
        until_s = fake.service.time_s + 0.2
        feed(fake.service, window.director, until_s, lambda t: turning(t, start_s, 16.0))
        # In the test's own time.
        for held in (page._held, page._held_state):
            held._since_s.clear()
        window.refresh()
    board = page.share.board
    live = window.director.live
    assert board.count == str(live.repetitions) and live.repetitions >= 2
    assert board.first[1] == "16 degrees" and board.second[1] == "16 degrees"
    # Half a turn of 32 degrees a second, along a sine: pi/2 times 32 at its fastest.
    assert float(board.first[2].split()[0]) == pytest.approx(50, abs=2)
    assert not page.field.figures and page.field.state.count == live.repetitions
    assert board.count in page.share.accessibleDescription()


# --- nobody else, no names ---


def test_no_picture_is_shown(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.director.start()
    fake.service.picture = grey_picture()
    feed(fake.service, window.director, 0.5, seen)
    window.refresh()
    picture = window.pages["camera"].picture
    assert picture._image is not None
    share(window)
    window.refresh()
    assert picture._image is None
    share(window)
    window.refresh()
    assert picture._image is not None


def test_the_outline_follows_the_measured_head_and_can_be_hidden(
    make: Make, fake: FakeWorld
) -> None:
    window = make()
    to_exercise(window, fake)
    share(window)
    outline = window.pages["practice"].share.outline
    outline._drawn_s = 0.0
    fake.service.news.append(Measured(replace(turning(200.5, 200.0, 20.0), eye_open=0.1)))
    window.director.tick()
    window.refresh()
    assert outline.pose is not None and outline.pose.yaw == 20 and outline.pose.lids == 0
    QTest.keyClick(window, Qt.Key.Key_P)
    assert not outline.isVisible()
    assert not fake.service.preview_on
    QTest.keyClick(window, Qt.Key.Key_P)
    assert outline.isVisible()


def test_the_outlines_lines_are_three_pixels_wide(qtbot: QtBot) -> None:
    outline = HeadOutline()
    qtbot.addWidget(outline)
    outline.resize(100, 100)
    outline.pose = pose_of(turning(0.0, 0.0))
    drawn = pixels(outline.grab().toImage()).astype(int)
    dark = np.abs(drawn - drawn[0, 0]).sum(axis=2) / np.abs(drawn - drawn[0, 0]).sum(axis=2).max()
    # The neck: two upright lines and nothing else. Soft rims count by their darkness.
    assert dark[68].sum() == pytest.approx(2 * theme.LINE, abs=0.7)


def test_a_head_that_is_not_seen_is_not_drawn() -> None:
    assert pose_of(None) is None
    assert pose_of(Sample(0.0, reason="no_face")) is None


def all_words(window: Any) -> str:
    page = window.stack.currentWidget()
    return "\n".join(w.text() for w in page.findChildren(Words) if w.isVisible())


def test_no_name_of_a_file_is_shown(make: Make, fake: FakeWorld, tmp_path: Path) -> None:
    window = make()
    bad = tmp_path / "secret-plan.json"
    bad.write_text("{")
    window.open_plan(bad)
    window.refresh()
    assert "secret-plan" in all_words(window) and window.pages["welcome"].open.isVisible()
    share(window)
    window.refresh()
    assert "secret" not in all_words(window) and not window.pages["welcome"].open.isVisible()
    to_choose(window, fake)
    window.director.start_exercise(Dose("turns-on-target", 12, 60.0))
    fake.recordings[-1].fail = OSError(28, "no room", str(tmp_path))
    window.director.stop()
    window.refresh()
    assert window.director.unsaved and str(tmp_path) not in all_words(window)
    assert not window.pages["summary"].place.isVisible()
    fake.recordings[-1].fail = None
    window.director.save_again()
    window.refresh()
    assert words.say("share.saved") in all_words(window)
    folder = fake.recordings[-1].folder
    assert folder.name not in all_words(window)
    share(window)
    window.refresh()
    assert folder.name in all_words(window).replace("\u200b", "")


def test_to_stand_in_a_call_one_needs_a_helper_or_a_second_device(
    make: Make, fake: FakeWorld
) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(STAND))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.begin_day(2)
    person.choose("Yes")
    assert isinstance(person.director.task, AskSupport)
    assert words.say("share.helper") not in all_words(window)
    share(window)
    assert words.say("share.helper") in all_words(window)
    share(window)
    assert words.say("share.helper") not in all_words(window)


def test_symptoms_of_the_session_are_shown(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    person.press("3", ENTER)
    assert person.director.scores == ("before", {"dizziness": 3})


def test_an_entry_without_a_target_shows_no_sides(make: Make, fake: FakeWorld) -> None:
    window = make()
    entry = Entry(entry_id="stand", exercise="stand", seconds=10)
    window.pages["welcome"].offer(plan_of(entry))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.begin_day(0)
    for _ in range(2):
        person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    share(window)
    person.measured(12.0, seen)
    assert person.director.phase == Phase.exercise
    board = window.pages["practice"].share.board
    assert board.first == ("", "", "") and board.count == ""
    assert window.pages["practice"].board.isVisible()
