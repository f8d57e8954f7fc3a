"""In the layout for a call each state stands for a second, and a camera's trouble is explained."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from tests.ui.fakes import FakeWorld, Make, feed, seen, turning
from tests.ui.patient import Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_camera_lost import GONE, lose, standing
from tests.ui.test_share import share
from tests.ui.test_small import to_the_set
from tracker.plan.model import Entry, Plan
from tracker.sample import Sample
from tracker.session.live import LiveState
from tracker.vision.messages import SourceState
from ui import words
from ui.pages import practice
from ui.session.flow import TROUBLES, Director, Phase
from ui.share import HOLD_S
from ui.sounds.beats import shown_side, shown_sway
from ui.widgets import outline as outline_of
from ui.widgets.outline import HeadOutline

Begin = Callable[..., Person]
QUICK = Entry(entry_id="t", exercise="turns-on-target", repetitions=20, tempo_bpm=120)
SLOW = QUICK.model_copy(update={"tempo_bpm": 60})
SHOULDERS = Entry(entry_id="s", exercise="shoulders-back", repetitions=20)


class Clock:
    """The test's own time, in place of the computer's."""

    def __init__(self, now_s: float = 1000.0) -> None:
        self.now_s = now_s

    def monotonic(self) -> float:
        return self.now_s


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Clock:
    clock = Clock()
    monkeypatch.setattr(practice, "time", clock)
    monkeypatch.setattr(outline_of, "time", clock)
    return clock


def in_call(make: Make, fake: FakeWorld, entry: Entry) -> Person:
    """A set that goes on in the layout for a call."""
    window = make()
    share(window)
    window.pages["welcome"].offer(plan_of(entry))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.get_in_place(0)
    person.measured(3.2, seen)
    assert person.director.phase == Phase.exercise and person.director.sharing
    return person


def moments(
    person: Person, clock: Clock, seconds: float, make: Callable[[float], Sample], look: Any
) -> list[tuple[float, Any]]:
    """What is shown, each time it changes, with when; drawn 30 times a second as in use."""
    found: list[tuple[float, Any]] = []
    for _ in range(round(seconds * 30)):
        clock.now_s += 1 / 30
        feed(person.fake.service, person.director, person.fake.service.time_s + 1 / 30, make)
        person.window.tick()
        person.window.refresh()
        now = look()
        if not found or found[-1][1] != now:
            found.append((clock.now_s, now))
    return found


def shortest_s(found: list[tuple[float, Any]]) -> float:
    times = [time_s for time_s, _ in found]
    return float(np.diff(times).min()) if len(times) > 1 else float("inf")


def quick(start_s: float) -> Callable[[float], Sample]:
    """Two repetitions a second, of amplitudes that differ from turn to turn."""

    def make(time_s: float) -> Sample:
        yaw = (14.0 + 4.0 * np.sin(time_s)) * np.sin(4 * np.pi * (time_s - start_s))
        still = turning(time_s, 1e9)
        return replace(still, head_yaw_deg=float(yaw), eye_yaw_deg=float(-yaw))

    return make


def test_count_and_pins_at_the_target_stand_for_a_second(
    make: Make, fake: FakeWorld, clock: Clock
) -> None:
    person = in_call(make, fake, QUICK)
    field: Any = person.window.fields.practice
    start_s = fake.service.time_s
    looks = ("count", "first_deg", "second_deg", "tempo_bpm", "measured")
    states = moments(person, clock, 8.0, quick(start_s), lambda: field.state)
    assert person.director.live.repetitions >= 12
    for name in looks:
        values = [(time_s, getattr(state, name)) for time_s, state in states]
        changes = [v for k, v in enumerate(values) if k == 0 or v[1] != values[k - 1][1]]
        # What was there when one began to look need not have come just then.
        assert shortest_s(changes[1:]) >= HOLD_S - 1e-6, (name, changes)
    # It is late by no more than what stands before it.
    counts = [state.count for _, state in states]
    assert counts == sorted(counts) and counts[-1] >= person.director.live.repetitions - 3


def test_alone_they_follow_at_once(make: Make, fake: FakeWorld, clock: Clock) -> None:
    person = to_the_set(make, fake, QUICK)
    field: Any = person.window.fields.practice
    start_s = fake.service.time_s
    states = moments(person, clock, 6.0, quick(start_s), lambda: field.state.count)
    assert states[-1][1] == person.director.live.repetitions
    assert shortest_s(states[1:]) < 0.8


def test_a_large_figure_stands_for_a_second(
    make: Make, fake: FakeWorld, clock: Clock, monkeypatch: pytest.MonkeyPatch
) -> None:
    person = in_call(make, fake, SHOULDERS)
    figure = person.window.pages["practice"].board.figure.figure
    found = []
    for k in range(120):
        clock.now_s += 1 / 30
        # Three in a second.
        live = LiveState(repetitions=k // 10, measured=True)
        monkeypatch.setattr(Director, "live", property(lambda _, live=live: live))
        person.window.refresh()
        if not found or found[-1][1] != figure.text():
            found.append((clock.now_s, figure.text()))
    assert len(found) >= 3 and shortest_s(found[1:]) >= HOLD_S - 1e-6


# --- the bead ---


def test_up_to_sixty_beats_the_bead_holds_for_a_second_at_each_side(
    make: Make, fake: FakeWorld, clock: Clock
) -> None:
    person = in_call(make, fake, SLOW)
    field: Any = person.window.fields.practice
    still = lambda t: turning(t, 1e9)  # noqa: E731
    found = moments(person, clock, 6.0, still, lambda: (field.state.side, field._sway))
    assert {sway for _, (_, sway) in found} == {None}
    # One picture is all that drawing adds or takes.
    assert len(found) >= 5 and shortest_s(found[1:]) >= 1.0 - 1 / 30 - 1e-6


def test_a_quicker_one_goes_to_and_fro_and_never_jumps(
    make: Make, fake: FakeWorld, clock: Clock
) -> None:
    person = in_call(make, fake, QUICK)
    field: Any = person.window.fields.practice
    still = lambda t: turning(t, 1e9)  # noqa: E731
    places = [s for _, s in moments(person, clock, 4.0, still, lambda: field._sway)]
    assert None not in places
    steps = np.abs(np.diff(places))
    # Along a cosine between the sides in half a second.
    assert steps.max() <= np.pi / 0.5 / 30 * 1.05
    assert max(places) > 0.97 and min(places) < -0.97


def test_where_nothing_is_to_move_the_bead_jumps_as_ever(
    make: Make, fake: FakeWorld, clock: Clock
) -> None:
    person = in_call(make, fake, QUICK)
    person.director.still = lambda: True
    field: Any = person.window.fields.practice
    found = moments(person, clock, 2.0, lambda t: turning(t, 1e9), lambda: field._sway)
    assert [sway for _, sway in found] == [None]


def test_alone_the_bead_holds_at_each_side(make: Make, fake: FakeWorld, clock: Clock) -> None:
    person = to_the_set(make, fake, QUICK)
    field: Any = person.window.fields.practice
    found = moments(person, clock, 2.0, lambda t: turning(t, 1e9), lambda: field._sway)
    assert [sway for _, sway in found] == [None]


@given(
    tempo=st.one_of(st.floats(61, 179), st.tuples(st.floats(61, 179), st.floats(61, 179))),
    at_s=st.floats(0, 29),
)
def test_a_sway_is_at_a_side_when_the_next_beat_comes(
    tempo: float | tuple[float, float], at_s: float
) -> None:
    sway = shown_sway(tempo, at_s, 30.0)
    assert sway is not None and -1.0 <= sway <= 1.0
    soon = shown_sway(tempo, at_s + 0.001, 30.0)
    # The fastest beat, three a second, takes a third of a second from side to side.
    assert soon is not None and abs(soon - sway) <= 0.001 * 3.0 * np.pi * 1.05
    assert shown_side(tempo, at_s, 30.0) in (-1, 1)


def test_a_sway_arrives_with_the_beat() -> None:
    # At 120 the beats come each half second: the first asks to go right.
    assert [round(shown_sway(120.0, t, 20.0) or 0.0, 3) for t in (0.0, 0.5, 1.0, 1.5)] == [
        0.0,
        1.0,
        -1.0,
        1.0,
    ]
    assert shown_sway(60.0, 0.3, 20.0) is None and shown_sway(None, 0.3, 20.0) is None
    assert shown_sway(181.0, 0.3, 20.0) is None


# --- the outline ---


def test_seen_and_not_seen_stand_for_a_second(qtbot: QtBot, clock: Clock) -> None:
    outline = HeadOutline()
    qtbot.addWidget(outline)
    found: list[tuple[float, bool]] = []
    for k in range(120):
        clock.now_s += 1 / 30
        outline.show_sample(turning(clock.now_s, 1e9) if k // 6 % 2 else None)
        if not found or found[-1][1] != (outline.pose is not None):
            found.append((clock.now_s, outline.pose is not None))
    assert len(found) >= 3 and shortest_s(found[1:]) >= HOLD_S - 1e-6


# --- a camera in trouble ---


@pytest.mark.parametrize("state", sorted(TROUBLES))
@pytest.mark.parametrize("exercise", ["turns-on-target", "eyes-up-down"])
def test_a_seated_set_in_a_call_says_what_to_do_about_the_camera(
    make: Make, fake: FakeWorld, state: SourceState, exercise: str
) -> None:
    entry = Entry(entry_id="t", exercise=exercise, repetitions=20, tempo_bpm=60)
    person = in_call(make, fake, entry)
    page: Any = person.window.pages["practice"]
    field: Any = person.window.fields.practice
    place = field.mapTo(person.window, field.rect().center())
    assert page.share.board.remedy == ""
    lose(person, state)
    person.wait(1.0)
    # Held for a second: in the test's own time.
    page._hold_anew()
    person.window.refresh()
    person.settle()
    assert person.director.phase == Phase.exercise
    do = words.say(f"trouble.{state}.do")
    assert page.share.board.cue == words.say(f"trouble.{state}")
    assert page.share.board.remedy == do
    person.wait(2.0)
    page._hold_anew()
    person.settle()
    do = f"{words.say('lost.count')} {do}"
    assert page.share.board.remedy == do
    drawn = [text for text, _ in page.share.lines_of(page.share.board)]
    assert do in " ".join(drawn)
    assert do in page.share.accessibleDescription()
    assert not page.remedy.isVisible() and not page.share.outline.isVisible()
    # The target keeps its place.
    assert field.mapTo(person.window, field.rect().center()) == place
    keep(person.window, f"call/trouble-{exercise}-{state}")


@pytest.mark.parametrize("state", GONE)
@pytest.mark.parametrize("size", [(1366, 768), (2560, 1440)])
def test_a_pause_for_the_cameras_sake_says_it_in_a_call(
    begin: Begin, state: SourceState, size: tuple[int, int]
) -> None:
    def in_layout(plan: Plan) -> Person:
        person = begin(plan)
        share(person.window)
        return person

    person = standing(in_layout)
    person.window.resize(*size)
    person.settle()
    lose(person, state)
    person.wait(3.0)
    page: Any = person.window.pages["practice"]
    page._hold_anew()
    person.settle()
    assert person.director.paused_by_camera and person.director.sharing
    large = page.board.isVisible() and page.board.how.isVisible()
    shown = page.board.how.text() if large else page.share.board.remedy
    for key in ("lost.hold", f"trouble.{state}.do"):
        assert words.say(key) in shown
