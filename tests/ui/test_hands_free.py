"""A stop without hands: by sitting down or stepping out, and by nothing else."""

from __future__ import annotations

import math
import random
from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from tests.body.test_raised import GLASSES, HANGING, UP, sample_of
from tests.ui.fakes import FakeWorld, Voice, seen, turning
from tests.ui.patient import TURNS, Person, plan_of
from tests.ui.test_planned_voice import into_set
from tracker.plan.asked import asked_of
from tracker.plan.model import Entry
from tracker.practice.dropped import WELL_S
from tracker.practice.tasks import AskAfterSet, AskWell, CountDown, DoSet, Prepare, Wait
from tracker.sample import Sample
from tracker.session.projections import session_record
from tracker.session.said import after_drop_of
from ui.cards import card_of
from ui.session.flow import Phase
from ui.session.hands_free import (
    AGAIN_S,
    LOOK_EVERY_S,
    SAT_MM,
    SAT_S,
    WAIT_MOST_S,
    HandsFree,
    InSight,
    stop_key,
    stops_by_leaving,
    stops_by_sight,
)
from ui.session.leaving import UNSEEN_S
from ui.session.out_of_sight import ANSWER_S, GONE_S, LEFT_S

Height = Callable[[float], float | None]


def told(height: Height, to_s: float = 12.0) -> tuple[str, float]:
    """What is told of a head at these heights (None: no face), and when."""
    watch = HandsFree()
    watch.begin(0.0)
    for k in range(1, round(30 * to_s)):
        time_s = k / 30
        y = height(time_s)
        sample = Sample(time_s, head_y_mm=y) if y is not None else Sample(time_s, reason="no_face")
        if word := watch.take(sample):
            return word, time_s
    return "", to_s


def test_sitting_down_is_told() -> None:
    word, at_s = told(lambda t: 0.0 if t < 4 else -400.0 * min((t - 4) / 1.5, 1.0))
    assert word == "sat" and at_s < 4 + 1.5 + SAT_S


def test_stepping_out_is_told() -> None:
    word, at_s = told(lambda t: 0.0 if t < 4 else None)
    assert word == "left" and at_s == pytest.approx(4 + LEFT_S, abs=0.1)


@pytest.mark.parametrize(
    "height",
    [
        lambda t: 60.0 * math.sin(2 * t),  # swaying, and more
        lambda t: -120.0 if 5 < t < 9 else 0.0,  # knees that give a little
        lambda t: -400.0 if 5 < t < 6 else 0.0,  # a look at the feet
        lambda t: None if 5 < t < 8 else 0.0,  # turned away for a moment
        lambda t: 0.0 if t > 2 else None,  # not in the picture yet
    ],
)
def test_what_stops_nothing(height: Height) -> None:
    assert told(height)[0] == ""


def test_a_dark_room_or_a_covered_camera_stops_nothing() -> None:
    for reason in ("too_dark", "covered", "gap", "turned_too_far"):
        watch = HandsFree()
        watch.begin(0.0)
        assert not any(watch.take(Sample(k / 30, reason=reason)) for k in range(1, 600))


def test_a_hole_in_the_measuring_breaks_off_what_was_seen() -> None:
    watch = HandsFree()
    watch.begin(0.0)
    times = [k / 30 for k in range(1, 400) if not 100 < k < 130]
    words = [watch.take(Sample(t, reason="no_face" if t > 2 else "", head_y_mm=0.0)) for t in times]
    # Three and a half seconds before the hole, and they begin anew after it.
    assert times[words.index("left")] == pytest.approx(130 / 30 + LEFT_S, abs=0.1)


def test_made_up_stances_stop_nothing_and_made_up_sittings_all_stop() -> None:
    rng = random.Random(5)
    for _ in range(200):
        sway, slow, noise = rng.uniform(5, 60), rng.uniform(0.5, 3), rng.uniform(0, 8)
        down, takes_s = rng.uniform(SAT_MM + 80, 480), rng.uniform(0.6, 3)

        def stand(t: float, a: float = sway, w: float = slow, n: float = noise) -> float:
            return a * math.sin(w * t) + rng.gauss(0, n)

        def sit(t: float, d: float = down, k: float = takes_s, s: Height = stand) -> float:
            return s(t) - d * min(max(t - 4, 0) / k, 1)

        assert told(stand)[0] == ""
        assert told(sit, 16.0)[0] == "sat"


# --- stands from a chair: one sits as asked, and goes out of the picture's top (made-up places) ---

Place = Callable[[float], tuple[float, float] | None]


def told_rising(
    place: Place, to_s: float = 60.0, asked: list[float] | None = None
) -> tuple[str, float]:
    """What stops the stands of a head at these places (aside, up; None: no face), and when.

    ``asked`` gets the times at which it is asked whether all is well.
    """
    watch = HandsFree()
    watch.begin(0.0, by_place=False, by_leaving=True)
    for k in range(1, round(15 * to_s)):
        time_s = k / 15
        at = place(time_s)
        if at is None:
            sample = Sample(time_s, reason="no_face")
        else:
            sample = Sample(time_s, head_x_mm=at[0], head_y_mm=at[1])
        word = watch.take(sample)
        if word == "ask" and asked is not None:
            asked.append(time_s)
        elif word and word != "ask":
            return word, time_s
    return "", to_s


def risen(t: float, top_mm: float, stands_s: float) -> float:
    """Stands of so long, a second up and a second down, with two seconds on the chair."""
    u = t % (4.0 + stands_s)
    up = min(max(u - 2.0, 0.0), 1.0) - min(max(u - 3.0 - stands_s, 0.0), 1.0)
    return top_mm * up


@pytest.mark.parametrize("stands_s", [1.0, 4.0, 9.0])
@pytest.mark.parametrize("lean_mm", [0.0, 110.0])
def test_standing_up_out_of_the_top_of_the_picture_stops_nothing(
    stands_s: float, lean_mm: float
) -> None:
    """Nor does sitting down again, however long one rests on the chair."""

    def place(t: float) -> tuple[float, float] | None:
        up = risen(t, 400.0, stands_s)
        return None if up > 180.0 else (lean_mm * up / 180.0, up)

    assert told_rising(place)[0] == ""
    assert told_rising(lambda t: (0.0, 400.0 if t < 4 else 0.0))[0] == ""


@pytest.mark.parametrize("way", [1.0, -1.0])
@pytest.mark.parametrize("up_mm", [0.0, 170.0])
def test_stepping_aside_stops_as_soon_as_ever(way: float, up_mm: float) -> None:
    def place(t: float) -> tuple[float, float] | None:
        if t < 10:
            return 0.0, risen(t, 170.0, 1.0)
        aside = way * 300.0 * (t - 10.0)
        return None if abs(aside) > 250.0 else (aside, up_mm)

    word, at_s = told_rising(place)
    assert word == "left" and at_s == pytest.approx(10.9 + LEFT_S, abs=0.3)


def test_who_is_gone_for_longer_than_stands_take_has_left() -> None:
    """Up and away behind the camera: nothing tells the way, so the time and a question have to."""
    asked: list[float] = []
    place: Place = lambda t: (0.0, risen(t, 170.0, 1.0)) if t < 10 else None  # noqa: E731
    word, at_s = told_rising(place, asked=asked)
    assert asked == [pytest.approx(10.0 + GONE_S, abs=0.2)]
    assert word == "left" and at_s == pytest.approx(10.0 + GONE_S + ANSWER_S, abs=0.2)


def test_who_stands_for_long_until_all_is_steady_is_asked_and_goes_on() -> None:
    asked: list[float] = []

    def place(t: float) -> tuple[float, float] | None:
        # Up at 4 s, back on the chair after 16 s; and the same once more, for 25 s.
        up = 4.0 < t < 20.0 or 30.0 < t < 55.0
        return None if up else (0.0, 0.0)

    assert told_rising(place, asked=asked)[0] == ""
    assert asked == [pytest.approx(at + GONE_S, abs=0.2) for at in (4.0, 30.0)]


@pytest.mark.parametrize("from_mm", [160.0, -200.0, 0.0])
@pytest.mark.parametrize("to_mm", [0.0, 160.0, -220.0])
def test_a_chair_that_is_moved_or_a_lean_at_first_is_no_step_aside(
    from_mm: float, to_mm: float
) -> None:
    """At first in one place, from 7 s on in another; stands of nine seconds out of the top."""

    def place(t: float) -> tuple[float, float] | None:
        up = risen(t, 400.0, 9.0)
        return None if up > 180.0 else (from_mm if t < 7.0 else to_mm, up)

    asked: list[float] = []
    assert told_rising(place, asked=asked)[0] == "" and not asked


def test_from_a_chair_that_was_moved_a_step_aside_stops_as_before() -> None:
    def place(t: float) -> tuple[float, float] | None:
        if t < 20.0:
            return (0.0 if t < 8.0 else 160.0), 0.0
        aside = 160.0 + 300.0 * (t - 20.0)
        return None if aside > 380.0 else (aside, 200.0)

    word, at_s = told_rising(place)
    assert word == "left" and at_s == pytest.approx(20.8 + LEFT_S, abs=0.3)


@pytest.mark.parametrize("aside_mm", [0.0, 400.0])
@pytest.mark.parametrize("speed_mm_s", [400.0, 900.0])
def test_a_loss_right_after_a_drop_may_be_a_fall_and_is_asked_at_once(
    aside_mm: float, speed_mm_s: float
) -> None:
    """Slower than the watcher of falls takes, straight down or to the side."""
    asked: list[float] = []

    def place(t: float) -> tuple[float, float] | None:
        gone_s = t - 10.0
        if gone_s < 0.0:
            return 0.0, 170.0 * min(max(t - 8.0, 0.0), 1.0)
        down = speed_mm_s * gone_s
        return None if down > 350.0 else (aside_mm * down / 350.0, 170.0 - down)

    word, at_s = told_rising(place, asked=asked)
    lost_s = 10.0 + 350.0 / speed_mm_s
    assert asked == [pytest.approx(lost_s + LEFT_S, abs=0.2)]
    assert word == "down" and at_s == pytest.approx(lost_s + LEFT_S + ANSWER_S, abs=0.2)


def test_who_is_seen_again_after_a_drop_goes_on() -> None:
    def place(t: float) -> tuple[float, float] | None:
        if t < 10.0:
            return 0.0, 400.0
        down = min(400.0 * (t - 10.0), 400.0)
        return None if 11.0 < t < 21.0 else (0.0, 400.0 - down)

    assert told_rising(place)[0] == ""


def rising(begin: Callable[..., Person]) -> Person:
    person = begin(plan_of(Entry(entry_id="a", exercise="sit-to-stand", repetitions=20), TURNS))
    into_set(person)
    return person


def test_in_the_window_it_is_asked_aloud_and_sitting_down_is_an_answer(
    begin: Callable[..., Person], fake: FakeWorld
) -> None:
    fake.voice = voice = Voice()
    person = rising(begin)
    person.measured(2.0, lambda t: replace(turning(t, 1e9), head_y_mm=0.0, head_x_mm=0.0))
    person.measured(GONE_S + 1.0, lambda t: Sample(t, reason="no_face"))
    said = [t for _, t in voice.spoken if "Are you all right?" in t]
    assert len(said) == 1 and "sit down on your chair" in said[0]
    assert isinstance(person.director.task, DoSet)
    person.measured(3.0, lambda t: replace(turning(t, 1e9), head_y_mm=0.0, head_x_mm=0.0))
    assert isinstance(person.director.task, DoSet)
    marks = person.fake.recordings[-1].journal.content().of("mark")
    assert [m["name"] for m in marks].count("asked_if_well") == 1


@pytest.mark.parametrize("fine", [True, False])
def test_in_the_window_nobody_after_a_drop_ends_it_as_a_possible_fall(
    begin: Callable[..., Person], fake: FakeWorld, fine: bool
) -> None:
    """It was not seen: whoever answers to be all right goes on."""
    fake.voice = voice = Voice()
    person = rising(begin)
    at_s = person.fake.service.time_s

    def going_down(t: float) -> Sample:
        down = 500.0 * max(t - at_s - 2.0, 0.0)
        if down > 400.0:
            return Sample(t, reason="no_face")
        return replace(turning(t, 1e9), head_y_mm=200.0 - down, head_x_mm=0.0)

    person.measured(2.8 + LEFT_S + ANSWER_S + 1.0, going_down)
    assert isinstance(person.director.task, AskWell)
    said = [t for _, t in voice.spoken if "Are you all right?" in t]
    assert len(said) == 2 and "Nobody has been called" in said[1]
    if fine:
        # Who only sat down, out of the picture, has not fallen, and goes on.
        person.wait(UNSEEN_S)
        person.press("1")
        assert isinstance(person.director.task, AskAfterSet | Wait)
    else:
        person.wait(WELL_S)
    content = person.fake.recordings[-1].journal.content()
    assert [e["ended"] for e in content.of("end")] == ([] if fine else ["possible_fall"])
    found = after_drop_of(session_record(content))
    assert found is not None and found["seen"] is False
    assert found["value"] == ("fine" if fine else None)


def test_who_came_back_to_the_chair_has_not_left() -> None:
    def place(t: float) -> tuple[float, float] | None:
        if 10 < t < 12 or 14 < t < 22:
            return None
        return (200.0, 0.0) if 9 < t <= 10 else (0.0, 0.0)

    assert told_rising(place)[0] == ""


def test_a_dark_room_stops_no_stands_either() -> None:
    watch = HandsFree()
    watch.begin(0.0, by_place=False, by_leaving=True)
    assert not any(watch.take(Sample(k / 15, reason="too_dark")) for k in range(1, 900))


def test_the_page_says_how_stands_are_stopped_and_the_set_is() -> None:
    entry = asked_of(Entry(entry_id="a", exercise="sit-to-stand", repetitions=5))
    assert stops_by_leaving(entry) and not stops_by_sight(entry)
    assert stop_key(entry) == "ask.place.to_stop_aside"
    seated = asked_of(Entry(entry_id="r", exercise="floor-reach", repetitions=5))
    assert not stops_by_leaving(seated)


def test_in_the_window_who_steps_aside_stops_the_stands(begin: Callable[..., Person]) -> None:
    person = rising(begin)
    from_s = person.fake.service.time_s

    def moving(t: float) -> Sample:
        up = risen(t - from_s, 400.0, 3.0)
        if up > 180.0:
            return Sample(t, reason="no_face")
        return replace(turning(t, 1e9), head_y_mm=up, head_x_mm=0.0)

    person.measured(30.0, moving)
    assert isinstance(person.director.task, DoSet)
    at_s = person.fake.service.time_s

    def aside(t: float) -> Sample:
        if t > at_s + 0.5:
            return Sample(t, reason="no_face")
        return replace(turning(t, 1e9), head_y_mm=150.0, head_x_mm=500.0 * (t - at_s))

    person.measured(2.0, aside)
    assert isinstance(person.director.task, DoSet)
    person.measured(3.5, aside)
    assert not isinstance(person.director.task, DoSet)


def test_with_nobody_in_the_picture_a_set_waits() -> None:
    sight = InSight()
    away, there = Sample(5.0, reason="no_face"), Sample(6.0, head_y_mm=0.0)
    assert sight.may_begin(there, 6.0) and not sight.waits
    assert not sight.may_begin(away, 5.1) and sight.waits
    # Back, it begins after a moment of standing, and anew after another step aside.
    assert not sight.may_begin(there, 6.0)
    assert not sight.may_begin(replace(there, time_s=7.9), 7.9)
    assert sight.may_begin(replace(there, time_s=8.0), 8.0)
    assert not sight.may_begin(Sample(8.1, reason="no_face"), 8.1)
    assert not sight.may_begin(replace(there, time_s=8.5), 8.5)


def test_what_is_not_known_holds_nothing_up() -> None:
    sight = InSight()
    assert sight.may_begin(None, 5.0)
    assert sight.may_begin(Sample(1.0, reason="no_face"), 5.0)
    assert sight.may_begin(Sample(5.0, reason="too_dark"), 5.0)


def standing(begin: Callable[..., Person], **entry: object) -> Person:
    person = begin(plan_of(Entry(entry_id="a", posture="standing", **entry)))  # type: ignore[arg-type]
    into_set(person)
    return person


def test_a_standing_set_begins_once_the_person_is_there(
    begin: Callable[..., Person], fake: FakeWorld
) -> None:
    fake.voice = voice = Voice()
    person = begin(plan_of(Entry(entry_id="a", exercise="stand", seconds=20)))
    person.begin_day(0)
    person.choose("Yes")
    person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    person.measured(13.0, lambda t: Sample(t, reason="no_face"))
    assert isinstance(person.director.task, CountDown)
    practice = person.window.pages["practice"]
    assert practice.board.isVisible() and "picture" in practice.board.figure.caption.text()
    assert [t for _, t in voice.spoken if "into the picture" in t]
    person.measured(AGAIN_S - 0.3, lambda t: turning(t, 1e9))
    assert isinstance(person.director.task, CountDown)
    person.measured(0.6, lambda t: turning(t, 1e9))
    assert isinstance(person.director.task, DoSet)
    assert person.director.set_left_s == pytest.approx(20.0, abs=0.5)


def waiting(begin: Callable[..., Person]) -> Person:
    """Somebody who has pressed the key and is not to be seen when the set should begin."""
    person = begin(plan_of(Entry(entry_id="a", exercise="stand", seconds=20), TURNS))
    person.begin_day(0)
    person.choose("Yes")
    person.choose("Yes")
    person.choose("I am in place")
    person.set_up()
    person.measured(12.0, lambda t: Sample(t, reason="no_face"))
    assert person.director.waits_for_sight
    return person


def test_a_stop_while_it_waits_leaves_what_comes_after(begin: Callable[..., Person]) -> None:
    person = waiting(begin)
    person.press(Qt.Key.Key_Escape)
    assert isinstance(person.director.task, AskAfterSet)


def test_it_does_not_wait_for_ever(begin: Callable[..., Person]) -> None:
    person = waiting(begin)
    person.measured(WAIT_MOST_S + LEFT_S + 1.0, lambda t: Sample(t, reason="no_face"))
    assert isinstance(person.director.task, AskAfterSet)


def test_who_goes_on_after_a_pause_is_waited_for_too(begin: Callable[..., Person]) -> None:
    person = standing(begin, exercise="stand", seconds=30, eyes="open")
    person.measured(2.0, lambda t: turning(t, 1e9))
    person.press(Qt.Key.Key_Space)
    person.press(Qt.Key.Key_Space)
    assert person.director.countdown_s == pytest.approx(10.0, abs=0.2)
    person.measured(12.0, lambda t: Sample(t, reason="no_face"))
    assert person.director.waits_for_sight
    person.measured(AGAIN_S + 0.3, lambda t: turning(t, 1e9))
    assert person.director.phase == Phase.exercise


def test_a_frame_without_a_height_is_no_end_of_sitting() -> None:
    word, at_s = told(lambda t: 0.0 if t < 4 else math.nan if round(30 * t) % 20 == 0 else -400.0)
    assert word == "sat" and at_s < 4 + SAT_S + 0.2


def test_who_sits_from_the_first_is_told_by_the_rest_of_the_set_up() -> None:
    assert told(lambda _: -400.0)[0] == "sat"


@pytest.mark.parametrize("way", ["sat", "left"])
def test_a_standing_set_stops_without_hands(begin: Callable[..., Person], way: str) -> None:
    person = standing(begin, exercise="stand", seconds=30, eyes="open")
    person.measured(3.0, lambda t: turning(t, 1e9))

    def leaving(time_s: float) -> Sample:
        if way == "left":
            return Sample(time_s, reason="no_face")
        return replace(turning(time_s, 1e9), head_y_mm=-350.0, neck_y_mm=-350.0)

    person.measured(5.0, leaving)
    assert isinstance(person.director.task, AskAfterSet)
    marks = person.fake.recordings[-1].journal.content().of("mark")
    assert [m["seen"] for m in marks if m["name"] == "stopped_by_sight"] == [way]


@pytest.mark.parametrize("down_mm", [0.0, 400.0])
def test_who_drops_out_of_the_picture_is_asked_how_they_are_as_the_set_stops(
    begin: Callable[..., Person], fake: FakeWorld, down_mm: float
) -> None:
    """Slowly: to sit down on a chair that the camera does not see is a way to stop."""
    fake.voice = voice = Voice()
    person = standing(begin, exercise="stand", seconds=30, eyes="open")
    person.measured(3.0, lambda t: replace(turning(t, 1e9), head_x_mm=0.0))
    at_s = person.fake.service.time_s

    def leaving(t: float) -> Sample:
        if t - at_s > 0.7:
            return Sample(t, reason="no_face")
        height = -down_mm * max(t - at_s, 0.0)
        return replace(turning(t, 1e9), head_y_mm=height, neck_y_mm=height, head_x_mm=0.0)

    person.measured(6.0, leaving)
    assert isinstance(person.director.task, AskWell) is (down_mm > 0.0)
    if down_mm:
        person.wait(UNSEEN_S)
        person.press("1")
    assert isinstance(person.director.task, AskAfterSet)
    assert any("Are you all right?" in t for _, t in voice.spoken) is (down_mm > 0.0)
    marks = person.fake.recordings[-1].journal.content().of("mark")
    assert [m["seen"] for m in marks if m["name"] == "stopped_by_sight"] == ["left"]


def test_it_is_told_before_the_set(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(Entry(entry_id="a", exercise="stand", seconds=30)))
    person.begin_day(0)
    person.choose("Yes")
    person.choose("Yes")
    assert person.director.plan is not None and person.director.task is not None
    assert "sit down" in str(card_of(person.director.task, person.director.plan))


def test_standing_up_and_sitting_down_as_asked_goes_on(begin: Callable[..., Person]) -> None:
    person = standing(begin, exercise="sit-to-stand", repetitions=5)
    person.measured(3.0, lambda t: turning(t, 1e9))
    person.measured(4.0, lambda t: seen(t, head_yaw_deg=0.0, head_y_mm=-400.0, eye_open=1.0))
    assert isinstance(person.director.task, DoSet)


# --- a hand held up --------------------------------------------------------------------


def with_hand(time_s: float, arm: tuple[float, float, float, float] | None) -> Sample:
    """A head that is still; every fourth frame was looked at for a body."""
    still = turning(time_s, 1e9)
    if arm is None or round(30 * time_s) % 4:
        return still
    body = sample_of(time_s, arm)
    names = [n for n in Sample.__dataclass_fields__ if n.startswith(("wrist", "elbow", "body"))]
    return replace(still, **{n: getattr(body, n) for n in names})


def test_in_a_standing_set_hands_are_looked_for_now_and_then(
    begin: Callable[..., Person],
) -> None:
    person = standing(begin, exercise="stand", seconds=30, eyes="open")
    assert person.fake.service.body_on
    assert person.fake.service.body_every_s == LOOK_EVERY_S
    person.press(Qt.Key.Key_Space)
    assert not person.fake.service.body_on


@pytest.mark.parametrize(("arm", "stops"), [(UP, True), (GLASSES, False), (HANGING, False)])
def test_a_hand_held_up_stops_a_standing_set(
    begin: Callable[..., Person], arm: tuple[float, float, float, float], stops: bool
) -> None:
    person = standing(begin, exercise="stand", seconds=30, eyes="open")
    person.measured(3.0, lambda t: with_hand(t, HANGING))
    person.measured(2.0, lambda t: with_hand(t, arm))
    assert isinstance(person.director.task, AskAfterSet if stops else DoSet)
    marks = person.fake.recordings[-1].journal.content().of("mark")
    assert [m["seen"] for m in marks if m["name"] == "stopped_by_sight"] == ["hand"] * stops


def test_a_hand_stops_where_sitting_down_does_not(begin: Callable[..., Person]) -> None:
    person = standing(begin, exercise="sit-to-stand", repetitions=5)
    person.measured(3.0, lambda t: with_hand(t, UP))
    assert not isinstance(person.director.task, DoSet)


def seated(begin: Callable[..., Person], exercise: str) -> Person:
    person = begin(plan_of(Entry(entry_id="a", exercise=exercise, repetitions=5)))
    person.get_in_place(0)
    person.measured(3.3, lambda t: turning(t, 1e9))
    assert isinstance(person.director.task, DoSet)
    return person


def test_a_seated_set_that_watches_the_body_stops_too(begin: Callable[..., Person]) -> None:
    person = seated(begin, "shoulders-back")
    assert person.fake.service.body_every_s == 0.0
    person.measured(2.0, lambda t: with_hand(t, UP))
    assert not isinstance(person.director.task, DoSet)


def test_in_a_seated_set_at_the_keys_nobody_looks_for_hands(begin: Callable[..., Person]) -> None:
    person = seated(begin, "turns-on-target")
    assert not person.fake.service.body_on
    person.measured(2.0, lambda t: with_hand(t, UP))
    assert isinstance(person.director.task, DoSet)


def test_between_throws_a_hand_may_be_up_for_longer(begin: Callable[..., Person]) -> None:
    person = seated(begin, "hand-toss")
    person.measured(1.6, lambda t: with_hand(t, UP))
    person.measured(0.5, lambda t: with_hand(t, HANGING))
    assert isinstance(person.director.task, DoSet)
    person.measured(2.6, lambda t: with_hand(t, UP))
    assert not isinstance(person.director.task, DoSet)


@pytest.mark.parametrize(
    ("exercise", "says"), [("stand", True), ("shoulders-back", True), ("turns-on-target", False)]
)
def test_whoever_can_stop_by_a_hand_is_told_so(
    begin: Callable[..., Person], exercise: str, says: bool
) -> None:
    person = begin(plan_of(Entry(entry_id="a", exercise=exercise)))
    person.begin_day(0)
    while not isinstance(person.director.task, Prepare):
        person.choose("Yes")
    assert person.director.plan is not None
    card = card_of(person.director.task, person.director.plan)
    assert ("beside your head" in str(card)) == says


def test_near_and_far_looks_at_the_arm_half_as_often(begin: Callable[..., Person]) -> None:
    person = seated(begin, "near-far")
    assert person.fake.service.body_on and person.fake.service.body_every_s == 0.12
