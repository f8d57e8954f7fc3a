"""Targets that move in the window: smoothly, within the field, as they are judged."""

from __future__ import annotations

from collections.abc import Callable
from math import atan2, degrees, radians, sin, tan
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPalette
from PySide6.QtTest import QTest

from tests.ui.fakes import EXTENT, Make, seen
from tests.ui.patient import ENTER, Person, plan_of
from tests.ui.pictures import keep
from tracker.exercises.counters import Counter, channel_of
from tracker.plan.asked import asked_of
from tracker.plan.model import Entry
from tracker.practice.tasks import (
    AskAfterSet,
    AskGate,
    AskScores,
    CountDown,
    DoSet,
    Prepare,
    Wait,
)
from tracker.sample import Sample
from tracker.session.run import amplitude_asked
from tracker.session.stage import Step
from tracker.targets import SWING_LEAST_DEG, Backdrop, track_swing_deg
from ui.geometry import FieldExtent, facing_map
from ui.session.asked import Asked, clip_asked, needs_moving_target, planned_asked, too_small
from ui.session.flow import Phase
from ui.theme import DARK, LIGHT
from ui.widgets.backdrop import luminance, soft_ink

X2 = Entry(entry_id="x2", exercise="turns-x2", repetitions=3)
NODS = Entry(entry_id="nods", exercise="nods-x2", repetitions=3)
FOLLOW = Entry(entry_id="follow", exercise="follow-slowly", seconds=12, note="asked for")
MARKS = Entry(entry_id="marks", exercise="eyes-then-head", repetitions=3)
BEHIND = Entry(entry_id="behind", exercise="moving-background", seconds=10, note="busy shops")
DISTANCE_MM = 600.0


def asked_for(entry: Entry) -> Asked:
    return planned_asked(
        5.0,
        asked_of(entry),
        repetitions=entry.repetitions,
        seconds=entry.seconds or float("inf"),
        extent=EXTENT,
        to_rest=facing_map(DISTANCE_MM, EXTENT.centre_mm),
        distance_mm=DISTANCE_MM,
    )


@pytest.mark.parametrize("entry", [X2, NODS, FOLLOW, MARKS], ids=lambda e: e.entry_id)
def test_it_is_drawn_where_it_is_judged_and_never_off_the_field(entry: Entry) -> None:
    asked = asked_for(entry)
    for t in np.arange(asked.step.from_s, asked.step.to_s, 0.0173):
        x, y = asked.offset_at(float(t))
        assert abs(x) <= EXTENT.half_width_mm + 1e-9 and abs(y) <= EXTENT.half_height_mm + 1e-9
        judged = asked.step.target_at(float(t))
        assert judged is not None
        assert judged[:2] == pytest.approx((x, y), abs=0.9)  # a twelfth of a degree


def test_what_the_screen_does_not_carry_is_asked_for_no_more() -> None:
    def reach(entry: Entry) -> tuple[float, float]:
        asked = asked_for(entry)
        found = amplitude_asked(asked.step, asked_of(entry).exercise)
        assert found is not None
        return found

    most = degrees(atan2(EXTENT.half_width_mm, DISTANCE_MM))  # 14.9 of the 17.5 wanted
    assert reach(X2) == pytest.approx((15 * most / 17.5, 20 * most / 17.5), abs=0.1)
    up = degrees(atan2(EXTENT.half_height_mm, DISTANCE_MM))
    assert reach(NODS) == pytest.approx((10 * up / 12.5, 15 * up / 12.5), abs=0.1)
    small = X2.model_copy(update={"amplitude_deg": (8.0, 10.0)})
    assert reach(small) == (8.0, 10.0)
    assert max(p[0] for p in asked_for(small).step.target_track or []) > 5.0


def test_head_and_target_are_opposite_on_the_beat() -> None:
    asked = asked_for(X2)
    # The shown beat asks for the right first: at the end of the first beat the head is there.
    for beat, side in ((1, -1), (2, 1), (3, -1)):
        x, _ = asked.offset_at(5.0 + beat)
        assert x == pytest.approx(side * EXTENT.half_width_mm, rel=1e-6)


def test_away_from_the_screen_there_is_no_moving_target() -> None:
    assert not needs_moving_target(asked_of(X2))
    assert needs_moving_target(asked_of(X2.model_copy(update={"posture": "standing"})))
    assert not needs_moving_target(asked_of(Entry(entry_id="t", exercise="turns-on-target")))


def test_a_clips_target_moves_along_its_track() -> None:
    step = asked_for(X2).step
    (shown,) = clip_asked([step], EXTENT)
    times = np.arange(step.from_s, step.from_s + 5.0, 0.05)
    drawn = np.array([shown.offset_at(float(t))[0] for t in times])
    judged = np.array([(step.target_at(float(t)) or (0, 0, 0))[0] for t in times])
    assert np.corrcoef(drawn, judged)[0, 1] > 0.9999
    assert np.abs(drawn).max() <= EXTENT.half_width_mm


# --- in the window ---


def against(person: Person) -> Callable[[float], Sample]:
    """A head that keeps the beat, its eyes on the target of the field."""
    asked = person.director.asked
    assert asked is not None and asked.path is not None
    distance = person.director.distance_mm

    def sample(service_s: float) -> Sample:
        now_s = service_s + person.director._offset_s
        x, _ = asked.offset_at(now_s)
        yaw = -degrees(atan2(x, distance))
        eyes_mm = 100.0 * sin(radians(yaw))
        gaze = degrees(atan2(x - eyes_mm, distance))
        return seen(
            service_s,
            head_yaw_deg=yaw,
            head_pitch_deg=0.0,
            head_roll_deg=0.0,
            head_x_mm=eyes_mm,
            head_y_mm=0.0,
            head_z_mm=0.0,
            eye_yaw_deg=gaze - yaw,
            eye_pitch_deg=0.0,
            gaze_yaw_deg=gaze,
            gaze_pitch_deg=0.0,
            eye_open=1.0,
        )

    return sample


def begun(begin: Callable[..., Person], entry: Entry, percent: int = 100) -> Person:
    person = begin(plan_of(entry), percent=percent)
    person.get_in_place(1)
    person.measured(3.2, seen)
    assert isinstance(person.director.task, DoSet) and person.director.phase == Phase.exercise
    return person


def test_the_target_glides_at_every_tick(begin: Callable[..., Person]) -> None:
    person = begun(begin, X2)
    field: Any = person.window.fields.practice
    asked, service = person.director.asked, person.fake.service
    assert asked is not None
    times, places = [], []
    for _ in range(240):
        service.time_s += 1 / 60
        person.window.tick()
        (place,) = field.offsets
        times.append(person.director.now_s)
        places.append(place[0])
    t, x = np.array(times), np.array(places)
    swing = float(np.abs(x).max())
    # Position against time is the cosine, seen one picture later; no step is a jump.
    ahead = 1.0 / max(person.window.screen().refreshRate(), 30.0)
    ideal = [asked.offset_at(float(v) + ahead)[0] for v in t]
    assert x == pytest.approx(ideal, abs=1e-6)
    assert np.abs(np.diff(x)).max() <= 1.02 * np.pi * swing / 60
    assert np.abs(np.diff(x, 2)).max() <= 1.2 * np.pi**2 * swing / 3600
    # The whole target stays within the field.
    assert swing * field.px_per_mm + field.disc_px() < field.width() / 2


def test_a_session_with_it_is_saved_with_what_was_done(begin: Callable[..., Person]) -> None:
    person = begun(begin, X2)
    person.measured(8.0, against(person))
    assert isinstance(person.director.task, AskAfterSet)
    person.choose("Clear")
    assert isinstance(person.director.task, Wait)
    person.wait(11)
    assert isinstance(person.director.task, AskScores)
    person.press("1", ENTER)
    person.choose("I feel as usual again")
    assert person.director.saved is not None
    (found,) = person.director.saved.summary["exercises"]
    assert found["exercise"] == "turns-x2" and found["done"]["repetitions"] == 3
    assert found["gaze"]["on_target_fraction"]["value"] == 1.0 and found["events"] == []
    assert found["gaze"]["counter_turn_ratio"]["expected"] == pytest.approx(2.16, abs=0.1)
    target = found["prescribed"]["target"]
    assert target["motion"] == "against" and target["swing_deg"] <= 17.6
    assert found["prescribed"]["amplitude_deg"][1] <= 20.0


@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("entry", [X2, NODS, FOLLOW, MARKS, BEHIND], ids=lambda e: e.entry_id)
def test_every_such_page_can_be_looked_at(
    begin: Callable[..., Person], entry: Entry, percent: int
) -> None:
    if entry is BEHIND:
        person = begin(plan_of(entry), percent=percent)
        person.begin_day(1)
        grab(person, f"{entry.entry_id}-before-{percent}")
        person.choose("I have read this and am in place")
        person.set_up()
        person.measured(3.2, seen)
    else:
        person = begun(begin, entry, percent)
    field: Any = person.window.fields.practice
    for _ in range(190):
        person.fake.service.time_s += 1 / 60
        person.window.tick()
        for box in field.count_boxes() if field.state.count is not None else []:
            assert field.rect().toRectF().contains(box)
    person.settle()
    grab(person, f"{entry.entry_id}-{percent}")
    if entry in (X2, NODS):
        page: Any = person.window.pages["practice"]
        lowered = "(this screen's limit)" in page.asked.text()
        asked = person.director.asked
        assert asked is not None
        reach = amplitude_asked(asked.step, asked_of(entry).exercise)
        assert lowered == (reach != asked_of(entry).amplitude_deg)
    assert len(field.offsets) == (2 if entry is MARKS else 1)
    assert (field.backdrop is not None) == (entry is BEHIND)


def grab(person: Person, name: str) -> None:
    keep(person.window, f"moving/{name}")


@pytest.mark.parametrize("key", [Qt.Key.Key_A, Qt.Key.Key_Space, Qt.Key.Key_Tab, Qt.Key.Key_P])
def test_any_key_stops_a_moving_background(begin: Callable[..., Person], key: Qt.Key) -> None:
    person = begin(plan_of(BEHIND))
    person.begin_day(1)
    person.choose("I have read this and am in place")
    person.set_up()
    person.measured(3.2, seen)
    person.measured(1.0, seen)
    person.window.tick()
    field: Any = person.window.fields.practice
    assert person.director.any_key_stops and field.backdrop == Backdrop()
    QTest.keyClick(person.window.stack.currentWidget().focusWidget() or person.window, key)
    person.window.tick()
    assert isinstance(person.director.task, AskAfterSet)
    assert not field.isVisible() and not person.director.any_key_stops
    # The next key is an answer again.
    person.choose("Clear")
    assert isinstance(person.director.task, Wait)


def test_unwell_is_still_unwell(begin: Callable[..., Person]) -> None:
    person = begin(plan_of(BEHIND))
    person.begin_day(1)
    person.choose("I have read this and am in place")
    person.set_up()
    person.measured(4.0, seen)
    person.window.tick()
    QTest.keyClick(person.window, Qt.Key.Key_U)
    assert isinstance(person.director.task, AskGate)


def test_who_wants_a_still_screen_gets_no_moving_background(
    make: Make, begin: Callable[..., Person]
) -> None:
    person = begin(plan_of(BEHIND, X2))
    person.window.appearance.set_motion("still")
    person.begin_day(1)
    # It was asked for after the day began: what moves behind a target is passed over all the same.
    assert isinstance(person.director.task, Prepare)
    person.choose("I have read this and am in place")
    assert isinstance(person.director.task, Prepare)
    assert person.director.entry is not None and person.director.entry.entry_id == "x2"
    page: Any = person.window.pages["task"]
    assert any("the target has to move" in c for c in page.card.cares)
    person.choose("Not this one")
    assert person.director.saved is not None
    left = {r["entry_id"]: r["reasons"] for r in person.director.saved.summary["not_done"]}
    assert left == {"behind": ["not_in_place"], "x2": ["not_in_place"]}


def test_a_still_screen_from_the_start_says_why(make: Make, fake: Any) -> None:
    window = make()
    window.appearance.set_motion("still")
    window.pages["welcome"].offer(plan_of(BEHIND, X2))
    person = Person(window, fake)
    person.settle()
    person.choose("Practise my plan")
    person.none_of_these()
    person.press("1", ENTER)
    page: Any = window.pages["task"]
    assert any("nothing moves" in line for line in page.card.lines)


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_the_stripes_are_too_soft_to_flash(colours: Any) -> None:
    paper, ink = QColor(colours.paper), QColor(colours.ink)
    other = soft_ink(paper, ink, Backdrop().contrast)
    apart = abs(luminance(other) - luminance(paper))
    assert 0.5 * Backdrop().contrast < apart < 0.1


def test_the_stripes_are_drawn_moved_and_nothing_at_the_mark(begin: Callable[..., Person]) -> None:
    window = begin(plan_of(BEHIND)).window
    field = window.fields.practice
    window.stack.setCurrentWidget(window.pages["practice"])
    field.show_targets([])
    paper = field.palette().color(QPalette.ColorRole.Window)
    rows = []
    for shift in (0.0, 1.0, 4.0):
        field.show_backdrop(Backdrop(), shift)
        image = field.grab().toImage()
        y = image.height() // 2 + round(field.px_of(4.0))
        middle = image.width() // 2
        assert image.pixelColor(middle, image.height() // 2).rgb() == paper.rgb()
        assert image.pixelColor(2, y).rgb() == paper.rgb()
        half = round(field.px_of(3.0))
        rows.append(
            [luminance(image.pixelColor(x, y)) for x in range(middle - half, middle + half)]
        )
    still, moved, whole = (np.array(r) for r in rows)
    assert np.ptp(still) > 0.01 and np.ptp(still) < 0.1
    # A whole period further is the same picture; a quarter of one is not.
    assert np.abs(whole - still).max() < 0.004 and np.abs(moved - still).max() > 0.01


# --- too small, or to be still ---


def test_a_target_with_no_room_to_be_counted_is_refused_before_the_set() -> None:
    def refused(entry: Entry, half_high: float, half_wide: float = 160.0) -> bool:
        extent = FieldExtent((0.0, -100.0), half_wide, half_high)
        return too_small(asked_of(entry), extent, DISTANCE_MM)

    least_mm = DISTANCE_MM * tan(radians(SWING_LEAST_DEG))
    assert refused(NODS, least_mm - 1.0) and not refused(NODS, least_mm + 1.0)
    assert refused(X2, 80.0, least_mm - 1.0) and not refused(X2, least_mm - 1.0)
    assert not refused(NODS.model_copy(update={"posture": "standing"}), 1.0)
    assert not refused(BEHIND, 1.0)


@pytest.mark.parametrize("share", [1.0, 0.8])
def test_the_least_swing_is_counted_and_less_is_not(share: float) -> None:
    # Who turns four fifths as far as the least target is counted; at half of it nobody is.
    def counted(swing_deg: float) -> int:
        counter = Counter(channel_of("head_pitch"), known_person=True)
        turns = []
        for t in np.arange(0.0, 12.0, 1 / 30):
            pitch = swing_deg * share * sin(np.pi * t)
            turns += counter.feed(seen(float(t), head_pitch_deg=float(pitch)))
        return len(turns)

    assert counted(SWING_LEAST_DEG) >= 10
    assert counted(0.5 * SWING_LEAST_DEG) == 0


def in_countdown(begin: Callable[..., Person], entry: Entry, *, call: bool = False) -> Person:
    person = begin(plan_of(entry, X2))
    if call:
        person.press(Qt.Key.Key_F4)
    if entry is BEHIND:
        person.begin_day(1)
        person.choose("I have read this and am in place")
        person.set_up()
    else:
        person.get_in_place(1)
    assert isinstance(person.director.task, CountDown)
    return person


def test_nods_against_the_target_are_counted_in_a_call_too(begin: Callable[..., Person]) -> None:
    person = in_countdown(begin, NODS, call=True)
    person.measured(3.2, seen)
    page: Any = person.window.pages["practice"]
    # The figures stand at its sides: it goes up and down.
    assert page.share.beside and person.director.phase == Phase.exercise
    asked = person.director.asked
    assert asked is not None
    swing = track_swing_deg(asked.step.target_track or [])
    assert swing >= SWING_LEAST_DEG
    start_s, distance = person.fake.service.time_s, person.director.distance_mm
    assert start_s > 0

    def nodding(service_s: float) -> Sample:
        _, y = asked.offset_at(service_s + person.director._offset_s)
        pitch = -degrees(atan2(y, distance))
        return seen(service_s, head_yaw_deg=0.0, head_pitch_deg=pitch)

    person.measured(8.0, nodding)
    (found,) = person.fake.recordings[-1].save().summary["exercises"]
    assert found["exercise"] == "nods-x2" and found["done"]["repetitions"] == 3


def test_what_the_window_shows_too_small_is_passed_over_kindly(
    begin: Callable[..., Person],
) -> None:
    person = in_countdown(begin, NODS)
    small = FieldExtent((0.0, -100.0), 160.0, 20.0)
    person.director._extent = lambda: small
    person.measured(3.2, seen)
    assert isinstance(person.director.task, Prepare)
    assert person.director.entry is not None and person.director.entry.entry_id == "x2"
    page: Any = person.window.pages["task"]
    assert any("too little room" in note for note in page._notes)
    person.choose("Not this one")
    assert person.director.saved is not None
    summary = person.director.saved.summary
    assert not summary["exercises"]
    left = {r["entry_id"]: r["reasons"] for r in summary["not_done"]}
    assert left["nods"] == ["small_screen"]


@pytest.mark.parametrize("when", ["countdown", "pause"])
def test_a_still_screen_asked_for_later_is_kept_too(
    begin: Callable[..., Person], when: str
) -> None:
    person = in_countdown(begin, BEHIND)
    if when == "pause":
        person.measured(3.2, seen)
        person.measured(1.0, seen)
        person.director.pause_or_go_on()
        person.settle()
        assert person.director.phase == Phase.paused
    person.window.appearance.set_motion("still")
    if when == "pause":
        person.director.pause_or_go_on()
    person.measured(4.0, seen)
    field: Any = person.window.fields.practice
    assert field.backdrop is None and person.director.phase == Phase.asking
    assert not person.director.any_key_stops
    if when == "countdown":
        page: Any = person.window.pages["task"]
        assert any("nothing moves" in note for note in page._notes)
    else:
        assert isinstance(person.director.task, AskAfterSet)
        content = person.fake.recordings[-1].journal.content()
        assert [m["reason"] for m in content.of("mark") if m["name"] == "set_ended"] == [
            "still_screen"
        ]


def test_a_short_stretch_asks_for_as_much_as_a_whole_set() -> None:
    for entry in (X2, MARKS):
        whole = asked_for(entry)
        exercise = asked_of(entry).exercise
        short = planned_asked(
            5.0,
            asked_of(entry),
            repetitions=None,
            seconds=0.7,
            extent=EXTENT,
            to_rest=facing_map(DISTANCE_MM, EXTENT.centre_mm),
            distance_mm=DISTANCE_MM,
        )
        reach = amplitude_asked(whole.step, exercise)
        assert reach is not None and amplitude_asked(short.step, exercise) == reach
    # A log that doesn't name the swing: a track that was not at both sides tells none.
    bare = {k: v for k, v in short.step.model_dump().items() if k != "target_swing_deg"}
    assert amplitude_asked(Step.model_validate(bare), exercise) == asked_of(MARKS).amplitude_deg
    bare = {k: v for k, v in whole.step.model_dump().items() if k != "target_swing_deg"}
    assert amplitude_asked(Step.model_validate(bare), exercise) == pytest.approx(reach, abs=0.1)
